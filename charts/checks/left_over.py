"""Figures of a text that came into none of its tables: a part of the chart may be missing.

Only texts are looked through: a workbook or a page says itself where its cells stand.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from typing import Final

from charts.checks.alike_lines import alike_lines
from charts.checks.named_lines import named_figures
from charts.findings import FindingLog
from charts.layout.fields import FieldKind, Table
from charts.layout.looks import look
from charts.readers.captured.brackets import ONE, SERIES
from charts.readers.captured.lines import Line
from charts.readers.captured.said import taken_apart
from charts.readers.captured.supplies import is_supply
from charts.readers.captured.value_runs import figures_among, is_size, named_values
from charts.readers.captured.values import is_glued
from charts.schema import Chart
from charts.sheet import Addressing, Sheet

_FEWEST: Final = 4
"""Figures that could be a row of a chart; fewer stand in any letter (common practice)."""
_FEWEST_CELLS: Final = 3
_FEWEST_AMONG: Final = 2
"""Figures of a line that begins with a size or holds words between: ``2T 1-2 33-35``."""
_LONG_NUMBER: Final = re.compile(r"\d{4}|\d[.:/]\d+[.:/]\d")
"""Years, telephone numbers, dates: no girths."""
_SERIES: Final = re.compile(SERIES)
_LOOKED_AT: Final = 2_000
_PARTING: Final = re.compile(r"[|\t;]")
"""What parts the fields of a line that was not cut there."""
_TWO: Final = re.compile(r"\d\d")
"""A measure has two figures at least: ``Page 1 of 2`` has none."""


def say_left_over(
    sheet: Sheet, tables: Sequence[Table], charts: Sequence[Chart], log: FindingLog
) -> None:
    """Ask once a text about figures that came into none of its charts, at the first of them."""
    if sheet.addressing is not Addressing.LINE:
        return
    both = _also_told(charts, log)
    left = [one for one in _left(sheet, tables) if sheet.place(*one[0]) not in both]
    left = _without_marks(sheet, left)
    named = [(at, _FEWEST) for at, _ in left if named_figures(sheet.text(*at))]
    if len(left) < _FEWEST_CELLS and sum(count for _, count in left) < _FEWEST:
        left = named or [(at, 1) for at in sorted(_dropped(sheet, tables, charts, both))]
    if len(left) >= _FEWEST_CELLS or sum(count for _, count in left) >= _FEWEST:
        place = sheet.place(*left[0][0])
        log.add("text-order", place, case="left", text=sheet.text(*left[0][0]).strip())


def _also_told(charts: Sequence[Chart], log: FindingLog) -> set[str]:
    """The places whose figures were kept beside others, as the same in another unit."""
    doubted = {one.id for one in log.findings if one.code == "units-disagree"}
    ranges = (one for chart in charts for size in chart.sizes for one in size.ranges)
    return {
        one.also_published.place
        for one in ranges
        if one.also_published is not None and doubted.isdisjoint(one.findings)
    }


def rows_left(sheet: Sheet, tables: Sequence[Table]) -> list[tuple[int, int]]:
    """Cells that hold a whole row of figures each and came into no field; none for a few figures.

    Of several charts in one file only one may have the separator that the file was parted by:
    the rows of the others stand whole in their first cells, as titles or notes at best.
    """
    left = _left(sheet, tables)
    rows = [(at, count) for at, count in left if count > 1 and _TWO.search(sheet.text(*at))]
    return [at for at, _ in rows] if sum(count for _, count in rows) >= _FEWEST else []


def _left(sheet: Sheet, tables: Sequence[Table]) -> list[tuple[tuple[int, int], int]]:
    """The cells with figures of measures that are in no field, and how many each has."""
    used = set(_cells_of(tables))
    free = [
        (at, cell.text)
        for at, cell in sorted(sheet.cells.items())
        if at not in used and cell.shared_from is None
    ]
    alike = alike_lines(free)
    counted = ((at, _figures(text) or alike.get(at) or named_figures(text)) for at, text in free)
    return [(at, count) for at, count in counted if count]


def _without_marks(
    sheet: Sheet, left: Sequence[tuple[tuple[int, int], int]]
) -> list[tuple[tuple[int, int], int]]:
    """Without 1, 2, 3 alone on their lines: the numbers of a drawing, told off in its legend."""
    lone = [at for at, _ in left if sheet.text(*at).strip().isdigit()]
    counted = [int(sheet.text(*at)) for at in lone] == [*range(1, len(lone) + 1)]
    return [one for one in left if not counted or one[0] not in lone]


def _cells_of(tables: Iterable[Table]) -> Iterable[tuple[int, int]]:
    for table in tables:
        for field in table.fields:
            for cell in (field.heads, *field.cells):
                yield from ((at.row, at.column) for at in cell)


def _dropped(
    sheet: Sheet, tables: Sequence[Table], charts: Sequence[Chart], both: set[str]
) -> Iterable[tuple[int, int]]:
    """Figures under a measure of a table that no value of a chart of that line repeats.

    ``both`` are the places of figures kept beside those of another unit.
    """
    said = {
        (one.place, text)
        for chart in charts
        for size in chart.sizes
        for one in size.ranges
        for text in one.published.split()
    }
    for table in tables:
        for field in table.of(FieldKind.VALUES):
            for at in (at for cell in field.cells for at in cell):
                place = sheet.place(at.row, at.column)
                words = at.text.split()
                told = place in both or any((place, one) in said for one in words)
                if look(at.text).value and not told:
                    yield at.row, at.column


def _figures(text: str) -> int:
    """How many values a text consists of, behind a name or between few words; 0 for a sentence."""
    if _LONG_NUMBER.search(text):
        return 0
    fields = [one for one in _PARTING.split(text) if one.strip()]
    if len(fields) > 1:
        named = map(named_values, map(str.strip, fields))
        return sum(len(one.parts) for one in named if one is not None)
    if is_glued(text):
        return _FEWEST_AMONG
    found = named_values(text.strip().rstrip("|"))  # a bar at the end parts cells
    if found is not None and (not found.name or len(found.parts) > 1):
        return len(found.parts)
    among = figures_among(text)
    return among if among >= _FEWEST_AMONG else _of_a_size(text) or _in_brackets(text)


def _of_a_size(text: str) -> int:
    """The figures of a line that begins with a size: ``• Small - 5'0" to 5'4" tall``."""
    said = taken_apart(Line(text, 1))
    return len(said.pairs) if said is not None and is_size(said.label) else 0


def _in_brackets(text: str) -> int:
    """The figures of a sentence for each size, some in brackets: ``to fit 80 (85) 90 (95) cm``."""
    text = text[:_LOOKED_AT]
    found = (one for one in _SERIES.finditer(text) if not is_supply(text[one.end() :]))
    most = max((len(ONE.findall(one[0])) for one in found), default=0)
    return most if most >= _FEWEST else 0
