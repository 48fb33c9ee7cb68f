"""Why one dimension has its state: a code and its values, always of the vest on the rider."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from charts.reason import Reason
from charts.schema import Dimension
from harmonizer.clearance import clearance, seen_on
from harmonizer.fit_arrays import FitArrays
from harmonizer.lanes import GIRTH_DIMENSIONS, Absent
from harmonizer.rider import Observed, TakenBy
from harmonizer.states import GIRTHS, LENGTHS, SLACK, GirthState, LengthState

JUST: Final = 0.1
"""An overshoot under this many cm reads "just over"."""

_ABSENT: Final = {
    Absent.NOT_LISTED: "not-listed",
    Absent.UNREAD: "unread",
    Absent.ALONE: "single-alone",
    Absent.FINISHED: "finished",
    Absent.FLAT: "laid-flat",
}
_BACK: Final = {
    LengthState.CLEAR: "back-clear",
    LengthState.CHECK: "back-check",
    LengthState.SHORT: "back-short",
    LengthState.TOO_SHORT: "back-too-short",
    LengthState.LIKELY_LONG: "back-likely-long",
    LengthState.TOO_LONG: "back-too-long",
}


@dataclass(frozen=True, slots=True, eq=False)
class Lie:
    """One dimension of one offer: where it stands in the arrays, and its figures in cm."""

    arrays: FitArrays
    row: int
    lane: int
    at: int

    @property
    def dimension(self) -> Dimension:
        """What is measured."""
        return self.arrays.dimensions[self.row]

    @property
    def lower(self) -> float:
        """The lower margin."""
        return float(self.arrays.lower[self.row, self.at])

    @property
    def upper(self) -> float:
        """The upper margin."""
        return float(self.arrays.upper[self.row, self.at])

    @property
    def reading(self) -> float:
        """The reading in light clothing."""
        return float(self.arrays.body.light[self.lane, self.at])

    @property
    def low(self) -> float:
        """a, as published."""
        return float(self.arrays.table.low[self.lane, self.at])

    @property
    def high(self) -> float:
        """b, as published."""
        return float(self.arrays.table.high[self.lane, self.at])

    @property
    def layers(self) -> float:
        """g, what the layers add."""
        return float(self.arrays.body.warm[self.lane, self.at]) - self.reading

    def values(self, **figures: float) -> dict[str, object]:
        """What a sentence may need: the dimension, the reading, and the figures that are there."""
        low, high = self.reach
        ends = {"x": self.reading, "a": self.low, "b": self.high, "ra": low, "rb": high, **figures}
        finite = {name: value for name, value in ends.items() if math.isfinite(value)}
        return {"dimension": self.dimension, **finite}

    @property
    def reach(self) -> tuple[float, float]:
        """A and B, with borders closed and adjusters used."""
        table, at = self.arrays.table, (self.lane, self.at)
        return float(table.reach_low[at]), float(table.reach_high[at])

    @property
    def further(self) -> str:
        """``-reach`` where the size reaches further than its printed figures, else nothing."""
        moved = zip(self.reach, (self.low, self.high), strict=True)
        wider = any(math.isfinite(end) and abs(to - end) > SLACK for to, end in moved)
        return "-reach" if wider else ""

    @property
    def form(self) -> str:
        """How the range is open: nothing, below or above."""
        if math.isinf(self.low):
            return "-up-to"
        return "-from" if math.isinf(self.high) else ""


def reason_of(lie: Lie) -> Reason:
    """The reason for the state of one dimension of one size."""
    if lie.dimension is Dimension.BACK_LENGTH:
        in_saddle = _in_saddle(lie)
        if in_saddle is not None:
            return in_saddle
    if math.isnan(lie.lower):
        return _not_compared(lie)
    if lie.dimension is Dimension.BACK_LENGTH:
        return _back(lie)
    if lie.dimension in GIRTH_DIMENSIONS:
        return _girth(lie)
    return _other(lie)


def _in_saddle(lie: Lie) -> Reason | None:
    """What was seen in the saddle, or a computed clearance that says stop."""
    arrays = lie.arrays
    observed = seen_on(arrays.table.offers[lie.at], arrays.rider.seen)
    if observed is not None:
        return Reason(f"back-seen-{observed.value}", {"dimension": lie.dimension})
    seat, own = arrays.body.c7_above_seat, float(arrays.table.finished_back[lie.at])
    if seat is None or math.isnan(own):
        return None
    found = clearance(seat, own, arrays.settings)
    if found.band is not Observed.STOP:
        return None
    return Reason("back-stopped-in-saddle", {"dimension": lie.dimension, "c": found.cm})


def _not_compared(lie: Lie) -> Reason:
    absent = Absent(int(lie.arrays.table.absent[lie.lane, lie.at]))
    values: dict[str, object] = {"dimension": lie.dimension}
    if absent is not Absent.PRESENT:
        return Reason(_ABSENT[absent], values)
    known = [one for one in lie.arrays.body.settled if one.measure.dimension is lie.dimension]
    if known:
        chart = lie.arrays.table.lanes[lie.lane].definition
        values |= {"chart": chart, "reading": known[0].definition}
        return Reason("definitions-differ", values)
    if lie.dimension is Dimension.BACK_LENGTH and _measured_alone(lie):
        return Reason("back-measured-alone", values)
    return Reason("no-reading", values)


def _measured_alone(lie: Lie) -> bool:
    rider = lie.arrays.rider
    backs = [one for one in rider.readings if one.measure.dimension is Dimension.BACK_LENGTH]
    return any(rider.taker(one) is TakenBy.SELF for one in backs)


def _girth(lie: Lie) -> Reason:
    state = GIRTHS[lie.arrays.states[lie.row, lie.at]]
    worse = min(lie.lower, lie.upper)
    if worse < -SLACK:
        return _outside(lie)
    if state is GirthState.NEAR:
        return _elastic(lie)
    if state is GirthState.EDGE and worse >= lie.arrays.settings.edge_band - SLACK:
        return Reason(f"far-from-end{lie.form}", lie.values())
    beyond = _beyond_print(lie)
    if beyond is not None:
        return beyond
    code = "edge" if state is GirthState.EDGE else "inside"
    layered = "-layers" if lie.layers > SLACK and lie.upper <= lie.lower else ""
    return Reason(
        f"{code}{lie.form}{layered}{lie.further}",
        lie.values(left=max(0.0, worse), lower=lie.lower, upper=lie.upper),
    )


def _beyond_print(lie: Lie) -> Reason | None:
    """A reading outside the printed figures that an adjuster or a closed border still reaches."""
    adjusted = _adjusted(lie)
    if adjusted is not None:
        return adjusted
    above, below = lie.reading - lie.high, lie.low - lie.reading
    if max(above, below) <= SLACK:
        return None
    code = "border-above" if above > SLACK else "border-below"
    return Reason(f"{code}{lie.form}", lie.values(by=max(above, below)))


def _adjusted(lie: Lie) -> Reason | None:
    """What the adjuster takes in for light clothing, or else lets out for warm clothing."""
    table, at = lie.arrays.table, (lie.lane, lie.at)
    light, warm = lie.reading, lie.reading + lie.layers
    way_in, way_out = float(table.take_in[at]), float(table.let_out[at])
    used_in = min(max(float(table.seam_low[at]) - light, 0.0), way_in)
    used_out = min(max(warm - float(table.seam_high[at]), 0.0), way_out)
    low, high = lie.reach
    if used_in > SLACK:
        figures = {"by": lie.low - light, "used": used_in, "way": way_in, "reach": low}
        return Reason(f"adjuster-taken-in{lie.form}", lie.values(**figures))
    if used_out > SLACK:
        layered = "-layers" if lie.layers > SLACK else ""
        figures = {"by": warm - lie.high, "used": used_out, "way": way_out, "reach": high}
        return Reason(f"adjuster-let-out{lie.form}{layered}", lie.values(**figures))
    return None


def _outside(lie: Lie) -> Reason:
    """Tight or loose, by the side that is worse."""
    tight = lie.upper <= lie.lower
    by = -min(lie.lower, lie.upper)
    code = "tight" if tight else "loose"
    if by < JUST:
        code += "-just"
    elif tight and lie.layers > SLACK and lie.upper + lie.layers >= -SLACK:
        code += "-layers"
    return Reason(f"{code}{lie.form}{lie.further}", lie.values(by=by, g=lie.layers))


def _elastic(lie: Lie) -> Reason:
    left = float(lie.arrays.reserve[lie.at])
    if float(lie.arrays.stretch[lie.at]) < -SLACK:
        return Reason("elastic-loose", lie.values())
    return Reason("elastic-used-up", lie.values(left=left))


def _back(lie: Lie) -> Reason:
    state = LENGTHS[lie.arrays.states[lie.row, lie.at]]
    if math.isinf(lie.low) and state is LengthState.CHECK:
        return Reason("back-no-lower-end", lie.values())
    if state in (LengthState.SHORT, LengthState.TOO_SHORT):
        return Reason(_BACK[state], lie.values(by=-lie.upper, b=lie.reach[1]))
    if state is LengthState.CLEAR and (let := _adjusted(lie)) is not None:
        return Reason(f"back-{let.code}", let.values)
    return Reason(_BACK[state], lie.values(by=-lie.lower, over=lie.lower))


def _other(lie: Lie) -> Reason:
    unit = {Dimension.WEIGHT: "weight", Dimension.AGE: "age"}.get(lie.dimension, "other")
    if min(lie.lower, lie.upper) >= -SLACK:
        return Reason(f"{unit}-inside{lie.form}", lie.values())
    side = "below" if lie.lower < lie.upper else "above"
    return Reason(f"{unit}-{side}", lie.values(by=-min(lie.lower, lie.upper)))
