"""How much of its adjusters a rider uses of every size at once."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from harmonizer.body import Body
from harmonizer.range_table import RangeTable

Floats = npt.NDArray[np.float64]


def share_used(body: Body, table: RangeTable) -> Floats:
    """The share of every adjuster in use, lanes x offers: of its two ways the one used more.

    0 inside the printed range and up to a border closed between two sizes, 1 at the reach and
    beyond; NaN where there is no adjuster or no reading. It is taken in for light clothing, and
    let out for warm.
    """
    taken_in = np.clip(table.seam_low - body.light, 0.0, table.take_in)
    let_out = np.clip(body.warm - table.seam_high, 0.0, table.let_out)
    shares = np.fmax(_share(taken_in, table.take_in), _share(let_out, table.let_out))
    return np.where((table.take_in > 0.0) | (table.let_out > 0.0), shares, np.nan)


def _share(used: Floats, way: Floats) -> Floats:
    """``used`` as a share of ``way``; a way of no length has nothing to be used."""
    return used / np.where(way > 0.0, way, 1.0)
