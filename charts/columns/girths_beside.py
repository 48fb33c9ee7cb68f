"""The girth that belongs to each size of a table, for what can be compared with it.

A length in inches in a chart in cm looks like a length. Beside the girth of the same size it is
none, and neither is a weight in pounds that were meant as kilograms.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from decimal import Decimal
from functools import cache
from typing import Any, Final

from charts.columns.fitting import printed_figures
from charts.columns.halves import among_halves
from charts.columns.meaning import Column
from charts.notation import Expected, read_cell
from charts.plausible_ranges import Limits, plausible
from charts.quantities import Unit, canonical
from charts.remembered import remembered
from charts.resource_files import resources
from charts.schema import Basis, Dimension, UnitFrom

_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.HIP})
_GROWN_UPS_CM: Final = (Decimal(140), Decimal(205))
"""How tall grown-ups are (common practice, no source)."""


@cache
def known_shares() -> Mapping[str, Any]:
    """The reference figures, with their source beside them."""
    source = resources() / "reference" / "beside_girths.toml"
    return tomllib.loads(source.read_text(encoding="utf-8"), parse_float=Decimal)


def share_of_girth(kind: str) -> Limits:
    """The lowest and the highest share of the girth of a chest or a hip that ``kind`` can be."""
    low, high = known_shares()["share"][kind]
    return Decimal(low), Decimal(high)


@remembered
def in_canonical_by_line(column: Column) -> dict[int, Decimal]:
    """The middle of each cell in cm or kg, in the unit of the cell or else of the column."""
    expected = Expected(column.dimension, basis=column.basis, definition=column.definition)
    found: dict[int, Decimal] = {}
    for line, cell in enumerate(column.field.cells):
        quantity = read_cell(cell[0].text, expected).quantity if len(cell) == 1 else None
        unit = (quantity.unit or column.unit) if quantity is not None else None
        if quantity is None or unit is None:
            continue
        ends = [end.value for end in (quantity.low, quantity.high, quantity.value) if end]
        if ends:
            found[line] = canonical(sum(ends, Decimal(0)) / len(ends), unit)
    return found


def girths_beside(column: Column, columns: Sequence[Column]) -> dict[int, Decimal]:
    """The girth in cm of each line, from the other columns whose unit is in no doubt.

    A girth as small as a half may be a child's. It is compared with what is perhaps too small in
    cm, of which a half would say the same.
    """
    whole: list[dict[int, Decimal]] = []
    small: list[dict[int, Decimal]] = []
    for one in columns:
        share = _as_girth(one)
        if one is column or share is None or one.band != column.band or not _believed(one):
            continue
        found = {line: value * share for line, value in in_canonical_by_line(one).items()}
        if found:
            (small if among_halves(one) else whole).append(found)
    return _means(whole or (small if column.unit is Unit.CM else []))


def _means(found: Sequence[Mapping[int, Decimal]]) -> dict[int, Decimal]:
    lines = sorted({line for one in found for line in one})
    by_line = {line: [one[line] for one in found if line in one] for line in lines}
    return {line: sum(values, Decimal(0)) / len(values) for line, values in by_line.items()}


def _as_girth(column: Column) -> Decimal | None:
    """What a figure of the column is multiplied with to be the girth of a chest or a hip."""
    if column.dimension in _GIRTHS:
        return Decimal(1)
    share = known_shares()["girth"].get(column.dimension.value)
    return Decimal(share) if share is not None else None


def _believed(column: Column) -> bool:
    """Whether a girth or a height is whole, possible throughout, and in a unit nobody guessed."""
    if column.unit_from is UnitFrom.INFERRED and column.unit is not None:
        return False
    if column.basis is Basis.FLAT or column.laid_flat:
        return False
    limits = plausible(column.dimension, Unit.CM, column.definition)
    figures = in_canonical_by_line(column).values()
    return limits is not None and all(limits[0] <= value <= limits[1] for value in figures)


def like_heights(column: Column) -> bool:
    """Whether weights are figures of grown-ups' heights in cm: the two may have changed places."""
    figures = [value for value, _ in printed_figures(column.field)]
    low, high = _GROWN_UPS_CM
    return column.dimension is Dimension.WEIGHT and all(low <= one <= high for one in figures)
