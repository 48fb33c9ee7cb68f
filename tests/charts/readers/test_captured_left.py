"""Figures of a captured text that come into no chart: they are asked about, never lost."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.importer import read_pasted
from charts.readers.captured.value_runs import figures_among

_BESIDE = dedent("""\
    ADULT XS S M L
    Chest (cm) 81-86 86-91 91-97 97-102

    """)


def _left(text: str) -> list[str]:
    findings = read_pasted(text).findings
    return [one.place for one in findings if one.values.get("case") == "left"]


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("2T 1-2 33-35 28-30", 3),
        ("Newborn 0-3 M 18-21 5-9", 3),
        ("B.- Chest 76-81 cm 86-91 cm 96 cm", 3),
        ("Open from 9 to 17 on 5 days", 0),
        ("Wash at 30", 0),
    ],
)
def test_figures_are_counted_where_they_outnumber_the_words(text: str, count: int) -> None:
    assert figures_among(text) == count


def test_lines_that_begin_with_a_size_of_digits_are_asked_about_when_they_are_no_chart() -> None:
    assert _left(f"{_BESIDE}2T q 1-2 33-35 28-30\n3T q 2-3 36-38 30-33\n") == ["line 4"]


def test_terms_of_delivery_beside_a_chart_are_not_asked_about() -> None:
    assert _left(f"{_BESIDE}We deliver within 3 to 5 days.\nOpen from 9 to 17 on 5 days.\n") == []


def test_figures_of_a_found_table_that_reach_no_value_are_asked_about() -> None:
    sizes = "S M L XL 2XL 3XL 4XL 5XL 7XL 9XL\n\n55 58 61 64 67 70 73 76 81 88\n"
    assert _left(f"1/2 CHEST (CM)\n\nVest.\n{sizes}") == ["line 6"]


def test_the_numbers_of_a_drawing_are_not_asked_about_but_other_lone_figures_are() -> None:
    assert _left(f"{_BESIDE}Guide\n\n1\n\n2\n\n3\n\n1. CHEST\nAround the widest part.\n") == []
    assert _left(f"{_BESIDE}Guide\n\n71\n\n72\n\n73\n\n1. CHEST\nAround the widest part.\n")


def test_figures_in_brackets_within_a_sentence_are_asked_about() -> None:
    said = "The sizes S (M) L (XL) fit people of 80-85 (85-90) 90-95 (95-100) cm. Knit one of them."
    assert _left(f"{_BESIDE}{said}\n") == ["line 4"]
    assert _left(f"{_BESIDE}Knit one of 80 (85) 90 cm.\n") == []
