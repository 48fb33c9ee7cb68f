"""How sure a state is, a reading being Normal(x, u). Nothing here needs scipy.

The normal distribution comes from a table of exact values (``math.erfc``) with cubic
interpolation; its error stays under 1e-11, which the tests hold against scipy.
"""

from __future__ import annotations

import math
from typing import Final

import numpy as np
import numpy.typing as npt

Floats = npt.NDArray[np.float64]

_REACH: Final = 9.0
_PER_UNIT: Final = 256
_NODES: Final = np.linspace(-_REACH, _REACH, int(2 * _REACH) * _PER_UNIT + 1)
_PHI: Final = np.array([0.5 * math.erfc(-z / math.sqrt(2.0)) for z in _NODES.tolist()])
_SLOPE: Final = np.exp(-0.5 * _NODES**2) / math.sqrt(2.0 * math.pi) / _PER_UNIT
_RISE: Final = np.append(np.diff(_PHI), 0.0)
_SLOPE_NEXT: Final = np.append(_SLOPE[1:], 0.0)
_SQUARE: Final = 3.0 * _RISE - 2.0 * _SLOPE - _SLOPE_NEXT
_CUBE: Final = _SLOPE + _SLOPE_NEXT - 2.0 * _RISE


def normal_below(z: Floats) -> Floats:
    """The chance that a standard normal value lies below ``z``; 0 and 1 at the infinities."""
    steps = (np.clip(z, -_REACH, _REACH) + _REACH) * _PER_UNIT
    known = ~np.isnan(steps)
    place = np.where(known, steps, 0.0).astype(np.intp)
    part = steps - place
    rise = _SLOPE[place] + part * (_SQUARE[place] + part * _CUBE[place])
    return np.asarray(_PHI[place] + part * rise)


def chance_in_range(lower: Floats, upper: Floats, u: Floats | float) -> Floats:
    """Pin: the chance that a girth truly lies in reach; margins and ``u`` in cm.

    A band wider than its range has no chance to be inside.
    """
    return np.maximum(0.0, normal_below(upper / u) - normal_below(-lower / u))


def chance_not_too_long(lower: Floats, u: Floats | float) -> Floats:
    """Plen: the chance that the back is truly long enough for the vest."""
    return normal_below(lower / u)


class Word:
    """Probabilities in words, as the shop set them."""

    SURE: Final = "sure"
    LIKELY: Final = "likely"
    EVEN: Final = "even"
    UNLIKELY: Final = "unlikely"


def word(probability: float) -> str:
    """*sure* from 0.90, *likely* from 0.60, *even* from 0.40, else *unlikely*."""
    if probability >= 0.90:
        return Word.SURE
    if probability >= 0.60:
        return Word.LIKELY
    return Word.EVEN if probability >= 0.40 else Word.UNLIKELY
