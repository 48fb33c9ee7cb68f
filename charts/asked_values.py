"""The values a question bears on, how they carry it, and the print around them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from charts.findings import Finding, listed
from charts.places import rectangle_of, sheet_of
from charts.schema import Chart, FileReading, Range, Size


def values_of(finding: Finding, reading: FileReading) -> Iterator[tuple[Chart, Range]]:
    """Every value that a finding bears on, with its chart."""
    for chart in reading.charts:
        for one in ranges_of(chart):
            if finding.id in one.findings:
                yield chart, one


def ranges_of(chart: Chart) -> Iterator[Range]:
    """Every value of a chart, size by size."""
    for size in chart.sizes:
        yield from size.ranges


def chart_asking(chart: Chart, ident: str) -> Chart:
    """A chart with one more finding on every value of it."""
    return replace(chart, sizes=tuple(size_asking(size, ident) for size in chart.sizes))


def size_asking(size: Size, ident: str) -> Size:
    """A size with one more finding on every value of it."""
    ranges = (replace(one, findings=listed(*one.findings, ident)) for one in size.ranges)
    return replace(size, ranges=tuple(ranges))


def printed_around(finding: Finding, reading: FileReading) -> tuple[str, ...]:
    """What is printed in the whole columns that a finding bears on, in their order.

    A figure is in order, or keeps its step, only beside the others: who confirms it has seen them
    too. Without a value of its own the finding speaks of its chart, else of the whole file.
    """
    columns = {(chart.place, one.heading) for chart, one in values_of(finding, reading)}
    charts = [chart for chart in reading.charts if within(finding.place, chart.place)]
    return tuple(
        one.published
        for chart in (reading.charts if columns else charts or reading.charts)
        for one in ranges_of(chart)
        if not columns or (chart.place, one.heading) in columns
    )


def within(place: str, area: str) -> bool:
    """Whether a place lies in an area of the same sheet."""
    if sheet_of(place) != sheet_of(area):
        return False
    here, there = (rectangle_of(each.rpartition("!")[2]) for each in (place, area))
    return here is not None and there is not None and there.meets(here)
