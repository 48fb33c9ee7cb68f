"""A word with accents of its own is another language's, and a word may speak the table's language.

The words are from general knowledge, no source; the figures are invented.
"""

from __future__ import annotations

import pytest

from charts.dimensions import Role, read_heading
from charts.schema import Dimension
from tests.charts.read_text import questions, table, values


@pytest.mark.parametrize("heading", ["Șold", "şold (cm)", "ȘOLD", "Șold cm"])
def test_a_romanian_hip_is_no_english_sold(heading: str) -> None:
    assert read_heading(heading).dimension is Dimension.HIP


def test_sold_without_accents_and_unit_counts_what_was_sold() -> None:
    assert read_heading("Sold").role is Role.OTHER


def test_no_column_of_a_romanian_table_is_lost() -> None:
    found = values(
        table("Mărime | Piept (cm) | Talie (cm) | Șold\nS | 84 | 66 | 90\nM | 88 | 70 | 94")
    )
    assert found["S hip"] == 90


TURKISH = """
Beden | Göğüs (cm) | Bel (cm) | Boy
S | 84-88 | 66-70 | 160-168
M | 88-92 | 70-74 | 164-172
L | 92-98 | 74-80 | 168-176
"""


def test_a_height_between_turkish_headings_is_no_chart_for_boys() -> None:
    reading = table(TURKISH)
    assert questions(reading) == []
    assert values(reading)["M height"] == (164, 172)


def test_boys_between_english_headings_stay_boys() -> None:
    assert read_heading("Boy").band == "boys"
    found = values(table("Size | Boy chest | Girl chest\nS | 60-64 cm | 58-62 cm"))
    assert found == {"boys S chest": (60, 64), "girls S chest": (58, 62)}
