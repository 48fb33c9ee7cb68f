"""How sure a state is, a reading being Normal(x, u). Nothing here needs scipy.

For many sizes at once the normal distribution comes from a table of exact values
(``math.erfc``) and a second-order step from the nearest of them; the error stays under 1e-10,
which the tests hold against scipy.
"""

from __future__ import annotations

import math
from enum import StrEnum
from typing import Final

import numpy as np
import numpy.typing as npt

from harmonizer.settings import DEFAULTS, Settings

Floats = npt.NDArray[np.float64]

_REACH: Final = 9.0
_PER_UNIT: Final = 512
_NODES: Final = np.linspace(-_REACH, _REACH, int(2 * _REACH) * _PER_UNIT + 1)


def normal_below_one(z: float) -> float:
    """The chance that a standard normal value lies below ``z``, exact to the last digits."""
    return 0.5 * math.erfc(-z / math.sqrt(2.0))


_BELOW: Final = np.array([normal_below_one(z) for z in _NODES.tolist()])
_DENSITY: Final = np.exp(-0.5 * _NODES**2) / math.sqrt(2.0 * math.pi)


def normal_below(z: Floats) -> Floats:
    """The chance that a standard normal value lies below each of ``z``; NaN counts as certain."""
    within = np.fmax(np.fmin(z, _REACH), -_REACH)
    place = ((within + _REACH) * _PER_UNIT + 0.5).astype(np.intp)
    node = place * (1.0 / _PER_UNIT) - _REACH
    step = within - node
    return np.asarray(_BELOW[place] + _DENSITY[place] * step * (1.0 - 0.5 * node * step))


def chance_in_range(lower: Floats, upper: Floats, u: Floats | float) -> Floats:
    """Pin: the chance that a girth truly lies in reach; margins and ``u`` in cm.

    A band wider than its range has no chance to be inside.
    """
    return np.maximum(0.0, normal_below(upper / u) - normal_below(-lower / u))


def chance_not_too_long(lower: Floats, u: Floats | float) -> Floats:
    """Plen: the chance that the back is truly long enough for the vest."""
    return normal_below(lower / u)


class Word(StrEnum):
    """Probabilities in words, as the shop set them."""

    SURE = "sure"
    LIKELY = "likely"
    EVEN = "even"
    UNLIKELY = "unlikely"


def word(probability: float, settings: Settings = DEFAULTS) -> Word:
    """*sure*, *likely* or *even* from the shop's bound for it on, else *unlikely*."""
    if probability >= settings.sure_from:
        return Word.SURE
    if probability >= settings.likely_from:
        return Word.LIKELY
    return Word.EVEN if probability >= settings.even_from else Word.UNLIKELY
