"""The demo scenario as the tests take it: files, readings, planted slips, riders."""

from __future__ import annotations

import csv
import re
import tomllib
from dataclasses import dataclass
from decimal import Decimal
from functools import cache
from pathlib import Path
from typing import Final

from charts.findings import Finding, Level
from charts.importer import read_file
from charts.model_facts import ModelFacts, read_model_facts
from charts.quantities import Unit, canonical
from charts.resource_files import resources
from charts.schema import Chart, FileReading
from harmonizer.fit import fit
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.offers import Offer, offers
from harmonizer.range_table import RangeTable
from harmonizer.rider import Rider
from harmonizer.rider_file import read_rider
from harmonizer.settings import DEFAULTS

DEMO: Final = Path(str(resources())) / "demo"
CHARTS: Final = DEMO / "charts"
CHART_FILES: Final = sorted(
    path.relative_to(CHARTS).as_posix()
    for path in CHARTS.rglob("*")
    if path.is_file() and path.suffix != ".toml"
)
RIDER_FILES: Final = sorted(path.name for path in (DEMO / "riders").glob("*.toml"))
CELLS: Final = re.compile(
    r"^(?:(?P<sheet>.+)!)?(?P<first>[A-Z]+[0-9]+)(?::(?P<last>[A-Z]+[0-9]+))?$"
)
LINES: Final = re.compile(r"^line (?P<first>[0-9]+)(?:-(?P<last>[0-9]+))?$")


@dataclass(frozen=True)
class Planted:
    file: str
    place: str
    codes: tuple[str, ...]


def planted() -> list[Planted]:
    content = tomllib.loads((DEMO / "mistakes.toml").read_text(encoding="utf-8"))
    return [Planted(m["file"], m["place"], tuple(m["codes"])) for m in content["mistake"]]


PLANTED: Final = planted()


@cache
def reading_of(file: str) -> FileReading:
    return read_file(CHARTS / file, file)


@cache
def facts() -> tuple[ModelFacts, ...]:
    return tuple(
        entry
        for path in sorted(CHARTS.rglob("models.toml"))
        for entry in read_model_facts(
            path.read_text(encoding="utf-8"), path.relative_to(CHARTS).as_posix()
        )
    )


@cache
def all_offers() -> tuple[Offer, ...]:
    return offers([reading_of(file) for file in CHART_FILES], facts())


def figures_meant() -> dict[tuple[str, str, str, str], tuple[Decimal | None, Decimal | None]]:
    """Low and high in cm, kg or years by model, size, length and dimension, typed in by hand."""
    with (Path(__file__).parent / "data" / "demo_meant.csv").open(encoding="utf-8") as lines:
        return {
            (row["model"], row["size"], row["length"], row["dimension"]): (
                _meant(row["low"], row["unit"]),
                _meant(row["high"], row["unit"]),
            )
            for row in csv.DictReader(lines)
        }


def _meant(figure: str, unit: str) -> Decimal | None:
    return canonical(Decimal(figure), Unit(unit)) if figure else None


def rider(number: int) -> Rider:
    name = f"rider-{number:02}.toml"
    return read_rider((DEMO / "riders" / name).read_text(encoding="utf-8"), name)


@cache
def sheet_of(number: int) -> FitSheet:
    return fit(rider(number), RangeTable.compiled(all_offers(), DEFAULTS), DEFAULTS)


def questions(reading: FileReading) -> list[Finding]:
    return [finding for finding in reading.findings if finding.level is Level.QUESTION]


def rectangle(place: str) -> tuple[str, int, int, int, int] | None:
    """Sheet and first and last row and column of a place; a text's lines are its rows."""
    line = LINES.match(place)
    if line:
        first = int(line["first"])
        return "", first, 0, int(line["last"] or first), 999
    cells = CELLS.match(place)
    if not cells:
        return None
    start, end = _numbers(cells["first"]), _numbers(cells["last"] or cells["first"])
    return (cells["sheet"] or "").strip("'"), *start, *end


def _numbers(cell: str) -> tuple[int, int]:
    letters = cell.rstrip("0123456789")
    column = 0
    for letter in letters:
        column = column * 26 + ord(letter) - ord("A") + 1
    return int(cell[len(letters) :]), column


def overlaps(one: str, other: str) -> bool:
    a, b = rectangle(one), rectangle(other)
    if a is None or b is None:
        return one == other
    rows = a[1] <= b[3] and b[1] <= a[3]
    return a[0] == b[0] and rows and a[2] <= b[4] and b[2] <= a[4]


def places_of(finding: Finding, reading: FileReading) -> list[str]:
    """Where a finding stands, and every value that lists it."""
    values = [r for chart in reading.charts for size in chart.sizes for r in size.ranges]
    return [finding.place, *(r.place for r in values if finding.id in r.findings)]


def charts_of(model: str) -> list[tuple[FileReading, Chart]]:
    entry = next(item for item in facts() if item.model == model)
    assert entry.file is not None
    reading = reading_of(f"{entry.folder}/{entry.file}")
    if entry.chart is None:
        return [(reading, chart) for chart in reading.charts]
    word = entry.chart.casefold()
    return [
        (reading, chart)
        for chart in reading.charts
        if word in f"{chart.place} {chart.title} {chart.band}".casefold()
    ]


def rows_of(number: int, *verdicts: str) -> list[FitRow]:
    return [row for row in sheet_of(number).rows if row.verdict in verdicts]
