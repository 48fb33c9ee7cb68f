"""One cell to a range: its figures in the canonical unit, where its unit stood, what it asks."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.about_so_much import as_about
from charts.columns.ages_in_months import as_months
from charts.columns.answered_cells import answered_cell, dated_height
from charts.columns.dates import Undone, feet_and_inches
from charts.columns.meaning import Column
from charts.columns.one_ended import one_end
from charts.columns.remarks import REMARK, without_remark
from charts.columns.stops_for_hyphens import stop_for_a_hyphen
from charts.columns.words import Surroundings, family_of
from charts.findings import LEVELS, Candidate, Level, listed
from charts.layout.dittos import says_the_same
from charts.layout.view import At
from charts.notation import CellReading, Expected, Quantity, Reading, read_cell
from charts.quantities import CANONICAL, FAMILY, Figure, Unit, canonical
from charts.schema import Basis, Dimension, Kind, PrintedBothWays, Range, UnitFrom

_LAST_RESORT: Final = "impossible"
OF_A_CELL: Final = "cell"
"""The case of a finding's sentence that speaks of one cell."""


def read_at(
    at: At, column: Column, around: Surroundings, least_cm: Decimal | None = None
) -> Range | None:
    """One cell in the light of its column; None for a blank, a word or a lone tolerance.

    ``least_cm`` is how little a child measures at the age of the line.
    """
    basis = Basis.FLAT if column.laid_flat else column.basis
    expected = Expected(
        None if column.doubted else column.dimension,
        column.unit,
        column.second_unit,
        basis=basis,
        definition=column.definition,
        least_cm=least_cm,
    )
    reading = one_end(read_cell(at.text, expected), at.text, expected)
    reading = without_remark(reading, at.text, expected)
    reading = stop_for_a_hyphen(reading, at.text, column)
    reading = answered_cell(reading, at.text, around.place(at.row, at.column), around.answers)
    if column.signs_mean_about:
        reading = as_about(reading)
    if column.in_months:
        reading = as_months(reading)
    same = reading.reading in {Reading.BLANK, Reading.NOTE} and says_the_same(at.text)
    if reading.reading in {Reading.BLANK, Reading.TOLERANCE} and not same:
        return None
    if column.nameless and _doubtful(reading, column):
        return replace(unread(at, column, around), findings=column.findings)
    if same or reading.reading is Reading.NOTE:
        return _words_for_figures(at, column, around, case="same" if same else "words")
    undone = around.dates.get(at.origin)
    if undone is not None:
        return _was_a_date(undone, reading, at, column, around)
    found = _stored(reading, at, column, around)
    asked = _asked(reading, at, column, around)
    ids = listed(*column.findings, *asked)
    return replace(found, findings=ids) if ids else found


def _words_for_figures(at: At, column: Column, around: Surroundings, *, case: str) -> Range:
    """Words where figures are due, such as "see XS": kept as printed, and asked about."""
    place = around.place(at.row, at.column)
    ident = around.log.add(
        _LAST_RESORT,
        place,
        key=f"same {around.table.area}" if case == "same" else f"words {column.place}",
        case=case,
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
    return Range(
        dimension=column.dimension,
        heading=column.heading,
        kind=quantity.kind,
        published=at.cell.printed.strip(),
        place=place,
        unit=CANONICAL[FAMILY[unit]],
        unit_from=_source(quantity, at, column),
        definition=column.definition,
        basis=column.basis,
        corrected=at.cell.corrected,
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
    if reading.code == REMARK:
        ids.append(_remark(at, column, around))
    elif _doubtful(reading, column):
        code = reading.code if LEVELS.get(reading.code or "") is Level.QUESTION else None
        ids.append(
            around.log.add(
                code or _LAST_RESORT,
                place,
                candidates=_candidates(reading, column),
                case=OF_A_CELL,
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


def _remark(at: At, column: Column, around: Surroundings) -> str:
    """One question of the file about words behind figures."""
    place = around.place(at.row, at.column)
    text, heading = at.text.strip(), column.heading
    return around.log.add("text-order", place, key=REMARK, case=REMARK, text=text, heading=heading)


def _doubtful(reading: CellReading, column: Column) -> bool:
    """Whether a cell raises a question of its own."""
    unsure = reading.reading in {Reading.ASK, Reading.UNREAD, Reading.NOTE}
    return unsure or not _storable(reading, column)


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
