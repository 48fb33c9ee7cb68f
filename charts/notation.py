"""The grammar of one cell: text to range, open end, single value, tolerance. It never guesses.

The whole cell must match; what can be read two ways comes back as a question with candidates.
The parts stand in ``charts.grammar``, the words in ``resources/vocabulary``.
"""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final

from charts.cell_reading import CellReading, Expected, Quantity, Reading
from charts.cell_text import clean
from charts.grammar.both_units import Both, both_units
from charts.grammar.broken_lines import unbroken
from charts.grammar.compounds import compound_without_marks
from charts.grammar.outcome import asked, in_doubt, outcome
from charts.grammar.plain_forms import plain_form
from charts.grammar.ranges import quantity
from charts.grammar.senses import END, NUMBER, blanks
from charts.grammar.settle import Settled, settle
from charts.grammar.slips import run_on, slip
from charts.grammar.tokens import Cell
from charts.vocabulary import unaccented

__all__ = ["CellReading", "Expected", "Quantity", "Reading", "forget_cells", "read_cell"]

LONGEST: Final = 200
"""Characters above which a cell is no quantity. It is refused before it is looked at."""

_BARE_POINT: Final = re.compile(
    r"(?<=\d)[.,](?= ?(?:cms?|mm|in|inch(?:es)?|kgs?|lbs?)\b)", re.IGNORECASE
)
"""The point of a figure whose decimals were nought and left out: ``113.cm``."""
_ANYTHING: Final = Expected()
_BLANK: Final = CellReading(Reading.BLANK)
_NOTE: Final = CellReading(Reading.NOTE)
_UNREAD: Final = CellReading(Reading.UNREAD, code="unreadable")


def read_cell(text: str, expected: Expected = _ANYTHING) -> CellReading:
    """Read one cell in the light of its column.

    Never raises; ``text`` longer than a quantity can be is UNREAD, or NOTE without a figure.
    Equal cells under an equal column are read once.
    """
    if len(text) > LONGEST:
        return _too_long(text)
    return _read(text, expected)


def forget_cells() -> None:
    """Drop what is remembered of cells read before: for measuring how long reading takes."""
    _read.cache_clear()


def _too_long(text: str) -> CellReading:
    head = text[: 10 * LONGEST]
    return _UNREAD if any(map(str.isdigit, head)) or len(text) > len(head) else _NOTE


@lru_cache(maxsize=65536)
def _read(text: str, expected: Expected) -> CellReading:
    plain = clean(text)
    plainly = _plainly(plain, expected)
    if plainly is not None:
        return plainly
    plain = _BARE_POINT.sub("", plain)
    folded = unaccented(plain)
    if folded in blanks():
        return _BLANK
    cell = Cell(plain, folded, expected)
    if NUMBER not in cell.senses:
        return _UNREAD if any(map(str.isdigit, plain)) else _NOTE
    found = _whole_cell(cell)
    if found is None and "\n" in plain and (joined := unbroken(cell)) is not None:
        return _read(joined, expected)
    return found or _UNREAD


def _plainly(plain: str, expected: Expected) -> CellReading | None:
    """The reading of a cell that its form alone tells, None for any other cell."""
    draft = plain_form(plain, decimal_comma=expected.decimal_comma)
    settled = draft and settle(draft, expected, plain)
    if settled is None:
        return None
    return compound_without_marks(plain, expected) or outcome(settled, expected)


def _whole_cell(cell: Cell) -> CellReading | None:
    """What the cell is as a whole, the plain readings first."""
    marked = compound_without_marks(cell.plain, cell.expected) or run_on(cell)
    if marked is not None:
        return marked
    if (settled := _one_quantity(cell)) is not None:
        return outcome(settled, cell.expected)
    if (both := both_units(cell)) is not None:
        return _of_both(both, cell.expected)
    return slip(cell, lambda rest: _read(rest, cell.expected))


def _one_quantity(cell: Cell) -> Settled | None:
    parsed = quantity(cell, 0)
    if parsed is None or cell.senses[parsed[1]] != END:
        return None
    return settle(parsed[0], cell.expected, cell.plain)


def _of_both(both: Both, expected: Expected) -> CellReading:
    """The metric reading of a cell in two units, with the other one beside it."""
    if both.doubt is not None:
        candidates = [(both.quantity, "as-printed")]
        if both.other_reading is not None:
            candidates.append((both.other_reading, "as-printed"))
        found = asked(both.doubt.code, both.quantity, tuple(candidates))
        return found._replace(also=both.also)
    doubted = in_doubt(both.quantity, expected)
    if doubted is not None:
        return doubted._replace(also=both.also)
    notes = (both.note,) if both.note else ()
    return CellReading(Reading.READ, both.quantity, both.also, notes=notes)
