"""Names of sizes behind a word of the maker's that all of them share: W-S, W-M, W-L."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look

_PREFIXED: Final = re.compile(r"(?P<word>[^\W\d_]{1,12})\s?[-–/.:_]\s?(?P<size>\S.*)")
_FEWEST: Final = 2


def prefixed(fields: Sequence[Field]) -> int | None:
    """The number of the first column, where it holds such names and the others figures."""
    if len(fields) < 2 or fields[0].kind is not FieldKind.NOTE:
        return None
    names = [cell[0].text.strip() for cell in fields[0].cells if cell]
    parts = [_PREFIXED.fullmatch(name) for name in names]
    words = {part["word"].lower() for part in parts if part is not None}
    sizes = [part["size"] for part in parts if part is not None]
    if len(words) != 1 or len(sizes) < max(_FEWEST, len(names)) or len(set(sizes)) < len(sizes):
        return None
    figures = any(field.kind is FieldKind.VALUES for field in fields[1:])
    return 0 if figures and all(look(size).wordy_label for size in sizes) else None
