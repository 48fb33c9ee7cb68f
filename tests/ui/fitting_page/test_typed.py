"""What a fitter types while listening: taken where it is plain, asked about where it is not."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.quantities import Unit
from harmonizer.rider import Measure
from ui.fitting_page.typed import Standing, interpret, with_unit


@pytest.mark.parametrize(
    ("text", "measure", "value"),
    [
        ("93", Measure.CHEST, "93"),
        ("93 cm", Measure.CHEST, "93"),
        ("92,5", Measure.CHEST, "92.5"),
        ("36.5 in", Measure.CHEST, "92.71"),
        ("36 1/2 in", Measure.CHEST, "92.71"),
        ("43", Measure.BACK_LENGTH, "43"),
        ("168", Measure.HEIGHT, "168"),
        ("60 kg", Measure.WEIGHT, "60"),
        ("930 mm", Measure.CHEST, "93"),
    ],
)
def test_a_plain_value_counts(text: str, measure: Measure, value: str) -> None:
    typed = interpret(text, measure)
    assert typed.standing is Standing.PLAIN
    assert typed.value == Decimal(value)


def test_stones_and_pounds_are_one_weight() -> None:
    """Source: 1 st is 14 lb, 1 lb is 0.45359237 kg, both exact."""
    typed = interpret("9 st 7", Measure.WEIGHT)
    assert typed.standing is Standing.PLAIN
    assert typed.value == Decimal(133) * Decimal("0.45359237")


def test_a_chest_of_36_is_asked_about_and_never_taken_as_centimetres() -> None:
    typed = interpret("36", Measure.CHEST)
    assert typed.standing is Standing.ASK
    assert typed.choices == (Unit.IN, Unit.CM)
    assert typed.value is None


def test_the_answer_gives_the_value_and_is_kept_in_the_text() -> None:
    answered = with_unit(interpret("36", Measure.CHEST), Unit.IN)
    assert answered.standing is Standing.PLAIN
    assert answered.value == Decimal("91.44")
    assert answered.text == "36 in"


def test_once_inches_are_spoken_a_figure_that_can_only_be_inches_is_plain() -> None:
    typed = interpret("30", Measure.WAIST, spoken=Unit.IN)
    assert typed.standing is Standing.PLAIN
    assert typed.value == Decimal("76.2")


def test_a_weight_that_may_be_pounds_is_asked_about() -> None:
    typed = interpret("132", Measure.WEIGHT)
    assert typed.standing is Standing.ASK
    assert typed.choices == (Unit.KG, Unit.LB)


def test_a_weight_after_readings_in_centimetres_is_in_kilograms() -> None:
    assert interpret("132", Measure.WEIGHT, spoken=Unit.CM).unit is Unit.KG


def test_a_childs_chest_of_60_is_centimetres_and_a_grown_riders_is_refused() -> None:
    assert interpret("60", Measure.CHEST, child=True).value == Decimal(60)
    assert interpret("60", Measure.CHEST).standing is not Standing.PLAIN


@pytest.mark.parametrize("text", ["92-94", "about a metre", "36 or 37", "cm"])
def test_what_is_no_single_value_is_refused(text: str) -> None:
    assert interpret(text, Measure.CHEST).standing is Standing.REFUSED


def test_a_unit_of_another_kind_is_refused() -> None:
    assert interpret("93 kg", Measure.CHEST).code == "typed-wrong-unit"


def test_36_cm_is_questioned_for_a_grown_chest_with_inches_first() -> None:
    typed = interpret("36 cm", Measure.CHEST)
    assert typed.standing is Standing.ASK
    assert typed.choices == (Unit.IN, Unit.CM)
    assert with_unit(typed, Unit.IN).text == "36 in"


def test_a_figure_beyond_any_body_can_still_be_insisted_on() -> None:
    typed = interpret("165 cm", Measure.CHEST)
    assert typed.standing is Standing.ASK
    assert with_unit(typed, Unit.CM).value == Decimal(165)


def test_an_empty_field_asks_nothing() -> None:
    assert interpret("  ", Measure.CHEST).standing is Standing.EMPTY


@given(st.text(max_size=20))
def test_whatever_is_typed_counts_or_says_why_not(text: str) -> None:
    typed = interpret(text, Measure.CHEST)
    assert (typed.value is not None) is (typed.standing is Standing.PLAIN)
    assert bool(typed.code) is (typed.standing in (Standing.ASK, Standing.REFUSED))


@given(st.decimals(min_value=0, max_value=400, places=1, allow_nan=False))
def test_a_bare_figure_is_never_taken_for_what_no_body_measures(figure: Decimal) -> None:
    typed = interpret(str(figure), Measure.CHEST)
    if typed.standing is Standing.PLAIN:
        assert typed.value is not None
        assert 66 <= typed.value <= 160
