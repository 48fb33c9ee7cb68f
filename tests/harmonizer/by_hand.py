"""Charts and riders written by hand, the way the tests need them."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from typing import Any

from charts.model_facts import ModelFacts
from charts.quantities import Unit
from charts.schema import (
    Basis,
    Chart,
    Definition,
    Dimension,
    FileReading,
    Kind,
    Range,
    Said,
    Size,
    UnitFrom,
)
from harmonizer.fit import fit
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.offers import offers
from harmonizer.range_table import RangeTable
from harmonizer.rider import Measure, Reading, Rider, TakenBy
from harmonizer.settings import DEFAULTS, Settings

CHEST, WAIST, HIP, BACK = (
    Dimension.CHEST,
    Dimension.WAIST,
    Dimension.HIP,
    Dimension.BACK_LENGTH,
)
MAIN = (CHEST, WAIST, HIP, BACK)
UNITS = {Dimension.WEIGHT: Unit.KG, Dimension.AGE: Unit.YEARS}

Ends = tuple[float | str | None, float | str | None]


def number(value: float | str | None) -> Decimal | None:
    return None if value is None else Decimal(str(value))


def span(
    dimension: Dimension, low: float | str | None, high: float | str | None, **more: Any
) -> Range:
    """A range of the body in its canonical unit, printed to whole figures."""
    kind = Kind.AT_MOST if low is None else Kind.AT_LEAST if high is None else Kind.RANGE
    step = Decimal(str(more.pop("step", 1)))
    given: dict[str, Any] = {
        "kind": kind,
        "published": f"{low}–{high}",
        "place": "C4",
        "unit": UNITS.get(dimension, Unit.CM),
        "unit_from": UnitFrom.HEADING,
        "basis": Basis.BODY,
        "low": number(low),
        "high": number(high),
        "low_step": step,
        "high_step": step,
    }
    return Range(dimension=dimension, heading=dimension.value, **(given | more))


def single(dimension: Dimension, value: float | str, **more: Any) -> Range:
    """One single figure of the body."""
    given: dict[str, Any] = {"kind": Kind.SINGLE, "published": str(value), "value": number(value)}
    return span(dimension, None, None, **(given | more))


def size(label: str | None, *ranges: Range, length: str | None = None) -> Size:
    return Size(label, ranges, length)


def chart(*sizes: Size, band: str | None = None, **more: Any) -> Chart:
    given: dict[str, Any] = {"place": "A1:E9", "title": None, "band": band}
    return Chart(sizes=sizes, **(given | more))


def rows_chart(rows: Mapping[str, tuple[Ends, ...]], **more: Any) -> Chart:
    """A chart of chest, waist, hip and back length, one tuple of ends each."""
    return chart(
        *(
            size(label, *(span(one, *ends) for one, ends in zip(MAIN, row, strict=False)))
            for label, row in rows.items()
        ),
        **more,
    )


CHART_A = {
    "S": ((84, 92), (68, 76), (90, 98), (40, 43)),
    "M": ((90, 98), (74, 82), (96, 104), (42, 45)),
    "L": ((96, 104), (80, 90), (102, 110), (44, 47)),
}
"""Chart A of the worked examples."""


def model(name: str, made: Chart, **facts: Any) -> tuple[FileReading, ModelFacts]:
    """One model in one file, with the facts that ``models.toml`` gives."""
    file = f"{name}.csv"
    return FileReading(file, (made,)), ModelFacts(model=name, file=file, **facts)


def table(
    *charts: Chart | tuple[FileReading, ModelFacts], settings: Settings = DEFAULTS
) -> RangeTable:
    readings, facts = [], []
    for place, one in enumerate(charts):
        if isinstance(one, Chart):
            readings.append(FileReading(f"chart {place}.csv", (one,)))
        else:
            readings.append(one[0])
            facts.append(one[1])
    return RangeTable.compiled(offers(readings, facts), settings)


def reading(measure: str, value: float | str, **more: Any) -> Reading:
    return Reading(Measure(measure), Decimal(str(value)), **more)


def rider(taken_by: TakenBy = TakenBy.FITTER, /, **values: Any) -> Rider:
    """A rider by measure: ``rider(chest=93)``; what is no measure goes to the rider itself."""
    measures = {key: value for key, value in values.items() if key in set(Measure) - {"age"}}
    rest = {key: value for key, value in values.items() if key not in measures}
    readings = tuple(
        value if isinstance(value, Reading) else reading(key, value)
        for key, value in measures.items()
    )
    return Rider(**({"name": "Rider", "taken_by": taken_by, "readings": readings} | rest))


RIDER_R = rider(chest=93, waist=84, hip=101, back_length="43.0")
"""Rider R of the worked examples, read by a fitter twice."""


def row(sheet: FitSheet, label: str, length: str | None = None, name: str | None = None) -> FitRow:
    """The one row of a size."""
    found = [
        one
        for one in sheet.rows
        if one.offer.size == label
        and length in (None, one.offer.length)
        and name in (None, one.offer.model)
    ]
    assert len(found) == 1, [one.offer.size for one in sheet.rows]
    return found[0]


def fitted(who: Rider, *charts: Chart | tuple[FileReading, ModelFacts], label: str) -> FitRow:
    """One rider against some charts: the row of one size."""
    return row(fit(who, table(*charts)), label)


__all__ = [
    "BACK",
    "CHART_A",
    "CHEST",
    "HIP",
    "MAIN",
    "RIDER_R",
    "WAIST",
    "Definition",
    "Said",
    "chart",
    "fitted",
    "model",
    "number",
    "reading",
    "rider",
    "row",
    "rows_chart",
    "single",
    "size",
    "span",
    "table",
]
