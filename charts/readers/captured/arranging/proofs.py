"""What speaks for an arrangement of cells, and what speaks against it.

One contradiction refuses it: sizes or figures that fall, a figure that its heading cannot have,
a range that ends below its beginning, two units that do not agree. Everything else that could have
come out otherwise and did not is counted for it.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import combinations, pairwise
from typing import Final

from charts.dimensions import HeadingReading, read_heading
from charts.plausible_ranges import plausible
from charts.quantities import FAMILY, Unit, factor
from charts.readers.captured.arranging.arrangement import Arrangement
from charts.readers.captured.arranging.spans import Span, span_of
from charts.readers.captured.value_runs import rises
from charts.schema import Dimension

_LENGTHS: Final = (Unit.CM, Unit.IN)
_KNOWN: Final = (*_LENGTHS, Unit.KG, Unit.LB, Unit.YEARS)
_SLACK: Final = Decimal("1.5")
"""How far the other unit of a figure may lie off, in centimetres: whole inches (no source)."""
_EVEN: Final = 3
"""Steps of which the widest is at most three times the narrowest are even (common practice)."""
_LEAP: Final = 4
"""One step is at most four times as wide as any other of the column (common practice)."""
_GIRTHS: Final = (Dimension.CHEST, Dimension.WAIST, Dimension.HIP)
_WIDEST: Final = Decimal("1.7")
"""No girth of a body at chest, waist and hip is 1.7 times another one (common practice)."""
Column = Sequence[Span | None]


def proofs(way: Arrangement) -> int | None:
    """How much speaks for ``way``; None where anything speaks against it."""
    if not rises([one.text for one in way.labels]):
        return None
    headings = [read_heading(one.text) for one in way.heads]
    columns = [[span_of(one.text) if one.text else None for one in cells] for cells in way.columns]
    each = list(zip(headings, columns, strict=True))
    counts = [_of_column(heading, column) for heading, column in each]
    agreeing = [_of_pair(one, other) for one, other in combinations(each, 2)]
    if None in counts or False in agreeing or not _one_unit(each) or not _one_body(each):
        return None
    return sum(one or 0 for one in counts) + agreeing.count(True)


def _of_column(heading: HeadingReading, column: Column) -> int | None:
    """How much speaks for the figures of one heading; None where something speaks against."""
    spans = [one for one in column if one is not None]
    if not spans or any(one.low > one.high for one in spans) or _falls(spans) or _leaps(spans):
        return None
    possible = _possible(heading, spans)
    if possible is False:
        return None
    alike = len({one.single for one in spans}) == 1
    return bool(possible) + alike + (alike and _touching(spans)) + _steady(spans) + _grows(spans)


def _falls(spans: Sequence[Span]) -> bool:
    return any(a.low > b.low or a.high > b.high for a, b in pairwise(spans))


def _leaps(spans: Sequence[Span]) -> bool:
    """Whether one step is far wider than all others: a figure of another column, or of others."""
    steps = sorted(b.low - a.low for a, b in pairwise(spans))
    return len(steps) > 1 and steps[-1] > _LEAP * steps[-2] > 0


def _grows(spans: Sequence[Span]) -> bool:
    return all(a.low < b.low for a, b in pairwise(spans))


def _possible(heading: HeadingReading, spans: Sequence[Span]) -> bool | None:
    """Whether a body can have all the figures in one unit; None where nothing is known of it."""
    found = _units(heading, spans)
    return None if found is None else bool(found)


def _units(heading: HeadingReading, spans: Sequence[Span]) -> set[Unit] | None:
    """The units in which a body can have all the figures; None where nothing is known of it."""
    dimension = heading.dimension
    printed = {one.unit for one in spans if one.unit is not None}
    if dimension is None or dimension is Dimension.OTHER or len(printed) > 1:
        return None
    said = heading.unit if heading.unit is not None else next(iter(printed), None)
    tried = _KNOWN if said is None else (said,)
    limits = {unit: found for unit in tried if (found := plausible(dimension, unit))}
    if not limits:
        return None
    return {
        unit
        for unit, (low, high) in limits.items()
        if all(low <= one.low and one.high <= high for one in spans)
    }


def _one_unit(columns: Sequence[tuple[HeadingReading, Column]]) -> bool:
    """Whether the lengths without a printed unit can all be in the same one."""
    left = set(_LENGTHS)
    for heading, column in columns:
        spans = [one for one in column if one is not None]
        printed = heading.unit is not None or any(one.unit for one in spans)
        found = None if printed else _units(heading, spans)
        if found and found & set(_LENGTHS):
            left &= found
    return bool(left)


def _one_body(columns: Sequence[tuple[HeadingReading, Column]]) -> bool:
    """Whether the girths of each size can be those of one body, as far as one unit is printed."""
    girths = [(one.unit, column) for one, column in columns if one.dimension in _GIRTHS]
    for (unit, one), (other_unit, other) in combinations(girths, 2):
        both = [(a.low, b.low) for a, b in zip(one, other, strict=True) if a and b]
        if unit is other_unit and any(max(pair) > min(pair) * _WIDEST for pair in both):
            return False
    return True


def _touching(spans: Sequence[Span]) -> bool:
    """Whether each range begins as far behind the last one as every other does."""
    gaps = {b.low - a.high for a, b in pairwise(spans)}
    return not spans[0].single and len(spans) > 2 and len(gaps) == 1 and min(gaps) >= 0


def _steady(spans: Sequence[Span]) -> bool:
    steps = [b.low - a.low for a, b in pairwise(spans)]
    return len(steps) > 1 and min(steps) > 0 and max(steps) <= _EVEN * min(steps)


def _of_pair(
    one: tuple[HeadingReading, Column], other: tuple[HeadingReading, Column]
) -> bool | None:
    """Whether two columns of one measure in two units agree; None where they are not that."""
    units = one[0].unit, other[0].unit
    if one[0].dimension is None or one[0].dimension is not other[0].dimension:
        return None
    if units[0] is None or units[1] is None or units[0] is units[1]:
        return None
    if FAMILY[units[0]] is not FAMILY[units[1]]:
        return None
    both = [(a, b) for a, b in zip(one[1], other[1], strict=True) if a and b]
    return all(abs(a.low * factor(units[0]) - b.low * factor(units[1])) <= _SLACK for a, b in both)
