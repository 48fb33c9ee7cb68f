"""What a drop of files gave, counted for one line, and the charts in it that are the same twice."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations

from charts.schema import Chart, FileReading, Range
from charts.wording import Wording
from harmonizer.shop.arrival import Arrival
from harmonizer.shop.season import FileRecord, State, key_of, state_of

Cell = tuple[str | None, str | None, str]
"""A value by its size, its length and what is measured."""


@dataclass(frozen=True, slots=True)
class DropSummary:
    """How many files of a drop are in each state, and how many were not read again."""

    files: int
    states: Mapping[State, int]
    unchanged: int
    twice: tuple[SameChart, ...] = ()

    def say(self, wording: Wording) -> tuple[str, ...]:
        """One sentence for each state that occurs, in a fixed order, and for each double chart."""
        counted = [
            wording.say("season", f"drop-{state.value}", count=self.states[state])
            for state in State
            if self.states.get(state)
        ]
        if self.unchanged:
            counted.append(wording.say("season", "drop-unchanged", count=self.unchanged))
        return (*counted, *(one.say(wording) for one in self.twice))


@dataclass(frozen=True, slots=True)
class ChartAt:
    """One chart by its file and its key."""

    file: str
    chart: str


@dataclass(frozen=True, slots=True)
class SameChart:
    """Two charts of one drop that are the same one: equal, or with ``differing`` values.

    ``places`` are the first chart's places of the values that differ.
    """

    first: ChartAt
    second: ChartAt
    differing: int = 0
    places: tuple[str, ...] = ()

    def say(self, wording: Wording) -> str:
        """Which two charts are the same, and whether they agree."""
        values: dict[str, object] = {
            "first": self.first.file,
            "first_chart": self.first.chart,
            "second": self.second.file,
            "second_chart": self.second.chart,
        }
        if not self.differing:
            return wording.say("season", "twice-equal", **values)
        places = ", ".join(self.places)
        return wording.say(
            "season", "twice-differing", count=self.differing, places=places, **values
        )


def summary_of(arrival: Arrival) -> DropSummary:
    """The states of everything that arrived, and what arrived twice."""
    records = {record.name: record for record in arrival.records}
    states: dict[State, int] = {}
    for file in arrival.files:
        state = _state(file.reading, records)
        states[state] = states.get(state, 0) + 1
    twice = same_charts([file.reading for file in arrival.files])
    return DropSummary(len(arrival.files), states, len(arrival.unchanged), twice)


def _state(reading: FileReading, records: Mapping[str, FileRecord]) -> State:
    return state_of(reading, records.get(reading.file)).state


def same_charts(readings: Sequence[FileReading]) -> tuple[SameChart, ...]:
    """The pairs of charts in different files that are one chart given twice.

    They are when their sizes and measures are the same and their names do not contradict each
    other, and most of their figures agree, whatever the unit they are printed in.
    """
    charts = [
        (ChartAt(reading.file, key_of(chart)), chart, _figures(chart))
        for reading in readings
        for chart in reading.charts
    ]
    found = []
    for (first, one, here), (second, other, there) in combinations(charts, 2):
        if first.file == second.file or not here or here.keys() != there.keys():
            continue
        if not _may_be_one(one, other):
            continue
        differing = [cell for cell in here if not _agree(here[cell], there[cell])]
        if len(differing) * 2 < len(here):
            places = tuple(dict.fromkeys(here[cell].place for cell in differing))
            found.append(SameChart(first, second, len(differing), places))
    return tuple(found)


def _figures(chart: Chart) -> dict[Cell, Range]:
    return {
        (size.label, size.length, _measure(one)): one for size in chart.sizes for one in size.ranges
    }


def _measure(one: Range) -> str:
    return f"{one.dimension} {one.definition} {one.basis}"


def _may_be_one(one: Chart, other: Chart) -> bool:
    """Whether nothing that is said of two charts tells them apart."""
    pairs = [
        (one.band, other.band),
        *(
            (first.text.casefold(), second.text.casefold())
            for first, second in ((one.model, other.model), (one.supplier, other.supplier))
            if first is not None and second is not None and first.source != "file"
        ),
    ]
    return all(first == second or None in (first, second) for first, second in pairs)


def _agree(one: Range, other: Range) -> bool:
    """Equal to half of the coarser printed step: the same figure rounded in another unit."""
    for here, there, steps in (
        (one.low, other.low, (one.low_step, other.low_step)),
        (one.high, other.high, (one.high_step, other.high_step)),
        (one.value, other.value, (one.low_step, other.low_step)),
    ):
        if (here is None) is not (there is None):
            return False
        if here is not None and there is not None:
            slack = max((step for step in steps if step is not None), default=0) / 2
            if abs(here - there) > slack:
                return False
    return one.kind is other.kind
