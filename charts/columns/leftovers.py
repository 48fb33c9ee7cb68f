"""What must not go unsaid: figures given twice, blanks below figures, merged cells, tolerances."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.columns.figure_of_range import told_by_range
from charts.columns.meaning import Column
from charts.columns.short_rows import short_rows
from charts.columns.values import Filled
from charts.columns.words import Surroundings, family_of
from charts.findings import Candidate, listed
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.layout.view import At
from charts.notation import Expected, Reading, read_cell
from charts.quantities import FAMILY, Family
from charts.schema import Dimension, Kind, Range

_IN_HEADING: Final = re.compile(
    r"(?:±|\+\s*/?\s*-)\s*\d+(?:[.,]\d+)?(?:\s?(?:cm|mm|in|inch|\"))?", re.IGNORECASE
)
"""How exact the figures below are: ``Waist ± 1 (cm)``."""


def without_doubles(columns: Sequence[Filled], around: Surroundings) -> list[Filled]:
    """One column per dimension, definition, basis and band; a second one is asked about."""
    found: list[Filled] = []
    for one in columns:
        first = next((each for each in found if _same(each.column, one.column)), None)
        other = one.column.dimension is Dimension.OTHER
        if first is None or other or _row_by_row(first, one, around):
            found.append(one)
        elif (told := told_by_range(first, one)) is not None:
            found[found.index(first)] = told
        elif not _agree(first, one) and not _all_doubted(one):
            found[found.index(first)] = _asked(first, one, around)
    return found


def _asked(first: Filled, second: Filled, around: Surroundings) -> Filled:
    """The first of two columns for one measure: the question bears on it too, which is the one?"""
    ident = around.log.add(
        "column-unused",
        second.column.place,
        key=f"{first.column.place} {second.column.heading}",
        heading=second.column.heading,
        other=first.column.heading,
    )
    ranges = {
        line: replace(value, findings=listed(*value.findings, ident))
        for line, value in first.ranges.items()
    }
    return Filled(first.column.asking(ident), ranges)


def _same(first: Column, second: Column) -> bool:
    return (first.dimension, first.definition, first.basis, first.band) == (
        second.dimension,
        second.definition,
        second.basis,
        second.band,
    )


def _row_by_row(first: Filled, second: Filled, around: Surroundings) -> bool:
    """Two names of one measure in a column of names, no size having both: ``bust``, ``chest``."""
    heads = [one.column.field.heads[-1:] for one in (first, second)]
    named = all(heads) and heads[0][0].column == heads[1][0].column
    return named and not around.table.turned and first.ranges.keys().isdisjoint(second.ranges)


def _all_doubted(one: Filled) -> bool:
    """Whether no figure was stored and each is asked about: it is no second of its measure."""
    values = one.ranges.values()
    return bool(values) and all(each.kind is Kind.UNREAD and each.findings for each in values)


def _agree(first: Filled, second: Filled) -> bool:
    """The same figures printed twice need no question."""
    return all(
        (other := first.ranges.get(line)) is not None
        and (value.low, value.high, value.value) == (other.low, other.high, other.value)
        for line, value in second.ranges.items()
    )


def say_blanks(columns: Sequence[Filled], around: Surroundings) -> None:
    """Ask once per table about blank cells that stand below a filled one, and note merged ones."""
    short = short_rows(around.table)
    for one in columns:
        field = one.column.field
        for line in range(1, len(field.cells)):
            above = field.cells[line - 1]
            blank = not field.cells[line] and above and _line_filled(columns, line)
            if blank and any(_measured_instead(one, other, line, around) for other in columns):
                continue
            if blank and _row_below(above[0], around) in short:
                continue  # asked as a whole
            if blank and not around.answers.emptied(_next_place(above[0], around)):
                _ask_blank(one, field.cells[line - 1][0], around)
                break
        if any(_shares(field, line) for line in range(1, len(field.cells))):
            around.log.add("merged-shared", one.column.place, heading=one.column.heading)


def _line_filled(columns: Sequence[Filled], line: int) -> bool:
    return any(one.column.field.cells[line] for one in columns)


def _measured_instead(one: Filled, other: Filled, line: int, around: Surroundings) -> bool:
    """Whether a size has the measure under its other name."""
    same = _same(one.column, other.column) and line in other.ranges
    return same and other is not one and _row_by_row(one, other, around)


def _ask_blank(one: Filled, above: At, around: Surroundings) -> None:
    around.log.add(
        "blank-inside",
        _next_place(above, around),
        key=around.table.area,
        candidates=(
            Candidate(above.text.strip(), why="same-as-above"),
            Candidate("", why="not-given"),
        ),
        heading=one.column.heading,
    )


def _row_below(above: At, around: Surroundings) -> int:
    return above.row if around.table.turned else above.row + 1


def _next_place(above: At, around: Surroundings) -> str:
    """The blank cell after ``above`` in the direction in which the sizes run."""
    if around.table.turned:
        return around.place(above.row, above.column + 1)
    return around.place(above.row + 1, above.column)


def _shares(field: Field, line: int) -> bool:
    here, above = field.cells[line], field.cells[line - 1]
    if len(here) != 1 or len(above) != 1:
        return False
    return here[0].origin == above[0].origin and here[0] != above[0]


def with_tolerances(columns: Sequence[Filled], around: Surroundings) -> list[Filled]:
    """The tolerance rows and columns put beside the values of the dimension they name."""
    found = [_own_tolerance(one, around) for one in columns]
    for field in around.table.of(FieldKind.TOLERANCE):
        targets = _all_targets(field, found, around) or _target(field, found, around)
        for target in targets:
            found[target] = _per_line(found[target], field, around)
    for one in found:
        if _reads_as_tolerances(one):
            say_unused(one.column.field, around, "measured")
    return found


def _reads_as_tolerances(one: Filled) -> bool:
    """``± 38`` in every cell under ``Back length``: about 38, and no tolerance of anything."""
    cells = [cell[0] for cell in one.column.field.cells if cell]
    signed = (look(at.text).reading.reading is Reading.TOLERANCE for at in cells)
    return not one.ranges and bool(cells) and all(signed)


def say_unused(field: Field, around: Surroundings, case: str) -> None:
    """Ask about the figures of a column that came into no value; ``case`` says why."""
    filled = [cell[0] for cell in field.cells if cell]
    ends = [(at.row, at.column) for at in (filled[0], filled[-1])]
    place = around.table.sheet.area(*ends)
    around.log.add("column-unused", place, case=case, heading=field.printed_heading)


def _all_targets(field: Field, columns: Sequence[Filled], around: Surroundings) -> list[int]:
    """All lengths of the garment, where the only tolerance stands behind the last of the measures.

    It names none of them, and the others would have none.
    """
    fields = around.table.fields
    alone = len(around.table.of(FieldKind.TOLERANCE)) == 1 and field.heading.dimension is None
    behind = fields[fields.index(field) + 1 :]
    if not alone or any(one.kind is FieldKind.VALUES for one in behind):
        return []
    return [
        number
        for number, one in enumerate(columns)
        if family_of(one.column.dimension) is Family.LENGTH
        and one.column.dimension is not Dimension.HEIGHT
    ]


def _own_tolerance(one: Filled, around: Surroundings) -> Filled:
    at = one.column.field.tolerance
    if at is not None:
        text = at.text
    elif (said := _IN_HEADING.search(one.column.heading)) is not None:
        at, text = one.column.field.heads[-1], said[0]
    else:
        return one
    ranges = {line: _tolerated(value, text, one.column) for line, value in one.ranges.items()}
    _say(one.column, at, around)
    return Filled(one.column, ranges)


def _target(field: Field, columns: Sequence[Filled], around: Surroundings) -> list[int]:
    """The column a tolerance names, else the one to its left."""
    dimension = field.heading.dimension
    if dimension is not None:
        for number, one in enumerate(columns):
            if one.column.dimension is dimension:
                return [number]
    before = around.table.fields[: around.table.fields.index(field)]
    numbers = [n for n, one in enumerate(columns) if one.column.field in before]
    return [max(numbers)] if numbers else []


def _per_line(one: Filled, field: Field, around: Surroundings) -> Filled:
    ranges = dict(one.ranges)
    for line, value in one.ranges.items():
        if field.cells[line]:
            ranges[line] = _tolerated(value, field.cells[line][0].text, one.column)
            _say(one.column, field.cells[line][0], around)
    return Filled(one.column, ranges)


def _tolerated(value: Range, text: str, column: Column) -> Range:
    quantity = read_cell(text, Expected(column.dimension, column.unit)).quantity
    if quantity is None or value.kind is Kind.UNREAD:
        return value
    figure = quantity.tolerance or quantity.value
    unit = quantity.unit or column.unit
    if figure is None or unit is None or FAMILY[unit] is not family_of(column.dimension):
        return value
    return replace(value, tolerance=figure.in_canonical(unit).value)


def _say(column: Column, at: At, around: Surroundings) -> None:
    place = around.place(at.row, at.column)
    around.log.add("tolerance-kept", place, key=column.place, heading=column.heading)
