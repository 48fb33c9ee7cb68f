"""A unit that stands nowhere is told from the figures of all columns together, and asked."""

from __future__ import annotations

import pytest

from charts.quantities import Unit
from tests.charts.read_text import asked_at, questions, ranges, table, values


def units_of(text: str) -> set[Unit | None]:
    """The units in which values that print none were read, told from the first of them."""
    reading = table(text)
    assert {one.place for one in ranges(reading)} <= set(asked_at(reading, "unit-missing"))
    found = set()
    for one in ranges(reading):
        length = one.value if one.value is not None else one.low
        if length is not None:
            printed = float(one.published.split("-")[0])
            found.add(Unit.IN if abs(float(length) - 2.54 * printed) < 0.01 else Unit.CM)
    return found


def test_a_garments_length_of_thirty_is_in_inches_and_so_is_the_width_beside_it() -> None:
    text = """
        Size | Width | Length
        S    | 22 | 28.5
        M    | 23 | 29.5
        L    | 24 | 30.5
    """
    assert units_of(text) == {Unit.IN}


def test_a_girth_that_could_be_half_in_cm_follows_the_lengths_beside_it() -> None:
    inches = (
        "Size | S | M | L\nChest | 52 | 54 | 57\nBody length | 30 | 31 | 32\nCollar | 5 | 5 | 6"
    )
    assert units_of(inches) == {Unit.IN}
    metric = (
        "Maat | Borst | Lengte | Schouder\nS | 53 | 72 | 45\nM | 55 | 74 | 47\nL | 57 | 76 | 49"
    )
    assert units_of(metric) == {Unit.CM}


def test_widths_follow_the_length_that_no_garment_has_in_inches() -> None:
    text = "Größe | Brustbreite | Länge\nS | 54 | 71\nM | 57 | 73\nL | 60 | 75"
    assert units_of(text) == {Unit.CM}


@pytest.mark.parametrize("age", ["year", "years", "Jahre"])
def test_one_figure_beyond_the_limits_does_not_change_the_unit_of_the_others(age: str) -> None:
    text = f"""
        Age     | chest | waist | shoulder
        1 {age} | 19    | 18    | 7.5
        3 {age} | 22    | 21    | 8.5
        5 {age} | 24    | 23    | 9.5
        6 {age} | 25    | 24    | 10
    """
    assert units_of(text) == {Unit.IN}


def test_a_few_figures_more_prove_no_inches() -> None:
    text = "Tamanho | Cintura\nPP | 42\nP | 44\nM | 48\nG | 54\nGG | 58\n2 | 60\n4 | 62\n6 | 66"
    assert units_of(text) == {Unit.CM}


def test_a_body_in_cm_stays_one_beside_short_sleeves() -> None:
    reading = table("Size | Chest | Sleeve\nS | 88-92 | 22\nM | 92-96 | 23\nL | 96-100 | 24")
    assert values(reading)["M chest"] == (92, 96)
    assert values(reading)["M arm_length"] == 23


def test_a_unit_said_of_all_columns_holds_where_half_of_the_figures_can_be_right() -> None:
    text = """
        Size   | 34     | 36     | 38     | 40
        Chest  | 37     | 39     | 41     | 43
        Waist  | 32 1/2 | 34 1/2 | 36 1/2 | 38 1/2
        Sleeve | 23     | 42     | 43     | 45
        Unit: Inch
    """
    reading = table(text)
    assert values(reading)["36 arm_length"] == 106.68
    assert {"B4", "C4", "D4", "E4"} <= set(asked_at(reading, "unit-missing"))


def test_two_columns_of_one_name_are_no_two_units_where_their_figures_are_far_apart() -> None:
    text = (
        "Size | S | M | L\nChest (in) | 38 | 40 | 42\nSleeve | 33 | 34 | 35\nArm (in) | 7 | 8 | 8"
    )
    reading = table(text)
    assert "units-disagree" not in {one.code for one in reading.findings}


@pytest.mark.parametrize("height", ["1.60 m", "5'4\""])
def test_no_garment_is_as_long_as_the_unit_of_a_height_would_make_it(height: str) -> None:
    reading = table(f"Size | Height | Length\nS | {height} | 70\nM | 1.68 m | 72\nL | 1.75 m | 74")
    lengths = [one for one in ranges(reading) if one.heading == "Length"]
    assert [one.value for one in lengths] == [70, 72, 74]
    assert {"C2", "C3", "C4"} <= set(asked_at(reading, "unit-missing"))


def test_a_length_in_the_inches_of_the_girths_beside_it_is_not_asked_about() -> None:
    reading = table("Size | Chest (in) | Length\nS | 36 | 27\nM | 38 | 28\nL | 40 | 60")
    assert questions(reading) == []


def test_a_length_too_long_for_the_inches_of_the_girths_beside_it_is() -> None:
    reading = table("Size | Chest (in) | Length\nS | 36 | 70\nM | 38 | 72\nL | 40 | 74")
    assert asked_at(reading, "unit-missing") == ["C2", "C3", "C4"]
