"""Random charts, facts and riders for properties that must hold whatever a supplier prints."""

from __future__ import annotations

from decimal import Decimal

from hypothesis import strategies as st

from charts.model_facts import Adjuster, ModelFacts, VestKind, WornOver
from charts.schema import Chart, Dimension, FileReading, Range, Size
from harmonizer.rider import Measure, Reading, Rider, TakenBy
from tests.harmonizer.by_hand import BACK, CHEST, HIP, MAIN, WAIST, chart, model, single, size, span

_ABOUT = {CHEST: (80, 110), WAIST: (64, 96), HIP: (88, 112), BACK: (38, 48)}
_WEIGHT = Dimension.WEIGHT


@st.composite
def ends(draw: st.DrawFn, dimension: Dimension) -> Range:
    """A range, an open end or a single value of one dimension."""
    first, last = _ABOUT.get(dimension, (40, 90))
    low = draw(st.integers(first - 4, last))
    width = draw(st.integers(1, 3 if dimension is BACK else 10))
    kind = draw(st.sampled_from(["range"] * 6 + ["up to", "from", "single"]))
    if kind == "single":
        return single(dimension, low)
    return span(
        dimension, None if kind == "up to" else low, None if kind == "from" else low + width
    )


@st.composite
def sizes(draw: st.DrawFn, label: str) -> Size:
    given = [one for one in (*MAIN, _WEIGHT) if draw(st.integers(0, 9)) > 0]
    return size(label, *(draw(ends(one)) for one in given))


@st.composite
def charts(draw: st.DrawFn) -> Chart:
    count = draw(st.integers(1, 5))
    return chart(*(draw(sizes(str(place))) for place in range(count)))


ways = st.builds(Adjuster, *(st.integers(0, 4).map(Decimal) for _ in range(2)))


@st.composite
def models(draw: st.DrawFn, name: str) -> tuple[FileReading, ModelFacts]:
    floor = draw(st.none() | st.integers(30, 60))
    ceiling = draw(st.none() | st.integers(70, 100))
    return model(
        name,
        draw(charts()),
        kind=draw(st.sampled_from([None, VestKind.FOAM, VestKind.INFLATABLE])),
        worn_over=draw(st.sampled_from([None, WornOver.LIGHT_SHIRT, WornOver.WARM_LAYERS])),
        weight_floor=None if floor is None else Decimal(floor),
        weight_ceiling=None if ceiling is None else Decimal(ceiling),
        adjusters={one: draw(ways) for one in draw(st.sets(st.sampled_from(MAIN), max_size=2))},
    )


@st.composite
def riders(draw: st.DrawFn, complete: bool = False) -> Rider:
    readings = []
    for one in (*MAIN, _WEIGHT):
        if complete or draw(st.integers(0, 9)) > 0:
            first, last = _ABOUT.get(one, (40, 90))
            steps = draw(st.integers(4 * (first - 6), 4 * (last + 6)))
            readings.append(Reading(Measure(one.value), Decimal(steps) / 4))
    return Rider(
        name="Rider",
        readings=tuple(readings),
        taken_by=draw(st.sampled_from([TakenBy.FITTER, TakenBy.FITTER_ONCE, TakenBy.HELPER])),
        winter_mm=Decimal(draw(st.sampled_from([0, 0, 3, 6, 12]))),
    )


__all__ = ["charts", "ends", "models", "riders", "sizes"]
