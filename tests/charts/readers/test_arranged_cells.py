"""Text that lost its cells: put back in the one order that is without fault, and asked about."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.readers.captured.lines import Line
from charts.readers.captured.rows import row_table
from tests.charts.readers.lost_cells import (
    ORDERS,
    TABLES,
    Whole,
    read_lines,
    values_read,
)

_SURE = {"by rows", "by columns", "titles before", "units apart", "dashes apart"}
"""Orders in which a copy gives a table without a doubt, where its figures prove it."""


@pytest.mark.parametrize("table", TABLES)
@pytest.mark.parametrize("order", ORDERS)
def test_cells_in_any_order_are_put_back_and_asked_about(order: str, table: str) -> None:
    whole = TABLES[table]
    read = read_lines(ORDERS[order](whole))
    assert values_read(read) == whole.values
    if order not in _SURE:
        assert not values_read(read, unasked=True)


@pytest.mark.parametrize("table", TABLES)
@pytest.mark.parametrize("order", ["by rows", "apart, by rows", "names behind", "sizes first"])
def test_empty_lines_between_all_cells_change_nothing(order: str, table: str) -> None:
    whole = TABLES[table]
    assert values_read(read_lines(ORDERS[order](whole), apart=True)) == whole.values


@pytest.mark.parametrize("table", TABLES)
def test_a_cell_that_was_lost_leaves_its_place_empty_where_no_other_is_possible(table: str) -> None:
    whole = TABLES[table]
    lines = [*whole.heads, *(cell for row in whole.rows for cell in row)]
    lost = len(whole.heads) * 2 + 2
    lines.pop(lost)
    due = dict(whole.values)
    del due[whole.rows[1][0], whole.dimensions[1]]
    read = read_lines(lines)
    assert values_read(read) == due
    assert not values_read(read, unasked=True)


def test_two_orders_that_are_equally_without_fault_are_both_named_and_nothing_is_stored() -> None:
    read = read_lines(
        ["Size", "Chest", "Hip", "S", "M", "L", "84", "84", "84", "100", "110", "120"]
    )
    asked = [one for one in read.findings if one.values.get("case") == "orders"]
    assert [(one.code, one.place) for one in asked] == [("text-order", "line 1")]
    assert asked[0].values["first"] == "S: Chest 84, Hip 84"
    assert asked[0].values["second"] == "S: Chest 84, Hip 100"
    assert not values_read(read)


def test_figures_that_fall_in_every_order_are_stored_in_none_without_a_question() -> None:
    lines = ["Size", "Chest", "Hip", "S", "M", "L", "84", "90", "94", "80", "88", "98"]
    assert not values_read(read_lines(lines), unasked=True)


def test_sizes_behind_their_figures_are_not_taken_where_their_heading_stands_first() -> None:
    lines = "Размер|Обхват груди, см|Обхват талии, см|44|88|76|46|92|80|48|96|84|50|100|88"
    read = read_lines(lines.split("|"))
    assert values_read(read)["44", "chest"] == "88"
    assert not [one for one in read.findings if one.code == "text-order"]


def _held_silently(whole: Whole, lines: list[str]) -> dict[tuple[str, str], str]:
    """Figures read from ``lines`` without a question that do not stand in the table so."""
    silent = values_read(read_lines(lines), unasked=True)
    return {at: text for at, text in silent.items() if whole.values.get(at) != text}


@given(st.data())
def test_a_cell_that_is_dropped_never_gives_a_wrong_figure_without_a_question(
    data: st.DataObject,
) -> None:
    whole = TABLES[data.draw(st.sampled_from(["inches", "german", "ages", "numbers", "decimals"]))]
    lines = list(ORDERS[data.draw(st.sampled_from(["by rows", *_APART]))](whole))
    del lines[data.draw(st.integers(0, len(lines) - 1))]
    assert not _held_silently(whole, lines)


_APART = ("apart, by rows", "apart, by columns", "sizes first", "headings last", "names behind")


@given(st.data())
def test_cells_that_are_shuffled_never_give_a_wrong_figure_without_a_question(
    data: st.DataObject,
) -> None:
    whole = TABLES[data.draw(st.sampled_from(sorted(TABLES)))]
    lines = list(ORDERS["by rows"](whole))
    first = len(whole.heads)
    shuffled = lines[:first] + data.draw(st.permutations(lines[first:]))
    assert not _held_silently(whole, shuffled)


def test_a_heading_for_ages_is_that_of_sizes_that_are_ages_and_of_no_figures() -> None:
    lines = ["Âge", "Poids (kg)", "Tour de poitrine (cm)"]
    rows = ["4 ans 98-104 15-17 55", "6 ans 110-116 19-22 59", "8 ans 122-128 24-27 63"]
    assert row_table([Line(text, at) for at, text in enumerate([*lines, *rows], start=1)]) is None


def test_a_name_below_figures_that_is_one_of_several_is_asked_about() -> None:
    lines = ["S M L XL", "150-160 160-170 170-180 180-190", "Maat", "Lengte (cm)", "Gewicht (kg)"]
    assert not values_read(read_lines(lines), unasked=True)
