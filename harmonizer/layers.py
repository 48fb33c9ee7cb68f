"""What is worn under the vest, and what the vest's elastic still has to give. All in cm."""

from __future__ import annotations

import math
import tomllib
from collections.abc import Mapping
from decimal import Decimal
from functools import cache

import numpy as np
import numpy.typing as npt

from charts.resource_files import resources

Floats = npt.NDArray[np.float64]


def layer_allowance(thickness_mm: float) -> float:
    """What an even layer adds to a girth, in cm.

    Steiner's formula: the outline of a convex body at distance t is longer by 2 pi t.
    """
    return 2.0 * math.pi * thickness_mm / 10.0


@cache
def layer_thickness_mm() -> Mapping[str, Decimal]:
    """The thickness of the layers known by name, in mm, as the shop set it."""
    source = resources() / "reference" / "layers.toml"
    table = tomllib.loads(source.read_text(encoding="utf-8"), parse_float=Decimal)
    return {name: Decimal(value) for name, value in table["thickness_mm"].items()}


def largest_girth(relaxed: Floats, part: Floats, extension: Floats) -> Floats:
    """Gmax: the girth at which the elastic is used up."""
    return relaxed + part * extension


def stretch_used(girth: Floats, relaxed: Floats, part: Floats, extension: Floats) -> Floats:
    """Share of the elastic in use: below 0 the vest hangs loose, above 1 it cannot close."""
    return (girth - relaxed) / (part * extension)
