"""Whom a chart is for. All bands are compared; another than the rider's comes after."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

from harmonizer.rider import BodyFigure

_OWN: Final[Mapping[BodyFigure, frozenset[str]]] = MappingProxyType(
    {
        BodyFigure.WOMAN: frozenset({"women", "unisex"}),
        BodyFigure.MAN: frozenset({"men", "unisex"}),
        BodyFigure.CHILD: frozenset({"girls", "boys", "kids", "baby", "unisex"}),
    }
)


def is_other_band(band: str | None, figure: BodyFigure | None) -> bool:
    """Whether a chart is for another band than the rider's; no where either is not known."""
    return band is not None and figure is not None and band not in _OWN[figure]
