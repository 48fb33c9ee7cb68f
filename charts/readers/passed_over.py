"""Files that are no supplier's chart, told by their names: notes, locks, leftovers of programs."""

from __future__ import annotations

from typing import Final

_STARTS: Final = (".", "~$", "__macosx", "$recycle")
_ENDS: Final = (
    *("~", ".tmp", ".part", ".crdownload", ".toml"),
    *(".letter.txt", ".letter.html"),  # our own letters to makers
)
_NAMES: Final = frozenset({"thumbs.db", "desktop.ini"})


def is_passed_over(name: str) -> bool:
    """Whether a file or folder of this name is never opened; ``name`` is the last part alone."""
    name = name.lower()
    return name.startswith(_STARTS) or name.endswith(_ENDS) or name in _NAMES
