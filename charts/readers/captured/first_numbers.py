"""Numbers and ages at the head of lines that name the sizes, though no word says that they do.

``Méret 38 40 42`` or ``Age 2/3 3/4 4/5`` over lines of as many figures.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line
from charts.readers.captured.value_runs import Named, counted_values, named_values, rises
from charts.schema import Dimension

LINES_LOOKED_AT: Final = 40
_FEWEST_BARE: Final = 4
"""Numbers without a word that can be the sizes; fewer stand alone in any letter."""
_NUMBER: Final = re.compile(r"\d+(?: \(\d+\))?")
"""``158 (40)``: a number may have a second name behind it."""
_AGE_ALONE: Final = re.compile(r"\d{1,2}(?:[-–/]\d{1,2})?")
_FEWEST_AGES: Final = 3


def numbers_first(lines: Sequence[Line]) -> Named | None:
    """``Méret 38 40 42``: rising numbers over lines of as many figures.

    The word before them is unknown, or there is none and only names of measures stand below.
    """
    filled = [line for line in lines[:LINES_LOOKED_AT] if line.text.strip()][:3]
    first = named_values(filled[0].text) if len(filled) > 2 else None
    if first is None or len(first.parts) < 3:
        return None
    found = [counted_values(line.text, len(first.parts)) for line in filled[1:]]
    below = [one for one in found if one is not None and one.name]
    even = len(below) == 2
    numbers = all(map(_NUMBER.fullmatch, first.parts)) and rises(
        [one.partition(" ")[0] for one in first.parts]
    )
    if not even or not numbers:
        return None
    if not first.name or read_heading(first.name).role is Role.OTHER:
        measures = all(read_heading(one.name).role is Role.MEASURE for one in below)
        return first if measures and len(first.parts) >= _FEWEST_BARE else None
    return first if read_heading(first.name).role is Role.UNKNOWN else None


def ages_first(lines: Sequence[Line]) -> Named | None:
    """``Age 2/3 3/4 4/5`` over a measure with as many figures: the ages are the sizes."""
    words = lines[0].text.split()
    first = next((at for at, word in enumerate(words) if word[0].isdigit()), 0)
    name, ages = " ".join(words[:first]), tuple(words[first:])
    even = len(ages) >= _FEWEST_AGES and all(map(_AGE_ALONE.fullmatch, ages))
    if not even or read_heading(name).dimension is not Dimension.AGE or not rises(ages):
        return None
    follows = next((one for one in lines[1:LINES_LOOKED_AT] if one.text.strip()), None)
    below = named_values(follows.text) if follows is not None else None
    if below is None or len(below.parts) != len(ages):
        return None
    heading = read_heading(below.name)
    measured = heading.role is Role.MEASURE and heading.dimension is not Dimension.AGE
    return Named(name, ages) if measured else None
