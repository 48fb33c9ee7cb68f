"""Own experience with a model: does it come out smaller or larger than its chart says.

It is a note beside the chart and never alters the maker's figures. All in cm.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import fmean
from typing import Final

from harmonizer.settings import DEFAULTS, Settings

Z_80: Final = 1.2815515655446004
"""Half the width of an 80 % interval in standard deviations."""
LEAST_FITTINGS: Final = 5
"""Fewer fittings than this say nothing, however clear they are; the house's own choice."""


@dataclass(frozen=True, slots=True)
class Experience:
    """How far the fitting size lay above the predicted one, from ``count`` fittings.

    Above 0 the model runs small. ``shown`` says whether it is sure enough to be mentioned.
    """

    count: int
    offset: float
    sd: float
    shown: bool

    @property
    def low(self) -> float:
        """The lower end of the 80 % interval."""
        return self.offset - Z_80 * self.sd

    @property
    def high(self) -> float:
        """The upper end of the 80 % interval."""
        return self.offset + Z_80 * self.sd


def experience(outcomes: Sequence[float], settings: Settings = DEFAULTS) -> Experience:
    """The posterior offset of one model from its outcomes; right first time is 0 and counts too.

    Source: shrinkage towards a normal prior, as in textbooks of empirical Bayes.
    """
    count = len(outcomes)
    fitting, between = settings.fitting_sd**2, settings.model_sd**2
    mean = fmean(outcomes) if outcomes else 0.0
    offset = count * between / (count * between + fitting) * mean
    sd = 1.0 / math.sqrt(count / fitting + 1.0 / between)
    clear = abs(offset) > Z_80 * sd
    return Experience(count, offset, sd, shown=count >= LEAST_FITTINGS and clear)
