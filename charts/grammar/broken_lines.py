"""A range broken over the lines of its cell: ``66,5`` over ``à`` over ``70,5``.

A break beside a dash or a word that joins figures parts nothing. A break between two figures, or
behind a unit, does: the same in another unit follows, or a sign was lost.
"""

from __future__ import annotations

import re
from itertools import pairwise
from typing import Final

from charts.grammar import senses
from charts.grammar.tokens import Cell
from charts.vocabulary import unaccented

_JOINING: Final = senses.RANGE_MARK | senses.AND | senses.OR_LESS | senses.OR_MORE
_LEADING: Final = senses.FROM | senses.BETWEEN | senses.MOST | senses.LEAST | senses.CIRCA
_STROKE: Final = "/"
_PARTING: Final = ("(", "[", _STROKE)
_BREAK: Final = re.compile(r" ?\n ?")


def unbroken(cell: Cell) -> str | None:
    """The text with the breaks that part nothing as spaces; None where there is none of them."""
    lines = _BREAK.split(cell.plain)
    if len(lines) == 1:
        return None
    found, joined = lines[0], False
    for before, after in pairwise(lines):
        parts_nothing = _goes_on(before, after, cell)
        joined |= parts_nothing
        found += (" " if parts_nothing else "\n") + after
    return found if joined else None


def _goes_on(before: str, after: str, cell: Cell) -> bool:
    """Whether a line ends or begins with what needs a figure on the other side of the break.

    A bracket or a stroke parts what stands behind it: ``82-86 cm`` over ``(32-34 in)``.
    """
    if after[:1] in _PARTING or before[-1:] == _STROKE:
        return True
    ends, begins = (_pieces(text, cell) for text in (before, after))
    if not ends or not begins:
        return False
    return bool(ends[-1] & (_JOINING | _LEADING) or begins[0] & _JOINING)


def _pieces(text: str, cell: Cell) -> list[int]:
    found = Cell(text, unaccented(text), cell.expected)
    return found.senses[: found.count]
