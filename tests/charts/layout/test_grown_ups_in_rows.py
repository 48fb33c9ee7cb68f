"""``Adults`` alone in a row parts the sizes as ``Women`` does, though it names no band."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.schema import FileReading
from tests.charts.read_text import questions, table


def sizes(reading: FileReading) -> list[tuple[str | None, list[str | None]]]:
    return [(chart.band, [size.label for size in chart.sizes]) for chart in reading.charts]


@pytest.mark.parametrize(
    ("kids", "adults"),
    [("Kids", "Adults"), ("Kinder", "Erwachsene"), ("Enfants", "Adultes:"), ("Barn", "Vuxna")],
)
@pytest.mark.parametrize("grown", [("S", "M"), ("104", "116")])
def test_rows_below_adults_are_no_childrens(kids: str, adults: str, grown: tuple[str, str]) -> None:
    reading = table(
        f"Size | Chest (cm) | Height (cm)\n{kids} | | \n"
        "104 | 56-59 | 98-104\n116 | 60-63 | 110-116\n"
        f"{adults} | | \n{grown[0]} | 82-88 | 158-166\n{grown[1]} | 89-95 | 166-174"
    )
    assert sizes(reading) == [("kids", ["104", "116"]), (None, list(grown))]
    assert questions(reading) == []


def test_lines_below_adults_are_no_childrens() -> None:
    reading = read_pasted(
        "Kids\nS: chest 58-62 cm, height 110-120 cm\nM: chest 63-67 cm, height 121-131 cm\n"
        "Adults\nS: chest 82-88 cm, height 158-166 cm\nM: chest 89-95 cm, height 166-174 cm\n"
    )
    assert sizes(reading) == [("kids", ["S", "M"]), (None, ["S", "M"])]
    assert questions(reading) == []


def test_a_size_for_adults_without_figures_is_a_size() -> None:
    reading = table("Size | Chest (cm)\nChild | 60-66\nYouth | 68-74\nAdult | 84-90")
    assert sizes(reading) == [(None, ["Child", "Youth", "Adult"])]
