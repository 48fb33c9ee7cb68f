"""Cells that ran together behind their units."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.unit_seams import parted_at_units
from tests.charts.read_text import questions, values

_FOUND = {
    f"{size} {name}": ends
    for name, row in (
        ("chest", ((81, 85), (86, 90), (91, 95))),
        ("waist", ((61, 65), (66, 70), (71, 75))),
    )
    for size, ends in zip(("S", "M", "L"), row, strict=True)
}
_ROWS = "S 81-85 {0}61-65 {0}\nM 86-90 {0}66-70 {0}\nL 91-95 {0}71-75 {0}\n"


@pytest.mark.parametrize("unit", ["cm", "CM"])
@pytest.mark.parametrize("head", ["SIZE CHEST (CM) WAIST (CM)", "Größe Brust Taille"])
def test_a_figure_behind_a_unit_begins_the_next_cell_and_is_asked_once(
    head: str, unit: str
) -> None:
    reading = read_pasted(f"{head}\n{_ROWS.format(unit)}")
    assert values(reading) == _FOUND
    assert questions(reading) == ["text-order"]


def test_sizes_on_lines_of_their_own_have_the_cells_behind_them_parted() -> None:
    rows = _ROWS.format("cm").replace("S ", "S\n").replace("M ", "\nM\n").replace("L ", "\nL\n")
    reading = read_pasted(f"Size\nChest\nWaist\n\n{rows}")
    assert values(reading) == _FOUND
    assert questions(reading) == ["text-order"]


@pytest.mark.parametrize(
    "text", ["S 81-85 cm 61-65 cm", "cm80", "80 cm2", "80 in 1000", "12 in1234"]
)
def test_what_is_no_seam_is_left_alone(text: str) -> None:
    assert parted_at_units(numbered(text)) is None


def test_rows_that_stay_glued_after_all_give_no_table() -> None:
    text = "81-85 CM61-65 CM\n\n86-90 CM66-70 CM\n\n91-95 CM\n\n71 CM\n\n6\n\n8\n\n10\n"
    reading = read_pasted(f"{text}SIZE WAIST (CM) HIP (CM)\n")
    assert not values(reading)
    assert questions(reading)
