"""Which reading is worth taking again: where a fitter's tape would likely change the advice."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from charts.reason import Reason
from charts.schema import Dimension
from harmonizer.certainty import normal_below_one
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.settings import Settings
from harmonizer.state_span import BACK, Lie, span_of_state
from harmonizer.states import SLACK
from harmonizer.verdict_words import full_name, size_name

LOOKED_AT: Final = 4
"""The top size and the three nearest."""
WORTH_A_CALL: Final = 0.40
"""A miss with this chance of being within tolerance is measured again first."""


@dataclass(frozen=True, slots=True)
class TakeAgain:
    """One reading to take again.

    ``chance`` is that of the state changing in ``row``; ``decides`` are the rows it may change.
    ``now`` is the chance of the present state with the tape as it is, ``then`` the chance if a
    fitter's tape comes back the same.
    """

    dimension: Dimension
    chance: float
    row: FitRow
    decides: tuple[FitRow, ...]
    now: float
    then: float


def take_again(sheet: FitSheet) -> TakeAgain | None:
    """The reading whose repetition by a fitter would most likely change a state.

    None where every reading was taken by a fitter twice, or nothing could change.
    """
    rows = sheet.rows[:LOOKED_AT]
    best: TakeAgain | None = None
    for row in range(BACK + 1):
        chances = [(_chance(sheet, row, one), one) for one in rows]
        known = [(chance, one) for chance, one in chances if chance is not None]
        if not known:
            continue
        chance, top = max(known, key=lambda pair: pair[0])
        if chance > (best.chance if best else 0.0):
            best = _offer(sheet, row, top, chance, [one for part, one in known if part > 0.25])
    return best


def _offer(
    sheet: FitSheet, row: int, top: FitRow, chance: float, decides: list[FitRow]
) -> TakeAgain | None:
    lie = lie_of(sheet, row, top.at)
    if lie is None:
        return None
    low, high = span_of_state(lie, row, sheet.settings)
    return TakeAgain(
        dimension=sheet.dimensions[row],
        chance=chance,
        row=top,
        decides=tuple(decides),
        now=_between(lie.x, low, high, lie.u),
        then=_between(lie.x, low, high, lie.u_fitter),
    )


def _chance(sheet: FitSheet, row: int, one: FitRow) -> float | None:
    lie = lie_of(sheet, row, one.at)
    return None if lie is None else chance_of_change(lie, row, sheet.settings)


def chance_of_change(lie: Lie, row: int, settings: Settings) -> float | None:
    """The chance that a fitter's tape would give another state; None for a fitter's own reading."""
    spread = lie.u**2 - lie.u_fitter**2
    if spread <= 0.0:
        return None
    low, high = span_of_state(lie, row, settings)
    return 1.0 - _between(lie.x, low, high, math.sqrt(spread))


def _between(x: float, low: float, high: float, s: float) -> float:
    return normal_below_one((high - x) / s) - normal_below_one((low - x) / s)


def lie_of(sheet: FitSheet, row: int, at: int) -> Lie | None:
    """How one dimension of one offer lies; None where it was not compared."""
    lane = int(sheet.choice.lane[row, at])
    if math.isnan(sheet.lower[row, at]):
        return None
    table, body, settings = sheet.table, sheet.body, sheet.settings
    serving = body.serving[lane]
    x = float(serving.value) if serving else float(body.light[lane, at])
    light, warm = float(body.light[lane, at]), float(body.warm[lane, at])
    return Lie(
        x=x,
        u=float(body.u[lane, 0]),
        u_fitter=settings.u_back_fitter if row == BACK else settings.u_girth_fitter,
        low=float(table.low[lane, at]),
        high=float(table.high[lane, at]),
        band=(light - x, warm - x),
        reach=(float(table.reach_low[lane, at]), float(table.reach_high[lane, at])),
        tolerance=float(table.tolerance[lane, at]),
    )


def worth_measuring_first(sheet: FitSheet, row: int, one: FitRow) -> bool:
    """Whether a girth that is missed has a fair chance of being within tolerance after all."""
    lie = lie_of(sheet, row, one.at)
    if lie is None or row == BACK:
        return False
    lower = float(sheet.lower[row, one.at]) + lie.tolerance
    upper = float(sheet.upper[row, one.at]) + lie.tolerance
    if min(lower, upper) >= -SLACK:
        return False
    chance = normal_below_one(upper / lie.u) - normal_below_one(-lower / lie.u)
    return chance >= WORTH_A_CALL


def said(again: TakeAgain) -> tuple[Reason, ...]:
    """What to say of a reading worth taking again: which sizes it settles, and what is gained.

    A size is named with its model, for the sizes it settles may be of several.
    """
    others = [one for one in again.decides if one.at != again.row.at]
    values: dict[str, object] = {"dimension": again.dimension, "size": full_name(again.row)}
    sibling = next((one for one in others if one.offer.chart == again.row.offer.chart), None)
    if sibling is not None:
        first = Reason("again-against", values | {"other": size_name(sibling, again.row)})
    else:
        first = Reason("again", values | {"count": len(others) + 1})
    now, then = round(10 * again.now), round(10 * again.then)
    if then <= now:
        return (first,)
    return first, Reason("again-same", {"now": now, "then": then})
