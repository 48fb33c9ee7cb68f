"""The cells of a column to ranges, each with its unit, its place and the questions it carries."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import Final

from charts.answers_cells import answered_cell, dated_height
from charts.columns_dates import Undone, feet_and_inches
from charts.columns_meaning import Column
from charts.columns_words import Surroundings, family_of
from charts.findings import LEVELS, Candidate, Level, listed
from charts.layout.unit_columns import unit_at
from charts.layout.view import At
from charts.notation import CellReading, Expected, Quantity, Reading, read_cell
from charts.quantities import CANONICAL, FAMILY, Figure, Unit, canonical
from charts.schema import Basis, Dimension, Kind, PrintedBothWays, Range, UnitFrom

_LAST_RESORT: Final = "impossible"
_CELL: Final = "cell"
"""The case of a finding's sentence that speaks of one cell."""


@dataclass(frozen=True, slots=True)
class Filled:
    """A column with the ranges of its cells, by line."""

    column: Column
    ranges: dict[int, Range]


def filled(column: Column, around: Surroundings) -> Filled:
    """Read every cell of a column; a blank or a word makes no range."""
    ranges: dict[int, Range] = {}
    for line, cell in enumerate(column.field.cells):
        if cell and (one := _read_all(cell, _of_line(column, line), around)) is not None:
            ranges[line] = one
    return Filled(column, _asked_once(column, ranges, around))


def _asked_once(column: Column, ranges: dict[int, Range], around: Surroundings) -> dict[int, Range]:
    """One question for a column most of whose cells are impossible, in place of one per cell."""
    places = {one.place for one in ranges.values()}
    own = [one for one in around.log.findings if one.code == "impossible" and one.place in places]
    own = [one for one in own if one.values.get("case") == _CELL]
    if len(own) < 3 or 2 * len(own) <= len(ranges):
        return ranges
    ids = {one.id for one in own}
    for ident in ids:
        around.log.withdraw(ident)
    whole = around.log.add("impossible", column.place, case="column", heading=column.heading)
    return {line: _instead(one, ids, whole) for line, one in ranges.items()}


def _instead(one: Range, ids: set[str], whole: str) -> Range:
    if not ids & set(one.findings):
        return one
    kept = (ident for ident in one.findings if ident not in ids)
    return replace(one, findings=listed(*kept, whole))


def _of_line(column: Column, line: int) -> Column:
    """The column with the unit that a column of units gives this line."""
    at = column.field.units[line] if column.field.units else None
    unit = unit_at(at, column.dimension) if at is not None else None
    return column if unit is None else replace(column, unit=unit, unit_from=UnitFrom.ROW)


def _read_all(cell: Sequence[At], column: Column, around: Surroundings) -> Range | None:
    """One cell, or several that hold together: the bands of a grid that share a size."""
    found = [one for at in cell if (one := read_at(at, column, around)) is not None]
    if len(found) < 2:
        return found[0] if found else None
    first, last = found[0], found[-1]
    lows = [one.value if one.value is not None else one.low for one in found]
    highs = [one.value if one.value is not None else one.high for one in found]
    whole = replace(
        first,
        published=" | ".join(one.published for one in found),
        place=two_cells(first.place, last.place),
        findings=listed(*(ident for one in found for ident in one.findings)),
    )
    if any(one.kind is Kind.UNREAD for one in found):
        return replace(whole, kind=Kind.UNREAD, low=None, high=None, value=None)
    return _spanning(whole, lows, highs, found)


def _spanning(
    whole: Range,
    lows: Sequence[Decimal | None],
    highs: Sequence[Decimal | None],
    found: Sequence[Range],
) -> Range:
    """From the lowest to the highest end; open where one of the parts is."""
    low = None if None in lows else min(end for end in lows if end is not None)
    high = None if None in highs else max(end for end in highs if end is not None)
    kind = Kind.RANGE
    if low is None or high is None:
        kind = Kind.AT_LEAST if high is None else Kind.AT_MOST
    least, most = found[lows.index(low)], found[highs.index(high)]
    return replace(
        whole,
        kind=kind,
        low=low,
        high=high,
        value=None,
        low_step=least.low_step,
        high_step=most.high_step,
        low_included=least.low_included,
        high_included=most.high_included,
    )


def two_cells(first: str, second: str) -> str:
    """The place of a value that stands in two cells: ``Women!B3:C3``."""
    return first if first == second else f"{first}:{second.rpartition('!')[2]}"


def read_at(at: At, column: Column, around: Surroundings) -> Range | None:
    """One cell in the light of its column; None for a blank, a word or a lone tolerance."""
    basis = Basis.FLAT if column.laid_flat else column.basis
    expected = Expected(
        None if column.doubted else column.dimension,
        column.unit,
        column.second_unit,
        basis=basis,
        definition=column.definition,
    )
    reading = read_cell(at.text, expected)
    reading = answered_cell(reading, at.text, around.place(at.row, at.column), around.answers)
    if reading.reading in {Reading.BLANK, Reading.TOLERANCE}:
        return None
    if reading.reading is Reading.NOTE:
        return _words_for_figures(at, column, around)
    undone = around.dates.get(at.origin)
    if undone is not None:
        return _was_a_date(undone, reading, at, column, around)
    found = _stored(reading, at, column, around)
    asked = _asked(reading, at, column, around)
    return replace(found, findings=listed(*column.findings, *asked))


def _words_for_figures(at: At, column: Column, around: Surroundings) -> Range:
    """Words where figures are due, such as "see XS": kept as printed, and asked about."""
    place = around.place(at.row, at.column)
    ident = around.log.add(
        _LAST_RESORT,
        place,
        key=f"words {column.place}",
        case="words",
        text=at.text.strip(),
        heading=column.heading,
    )
    return replace(unread(at, column, around), findings=listed(*column.findings, ident))


def _was_a_date(
    undone: Undone, reading: CellReading, at: At, column: Column, around: Surroundings
) -> Range:
    """A date turned back: kept with its question; a height keeps no figure, its order is lost."""
    height = column.dimension is Dimension.HEIGHT
    found = unread(at, column, around) if height else _stored(reading, at, column, around)
    ident = around.log.add(
        "was-a-date",
        found.place,
        key=column.place,
        candidates=_heights(undone) if height else _as_range(reading, column),
        text=undone.shown,
        heading=column.heading,
        first=undone.range_text,
    )
    if height:
        found = dated_height(found, undone, around.answers.chosen.get(ident))
    return replace(found, published=undone.shown, findings=listed(*column.findings, ident))


def _heights(undone: Undone) -> tuple[Candidate, ...]:
    return tuple(
        Candidate(
            f"{inches // 12}'{inches % 12}\"", "cm", value=canonical(inches, Unit.IN), why=why
        )
        for inches, why in zip(feet_and_inches(undone), ("month-day", "day-month"), strict=True)
    )


def _as_range(reading: CellReading, column: Column) -> tuple[Candidate, ...]:
    quantity = reading.quantity
    if quantity is None:
        return ()
    return (candidate(quantity, quantity.unit or column.unit, "day-month"),)


def _stored(reading: CellReading, at: At, column: Column, around: Surroundings) -> Range:
    quantity = reading.quantity
    unit = (quantity.unit or column.unit) if quantity is not None else None
    if quantity is None or unit is None or not _storable(reading, column):
        return unread(at, column, around)
    place = around.place(at.row, at.column)
    also = reading.also
    return replace(
        unread(at, column, around),
        kind=quantity.kind,
        unit=CANONICAL[FAMILY[unit]],
        unit_from=_source(quantity, at, column),
        circa=quantity.circa,
        low_included=quantity.low_included,
        high_included=quantity.high_included,
        tolerance=_in_canonical(quantity.tolerance, unit),
        published_unit=_printed(quantity, column, unit),
        also_published=_both_ways(also, place) if also is not None else None,
        low=_in_canonical(quantity.low, unit),
        high=_in_canonical(quantity.high, unit),
        value=_in_canonical(quantity.value, unit),
        low_step=_step(quantity.low or quantity.value, unit),
        high_step=_step(quantity.high or quantity.value, unit),
    )


def _in_canonical(figure: Figure | None, unit: Unit) -> Decimal | None:
    return figure.in_canonical(unit).value if figure is not None else None


def _step(figure: Figure | None, unit: Unit) -> Decimal | None:
    return figure.in_canonical(unit).step if figure is not None else None


def _source(quantity: Quantity, at: At, column: Column) -> UnitFrom:
    if quantity.unit is None:
        return column.unit_from
    # A typed number shows no unit of its own: it comes from the cell's number format.
    return UnitFrom.FORMAT if isinstance(at.cell.stored, Decimal) else UnitFrom.CELL


def _printed(quantity: Quantity, column: Column, unit: Unit) -> Unit | None:
    if quantity.unit is None and column.unit_from is UnitFrom.INFERRED:
        return None
    return unit


def _both_ways(also: Quantity, place: str) -> PrintedBothWays | None:
    if also.unit is None:
        return None
    low, high = also.low or also.value, also.high or also.value
    return PrintedBothWays(
        also.text,
        also.unit,
        also.low.value if also.low else None,
        also.high.value if also.high else None,
        also.value.value if also.value else None,
        place,
        low.step if low else None,
        high.step if high else None,
    )


def unread(at: At, column: Column, around: Surroundings) -> Range:
    """A range without figures that keeps what is printed."""
    return Range(
        dimension=column.dimension,
        heading=column.heading,
        kind=Kind.UNREAD,
        published=at.cell.printed.strip(),
        place=around.place(at.row, at.column),
        corrected=at.cell.corrected,
        unit=CANONICAL[family_of(column.dimension)],
        unit_from=column.unit_from,
        definition=column.definition,
        basis=column.basis,
    )


def _asked(reading: CellReading, at: At, column: Column, around: Surroundings) -> tuple[str, ...]:
    """The question that the cell itself raises, and the notes of its notation."""
    place = around.place(at.row, at.column)
    ids = []
    doubtful = not _storable(reading, column) or _pointed_stones(reading, column)
    if reading.reading in {Reading.ASK, Reading.UNREAD} or doubtful:
        code = "separator-lost" if _pointed_stones(reading, column) else reading.code
        code = code if LEVELS.get(code or "") is Level.QUESTION else None
        ids.append(
            around.log.add(
                code or _LAST_RESORT,
                place,
                candidates=_candidates(reading, column),
                case=_CELL,
                text=at.text.strip(),
                heading=column.heading,
            )
        )
    ids += [
        around.log.add(note, place, key=column.place, text=at.text.strip(), heading=column.heading)
        for note in reading.notes
        if note in LEVELS
    ]
    return tuple(ids)


def _pointed_stones(reading: CellReading, column: Column) -> bool:
    """9.7 in a column of stones is nine stone seven as often as nine and seven tenths."""
    quantity = reading.quantity
    if quantity is None or quantity.unit is not None or column.unit is not Unit.ST:
        return False
    ends = (quantity.low, quantity.high, quantity.value)
    return any(end is not None and end.step < 1 for end in ends)


def _storable(reading: CellReading, column: Column) -> bool:
    """Whether the cell has figures in a unit that can measure what the column measures."""
    if reading.quantity is None or reading.code == _LAST_RESORT:
        return False
    unit = reading.quantity.unit or column.unit
    return unit is not None and FAMILY[unit] is family_of(column.dimension)


def _candidates(reading: CellReading, column: Column) -> tuple[Candidate, ...]:
    return tuple(
        candidate(quantity, quantity.unit or column.unit, why)
        for quantity, why in reading.candidates
    )


def candidate(quantity: Quantity, unit: Unit | None, why: str) -> Candidate:
    """A reading a person may take, figures in the canonical unit."""
    if unit is None:
        return Candidate(quantity.text, why=why)
    return Candidate(
        quantity.text,
        CANONICAL[FAMILY[unit]].value,
        _in_canonical(quantity.low, unit),
        _in_canonical(quantity.high, unit),
        _in_canonical(quantity.value, unit),
        why,
    )
