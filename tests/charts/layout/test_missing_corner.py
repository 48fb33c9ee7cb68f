"""The blank corner over the sizes is lost, and the words above all stand a column too early."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Chart, FileReading, Range
from tests.charts.read_text import asked_at, questions, ranges, table, values

HEADS = ("Size", "Chest (cm)", "Waist (cm)", "Chest (cm)", "Waist (cm)")
ROWS = (("S", "82-86", "66-70", "97-101", "83-87"), ("M", "87-91", "71-75", "102-106", "88-92"))
RIGHT = {
    "women S chest": (82, 86),
    "women S waist": (66, 70),
    "men S chest": (97, 101),
    "men S waist": (83, 87),
    "women M chest": (87, 91),
    "women M waist": (71, 75),
    "men M chest": (102, 106),
    "men M waist": (88, 92),
}


def page(first: str, *rows: tuple[str, ...]) -> FileReading:
    lines = "".join(f"<tr>{''.join(f'<td>{cell}</td>' for cell in row)}</tr>" for row in rows)
    return read_bytes(f"<table><tr>{first}</tr>{lines}</table>".encode(), "chart.html")


@pytest.mark.parametrize(
    "first",
    [
        "<td colspan=2>Women</td><td colspan=2>Men</td>",
        "<td>Women</td><td></td><td>Men</td><td></td>",
    ],
)
def test_words_for_whom_stand_over_their_own_groups(first: str) -> None:
    reading = page(first, HEADS, *ROWS)
    assert values(reading) == RIGHT
    assert questions(reading) == []


def test_so_they_do_in_a_text_in_german_inches() -> None:
    reading = table(
        "Damen | | Herren |\n"
        "Größe | Brustumfang (in) | Taillenumfang (in) | Brustumfang (in) | Taillenumfang (in)\n"
        "S | 32-34 | 26-28 | 36-38 | 30-32\nM | 34-36 | 28-30 | 38-40 | 32-34"
    )
    assert values(reading)["women S waist"] == (66.04, 71.12)
    assert values(reading)["men S chest"] == (91.44, 96.52)


def test_groups_of_unequal_length_are_told_by_what_the_words_span() -> None:
    heads = (*HEADS[:3], "Hip (cm)", *HEADS[3:])
    rows = [(*row[:3], hip, *row[3:]) for row, hip in zip(ROWS, ("90-94", "95-99"), strict=True)]
    reading = page("<td colspan=3>Women</td><td colspan=2>Men</td>", heads, *rows)
    assert values(reading) == RIGHT | {"women S hip": (90, 94), "women M hip": (95, 99)}


def test_where_nothing_spans_them_the_second_group_is_asked_about() -> None:
    reading = table(
        "Women | | | Men |\n"
        "Size | Chest (cm) | Waist (cm) | Hip (cm) | Chest (cm) | Waist (cm)\n"
        "S | 82-86 | 66-70 | 90-94 | 97-101 | 83-87\nM | 87-91 | 71-75 | 95-99 | 102-106 | 88-92"
    )
    assert questions(reading) == ["columns-shifted"]
    men = [one for chart in reading.charts if chart.band == "men" for one in ranges_of(chart)]
    assert len(men) == 6
    assert all(one.findings for one in men)


def ranges_of(chart: Chart) -> list[Range]:
    return [value for size in chart.sizes for value in size.ranges]


def test_words_over_their_groups_are_not_moved() -> None:
    reading = table("\n".join([" | Women | | Men |", *(" | ".join(row) for row in (HEADS, *ROWS))]))
    assert values(reading) == RIGHT
    assert questions(reading) == []


@pytest.mark.parametrize(
    ("heading", "cells"), [("Age", ("4-5", "6-7")), ("Height (cm)", ("116", "128"))]
)
def test_ages_or_heights_before_the_measures_of_children_may_name_their_sizes(
    heading: str, cells: tuple[str, str]
) -> None:
    reading = table(
        f"Women | | | Kids |\nSize | Chest (cm) | Waist (cm) | {heading} | Chest (cm)\n"
        f"S | 82-86 | 66-70 | {cells[0]} | 58\nM | 87-91 | 71-75 | {cells[1]} | 62"
    )
    assert questions(reading) == ["columns-shifted"]
    kids = [one for chart in reading.charts if chart.band == "kids" for one in ranges_of(chart)]
    assert len(kids) == len(asked_at(reading, "columns-shifted")) == 4
    assert values(reading)["women S waist"] == (66, 70)


def test_so_may_ages_with_a_word_for_years() -> None:
    reading = table(
        "Damen | | | Kinder |\n"
        "Größe | Brustumfang (cm) | Taillenumfang (cm) | Alter | Brustumfang (cm)\n"
        "S | 82-86 | 66-70 | 4 Jahre | 58\nM | 87-91 | 71-75 | 6 Jahre | 62"
    )
    kids = [one for chart in reading.charts if chart.band == "kids" for one in ranges_of(chart)]
    assert kids
    assert all(one.findings for one in kids)


def test_heights_of_every_band_are_a_measure_like_the_others() -> None:
    reading = table(
        " | Women | | Girls |\nSize | Height (cm) | Chest (cm) | Height (cm) | Chest (cm)\n"
        "S | 160-166 | 82-86 | 116-122 | 60-63\nM | 164-170 | 87-91 | 128-134 | 64-67"
    )
    assert "columns-shifted" not in questions(reading)
    assert len(ranges(reading)) == 8
