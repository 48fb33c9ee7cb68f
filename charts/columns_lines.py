"""The sizes of a table: which column is the key, what else a size is called, band and model."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from charts.cell_text import clean
from charts.columns_words import Surroundings
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.layout.view import At
from charts.schema import AlsoLabel


@dataclass(frozen=True, slots=True)
class Line:
    """One row of a table as a size. ``at`` is the cell its name stands in."""

    number: int
    label: str | None
    length: str | None
    at: At | None
    also: tuple[AlsoLabel, ...] = ()
    band: str | None = None
    group: str | None = None
    findings: tuple[str, ...] = ()


def lines_of(around: Surroundings) -> list[Line]:
    """The sizes of a table in source order; a row that nothing names has neither name nor length.

    The key is the first column of labels that is complete and repeats nothing within a band.
    """
    table = around.table
    bands = _filled_down(table.of(FieldKind.BAND), table.lines)
    groups = _filled_down(table.of(FieldKind.IDENTITY), table.lines)
    lengths = table.of(FieldKind.LENGTH)
    labels = list(table.of(FieldKind.LABEL))
    key = _key(labels, [bands, groups, _texts(lengths)])
    others = [one for one in labels if one is not key]
    if key is not None and len(labels) > 1:
        _say_key(key, others, around)
    lines = [_line(number, key, lengths, others) for number in range(table.lines)]
    return [
        replace(line, band=_band(band), group=group)
        for line, band, group in zip(lines, bands, groups, strict=True)
    ]


def _band(text: str | None) -> str | None:
    return look(text).band if text else None


def _line(
    number: int, key: Field | None, lengths: Sequence[Field], others: Sequence[Field]
) -> Line:
    at = _at(key, number) if key else None
    length_at = _at(lengths[0], number) if lengths else None
    label = look(at.text).label if at else None
    name = (label.text if label else clean(at.text)) if at else None
    also = [AlsoLabel(text, "") for text in (label.also if label else ())]
    for one in others:
        other = _at(one, number)
        if other is not None and not look(other.text).blank:
            also.append(AlsoLabel(clean(other.text), one.printed_heading))
    return Line(
        number,
        name,
        clean(length_at.text) if length_at else None,
        at or length_at,
        tuple(also),
    )


def _at(one: Field, number: int) -> At | None:
    cell = one.cells[number]
    return cell[0] if cell and not look(cell[0].text).blank else None


def _texts(fields: Sequence[Field]) -> list[str | None]:
    if not fields:
        return []
    return [cell[0].text if cell else None for cell in fields[0].cells]


def _filled_down(fields: Sequence[Field], lines: int) -> list[str | None]:
    """A band or a model in a column of its own holds down to the next one."""
    if not fields:
        return [None] * lines
    held: str | None = None
    found: list[str | None] = []
    for cell in fields[0].cells:
        held = cell[0].text if cell else held
        found.append(held)
    return found


def _key(labels: Sequence[Field], beside: Sequence[Sequence[str | None]]) -> Field | None:
    """The first complete column of labels that repeats nothing; the first when none does."""
    for one in labels:
        names = [cell[0].text.strip().lower() if cell else "" for cell in one.cells]
        keys = list(zip(names, *(part for part in beside if part), strict=True))
        if all(names) and len(set(keys)) == len(keys):
            return one
    return labels[0] if labels else None


def _say_key(key: Field, others: Sequence[Field], around: Surroundings) -> None:
    first = key.heads[-1] if key.heads else key.cells[0][0]
    around.log.add(
        "label-key-chosen",
        around.place(first.row, first.column),
        key=around.table.area,
        heading=key.printed_heading,
        others=", ".join(one.printed_heading for one in others),
    )
