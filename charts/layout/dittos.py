"""``ditto``, ``idem``, 〃 in a cell: the figures of the size before, said once more.

Unlike a blank it cannot mean that nothing is given.
"""

from __future__ import annotations

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


def dittos_filled(fields: Sequence[Field]) -> list[Field]:
    """The fields of values with what a cell repeats in the place of the word for it."""
    return [_filled(field) if field.kind is FieldKind.VALUES else field for field in fields]


def _filled(field: Field) -> Field:
    cells: list[tuple[At, ...]] = []
    for cell in field.cells:
        above = cells[-1] if cells else ()
        said = bool(cell) and unaccented(clean(cell[0].text)).rstrip(".") in _WITHOUT_STOP
        repeats = said and bool(above) and look(above[0].text).value
        cells.append((_as(cell[0], above[0]),) if repeats else cell)
    return replace(field, cells=tuple(cells)) if tuple(cells) != field.cells else field


_WITHOUT_STOP: Final = frozenset(one.rstrip(".") for one in _SAME)


def _as(at: At, above: At) -> At:
    return replace(at, cell=replace(at.cell, text=above.text))
