"""A paragraph that tells sizes and figures in one rhythm of brackets among other words."""

from __future__ import annotations

import time

import pytest

from charts.importer import read_pasted
from charts.readers.captured.bracket_paragraph import bracket_paragraph_table
from charts.readers.captured.lines import numbered
from charts.readers.captured.supplies import is_supply
from tests.charts.read_text import questions, values

_WORDS = "The work begins at the neck and is turned at every front edge, row by row. " * 6
_BEHIND = (
    f'{_WORDS}Sizes: S (M; L; XL) = 36 (40; 44; 48)" / 92 (102; 112; 122) cm chest (on the body). '
    "Gauge: 20 stitches = 4 inches. Yarn: 5 (6; 7; 8) balls of 50 g, in blue."
)
_BEFORE = (
    f"{_WORDS}Størrelser: XS (S) M (L). Overvidde: 88 (96) 104 (112) cm. "
    "Midjevidde: ca. 70 (78) 86 (94) cm. Pinner: 4 og 5 mm."
)
_ABOVE = f"{_WORDS}Die Größen entsprechen dem Brustumfang: S (M; L) = 88 (96; 104) cm."
_CHEST = {"S chest": 92, "M chest": 102, "L chest": 112, "XL chest": 122}


@pytest.mark.parametrize(
    ("text", "found"),
    [
        (_BEHIND, _CHEST),
        (_ABOVE, {"S chest": 88, "M chest": 96, "L chest": 104}),
        (
            _BEFORE,
            {"XS chest": 88, "S chest": 96, "M chest": 104, "L chest": 112}
            | {"XS waist": 70, "S waist": 78, "M waist": 86, "L waist": 94},
        ),
    ],
)
def test_a_measure_before_or_behind_its_figures_is_read_and_asked_once(
    text: str, found: dict[str, float]
) -> None:
    reading = read_pasted(text)
    assert values(reading) == found
    assert questions(reading).count("text-order") == 1


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("92 (102; 112; 122)", "92 (102; 112)"),
        ("cm chest", "cm ease"),
        ("cm chest", "cm or less chest"),
        ("S (M; L; XL)", "S (L; M; XL)"),
        (" cm chest", " chest"),
        ("Yarn: 5 (6; 7; 8) balls", "Sizes S (M; L) balls"),
        ("Yarn: 5 (6; 7; 8) balls", "Chest: 95 (98; 99; 100) cm. Chest: 95 (98; 99; 100) cm"),
    ],
)
def test_a_paragraph_in_any_doubt_makes_no_table(old: str, new: str) -> None:
    assert bracket_paragraph_table(numbered(_BEHIND)) is not None
    assert bracket_paragraph_table(numbered(_BEHIND.replace(old, new))) is None


@pytest.mark.parametrize(
    ("behind", "told"),
    [
        (" balls of 50 g", True),
        (" x 100 g", True),
        (" Knäuel", True),
        (" cm", False),
        (" m", False),
    ],
)
def test_what_is_bought_is_told_by_the_word_behind_the_figures(behind: str, told: bool) -> None:
    assert is_supply(behind) is told


@pytest.mark.parametrize("piece", ["S (M) ", "1 (1) ", "a 1 (", "S (", "ab 1 (2) 3 cm ", "1 (1; "])
def test_long_paragraphs_of_brackets_take_no_time(piece: str) -> None:
    start = time.perf_counter()
    bracket_paragraph_table(numbered((piece * 4_000)[:4_000]))
    assert time.perf_counter() - start < 1
