"""How many pieces of each size to order."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import count


def size_curve(shares: Sequence[float], pieces: int, core: Sequence[bool] = ()) -> list[int]:
    """``pieces`` spread over sizes by their ``shares``, by the largest remainder.

    ``shares`` are weights of any scale, one a size; all 0 when they or ``pieces`` come to nothing.
    A ``core`` size gets at least one, taken from the size with most pieces over its share.
    """
    total = sum(shares)
    if total <= 0 or pieces <= 0:
        return [0] * len(shares)
    exact = [share / total * pieces for share in shares]
    found = [math.floor(part) for part in exact]
    by_remainder = sorted(range(len(exact)), key=lambda at: (found[at] - exact[at], at))
    for at in by_remainder[: pieces - sum(found)]:
        found[at] += 1
    for at, wanted in enumerate(core):
        if wanted and not found[at]:
            giver = max(range(len(found)), key=lambda other: (found[other] - exact[other], -other))
            if found[giver] > 1:
                found[giver] -= 1
                found[at] = 1
    return found


def demand_covered(pieces: int, expected: float) -> float:
    """The chance, 0 to 1, that a Poisson demand of mean ``expected`` is at most ``pieces``."""
    term = total = math.exp(-expected)
    for number in range(1, pieces + 1):
        term *= expected / number
        total += term
    return total


def pieces_for(expected: float, cost_short: float, cost_over: float) -> int:
    """The fewest pieces Q with P(D <= Q) at least Cu / (Cu + Co), D Poisson of mean ``expected``.

    ``cost_short`` (Cu) and ``cost_over`` (Co) are what a piece too few and one too many costs, both
    above 0 and in one currency. Source: the order model of a single period, as in textbooks.
    """
    needed = cost_short / (cost_short + cost_over)
    return next(number for number in count() if demand_covered(number, expected) >= needed)
