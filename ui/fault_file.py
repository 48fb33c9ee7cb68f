"""Our own faults, written down whole where a person can find them and send them to us."""

from __future__ import annotations

import tempfile
import traceback
from pathlib import Path
from types import TracebackType


def written_down(
    kind: type[BaseException], fault: BaseException, trace: TracebackType | None
) -> Path:
    """The fault in full, in a new file of the system's folder for such files."""
    with tempfile.NamedTemporaryFile(
        "w", prefix="harmonizer-fault-", suffix=".txt", delete=False, encoding="utf-8"
    ) as file:
        traceback.print_exception(kind, fault, trace, file=file)
    return Path(file.name)
