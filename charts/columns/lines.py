"""The sizes of a table: which column is the key, what else a size is called, band and model."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from charts.cell_text import clean
from charts.columns.band_letters import bands_of_letters, column_of_letters
from charts.columns.band_scope import ends_bands
from charts.columns.centred_words import filled_down, held_in_rows
from charts.columns.lone_sizes import size_unnamed
from charts.columns.lost_names import lost_names
from charts.columns.named_lengths import name_lengths_again
from charts.columns.words import Surroundings
from charts.findings import Candidate
from charts.headings.bands import apart
from charts.identity import own_words
from charts.layout.fields import Field, FieldKind, Table
from charts.layout.looks import look
from charts.layout.view import At
from charts.schema import AlsoLabel
from charts.size_labels import printed_names, without_word_for_size

_BRACKET: Final = re.compile(r"\s*\([^()]*\)\s*$")


@dataclass(frozen=True, slots=True)
class Line:
    """One row of a table as a size. ``at`` is the cell its name stands in.

    ``people`` is what a column of bands says of it, ``Adults`` too, who are no band.
    """

    number: int
    label: str | None
    length: str | None
    at: At | None
    also: tuple[AlsoLabel, ...] = ()
    band: str | None = None
    group: str | None = None
    people: str = ""
    findings: tuple[str, ...] = ()


def lines_of(around: Surroundings) -> list[Line]:
    """The sizes of a table in source order; a row that nothing names has neither name nor length.

    The key is the first column of labels that is complete and repeats nothing within a band.
    """
    table = around.table
    lettered = column_of_letters(table)
    if lettered is not None:
        table = replace(table, fields=tuple(one for one in table.fields if one is not lettered))
    beside = replace(around, table=table)
    held = held_in_rows([lettered] if lettered else table.of(FieldKind.BAND), beside)
    bands = bands_of_letters(lettered, held.words) if lettered else list(held.words)
    if not any(bands):
        bands = _bands_in_comments(around)
    lengths = table.of(FieldKind.LENGTH)
    labels = list(table.of(FieldKind.LABEL))
    named = held_in_rows(table.of(FieldKind.IDENTITY), beside)
    groups = list(named.words)
    if not any(groups):
        groups = _named_groups(table, labels, bands)
    again = name_lengths_again(labels, lengths, table)
    key = None if again else _key(labels, [bands, groups, _texts(lengths)])
    others = [one for one in labels if one is not key]
    if key is not None and len(labels) > 1:
        _say_key(key, others, around)
    if lengths:
        around.log.add("second-axis", table.area)
    lost = (*lost_names(key, labels, around), *held.findings, *named.findings)
    lost = (*lost, *size_unnamed(key, table, around))
    lines = [
        replace(_line(number, key, lengths, others), findings=lost) for number in range(table.lines)
    ]
    parted = any(apart(_band(one), _band(other)) for one in set(groups) for other in set(groups))
    told = _band if parted else _band_alone
    found = [
        replace(line, band=_band(band) or told(group), group=group, people=band or "")
        for line, band, group in zip(lines, bands, groups, strict=True)
    ]
    pattern = sum(_mistyped(line) is not None for line in found) > 1
    return _rather_beside([_doubted(line, around, pattern=pattern) for line in found])


def _rather_beside(lines: Sequence[Line]) -> list[Line]:
    """Where lengths alone name the rows and end before them, no row is surely for its length.

    ``Short | 76`` beside ``28 | 71`` down to 36: two tables side by side.
    """
    if any(line.label is not None for line in lines):
        return list(lines)
    asked = next((line.findings[-1:] for line in lines if line.length is None), ())
    return [
        line if line.length is None else replace(line, findings=(*line.findings, *asked))
        for line in lines
    ]


def _mistyped(line: Line) -> str | None:
    """What a label may have been meant to be, None when it is in no doubt."""
    label = look(line.at.text).label if line.at is not None and line.label is not None else None
    return label.doubtful if label is not None else None


def _bands_in_comments(around: Surroundings) -> list[str | None]:
    """A comment that names a band at one size holds for the sizes down to the next such comment.

    One that is like it but for a word nobody knows ends it as well.
    """
    table = around.table
    said = dict(table.sheet.comments)
    said |= {
        (at.row, at.column): at.cell.comment
        for field in table.fields
        for cell in field.cells
        for at in cell
        if at.cell.comment
    }
    texts = tuple(said.values())
    said = {at: text for at, text in said.items() if _band(text) or ends_bands(text, texts)}
    held: str | None = None
    found: list[str | None] = []
    for line in range(table.lines):
        places = {(at.row, at.column) for field in table.fields for at in field.cells[line]}
        held = next((said[place] for place in sorted(places & said.keys())), held)
        found.append(held)
    return found


def _band(text: str | None) -> str | None:
    return look(text).band if text else None


def _band_alone(group: str | None) -> str | None:
    """The band of a group that is called by nothing else: ``Women``, and no ``Lady Zorbo``.

    Where groups name different bands, "Zorbo Women" and "Zorbo Men", each is for its own.
    """
    return _band(group) if group and not own_words(group) else None


def _line(
    number: int, key: Field | None, lengths: Sequence[Field], others: Sequence[Field]
) -> Line:
    at = _at(key, number) if key else None
    length_at = _at(lengths[0], number) if lengths else None
    also = [AlsoLabel(text, "") for text in (_bracketed(at.text) if at else ())]
    for one in others:
        other = _at(one, number)
        if other is not None:
            also.append(AlsoLabel(clean(other.text), one.printed_heading))
    return Line(
        number,
        _name(at.text) if at else None,
        clean(length_at.text) if length_at else None,
        at or length_at,
        tuple(also),
    )


def _name(text: str) -> str:
    """The label of a cell such as ``L``, ``00 (XS)`` or ``L (bis 60 kg)``."""
    one = look(without_word_for_size(text))
    if one.reading.label is not None:
        return one.reading.label
    if one.label is None:
        return clean(text).replace("\n", " ")
    return _BRACKET.sub("", one.label.text) if one.label.also else one.label.text


def _bracketed(text: str) -> tuple[str, ...]:
    one = look(without_word_for_size(text))
    return printed_names(one.label) if one.label and one.reading.label is None else ()


def _at(one: Field, number: int) -> At | None:
    cell = one.cells[number]
    return cell[0] if cell and cell[0].text.strip() else None


def _texts(fields: Sequence[Field]) -> list[str | None]:
    if not fields:
        return []
    return [cell[0].text if cell else None for cell in fields[0].cells]


def _named_groups(
    table: Table, labels: Sequence[Field], bands: Sequence[str | None]
) -> list[str | None]:
    """Models under an unknown word: texts that part the rows where the sizes alone repeat."""
    none: list[str | None] = [None] * table.lines
    if not labels or len(table.of(FieldKind.NOTE)) != 1:
        return none
    names = filled_down(labels[:1], table.lines)
    models = filled_down(table.of(FieldKind.NOTE), table.lines)
    alone = list(zip(names, bands, strict=True))
    together = list(zip(names, bands, models, strict=True))
    repeats = len(set(alone)) < len(alone) and len(set(together)) == len(together)
    several = 1 < len(set(models)) < len(models)
    return list(models) if repeats and several and all(models) else none


def _key(labels: Sequence[Field], beside: Sequence[Sequence[str | None]]) -> Field | None:
    """The first complete column of labels that repeats nothing; else that which repeats least."""
    different: list[int] = []
    for one in labels:
        names = [_named(cell[0].text) if cell else "" for cell in one.cells]
        keys = list(zip(names, *(part for part in beside if part), strict=True))
        if all(names) and len(set(keys)) == len(keys):
            return one
        different.append(len(set(keys)) if all(names) else 0)
    return labels[different.index(max(different))] if labels else None


def _named(text: str) -> str:
    """The name that a cell gives; a dash gives none."""
    return "" if look(text).blank else text.strip().lower()


def _say_key(key: Field, others: Sequence[Field], around: Surroundings) -> None:
    first = key.heads[-1] if key.heads else next(cell[0] for cell in key.cells if cell)
    around.log.add(
        "label-key-chosen",
        around.place(first.row, first.column),
        key=around.table.area,
        heading=key.printed_heading,
        others=", ".join(_known_by(one) for one in others),
    )


def _known_by(field: Field) -> str:
    """The heading of a column of labels; the first of them where none is printed."""
    first = next((cell[0].text.strip() for cell in field.cells if cell), "")
    return field.printed_heading or f"{first} …"


def _doubted(line: Line, around: Surroundings, *, pattern: bool) -> Line:
    """A label that was a date, that may be mistyped, or that fills an uneven part of a grid.

    Doubtful labels that follow a pattern of their own (1X, 2X, 3X) are no slips.
    """
    at = line.at
    if line.label is None and line.length is None:
        return replace(line, findings=(*line.findings, _nameless(line, around)))
    if at is None or line.label is None:
        return line
    place = around.place(at.row, at.column)
    undone = around.dates.get(at.origin)
    found = list(line.findings)
    if undone is not None:
        found.append(_was_a_date(line, place, around))
    meant = _mistyped(line)
    if meant is not None and not pattern:
        near = (Candidate(meant, why="label-near"),)
        found.append(
            around.log.add("label-mistyped", place, candidates=near, text=line.label, first=meant)
        )
    if line.number in around.table.uneven:
        key = f"grid {around.table.area}"
        found.append(around.log.add("label-repeated", place, key=key, case="grid", text=line.label))
    return replace(line, findings=tuple(found))


def _nameless(line: Line, around: Surroundings) -> str:
    """A row of figures whose size is blank: the same as above, or a name that is missing."""
    cells = [
        field.cells[line.number][0] for field in around.table.fields if field.cells[line.number]
    ]
    place = around.place(cells[0].row, cells[0].column) if cells else around.table.area
    key = f"nameless {around.table.area}"
    return around.log.add("blank-inside", place, key=key, case="label")


def _was_a_date(line: Line, place: str, around: Surroundings) -> str:
    undone = around.dates[line.at.origin] if line.at else None
    shown = undone.shown if undone else ""
    label = line.label or ""
    return around.log.add(
        "was-a-date",
        place,
        key=f"labels {around.table.area}",
        candidates=(Candidate(label, why="day-month"), Candidate(shown, why="as-printed")),
        text=shown,
        heading=label,
        first=label,
    )
