"""Lists whose sizes stand behind the mass or the measures that they are for."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.sizes_behind import sizes_behind_table
from tests.charts.read_text import questions, values


@pytest.mark.parametrize("joint", [": ", " = ", " → ", "→", " - ", " – ", ": size ", " = Size "])
def test_a_mass_before_its_size(joint: str) -> None:
    said = [("Under 40 kg", "XS"), ("40 - 55 kg", "S"), ("55 - 70 kg", "M"), ("70kg+", "L")]
    reading = read_pasted("\n".join(f"{mass}{joint}{size}" for mass, size in said))
    assert values(reading) == {
        "XS weight": (None, 40),
        "S weight": (40, 55),
        "M weight": (55, 70),
        "L weight": (70, None),
    }
    assert questions(reading) == []


def test_named_measures_before_their_size() -> None:
    reading = read_pasted(
        "• Brust 82-86 cm, Taille 66-70 cm = Größe 36\n"
        "• Brust 87-91 cm, Taille 71-75 cm = Größe 38\n"
    )
    assert values(reading) == {
        "36 chest": (82, 86),
        "36 waist": (66, 70),
        "38 chest": (87, 91),
        "38 waist": (71, 75),
    }


def test_the_line_above_may_name_the_measure() -> None:
    reading = read_pasted("Körpergröße\n150-159 cm: S\n160-169 cm: M\n")
    assert values(reading) == {"S height": (150, 159), "M height": (160, 169)}
    assert questions(reading) == []


def test_a_size_may_be_a_word_among_sizes() -> None:
    reading = read_pasted(
        "Weight 30-40kg - Junior\nWeight 41-60kg - Small\nWeight 61-80kg - Medium\n"
    )
    assert list(values(reading).values()) == [(30, 40), (41, 60), (61, 80)]


@pytest.mark.parametrize(
    "text",
    [
        "150-160 cm: S\n160-170 cm: M\n",  # of what
        "Chest 82-86 cm = 32-34 in\nChest 87-91 cm = 34-36 in\n",
        "Chest 82 cm - 86\nChest 87 cm - 91\n",
        "Chest 32 - 34\nChest 36 - 38\n",
        "40-55 kg: S\n",
        "40-55 kg: blue\n55-70 kg: red\n",
        "40-55 kg: S\n56-70 kg: S\n",
        "40-55 kg, 49 €: S\n55-70 kg, 49 €: M\n",
    ],
)
def test_what_is_no_such_list_is_none(text: str) -> None:
    assert sizes_behind_table(numbered(text)) is None
