"""A block of values that stands the wrong way round, turned back as a proposal for a person."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise

from charts.answers import CellReads, Corrected
from charts.notation import read_cell
from charts.schema import Range

Block = list[list[Range]]
"""Rows of a block as they are printed."""


def turned_back(values: Sequence[Range]) -> Corrected | None:
    """The cells of a turned block with what each reads when the block is turned back.

    Rows and columns exchanged, or upside down, whichever makes every column rise. None when
    neither does, when the block is no rectangle, or when a value stands in two cells.
    """
    block = _block(values)
    if block is None:
        return None
    for back in (_exchanged(block), block[::-1]):
        if back is not None and _rising(back):
            return Corrected(
                tuple(
                    CellReads(here.place, here.published, there.published)
                    for row, turned in zip(block, back, strict=True)
                    for here, there in zip(row, turned, strict=True)
                    if here.published != there.published
                )
            )
    return None


def _block(values: Sequence[Range]) -> Block | None:
    """The values in rows, each heading once in every row; None when they fill no rectangle."""
    headings = list(dict.fromkeys(one.heading for one in values))
    width = len(headings)
    if width < 1 or len(values) % width or any(":" in one.place for one in values):
        return None
    rows = [list(values[start : start + width]) for start in range(0, len(values), width)]
    whole = all([one.heading for one in row] == headings for row in rows)
    return rows if whole and len(rows) > 1 else None


def _exchanged(block: Block) -> Block | None:
    if len(block) != len(block[0]):
        return None
    return [list(column) for column in zip(*block, strict=True)]


def _rising(block: Block) -> bool:
    columns = [[_figure(one) for one in column] for column in zip(*block, strict=True)]
    return all(
        before is not None and after is not None and before < after
        for column in columns
        for before, after in pairwise(column)
    )


def _figure(one: Range) -> Decimal | None:
    quantity = read_cell(one.published).quantity
    if quantity is None:
        return None
    end = quantity.low or quantity.value or quantity.high
    return end.value if end is not None else None
