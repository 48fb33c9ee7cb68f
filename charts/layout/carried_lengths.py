"""``Short | | Regular | |`` over ``Back | Height | Back | Height``: lengths that nothing merges.

Each holds for its own columns, up to the next one. The last has as many as the longest before it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from charts.dimensions import Role
from charts.layout.fields import Field
from charts.layout.looks import look
from charts.layout.view import At

_SHORTEST = 3
"""Letters of a word for a length."""


def lengths_carried(fields: Sequence[Field]) -> list[Field]:
    """The fields, with the word for a length over each column of its group."""
    starts = [number for number, field in enumerate(fields) if _begins(field) is not None]
    if len(starts) < 2:
        return list(fields)
    longest = max(after - before for before, after in pairwise(starts))
    ends = [*starts[1:], min(starts[-1] + longest, len(fields))]
    found = list(fields)
    for start, end in zip(starts, ends, strict=True):
        said = _begins(fields[start])
        for number in range(start + 1, end):
            if said is None or not _below(fields[number], fields[start]):
                return list(fields)
            found[number] = replace(found[number], heads=(said, *found[number].heads))
    return found


def _begins(field: Field) -> At | None:
    """The word for a length that stands above the name of a measure."""
    if len(field.heads) < 2 or field.heading.role is not Role.MEASURE:
        return None
    first = field.heads[0]
    return first if look(first.text).length and len(first.text.strip()) >= _SHORTEST else None


def _below(field: Field, start: Field) -> bool:
    """Whether the heading of a column begins beside the measure, below the word for a length."""
    if not field.heads:
        return False
    first, own = field.heads[0], start.heads[1]
    return first.row == own.row or first.column == own.column
