"""A range broken over the lines of its cell is the range that it is on one line."""

from __future__ import annotations

import pytest

from tests.charts.told import told


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("66,5\nà\n70,5", "[66.5, 70.5]"),
        ("66,5 à\n70,5 cm", "[66.5, 70.5] cm"),
        ("84\nbis\n88", "[84, 88]"),
        ("84 -\n88", "[84, 88]"),
        ("84\n– 88 cm", "[84, 88] cm"),
        ("33\nto\n35 in", "[33, 35] in"),
        ("od 84\ndo 88", "[84, 88]"),
        ("between\n84 and\n88", "[84, 88]"),
    ],
)
def test_a_break_beside_the_sign_of_a_range_parts_nothing(text: str, reading: str) -> None:
    assert told(text) == reading


def test_a_break_between_two_units_parts_them() -> None:
    assert told("84 -\n88 cm\n33 -\n35 in") == told("84 - 88 cm\n33 - 35 in")


@pytest.mark.parametrize("text", ["66\n70", "34\n36"])
def test_a_break_between_two_figures_is_asked_about(text: str) -> None:
    assert told(text).startswith("ask separator-lost")


@pytest.mark.parametrize(
    "text",
    ["82-86 cm\n(32-34 in)", "82-86 cm\n/ 32-34 in", "82-86 cm /\n32-34 in", '82-86 cm\n[32-34"]'],
)
def test_a_bracket_or_a_stroke_parts_two_units_whatever_line_it_stands_in(text: str) -> None:
    assert told(text) == told(text.replace("\n", " "))
    assert told(text).startswith("[82, 86] cm")
