"""The forms known at one look are read as the grammar reads them."""

from __future__ import annotations

from itertools import product

import pytest

from charts.grammar.plain_forms import plain_form
from charts.grammar.ranges import quantity
from charts.grammar.senses import END
from charts.grammar.slips import run_on
from charts.grammar.tokens import Cell
from charts.notation import Expected, read_cell
from charts.quantities import Unit
from charts.schema import Dimension
from tests.charts.told import told_reading

FIGURES = ("0", "7", "034", "86", "113", "86.5", "86,5", "113.36", "99,25", "1.70", "86.125")
JOINTS = ("-", " - ", "- ", " -", " to ", " bis ")
UNITS = ("", "cm", " cm", "in", " in", "kg", " kg")
COLUMNS = (
    Expected(),
    Expected(Dimension.CHEST, Unit.CM),
    Expected(Dimension.HEIGHT, Unit.FT),
    Expected(Dimension.WEIGHT, Unit.ST, decimal_comma=False),
)


def plain_texts() -> list[str]:
    """Every figure alone and every pair of figures, with every joint and unit."""
    spans = ["".join(span) for span in product(FIGURES, JOINTS, FIGURES)]
    return ["".join(cell) for cell in product((*FIGURES, *spans), UNITS)]


@pytest.mark.parametrize("column", COLUMNS)
def test_the_grammar_gives_the_same_draft(column: Expected) -> None:
    known = 0
    for text in plain_texts():
        draft = plain_form(text, decimal_comma=column.decimal_comma)
        if draft is None:
            assert "86.125" in text
            continue
        cell = Cell(text, text, column)
        parsed = quantity(cell, 0)
        assert parsed is not None
        assert (parsed[0], cell.senses[parsed[1]]) == (draft, END), text
        assert run_on(cell) is None
        known += 1
    assert known == 10 * (1 + 6 * 10) * 7


@pytest.mark.parametrize(
    "text",
    ["3050", "3050 cm", "1.250", "86-90-94", "86/90", "34 1/2", "86 m", "9 st", "-86", "86 90", ""],
)
def test_what_its_shape_does_not_tell_is_left_to_the_grammar(text: str) -> None:
    assert plain_form(text, decimal_comma=True) is None


@pytest.mark.parametrize(
    ("text", "column", "reading"),
    [
        ("5-4", Expected(Dimension.HEIGHT), "ask feet-or-range 64 in"),
        ("9.7", Expected(Dimension.WEIGHT, Unit.ST), "ask feet-or-range 133 lb"),
        ("90-86", Expected(Dimension.CHEST, Unit.CM), "ask order-broken"),
    ],
)
def test_its_column_still_makes_a_plain_cell_a_question(
    text: str, column: Expected, reading: str
) -> None:
    assert told_reading(read_cell(text, column)) == reading
