"""``S | Short``, ``| Long``, ``M | Short``, ``| Long``: a name written once for its group of rows.

A blank is not surely the same as above. Where each group holds the same lengths, sizes or measures
in the same order, each once, it can be nothing else.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look

_OUTER = frozenset({FieldKind.LABEL, FieldKind.NAMES})
_INNER = frozenset({FieldKind.LENGTH, FieldKind.LABEL, FieldKind.NAMES})


def groups_filled(fields: Sequence[Field]) -> list[Field]:
    """The fields, with the name of each group in every row of it."""
    return [_filled(field) if _names_groups(field, fields) else field for field in fields]


def _names_groups(field: Field, fields: Sequence[Field]) -> bool:
    starts = [line for line, cell in enumerate(field.cells) if cell]
    if field.kind not in _OUTER or len(starts) < 2 or starts[0] or len(starts) == len(field.cells):
        return False
    if len({_text(field, line) for line in starts}) < len(starts):
        return False
    ends = [*starts[1:], len(field.cells)]
    groups = list(zip(starts, ends, strict=True))
    return any(_alike(one, groups) for one in fields if one is not field and one.kind in _INNER)


def _alike(inner: Field, groups: Sequence[tuple[int, int]]) -> bool:
    """Whether every group holds the same names in the same order, each of them once."""
    if not all(inner.cells):
        return False
    said = {tuple(_text(inner, line) for line in range(*group)) for group in groups}
    names = next(iter(said))
    return len(said) == 1 and 1 < len(names) == len(set(names))


def _text(field: Field, line: int) -> str:
    return field.cells[line][0].text.strip().casefold()


def _filled(field: Field) -> Field:
    cells = list(field.cells)
    for line, cell in enumerate(cells):
        if not cell or look(cell[0].text).blank:
            cells[line] = cells[line - 1]
    return replace(field, cells=tuple(cells))
