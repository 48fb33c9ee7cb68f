"""Sentences of the same words in which the first figure is the size."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.sentences import sentence_table
from tests.charts.read_text import questions, values

_LIST = dedent("""\
    - size 62 for an age of 2-4 months, a height of 56-61 cm and a weight of 6-8 kg;
    - size 68 for an age of 4-6 months, a height of 62-67 cm and a weight of 8-9 kg;
    - size 74 for an age of 6-9 months, a height of 68-73 cm and a weight of 9-10 kg.
    """)


def test_the_figure_behind_the_word_for_sizes_is_the_size() -> None:
    reading = read_pasted(_LIST)
    found = values(reading)
    assert found["62 height"] == (56, 61)
    assert found["74 weight"] == (9, 10)
    assert questions(reading) == []


@pytest.mark.parametrize(
    ("old", "new"),
    [
        (" kg", ""),
        (" cm", ""),
        ("months", "moons"),
        ("size 68", "size 60"),
        ("size", "model"),
        ("height", "age"),
        (" kg", " kg less"),
        ("62-67 cm", "62-67 cm 3"),
    ],
)
def test_what_could_mean_something_else_makes_no_table(old: str, new: str) -> None:
    assert sentence_table(numbered(_LIST.replace(old, new))) is None
    assert sentence_table(numbered(_LIST)) is not None
