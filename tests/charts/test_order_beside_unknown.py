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


def test_a_figure_beside_the_one_unknown_name_is_compared_with_the_others() -> None:
    rows = "Small vestling | 90\nMedium | 65\nLarge | 70\nX-Large | 75\nXX-Large | 80"
    reading = table(f"Size | Waist (cm)\n{rows}")
    assert "order-broken" in questions(reading)
    assert "B2" in asked_at(reading, "order-broken")


def test_a_name_of_other_people_is_compared_with_nobody() -> None:
    rows = "Child | 90\nMedium | 65\nLarge | 70\nX-Large | 75\nXX-Large | 80"
    assert "order-broken" not in questions(table(f"Size | Waist (cm)\n{rows}"))
