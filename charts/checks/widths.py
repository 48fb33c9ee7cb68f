"""A range much wider or much narrower than all others of its column: an end with a wrong digit."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from decimal import Decimal
from typing import Final

from charts.checks.doubt import Column, Doubt, adjoin
from charts.schema import Chart, Dimension, Kind

_WIDE: Final = Decimal(2)
_NARROW: Final = Decimal("0.4")
_CM: Final = Decimal(4)
"""How much wider or narrower at least: narrow ranges differ by rounding (a judgement)."""
_OTHERS: Final = 2
"""Ranges beside the odd one that show what is usual in its column."""
_UNEVEN: Final = frozenset({Dimension.AGE, Dimension.OTHER})


def odd_widths(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """One range whose width is out of proportion to all others of its column.

    A size that is as wide in each of its columns covers more than the others do: no digit is
    wrong in all of them at once.
    """
    del chart
    ranged = [(column, _widths(column)) for column in columns if column.dimension not in _UNEVEN]
    ranged = [(column, widths) for column, widths in ranged if len(widths) > _OTHERS]
    odd = [
        (column, number)
        for column, widths in ranged
        if (number := _the_odd(widths)) is not None and not _joins_both(column, number)
    ]
    sizes = [column.spots[number][0] for column, number in odd]
    if len(odd) == len(ranged) > 1 and len(set(sizes)) == 1 and all(_wide(*one) for one in odd):
        return []
    return [
        Doubt(
            "step-broken",
            (column.spots[number],),
            column.heading,
            column.values[number].published,
            case="width",
        )
        for column, number in odd
    ]


def _widths(column: Column) -> dict[int, Decimal]:
    """The width of each range by its number in the column."""
    return {
        number: value.high - value.low
        for number, value in enumerate(column.values)
        if value.kind is Kind.RANGE and value.high is not None and value.low is not None
    }


def _the_odd(widths: Mapping[int, Decimal]) -> int | None:
    """The one range that is much wider or narrower than all others; None where none or several."""
    odd = [
        n for n, width in widths.items() if _odd(width, [w for m, w in widths.items() if m != n])
    ]
    return odd[0] if len(odd) == 1 else None


def _joins_both(column: Column, number: int) -> bool:
    """Whether both ends begin where the neighbours leave off: with a wrong digit they would not."""
    if not 0 < number < len(column.values) - 1:
        return False
    before, after = number - 1, number + 1
    return (adjoin(column, before, number) and adjoin(column, number, after)) or (
        adjoin(column, after, number) and adjoin(column, number, before)
    )


def _wide(column: Column, number: int) -> bool:
    widths = _widths(column)
    return widths[number] > min(widths.values())


def _odd(width: Decimal, others: Sequence[Decimal]) -> bool:
    least, most = min(others), max(others)
    wide = width > most * _WIDE and width - most >= _CM
    narrow = width < least * _NARROW and least - width >= _CM
    return wide or narrow
