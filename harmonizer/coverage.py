"""Which share of a population finds at least one size: by model, by set of models, by body.

Readings are taken as exact, so a length is clear from its lower end on. Nothing is estimated.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import combinations
from typing import Final

import numpy as np
import numpy.typing as npt

from harmonizer.crowd.best import Crowd, best_sizes
from harmonizer.offers import Offer
from harmonizer.range_table import RangeTable
from harmonizer.settings import DEFAULTS, Settings
from harmonizer.states import VERDICTS, Verdict

Flags = npt.NDArray[np.bool_]

EXACT: Final = 1e-9
"""The uncertainty of a reading taken as exact, in cm."""

_EDGE: Final = VERDICTS.index(Verdict.EDGE)


@dataclass(frozen=True, slots=True, eq=False)
class Coverage:
    """Who is served by which model: ``served`` is models x riders."""

    models: tuple[str, ...]
    served: Flags

    @property
    def shares(self) -> dict[str, float]:
        """The share of riders each model serves alone."""
        means = self.served.mean(axis=1)
        return {model: float(share) for model, share in zip(self.models, means, strict=True)}

    @property
    def together(self) -> float:
        """The share that at least one model serves."""
        return float(self.served.any(axis=0).mean()) if self.models else 0.0


def coverage(crowd: Crowd, table: RangeTable, settings: Settings = DEFAULTS) -> Coverage:
    """Which riders each model of ``table`` serves with *fits* or *edge*."""
    exact = replace(crowd, u=np.full((4, 1), EXACT))
    by_model: dict[str, list[Offer]] = {}
    for offer in table.offers:
        by_model.setdefault(offer.model, []).append(offer)
    served = [
        best_sizes(exact, RangeTable.compiled(offers, settings), settings).verdicts <= _EDGE
        for offers in by_model.values()
    ]
    shape = (len(by_model), len(crowd))
    return Coverage(tuple(by_model), np.array(served, np.bool_).reshape(shape))


def best_set(found: Coverage, size: int) -> tuple[tuple[str, ...], float]:
    """The models that together serve most riders, ``size`` of them, and the share they serve.

    Every set is tried, so the answer is exact; it is meant for a shop's dozens of models.
    """
    best: tuple[int, ...] = ()
    most = -1
    for chosen in combinations(range(len(found.models)), min(size, len(found.models))):
        count = int(found.served[list(chosen)].any(axis=0).sum())
        if count > most:
            best, most = chosen, count
    riders = max(1, found.served.shape[1])
    return tuple(found.models[at] for at in best), max(most, 0) / riders


def empty_cells(
    found: Coverage, chest: Sequence[float], back: Sequence[float], step: tuple[float, float]
) -> dict[tuple[float, float], int]:
    """Cells of a chest x back map in which no rider is served, with how many riders they hold.

    A cell is named by its lower ends in cm; ``step`` is its width in chest and back.
    """
    served = np.asarray(found.served.any(axis=0)).tolist()
    cells: dict[tuple[float, float], list[bool]] = {}
    for one, other, hit in zip(chest, back, served, strict=True):
        cell = (one // step[0] * step[0], other // step[1] * step[1])
        cells.setdefault(cell, []).append(hit)
    return {cell: len(hits) for cell, hits in sorted(cells.items()) if not any(hits)}
