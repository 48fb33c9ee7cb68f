"""Columns that hold units: for the measure to their left, for all measures, or row by row.

Where one size has a row in cm and a row in inches, the two rows become one line whose cells read
like a cell that prints both.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import HeadingReading, Role, find_units
from charts.layout.fields import Field, FieldKind
from charts.layout.heads import combined
from charts.layout.looks import look
from charts.layout.view import At
from charts.notation import Expected, Reading, read_cell
from charts.quantities import FAMILY, METRIC, Family, Unit
from charts.schema import Dimension

_LABEL_AND_UNIT: Final = re.compile(
    r"(?P<size>\S.*?)[\s,/(\[-]++(?P<unit>[^\W\d_]{2,}|\")\.?[)\]]?"
)
_BOTH: Final = 2
_KEYS = frozenset({FieldKind.LABEL, FieldKind.LENGTH, FieldKind.BAND, FieldKind.IDENTITY})


def with_unit_columns(fields: Sequence[Field]) -> list[Field]:
    """The fields with the units that stand in columns of their own given to their measures."""
    found = list(fields)
    for number, field in enumerate(fields):
        if field.kind is not FieldKind.UNIT:
            continue
        said = _held(field, fields)
        for target in _targets(fields, number):
            found[target] = _united(found[target], said)
    return _rows_joined(found)


def labels_parted(fields: Sequence[Field]) -> list[Field]:
    """``S (cm)``, ``S inch``: labels that carry a unit, parted into the size and the unit.

    Without a word for size above them each of them has to stand there in every unit.
    """
    found = list(fields)
    for number, field in enumerate(fields):
        parts = [
            _LABEL_AND_UNIT.fullmatch(cell[0].text.strip()) if cell else None
            for cell in field.cells
        ]
        said = [(part["size"], find_units(part["unit"])) for part in parts if part is not None]
        if len(said) < len(field.cells) or not all(len(units) == 1 for _, units in said):
            continue
        if len({units for _, units in said}) < 2 or not _are_sizes(field, said):
            continue
        cells = [cell[0] for cell in field.cells]
        sizes = [
            (_with_text(at, part["size"]),) for at, part in zip(cells, parts, strict=True) if part
        ]
        units = [
            (_with_text(at, part["unit"]),) for at, part in zip(cells, parts, strict=True) if part
        ]
        found[number] = replace(field, kind=FieldKind.LABEL, cells=tuple(sizes))
        found.append(Field(FieldKind.UNIT, (), HeadingReading(Role.UNKNOWN), tuple(units)))
        break
    return found


def _are_sizes(field: Field, said: Sequence[tuple[str, tuple[Unit, ...]]]) -> bool:
    if field.kind is FieldKind.LABEL:
        return True
    units = {one for _, one in said}
    sizes = list(dict.fromkeys(size for size, _ in said))
    whole = len(set(said)) == len(said) == len(sizes) * len(units)
    headed = field.heads and field.heading.role is not Role.LABEL
    return whole and not headed and all(look(size).label is not None for size in sizes)


def _with_text(at: At, text: str) -> At:
    return replace(at, cell=replace(at.cell, text=text))


def _targets(fields: Sequence[Field], number: int) -> list[int]:
    """The measures between this unit column and the one before; else those behind it."""
    before = max((n for n in range(number) if fields[n].kind is FieldKind.UNIT), default=-1)
    left = _measures(fields, before + 1, number)
    after = (n for n in range(number + 1, len(fields)) if fields[n].kind is FieldKind.UNIT)
    return left or _measures(fields, number + 1, next(after, len(fields)))


def _measures(fields: Sequence[Field], start: int, end: int) -> list[int]:
    return [n for n in range(start, end) if fields[n].kind is FieldKind.VALUES]


def _united(field: Field, cells: Sequence[At | None]) -> Field:
    """One unit for the column goes to its heading, or two for each cell: ``cm / inch``.

    Different ones go to the lines.
    """
    said = {one for at in cells if at and (one := _units_at(at, field.heading.dimension))}
    if all(cells) and len(said) == 1 and len(next(iter(said))) <= _BOTH:
        first = next(at for at in cells if at is not None)
        heads = (*field.heads, first)
        heading = replace(combined(heads), role=field.heading.role)
        return replace(field, heads=heads, heading=heading) if not field.heading.unit else field
    return replace(field, units=tuple(cells))


def _held(units: Field, fields: Sequence[Field]) -> Sequence[At | None]:
    """The unit of each line: a word centred over all sizes in its unit holds for all of them."""
    labels = next((one for one in fields if one.kind is FieldKind.LABEL), None)
    names = [_key(cell) for cell in labels.cells] if labels is not None else []
    if len(set(names)) in {0, len(names)}:
        return _filled_down(units)
    every = len(set(names))
    starts = range(0, len(names), every)
    said = [[cell[0] for cell in units.cells[at : at + every] if cell] for at in starts]
    alike = all(names[at : at + every] == names[:every] for at in starts)
    if not alike or any(len(one) != 1 for one in said):
        return _filled_down(units)
    return [one for block in said for one in block * every]


def _filled_down(units: Field) -> tuple[At | None, ...]:
    """A unit over the first of several sizes holds for those behind it, as under a merged cell."""
    held: At | None = None
    found = []
    for cell in units.cells:
        held = cell[0] if cell else held
        found.append(held)
    return tuple(found)


def unit_at(at: At, dimension: Dimension | None) -> Unit | None:
    """The unit that a cell names for a dimension; None when it names none that can measure it."""
    units = _units_at(at, dimension)
    return units[0] if len(units) == 1 else None


def _units_at(at: At, dimension: Dimension | None) -> tuple[Unit, ...]:
    family = Family.MASS if dimension is Dimension.WEIGHT else Family.LENGTH
    return tuple(unit for unit in find_units(at.text) if FAMILY[unit] is family)


def _rows_joined(fields: list[Field]) -> list[Field]:
    """Two rows of one size in two systems of units as one line.

    A row without a size belongs to the one above it; with one it may stand anywhere, as where all
    sizes in cm are followed by all sizes in inches.
    """
    keys = [field for field in fields if field.kind in _KEYS]
    earlier: dict[tuple[str | None, ...], list[int]] = {}
    pairs: dict[int, int] = {}
    for line in range(len(fields[0].cells) if keys else 0):
        size = tuple(_key(field.cells[line]) for field in keys)
        alike = earlier.setdefault(size, [])
        above = [line - 1] if line and not any(size) else alike
        first = next((one for one in above if _other_system(fields, one, line)), None)
        if first is not None:
            pairs[line] = first
        alike.append(line)
    return [_joined(field, pairs) for field in fields] if pairs else fields


def _key(cell: tuple[At, ...]) -> str | None:
    return cell[0].text.strip() if cell else None


def _other_system(fields: Sequence[Field], first: int, line: int) -> bool:
    """Whether every value of a line is in the other system of units than an earlier line's."""
    values = [field for field in fields if field.kind is FieldKind.VALUES and field.cells[line]]
    systems = [(_system(one, first), _system(one, line)) for one in values]
    if not values or any(pair[0] is pair[1] for pair in systems):
        return False
    bare = [one for one, pair in zip(values, systems, strict=True) if None in pair]
    return all(_proved(one, first, line) for one in bare)


def _proved(field: Field, first: int, line: int) -> bool:
    """33-35 over 84-88 cm: the ratio proves the unit that one of two cells leaves unsaid."""
    cells = (*_whole(field.cells[first]), *_whole(field.cells[line]))
    text = "\n".join(at.text.strip() for at in cells)
    reading = read_cell(text, Expected(field.heading.dimension))
    return len(cells) == 2 and reading.reading is Reading.READ and reading.also is not None


def _system(field: Field, line: int) -> bool | None:
    """Whether a cell's unit is metric; None when it has none of its own."""
    cell = field.cells[line]
    if not cell:
        return None
    at = field.units[line] if field.units else None
    beside = unit_at(at, field.heading.dimension) if at is not None else None
    unit = _in_the_cell(cell[0], beside=beside is not None) or beside or field.heading.unit
    return unit in METRIC if unit is not None else None


def _in_the_cell(at: At, *, beside: bool) -> Unit | None:
    """The unit a cell has of its own: 83½ is in inches unless another unit stands beside it."""
    reading = read_cell(at.text, Expected(unit=Unit.CM)) if beside else look(at.text).reading
    return reading.quantity.unit if reading.quantity is not None else None


def _joined(field: Field, pairs: Mapping[int, int]) -> Field:
    cells = list(field.cells)
    if field.kind is FieldKind.VALUES:
        for line, first in pairs.items():
            both = (*_whole(cells[first]), *_whole(cells[line]))
            if len(both) == 2:
                cells[first] = (_both(field, (first, line), both),)
    kept = [line for line in range(len(cells)) if line not in pairs]
    return replace(field, cells=tuple(cells[n] for n in kept), units=())


def _whole(cell: tuple[At, ...]) -> tuple[At, ...]:
    """The cells that hold together for one size as one: 84 and 88 as 84 - 88."""
    if len(cell) < 2:
        return cell
    return (_with_text(cell[0], " - ".join(at.text.strip() for at in cell)),)


def _both(field: Field, lines: tuple[int, int], both: Sequence[At]) -> At:
    first = both[0]
    texts = []
    for number, at in zip(lines, both, strict=True):
        unit = field.units[number] if field.units else None
        unit = unit if _in_the_cell(at, beside=unit is not None) is None else None
        texts.append(f"{at.text.strip()} {unit.text.strip()}" if unit else at.text.strip())
    return replace(first, cell=replace(first.cell, text="\n".join(texts)))
