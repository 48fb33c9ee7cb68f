"""A text that gives little but questions is one question."""

from __future__ import annotations

from dataclasses import replace

import pytest

from charts.checks.not_understood import understood
from charts.findings import FindingLog
from charts.importer import read_bytes
from charts.schema import FileReading
from charts.sheet import Addressing, Sheet

CHART = "Size  Chest (cm)\nS  84-88\nM  88-92\nL  92-96\nXL  96-100\n"
CODES = ("heading-unknown", "heading-two-readings", "column-unused", "impossible", "text-order")


def sheet(addressing: Addressing) -> Sheet:
    return Sheet("", addressing, {}, 0, 0)


def doubted(share: float, codes: tuple[str, ...] = CODES) -> FileReading:
    """Four values, of which a share is asked about with each of some codes."""
    reading = read_bytes(CHART.encode(), "chart.txt")
    log = FindingLog()
    for number, code in enumerate(codes):
        log.add(code, f"line {number}", heading="Zorla", text="7", first="chest", other="Chest")
    ids = tuple(one.id for one in log.findings)
    (chart,) = reading.charts
    many = round(share * len(chart.sizes))
    sizes = [
        replace(size, ranges=tuple(replace(one, findings=ids) for one in size.ranges))
        if number < many
        else size
        for number, size in enumerate(chart.sizes)
    ]
    return FileReading("chart.txt", (replace(chart, sizes=tuple(sizes)),), log.findings)


def test_where_hardly_a_value_is_free_of_doubt_one_question_is_left() -> None:
    made = understood(doubted(1), [sheet(Addressing.LINE)])
    assert made.charts == ()
    assert [one.code for one in made.findings] == ["no-table"]


@pytest.mark.parametrize(
    "reading",
    [
        doubted(0.5),
        doubted(1, CODES[:3]),
        doubted(1, (*CODES[:4], "impossible")),
        doubted(1, ("unit-missing", "basis-doubtful", "laid-flat", "step-broken", "text-order")),
    ],
    ids=[
        "half of the values are sound",
        "few questions",
        "the order is sure",
        "what is asked is not the place",
    ],
)
def test_what_a_person_can_settle_stays(reading: FileReading) -> None:
    assert understood(reading, [sheet(Addressing.LINE)]) is reading


def test_cells_of_a_table_stand_where_they_stand() -> None:
    reading = doubted(1)
    assert understood(reading, [sheet(Addressing.TABLE)]) is reading
