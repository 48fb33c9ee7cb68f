"""Words for whom below their rows, and not above them, are asked about."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table

HEAD = "Size | Chest (cm) | Waist (cm)\n"
WOMEN = "36 | 82-86 | 66-70\n38 | 87-91 | 71-75\n"
MEN = "46 | 90-94 | 78-82\n48 | 95-99 | 83-87\n"


@pytest.mark.parametrize(("first", "second"), [("Women", "Men"), ("Kinder", "Erwachsene")])
def test_words_below_their_rows_are_asked_about(first: str, second: str) -> None:
    reading = table(f"{HEAD}{WOMEN}{first} | | \n{MEN}{second} | | ")
    assert questions(reading) == ["columns-shifted"]
    values = [one for chart in reading.charts for size in chart.sizes for one in size.ranges]
    assert len(values) == 8
    assert all(one.findings for one in values)


def test_words_above_their_rows_are_not() -> None:
    reading = table(f"{HEAD}Women | | \n{WOMEN}Men | | \n{MEN}")
    assert questions(reading) == []
    assert [chart.band for chart in reading.charts] == ["women", "men"]


def test_rows_before_the_first_word_may_be_anybodys() -> None:
    assert questions(table(f"{HEAD}{WOMEN}Men | | \n{MEN}")) == []
