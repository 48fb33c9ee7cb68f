"""The worked examples of the fit model, section 13, each with its mark.

Marks: geo = geometry or a definition, cp = common practice of the trade (no source),
P25 = guard bands, JCGM 106:2012, P8 = PMC3598670 (one vertebra on a back length),
P23 = Br J Nutr 1999;82:165 (technical error of measurement).
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from charts.model_facts import Adjuster, Elastic
from charts.schema import Dimension
from harmonizer.fit import fit
from harmonizer.gates import Gate
from harmonizer.repeats import combined, technical_error
from harmonizer.rider import TakenBy
from harmonizer.states import GirthState, LengthState, Verdict
from tests.harmonizer.by_hand import (
    BACK,
    CHART_A,
    CHEST,
    RIDER_R,
    WAIST,
    chart,
    fitted,
    model,
    rider,
    row,
    rows_chart,
    size,
    span,
    table,
)

A = rows_chart(CHART_A)


def test_inch_range_reaches_exactly_to_its_inches() -> None:
    """[geo] 34-36 in = 86.36-91.44; a rider of 91.5 is tight by 0.06, not inside."""
    inches = chart(size("M", span(CHEST, "86.36", "91.44", step="2.54"), span(WAIST, 60, 90)))
    fit_of_chest = fitted(rider(chest="91.5", waist=70), inches, label="M").dimensions[CHEST]
    assert fit_of_chest.upper_margin == pytest.approx(-0.06)
    assert fit_of_chest.state is GirthState.NEAR
    assert fit_of_chest.reason.code == "tight-just"


@pytest.mark.parametrize(
    ("chest", "lower_state", "upper_state"),
    [("88.4", "edge", "near"), ("88.5", "edge", "edge"), ("88.6", "near", "edge")],
)
def test_printed_gap_belongs_to_the_nearer_size(
    chest: str, lower_state: str, upper_state: str
) -> None:
    """[cp] 84-88 / 89-93: 88.4 lower, 88.5 between, 88.6 upper."""
    gapped = chart(size("S", span(CHEST, 84, 88)), size("M", span(CHEST, 89, 93)))
    sheet = fit(rider(chest=chest), table(gapped))
    assert row(sheet, "S").dimensions[CHEST].state == lower_state
    assert row(sheet, "M").dimensions[CHEST].state == upper_state
    assert row(sheet, "S").between_sizes is (chest == "88.5")
    assert row(sheet, "M").between_sizes is (chest == "88.5")


def test_rider_r_in_m() -> None:
    """[cp] Chest inside at 0.375, waist tight by 2, hip inside, back 1.0 over: near, P 0.2591."""
    m = fitted(RIDER_R, A, label="M")
    assert m.dimensions[CHEST].state is GirthState.INSIDE
    assert m.dimensions[CHEST].position == pytest.approx(0.375)
    assert m.dimensions[WAIST].state is GirthState.NEAR
    assert m.dimensions[WAIST].upper_margin == pytest.approx(-2.0)
    assert m.dimensions[Dimension.HIP].state is GirthState.INSIDE
    assert m.dimensions[BACK].state is LengthState.CHECK
    assert m.dimensions[BACK].lower_margin == pytest.approx(1.0)
    assert m.verdict is Verdict.NEAR
    assert m.penalty == pytest.approx(0.2591, abs=0.00005)


@pytest.mark.parametrize(
    ("chest", "chance", "word"), [("97.5", 0.631, "likely"), (94, 0.992, "sure")]
)
def test_chance_in_range(chest: float | str, chance: float, word: str) -> None:
    """[P25] Chest in M with u 1.5."""
    from harmonizer.certainty import word as in_words

    pin = fitted(rider(TakenBy.HELPER, chest=chest), A, label="M").dimensions[CHEST].probability
    assert pin == pytest.approx(chance, abs=0.0005)
    assert pin is not None
    assert in_words(pin) == word


@pytest.mark.parametrize(
    ("label", "plen", "state"),
    [
        ("L", 0.159, LengthState.TOO_LONG),
        ("M", 0.841, LengthState.CHECK),
        ("S", 0.999, LengthState.CLEAR),
    ],
)
def test_length_with_a_fitters_tape(label: str, plen: float, state: LengthState) -> None:
    """[P25] Back 43.0, u 1.0."""
    back = fitted(RIDER_R, A, label=label).dimensions[BACK]
    assert back.probability == pytest.approx(plen, abs=0.0005)
    assert back.state is state


def test_size_s_is_clear_and_just_not_short() -> None:
    """[P25] Back 43.0 in S: 0.0 from short."""
    assert fitted(RIDER_R, A, label="S").dimensions[BACK].upper_margin == pytest.approx(0.0)


@pytest.mark.parametrize(
    ("label", "plen", "state"),
    [
        ("L", 0.356, LengthState.TOO_LONG),
        ("M", 0.644, LengthState.CHECK),
        ("S", 0.867, LengthState.CHECK),
    ],
)
def test_length_measured_remotely_passes_nowhere(
    label: str, plen: float, state: LengthState
) -> None:
    """[P8] Back 43.0, u 2.7: too long all the same, and nothing clear."""
    back = fitted(rider(TakenBy.HELPER, chest=93, back_length=43), A, label=label).dimensions[BACK]
    assert back.probability == pytest.approx(plen, abs=0.0005)
    assert back.state is state


def test_winter_layers_of_12_mm_fit_no_size() -> None:
    """[geo] Chest 91 becomes a band 91-98.54: tight by 0.54 in M, loose by 5 in L."""
    sheet = fit(rider(chest=91, winter_mm=Decimal(12)), table(A))
    assert row(sheet, "M").dimensions[CHEST].upper_margin == pytest.approx(-0.54, abs=0.005)
    assert row(sheet, "L").dimensions[CHEST].lower_margin == pytest.approx(-5.0)


def test_winter_layers_of_6_mm_fit_m() -> None:
    """[geo] Chest 91 becomes a band 91-94.77, which M serves both ends of."""
    m = fitted(rider(chest=91, winter_mm=Decimal(6)), A, label="M").dimensions[CHEST]
    assert m.layers == pytest.approx(3.77, abs=0.005)
    assert m.state is GirthState.INSIDE


ELASTIC = Elastic(relaxed=Decimal(84), part=Decimal(30), extension=Decimal("0.40"))


def test_elastic_with_reserve_left() -> None:
    """[geo] G0 84, E0 30, e 0.40: x 90 uses 0.50 and leaves 6.0."""
    found = fitted(rider(chest=90), model("Elm", A, elastic=ELASTIC), label="S")
    assert found.arrays.stretch[found.at] == pytest.approx(0.50)
    assert found.arrays.reserve[found.at] == pytest.approx(6.0)
    assert found.dimensions[CHEST].state is GirthState.INSIDE


def test_elastic_with_too_little_left_under_winter_layers() -> None:
    """[geo] x + g 93.77 uses 0.814 and leaves 2.23, 1.77 short of the 4 cm asked for."""
    who = rider(chest=90, winter_mm=Decimal(6))
    found = fitted(who, model("Elm", rows_chart({"M": ((84, 100),)}), elastic=ELASTIC), label="M")
    assert found.arrays.stretch[found.at] == pytest.approx(0.814, abs=0.0005)
    assert found.arrays.reserve[found.at] == pytest.approx(2.23, abs=0.005)
    assert found.dimensions[CHEST].state is GirthState.NEAR
    assert found.dimensions[CHEST].reason.code == "elastic-used-up"


def test_adjuster_widens_the_reach() -> None:
    """[cp] 88-96 with 4 cm either way reaches 84-100; a chest of 85 uses 0.75 of it."""
    ways = {CHEST: Adjuster(Decimal(4), Decimal(4))}
    adjustable = model("Elm", rows_chart({"M": ((88, 96),)}), adjusters=ways)
    chest = fitted(rider(chest=85), adjustable, label="M").dimensions[CHEST]
    assert (chest.reach_low, chest.reach_high) == (84.0, 100.0)
    assert (chest.published_low, chest.published_high) == (88.0, 96.0)
    assert chest.state is GirthState.INSIDE
    assert chest.adjuster_used == pytest.approx(0.75)


def test_rider_under_the_weight_floor_is_not_offered() -> None:
    """[T3] 70 lb = 31.75 kg; a rider of 30.0 kg is not offered the vest."""
    from charts.model_facts import VestKind
    from charts.quantities import Unit, canonical

    floor = canonical(Decimal(70), Unit.LB)
    assert float(floor) == pytest.approx(31.75, abs=0.005)
    vest = model("Elm", A, kind=VestKind.INFLATABLE, weight_floor=floor)
    found = fitted(rider(chest=93, weight="30.0"), vest, label="M")
    assert found.verdict is Verdict.NOT_OFFERED
    assert found.gates == (Gate.UNDER_WEIGHT_FLOOR,)


def test_repeated_readings_settle_on_the_median() -> None:
    """[P23] 92.0, 93.5, 92.5 -> 92.5."""
    assert combined([92.0, 93.5, 92.5], 1.0) == (92.5, False)


def test_house_error_of_pairs() -> None:
    """[P23] Pairs (92, 93.5) (78, 78.5) (101, 100): TEM 0.76."""
    pairs = [(92.0, 93.5), (78.0, 78.5), (101.0, 100.0)]
    assert technical_error(pairs) == pytest.approx(0.76, abs=0.005)
