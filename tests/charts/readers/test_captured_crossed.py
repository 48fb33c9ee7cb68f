"""A size a line with two figures crossed behind it: read, and asked what the columns measure."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.crossed import crossed_table
from charts.readers.captured.lines import numbered
from charts.schema import Basis, Dimension
from tests.charts.read_text import questions, ranges

_SHIRTS = (
    "T-Shirts\nFirst width, second height\nYouth T-Shirt\n4 33cm x 46cm\n6 37cm x 50cm\n"
    "8 41cm x 56cm\nAdult T-Shirt\nS 49.5cm x 68cm\nM 53cm X 70cm\nL 57cm x 73cm\n"
)


def test_crossed_figures_are_kept_and_their_columns_are_asked_about() -> None:
    reading = read_pasted(_SHIRTS)
    labels = [[size.label for size in chart.sizes] for chart in reading.charts]
    assert labels == [["4", "6", "8"], ["S", "M", "L"]]
    assert {one.dimension for one in ranges(reading)} == {Dimension.OTHER}
    assert set(questions(reading)) >= {"heading-unknown", "text-order"}
    assert all(one.findings for one in ranges(reading))


def test_the_title_over_lines_that_were_not_read_is_no_word_about_the_sizes_before() -> None:
    text = f"{_SHIRTS}Ladies V-Neck\nLXS 39cm x 62cm\nLS 44cm x 64cm\nLM 49cm x 66cm\n"
    reading = read_pasted(text)
    assert reading.charts[1].band is None
    assert "text-order" in questions(reading)


def test_one_unit_behind_the_second_figure_holds_for_both() -> None:
    table = crossed_table(numbered("S: 49 x 68 cm\nM: 53 × 70 cm\n"))
    assert table is not None
    rows = [[cell.text for cell in row] for row in table.rows[1:]]
    assert rows == [["S", "49 cm", "68 cm"], ["M", "53 cm", "70 cm"]]


@pytest.mark.parametrize(
    "text",
    ["S 49 x 68 cm\n", "S 49 x 68 cm\nS 53 x 70 cm\n", "Box 20 x 30 x 40 cm\nBag 20 x 30 x 4 cm\n"],
)
def test_what_is_no_list_of_sizes_stays_text(text: str) -> None:
    assert crossed_table(numbered(text)) is None


@pytest.mark.parametrize(
    "words",
    [
        "Measurements are half chest x length.",
        "T-shirt (half chest x length)",
        "The first figure is the half chest, the second is the length.",
    ],
)
def test_a_line_above_may_say_what_is_crossed_and_all_is_asked(words: str) -> None:
    reading = read_pasted(
        f"{words}\nAdults\nS 48cm x 66cm\nM 51cm x 69cm\nKids\n8 40 x 52cm\n10 42 x 55cm\n"
    )
    assert [len(chart.sizes) for chart in reading.charts] == [2, 2]
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert [one.value for one in chests] == [48, 51, 40, 42]
    assert {one.basis for one in chests} == {Basis.FLAT}
    assert "text-order" in questions(reading)


@pytest.mark.parametrize("words", ["Print x cut", "Colour x length", "Delivered in boxes"])
def test_words_that_name_no_two_measures_name_no_columns(words: str) -> None:
    assert crossed_table(numbered(f"{words}\nS 48cm x 66cm\nM 51cm x 69cm\n")) is None
