"""One chart printed in many ways reads the same: orientation, unit, language, decimal mark.

Ten thousand printings by default, in shares of five hundred so that workers divide them;
HARMONIZER_REWRITES=100000 reads more shares.
"""

from __future__ import annotations

import os
import random
from collections import Counter
from collections.abc import Sequence
from typing import SupportsFloat

import pytest

from charts.findings import Level
from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.clean_charts import Plan, Printing, Reading, plan, printed, printing

REWRITES = int(os.environ.get("HARMONIZER_REWRITES", "10000"))
SHARE = 500  # printings a test: a few seconds, so that no test comes near its time limit
TOLERANCE = 0.0005  # cm or kg: a mass in kg is printed with all its decimals, not with infinity


def questions_of(reading: FileReading) -> set[str]:
    return {one.id for one in reading.findings if one.level is Level.QUESTION}


def silent_and_asked(of: Plan, reading: FileReading) -> tuple[list[Reading], int]:
    """The values read wrong or lost without a question, and how many values carry one."""
    asked = questions_of(reading)
    due = {(label, dimension): (low, high) for label, dimension, low, high in of.readings()}
    wrong: list[Reading] = []
    doubted = 0
    for chart in reading.charts:
        for size in chart.sizes:
            for value in size.ranges:
                key = (size.label or "", value.dimension.value)
                expected = due.pop(key, None)
                if asked & set(value.findings):
                    doubted += 1
                elif expected is None or not _near(expected, (value.low, value.high)):
                    wrong.append((*key, value.low, value.high))
    lost = [(*key, *ends) for key, ends in due.items()] if not asked else []
    return wrong + lost, doubted


def _near(due: Sequence[SupportsFloat | None], got: Sequence[SupportsFloat | None]) -> bool:
    return all(
        one is not None and other is not None and abs(float(one) - float(other)) < TOLERANCE
        for one, other in zip(got, due, strict=True)
    )


@pytest.mark.parametrize("share", range(-(-REWRITES // SHARE)))
def test_no_rewriting_of_a_chart_is_silently_read_otherwise(share: int) -> None:
    chance = random.Random(20270211 + share)  # noqa: S311 - figures of invented charts
    silent: list[tuple[Printing, list[Reading], str]] = []
    for _ in range(SHARE):
        of, way = plan(chance), printing(chance)
        data = printed(of, way)
        wrong, _ = silent_and_asked(of, read_bytes(data, "chart.csv"))
        if wrong:
            silent.append((way, wrong, data.decode()))
    assert not silent, (len(silent), silent[:3])


def test_at_most_one_clean_chart_in_ten_raises_a_question() -> None:
    chance = random.Random(314159)  # noqa: S311 - figures of invented charts
    codes: Counter[str] = Counter()
    count = 1000
    for _ in range(count):
        reading = read_bytes(printed(plan(chance), printing(chance)), "chart.csv")
        asked = {one.code for one in reading.findings if one.level is Level.QUESTION}
        codes.update(asked or {"none"})
    assert codes["none"] >= 0.9 * count, codes


def test_every_printing_of_one_plan_gives_the_same_readings() -> None:
    chance = random.Random(99)  # noqa: S311 - figures of invented charts
    of = plan(chance)
    seen = set()
    for _ in range(200):
        reading = read_bytes(printed(of, printing(chance)), "chart.csv")
        seen |= {
            (
                size.label,
                value.dimension.value,
                float(round(value.low, 3)),
                float(round(value.high, 3)),
            )
            for chart in reading.charts
            for size in chart.sizes
            for value in size.ranges
            if not questions_of(reading) & set(value.findings)
            and value.low is not None
            and value.high is not None
        }
    due = {
        (label, dimension, float(round(low, 3)), float(round(high, 3)))
        for label, dimension, low, high in of.readings()
        if low is not None and high is not None
    }
    assert seen == due
