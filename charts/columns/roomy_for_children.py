"""Chests and hips larger than any child's of the height or the age beside them: the garment's.

``Hip`` over 69 cm at a height of 100 cm is what a pair of trousers measures, though a height
stands beside it, which else tells that a figure is the body's.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from typing import Final

from charts.columns.girths_beside import in_canonical_by_line
from charts.columns.meaning import Column
from charts.columns.perhaps_lengths import may_be_a_length
from charts.columns.small_bodies import median_height, years_of
from charts.columns.words import Surroundings
from charts.layout.fields import FieldKind
from charts.schema import Basis, Dimension

_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.HIP})
_MOST: Final = Decimal("0.63")
"""What part of their height children of those heights measure round chest or hip at the very most;
charts of bodies have 0.53 to 0.59 of it (common practice, no source)."""
_TALL_CM: Final = (Decimal(95), Decimal(125))
"""Smaller children are rounder, and of taller ones some are as round as grown-ups."""
_FEWEST: Final = 2
Told = tuple[Mapping[int, Decimal], str | None]
"""Cm by line, and the band of the column that tells it: grown-ups beside it have their own."""


def roomy_for_children(columns: Sequence[Column], around: Surroundings) -> bool:
    """Whether a chest or a hip is larger than any child's, in each of at least two sizes.

    What a heading or a person said of the girth is for the caller to look at.
    """
    girths = [one for one in columns if one.dimension in _GIRTHS and not one.doubted]
    girths = [one for one in girths if one.basis in {Basis.BODY, Basis.UNKNOWN}]
    if not girths:
        return False
    told = list(_heights(columns, around))
    return any(
        _roomy(one, tall) for tall, beside in told for one in girths if beside in {None, one.band}
    )


def _roomy(girth: Column, tall: Mapping[int, Decimal]) -> bool:
    round_cm = in_canonical_by_line(girth)
    low, high = _TALL_CM
    lines = [line for line, cm in tall.items() if line in round_cm and low <= cm <= high]
    return len(lines) >= _FEWEST and all(round_cm[line] > _MOST * tall[line] for line in lines)


def _heights(columns: Sequence[Column], around: Surroundings) -> Iterator[Told]:
    """How tall the child of each line is: as printed, else as half of those of its age."""
    heights = [
        one
        for one in columns
        if one.dimension is Dimension.HEIGHT and not one.doubted and not may_be_a_length(one)
    ]
    for one in heights:
        yield in_canonical_by_line(one), one.band
    if heights:
        return
    ages: list[Told] = [
        (in_canonical_by_line(one), one.band) for one in columns if one.dimension is Dimension.AGE
    ]
    for field in around.table.of(FieldKind.LABEL):
        told = ((line, years_of(cell)) for line, cell in enumerate(field.cells))
        ages.append(({line: years for line, years in told if years is not None}, None))
    for each, band in ages:
        yield {line: median_height(years) for line, years in each.items()}, band
