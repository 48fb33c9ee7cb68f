"""One chart as it was understood, as rows of text: sizes down, one column a measure."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from charts.quantities import METRIC
from charts.schema import Basis, Chart, Definition, Dimension, Range, Said, Size
from charts.wording import Wording
from charts.writers.figures import metric, other, printed_unit

Column = tuple[Dimension, Definition, Basis, str]

_OPEN: Final = "?"
_GUESSED_FROM: Final = frozenset({"file", "sheet"})
_OTHER_UNITS: Final = {"cm": "in", "kg": "lb"}


def chart_rows(chart: Chart, asked: frozenset[str], wording: Wording) -> list[list[str]]:
    """A head, then one row a size. ``asked`` are the ids of the open questions.

    A question that bears on a whole column is marked at its head, else at its cell.
    """
    columns = list(dict.fromkeys(_column(value) for size in chart.sizes for value in size.ranges))
    everywhere = {column: _open_everywhere(chart, column, asked) for column in columns}
    lengths = any(size.length for size in chart.sizes)
    head = [wording.say("combined", "size"), *([wording.say("combined", "length")] * lengths)]
    rows = [[*head, *(_head(each, chart, everywhere[each], wording) for each in columns)]]
    for size in chart.sizes:
        names = [size.label or "", *([size.length or ""] * lengths)]
        cells = (_cell(size, each, asked - everywhere[each], wording) for each in columns)
        rows.append([*names, *cells])
    return rows


def _column(value: Range) -> Column:
    heading = value.heading if value.dimension is Dimension.OTHER else ""
    return (value.dimension, value.definition, value.basis, heading)


def _values(chart: Chart, column: Column) -> Iterator[Range]:
    for size in chart.sizes:
        yield from (value for value in size.ranges if _column(value) == column)


def _open_everywhere(chart: Chart, column: Column, asked: frozenset[str]) -> frozenset[str]:
    each = [asked.intersection(value.findings) for value in _values(chart, column)]
    return frozenset.intersection(*each)


def _head(column: Column, chart: Chart, asked: frozenset[str], wording: Wording) -> str:
    dimension, _, basis, heading = column
    name = heading or wording.say("combined", f"dimension-{dimension.value}")
    if basis in (Basis.FINISHED, Basis.FLAT):
        name = wording.say("faces", f"head-{basis.value}", dimension=name)
    units = {_unit(value) for value in _values(chart, column)}
    if len(units) == 1 and not heading:
        name = wording.say("faces", "head-unit", dimension=name, unit=units.pop())
    return f"{name} {_OPEN}" if asked else name


def _cell(size: Size, column: Column, asked: frozenset[str], wording: Wording) -> str:
    values = [value for value in size.ranges if _column(value) == column]
    return ", ".join(_figure(value, asked, wording) for value in values) or "-"


def _figure(value: Range, asked: frozenset[str], wording: Wording) -> str:
    """The figure in the unit it is printed in, as far as that is known."""
    inches = None if _is_metric(value) else other(value, wording)
    text = (inches or metric(value, wording)).text
    return f"{text} {_OPEN}" if asked.intersection(value.findings) else text


def _unit(value: Range) -> str:
    return value.unit.value if _is_metric(value) else _OTHER_UNITS.get(value.unit.value, "")


def _is_metric(value: Range) -> bool:
    unit = printed_unit(value)
    return unit is None or unit in METRIC or value.unit.value not in _OTHER_UNITS


def names_of(chart: Chart, wording: Wording) -> Sequence[str]:
    """What the chart is called: maker, model, season and band, as far as it says.

    A model that no title names says so: it is what the file or the sheet is called.
    """
    words = [chart.supplier.text] if chart.supplier else []
    words += [name_words(chart.model, wording)] if chart.model else []
    words += [chart.season.text] if chart.season else []
    if chart.band:
        words.append(wording.say("combined", f"band-{chart.band}"))
    return words or ([chart.title] if chart.title else [])


def name_words(said: Said, wording: Wording) -> str:
    """A name, with where it was taken from where nobody printed it as one."""
    if said.source not in _GUESSED_FROM:
        return said.text
    return wording.say("faces", f"name-of-{said.source}", name=said.text)
