"""Measures in a running text, each with all its sizes behind a colon."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.importer import read_bytes, read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.series import series_table
from charts.schema import Dimension
from tests.charts.read_text import asked_at, ranges
from tests.charts.readers.reading import paste

_TEXT = (
    "Size guide: modern fit; take the bigger one. Flat width armpit to armpit: XS 16 in, S 18, "
    "M 20, L 22.5; body length: XS 27 in, S 28, M 29, L 30. Compare with a tee you own."
)


def test_each_series_is_a_column_and_the_words_around_are_kept() -> None:
    assert paste(_TEXT).rows() == [
        ["Size guide: modern fit; take the bigger one", "", ""],
        ["", "Flat width armpit to armpit", "body length"],
        ["XS", "16 in", "27 in"],
        ["S", "18", "28"],
        ["M", "20", "29"],
        ["L", "22.5", "30"],
        ["Compare with a tee you own", "", ""],
    ]


def test_a_unit_at_the_first_size_of_the_girth_alone_is_asked_about() -> None:
    reading = read_pasted(_TEXT)
    girths = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert len(girths) == 4
    assert asked_at(reading, "unit-missing") == ["line 1"] * 4


def test_commas_of_a_series_part_no_columns_of_a_file() -> None:
    (chart,) = read_bytes(f"{_TEXT}\nOrder by, Monday, noon\n".encode(), "shirts.txt").charts
    assert [size.label for size in chart.sizes] == ["XS", "S", "M", "L"]


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("S 28, ", ""),
        ("S 28, M 29", "M 29, S 28"),
        ("S 28", "S soon"),
        ("body length", "stock"),
        ("M 20, L 22.5", "M 20, M 22.5"),
    ],
)
def test_series_that_do_not_agree_make_no_table(old: str, new: str) -> None:
    assert series_table(numbered(_TEXT.replace(old, new))) is None


@given(st.lists(st.integers(30, 140), min_size=3, max_size=6))
def test_each_value_comes_to_the_size_before_it(figures: list[int]) -> None:
    sizes = ["XS", "S", "M", "L", "XL", "XXL"][: len(figures)]
    items = ", ".join(f"{size} {one}" for size, one in zip(sizes, figures, strict=True))
    table = series_table(numbered(f"Fit. Chest: {items}; waist: {items}."))
    assert table is not None
    found = {row[0].text: row[1].text for row in table.rows[2:]}
    assert found == dict(zip(sizes, map(str, figures), strict=True))
