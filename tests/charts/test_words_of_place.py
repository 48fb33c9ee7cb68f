"""Upper and lower before a measure: two ends where both stand there, else a place on the body."""

from __future__ import annotations

import pytest

from charts.schema import Kind
from tests.charts.read_text import questions, ranges, table


@pytest.mark.parametrize("word", ["Upper waist", "High waist", "Lower hip", "Low waist"])
def test_a_place_on_the_body_is_no_limit_and_is_asked_about(word: str) -> None:
    reading = table(f"Size | Chest (cm) | {word} (cm)\nS | 84 | 70\nM | 88 | 74\nL | 92 | 78")
    placed = [value for value in ranges(reading) if word in value.heading]
    assert {value.kind for value in placed} == {Kind.SINGLE}
    assert questions(reading) == ["heading-two-readings"]
    assert all(value.findings for value in placed)


def test_both_words_side_by_side_are_the_two_ends_of_a_range() -> None:
    reading = table("Size | Lower waist (cm) | Upper waist (cm)\nS | 70 | 74\nM | 74 | 78")
    assert {value.kind for value in ranges(reading)} == {Kind.RANGE}
    assert questions(reading) == []


@pytest.mark.parametrize("word", ["Waist max", "Maximum waist", "Waist upper limit", "Waist high"])
def test_a_word_for_a_limit_needs_no_partner(word: str) -> None:
    reading = table(f"Size | {word} (cm)\nS | 70\nM | 74\nL | 78")
    assert {value.kind for value in ranges(reading)} == {Kind.AT_MOST}
