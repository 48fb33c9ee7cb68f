"""A range printed over several rows is one range, whatever stands between its ends."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import questions, table, values

DUE: dict[str, object] = {
    "S chest": (84, 88),
    "S waist": (70, 74),
    "M chest": (88, 92),
    "M waist": (74, 78),
}


@pytest.mark.parametrize("word", ["to", "-", "bis", "à"])
def test_a_word_in_a_row_of_its_own_joins_the_ends_above_and_below(word: str) -> None:
    reading = table(
        f"""
        Size | Chest (cm) | Waist (cm)
        S | 84 | 70
         | {word} | {word}
         | 88 | 74
        M | 88 | 74
         | {word} | {word}
         | 92 | 78
        """
    )
    assert values(reading) == DUE
    assert questions(reading) == []


def test_a_size_may_be_merged_over_the_rows_of_its_range() -> None:
    rows = "".join(
        f"<tr><td rowspan=3>{size}</td><td>{low}</td></tr><tr><td>to</td></tr>"
        f"<tr><td>{high}</td></tr>"
        for size, low, high in (("S", 84, 88), ("M", 88, 92))
    )
    page = f"<table><tr><th>Size</th><th>Chest (cm)</th></tr>{rows}</table>"
    reading = read_bytes(page.encode(), "page.html")
    assert values(reading) == {"S chest": (84, 88), "M chest": (88, 92)}
    assert questions(reading) == []


def test_ends_in_rows_of_a_table_with_sizes_across_are_joined() -> None:
    reading = table(
        """
         | S | M
        Chest (cm) | 84 | 88
         | to | to
         | 88 | 92
        Waist (cm) | 70 | 74
         | to | to
         | 74 | 78
        """
    )
    assert values(reading) == DUE
    assert questions(reading) == []


def test_a_dash_behind_the_figure_waits_for_the_next_row() -> None:
    reading = table(
        """
        Size | Chest (cm) | Waist (cm)
        S | 84 - | 70 -
         | 88 | 74
        M | 88 - | 74 -
         | 92 | 78
        """
    )
    assert values(reading) == DUE
    assert questions(reading) == []


def test_rows_of_dashes_between_sizes_join_nothing() -> None:
    reading = table(
        "Size | Chest (cm) | Waist (cm)\nS | 84-88 | 68-72\nM | - | -\nL | 92-96 | 76-80"
    )
    assert sorted(values(reading)) == ["L chest", "L waist", "S chest", "S waist"]
