"""Rows with fewer cells than the others: what follows a lost one may stand wrongly."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import asked_at, questions

HEADS = ("Size", "Chest (cm)", "Waist (cm)", "Hip (cm)")
ROWS = (
    ("S", "84-88", "68-72", "90-94"),
    ("M", "89-93", "73-77", "95-99"),
    ("L", "94-98", "78-82", "100-104"),
)
LOST = ("L", "94-98", "100-104")


def rows_with(last: tuple[str, ...]) -> list[tuple[str, ...]]:
    return [HEADS, *ROWS[:-1], last]


def delimited(rows: list[tuple[str, ...]]) -> FileReading:
    return read_bytes("\n".join(";".join(row) for row in rows).encode() + b"\n", "chart.csv")


def page(rows: list[tuple[str, ...]]) -> FileReading:
    lines = ("<tr>" + "".join(f"<td>{cell}</td>" for cell in row) + "</tr>" for row in rows)
    return read_bytes(f"<table>{''.join(lines)}</table>".encode(), "chart.html")


def markdown(rows: list[tuple[str, ...]]) -> FileReading:
    lines = [f"| {' | '.join(row)} |" for row in rows]
    lines.insert(1, "|---|---|---|---|")
    return read_bytes("\n".join(lines).encode(), "chart.md")


def tabbed(rows: list[tuple[str, ...]]) -> FileReading:
    return read_bytes("".join("\t".join(row) + "\n" for row in rows).encode(), "chart.txt")


ALL = pytest.mark.parametrize("form", [delimited, page, markdown, tabbed])


@ALL
def test_every_value_of_a_row_with_a_lost_cell_is_asked(form) -> None:
    reading = form(rows_with(LOST))
    asked = [place.rpartition("!")[2] for place in asked_at(reading, "columns-shifted")]
    assert asked in (["B4", "C4"], ["line 4", "line 4"])
    assert questions(reading) == ["columns-shifted"]


def test_the_first_row_is_asked_too() -> None:
    reading = delimited([HEADS, ("S", "68-72", "90-94"), *ROWS[1:]])
    assert asked_at(reading, "columns-shifted") == ["B2", "C2"]


def test_two_cells_run_together_throw_doubt_on_what_follows() -> None:
    reading = delimited(rows_with(("L", "94-9878-82", "100-104")))
    assert "C4" in asked_at(reading, "columns-shifted")


@ALL
def test_a_blank_cell_moves_nothing(form) -> None:
    reading = form(rows_with(("L", "94-98", "78-82", "")))
    assert "columns-shifted" not in questions(reading)


@ALL
def test_a_complete_table_is_asked_nothing(form) -> None:
    assert questions(form([HEADS, *ROWS])) == []


def test_a_last_column_that_few_rows_reach_is_no_lost_cell() -> None:
    reading = delimited([HEADS, ROWS[0], ROWS[1][:3], ROWS[2][:3]])
    assert "columns-shifted" not in questions(reading)


def test_cells_that_reach_down_from_above_are_counted() -> None:
    text = (
        "<table><tr><th>Size</th><th>Chest (cm)</th><th>Waist (cm)</th></tr>"
        "<tr><td>S</td><td>84-88</td><td rowspan=2>68-77</td></tr>"
        "<tr><td>M</td><td>89-93</td></tr></table>"
    )
    assert "columns-shifted" not in questions(read_bytes(text.encode(), "chart.html"))


def test_where_sizes_run_across_the_measure_with_a_lost_cell_is_asked() -> None:
    rows = [("", "S", "M", "L"), ("Chest (cm)", "84-88", "94-98"), ("Waist (cm)", "68", "73", "78")]
    assert asked_at(delimited(rows), "columns-shifted") == ["B2", "C2"]


def test_a_price_behind_the_measures_shows_that_a_cell_is_lost() -> None:
    priced = [(*row, price) for row, price in zip(ROWS, ("42.00", "46.50", "58.00"), strict=True)]
    short = ("L", "94-98", "78-82", "58.00")
    assert questions(delimited([(*HEADS, "Price"), *priced])) == []
    reading = delimited([(*HEADS, "Price"), *priced[:-1], short])
    assert {"B4", "C4"} <= set(asked_at(reading, "columns-shifted"))


def test_a_blank_price_is_a_cell() -> None:
    rows = [(*row, price) for row, price in zip(ROWS, ("42.00", "", "58.00"), strict=True)]
    assert questions(delimited([(*HEADS, "Price"), *rows])) == []
