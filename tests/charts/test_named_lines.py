"""No line with a measure's or a size's name and figures behind it is passed over in silence."""

from __future__ import annotations

import pytest

from charts.checks.named_lines import named_figures
from charts.importer import read_pasted
from tests.charts.read_text import questions


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("Waist (cm) 66-70 - 76-80", 2),
        ("- Hips: 90 94 98", 3),
        ("Extra Large 97-102 81-86", 2),
        ("Tour de taille (cm) 66 à 70 71-75* 76-80", 3),
        ("Size 42 97-102 81-86 sold out", 2),
        ("Chest: measure 2 cm below the armpit, 3 cm above the belly", 0),
        ("Waist 66-70", 0),
        ("Adult Plus 82-86 cm 87-91 cm", 2),
        ("Fernhollow 82 87", 0),
        ("XXL 103-108", 1),
        ("42 103-108", 0),
        ("Ages 10-12", 0),
        ("Size S £34.90 £36.90", 0),
        ("Size 2 3 4", 0),
        ("Women", 0),
    ],
)
def test_lost_rows_are_told_from_other_lines(text: str, count: int) -> None:
    assert named_figures(text) == count


@pytest.mark.parametrize("row", ["Waist (cm) 66-70 78", "Hips (cm): 90/94, 98/102, 103/110, 111"])
def test_a_row_that_does_not_come_out_even_is_asked(row: str) -> None:
    reading = read_pasted(f"Size S M L\nChest (cm) 82-86 87-91 92-96\n{row}\n")
    assert "text-order" in questions(reading)


def test_a_note_about_measuring_is_not_asked() -> None:
    reading = read_pasted(
        "Size S M L\nChest (cm) 82-86 87-91 92-96\nWaist (cm) 66-70 71-75 76-80\n"
        "Waist: measure 2 cm above the navel, 30 cm below the armpit.\n"
    )
    assert questions(reading) == []
