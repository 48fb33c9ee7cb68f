"""Reading cells costs at most ten times a bare split of them, thirty times when all differ.

Reference, measured in the same run: one compiled regular expression splitting the same cells
into figures, words and marks, with nothing made of the parts.
"""

from __future__ import annotations

import random
import re
import time
from collections.abc import Callable, Sequence

import pytest
from pytest_benchmark.fixture import BenchmarkFixture

from charts import notation
from charts.notation import Expected, Reading, read_cell
from charts.quantities import Unit
from charts.schema import Dimension

CELLS = 100_000
DIFFERENT = 2_000
TIMES_REPEATED = 10.0
TIMES_DIFFERENT = 30.0
ROUNDS = 5
SLICE = 500
SPLIT = re.compile(r"\s*(\d+(?:[.,]\d+)?|[^\W\d_]+|[^\w\s])")
# How often each form was met in about 90 published tables, counted by hand.
FORMS = {
    "{a}-{b}": 45, "{a}": 25, "{a} - {b}": 14, "{a}–{b} cm": 9, "{a}-{b} cm": 9, "{a} to {b}": 7,
    "{a}.5 cm": 6, "{a},5-{b},5": 6, "< {b} cm": 4, "bis {b} cm": 4, "{a} bis {b} cm": 3,
    "over {a}": 3, "{a} ± 2": 3, "{a}/{b}": 1, "~{a} cm": 1,
}  # fmt: skip
CHEST = Expected(Dimension.CHEST, Unit.CM)


def cells(count: int) -> list[str]:
    """Different cells as charts of ranges in centimetres hold them."""
    chance = random.Random(11)  # noqa: S311 - figures of invented charts
    found: dict[str, None] = {}
    while len(found) < count:
        low = chance.randint(400, 1500) / 10
        high = min(low + chance.randint(2, 90) / 10, 169)
        form = chance.choices(tuple(FORMS), tuple(FORMS.values()))[0]
        whole = "," in form or ".5" in form
        ends = (f"{low:.0f}", f"{high + 1:.0f}") if whole else (f"{low:g}", f"{high:g}")
        found[form.format(a=ends[0], b=ends[1])] = None
    return list(found)


def seconds(work: Callable[[], object]) -> float:
    """What a piece of work takes of this process's own time, whatever else the machine does."""
    started = time.process_time()
    work()
    return time.process_time() - started


def ratio(texts: Sequence[str]) -> float:
    """How many times a bare split reading costs, over a few rounds of all the cells.

    Slice by slice the same cells are split and then read, so both meet the same minute of the
    machine, and everything is counted. The fastest rounds of each fall into different minutes:
    on a busy machine their quotient was 14 to 27 for one and the same code, this one 16 to 17.
    """
    split = read = 0.0
    for _ in range(ROUNDS):
        notation.forget_cells()
        for start in range(0, len(texts), SLICE):
            part = texts[start : start + SLICE]
            split += seconds(lambda part=part: split_all(part))
            read += seconds(lambda part=part: read_all(part))
    return read / split


def split_all(texts: Sequence[str]) -> None:
    for text in texts:
        SPLIT.split(text)


def read_all(texts: Sequence[str]) -> None:
    for text in texts:
        read_cell(text, CHEST)


@pytest.mark.benchmark(group="cells")
def test_cells_that_repeat_cost_at_most_ten_bare_splits(benchmark: BenchmarkFixture) -> None:
    texts = cells(DIFFERENT) * (CELLS // DIFFERENT)
    assert sum(read_cell(text, CHEST).reading is Reading.READ for text in texts[:DIFFERENT]) > 1500
    times = ratio(texts)
    benchmark.extra_info["times a bare split"] = round(times, 2)
    benchmark.pedantic(read_all, args=(texts,), rounds=1)
    assert times <= TIMES_REPEATED


@pytest.mark.benchmark(group="cells")
def test_cells_that_all_differ_cost_at_most_thirty_bare_splits(
    benchmark: BenchmarkFixture,
) -> None:
    texts = cells(20_000)
    times = ratio(texts)
    benchmark.extra_info["times a bare split"] = round(times, 2)
    benchmark.pedantic(read_all, args=(texts,), setup=notation.forget_cells, rounds=1)
    assert times <= TIMES_DIFFERENT
