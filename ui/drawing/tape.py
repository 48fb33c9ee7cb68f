"""One cell of the table as numbers: bars, caps, gaps and arrows on the rider's tape. No Qt.

The state is told by the shape where the rider's line meets the best size's bar: inside the bar
runs through; at the edge it has a thick cap on that side; outside there is a gap; a vest too long
has a notched bar; beyond the tape an arrow stands instead of a bar.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Final, NamedTuple

from ui.drawing.scale import Scale


class Side(StrEnum):
    """Left is the low end of a range, right the high end."""

    LEFT = "left"
    RIGHT = "right"


class Crossing(StrEnum):
    """How the rider's line meets the best size."""

    INSIDE = "inside"
    EDGE = "edge"
    OUTSIDE = "outside"
    TOO_LONG = "too_long"
    UNCHECKED = "unchecked"


class End(StrEnum):
    """How a bar ends: at a figure, fading where the chart gives none, or cut by the tape's end."""

    FIRM = "firm"
    FADING = "fading"
    CUT = "cut"


class SizeSpan(NamedTuple):
    """One size of the model in one dimension; ``low_cm`` or ``high_cm`` None is an open end.

    ``assumed``: a definition or basis the chart does not give. ``questioned``: a question about
    this value is open.
    """

    label: str
    low_cm: float | None
    high_cm: float | None
    best: bool = False
    assumed: bool = False
    questioned: bool = False


class Bar(NamedTuple):
    """One size on the tape, in pixels. Lane 0 is the best size's, 1 and 2 are the others'."""

    left: float
    right: float
    left_end: End
    right_end: End
    lane: int
    label: str
    best: bool
    assumed: bool
    questioned: bool
    notched: bool = False
    cap: Side | None = None


class Gap(NamedTuple):
    """The stretch between the rider (or the winter end) and the best size, in pixels and cm."""

    left: float
    right: float
    distance_cm: float


class Arrow(NamedTuple):
    """The best size lies wholly beyond the tape on ``side``, ``distance_cm`` from the rider."""

    side: Side
    distance_cm: float


class TapePicture(NamedTuple):
    """All that is drawn in one cell. ``winter`` is None where no layers go underneath.

    ``spread`` is where an estimate may lie, cut at the tape's ends; None for a reading.
    """

    rider: float
    winter: float | None
    bars: tuple[Bar, ...]
    gap: Gap | None
    arrow: Arrow | None
    crossing: Crossing
    spread: tuple[float, float] | None = None


_TOUCHING_CM: Final = 1e-4
_FAR: Final = float("inf")


@dataclass(frozen=True, slots=True)
class _Meeting:
    crossing: Crossing
    rider_cm: float
    winter_cm: float
    cap: Side | None


class _Edges(NamedTuple):
    """The tape's ends in cm, where 0 cm would stand, and pixels for one cm."""

    low_cm: float
    high_cm: float
    zero: float
    per_cm: float


def picture(
    scale: Scale,
    spans: Sequence[SizeSpan],
    crossing: Crossing,
    *,
    rider_cm: float | None = None,
    layers_cm: float = 0.0,
    cap: Side | None = None,
) -> TapePicture:
    """The picture of one model's sizes on one tape; ``spans`` stand ``in_order``.

    The rider stands at ``rider_cm``, else at the scale's centre; winter layers add ``layers_cm``.
    ``cap`` names the side that makes the state an edge, else the one with less left has the cap.
    """
    best = next((span for span in spans if span.best), None)
    at_cm = scale.centre_cm if rider_cm is None else rider_cm
    winter_cm = at_cm + layers_cm
    gap_cm = _gap(best, at_cm, winter_cm) if best else None
    arrow = _arrow(best, gap_cm, scale) if best and gap_cm else None
    return TapePicture(
        rider=scale.on_tape(at_cm),
        winter=scale.on_tape(winter_cm) if layers_cm > 0 else None,
        bars=_bars(scale, spans, _Meeting(crossing, at_cm, winter_cm, cap)),
        gap=None if arrow else _drawn_gap(gap_cm, scale),
        arrow=arrow,
        crossing=crossing,
    )


def estimate_picture(
    scale: Scale, spans: Sequence[SizeSpan], mean_cm: float, ends_cm: tuple[float, float]
) -> TapePicture:
    """The sizes beside an estimate and its spread: no gap, cap, notch or arrow tells a state."""
    nothing = _Meeting(Crossing.UNCHECKED, mean_cm, mean_cm, None)
    return TapePicture(
        rider=scale.on_tape(mean_cm),
        winter=None,
        bars=_bars(scale, spans, nothing),
        gap=None,
        arrow=None,
        crossing=Crossing.UNCHECKED,
        spread=spread_of(scale, ends_cm),
    )


def spread_of(scale: Scale, ends_cm: tuple[float, float]) -> tuple[float, float]:
    """Where an estimate may lie, in pixels, cut at the tape's ends."""
    low, high = (scale.on_tape(one) for one in ends_cm)
    return low, high


def _gap(span: SizeSpan, rider_cm: float, winter_cm: float) -> tuple[float, float] | None:
    """The stretch in cm from the rider to the nearer end of ``span``; the larger one counts."""
    loose = span.low_cm - rider_cm if span.low_cm is not None else 0.0
    tight = winter_cm - span.high_cm if span.high_cm is not None else 0.0
    if max(loose, tight) <= _TOUCHING_CM:
        return None
    if loose >= tight:
        return rider_cm, rider_cm + loose
    return winter_cm - tight, winter_cm


def _arrow(span: SizeSpan, gap_cm: tuple[float, float], scale: Scale) -> Arrow | None:
    distance = gap_cm[1] - gap_cm[0]
    if span.low_cm is not None and span.low_cm >= scale.high_cm:
        return Arrow(Side.RIGHT, distance)
    if span.high_cm is not None and span.high_cm <= scale.low_cm:
        return Arrow(Side.LEFT, distance)
    return None


def _drawn_gap(gap_cm: tuple[float, float] | None, scale: Scale) -> Gap | None:
    if gap_cm is None:
        return None
    left, right = (scale.on_tape(value) for value in gap_cm)
    return Gap(left, right, gap_cm[1] - gap_cm[0])


def _bars(scale: Scale, spans: Sequence[SizeSpan], meeting: _Meeting) -> tuple[Bar, ...]:
    """The bars on the tape, the others from left to right and the best one last."""
    bars: list[Bar] = []
    best: Bar | None = None
    ends = [-_FAR, -_FAR]
    edges = _Edges(scale.low_cm, scale.high_cm, scale.x(0.0), scale.pixels_per_cm)
    for span in spans:
        low, high = span.low_cm, span.high_cm
        if low is not None and low >= edges.high_cm:
            break  # in order: those that follow begin further right still
        if high is not None and high <= edges.low_cm:
            continue  # seen by numbers alone: most sizes of a long run lie beyond the tape
        stretch = _stretch(span, edges)
        if stretch is None:
            continue
        if span.best:
            best = _bar(span, stretch, 0, edges, meeting)
            continue
        lane = 1 if stretch[0] > ends[0] or ends[0] <= ends[1] else 2
        ends[lane - 1] = stretch[1]
        bars.append(_bar(span, stretch, lane, edges, meeting))
    return (*bars, best) if best is not None else tuple(bars)


def _bar(
    span: SizeSpan,
    stretch: tuple[float, float],
    lane: int,
    edges: _Edges,
    meeting: _Meeting,
) -> Bar:
    capped = span.best and meeting.crossing is Crossing.EDGE
    return Bar(
        left=stretch[0],
        right=stretch[1],
        left_end=_end(span.low_cm, span.low_cm is not None and span.low_cm < edges.low_cm),
        right_end=_end(span.high_cm, span.high_cm is not None and span.high_cm > edges.high_cm),
        lane=lane,
        label=span.label,
        best=span.best,
        assumed=span.assumed,
        questioned=span.questioned,
        notched=span.best and meeting.crossing is Crossing.TOO_LONG,
        cap=(meeting.cap or _cap(span, meeting.rider_cm, meeting.winter_cm)) if capped else None,
    )


def in_order(span: SizeSpan) -> tuple[float, float]:
    """Sorts sizes from left to right, open ends outermost."""
    return (
        -_FAR if span.low_cm is None else span.low_cm,
        _FAR if span.high_cm is None else span.high_cm,
    )


def _stretch(span: SizeSpan, edges: _Edges) -> tuple[float, float] | None:
    """The part of ``span`` on the tape in pixels, None where nothing of it is."""
    low, high = span.low_cm, span.high_cm
    if low is None and high is None:
        return None
    left, right = edges.low_cm, edges.high_cm
    if low is not None:
        if low >= right:
            return None
        left = max(low, left)
    if high is not None:
        if high <= left:
            return None
        right = min(high, right)
    return edges.zero + left * edges.per_cm, edges.zero + right * edges.per_cm


def _end(value_cm: float | None, beyond: bool) -> End:
    if value_cm is None:
        return End.FADING
    return End.CUT if beyond else End.FIRM


def _cap(span: SizeSpan, rider_cm: float, winter_cm: float) -> Side | None:
    """The side with less left; None where both ends are open."""
    below = float("inf") if span.low_cm is None else rider_cm - span.low_cm
    above = float("inf") if span.high_cm is None else span.high_cm - winter_cm
    if below == above == float("inf"):
        return None
    return Side.LEFT if below <= above else Side.RIGHT
