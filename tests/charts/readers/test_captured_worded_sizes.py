"""Rows of text whose size has several words, in one line or over two."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.worded_sizes import ends_name, worded_row
from tests.charts.read_text import questions, values

_SINGLE = "Size Chest (cm) Waist (cm)\nSmall 82-86 66-70\nMedium 87-91 71-75\n"
_COLUMNS = (
    "Size        Chest (cm)   Waist (cm)\n"
    "Small       82-86        66-70\n"
    "Medium      87-91        71-75\n"
)


@pytest.mark.parametrize("size", ["Extra Large", "XL Tall", "XL / XXL", "L (NEW)", "42 plus"])
@pytest.mark.parametrize("behind", ["", "XXXL 103-108 87-92\n"])
def test_words_beyond_the_headings_are_the_size(size: str, behind: str) -> None:
    reading = read_pasted(f"{_SINGLE}{size} 97-102 81-86\n{behind}")
    chests = [one for key, one in values(reading).items() if key.endswith("chest")]
    assert chests == [(82, 86), (87, 91), (97, 102), *([(103, 108)] if behind else [])]
    assert "text-order" not in questions(reading)


def test_the_last_row_of_columns_may_have_single_blanks() -> None:
    found = values(read_pasted(f"{_COLUMNS}XL 97-102 81-86\n"))
    assert found["XL chest"] == (97, 102)
    assert found["XL waist"] == (81, 86)


@pytest.mark.parametrize(
    "lines", ["Extra\nLarge       97-102       81-86\n", "Extra       97-102       81-86\nLarge\n"]
)
def test_a_size_may_go_on_in_the_next_line(lines: str) -> None:
    reading = read_pasted(_COLUMNS + lines)
    found = values(reading)
    assert found["Extra Large chest"] == (97, 102)
    assert found["Small chest"] == (82, 86)
    assert len(found) == 6
    assert questions(reading) == []


@pytest.mark.parametrize(("first", "second"), [("Women", "S"), ("Child", "Small"), ("Size", "S")])
def test_a_band_or_a_heading_is_no_half_of_a_size(first: str, second: str) -> None:
    assert not ends_name(first, second)


@pytest.mark.parametrize(
    "text",
    ["Waist (cm) 66-70 71-75", "36 38 97-102 81-86", "Model M 175 70", "Extra Large 97", "-"],
)
def test_measures_and_sentences_are_no_such_row(text: str) -> None:
    assert worded_row(text, 2) is None
