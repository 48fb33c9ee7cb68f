"""Headings in a language that nobody here reads: three girths told by their figures, and asked.

Chest, waist and hip stand in this order nearly everywhere; the waist is the smallest of them in
every size, and the two others are much alike.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.fitting import fits, printed_figures, telling
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.quantities import FAMILY, Family
from charts.schema import Dimension

_GIRTHS: Final = (Dimension.CHEST, Dimension.WAIST, Dimension.HIP)
_WAIST_OF_CHEST: Final = (Decimal("0.65"), Decimal("0.95"))
_CHEST_OF_HIP: Final = (Decimal("0.86"), Decimal("1.12"))
_WAIST_OF_HIP: Final = Decimal("0.93")
"""How large a girth is beside another on one body (common practice, no source)."""
_FEWEST: Final = 3
"""Sizes that show an order: two may by chance."""


def girths_told(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with the one such triple named, where no heading of the table is known."""
    found = list(columns)
    headed = [n for n, one in enumerate(found) if one.heading]
    if any(not found[n].nameless for n in headed):
        return found
    starts = [n for n in headed if _are_girths(found[n : n + len(_GIRTHS)])]
    if len(starts) != 1:
        return found
    three = found[starts[0] : starts[0] + len(_GIRTHS)]
    for ident in {ident for one in three for ident in one.findings}:
        around.log.withdraw(ident)
    asked = _ask(three, around)
    for number, (column, dimension) in enumerate(zip(three, _GIRTHS, strict=True), starts[0]):
        told = replace(column, dimension=dimension, nameless=False, findings=())
        found[number] = told.asking(asked)
    return found


def _are_girths(three: Sequence[Column]) -> bool:
    """Whether figures in one printed unit of length keep the proportions of a body throughout."""
    units = {one.unit for one in three}
    if len(three) != len(_GIRTHS) or len(units) > 1 or not all(one.heading for one in three):
        return False
    unit = units.pop()
    if unit is None or FAMILY[unit] is not Family.LENGTH:
        return False
    usual = [fits(one.field, dim, limits=telling) for one, dim in zip(three, _GIRTHS, strict=True)]
    lines = [_middles(column) for column in three]
    bodies = [one for one in zip(*lines, strict=True) if any(one)]
    return all(usual) and len(bodies) >= _FEWEST and all(_is_a_body(*one) for one in bodies)


def _middles(column: Column) -> list[Decimal | None]:
    """The middle of each cell; None where it is blank or unread."""
    found: list[Decimal | None] = []
    for cell in column.field.cells:
        figures = [value for value, _ in printed_figures(replace(column.field, cells=(cell,)))]
        found.append(sum(figures, Decimal(0)) / len(figures) if figures else None)
    return found


def _is_a_body(chest: Decimal | None, waist: Decimal | None, hip: Decimal | None) -> bool:
    if not chest or not waist or not hip:
        return False
    return (
        _WAIST_OF_CHEST[0] <= waist / chest <= _WAIST_OF_CHEST[1]
        and _CHEST_OF_HIP[0] <= chest / hip <= _CHEST_OF_HIP[1]
        and waist / hip <= _WAIST_OF_HIP
    )


def _ask(three: Sequence[Column], around: Surroundings) -> str:
    return around.log.add(
        "heading-unknown",
        three[0].place,
        key=f"girths {around.table.area}",
        case="girths",
        heading=" | ".join(one.heading for one in three),
    )
