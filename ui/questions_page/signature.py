"""Who answers at this screen: the name under every answer, approval and letter."""

from __future__ import annotations

import getpass
import json
from pathlib import Path
from typing import Final

from ui.kept_file import keep

FORMAT: Final = 1
FILE_NAME: Final = "signature.json"
_LONGEST: Final = 60


class Signature:
    """The name, kept in a file of its own where there is one.

    Attributes:
        name: who answers; the desktop's user until somebody writes another name.
    """

    def __init__(self) -> None:
        self.name = _user()
        self._file: Path | None = None

    def keep_in(self, file: Path) -> None:
        """Take the name from ``file`` where it holds one, and keep it there from now on."""
        self._file = file
        try:
            saved = json.loads(file.read_text(encoding="utf-8"))
        except (OSError, ValueError):
            return
        name = saved.get("name") if isinstance(saved, dict) else None
        if isinstance(name, str) and name.strip():
            self.name = name.strip()[:_LONGEST]

    def sign(self, name: str) -> None:
        """Answer under another name. Raises NotWrittenError where it cannot be kept."""
        self.name = name.strip()[:_LONGEST] or _user()
        if self._file is not None:
            keep(self._file, {"format": FORMAT, "name": self.name})


def _user() -> str:
    """The name the desktop knows; "" where it knows none."""
    try:
        return getpass.getuser()
    except (OSError, KeyError, ImportError):
        return ""
