"""What is worn under the vest, and what the vest's elastic still has to give. All in cm."""

from __future__ import annotations

import math

import numpy as np
import numpy.typing as npt

Floats = npt.NDArray[np.float64]


def layer_allowance(thickness_mm: float) -> float:
    """What an even layer adds to a girth, in cm.

    Steiner's formula: the outline of a convex body at distance t is longer by 2 pi t.
    """
    return 2.0 * math.pi * thickness_mm / 10.0


def largest_girth(relaxed: Floats, part: Floats, extension: Floats) -> Floats:
    """Gmax: the girth at which the elastic is used up."""
    return relaxed + part * extension


def stretch_used(girth: Floats, relaxed: Floats, part: Floats, extension: Floats) -> Floats:
    """Share of the elastic in use: below 0 the vest hangs loose, above 1 it cannot close."""
    return (girth - relaxed) / (part * extension)
