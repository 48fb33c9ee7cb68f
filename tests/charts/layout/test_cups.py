"""Cups: grids of numbers and cups, cups in headings, a column of cups beside the numbers."""

from __future__ import annotations

import pytest

from charts.layout.cups import are_cups, cup_in
from tests.charts.read_text import questions, table, values


@pytest.mark.parametrize(
    ("text", "letters", "rest"),
    [
        ("A/B", "A/B", ""),
        ("A-C cup", "A-C", ""),
        ("Cup DD", "DD", ""),
        ("Bust D-DD cup (cm)", "D-DD", "Bust (cm)"),
        ("Brustumfang Körbchen B", "B", "Brustumfang"),
        ("Bust (A–C)", "A-C", "Bust"),
    ],
)
def test_a_heading_names_its_cups(text: str, letters: str, rest: str) -> None:
    found = cup_in(text)
    assert found is not None
    assert (found.letters, found.rest) == (letters, rest)


@pytest.mark.parametrize("text", ["S/M", "XL", "Chest", "M cup", "EU", "Size A or B"])
def test_what_names_no_cup(text: str) -> None:
    assert cup_in(text) is None


def test_cups_rise_and_start_low_unless_the_word_is_there() -> None:
    assert are_cups(["AA", "A", "B", "DD"])
    assert are_cups(["A/B", "C/D"])
    assert are_cups(["D cup", "DD cup"])
    assert not are_cups(["D", "E"])
    assert not are_cups(["B", "A"])
    assert not are_cups(["A", "Waist"])


def test_a_grid_of_bands_and_cups_gives_both_girths() -> None:
    reading = table(
        """
        Underband (cm) | B | C
        70 (68-72) | 83-85 | 85-87
        75 (73-77) | 88-90 | 90-92
        Bust girths in cm.
        """
    )
    assert values(reading) == {
        "70B underbust": (68, 72), "70B chest": (83, 85),
        "70C underbust": (68, 72), "70C chest": (85, 87),
        "75B underbust": (73, 77), "75B chest": (88, 90),
        "75C underbust": (73, 77), "75C chest": (90, 92),
    }  # fmt: skip
    assert questions(reading) == []


def test_figures_under_cups_that_nothing_names_are_asked_about_once() -> None:
    reading = table(
        """
         | A | B | C
        70 | 82-84 cm | 84-86 cm | 86-88 cm
        75 | 87-89 cm | 89-91 cm | 91-93 cm
        """
    )
    assert values(reading)["75C chest"] == (91, 93)
    assert questions(reading) == ["heading-two-readings"]


def test_two_cups_of_one_girth_are_two_sizes() -> None:
    reading = table(
        """
        Size | Waist (cm) | Bust A-C cup (cm) | Bust D-F cup (cm)
        S | 66-70 | 84-88 | 89-94
        M | 71-75 | 89-93 | 95-100
        """
    )
    assert values(reading) == {
        "S A-C waist": (66, 70), "S A-C chest": (84, 88),
        "S D-F waist": (66, 70), "S D-F chest": (89, 94),
        "M A-C waist": (71, 75), "M A-C chest": (89, 93),
        "M D-F waist": (71, 75), "M D-F chest": (95, 100),
    }  # fmt: skip
    assert questions(reading) == []


def test_cups_stand_below_the_girth_and_in_rows_too() -> None:
    across = table(
        """
        Size | Waist (cm) | Bust (cm) |
         | | A/B | C/D
        34 | 66-70 | 85-88 | 89-92
        36 | 71-75 | 90-93 | 94-97
        """
    )
    assert values(across)["36 C/D chest"] == (94, 97)
    assert values(across)["36 A/B waist"] == (71, 75)
    turned = table(
        """
        Size | S | M
        Bust A-C cup (cm) | 84-88 | 89-93
        Bust D-F cup (cm) | 89-94 | 95-100
        Waist (cm) | 66-70 | 71-75
        """
    )
    assert values(turned)["M D-F chest"] == (95, 100)
    assert questions(across) == questions(turned) == []


def test_a_cup_in_both_units_is_one_cup() -> None:
    reading = table(
        """
        Size | Bust (in) A-C | Bust (cm) A-C | Bust (in) D-F | Bust (cm) D-F
        10 | 33-35 | 84-89 | 36-38 | 91-97
        12 | 35-37 | 89-94 | 38-40 | 97-102
        """
    )
    assert values(reading)["12 D-F chest"] == (97, 102)
    assert len(values(reading)) == 4


def test_a_column_of_cups_completes_the_size() -> None:
    reading = table(
        """
        Size | Cup | Bust (cm)
        34 | A | 84-86
         | B | 86-88
        36 | A | 89-91
        """
    )
    expected = {"34A chest": (84, 86), "34B chest": (86, 88), "36A chest": (89, 91)}
    assert values(reading) == expected


def test_the_girth_under_the_bust_in_a_column_tells_what_the_cups_are() -> None:
    reading = table(
        """
        Band | Underband (cm) | A | B | C
        30 | 63-67 | 77-79 | 79-81 | 81-83
        32 | 68-72 | 82-84 | 84-86 | 86-88
        """
    )
    assert values(reading)["32C chest"] == (86, 88)
    assert values(reading)["32C underbust"] == (68, 72)
    assert questions(reading) == []


def test_letters_that_refer_to_a_drawing_are_no_cups() -> None:
    reading = table(
        """
        Size | A | B | C
        S | 84-88 cm | 66-70 cm | 90-94 cm
        M | 88-92 cm | 70-74 cm | 94-98 cm
        """
    )
    assert set(questions(reading)) == {"heading-unknown"}
    assert {chart.sizes[0].label for chart in reading.charts} == {"S"}


def test_a_letter_behind_a_measure_loses_no_column() -> None:
    reading = table(
        """
        Size | Chest A | Waist B | Hip C
        S | 84-88 cm | 66-70 cm | 90-94 cm
        M | 88-92 cm | 70-74 cm | 94-98 cm
        """
    )
    assert values(reading)["M hip"] == (94, 98)


def test_sizes_inside_a_grid_of_girths_and_cups() -> None:
    reading = table(
        """
        Bust (cm) | A | B | C
        83-85 | 75A | 70B | 70C
        86-88 | 80A | 75B | 70D
        """
    )
    assert values(reading)["70D chest"] == (86, 88)
    assert len(values(reading)) == 6


def test_a_size_that_ends_in_its_cup_is_not_given_it_again() -> None:
    reading = table(
        """
        Größe | Brust (cm) | Körbchen
        75 A | 86-88 | A
        80-B | 93-95 | B
        34DD (75 E) | 99-101 | E
        85 | 97-99 | A
        """
    )
    assert set(values(reading)) == {"75 A chest", "80-B chest", "34DD chest", "85A chest"}
