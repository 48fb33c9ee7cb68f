"""The columns of the combined chart, in blocks: who, how wide and long, for whom, from where."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import Final

from charts.day_words import day_words
from charts.in_house import InHouseChart, InHouseRow
from charts.model_facts import ModelFacts
from charts.quantities import Unit, converted
from charts.schema import Dimension, Range
from charts.wording import Wording
from charts.writers.figures import Printed, metric, other
from charts.writers.marks import Marks
from charts.writers.printed_table import Role, TableCell, TableColumn

_ALWAYS: Final = (Dimension.CHEST, Dimension.WAIST, Dimension.HIP, Dimension.BACK_LENGTH)
_WIDTHS: Final = {Dimension.WEIGHT: (8.0, 8.0), Dimension.OTHER: (20.0, 12.0)}
_OPEN_MARK: Final = "?"


@dataclass(frozen=True, slots=True)
class Block:
    """Some columns and how a row fills them."""

    columns: tuple[TableColumn, ...]
    cells: Callable[[InHouseRow], Sequence[TableCell]]


def blocks(chart: InHouseChart, marks: Marks, wording: Wording) -> tuple[Block, ...]:
    """Every block of ``chart`` from left to right; the first names the row."""
    given = {dimension for row in chart.rows for dimension in row.measures}
    shown = (each for each in Dimension if each in _ALWAYS or each in given)
    return (
        _identity(wording),
        *(_dimension(each, marks, wording) for each in shown),
        _model(wording),
        _source(wording),
    )


def _identity(wording: Wording) -> Block:
    heads = {"maker": 15.0, "model": 16.0, "band": 8.5, "size": 9.0, "length": 8.5}

    def cells(row: InHouseRow) -> Sequence[TableCell]:
        return (
            _said(row.supplier, wording, Role.NAME),
            _said(row.model, wording, Role.NAME),
            _said(_named("band", row.band, wording), wording),
            _size(row, wording),
            _said(_named("length", row.length, wording), wording),
        )

    return Block(tuple(_column(wording, code, width) for code, width in heads.items()), cells)


def _dimension(dimension: Dimension, marks: Marks, wording: Wording) -> Block:
    head = wording.say("combined", f"dimension-{dimension.value}")
    if dimension is Dimension.AGE:
        years = TableColumn(head, 9.0, wording.say("combined", "years"))
        return Block((years,), lambda row: _both(row, dimension, marks, wording)[:1])
    units = ("kg", "lb") if dimension is Dimension.WEIGHT else ("cm", "in")
    widths = _WIDTHS.get(dimension, (10.5, 14.0))
    columns = (TableColumn(head, widths[0], units[0]), TableColumn(head, widths[1], units[1]))
    return Block(columns, lambda row: _both(row, dimension, marks, wording))


def _both(
    row: InHouseRow, dimension: Dimension, marks: Marks, wording: Wording
) -> tuple[TableCell, TableCell]:
    values = row.measures.get(dimension, ())
    if not values:
        missing = _said(None, wording)
        return missing, missing
    signs = [_signs(value, row, marks) for value in values]
    doubtful = any(sign.endswith(_OPEN_MARK) for sign in signs)
    return (
        _lines([_titled(metric(each, wording), each, wording) for each in values], signs, doubtful),
        _lines([other(each, wording) for each in values], signs, doubtful),
    )


def _titled(printed: Printed, value: Range, wording: Wording) -> Printed:
    """A measure without a column of its own is named by the maker's heading."""
    if value.dimension is not Dimension.OTHER:
        return printed
    text = wording.say("combined", "titled", heading=value.heading, text=printed.text)
    return Printed(text, printed.published)


def _signs(value: Range, row: InHouseRow, marks: Marks) -> str:
    doubtful = row.open_questions.intersection(value.findings)
    return marks.of(value) + (_OPEN_MARK if doubtful else "")


def _lines(printed: Sequence[Printed | None], signs: Sequence[str], doubtful: bool) -> TableCell:
    """Values of different definitions stand on lines of their own, each with its signs."""
    lines = [
        f"{each.text} {sign}".strip() if each is not None else sign
        for each, sign in zip(printed, signs, strict=True)
    ]
    published = all(each is None or each.published for each in printed)
    return TableCell("\n".join(lines), Role.PUBLISHED if published else Role.CONVERTED, doubtful)


def _model(wording: Wording) -> Block:
    heads = {"kind": 9.0, "level": 6.0, "limits": 12.0, "adjusters": 15.0, "between": 14.0}

    def cells(row: InHouseRow) -> Sequence[TableCell]:
        facts = row.facts
        if facts is None:
            return [_said(None, wording)] * len(heads)
        return (
            _said(_named("kind", facts.kind, wording), wording),
            _said(facts.level, wording),
            _said(_limits(facts, wording), wording),
            _said(_adjusters(facts, wording), wording),
            _said(_between_sizes(facts, wording), wording),
        )

    return Block(tuple(_column(wording, code, width) for code, width in heads.items()), cells)


def _limits(facts: ModelFacts, wording: Wording) -> str | None:
    """The rider's weight that the model is made for, in kg and lb."""
    ends = {"floor": facts.weight_floor, "ceiling": facts.weight_ceiling}
    given = {name: end for name, end in ends.items() if end is not None}
    if not given:
        return None
    figures = {name + "_kg": wording.number(end, "0.1") for name, end in given.items()}
    figures |= {name + "_lb": _pounds(end, wording) for name, end in given.items()}
    return wording.say("combined", "limits-" + "-".join(given), **figures)


def _pounds(kg: Decimal, wording: Wording) -> str:
    return wording.number(converted(kg, Unit.KG, Unit.LB), "1")


def _adjusters(facts: ModelFacts, wording: Wording) -> str | None:
    lines = [
        wording.say(
            "combined",
            "adjuster",
            dimension=wording.say("combined", f"dimension-{dimension.value}"),
            taken_in=wording.number(adjuster.take_in),
            let_out=wording.number(adjuster.let_out),
        )
        for dimension, adjuster in facts.adjusters.items()
    ]
    return "\n".join(lines) or None


def _between_sizes(facts: ModelFacts, wording: Wording) -> str | None:
    if facts.between_sizes is None:
        return None
    code = f"between-{facts.between_sizes.value}"
    if facts.between_sizes_source is None:
        return wording.say("combined", code)
    return wording.say("combined", f"{code}-from", source=facts.between_sizes_source)


def _source(wording: Wording) -> Block:
    heads = {"file": 22.0, "area": 12.0, "season-head": 9.0, "dated": 10.5}

    def cells(row: InHouseRow) -> Sequence[TableCell]:
        return (
            TableCell(row.file),
            TableCell(row.place),
            _said(row.season, wording),
            TableCell(day_words(row.dated, wording)),
        )

    return Block(tuple(_column(wording, code, width) for code, width in heads.items()), cells)


def _size(row: InHouseRow, wording: Wording) -> TableCell:
    """The size with its other names; marked where a question bears on the row and on no value."""
    loose = row.open_questions - {each for value in _ranges(row) for each in value.findings}
    if row.size is None:
        return _said(None, wording)
    text = row.size
    if row.also:
        text = wording.say("combined", "also", size=text, names=", ".join(row.also))
    return TableCell(f"{text} {_OPEN_MARK}" if loose else text, Role.SIZE, bool(loose))


def _ranges(row: InHouseRow) -> Iterator[Range]:
    for values in row.measures.values():
        yield from values


def _column(wording: Wording, code: str, width: float) -> TableColumn:
    return TableColumn(wording.say("combined", code), width)


def _named(what: str, key: str | None, wording: Wording) -> str | None:
    """A key of the data in words; a word that we have no sentence for stays as it is."""
    if key is None or not wording.has("combined", f"{what}-{key}"):
        return key
    return wording.say("combined", f"{what}-{key}")


def _said(text: str | None, wording: Wording, role: Role = Role.WORDS) -> TableCell:
    if not text:
        return TableCell(wording.say("combined", "not-given"), Role.MISSING)
    return TableCell(text, role)
