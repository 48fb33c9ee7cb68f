"""Headings that a page writes only into attributes: of every cell, or of a picture."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import questions, ranges, values

HEADS = ("Size", "Chest (cm)", "Waist (cm)")
ROWS = (("S", "82-86", "66-70"), ("M", "87-91", "71-75"))
RIGHT = {"S chest": (82, 86), "S waist": (66, 70), "M chest": (87, 91), "M waist": (71, 75)}


def page(key: str, *above: str, heads: tuple[str, ...] = HEADS) -> FileReading:
    rows = (
        "".join(f'<td {key}="{head}">{cell}</td>' for head, cell in zip(heads, row, strict=True))
        for row in ROWS
    )
    lines = "".join(f"<tr>{row}</tr>" for row in (*above, *rows))
    return read_bytes(f"<table>{lines}</table>".encode(), "chart.html")


@pytest.mark.parametrize("key", ["data-th", "data-label", "data-title", "data-column"])
def test_the_data_of_the_cells_are_their_headings(key: str) -> None:
    reading = page(key)
    assert values(reading) == RIGHT
    assert questions(reading) == []
    assert ranges(reading)[0].published == "82-86"


def test_a_row_of_headings_is_enough() -> None:
    reading = page("data-th", "".join(f"<th>{head}</th>" for head in HEADS))
    assert values(reading) == RIGHT
    assert {one.heading for one in ranges(reading)} == {"Chest (cm)", "Waist (cm)"}


def test_data_that_name_no_measure_say_nothing() -> None:
    reading = page("data-label", heads=("a", "b", "c"))
    assert all(one.dimension.value == "other" for one in ranges(reading))
    assert questions(reading) != []


@pytest.mark.parametrize(
    "icon", ['<i title="{}"></i>', '<span aria-label="{}"></span>', '<img src="x" alt="{}">']
)
def test_the_title_of_a_picture_in_a_heading_names_the_measure(icon: str) -> None:
    heads = f"<th>Size</th><th>{icon.format('Chest')} cm</th><th>{icon.format('Waist')} cm</th>"
    rows = "".join(f"<tr>{''.join(f'<td>{cell}</td>' for cell in row)}</tr>" for row in ROWS)
    reading = read_bytes(f"<table><tr>{heads}</tr>{rows}</table>".encode(), "chart.html")
    assert values(reading) == RIGHT
    assert questions(reading) == []


def test_a_picture_beside_a_heading_that_names_its_measure_adds_nothing() -> None:
    heads = '<th>Size <i title="Chest help"></i></th><th>Hip (cm) <i title="Waist"></i></th>'
    rows = "<tr><td>S</td><td>90-94</td></tr><tr><td>M</td><td>95-99</td></tr>"
    reading = read_bytes(f"<table><tr>{heads}</tr>{rows}</table>".encode(), "chart.html")
    assert values(reading) == {"S hip": (90, 94), "M hip": (95, 99)}
