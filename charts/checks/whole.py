"""Checks of a whole chart: each a plain function from a chart to what it doubts.

A new check is one more function in ``BLOCKS`` or ``CHECKS``. It must be right more often than
wrong: the false-alarm rate over clean charts is tested.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Final

from charts.checks.blocks import slipped_rows, turned_blocks
from charts.checks.doubt import Column, Doubt, applied, columns
from charts.checks.equal_girths import equal_girths
from charts.checks.given_twice import given_twice
from charts.checks.growth import out_of_growth
from charts.checks.label_order import label_order
from charts.checks.order import order
from charts.checks.proportions import out_of_proportion
from charts.checks.same_again import same_again
from charts.checks.steps import borders, label_steps, leaps, step_breaks
from charts.checks.strides import far_ends, twice_entered
from charts.checks.widths import odd_widths
from charts.findings import LEVELS, FindingLog, Level
from charts.schema import Chart

Check = Callable[[Chart, Sequence[Column]], list[Doubt]]

BLOCKS: Final[tuple[Check, ...]] = (
    slipped_rows,
    turned_blocks,
    out_of_proportion,
    out_of_growth,
    equal_girths,
    given_twice,
)
"""What explains a whole block comes first, and its values are left out of what follows."""
CHECKS: Final[tuple[Check, ...]] = (
    order,
    leaps,
    far_ends,
    step_breaks,
    twice_entered,
    same_again,
    odd_widths,
    label_steps,
    label_order,
    borders,
)
"""What sees single values."""
_WHAT_IT_IS: Final = frozenset(
    {
        "basis-doubtful",
        "columns-shifted",
        "heading-two-readings",
        "heading-unknown",
        "laid-flat",
        "unit-missing",
        "units-disagree",
        "units-swapped",
    }
)
"""Questions of what a whole column measures, and in which unit."""


def checked(chart: Chart, log: FindingLog) -> Chart:
    """The chart with its doubts logged and listed at the values they bear on."""
    found: list[Doubt] = []
    asked = frozenset(one.id for one in log.findings if one.level is Level.QUESTION)
    unknown = (one for one in log.findings if one.code == "heading-unknown")
    nameless = frozenset(one.id for one in unknown if not log.settled(one.id))
    read = columns(chart, asked, nameless)
    unsure = frozenset(
        one.id for one in log.findings if one.code in _WHAT_IT_IS and one.id in asked
    )
    shifted = frozenset(one.id for one in log.findings if one.code == "columns-shifted") & asked
    seen: dict[Check, list[Column]] = {
        out_of_proportion: [one for one in read if not _asked_throughout(one, unsure)],
        out_of_growth: [one for one in read if not _asked_throughout(one, shifted)],
    }
    for check in BLOCKS:
        blocks = _new(check(chart, seen.get(check, read)), found)
        found += [doubt for doubt in blocks if not _said(chart, doubt, log)]
    spoilt = {spot for doubt in found for spot in doubt.spots}
    rest = [column for column in read if not spoilt.intersection(column.spots)]
    for check in CHECKS:
        found += _new(check(chart, rest), found)
    shared = {one.values["heading"] for one in log.findings if one.code == "merged-shared"}
    found = [doubt for doubt in found if doubt.case != "twice" or doubt.heading not in shared]
    return applied(chart, found, log)


def _asked_throughout(column: Column, asked: frozenset[str]) -> bool:
    """Whether every value is asked about: what is doubted throws no doubt on its neighbours."""
    return all(not asked.isdisjoint(value.findings) for value in column.values)


def _said(chart: Chart, doubt: Doubt, log: FindingLog) -> bool:
    """Whether whose measures these are is a question of one of them already."""
    if doubt.code != "basis-doubtful":
        return False
    asked = {one.id for one in log.findings if one.code == doubt.code}
    return any(
        asked.intersection(chart.sizes[size].ranges[place].findings) for size, place in doubt.spots
    )


def _new(doubts: Sequence[Doubt], known: Sequence[Doubt]) -> list[Doubt]:
    """Doubts whose values are not all asked about already by an earlier check."""
    asked = {
        spot for doubt in known if LEVELS[doubt.code] is Level.QUESTION for spot in doubt.spots
    }
    return [
        doubt
        for doubt in doubts
        if LEVELS[doubt.code] is not Level.QUESTION or not asked.intersection(doubt.spots)
    ]
