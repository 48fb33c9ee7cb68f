"""``66/76`` under ``Waist women/men``, ``40/44`` under ``Back short/long``: two figures, no range.

The heading names two kinds of people, of lengths or of measures, parted by a slash as the figures
are. Which figure is whose a person must say.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.dimensions import read_heading
from charts.headings.bands import names_adults
from charts.layout.looks import look
from charts.schema import Basis
from charts.size_labels import read_length

_PAIR: Final = re.compile(r"\s*\d{1,3}(?:[.,]\d+)?\s*(?:cm|kg|in|\")?\s*/\s*\d{1,3}(?:[.,]\d+)?\D*")
_PARTED: Final = re.compile(r"([^\W\d_]+)\s*/\s*([^\W\d_]+)")


def pairs_asked(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns, with a question on those whose cells hold a figure for each of two."""
    return [_asked(one, around) if _of_two(one) else one for one in columns]


def _of_two(column: Column) -> bool:
    parted = _PARTED.search(column.heading)
    if parted is None or not _both_alike(parted[1], parted[2]):
        return False
    texts = [at.text for cell in column.field.cells for at in cell]
    pairs = sum(_PAIR.fullmatch(text) is not None for text in texts)
    return 2 * pairs > len(texts)


def _both_alike(one: str, other: str) -> bool:
    """Women and men, short and long, body and vest; no two units, and no two ends of a range."""
    return any(kind(one) and kind(other) for kind in (_people, read_length, _whose))


def _people(word: str) -> bool:
    return look(word).band is not None or names_adults(word)


def _whose(word: str) -> bool:
    reading = read_heading(word)
    return reading.basis is not Basis.UNKNOWN or (reading.garment_sign and not reading.dimension)


def _asked(column: Column, around: Surroundings) -> Column:
    text = next(at.text for cell in column.field.cells for at in cell if _PAIR.fullmatch(at.text))
    return column.asking(
        around.log.add(
            "double-range",
            column.place,
            key=f"two {column.place}",
            case="two",
            text=text.strip(),
            heading=column.heading,
        )
    )
