"""Twice as many lines of bare figures, in which no table stands, take about twice the time to read.

Reference, measured in the same run: the first half of the same lines.
"""

from __future__ import annotations

import random
import time

from pytest_benchmark.fixture import BenchmarkFixture

from charts.importer import read_bytes

LINES = 1500  # more than the lines that are looked at ahead of each
TIMES = 2.6


def figures(count: int) -> bytes:
    chance = random.Random(7)  # noqa: S311 - figures of an invented text
    return "\n".join(str(chance.randint(50, 180)) for _ in range(count)).encode()


def fastest(data: bytes) -> float:
    best = float("inf")
    for _ in range(3):
        before = time.perf_counter()
        read_bytes(data, "a.txt")
        best = min(best, time.perf_counter() - before)
    return best


def test_twice_the_lines_take_twice_the_time(benchmark: BenchmarkFixture) -> None:
    half, whole = figures(LINES), figures(2 * LINES)
    reference = fastest(half)
    benchmark.pedantic(read_bytes, args=(whole, "a.txt"), rounds=3, warmup_rounds=1)
    ratio = benchmark.stats.stats.min / reference
    benchmark.extra_info["ratio to half the lines"] = round(ratio, 2)
    assert ratio < TIMES
