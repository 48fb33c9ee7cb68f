"""The best of all ways to arrange some cells: the one that passes all checks, or none."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import islice
from typing import Final

from charts.readers.captured.arranging.arrangement import Arrangement
from charts.readers.captured.arranging.proofs import proofs

_MOST_WAYS: Final = 4000


@dataclass(frozen=True, slots=True)
class Found:
    """The way for which most speaks, and others for which as much speaks: then none is sure."""

    best: Arrangement
    rivals: tuple[Arrangement, ...] = ()

    @property
    def differing(self) -> tuple[str, ...]:
        """The first size that two equal ways read otherwise, as each reads it; none for one way."""
        for one, other in zip(_told(self.best), _told(*self.rivals[:1]), strict=False):
            if one != other:
                return one, other
        return ()


def _told(way: Arrangement | None = None) -> list[str]:
    """Every size as a way reads it: ``S: Chest 84-88, Waist 66-70``."""
    if way is None:
        return []
    heads = [one.text for one in way.heads]
    return [
        f"{label.text}: "
        + ", ".join(f"{h} {c.text}" for h, c in zip(heads, row, strict=True) if c.text)
        for label, row in zip(way.labels, way.cells, strict=True)
    ]


def best_way(ways: Iterable[Arrangement]) -> Found | None:
    """The way that passes all checks and for which most speaks; None where none passes.

    Ways that come to the same table are one: the first of them is taken.
    """
    scored: dict[tuple[tuple[str, ...], ...], tuple[tuple[int, int], Arrangement]] = {}
    for way in islice(ways, _MOST_WAYS):
        if way.texts in scored:
            continue
        count = proofs(way)
        if count is not None:
            scored[way.texts] = (way.figures, count), way
    if not scored:
        return None
    most = max(rank for rank, _ in scored.values())
    best, *rivals = [way for rank, way in scored.values() if rank == most]
    return Found(best, tuple(rivals))
