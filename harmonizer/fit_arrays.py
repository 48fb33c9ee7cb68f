"""The arrays of one comparison, in the order of the table."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
import numpy.typing as npt

from charts.schema import Dimension
from harmonizer.adjusters import share_used
from harmonizer.body import Body
from harmonizer.comparison import Comparison
from harmonizer.gates import Gates
from harmonizer.lane_choice import LaneChoice
from harmonizer.range_table import RangeTable
from harmonizer.ranking import Grades
from harmonizer.rider import Rider
from harmonizer.settings import Settings

Floats = npt.NDArray[np.float64]
Codes = npt.NDArray[np.uint8]
Flags = npt.NDArray[np.bool_]
Places = npt.NDArray[np.int64]


@dataclass(frozen=True, slots=True, eq=False)
class FitArrays:
    """One rider, every size. Arrays are in the order of the table; ``order`` puts the best first.

    ``states``, ``lower`` and ``upper`` are dimensions x offers: chest, waist, hip, back length,
    then the rest. ``states`` holds what was compared and then lowered by what is known besides
    (too little elastic). ``reserve`` and ``stretch`` are NaN where the
    elastic is not stated.
    """

    rider: Rider
    compared: Comparison
    states: Codes
    girths: Codes
    grades: Grades
    plen: Floats
    between: Flags
    reserve: Floats
    stretch: Floats
    gates: Gates
    order: Places

    @property
    def verdicts(self) -> Codes:
        """The verdict of every size."""
        return self.grades.verdicts

    @property
    def checked(self) -> Codes:
        """How many of the four dimensions were checked."""
        return self.grades.checked

    @property
    def penalty(self) -> Floats:
        """P, which only orders."""
        return self.grades.penalty

    @property
    def probability(self) -> Floats:
        """The size probability, NaN where nothing was checked."""
        return self.grades.probability

    @property
    def other_band(self) -> Flags:
        """Where the chart is for another band than the rider's."""
        return self.grades.other_band

    @property
    def between_up(self) -> Flags:
        """Where the chest lies between a size and the next larger one."""
        return self.grades.between_up

    @property
    def table(self) -> RangeTable:
        """The offers and their ranges."""
        return self.compared.table

    @property
    def settings(self) -> Settings:
        """The figures in force, to be saved with the advice."""
        return self.compared.settings

    @property
    def body(self) -> Body:
        """The rider on the table's lanes."""
        return self.compared.body

    @property
    def lower(self) -> Floats:
        """Lower margins: below zero is loose, or too long."""
        return self.compared.lower

    @property
    def upper(self) -> Floats:
        """Upper margins: below zero is tight, or short."""
        return self.compared.upper

    @property
    def choice(self) -> LaneChoice:
        """Which column of each chart served."""
        return self.compared.choice

    @property
    def dimensions(self) -> tuple[Dimension, ...]:
        """The dimensions of the arrays' rows."""
        return self.compared.choice.dimensions

    @property
    def adjusters_used(self) -> Floats:
        """The share of each adjuster in use, dimensions x offers; NaN where there is none."""
        return _adjusters_used(self.compared)


@lru_cache(maxsize=4)
def _adjusters_used(lies: Comparison) -> Floats:
    """Made when the first row is spoken of, for no verdict, order or picture of a row needs it."""
    return lies.choice.floats(share_used(lies.body, lies.table))
