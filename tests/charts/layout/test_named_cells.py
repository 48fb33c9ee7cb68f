"""Cells that name what they measure, under no heading or under one that says less."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from charts.importer import read_bytes
from charts.layout.named_value import named_parts, named_value
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


@pytest.mark.parametrize("form", [page, delimited])
def test_a_weight_in_brackets_behind_a_height_is_the_weight_of_who_is_so_tall(
    form: Callable[..., FileReading],
) -> None:
    reading = form(
        ("Size", "Chest (cm)", "Zorbo"),
        ("S", "84-88", "Height 1.58 - 1.66 m (50-58 kg)"),
        ("M", "88-92", "Height 1.66 - 1.74 m (58-67 kg)"),
        ("L", "92-96", "Height 1.74m+ (67kg+)"),
    )
    found = values(reading)
    assert (found["S height"], found["S weight"]) == ((158, 166), (50, 58))
    assert (found["L height"], found["L weight"]) == ((174, None), (67, None))
    assert questions(reading) == []


def test_a_size_in_brackets_behind_a_height_is_no_weight() -> None:
    assert named_parts("Height 160-170 cm (50-58)") == {}
    assert named_parts("Weight 50-58 kg (110-128 lb)") == {"Weight": "50-58 kg (110-128 lb)"}


def test_kilograms_behind_a_height_are_no_height_in_another_unit() -> None:
    reading = table("Size | Height (cm) | kg\nS | 158-166 | 50-58\nM | 166-174 | 58-67")
    assert values(reading)["S weight"] == (50, 58)
    assert questions(reading) == []
