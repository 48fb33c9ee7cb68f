"""Keeps a figure and its unit on one line where a sentence breaks. No Qt."""

from __future__ import annotations

import re
from typing import Final

_FIGURE_AND_UNIT: Final = re.compile(r"(?<=[0-9]) (?=(?:cm|mm|kg|in|lb)\b)")
NO_BREAK: Final = "\N{NO-BREAK SPACE}"


def unbroken(text: str) -> str:
    """``text`` with no break between a figure and the unit behind it."""
    return _FIGURE_AND_UNIT.sub(NO_BREAK, text)
