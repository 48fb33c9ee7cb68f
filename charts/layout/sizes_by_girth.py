"""Sizes called by the girth they fit: ``Chest size``, ``To fit chest`` over 26/28", 30/32".

Of school wear and sport wear no other name is printed; the figures beside are the garment's.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from charts.layout.fields import Field, FieldKind
from charts.schema import Basis

_DOUBLE: Final = re.compile(
    r"(\d{2,3})\s*[/–-]\s*(\d{2,3})\s*(?:\"|”|″|''|in|ins|inch|inches|cm)?\.?"
)


def double_sizes(texts: Sequence[str]) -> bool:
    """Whether each text is two figures, rising and beginning no earlier than the last one ended."""
    found = [_DOUBLE.fullmatch(text) for text in texts]
    if len(found) < 2 or not all(found):
        return False
    ends = [(int(one[1]), int(one[2])) for one in found if one is not None]
    rising = all(low < high for low, high in ends)
    return rising and all(before[1] <= after[0] for before, after in pairwise(ends))


def fits_beside_garments(field: Field, fields: Sequence[Field]) -> bool:
    """Whether a girth of the body stands before the same one of the garment."""
    own = field.heading
    return own.basis is Basis.BODY and any(
        one.kind is FieldKind.VALUES
        and one.heading.dimension is own.dimension
        and one.heading.basis in {Basis.FINISHED, Basis.FLAT}
        for one in fields
        if one is not field
    )
