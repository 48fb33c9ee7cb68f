"""A sentence of sizes and the figures of one measure, both with every second one in brackets."""

from __future__ import annotations

import time

import pytest

from charts.importer import read_pasted
from charts.readers.captured.bracket_sentence import bracket_sentence_table
from charts.readers.captured.lines import numbered
from tests.charts.read_text import questions, values

_LETTERS = "Sizes S (M) L (XL) are for a bust of about 84 (90) 96 (104) cm."
_AGES = "Størrelsene 1-2 (2-3) 3-4 (4-5) år svarer til et brystmål på omtrent 53 (54) 56 (57) cm."


@pytest.mark.parametrize(
    ("text", "found"),
    [
        (_LETTERS, {"S chest": 84, "M chest": 90, "L chest": 96, "XL chest": 104}),
        (_AGES, {f"{one} år chest": figure for one, figure in
                 zip(("1-2", "2-3", "3-4", "4-5"), (53, 54, 56, 57), strict=True)}),
    ],
)  # fmt: skip
def test_as_many_figures_as_sizes_make_a_table_that_is_asked(
    text: str, found: dict[str, float]
) -> None:
    reading = read_pasted(f"A sweater for all\n{text}\n")
    assert values(reading) == found
    assert "text-order" in questions(reading)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("84 (90)", "84"),
        ("96 (104)", "96"),
        ("96 (104)", "96 (104) 110"),
        ("bust", "ease"),
        ("bust", "bust and waist"),
        (" cm", ""),
        ("L (XL)", "L (S)"),
        (" cm", " cm or less"),
        ("about", "at least 2 and about"),
        ("S (M) L (XL)", "2 (1) 4 (6)"),
    ],
)
def test_a_sentence_in_any_doubt_makes_no_table(old: str, new: str) -> None:
    assert bracket_sentence_table(numbered(_LETTERS)) is not None
    assert bracket_sentence_table(numbered(_LETTERS.replace(old, new))) is None


@pytest.mark.parametrize("piece", ["a 1 (", "ab (1) ", "1 (1) ", "ab 1 (2) 3 cm "])
def test_long_lines_of_brackets_take_no_time(piece: str) -> None:
    start = time.perf_counter()
    bracket_sentence_table(numbered((piece * 400)[:400]))
    assert time.perf_counter() - start < 1
