"""Columns that belong together: two ends of one range, two units of one figure, tolerances."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from charts.columns.agreement import compared
from charts.columns.meaning import Column
from charts.columns.values import Filled, two_cells
from charts.columns.words import Surroundings
from charts.dimensions import Role, find_units
from charts.findings import listed
from charts.quantities import METRIC, Unit, factor
from charts.schema import Dimension, Kind, PrintedBothWays, Range


def paired(columns: Sequence[Filled], around: Surroundings) -> list[Filled]:
    """The columns with ends joined to ranges and second units set beside the metric figure."""
    return _units_joined(_ends_joined(list(columns), around), around)


def _ends_joined(columns: list[Filled], around: Surroundings) -> list[Filled]:
    """Lower and upper ends of one measure, in whatever order they stand, joined at the first."""
    found: list[Filled] = []
    for one in columns:
        partner = next((n for n, other in enumerate(found) if _one_range(other, one)), None)
        if partner is None:
            found.append(one)
            continue
        low, high = found[partner], one
        if low.column.role is Role.HIGH_END:
            low, high = high, low
        found[partner] = _joined(low, high, around)
    return [_open_ended(one) for one in found]


def _one_range(first: Filled, second: Filled) -> bool:
    one, two = first.column, second.column
    same = (one.dimension, one.definition, one.band, _system(one)) == (
        two.dimension,
        two.definition,
        two.band,
        _system(two),
    )
    return same and {one.role, two.role} == {Role.LOW_END, Role.HIGH_END}


def _system(column: Column) -> bool | None:
    return column.unit in METRIC if column.unit is not None else None


def _joined(low: Filled, high: Filled, around: Surroundings) -> Filled:
    heading = f"{low.column.heading} | {high.column.heading}"
    column = replace(low.column, heading=heading, role=Role.MEASURE).asking(*high.column.findings)
    ranges = {
        line: _join(low.ranges[line], high.ranges[line], column, around)
        for line in low.ranges.keys() & high.ranges.keys()
    }
    for part, kind in ((low, Kind.AT_LEAST), (high, Kind.AT_MOST)):
        for line in part.ranges.keys() - ranges.keys():
            ranges[line] = _one_end(part.ranges[line], kind, heading)
    return Filled(column, ranges)


def _join(low: Range, high: Range, column: Column, around: Surroundings) -> Range:
    """Two cells to one range. Where one of them is blank the range is open there instead."""
    findings = (*low.findings, *(one for one in high.findings if one not in low.findings))
    both = replace(
        low,
        heading=column.heading,
        published=f"{low.published} | {high.published}",
        place=two_cells(low.place, high.place),
        findings=findings,
        corrected=low.corrected or high.corrected,
    )
    if low.value is None or high.value is None or low.value > high.value:
        ident = around.log.add(
            "order-broken", both.place, case="ends", text=both.published, heading=column.heading
        )
        unknown = replace(both, kind=Kind.UNREAD, value=None, low_step=None, high_step=None)
        return replace(unknown, low=None, high=None, findings=listed(*findings, ident))
    return replace(
        both,
        kind=Kind.RANGE,
        low=low.value,
        high=high.value,
        value=None,
        high_step=high.high_step,
    )


def _open_ended(one: Filled) -> Filled:
    """A lone column headed ``up to`` or ``from`` gives open ends, no single values."""
    kind = {Role.HIGH_END: Kind.AT_MOST, Role.LOW_END: Kind.AT_LEAST}.get(one.column.role)
    if kind is None:
        return one
    ranges = {line: _one_end(r, kind, r.heading) for line, r in one.ranges.items()}
    return Filled(replace(one.column, role=Role.MEASURE), ranges)


def _one_end(one: Range, kind: Kind, heading: str) -> Range:
    if one.kind is not Kind.SINGLE:
        return replace(one, heading=heading)
    if kind is Kind.AT_MOST:
        return replace(one, heading=heading, kind=kind, high=one.value, value=None)
    return replace(one, heading=heading, kind=kind, low=one.value, value=None)


def _units_joined(columns: list[Filled], around: Surroundings) -> list[Filled]:
    """Each column beside the first one of the same measure in the other system of units.

    Looked up and not compared one by one: a hostile sheet has hundreds of columns.
    """
    found: list[Filled] = []
    firsts: dict[tuple[object, ...], int] = {}
    stem = ""
    for one in columns:
        unit = _unit(one)
        metric = unit in METRIC
        stem = _stem_of(one, stem)
        partner = firsts.get((*_measured(one, stem), not metric)) if unit is not None else None
        if partner is not None:
            found[partner] = _both(found[partner], one, around)
            continue
        if unit is not None:
            firsts.setdefault((*_measured(one, stem), metric), len(found))
        found.append(one)
    return found


def _stem_of(one: Filled, before: str) -> str:
    """What an unknown measure is called; a bare unit behind it is of the same: Leg loops, inch."""
    column = one.column
    return (_stem(column.heading) or before) if column.dimension is Dimension.OTHER else ""


def _measured(one: Filled, stem: str) -> tuple[object, ...]:
    """What a column measures; what has no name of its own is known by its heading."""
    column = one.column
    return (column.dimension, column.definition, column.basis, column.band, stem)


def _stem(heading: str) -> str:
    """A heading without its unit: unknown measures are the same when they are called the same."""
    words = (word.strip('()[].,:;/"') for word in heading.lower().split())
    return " ".join(word for word in words if word and not find_units(word))


def _unit(one: Filled) -> Unit | None:
    units = {r.published_unit for r in one.ranges.values() if r.published_unit is not None}
    return units.pop() if len(units) == 1 else one.column.unit


def _both(first: Filled, second: Filled, around: Surroundings) -> Filled:
    metric, other = (first, second) if _unit(first) in METRIC else (second, first)
    ranges = {**other.ranges, **metric.ranges}
    both = {
        line: beside(metric.ranges[line], other.ranges[line])
        for line in sorted(metric.ranges.keys() & other.ranges.keys())
    }
    ranges |= compared(metric.column, both, around)
    column = replace(metric.column, number=first.column.number)
    if _stem(column.heading) or column.dimension is not Dimension.OTHER:
        return Filled(column, ranges)
    named = other.column.heading  # a bare unit beside an unknown measure does not name it
    ranges = {line: replace(one, heading=named) for line, one in ranges.items()}
    return Filled(replace(column, heading=named), ranges)


def beside(reading: Range, other: Range) -> Range:
    """A value with what another place prints of it in the other system of units.

    Where that is asked about, so is the value: 80 cm beside 3105 in leaves open which is right.
    """
    findings = (*reading.findings, *(one for one in other.findings if one not in reading.findings))
    if other.published_unit is None or reading.also_published is not None:
        return replace(reading, findings=findings)
    by = factor(other.published_unit)
    low, high, value, low_step, high_step = (
        end / by if end is not None else None
        for end in (other.low, other.high, other.value, other.low_step, other.high_step)
    )
    both = PrintedBothWays(
        other.published,
        other.published_unit,
        low,
        high,
        value,
        other.place,
        low_step,
        high_step,
    )
    return replace(reading, also_published=both, findings=findings)
