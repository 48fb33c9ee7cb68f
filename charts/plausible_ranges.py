"""What a figure can be at all, by dimension and unit: data with its source, read once."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from decimal import Decimal
from functools import cache
from typing import Any, Final

from charts.quantities import CANONICAL, FAMILY, Unit, factor
from charts.resource_files import resources
from charts.schema import Definition, Dimension

Limits = tuple[Decimal, Decimal]
_CLOSE: Final = Decimal("0.01")


@cache
def _ranges() -> Mapping[str, Any]:
    source = resources() / "reference" / "plausible_ranges.toml"
    return tomllib.loads(source.read_text(encoding="utf-8"), parse_float=Decimal)


@cache
def plausible(
    dimension: Dimension, unit: Unit, definition: Definition = Definition.UNKNOWN
) -> Limits | None:
    """The lowest and highest figure in ``unit`` that a body, adult or child, can have.

    None where nothing is known of the dimension, or the unit does not measure it.
    """
    table = _ranges().get(dimension.value, {})
    return _limits(table.get(definition.value, table), unit)


@cache
def usual(dimension: Dimension, unit: Unit) -> Limits | None:
    """The narrower range that tells the readings of one heading apart ("Taille", "Länge").

    Where none is given, what is plausible; None where nothing is known.
    """
    table = _ranges().get(dimension.value, {})
    return _limits(table.get("usual", table), unit)


@cache
def half_of_a_girth(dimension: Dimension, unit: Unit) -> Limits | None:
    """What half of a girth, laid flat, measures; None for what is no girth."""
    table = _ranges().get(dimension.value, {})
    return _limits(table.get("flat", {}), unit)


def _limits(table: Mapping[str, Any], unit: Unit) -> Limits | None:
    said = table.get(unit.value)
    if said is not None:
        return Decimal(said[0]), Decimal(said[1])
    canonical = table.get(CANONICAL[FAMILY[unit]].value)
    if canonical is None:
        return None
    low, high = (Decimal(end) / factor(unit) for end in canonical)
    return low.quantize(_CLOSE), high.quantize(_CLOSE)
