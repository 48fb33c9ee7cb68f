"""Clauses of one sentence, each about one size."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.clauses import clauses_table
from charts.readers.captured.lines import numbered
from tests.charts.read_text import questions, values

_MASSES = (
    "Measure first. A small vest will suit a rider of between 40-55 kg, a medium vest should be"
    " between 55-70kgs, and a large vest between 70 - 90 kg.\n"
)


def test_each_clause_gives_its_size_the_range_behind_it_and_all_is_asked() -> None:
    reading = read_pasted(_MASSES)
    assert values(reading) == {
        "small weight": (40, 55),
        "medium weight": (55, 70),
        "large weight": (70, 90),
    }
    assert questions(reading) == ["text-order"]


def test_a_measure_is_named_in_the_clauses_where_it_is_no_mass() -> None:
    reading = read_pasted(
        _MASSES.replace("rider of", "chest of").replace("kgs", "kg").replace("kg", "cm")
    )
    assert values(reading)["medium chest"] == (55, 70)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("a medium vest", "another vest"),  # no size
        ("a medium vest", "a small vest"),  # one twice
        ("55-70kgs", "35-50kgs"),  # they do not rise
        ("70 - 90 kg", "70 - 90 kg or more"),  # an end left open
        ("55-70kgs", "55-70 cm"),  # another unit
        ("Measure first.", "From 29 € on."),  # prices
    ],
)
def test_a_sentence_that_is_not_sure_makes_no_table(old: str, new: str) -> None:
    assert clauses_table(numbered(_MASSES.replace(old, new))) is None
