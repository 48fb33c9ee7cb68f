"""A row is high enough for the text in it, as a spreadsheet breaks it."""

from __future__ import annotations

import pytest

from charts.writers.workbook_cells import height
from charts.writers.workbook_look import LISTED, SUBTITLE, Look

ELEVEN = Look(size=11)


def lines(text: str, width: float, look: Look = ELEVEN) -> float:
    return height(text, width, look) / height("x", width, look)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("", 1),
        ("short", 1),
        ("two words", 1),
        ("three words here", 2),
        ("one\ntwo\nthree", 3),
        ("maker/a_very_long_name.xlsx", 4),
        ("abcdefghijklmnopqrst", 2),
        ("abcdefghijklmnopqrstu", 3),
    ],
)
def test_text_breaks_between_words_and_long_words_within(text: str, expected: int) -> None:
    assert lines(text, 10) == expected


def test_small_print_takes_fewer_lines() -> None:
    assert lines("eleven chars", 11, LISTED) < lines("eleven chars", 11)


def test_text_that_may_run_over_takes_one_line() -> None:
    assert lines("a long title that runs over its cell", 5, SUBTITLE) == 1
