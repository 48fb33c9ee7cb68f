"""Cells with bars, hyphens in cells of their own, and the size at the end of its row."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.labels_last import labels_last_table
from charts.readers.captured.lines import numbered
from tests.charts.read_text import questions, values
from tests.charts.readers.reading import paste

_HEAD = "|\n|\nBUST SIZE |\n|\nCOMPARABLE SIZE\n|\n|\nWOMEN'S |\n|\n"


def _row(low: str, high: str, size: str) -> str:
    return f"|\n|\n{low} |\n- |\n{high} |\n|\n|\n4 |\n- |\n6 |\n|\n{size} |\n|\n"


_TEXT = (
    _HEAD + _row("33", '35"', "Small") + _row("35", '37"', "Medium") + _row("37", '39"', "Large")
)


def test_hyphens_in_cells_of_their_own_make_ranges_and_the_size_goes_in_front() -> None:
    found = paste(_TEXT)
    assert ["Medium", '35 - 37"', "4 - 6"] in found.rows()
    assert found.sheet.inferred


def test_one_x_is_a_size_among_the_others() -> None:
    found = paste(_TEXT + _row("39", '41"', "1X"))
    assert found.rows()[-2] == ["1X", '39 - 41"', "4 - 6"]


def test_the_whole_is_asked_once_and_each_size_has_its_own_range() -> None:
    reading = read_pasted(_TEXT)
    assert questions(reading) == ["text-order"]
    found = {key.removeprefix("women "): ends for key, ends in values(reading).items()}
    assert found["Small chest"] == pytest.approx((83.82, 88.9))
    assert found["Large chest"] == pytest.approx((93.98, 99.06))


def test_a_row_that_lacks_a_value_makes_no_table() -> None:
    found = paste(_TEXT.replace('35 |\n- |\n37" |', "|"))
    assert all(column == 0 for _, column in found.sheet.cells)
    assert found.codes == ["no-table"]


@pytest.mark.parametrize(
    "text",
    [
        "Size |\nChest |\nWaist |\n86 |\n70 |\nM |\n90 |\n74 |\nL |\n",
        "Chest |\nWaist |\nHip |\n86 |\n70 |\nM |\n90 |\n74 |\nL |\n",
        "Chest |\nWaist |\nAge |\n86 |\n70 |\n4 years |\n90 |\n74 |\n6 years |\n",
    ],
)
def test_headings_that_put_the_sizes_elsewhere_make_no_such_table(text: str) -> None:
    assert labels_last_table(numbered(text)) is None
