"""What must hold whatever is printed and whoever is measured."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from charts.model_facts import Adjuster
from charts.quantities import Unit, canonical
from charts.schema import Chart, Dimension, Range
from harmonizer.fit import fit
from harmonizer.rider import Measure, Reading, Rider, TakenBy
from harmonizer.settings import DEFAULTS
from harmonizer.states import GIRTHS, LENGTHS
from tests.harmonizer.by_hand import (
    BACK,
    CHEST,
    HIP,
    MAIN,
    WAIST,
    chart,
    fitted,
    model,
    rider,
    size,
    span,
    table,
)
from tests.harmonizer.random_charts import charts, riders

GIRTH = st.sampled_from([CHEST, WAIST, HIP])
ANY = st.sampled_from(MAIN)
eighths = st.integers(-8 * 12, 8 * 12).map(lambda steps: Decimal(steps) / 8)


WORTH = {str(one): place for family in (GIRTHS, LENGTHS) for place, one in enumerate(family)}


def worth(state: str) -> int:
    """The place of a state in its family, best first."""
    return WORTH[state]


def one_size(dimension: Dimension, low: Decimal, high: Decimal) -> Chart:
    return chart(size("M", span(dimension, str(low), str(high))))


def state_of(dimension: Dimension, reading: Decimal, made: Chart) -> str:
    return fitted(rider(**{dimension.value: reading}), made, label="M").dimensions[dimension].state


@given(dimension=ANY, low=st.integers(400, 1100), width=st.integers(1, 100))
def test_touching_is_never_outside(dimension: Dimension, low: int, width: int) -> None:
    bottom, top = Decimal(low) / 10, Decimal(low + width) / 10
    made = one_size(dimension, bottom, top)
    outside = {"near", "miss", "short", "too_short", "likely_long", "too_long"}
    for end in (bottom, top, bottom - Decimal("0.00009"), top + Decimal("0.00009")):
        assert state_of(dimension, end, made) not in outside


@given(dimension=ANY, reading=eighths, down=st.integers(0, 20), up=st.integers(0, 20))
def test_widening_a_closed_range_never_worsens_a_state(
    dimension: Dimension, reading: Decimal, down: int, up: int
) -> None:
    low, high = Decimal(90), Decimal(95)
    narrow = state_of(dimension, 92 + reading, one_size(dimension, low, high))
    wide = state_of(dimension, 92 + reading, one_size(dimension, low - down, high + up))
    assert worth(wide) <= worth(narrow)


def shifted(item: Range, by: Decimal) -> Range:
    moved = {
        name: getattr(item, name) + by
        for name in ("low", "high", "value")
        if getattr(item, name) is not None
    }
    return replace(item, **moved)


@given(who=riders(complete=True), made=charts(), by=st.integers(-20, 20))
def test_shifting_rider_and_chart_together_changes_nothing(
    who: Rider, made: Chart, by: int
) -> None:
    step = Decimal(by)
    moved_rider = replace(
        who, readings=tuple(replace(one, value=one.value + step) for one in who.readings)
    )
    moved_chart = replace(
        made,
        sizes=tuple(
            replace(one, ranges=tuple(shifted(item, step) for item in one.ranges))
            for one in made.sizes
        ),
    )
    before, after = fit(who, table(made)), fit(moved_rider, table(moved_chart))
    assert (before.states == after.states).all()
    assert (before.verdicts == after.verdicts).all()
    assert (before.order == after.order).all()


@given(half_inches=st.integers(60, 90), who_quarters=st.integers(110, 190))
def test_changing_units_changes_nothing(half_inches: int, who_quarters: int) -> None:
    """The same figures as inches and as the centimetres they are exactly."""
    low = canonical(Decimal(half_inches) / 2, Unit.IN)
    ends = span(CHEST, str(low), str(low + 5), step="1.27")
    in_inches = chart(size("M", replace(ends, published_unit=Unit.IN)))
    in_cm = chart(size("M", replace(ends, published_unit=Unit.CM)))
    value = canonical(Decimal(who_quarters) / 4, Unit.IN)
    typed_in_inches = rider(chest=Reading(Measure.CHEST, value, unit=Unit.IN))
    typed_in_cm = rider(chest=Reading(Measure.CHEST, value, unit=Unit.CM))
    one = fitted(typed_in_inches, in_inches, label="M").dimensions[CHEST]
    other = fitted(typed_in_cm, in_cm, label="M").dimensions[CHEST]
    assert (one.state, one.lower_margin, one.upper_margin, one.probability) == (
        other.state,
        other.lower_margin,
        other.upper_margin,
        other.probability,
    )


@given(dimension=GIRTH, start=st.integers(0, 80), further=st.integers(1, 40))
def test_probability_falls_as_the_rider_leaves_the_range(
    dimension: Dimension, start: int, further: int
) -> None:
    made = one_size(dimension, Decimal(88), Decimal(96))

    def chance(reading: Decimal) -> float:
        found = fitted(rider(**{dimension.value: reading}), made, label="M")
        return found.dimensions[dimension].probability or 0.0

    near = Decimal(92) + Decimal(start) / 10
    assert chance(near + Decimal(further) / 10) <= chance(near)
    below = Decimal(92) - Decimal(start) / 10
    assert chance(below - Decimal(further) / 10) <= chance(below)


TAPES = (TakenBy.FITTER, TakenBy.FITTER_ONCE, TakenBy.HELPER)


@given(reading=eighths, better=st.sampled_from([0, 1]))
def test_a_worse_tape_never_makes_a_length_milder(reading: Decimal, better: int) -> None:
    made = one_size(BACK, Decimal(42), Decimal(45))
    states = [
        fitted(rider(tape, back_length=43 + reading), made, label="M").dimensions[BACK].state
        for tape in TAPES[better : better + 2]
    ]
    assert worth(states[1]) >= worth(states[0])
    assert (states[0] == "too_long") is (states[1] == "too_long")


@given(
    dimension=ANY,
    reading=eighths,
    ways=st.tuples(*[st.integers(0, 5)] * 2),
    more=st.tuples(*[st.integers(0, 5)] * 2),
)
def test_a_wider_adjuster_never_worsens_a_state(
    dimension: Dimension, reading: Decimal, ways: tuple[int, int], more: tuple[int, int]
) -> None:
    who = rider(**{dimension.value: 92 + reading})
    made = one_size(dimension, Decimal(88), Decimal(96))

    def adjusted(take_in: int, let_out: int) -> str:
        facts = {dimension: Adjuster(Decimal(take_in), Decimal(let_out))}
        return (
            fitted(who, model("Elm", made, adjusters=facts), label="M").dimensions[dimension].state
        )

    narrow, wide = adjusted(*ways), adjusted(ways[0] + more[0], ways[1] + more[1])
    assert worth(wide) <= worth(narrow)


@given(who=riders(complete=True), made=charts(), thickness=st.integers(1, 15))
def test_winter_layers_never_make_a_size_looser(who: Rider, made: Chart, thickness: int) -> None:
    compiled = table(made)
    summer = fit(replace(who, winter_mm=Decimal(0)), compiled)
    winter = fit(replace(who, winter_mm=Decimal(thickness)), compiled)
    seen = ~(summer.lower != summer.lower)
    assert (winter.lower[seen] >= summer.lower[seen]).all()
    assert (winter.upper[seen] <= summer.upper[seen]).all()
    assert (winter.lower[3][seen[3]] == summer.lower[3][seen[3]]).all()


@given(who=riders(complete=True), made=charts())
def test_no_back_reading_means_nothing_reads_fits(who: Rider, made: Chart) -> None:
    without = replace(
        who, readings=tuple(one for one in who.readings if one.measure is not Measure.BACK_LENGTH)
    )
    verdicts = {row.verdict.value for row in fit(without, table(made)).rows}
    assert not verdicts & {"fits", "edge", "check_length", "too_long"}


def test_settings_are_part_of_the_answer() -> None:
    made = one_size(CHEST, Decimal(90), Decimal(98))
    stricter = replace(DEFAULTS, edge_band=3.0)
    who = rider(chest=92)
    assert fit(who, table(made)).row_of(0).dimensions[CHEST].state == "inside"
    sheet = fit(who, table(made), stricter)
    assert sheet.row_of(0).dimensions[CHEST].state == "edge"
    assert sheet.settings == stricter


def test_an_empty_table_gives_an_empty_sheet() -> None:
    sheet = fit(rider(chest=92), table())
    assert len(sheet.rows) == 0
    assert list(sheet.order) == []
