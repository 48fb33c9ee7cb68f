"""Rows told apart by whose measures they are: a column of ``Body`` and ``Garment``.

Such words part the rows as models do, and are none: each part is a chart of one side. A word of
neither side beside them stays what it is.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from charts.columns.lines import Line
from charts.columns.values import Filled
from charts.headings.sides import side_of, told_apart
from charts.schema import Basis, Dimension

_OF_THE_BODY: Final = frozenset({Dimension.HEIGHT, Dimension.WEIGHT, Dimension.AGE})


def sides_of_rows(lines: Sequence[Line]) -> Mapping[str, Basis]:
    """The basis that each word for a side beside the rows stands for; none where one side is."""
    names = {line.group for line in lines if line.group is not None}
    if not told_apart(names):
        return {}
    return {name: side.basis for name in names if (side := side_of(name)) is not None}


def of_side(one: Filled, basis: Basis | None) -> Filled:
    """A column with the basis of its rows, where neither its heading nor a person says another."""
    if basis is None or one.column.dimension in _OF_THE_BODY or one.column.basis is Basis.FLAT:
        return one
    ranges = {line: replace(value, basis=basis) for line, value in one.ranges.items()}
    return Filled(replace(one.column, basis=basis), ranges)
