"""The likeliest unit of columns that print none: told from all of their figures together.

Each column speaks for a unit by the share of its figures that can be right in it. What can be half
of a girth laid flat, or a garment's length, speaks with less weight than a whole girth.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from decimal import Decimal
from typing import Final

from charts.columns.at_ages import figures_with_limits
from charts.columns.fitting import printed_figures
from charts.columns.meaning import Column
from charts.columns.measure_kinds import kind_of
from charts.columns.scale import LONGEST_CM
from charts.dimensions import Role
from charts.plausible_ranges import Limits, half_of_a_girth
from charts.quantities import FAMILY, Family, Unit, canonical, factor
from charts.schema import Basis, Dimension

_WHOLE: Final = Decimal(1)
_PART: Final = Decimal("0.5")
"""What a reading weighs that is possible and not the first one the heading means."""
_HARDLY: Final = Decimal("0.25")
_EQUAL: Final = Decimal("0.25")
"""Units whose shares differ by less suit alike: a few figures beyond the limits prove nothing."""
_GARMENT_LENGTH_CM: Final = (Decimal(38), Decimal(160))
_BREADTH_CM: Final = (Decimal(25), Decimal(170))
"""From the shortest top to the longest coat of a grown-up, and across or around them (common
practice, no source)."""


def likeliest(
    bare: Sequence[Column],
    tried: Sequence[Unit],
    taken: Mapping[int, set[Unit]],
    *,
    imperial: bool,
    said: Unit | None = None,
) -> tuple[Unit, list[Unit]]:
    """The unit that suits most figures, and the others that suit a column; else the next best.

    ``taken`` are the units by column in which another column gives the same measure. Among equals
    the system that the rest of the chart uses comes first: ``imperial`` says that it is inches.
    ``said`` is the unit that a title or a note prints for the columns beside: it holds as well
    where half of the figures can be right in it.
    """
    shares = {
        unit: [_suits(one, unit) for one in bare if unit not in taken.get(one.number, ())]
        for unit in tried
    }
    best = max(sum(one) for one in shares.values())

    def rank(unit: Unit) -> tuple[bool, bool, bool]:
        half = bool(shares[unit]) and min(shares[unit]) >= _PART
        equal = sum(shares[unit]) > best - _EQUAL or (unit is said and half)
        return (
            not _all_too_long(unit, bare),
            equal,
            unit is said or (said is None and imperial and unit in {Unit.IN, Unit.LB}),
        )

    first = max(tried, key=rank)
    rest = sorted((one for one in tried if one is not first), key=lambda one: -sum(shares[one]))
    return first, [one for one in rest if _WHOLE in shares[one]] or rest[:1]


def too_long_in(column: Column, unit: Unit) -> bool:
    """Whether a measure without limits of its own would be longer in ``unit`` than anything worn.

    ``Length 72`` beside a rider's ``1.68 m`` is in no metres. One figure alone may be a slip.
    """
    if column.dimension is not Dimension.OTHER or FAMILY[unit] is not Family.LENGTH:
        return False
    if column.nameless:
        return False
    most = _GARMENT_LENGTH_CM[1] if kind_of(column) == "garment_length" else LONGEST_CM
    figures = _bare(column)
    return 2 * sum(canonical(value, unit) > most for value in figures) > len(figures)


def _suits(column: Column, unit: Unit) -> Decimal:
    """How much of a column can be right in ``unit``, from 0 to 1."""
    if column.nameless:
        return Decimal(0)
    if column.dimension is Dimension.OTHER:
        return _PART * _share(column, _of_a_garment(column, unit))
    whole = _whole(column, unit)
    half = _share(column, half_of_a_girth(column.dimension, unit))
    if column.basis is Basis.FLAT:
        return max(half, _HARDLY * whole)
    if column.field.heading.across:
        return max(half, _PART * whole)
    return max(whole, _HARDLY * half)


def _of_a_garment(column: Column, unit: Unit) -> Limits | None:
    """What a length of a garment, or a width of none of its parts, can be at all."""
    if FAMILY[unit] is not Family.LENGTH:
        return None
    across = column.field.heading.across
    if not across and kind_of(column) != "garment_length":
        return None
    low, high = _BREADTH_CM if across else _GARMENT_LENGTH_CM
    return low / factor(unit), high / factor(unit)


def _whole(column: Column, unit: Unit) -> Decimal:
    """The share of figures that a body can measure, a child's at its age."""
    found = list(figures_with_limits(column, unit))
    known = [limits is not None and limits[0] <= one <= limits[1] for one, limits in found]
    return Decimal(sum(known)) / max(1, len(found))


def _share(column: Column, limits: Limits | None) -> Decimal:
    figures = _bare(column)
    if limits is None or not figures:
        return Decimal(0)
    return Decimal(sum(limits[0] <= one <= limits[1] for one in figures)) / len(figures)


def _all_too_long(unit: Unit, bare: Sequence[Column]) -> bool:
    """Whether named lengths would be longer than anything on a person: 150 in of arm span.

    One figure alone may be a slip.
    """
    if FAMILY[unit] is not Family.LENGTH:
        return False
    named = [one for one in bare if not one.nameless and one.role is not Role.LABEL]
    figures = [value for one in named for value in _bare(one)]
    return sum(canonical(value, unit) > LONGEST_CM for value in figures) > 1


def _bare(column: Column) -> list[Decimal]:
    return [value for value, own in printed_figures(column.field) if own is None]
