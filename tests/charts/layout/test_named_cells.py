"""Cells that name what they measure, under no heading or under one that says less."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.layout.named_value import named_value
from charts.schema import FileReading
from tests.charts.read_text import asked_at, questions, ranges, table, values

RIGHT = {"S chest": (82, 86), "S waist": (66, 70), "M chest": (87, 91), "M waist": (71, 75)}


def page(*rows: tuple[str, ...]) -> FileReading:
    lines = ("".join(f"<td>{cell}</td>" for cell in row) for row in rows)
    return read_bytes(
        f"<table>{''.join(f'<tr>{line}</tr>' for line in lines)}</table>".encode(), "chart.html"
    )


def delimited(*rows: tuple[str, ...]) -> FileReading:
    return read_bytes("\n".join(";".join(row) for row in rows).encode() + b"\n", "chart.csv")


@pytest.mark.parametrize("form", [page, delimited])
@pytest.mark.parametrize(
    ("first", "second"),
    [
        (("S", "Chest 82-86 cm", "Waist 66-70 cm"), ("M", "Chest 87-91 cm", "Waist 71-75 cm")),
        (("S", "Chest: 82-86 cm", "Waist: 66-70 cm"), ("M", "Chest: 87-91 cm", "Waist: 71-75 cm")),
        (("Size S", "82-86 cm chest", "66-70 cm waist"), ("M", "87-91 cm chest", "71-75 cm waist")),
        (
            ("Größe S", "Brust 82-86 cm", "Taille 66-70 cm"),
            ("M", "Brust 87-91 cm", "Taille 71-75 cm"),
        ),
        (
            ("Size: S", "Chest (cm): 82-86", "Waist (cm): 66-70"),
            ("Size: M", "Chest (cm): 87-91", "Waist (cm): 71-75"),
        ),
    ],
)
def test_no_row_of_headings_is_needed(form, first, second) -> None:
    reading = form(first, second)
    assert values(reading) == RIGHT
    assert questions(reading) == []


@pytest.mark.parametrize(
    "between",
    [", ", " / ", " and ", " und ", " + "],
)
def test_several_of_them_in_one_cell(between: str) -> None:
    reading = table(
        f"Size | Fits\nS | 82-86 cm chest{between}66-70 cm waist\n"
        f"M | Chest 87-91 cm{between}waist 71-75 cm"
    )
    assert values(reading) == RIGHT
    assert questions(reading) == []


def test_sizes_across() -> None:
    reading = page(
        ("S", "M"), ("Chest 82-86 cm", "Chest 87-91 cm"), ("Waist 66-70 cm", "Waist 71-75 cm")
    )
    assert values(reading) == RIGHT


def test_a_name_in_the_cells_says_more_than_the_heading() -> None:
    reading = table(
        "Taille | Largeur (cm) | Longueur (cm)\n"
        "S | 53 cm Aisselle à aisselle | 69 cm Épaule au bas\n"
        "M | 55 cm Aisselle à aisselle | 71 cm Épaule au bas"
    )
    assert values(reading)["S chest"] == 53
    assert {value.basis.value for value in ranges(reading) if value.dimension.value == "chest"} == {
        "flat"
    }


def test_a_measure_that_the_heading_refutes_is_not_believed() -> None:
    reading = table("Size | Waist (cm)\nS | chest 84-88 cm\nM | chest 89-93 cm")
    assert set(values(reading)) <= {"S waist", "M waist"}
    assert len(asked_at(reading, "impossible")) == len(ranges(reading)) == 2


def test_a_word_for_size_measures_only_where_a_unit_stands_behind_it() -> None:
    assert named_value("Taille 64-68 cm") == ("Taille", "64-68 cm")
    assert named_value("Taille 36-38") is None
