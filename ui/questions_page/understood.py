"""The charts of one sheet as they were understood, each value in both units. No Qt."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType

from charts.quantities import METRIC
from charts.schema import Basis, Chart, Definition, Dimension, Range, Size
from charts.wording import Wording
from charts.writers.figures import metric, other, printed_unit
from harmonizer.shop.season import key_of
from ui.chart_table import names_of

Column = tuple[Dimension, Definition, Basis, str]


class Part(StrEnum):
    """What a row of the table is."""

    TITLE = "title"
    HEAD = "head"
    SIZE = "size"


@dataclass(frozen=True, slots=True)
class Shown:
    """One cell: the maker's own figure above, the converted one below it.

    ``printed`` is the print that somebody corrected, ``asked`` says that a question hangs on it.
    """

    text: str
    below: str = ""
    place: str = ""
    printed: str = ""
    asked: bool = False


@dataclass(frozen=True, slots=True)
class UnderstoodRow:
    """One row of the table."""

    part: Part
    cells: tuple[Shown, ...]


def understood(
    charts: Sequence[Chart],
    asked: frozenset[str],
    wording: Wording,
    states: Mapping[str, str] = MappingProxyType({}),
) -> tuple[UnderstoodRow, ...]:
    """The charts one below the other. ``asked`` are the ids of the open questions.

    ``states`` says how each stands, by its key, where a file has several.
    """
    return tuple(row for chart in charts for row in _of_chart(chart, asked, wording, states))


def _of_chart(
    chart: Chart, asked: frozenset[str], wording: Wording, states: Mapping[str, str]
) -> Iterator[UnderstoodRow]:
    names = wording.say("questions", "between-names").join(names_of(chart, wording))
    values = {"names": names or chart.title or "", "place": chart.place}
    state = states.get(key_of(chart))
    title = (
        wording.say("questions", "chart-title-state", state=state, **values)
        if state
        else wording.say("questions", "chart-title", **values)
    )
    yield UnderstoodRow(Part.TITLE, (Shown(title.strip(), place=chart.place),))
    columns = list(dict.fromkeys(_column(value) for size in chart.sizes for value in size.ranges))
    lengths = any(size.length for size in chart.sizes)
    names_at = [Shown(wording.say("combined", "size"))]
    names_at += [Shown(wording.say("combined", "length"))] * lengths
    yield UnderstoodRow(Part.HEAD, (*names_at, *(_head(each, wording) for each in columns)))
    for size in chart.sizes:
        first = [_label(size)]
        if lengths:
            first.append(Shown(size.length or ""))
        cells = (_value(size, each, asked, wording) for each in columns)
        yield UnderstoodRow(Part.SIZE, (*first, *cells))


def _column(value: Range) -> Column:
    heading = value.heading if value.dimension is Dimension.OTHER else ""
    return (value.dimension, value.definition, value.basis, heading)


def _head(column: Column, wording: Wording) -> Shown:
    dimension, definition, basis, heading = column
    name = heading or wording.say("combined", f"dimension-{dimension.value}")
    said = []
    if basis is not Basis.UNKNOWN:
        said.append(wording.say("questions", f"basis-{basis.value}"))
    if definition is not Definition.UNKNOWN:
        said.append(wording.say("questions", f"definition-{definition.value}"))
    return Shown(name, wording.say("questions", "between-words").join(said))


def _label(size: Size) -> Shown:
    also = ", ".join(one.label for one in size.also)
    printed = size.corrected.printed if size.corrected is not None else ""
    return Shown(size.label or "", also, printed=printed)


def _value(size: Size, column: Column, asked: frozenset[str], wording: Wording) -> Shown:
    value = next((one for one in size.ranges if _column(one) == column), None)
    if value is None:
        return Shown(wording.say("questions", "not-given"))
    one, two = metric(value, wording), other(value, wording)
    texts = [wording.say("questions", "figure", text=one.text, unit=_unit(value))]
    if two is not None:
        second = "lb" if value.unit.value == "kg" else "in"
        texts.append(wording.say("questions", "figure", text=two.text, unit=second))
    own = printed_unit(value)
    if len(texts) == 2 and own is not None and own not in METRIC:
        texts.reverse()
    printed = value.corrected.printed if value.corrected is not None else ""
    open_ = bool(asked.intersection(value.findings))
    below = texts[1] if len(texts) > 1 else ""
    return Shown(texts[0], below, value.place, printed, open_)


def _unit(value: Range) -> str:
    return "" if value.kind.value == "unread" else value.unit.value
