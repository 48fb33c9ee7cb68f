"""Cells that repeat the heading of their column, as pages made for small screens write them."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import questions, ranges, table, values

HEADS = ("Size", "Chest (cm)", "Waist (cm)")
ROWS = (("S", "82-86", "66-70"), ("M", "87-91", "71-75"))
RIGHT = {"S chest": (82, 86), "S waist": (66, 70), "M chest": (87, 91), "M waist": (71, 75)}


def page(cell: str, heads: tuple[str, ...] = HEADS, named: tuple[str, ...] = ()) -> FileReading:
    lines = ["".join(f"<th>{head}</th>" for head in heads)]
    for row in ROWS:
        each = zip(named or heads, row, strict=True)
        lines.append("".join(f"<td>{cell.format(h=head, v=text)}</td>" for head, text in each))
    return read_bytes(
        f"<table>{''.join(f'<tr>{line}</tr>' for line in lines)}</table>".encode(), "chart.html"
    )


@pytest.mark.parametrize(
    "cell",
    [
        '<span class="m">{h}</span>{v}',
        '<span class="m">{h}</span> <span>{v}</span>',
        "<div>{h}</div><div>{v}</div>",
        "<b>{h}:</b> {v}",
        '<span class="sr-only">{h}</span> {v}',
        "<strong>{h}</strong><br>{v}",
        "{h}: {v}",
    ],
)
def test_the_heading_is_no_part_of_the_value_or_the_size(cell: str) -> None:
    reading = page(cell)
    assert values(reading) == RIGHT
    assert questions(reading) == []
    assert [one.published for one in ranges(reading)][:2] == ["82-86", "66-70"]


def test_the_cells_may_leave_the_unit_out_or_add_it() -> None:
    without = page("{h}: {v}", named=("Size", "Chest", "Waist"))
    assert values(without) == RIGHT
    added = page("{h}: {v}", heads=("Size", "Chest", "Waist"), named=HEADS)
    assert values(added) == RIGHT
    assert questions(added) == []


def test_only_the_size_may_stand_without_it() -> None:
    reading = table(
        "Größe | Brustumfang | Taillenumfang\nS | Brustumfang 84-88 cm | Taillenumfang 68-72 cm\n"
        "M | Brustumfang 89-93 cm | Taillenumfang"
    )
    assert values(reading) == {"S chest": (84, 88), "S waist": (68, 72), "M chest": (89, 93)}


def test_a_row_that_does_not_repeat_all_headings_is_left_alone() -> None:
    reading = table(
        "Size | Chest (cm) | Waist (cm)\nSize S | 82-86 | 66-70\nSize M | 87-91 | 71-75"
    )
    assert {one.place for one in ranges(reading)} == {"B2", "C2", "B3", "C3"}


def test_a_bracket_behind_the_heading_is_its_value() -> None:
    reading = table(
        "Size | Chest | Waist\nS | Chest (84 cm) | Waist (68 cm)\nM | Chest (88 cm) | Waist (72 cm)"
    )
    assert values(reading).get("S chest") in {84, None}
    assert questions(reading) or values(reading)["M waist"] == 72
