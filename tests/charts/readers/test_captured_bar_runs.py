"""Bars on lines of their own, two within a row and more between rows."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.bar_runs import bar_run_table
from charts.readers.captured.lines import numbered
from tests.charts.read_text import questions, values
from tests.charts.readers.reading import paste

_ROWS = (
    ("ADULT SIZE", "WAIST", "REGULAR\nINSEAM", "UPPER THIGH"),
    ("Small", '29 - 31"', '32"', '23 1/2"'),
    ("Medium", '31 - 33"', '33"', '25"'),
    ("Large", '33 - 35"', '34"', '26 1/2"'),
)


def _copied(rows: tuple[tuple[str, ...], ...]) -> str:
    """As a page with a bar behind and before every cell is copied; long figures keep none."""
    ended = [[cell if " 1/2" in cell else f"{cell} |" for cell in row] for row in rows]
    lines = [
        "\n|\n".join(f"{cell}\n|" if cell[-1] != "|" else cell for cell in row) for row in ended
    ]
    return "A GUIDE\nMeasure over the belt. |\n|\n|\n" + "\n|\n|\n|\n".join(lines) + "\n|\n"


def test_longer_runs_of_bars_part_the_rows() -> None:
    found = paste(_copied(_ROWS))
    rows = [row for row in found.rows() if row[1]]
    assert rows == [[cell.replace("\n", " ") for cell in row] for row in _ROWS]
    assert found.sheet.inferred


def test_the_figures_are_those_of_their_rows_and_are_asked() -> None:
    reading = read_pasted(_copied(_ROWS))
    found = values(reading)
    assert found["Small waist"] == (73.66, 78.74)
    assert found["Large inseam"] == 86.36
    assert "text-order" in questions(reading)


@pytest.mark.parametrize(
    ("row", "cells"),
    [
        (2, ("Medium", '31 - 33"', '33"')),
        (2, ("Medium", '31 - 33"', "see below", '25"')),
        (2, ("Small", '31 - 33"', '33"', '25"')),
        (0, ("ADULT SIZE", "COLOUR", "PRICE", "STOCK")),
    ],
)
def test_rows_that_are_not_even_make_no_table(row: int, cells: tuple[str, ...]) -> None:
    rows = (*_ROWS[:row], cells, *_ROWS[row + 1 :])
    lines = numbered(_copied(rows))
    assert all(bar_run_table(lines[at:]) is None for at in range(len(lines)))
