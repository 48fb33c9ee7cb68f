"""Whether a word for a length is how long a child is: beside ages, a small weight, a head.

``Length`` over 33 to 45 cm could be a garment's. Beside a weight of two kilograms, or the girth of
a head, where no other column says how tall the child is, it is rather the child's own.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal
from typing import Final

from charts.columns.fitting import fits, printed_figures
from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.layout.fields import Field
from charts.quantities import FAMILY, Family, canonical
from charts.schema import Dimension

_HEAD: Final = re.compile(
    r"\bhead\b|kopf|hoofd|\bt[eê]te\b|cr[aâ]n|\btesta\b|\bcabez|\bcabeç|huvud|hoved|hode|głow|hlav"
    r"|голов|头围|頭圍|頭囲|머리",
    re.IGNORECASE,
)
_HEAVIEST_KG: Final = Decimal(25)
_LENGTHS_CM: Final = (Decimal(25), Decimal(130))
"""What children from far too early a birth to school weigh and measure (common practice, no
source)."""


def may_be_a_childs(one: Field, around: Surroundings) -> bool:
    """Whether a word that could mean a height stands where a child is measured."""
    if (Role.MEASURE, Dimension.HEIGHT) not in one.heading.candidates:
        return False
    fields = around.table.fields
    if any(other.heading.dimension is Dimension.AGE for other in fields):
        return fits(one, Dimension.HEIGHT)
    tall = any(
        other is not one
        and other.heading.dimension is Dimension.HEIGHT
        and not other.heading.candidates
        for other in fields
    )
    return not tall and _is_long(one) and _small_body(fields)


def _small_body(fields: Sequence[Field]) -> bool:
    """A weight that no grown-up has, or the girth of a head, in another column."""
    weights = [one for one in fields if one.heading.dimension is Dimension.WEIGHT]
    masses = [
        canonical(value, unit)
        for one in weights
        for value, own in printed_figures(one)
        if (unit := own or one.heading.unit) is not None and FAMILY[unit] is Family.MASS
    ]
    light = bool(masses) and max(masses) <= _HEAVIEST_KG
    return light or any(_HEAD.search(one.printed_heading) for one in fields)


def _is_long(one: Field) -> bool:
    """Whether every figure, in cm where no unit is printed, is how long some child is."""
    low, high = _LENGTHS_CM
    unit = one.heading.unit
    found = [
        canonical(value, said) if (said := own or unit) is not None else value
        for value, own in printed_figures(one)
    ]
    return bool(found) and all(low <= value <= high for value in found)
