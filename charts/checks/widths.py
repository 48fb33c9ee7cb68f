"""A range much wider or much narrower than all others of its column: an end with a wrong digit."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Final

from charts.checks.doubt import Column, Doubt
from charts.schema import Chart, Dimension, Kind

_WIDE: Final = Decimal(2)
_NARROW: Final = Decimal("0.4")
_CM: Final = Decimal(4)
"""How much wider or narrower at least: narrow ranges differ by rounding (a judgement)."""
_UNEVEN: Final = frozenset({Dimension.AGE, Dimension.OTHER})


def odd_widths(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """One range whose width is out of proportion to all others of its column."""
    del chart
    found = []
    for column in columns:
        ranged = [
            (n, value.high - value.low)
            for n, value in enumerate(column.values)
            if value.kind is Kind.RANGE and value.high is not None and value.low is not None
        ]
        if column.dimension in _UNEVEN or len(ranged) < 3:
            continue
        odd = [n for n, width in ranged if _odd(width, [w for m, w in ranged if m != n])]
        if len(odd) == 1:
            spots = (column.spots[odd[0]],)
            text = column.values[odd[0]].published
            found.append(Doubt("step-broken", spots, column.heading, text, case="width"))
    return found


def _odd(width: Decimal, others: Sequence[Decimal]) -> bool:
    least, most = min(others), max(others)
    wide = width > most * _WIDE and width - most >= _CM
    narrow = width < least * _NARROW and least - width >= _CM
    return wide or narrow
