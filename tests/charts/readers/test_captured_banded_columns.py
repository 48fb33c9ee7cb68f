"""Columns of blanks under one heading, with lines between the rows that say whose the next are."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.importer import read_bytes
from charts.readers.captured.banded_columns import banded_column_table
from charts.readers.captured.lines import numbered
from charts.schema import FileReading
from tests.charts.read_text import questions, ranges, values


def _read(text: str) -> FileReading:
    return read_bytes(dedent(text).encode(), "chart.txt")


_WOMEN_AND_MEN = """\
    Size    Chest (cm)   Waist (cm)
    Women
    S       60-64        54-57
    M       65-69        58-61
    Men
    S       82-86        66-70
    M       87-91        71-75
"""
_IN_GERMAN_WITH_EMPTY_LINES = """\
    Größe    Brust (cm)   Taille (cm)

    Damen:
    S        60 - 64      54 - 57
    M        65 - 69      58 - 61

    Herren:
    S        82 - 86      66 - 70
    M        87 - 91      71 - 75
"""
_ACROSS = """\
    Size            S         M
    Women
    Chest (cm)   60-64   65-69
    Waist (cm)   54-57   58-61
    Men
    Chest (cm)   82-86   87-91
    Waist (cm)   66-70   71-75
"""


@pytest.mark.parametrize("text", [_WOMEN_AND_MEN, _IN_GERMAN_WITH_EMPTY_LINES, _ACROSS])
def test_each_part_stands_under_its_band(text: str) -> None:
    reading = _read(text)
    assert values(reading) == {
        "women S chest": (60, 64),
        "women S waist": (54, 57),
        "women M chest": (65, 69),
        "women M waist": (58, 61),
        "men S chest": (82, 86),
        "men S waist": (66, 70),
        "men M chest": (87, 91),
        "men M waist": (71, 75),
    }
    assert questions(reading) == []


def test_inches_of_children_parted_by_tabs_and_a_dash_for_a_blank() -> None:
    reading = _read(
        """\
        Size\tChest (in)\tWaist (in)
        Girls
        6\t24-25\t21-22
        8\t26-27\t22-23
        Boys
        6\t25-26\t22-23
        8\t27-28\t-
        """
    )
    assert values(reading)["girls 6 chest"] == (60.96, 63.5)
    assert values(reading)["boys 8 chest"] == (68.58, 71.12)
    assert "boys 8 waist" not in values(reading)


def test_grown_ups_are_told_apart_though_they_are_no_band() -> None:
    reading = _read(
        """\
        Size     Chest (cm)   Waist (cm)
        Kids
        S        60-64        54-57
        M        65-69        58-61
        Adults
        S        82-86        66-70
        M        87-91        71-75
        """
    )
    found = ranges(reading)
    assert [(one.low, one.high) for one in found][-1] == (71, 75)
    assert len(found) == 8
    assert [chart.band for chart in reading.charts] == ["kids", None]
    assert questions(reading) == []


def test_words_in_a_cell_end_no_part() -> None:
    table = banded_column_table(
        numbered(
            dedent(
                """\
                Size    Chest (cm)   Waist (cm)
                Women
                S       60-64        54-57
                M       on request   58-61
                Men
                S       82-86        66-70
                """
            )
        )
    )
    assert table is not None
    assert [[cell.text for cell in row] for row in table.rows][3:] == [
        ["M", "on request", "58-61"],
        ["Men"],
        ["S", "82-86", "66-70"],
    ]
    assert [row[0].line for row in table.rows] == [1, 2, 3, 4, 5, 6]
    assert table.used == 6


@pytest.mark.parametrize(
    "between",
    ["All our jackets run small.", "Waist (cm)", "XL", "Table 2"],
)
def test_a_sentence_a_measure_and_a_size_are_no_band(between: str) -> None:
    text = f"Size    Chest   Waist\nS       60-64   54-57\n{between}\nM       82-86   66-70\n"
    assert banded_column_table(numbered(text)) is None


def test_headings_that_are_printed_again_below_a_band_begin_a_table_of_their_own() -> None:
    text = (
        "Size    Chest   Waist\nS       60-64   54-57\nMen\n"
        "Size    Chest   Waist\nS       82-86   66-70\n"
    )
    assert banded_column_table(numbered(text)) is None
