"""Chests larger than anybody's who wears these letters: the garment's, whatever it is called.

Words for a girth, ``Обхват груди``, ``Brustumfang``, stand over measures of shirts as well. A
chest of 105 cm is no body's of size S.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.halves import may_be_grown
from charts.columns.loose_backs import is_a_garments_length
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.labels.reading import ADULT
from charts.layout.fields import FieldKind
from charts.layout.looks import look
from charts.quantities import FAMILY, Family, canonical
from charts.schema import Basis, Dimension
from charts.size_labels import LabelKind

_MOST_CM: Final = {-1.0: 102, 0.0: 108, 1.0: 114, 2.0: 121, 3.0: 129}
"""What a chest of size S, M, L, XL and 2XL is at the very most (common practice, no source)."""
_LETTERS: Final = frozenset({LabelKind.ALPHA, LabelKind.COMBINED})
_LESS_CM: Final = 6
"""So much less beside how long the garment is: who measures the one measures the other too."""
_FEWEST: Final = 2


def roomy_for_letters(columns: Sequence[Column], around: Surroundings) -> bool:
    """Whether what is called a body's chest is larger than any in each of the sizes S to 2XL.

    There have to be two of them, and nothing of children.
    """
    chests = [
        one for one in columns if one.dimension is Dimension.CHEST and one.basis is Basis.BODY
    ]
    lines = _lettered(around) if chests else {}
    if len(lines) < _FEWEST or not may_be_grown(columns, around):
        return False
    less = _LESS_CM if any(map(is_a_garments_length, columns)) else 0
    return any(
        all(_least(one, line) > most - less for line, most in lines.items()) for one in chests
    )


def _lettered(around: Surroundings) -> dict[int, int]:
    """The lines of the sizes S to 2XL, and the largest chest there."""
    found: dict[int, int] = {}
    for field in around.table.of(FieldKind.LABEL)[:1]:
        for number, cell in enumerate(field.cells):
            label = look(cell[0].text).label if cell else None
            lettered = label is not None and label.kind in _LETTERS
            if label is not None and lettered and label.order[0] == ADULT:
                most = _MOST_CM.get(math.ceil(label.order[2]))  # of "S/M" that of the larger
                found |= {number: most} if most is not None else {}
    return found


def _least(column: Column, line: int) -> Decimal:
    """The smallest figure of a line in cm, 0 where none has a unit of length."""
    printed = printed_figures(replace(column.field, cells=(column.field.cells[line],)))
    return min(
        (
            canonical(value, unit)
            for value, own in printed
            if (unit := own or column.unit) is not None and FAMILY[unit] is Family.LENGTH
        ),
        default=Decimal(0),
    )
