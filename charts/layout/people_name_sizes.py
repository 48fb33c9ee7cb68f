"""``Men | Women`` over ``44 | 34/36`` beside named measures: the sizes of each, and no measure.

A club orders by one number for all; how men and women know the same size stands beside it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise
from typing import Final

from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.schema import Dimension

_NUMBERED: Final = re.compile(r"(?:\d{1,2}\s?/\s?)?(\d{1,2})")
_STEP: Final = 2
"""Numbered sizes of clothes go up by two (common practice, no source)."""
_HIGHEST: Final = 70
_FEWEST: Final = 3
_SEVERAL: Final = 2


def people_name_sizes(fields: Sequence[Field]) -> list[Field]:
    """The fields with those headed only by people as names of sizes, where a chest is named.

    Only where another column names the sizes for all, and every figure is a numbered size.
    """
    found = list(fields)
    named = any(one.kind is FieldKind.LABEL and one.heading.band is None for one in fields)
    chest = any(
        one.kind is FieldKind.VALUES and one.heading.dimension is Dimension.CHEST for one in fields
    )
    people = [number for number, one in enumerate(fields) if _of_people(one)]
    bands = {fields[number].heading.band for number in people}
    if not (named and chest) or len(people) < _SEVERAL or len(bands) < len(people):
        return found
    if all(_numbered(fields[number]) for number in people):
        for number in people:
            found[number] = replace(found[number], kind=FieldKind.LABEL)
    return found


def _of_people(field: Field) -> bool:
    return field.kind is FieldKind.VALUES and field.heading.role is Role.BAND


def _numbered(field: Field) -> bool:
    """Whether its cells are whole numbers that go up by two, a double size by its last."""
    found = [_NUMBERED.fullmatch(cell[0].text.strip()) for cell in field.cells if cell]
    if len(found) < _FEWEST or None in found:
        return False
    numbers = [int(one[1]) for one in found if one is not None]
    return numbers[-1] < _HIGHEST and all(after - one == _STEP for one, after in pairwise(numbers))
