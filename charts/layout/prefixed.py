"""Names of sizes that hold a word before the size, or a band alone: W-S, Girls 08, Women."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.size_labels import LabelKind

_PREFIXED: Final = re.compile(r"(?P<word>[^\W\d_]{1,12})\s?[-–/.:_]\s?(?P<size>\S.*)")
_FEWEST: Final = 2


def prefixed(fields: Sequence[Field]) -> int | None:
    """The first column, where a word that all share stands before sizes: W-S, W-M, W-L."""
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


def named_bands(fields: Sequence[Field]) -> int | None:
    """Band words label the rows when nothing else does and none repeats.

    A size that stands behind each of them is a name even where one repeats: ``Girls 08`` twice.
    """
    for number, field in enumerate(fields):
        if field.kind is FieldKind.BAND:
            words = [cell[0].text for cell in field.cells if cell]
            if len(set(words)) == len(words) or all(_band_and_size(word) for word in words):
                return number
    return None


def _band_and_size(text: str) -> bool:
    label = look(text).label
    return label is not None and label.kind is not LabelKind.WORD
