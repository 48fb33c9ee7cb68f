"""Headings between wide gaps over rows of single blanks: each figure under its heading."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.gapped_heads import gapped_head_table
from charts.readers.captured.lines import numbered
from tests.charts.read_text import questions, values
from tests.charts.readers.reading import paste

_HEADS = "EU Size  Bust (cm)  Waist (cm)  Hip (cm)"
_ROWS = "38 82 64 90\n40 86 68 94\n42 90 72 98\n44 94 76 102\n"


def test_each_figure_stands_under_the_heading_of_its_place() -> None:
    assert paste(f"{_HEADS}\n{_ROWS}").rows()[:2] == [
        ["EU Size", "Bust (cm)", "Waist (cm)", "Hip (cm)"],
        ["38", "82", "64", "90"],
    ]
    reading = read_pasted(f"{_HEADS}\n{_ROWS}")
    assert values(reading)["38 chest"] == 82
    assert values(reading)["44 hip"] == 102
    assert not questions(reading)


def test_inches_over_centimetres_are_asked_about() -> None:
    assert questions(read_pasted(f"{_HEADS.replace('cm', 'inches')}\n{_ROWS}")) == ["units-swapped"]


@pytest.mark.parametrize(
    "text",
    [
        f"{_HEADS}\n38 82 64\n40 86 68\n42 90 72\n",
        f"EU Size  Bust (cm)  Waist (cm)  Colour\n{_ROWS}",
        f"{_HEADS}\n38 82 64 90\n",
    ],
)
def test_rows_of_another_count_and_unknown_headings_are_no_such_table(text: str) -> None:
    assert gapped_head_table(numbered(text)) is None
