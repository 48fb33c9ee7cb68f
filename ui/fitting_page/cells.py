"""One tape's cell out of the engine's arrays: the sizes drawn, the crossing, the number. No Qt."""

from __future__ import annotations

import math
from typing import Final

import numpy as np

from charts.schema import Dimension
from harmonizer.fit_sheet import FitSheet
from harmonizer.range_table import Absent, Assumed
from harmonizer.states import GIRTHS, LENGTHS
from ui.drawing.tape import Crossing, Side, SizeSpan, in_order
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.row_words import Margins, RowWords
from ui.fitting_page.rows import TAPES, TapeCell
from ui.theme import GIRTH_LOOKS, LENGTH_LOOKS, Ink

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
_ASSUMED: Final = int(Assumed.CHART_DEFINITION | Assumed.BASIS | Assumed.DERIVED | Assumed.CIRCA)
_ASKED: Final = int(Assumed.OPEN_QUESTION)


def margins_at(sheet: FitSheet, dimension: Dimension, at: int) -> Margins | None:
    """What is left of the offer ``at`` in one dimension, None where nothing was compared."""
    row = sheet.dimensions.index(dimension)
    lower, upper = float(sheet.lower[row, at]), float(sheet.upper[row, at])
    if math.isnan(lower) or math.isnan(upper):
        return None
    lane = sheet.choice.lane[row, at]
    layers = float(sheet.body.warm[lane, at] - sheet.body.light[lane, at])
    return Margins(_finite(lower), _finite(upper), winter=layers > 0)


def state_at(sheet: FitSheet, dimension: Dimension, at: int) -> str:
    """The state's key of the offer ``at`` in one of the four dimensions."""
    code = int(sheet.states[TAPES.index(dimension), at])
    return (LENGTHS if dimension is Dimension.BACK_LENGTH else GIRTHS)[code].value


def tape_cell(
    sheet: FitSheet, words: RowWords, dimension: Dimension, at: int, groups: ModelGroups
) -> TapeCell:
    """The cell of the offer ``at`` with all sizes of its model."""
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
        spans=_spans(sheet, row, at, groups),
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


def _spans(sheet: FitSheet, row: int, best: int, groups: ModelGroups) -> tuple[SizeSpan, ...]:
    """Every size of the model that may stand on this tape, equal stretches drawn once."""
    group = int(groups.group_of[best])
    places = groups.places[group]
    lanes = sheet.choice.lane[row, places]
    compared = ~np.isnan(sheet.lower[row, places])
    key = (group, row, lanes.tobytes(), compared.tobytes())
    known = groups.spans.get(key)
    if known is None:
        drawn = [
            (at, _span(sheet, int(lane), at))
            for at, lane, there in zip(groups.members[group], lanes, compared, strict=True)
            if there
        ]
        known = dict(sorted(drawn, key=_in_order))
        groups.spans[key] = known
    own = known[best]
    stretches = {(span.low_cm, span.high_cm): span for span in known.values()}
    stretches[own.low_cm, own.high_cm] = own._replace(best=True)
    return tuple(stretches.values())


def _in_order(item: tuple[int, SizeSpan]) -> tuple[float, float]:
    return in_order(item[1])


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
        text = words.words("cell-for", published=published.published)
    else:
        text = words.words(f"cell-{absent.name.lower().replace('_', '-')}")
    return TapeCell(number=text, brief=text, ink=Ink.UNKNOWN)


def _is_read(sheet: FitSheet, dimension: Dimension) -> bool:
    return any(one.measure.dimension is dimension for one in sheet.body.settled)


def _finite(value: float) -> float | None:
    return value if math.isfinite(value) else None
