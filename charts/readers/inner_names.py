"""Names of files inside other files, as they may be shown. Nothing is ever written under them."""

from __future__ import annotations

import re
from typing import Final

from charts.readers.passed_over import is_passed_over
from charts.readers.plain_text import tidy

_DRIVE: Final = re.compile(r"\A[A-Za-z]:")
_UNFIT: Final = re.compile(r'[\x00-\x1f<>:"|?*]')
_LONGEST: Final = 200
_DEEPEST: Final = 8


class InnerNames:
    """Gives each inner file a name of its own."""

    def __init__(self) -> None:
        self._given: set[str] = set()

    def of(self, said: str, *, ending: str = "") -> str | None:
        """The name shown for a file that calls itself ``said``; None for what is passed over.

        Steps upwards, drives and signs that no name holds are left out.
        """
        parts = [_part(part) for part in _DRIVE.sub("", said).replace("\\", "/").split("/")]
        parts = [part for part in parts if part and part.strip(".")][-_DEEPEST:]
        if any(is_passed_over(part) for part in parts):
            return None
        name = "/".join(parts) or f"file{ending}"
        number = 1
        unique = name
        while unique.lower() in self._given:
            number += 1
            unique = f"{name} ({number})"
        self._given.add(unique.lower())
        return unique


def _part(text: str) -> str:
    return _UNFIT.sub("", tidy(text).replace("\n", " ")).strip()[-_LONGEST:]
