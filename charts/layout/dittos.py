"""``ditto``, ``idem``, 〃 in a cell: the figures of the size before, said once more.

Unlike a blank it cannot mean that nothing is given. Where the sizes run across, the line above is
another measure and the cell before another size: which of them is meant, a person must say.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.cell_text import clean
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.layout.view import At
from charts.vocabulary import unaccented

_SAME: Final = frozenset(
    {
        '"',
        "〃",
        ",,",
        "''",
        "ditto",
        "dito",
        "dto",
        "d:o",
        "do.",
        "idem",
        "id.",
        "same",
        "same as above",
    }
    | {"as above", "wie oben", "s.o.", "siehe oben", "comme ci-dessus", "come sopra", "como arriba"}
    | {"como acima", "zie boven", "som ovan", "som over", "jak wyzej", "j.w.", "jw.", "viz vyse"}
)
"""Signs and words by which a list says "the same" (common words, from general knowledge)."""
_ABOVE: Final = re.compile(
    r"above|oben|dessus|sopra|arriba|acima|boven|ovan|over|wyz|j\.?w|s\.o|vyse"
)


def dittos_filled(fields: Sequence[Field]) -> list[Field]:
    """The fields of values with what a cell repeats in the place of the word for it."""
    top = min((_row(field) for field in fields if field.kind is FieldKind.VALUES), default=0)
    return [_filled(field, top) if field.kind is FieldKind.VALUES else field for field in fields]


def _row(field: Field) -> int:
    return min((at.row for cell in field.cells for at in cell), default=0)


def says_the_same(text: str) -> bool:
    """Whether a cell holds nothing but a sign or a word for the same again."""
    return unaccented(clean(text)).rstrip(".") in _WITHOUT_STOP


def _filled(field: Field, top: int) -> Field:
    cells: list[tuple[At, ...]] = []
    for cell in field.cells:
        before = cells[-1] if cells else ()
        said = bool(cell) and bool(before) and _repeats(cell[0], before[0], top)
        cells.append((_as(cell[0], before[0]),) if said else cell)
    return replace(field, cells=tuple(cells)) if tuple(cells) != field.cells else field


def _repeats(at: At, before: At, top: int) -> bool:
    """Whether a cell can only repeat the one before it: beside that, no figures stand above it."""
    if not says_the_same(at.text) or not look(before.text).value:
        return False
    return at.row != before.row or (at.row == top and not _ABOVE.search(unaccented(at.text)))


_WITHOUT_STOP: Final = frozenset(one.rstrip(".") for one in _SAME)


def _as(at: At, above: At) -> At:
    return replace(at, cell=replace(at.cell, text=above.text))
