"""Names of rows of figures that stand below all rows, in the same order."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.runs import run_table
from tests.charts.read_text import questions, values

_ROWS = "Sizes in cm\n\n128 140 S M L\n\n40 43 55 58 61\n\n50 54 68 70 72\n\n"
_NAMES = "Halber Brustumfang / Half chest\n\nRückenlänge / Back length\n"


def test_as_many_names_below_as_rows_name_them_in_order_with_one_question() -> None:
    reading = read_pasted(_ROWS + _NAMES)
    assert values(reading) == {
        f"{size} {name}": figure
        for name, row in (("chest", (40, 43, 55, 58, 61)), ("back_length", (50, 54, 68, 70, 72)))
        for size, figure in zip(("128", "140", "S", "M", "L"), row, strict=True)
    }
    assert questions(reading) == ["text-order"]


def test_a_name_below_may_hold_a_figure_and_the_word_for_sizes_stand_first() -> None:
    table = run_table(numbered(f'{_ROWS}Size\nChest (1" below armhole)\nBack length\n'[13:]))
    assert table is not None
    names = [row[0].text for row in table.rows]
    assert (names, table.inferred) == (["Size", 'Chest (1" below armhole)', "Back length"], True)


@pytest.mark.parametrize(
    "below",
    [
        "Half chest\n",
        f"{_NAMES}Hip\n",
        f"{_NAMES}S M L\n",
        f"{_NAMES}80 84 88\n",
        "Half chest\nBlue\n",
    ],
)
def test_fewer_or_more_names_than_rows_name_none(below: str) -> None:
    table = run_table(numbered(f"{_ROWS}{below}"[13:]))
    assert table is not None
    assert not any(row[0].text for row in table.rows)
