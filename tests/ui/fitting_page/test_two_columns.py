"""Sentences are shared between two columns so that little has to be scrolled."""

from __future__ import annotations

import math

from hypothesis import given
from hypothesis import strategies as st

from ui.fitting_page.two_columns import shared


def high(advances: list[float], first: int, left: float, right: float) -> int:
    columns = (advances[:first], left), (advances[first:], right)
    return max(sum(max(1, math.ceil(one / room)) for one in part) for part, room in columns)


def test_short_sentences_left_let_long_ones_right_stand_whole() -> None:
    advances = [300.0, 200.0, 200.0, 220.0, 480.0, 480.0, 480.0, 480.0]
    split = shared(advances, 800.0, 4, 0.0)
    assert split.first == 4
    assert 300.0 <= split.left <= 320.0
    assert high(advances, split.first, split.left, 800.0 - split.left) == 4


def test_a_short_sentence_goes_left_where_the_right_ones_break() -> None:
    """Five fit left on one line each; the three others then take six lines, and so do six left."""
    advances = [440.0, 430.0, 430.0, 460.0, 200.0, 200.0, 500.0, 500.0, 520.0]
    split = shared(advances, 800.0, 4, 0.0)
    assert high(advances, split.first, split.left, 800.0 - split.left) == 6


@given(
    st.lists(st.floats(20, 900), min_size=5, max_size=18),
    st.floats(600, 1800),
)
def test_it_is_never_higher_than_halves(advances: list[float], room: float) -> None:
    indent = 19.0
    split = shared(advances, room, 4, indent)
    half = max(4, -(-len(advances) // 2))
    found = high(advances, split.first, split.left - indent, room - split.left - indent)
    assert found <= high(advances, half, 0.5 * room - indent, 0.5 * room - indent)
    assert split.first >= 4
