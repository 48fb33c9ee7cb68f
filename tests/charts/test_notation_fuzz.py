"""Whatever stands in a cell, nothing raises, nothing hangs, and nothing is read in part."""

from __future__ import annotations

import time
from collections.abc import Callable

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from charts.cell_text import clean
from charts.dimensions import find_units, read_band, read_heading
from charts.findings import LEVELS, Level
from charts.notation import Expected, Reading, read_cell
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension
from charts.size_labels import read_label, read_length

TEN_MILLION = 10_000_000
MOST_SECONDS = 1.0
PIECES = st.sampled_from(
    ["34", "36", "5", "1/2", "½", "8", "1650", "7,5", ".", ",", "-", "–", "/", "~", "+", "±", "<",
     ">", "≤", "(", ")", "'", '"', "cm", "in", "kg", "lb", "st", "ft", "m", "bis", "to", "à", "max",
     "over", "from", "ca.", "S", "XL", "Oct", "\n", " ", "<br>", "&nbsp;", "<sup>1</sup>", "h", "x",
     "?"]
)  # fmt: skip
CELLS = st.one_of(st.text(max_size=250), st.lists(PIECES, max_size=12).map("".join))
COLUMNS = st.builds(
    Expected,
    st.none() | st.sampled_from(Dimension),
    st.none() | st.sampled_from(Unit),
    st.none() | st.sampled_from(Unit),
    st.booleans(),
    st.sampled_from(Basis),
    st.sampled_from(Definition),
)


@given(CELLS, COLUMNS)
@example("1,250", Expected(Dimension.AGE, Unit.CM))
@example("5.4", Expected(Dimension.HEIGHT, Unit.FT, Unit.ST))
def test_any_cell_is_read_or_refused_without_an_exception(text: str, expected: Expected) -> None:
    reading = read_cell(text, expected)
    if reading.reading is Reading.READ:
        assert reading.quantity is not None
        assert reading.code is None
    if reading.reading is Reading.ASK:
        assert LEVELS[reading.code or ""] is Level.QUESTION
    assert all(LEVELS[note] is Level.NOTE for note in reading.notes)


@given(CELLS, COLUMNS)
def test_a_range_that_is_read_never_falls(text: str, expected: Expected) -> None:
    reading = read_cell(text, expected)
    quantity = reading.quantity
    if reading.reading is Reading.READ and quantity and quantity.low and quantity.high:
        assert quantity.low.value <= quantity.high.value


@given(st.lists(PIECES, max_size=12).map("".join), COLUMNS)
def test_an_unknown_word_behind_a_cell_keeps_it_from_being_read(
    text: str, expected: Expected
) -> None:
    assert read_cell(f"{text} qqq", expected).reading is not Reading.READ


@given(CELLS)
def test_any_text_is_a_label_or_none(text: str) -> None:
    label = read_label(text)
    assert label is None or (label.text and label.normal and len(label.order) == 5)
    read_length(text)


@given(CELLS)
def test_any_text_is_read_as_a_heading(text: str) -> None:
    heading = read_heading(text)
    if heading.candidates:
        assert (heading.role, heading.dimension) == heading.candidates[0] or heading.dimension
    find_units(text)
    read_band(text)


@given(CELLS)
def test_cleaning_leaves_one_kind_of_dash_space_and_prime(text: str) -> None:
    cleaned = clean(text)
    assert not set(cleaned) & set("–—−\u00a0\u2009”’″½")
    assert cleaned == cleaned.strip()


READERS: list[Callable[[str], object]] = [
    read_cell,
    read_label,
    read_length,
    read_heading,
    find_units,
    read_band,
    clean,
]


@pytest.mark.parametrize(
    "piece", ["1", " ", "(", "1-", "1/2 ", "<sup>", "&", "x", "\n", "34 cm / ", "Ã"]
)
@pytest.mark.parametrize("reader", READERS, ids=lambda reader: reader.__name__)
def test_ten_million_characters_in_one_cell_are_refused_early(
    reader: Callable[[str], object], piece: str
) -> None:
    text = piece * (TEN_MILLION // len(piece))
    started = time.perf_counter()
    reader(text)
    assert time.perf_counter() - started < MOST_SECONDS


def test_a_text_too_long_for_a_quantity_is_never_read() -> None:
    assert read_cell("34" + " " * 300 + "cm").reading is Reading.UNREAD
    assert read_cell("a note without figures " * 20).reading is Reading.NOTE
