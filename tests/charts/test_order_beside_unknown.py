"""A label that nobody knows hides no break in the order of the others."""

from __future__ import annotations

from tests.charts.read_text import asked_at, questions, table

_TEXT = """
Size | Waist (cm)
Mini fit | 62
S | 70
M | 65
L | 76
XL | 80
"""


def test_four_known_labels_tell_which_way_the_sizes_go() -> None:
    reading = table(_TEXT)
    assert "order-broken" in questions(reading)
    assert {"B3", "B4"} & set(asked_at(reading, "order-broken"))


def test_too_few_known_labels_tell_nothing() -> None:
    assert "order-broken" not in questions(table(_TEXT.replace("L | 76\nXL | 80\n", "")))
