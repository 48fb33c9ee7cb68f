"""Sizes with what they are for in brackets, one a line or all in one line."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.bracketed_sizes import bracketed_size_table
from charts.readers.captured.lines import numbered
from tests.charts.read_text import questions, values

_CHESTS = {"S chest": (82, 86), "M chest": (87, 91), "L chest": (92, 96)}


@pytest.mark.parametrize(
    ("title", "under", "between", "over", "labels"),
    [
        ("Vest size", "Up to 50kg", "50kg to 75kg", "Over 75 kg", "S M L"),
        ("Größe", "bis 50 kg", "50 bis 75 kg", "mehr als 75 kg", "S M L"),
        ("Tamanho do colete", "Até 50kg", "50kg a 75kg", "Acima de 75kg", "P M G"),
        ("Taille", "jusqu'à 50kg", "50 à 75kg", "plus de 75kg", "S M L"),
        ("Taille", "jusqu'à 50kg / 110lbs", "50 à 75kg / 110 à 165lbs", "plus de 75kg", "S M L"),
        ("Storlek", "upp till 50 kg", "50-75 kg", "över 75 kg", "S M L"),
        ("", "Up to 50kg", "50-75 kg", "75 kg +", "Small Medium Large"),
    ],
)
def test_a_mass_in_brackets_is_the_wearers(
    title: str, under: str, between: str, over: str, labels: str
) -> None:
    sizes = labels.split()
    said = zip(sizes, (under, between, over), strict=True)
    reading = read_pasted("\n".join([title, *(f"{size} ({mass})" for size, mass in said)]))
    low, middle, high = (f"{size} weight" for size in sizes)
    assert values(reading) == {low: (None, 50), middle: (50, 75), high: (75, None)}
    assert questions(reading) == []


def test_two_lists_one_below_the_other_are_both_read() -> None:
    reading = read_pasted(
        "Adult vest\nS (Up to 50kg)\nM (50kg to 75kg)\n\n"
        "Kids vest\nS (Up to 20kg)\nM (20 to 30kg)\n"
    )
    assert [chart.title for chart in reading.charts] == ["Adult vest", "Kids vest"]
    figures = [one for chart in reading.charts for size in chart.sizes for one in size.ranges]
    assert [(one.low, one.high) for one in figures] == [(None, 50), (50, 75), (None, 20), (20, 30)]
    assert questions(reading) == []


@pytest.mark.parametrize(
    "line",
    [
        "Sizes: S (chest 82-86 cm); M (chest 87-91 cm); L (chest 92-96 cm)",
        "Available in S (chest 82-86 cm), M (chest 87-91 cm) and L (chest 92-96 cm).",
        "Größen: S (Brustumfang 82-86 cm) | M (Brustumfang 87-91 cm) | L (Brustumfang 92-96 cm)",
        "S (82-86 cm chest) / M (87-91 cm chest) / L (92-96 cm chest)",
    ],
)
def test_all_sizes_may_stand_in_one_line(line: str) -> None:
    assert values(read_pasted(line)) == _CHESTS


def test_several_measures_may_stand_in_a_bracket() -> None:
    line = "Sizes: S (chest 82-86 cm, waist 66-70 cm), M (chest 87-91 cm, waist 71-75 cm)"
    assert values(read_pasted(line)) == {
        "S chest": (82, 86),
        "S waist": (66, 70),
        "M chest": (87, 91),
        "M waist": (71, 75),
    }


@pytest.mark.parametrize(
    "text",
    [
        "Vest size\nS (82-86)\nM (87-91)\n",  # of what, and in which unit
        "S (50 kg)\n",
        "S (sold out)\nM (50 kg)\n",
        "The model weighs 70 kg\nS (50 kg)\nM (60 kg)\n",
        "Sizes: S (chest 82-86 cm), M (waist 71-75 cm)",
        "S (50 kg, € 89)\nM (60 kg, € 89)\n",
        "Fernhollow (50 kg)\nOakmere (60 kg)\n",
    ],
)
def test_other_brackets_make_no_table(text: str) -> None:
    assert bracketed_size_table(numbered(text)) is None
