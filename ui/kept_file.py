"""A small file of the screen's own, kept as JSON from one day to the next."""

from __future__ import annotations

import json
from collections.abc import Mapping
from pathlib import Path

from charts.wording import Wording
from charts.writers.whole_file import NotWrittenError, write_whole


def keep(path: Path, values: Mapping[str, object]) -> None:
    """Write ``values`` to ``path``, whole or not at all; its folder is made.

    Raises NotWrittenError when the folder or the file cannot be written.
    """
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
    except OSError as fault:
        raise NotWrittenError("target-folder-missing", path) from fault
    write_whole(path, json.dumps(values, indent=1).encode())


def not_kept_words(fault: NotWrittenError, wording: Wording) -> str:
    """What a person is told when something was not kept, and why."""
    if fault.reason:  # what the disk says: another place cannot be chosen here
        folder = str(fault.path.parent)
        return wording.say("questions", "shop-not-kept-at", folder=folder, reason=fault.reason)
    reason = wording.say("faces", fault.code, path=fault.path.name, reason=fault.reason)
    return wording.say("questions", "shop-not-kept", reason=reason)
