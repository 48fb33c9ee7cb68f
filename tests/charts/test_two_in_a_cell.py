"""A figure for each of two in one cell is no range, and is asked about."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values


@pytest.mark.parametrize(
    "heading",
    ["Waist women/men (cm)", "Taille Damen / Herren (cm)", "Waist body/vest (cm)",
     "Waist kids/adults (cm)", "Waist short/long (cm)"],
)  # fmt: skip
def test_two_in_heading_and_cell_are_asked_about(heading: str) -> None:
    reading = table(f"Size | Chest (cm) | {heading}\nS | 82-86 | 66/76\nM | 87-91 | 71/81")
    assert "double-range" in questions(reading)
    asked = [size.ranges[-1].findings for chart in reading.charts for size in chart.sizes]
    assert all(asked)


@pytest.mark.parametrize(
    ("heading", "cells"),
    [("Waist women/men (cm)", ("66-76", "71-81")), ("Waist (cm)", ("66/76", "71/81")),
     ("Waist min/max (cm)", ("66/76", "71/81"))],
)  # fmt: skip
def test_ranges_and_slashes_that_nothing_names_are_as_before(
    heading: str, cells: tuple[str, str]
) -> None:
    first, second = cells
    reading = table(f"Size | Chest (cm) | {heading}\nS | 82-86 | {first}\nM | 87-91 | {second}")
    assert "double-range" not in questions(reading)


def test_a_height_beside_a_weight_is_no_size_though_its_word_may_be_one() -> None:
    reading = table(
        "Größe | Brust (cm) | Größe/Gewicht\nS | 82-86 | 160-168 cm/50-58 kg\n"
        "M | 87-91 | 168-176 cm/58-66 kg"
    )
    found = values(reading)
    assert (found["S height"], found["M weight"]) == ((160, 168), (58, 66))
    assert questions(reading) == []
