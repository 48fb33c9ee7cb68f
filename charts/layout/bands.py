"""Groups of columns that nothing merges: a band or unit stands over the first of its group."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise, takewhile
from typing import Final

from charts.dimensions import Role
from charts.layout.carried_lengths import lengths_carried
from charts.layout.fields import Field
from charts.layout.looks import look
from charts.quantities import METRIC
from charts.schema import Dimension

_OF_ALL: Final = frozenset(
    {Dimension.HEIGHT, Dimension.WEIGHT, Dimension.AGE, Dimension.BACK_LENGTH}
)
"""What a chart gives for everybody at once as often as for a band of its own."""


def bands_carried(fields: Sequence[Field]) -> list[Field]:
    """The fields with a band word carried to the right, where measures would else repeat.

    ``Women | | Men |`` over ``Chest | Waist | Chest | Waist``. Where no measure repeats, a band
    word may be the heading of one column only and is not carried.
    """
    found = _groups_filled(lengths_carried(_units_carried(fields)))
    if not _repeats(found):
        return found
    band: str | None = None
    for number, field in enumerate(found):
        if field.heading.band is not None:
            band = field.heading.band
        elif band is not None and _takes(field, found[number - 1]):
            heading = replace(field.heading, band=band)
            found[number] = replace(field, heading=heading)
        else:
            band = None
    return found


def _groups_filled(fields: Sequence[Field]) -> list[Field]:
    """``Women | | Men |`` over ``Chest | Hip | Chest | Waist``: each band over its own columns.

    Columns between two bands can be nobody's but the first one's. What stands behind the last band
    is its own, though it may be anybody's where it is more than the bands before have
    (``behind_the_bands``); where it begins the same measures anew, a band is lost.
    """
    found = list(fields)
    starts = [number for number, field in enumerate(found) if _begins_band(field)]
    groups = [list(_under(found, start)) for start in starts]
    known = [
        len(group)
        for start, group, after in zip(starts, groups, starts[1:], strict=False)
        if start + len(group) + 1 == after
    ]
    if not starts or len(known) < len(starts) - 1 or not any(known):
        return found
    if _again(found, starts[-1], groups[-1][: max(known)], groups[-1][max(known) :]):
        groups[-1] = groups[-1][: max(known)]
    for start, group in zip(starts, groups, strict=True):
        for number in group:
            heading = replace(found[number].heading, band=found[start].heading.band)
            found[number] = replace(found[number], heading=heading)
    return found


def behind_the_bands(fields: Sequence[Field]) -> list[Field]:
    """The columns of the last of several bands that are more than the longest before it has.

    So are those at its end by which all people are told, height or weight, that no band before it
    has. Nothing above them says whose they are: the last band's, or everybody's.
    """
    starts = [number for number, field in enumerate(fields) if _begins_band(field)]
    if len(starts) < 2:
        return []
    longest = max(after - before for before, after in pairwise(starts))
    if longest < 2:
        return []
    last = fields[starts[-1]].heading.band
    own = [*takewhile(lambda field: field.heading.band == last, fields[starts[-1] :])]
    return own[min(longest, _told_at_the_end(own, fields[starts[0] : starts[-1]])) :]


def _told_at_the_end(own: Sequence[Field], before: Sequence[Field]) -> int:
    """Where in a band the measures of all people begin that stand at its end and nowhere before."""
    had = {field.heading.dimension for field in before}
    end = len(own)
    while end > 1 and own[end - 1].heading.dimension in _OF_ALL - had:
        end -= 1
    return end


def _again(fields: Sequence[Field], start: int, own: Sequence[int], more: Sequence[int]) -> bool:
    """Whether one of the columns that are more measures what one of the band's own does."""
    had = {_measure_of(fields[number]) for number in (start, *own)}
    return any(_measure_of(fields[number]) in had for number in more)


def _measure_of(field: Field) -> tuple[object, ...]:
    return field.heading.dimension, field.heading.unit, field.heading.role


def _begins_band(field: Field) -> bool:
    """A word for whom above the name of a measure."""
    above = field.heading.band is not None and len(field.heads) > 1
    return above and _measures(field) and look(field.heads[0].text).heading.role is Role.BAND


def _under(fields: Sequence[Field], start: int) -> Iterator[int]:
    """The columns to the right whose headings begin below the band that stands over ``start``."""
    band, own = fields[start].heads[0], fields[start].heads[1]
    for number in range(start + 1, len(fields)):
        field = fields[number]
        if not field.heads or field.heading.band is not None or not _measures(field):
            return
        first = field.heads[0]
        beside = first.row - own.row if band.row != own.row else first.column - own.column
        if beside < 0:
            return
        yield number


def _units_carried(fields: Sequence[Field]) -> list[Field]:
    """``cm | | inch |`` over ``Chest | Waist | Chest | Waist``: a unit carried to the right.

    Only where two systems stand over the columns and measures repeat: else the unit of one column
    says nothing of the next.
    """
    found = list(fields)
    bare = [
        field.heading.dimension for field in found if _measures(field) and not field.heading.unit
    ]
    systems = {field.heading.unit in METRIC for field in found if field.heading.unit is not None}
    if len(systems) < 2 or not bare:
        return found
    for number, field in enumerate(found[1:], start=1):
        unit = found[number - 1].heading.unit
        if unit is None or field.heading.unit is not None or not _takes(field, found[number - 1]):
            continue
        if field.heading.dimension in _both_times(found):
            found[number] = replace(field, heading=replace(field.heading, unit=unit))
    return found


def _both_times(fields: Sequence[Field]) -> set[Dimension | None]:
    counts = Counter(field.heading.dimension for field in fields if _measures(field))
    return {dimension for dimension, count in counts.items() if count > 1}


def _repeats(fields: Sequence[Field]) -> bool:
    """Whether two columns measure the same without a band of their own to tell them apart."""
    bare = [field for field in fields if field.heading.band is None and _measures(field)]
    named = [(field.heading.dimension, field.heading.unit, field.heading.role) for field in bare]
    banded = {field.heading.band for field in fields} - {None}
    return len(banded) > 1 and len(set(named)) < len(named)


def _measures(field: Field) -> bool:
    return field.heading.role in {Role.MEASURE, Role.LOW_END, Role.HIGH_END}


def _takes(field: Field, left: Field) -> bool:
    """Whether a column stands under the same group: its heading starts no higher."""
    if not field.heads or not left.heads or not _measures(field):
        return False
    return len(field.heads) <= len(left.heads)
