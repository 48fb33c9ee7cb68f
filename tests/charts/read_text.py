"""Read a table written as text, and put its values in a form that is easy to compare."""

from __future__ import annotations

import io
from collections.abc import Mapping

from charts.findings import Level
from charts.importer import read_bytes
from charts.schema import FileReading, Range

Ends = tuple[float | None, float | None] | float | None


def table(text: str, name: str = "chart.csv") -> FileReading:
    """The reading of a table whose cells are parted by ``|`` and whose rows are lines."""
    rows = [line.split("|") for line in text.strip("\n").splitlines()]
    out = io.StringIO()
    for row in rows:
        out.write("\t".join(cell.strip() for cell in row) + "\n")
    return read_bytes(out.getvalue().encode(), name)


def figures(value: Range) -> Ends:
    """Low and high rounded to two decimals, the single figure, or None when it is unread."""
    if value.value is not None:
        return round(float(value.value), 2)
    if value.low is None and value.high is None:
        return None
    low, high = (
        round(float(end), 2) if end is not None else None for end in (value.low, value.high)
    )
    return low, high


def values(reading: FileReading) -> Mapping[str, Ends]:
    """The figures by "band label length dimension"; what is absent is left out of the key."""
    found: dict[str, Ends] = {}
    for chart in reading.charts:
        for size in chart.sizes:
            for value in size.ranges:
                words = (chart.band, size.label, size.length, value.dimension.value)
                key = " ".join(word for word in words if word)
                assert key not in found, f"{key} is given twice"
                found[key] = figures(value)
    return found


def ranges(reading: FileReading) -> list[Range]:
    """Every range of a reading in source order."""
    return [value for chart in reading.charts for size in chart.sizes for value in size.ranges]


def questions(reading: FileReading) -> list[str]:
    """The codes of the questions, in the order they were found."""
    return [one.code for one in reading.findings if one.level is Level.QUESTION]


def notes(reading: FileReading) -> list[str]:
    """The codes of the notes, in the order they were found."""
    return [one.code for one in reading.findings if one.level is Level.NOTE]


def asked_at(reading: FileReading, code: str) -> list[str]:
    """The places of the values that carry a question of ``code``."""
    ids = {one.id for one in reading.findings if one.code == code}
    return [value.place for value in ranges(reading) if ids & set(value.findings)]
