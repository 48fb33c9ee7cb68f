"""Who answers at this screen: the name under every answer, approval and letter."""

from __future__ import annotations

import getpass
import json
from pathlib import Path
from typing import Final

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
        """Answer under another name. A folder that cannot be written to costs no more than that."""
        self.name = name.strip()[:_LONGEST] or _user()
        if self._file is None:
            return
        saved = {"format": FORMAT, "name": self.name}
        try:
            self._file.parent.mkdir(parents=True, exist_ok=True)
            self._file.write_text(json.dumps(saved, indent=1), encoding="utf-8")
        except OSError:
            return


def _user() -> str:
    """The name the desktop knows; "" where it knows none."""
    try:
        return getpass.getuser()
    except (OSError, KeyError, ImportError):
        return ""
