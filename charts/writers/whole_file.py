"""Put a finished file in its place: whole or not at all.

The bytes go to a hidden name in the same folder and are then moved over the target, so that a
full disk or a pulled plug never leaves half a file, nor takes the old one away.
"""

from __future__ import annotations

import contextlib
import errno
import os
from pathlib import Path
from typing import Final

_FULL: Final = frozenset({errno.ENOSPC, errno.EDQUOT, errno.EFBIG})


class NotWrittenError(Exception):
    """A target that could not be written.

    Attributes:
        code: key of the sentence in the topic "faces".
        path: the target, as the person gave it.
        reason: what the system says, in its own words.
    """

    def __init__(self, code: str, path: Path, reason: str = "") -> None:
        super().__init__(code, str(path), reason)
        self.code = code
        self.path = path
        self.reason = reason


def write_whole(path: Path, data: bytes) -> None:
    """Write ``data`` to ``path``, replacing what stands there only once everything is on disk.

    Raises NotWrittenError with a code that says what to do: the folder is missing, the target is
    a folder, it is open elsewhere, it may not be written, or the disk is full.
    """
    if path.is_dir():
        raise NotWrittenError("target-is-folder", path)
    target = path.resolve()
    if not target.parent.is_dir():
        raise NotWrittenError("target-folder-missing", path)
    part = target.with_name(f".{target.name[:80]}.{os.getpid()}.part")
    try:
        with part.open("wb") as file:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
    except OSError as fault:
        _remove(part)
        raise _not_written(path, fault, "target-forbidden") from fault
    try:
        part.replace(target)
    except OSError as fault:
        _remove(part)
        raise _not_written(path, fault, "target-locked") from fault


def _not_written(path: Path, fault: OSError, when_refused: str) -> NotWrittenError:
    if fault.errno in _FULL:
        return NotWrittenError("target-disk-full", path)
    if isinstance(fault, PermissionError):
        return NotWrittenError(when_refused, path)
    return NotWrittenError("target-failed", path, fault.strerror or str(fault))


def _remove(part: Path) -> None:
    with contextlib.suppress(OSError):
        part.unlink()
