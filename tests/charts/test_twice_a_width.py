"""A girth that doubles a width beside it is not the body's without a question."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Basis, Dimension, Range
from tests.charts.read_text import questions, ranges, table

_LISTED = (
    "Size jacket\n\n"
    "S = Long : 60cm , Wide : 46cm | Chest girth 92cm\n"
    "M = Long : 65cm , Wide , 51cm | Chest girth 102cm\n"
    "L = Long : 68cm , Wide : 56cm | Chest girth 112cm\n"
)


def chests(text: str, name: str = "a.csv") -> list[tuple[Range, list[str]]]:
    reading = read_bytes(text.encode(), name)
    asked = {one.id: one.code for one in reading.findings}
    return [
        (one, [asked[ident] for ident in one.findings])
        for one in ranges(reading)
        if one.dimension is Dimension.CHEST
    ]


def test_a_width_unread_in_a_cell_of_several_figures_shows_whose_the_girth_is() -> None:
    found = chests(_LISTED, "a.txt")
    assert [one.value for one, _ in found] == [92, 102, 112]
    assert all("basis-doubtful" in codes for _, codes in found)


@pytest.mark.parametrize("heading", ["Width (cm)", "Breite (cm)"])
def test_so_does_a_width_in_a_column_of_its_own(heading: str) -> None:
    found = chests(f"Size;{heading};Chest girth (cm)\nS;46;92\nM;51;102\nL;56;112\n")
    assert len(found) == 3
    assert all("basis-doubtful" in codes for _, codes in found)
    assert all(one.basis is not Basis.BODY for one, _ in found)


def test_sizes_that_are_half_a_chest_are_names() -> None:
    reading = table("EU | Chest girth (cm)\n46 | 92\n48 | 96\n50 | 100\n52 | 104\n")
    assert questions(reading) == []


@pytest.mark.parametrize(
    "text",
    [
        "Size;Width (cm);Chest girth (cm)\nS;46;90\nM;51;98\nL;56;106\n",
        "Size;Width of the vest (cm);Your body's chest (cm)\nS;46;92\nM;51;102\nL;56;112\n",
    ],
)
def test_what_is_not_twice_or_is_said_to_be_the_bodys_is_believed(text: str) -> None:
    assert all("basis-doubtful" not in codes for _, codes in chests(text))
