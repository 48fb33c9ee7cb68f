"""Text that a spreadsheet would take for a formula, wherever it came from."""

from __future__ import annotations

import re
from typing import Final

_STARTS: Final = re.compile(r"[=+\-@\t\r\n＝＋－＠]")
_PLAIN_NUMBER: Final = re.compile(r"[+-]?\d+(?:[.,]\d+)?")


def looks_like_formula(text: str) -> bool:
    """Whether ``text`` starts as a formula does and is not a plain number."""
    return bool(_STARTS.match(text)) and not _PLAIN_NUMBER.fullmatch(text)


def harmless(text: str) -> str:
    """``text`` with an apostrophe before it where a spreadsheet would calculate it."""
    return f"'{text}" if looks_like_formula(text) else text
