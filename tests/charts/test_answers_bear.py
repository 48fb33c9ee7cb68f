"""An answer changes what it was asked about and nothing else, in every table that was met.

Of every question of every table each offered answer is given alone. A value that the question did
not list keeps its figures, or carries a question of its own that it did not carry before.
"""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from charts.answers import Corrected, Taken
from charts.choices import answers, choices
from charts.findings import Finding, Level
from charts.importer import read_bytes
from charts.resource_files import resources
from charts.schema import FileReading, Range

DAY = date(2027, 2, 11)
MET = Path(__file__).parent / "met_tables"
GAUNTLET = Path(__file__).parents[1] / "gauntlet" / "open"
DEMO = Path(str(resources())) / "demo" / "charts"
FILES = [
    path
    for path in (*sorted(MET.iterdir()), *sorted(GAUNTLET.iterdir()), *sorted(DEMO.rglob("*")))
    if path.is_file() and path.suffix in {".csv", ".tsv", ".html", ".md", ".txt", ".xlsx"}
]
Value = tuple[str, str]


def values(reading: FileReading) -> dict[Value, Range]:
    return {
        (one.place, one.heading): one
        for chart in reading.charts
        for size in chart.sizes
        for one in size.ranges
    }


def figures(one: Range) -> tuple[object, ...]:
    return (
        one.kind, one.low, one.high, one.value, one.unit, one.dimension, one.basis,
        one.definition, one.published,
    )  # fmt: skip


def asked(reading: FileReading) -> list[Finding]:
    return [one for one in reading.findings if one.level is Level.QUESTION]


def doubted(reading: FileReading) -> dict[Value, set[str]]:
    codes = {one.id: one.code for one in asked(reading)}
    return {
        key: {codes[ident] for ident in one.findings if ident in codes}
        for key, one in values(reading).items()
    }


def may_change(finding: Finding, acts: tuple[object, ...], reading: FileReading) -> set[Value]:
    """What an answer bears on: the values its question lists, and the cells it speaks of."""
    places = {cell.place for act in acts if isinstance(act, Corrected) for cell in act.cells} | {
        act.place for act in acts if isinstance(act, Taken)
    }
    return {
        key
        for key, one in values(reading).items()
        if finding.id in one.findings or one.place in places
    }


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_an_answer_bears_on_what_was_asked_and_on_nothing_else(path: Path) -> None:
    data = path.read_bytes()
    before = read_bytes(data, path.name, "north")
    was = values(before)
    for finding in asked(before):
        for choice in choices(finding, before):
            after = read_bytes(data, path.name, "north", answers(choice, finding, "Ann", DAY))
            now, doubts = values(after), doubted(after)
            bears_on = may_change(finding, choice.acts, before)
            for key in was.keys() - bears_on:
                new = doubts.get(key, set()) - doubted(before)[key]
                same = key in now and figures(now[key]) == figures(was[key])
                assert same or new, (finding.code, choice.code, key)
