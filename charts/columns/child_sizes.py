"""The age that a child's size tells without naming it: 104, 110/116, ``Junior XS``.

Children's sizes are body heights in steps of 6 cm from 50 cm on (common practice, no source).
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal
from typing import Final

from charts.columns.small_bodies import age_at_height
from charts.headings.bands import CHILDREN
from charts.layout.looks import look
from charts.layout.view import At

_HEIGHTS: Final = re.compile(r"(\d{2,3})(?:\s?[-/]\s?(\d{2,3}))?(?:\s?cm)?")
_FIRST: Final = 50
_STEP: Final = 6
_LAST: Final = 182
_SURELY: Final = 104
"""Sizes from 50 to 98 may be a grown-up's; with one of this height beside them they are none."""
_SMALL_CM: Final = 125
_SCHOOL: Final = Decimal(5)
"""A junior whose age nobody tells is of school age as likely as younger (common practice)."""


def years_of_sizes(cells: Sequence[tuple[At, ...]]) -> list[Decimal | None]:
    """The age in years of each line by its size; none where the sizes are no children's."""
    texts = [cell[0].text.strip() if cell else "" for cell in cells]
    heights = [_heights(text) for text in texts]
    named = bool(heights) and all(heights)
    if named and max(max(each) for each in heights) >= _SURELY:
        return [_age(Decimal(sum(each)) / len(each)) for each in heights]
    return [_SCHOOL if look(text).band in CHILDREN else None for text in texts]


def _age(cm: Decimal) -> Decimal | None:
    """The age at a height; the first years of school are one."""
    young = age_at_height(cm)
    return _SCHOOL if young is None and cm < _SMALL_CM else young


def _heights(text: str) -> list[int]:
    """The body heights that name a child's size; none where a number is no such height."""
    match = _HEIGHTS.fullmatch(text)
    found = [int(each) for each in match.groups() if each] if match else []
    told = all(_FIRST <= one <= _LAST and (one - _FIRST) % _STEP == 0 for one in found)
    return found if told else []
