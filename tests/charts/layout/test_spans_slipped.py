"""Headings whose spans a page gives wrongly, told by the number of cells below them."""

from __future__ import annotations

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import asked_at, questions, ranges, values

RIGHT = {"S chest": (82, 86), "S waist": (66, 70), "M chest": (87, 91), "M waist": (71, 75)}
SINGLE = (("S", "82-86", "66-70"), ("M", "87-91", "71-75"))
ENDS = (("S", "82", "86", "66", "70"), ("M", "87", "91", "71", "75"))


def page(head: str, rows: tuple[tuple[str, ...], ...]) -> FileReading:
    body = "".join(f"<tr>{''.join(f'<td>{cell}</td>' for cell in row)}</tr>" for row in rows)
    return read_bytes(f"<table>{head}{body}</table>".encode(), "chart.html")


WIDE = '<tr><th>Size</th><th colspan="2">Chest (cm)</th><th colspan="2">Waist (cm)</th></tr>'


def test_headings_that_span_two_columns_over_single_cells() -> None:
    reading = page(WIDE, SINGLE)
    assert values(reading) == RIGHT
    assert questions(reading) == ["text-order"]
    assert len(asked_at(reading, "text-order")) == len(ranges(reading))


def test_a_note_in_the_table_changes_nothing() -> None:
    reading = page(WIDE, (*SINGLE, ("Measure over a thin shirt.",)))
    assert values(reading) == RIGHT


def test_one_wide_heading_among_others() -> None:
    head = '<tr><th>Größe</th><th colspan="2">Brustumfang (cm)</th><th>Taillenumfang (cm)</th></tr>'
    assert values(page(head, SINGLE)) == RIGHT


def test_the_first_heading_lacks_its_second_row() -> None:
    ends = "<tr><th>from</th><th>to</th><th>from</th><th>to</th></tr>"
    reading = page(WIDE + ends, ENDS)
    assert values(reading) == RIGHT
    assert questions(reading) == ["text-order"]


def test_spans_that_fit_the_rows_are_believed() -> None:
    reading = page(WIDE, ENDS)
    assert questions(reading) == ["column-unused", "column-unused"]
    assert [one.place for one in ranges(reading)][:2] == ["table 1!B2", "table 1!D2"]


def test_a_row_with_a_cell_lost_is_no_sign() -> None:
    reading = page(WIDE, (ENDS[0], ("M", "87", "91", "71")))
    assert "text-order" not in questions(reading)
