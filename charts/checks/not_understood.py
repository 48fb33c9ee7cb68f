"""A text of which hardly a value is free of doubt is no chart that was read: one question says so.

Rows and columns of a text are found by its words. Where they were found wrongly, every column asks
its own question, and a person would answer a dozen about a table that is not there.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from charts.findings import FindingLog, Level
from charts.schema import FileReading
from charts.sheet import Addressing, Sheet

_MANY: Final = 5
"""More questions than a person answers about one file (common practice, no source)."""
_DOUBTED: Final = 0.75
_STRUCTURAL: Final = frozenset(
    {"heading-unknown", "heading-two-readings", "column-unused", "impossible"}
)
"""What is asked where a heading stands over figures that are not its own."""


def understood(reading: FileReading, sheets: Iterable[Sheet]) -> FileReading:
    """The reading, or one question in place of it where a text gave little but questions."""
    if any(sheet.addressing is not Addressing.LINE for sheet in sheets):
        return reading
    asked = [one for one in reading.findings if one.level is Level.QUESTION]
    if len(asked) < _MANY or all(one.code != "text-order" for one in asked):
        return reading
    doubts = {one.id for one in asked if one.code in _STRUCTURAL}
    values = [one for chart in reading.charts for size in chart.sizes for one in size.ranges]
    doubted = [one for one in values if doubts.intersection(one.findings)]
    if len(doubted) < _DOUBTED * len(values):
        return reading
    log = FindingLog()
    log.add("no-table", reading.file, case="unclear", name=reading.file)
    errors = tuple(one for one in reading.findings if one.level is Level.ERROR)
    return FileReading(
        reading.file, findings=(*errors, *log.findings), corrections=reading.corrections
    )
