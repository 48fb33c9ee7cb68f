"""Two columns of one measure in two units, compared cell by cell: rounding, slip, or wrong heading.

A contradiction in one row bears on that value only; in most rows it bears on the whole column.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from decimal import Decimal

from charts.cell_reading import Quantity
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.findings import Candidate, FindingLog, listed
from charts.grammar.agreement import Agreement, agreement
from charts.quantities import CANONICAL, FAMILY, Figure, Unit, canonical
from charts.schema import PrintedBothWays, Range


def compared(column: Column, ranges: Mapping[int, Range], around: Surroundings) -> dict[int, Range]:
    """The ranges with a question where their second printed unit contradicts them."""
    how = {line: agreement_of(one) for line, one in ranges.items()}
    apart = [line for line, one in how.items() if one in {Agreement.APART, Agreement.OTHER_SHAPE}]
    if Agreement.ROUNDED in how.values():
        around.log.add("rounding-between-units", column.place, heading=column.heading)
    found = dict(ranges)
    whole = len(apart) > 1 and 2 * len(apart) > len(ranges)
    for line in apart:
        ident = _asked(column, ranges[line], around, whole=whole)
        found[line] = replace(ranges[line], findings=listed(*ranges[line].findings, ident))
    return found


def agreement_of(one: Range) -> Agreement:
    """How the second printed unit of a value stands to the first; EXACT where there is none."""
    also = one.also_published
    if also is None:
        return Agreement.EXACT
    steps = (one.low_step, one.high_step, one.low_step)
    mine = _quantity((one.low, one.high, one.value), steps, one)
    beside = (also.low_step, also.high_step, also.low_step)
    its = _quantity((also.low, also.high, also.value), beside, one)
    return agreement(mine, CANONICAL[FAMILY[also.unit]], its, also.unit)


def _quantity(
    ends: tuple[Decimal | None, ...], steps: tuple[Decimal | None, ...], one: Range
) -> Quantity:
    low, high, value = (
        Figure(end, step or Decimal(1)) if end is not None else None
        for end, step in zip(ends, steps, strict=True)
    )
    return Quantity(one.kind, one.published, low, high, value)


def _asked(column: Column, one: Range, around: Surroundings, *, whole: bool) -> str:
    also = one.also_published
    if whole or also is None:
        return around.log.add("units-disagree", column.place, case="column", heading=column.heading)
    return say_apart(one, also, around.log)


def say_apart(one: Range, also: PrintedBothWays, log: FindingLog) -> str:
    """Ask which of two printings of a value holds, where they contradict each other."""
    return log.add(
        "units-disagree",
        one.place,
        candidates=(_as_printed(one), _other(also)),
        text=one.published,
        other=also.text,
        heading=one.heading,
    )


def _as_printed(one: Range) -> Candidate:
    return Candidate(one.published, one.unit.value, one.low, one.high, one.value, "as-printed")


def _other(also: PrintedBothWays) -> Candidate:
    low, high, value = (_in_canonical(end, also.unit) for end in (also.low, also.high, also.value))
    unit = CANONICAL[FAMILY[also.unit]].value
    return Candidate(f"{also.text} {also.unit.value}", unit, low, high, value, "other-unit")


def _in_canonical(end: Decimal | None, unit: Unit) -> Decimal | None:
    return canonical(end, unit) if end is not None else None
