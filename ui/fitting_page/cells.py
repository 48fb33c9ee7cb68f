"""One tape's cell out of the engine's arrays: the sizes drawn, the crossing, the number. No Qt."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from typing import Final

from charts.schema import Dimension, Range
from harmonizer.fit_sheet import FitSheet
from harmonizer.lanes import Lane
from harmonizer.range_table import Absent, Assumed
from harmonizer.states import GIRTHS, LENGTHS
from ui.drawing.tape import Crossing, Side, SizeSpan, in_order
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.row_words import Margins, RowWords
from ui.fitting_page.rows import TAPES, TapeCell
from ui.theme import GIRTH_LOOKS, LENGTH_LOOKS, Ink
from ui.words import Words

Spans = Callable[[int, int], tuple[SizeSpan, ...]]
"""From a tape's place and the best size's to the sizes drawn there."""

_CROSSINGS: Final = {
    "inside": Crossing.INSIDE,
    "clear": Crossing.INSIDE,
    "edge": Crossing.EDGE,
    "check": Crossing.EDGE,
    "near": Crossing.OUTSIDE,
    "miss": Crossing.OUTSIDE,
    "short": Crossing.OUTSIDE,
    "too_short": Crossing.OUTSIDE,
    "likely_long": Crossing.OUTSIDE,
    "too_long": Crossing.TOO_LONG,
}
_GIRTH_KEYS: Final = tuple(state.value for state in GIRTHS)
_LENGTH_KEYS: Final = tuple(state.value for state in LENGTHS)
_ASSUMED: Final = int(Assumed.CHART_DEFINITION | Assumed.BASIS | Assumed.DERIVED | Assumed.CIRCA)
_ASKED: Final = int(Assumed.OPEN_QUESTION)


def margins_at(sheet: FitSheet, dimension: Dimension, at: int) -> Margins | None:
    """What is left of the offer ``at`` on one of the four tapes, None if nothing was compared."""
    row = TAPES.index(dimension)
    lower, upper = float(sheet.lower[row, at]), float(sheet.upper[row, at])
    if math.isnan(lower) or math.isnan(upper):
        return None
    lane = sheet.choice.lane[row, at]
    layers = float(sheet.body.warm[lane, at] - sheet.body.light[lane, at])
    return Margins(_finite(lower), _finite(upper), winter=layers > 0)


def state_at(sheet: FitSheet, dimension: Dimension, at: int) -> str:
    """The state's key of the offer ``at`` in one of the four dimensions."""
    code = int(sheet.states[TAPES.index(dimension), at])
    return (_LENGTH_KEYS if dimension is Dimension.BACK_LENGTH else _GIRTH_KEYS)[code]


def tape_cell(
    sheet: FitSheet, words: RowWords, dimension: Dimension, at: int, spans: Spans
) -> TapeCell:
    """The cell of the offer ``at``; ``spans`` gives all sizes of its model on a tape."""
    margins = margins_at(sheet, dimension, at)
    if margins is None:
        return _nothing_compared(sheet, words, dimension, at)
    state = state_at(sheet, dimension, at)
    number, brief = words.number(dimension, state, margins)
    looks = LENGTH_LOOKS if dimension is Dimension.BACK_LENGTH else GIRTH_LOOKS
    crossing, cap = _crossing(dimension, state, margins)
    row = TAPES.index(dimension)
    lane = sheet.choice.lane[row, at]
    return TapeCell(
        number=number,
        brief=brief,
        ink=looks[state].ink,
        crossing=crossing,
        spans=spans(row, at),
        layers_cm=float(sheet.body.warm[lane, at] - sheet.body.light[lane, at]),
        cap=cap,
        strong=state not in ("inside", "clear"),
    )


def _crossing(dimension: Dimension, state: str, margins: Margins) -> tuple[Crossing, Side | None]:
    if dimension is Dimension.BACK_LENGTH and state == "check":
        return Crossing.EDGE, Side.LEFT
    if state == "near" and (margins.least or 0.0) >= 0:
        # Inside the range, yet the elastic has too little left: it is the high side that tells.
        return Crossing.EDGE, Side.RIGHT
    return _CROSSINGS[state], None


def spans_of(
    sheet: FitSheet, row: int, best: int, groups: ModelGroups, signature: int
) -> tuple[SizeSpan, ...]:
    """Every size of the model that may stand on this tape, equal stretches drawn once."""
    key = (signature, row, best)
    known = groups.spans.get(key)
    if known is None:
        known = groups.spans[key] = _spans(sheet, row, best, groups)
    return known


def _spans(sheet: FitSheet, row: int, best: int, groups: ModelGroups) -> tuple[SizeSpan, ...]:
    lanes, lower = sheet.choice.lane, sheet.lower
    spans = {
        at: _span(sheet, int(lanes[row, at]), at)
        for at in groups.members[int(groups.group_of[best])]
        if not math.isnan(lower[row, at])
    }
    return _one_each(spans, best)


def estimated_cell(cell: TapeCell, spans: tuple[SizeSpan, ...]) -> TapeCell:
    """A cell without a reading, with its model's sizes drawn beside the estimate: no state."""
    return replace(cell, spans=spans, estimated=True) if spans else cell


def spans_beside_guess(
    sheet: FitSheet, row: int, best: int, groups: ModelGroups
) -> tuple[SizeSpan, ...]:
    """The sizes that give this dimension in the shop's own definition, which the estimate has.

    Nothing where the best one does not: an estimate is put beside no other definition.
    """
    lane = lane_of_default(sheet, TAPES[row])
    if sheet.table.absent[lane, best] != Absent.PRESENT:
        return ()
    key = (-1 - lane, row, best)
    known = groups.spans.get(key)
    if known is None:
        members = groups.members[int(groups.group_of[best])]
        given = [at for at in members if sheet.table.absent[lane, at] == Absent.PRESENT]
        known = groups.spans[key] = _one_each({at: _span(sheet, lane, at) for at in given}, best)
    return known


def lane_of_default(sheet: FitSheet, dimension: Dimension) -> int:
    """The lane of a dimension as the shop measures it; there is always one."""
    usual = Lane(dimension, sheet.settings.default_definition(dimension))
    return sheet.table.lanes.index(usual)


def _one_each(spans: dict[int, SizeSpan], best: int) -> tuple[SizeSpan, ...]:
    """From left to right, equal stretches once, the best one marked."""
    own = spans[best]
    stretches = {(span.low_cm, span.high_cm): span for span in spans.values()}
    stretches[own.low_cm, own.high_cm] = own._replace(best=True)
    return tuple(sorted(stretches.values(), key=in_order))


def _span(sheet: FitSheet, lane: int, at: int) -> SizeSpan:
    marks = int(sheet.table.assumed[lane, at])
    return SizeSpan(
        label=sheet.table.offers[at].size,
        low_cm=_finite(float(sheet.table.reach_low[lane, at])),
        high_cm=_finite(float(sheet.table.reach_high[lane, at])),
        assumed=bool(marks & _ASSUMED),
        questioned=bool(marks & _ASKED),
    )


def _nothing_compared(sheet: FitSheet, words: RowWords, dimension: Dimension, at: int) -> TapeCell:
    """Why there is no picture: not in the chart, of the vest itself, or no reading for it."""
    row = TAPES.index(dimension)
    lane = sheet.choice.lane[row, at]
    absent = Absent(int(sheet.table.absent[lane, at]))
    published = sheet.table.ranges[lane][at]
    if absent is Absent.NOT_LISTED:
        text = words.words("cell-not-given")
    elif absent is Absent.PRESENT and _is_read(sheet, dimension):
        text = words.words("cell-other-definition")
    elif absent is Absent.PRESENT and published is not None:
        text = _made_for(published, words.words)
    else:
        text = words.words(f"cell-{absent.name.lower().replace('_', '-')}")
    return TapeCell(number=text, brief=text, ink=Ink.UNKNOWN)


def _made_for(item: Range, words: Words) -> str:
    """Whom the size is for where nothing is measured, in the shop's unit like every figure."""
    if item.value is not None:
        return words("cell-for-single", value=words.cm(float(item.value)))
    low, high = (None if end is None else words.cm(float(end)) for end in (item.low, item.high))
    if low is None or high is None:
        code, end = ("cell-for-up-to", high) if low is None else ("cell-for-from", low)
        return words(code, end=end)
    return words("cell-for", low=low, high=high)


def printed_text(sheet: FitSheet, dimension: Dimension, at: int) -> str | None:
    """What the chart prints for a size that is told without a reading; None in all other cases."""
    lane = int(sheet.choice.lane[TAPES.index(dimension), at])
    item = sheet.table.ranges[lane][at]
    if item is None or sheet.table.absent[lane, at] != Absent.PRESENT or _is_read(sheet, dimension):
        return None
    return item.published


def _is_read(sheet: FitSheet, dimension: Dimension) -> bool:
    return any(one.measure.dimension is dimension for one in sheet.body.settled)


def _finite(value: float) -> float | None:
    return value if math.isfinite(value) else None
