"""Letters for headings, told off in a legend around the table: ``B: Chest (cm)`` for a column B."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.false_friends import measures_of
from charts.layout.fields import Field, FieldKind, Table
from charts.layout.legend_lines import entries_below_each_other, entries_in_a_row
from charts.layout.looks import look
from charts.sheet import Sheet

_ENTRY: Final = re.compile(r"[(\[]?([A-Z])[)\]]?\s*(?:[—–:=.)]|-\s)\s*(\S[^\n]{2,60}?)[.;,]?\s*")
_LETTER: Final = re.compile(r"[(\[]?([A-Z])[)\]]?(?:\s*[(\[]?(?:cm|mm|in(?:ch(?:es)?)?)[)\]]?)?")
_ENDS: Final = frozenset({Role.LOW_END, Role.HIGH_END})
_UNNAMED: Final = HeadingReading(Role.UNKNOWN)
_FEWEST: Final = 2
"""Columns that a legend names; one letter before a word stands in many a text."""


def with_legends(tables: Sequence[Table], sheet: Sheet) -> list[Table]:
    """The tables, each with the measures that a legend around it tells for its letters.

    Above a table that has a name for whom it is, and no words of its own, the legend of the table
    before it holds for the same letters.
    """
    found: list[Table] = []
    above: tuple[Table, ...] = ()
    for table in tables:
        goes_on = bool(above) and _letters(table) == _letters(above[0]) and _only_people(table)
        above = (*above, table) if goes_on else (table,)
        found.append(_with_legend(table, above, sheet))
    return found


def _only_people(table: Table) -> bool:
    return all(look(at.text).band is not None for at in table.titles) and not table.notes


def _letters(table: Table) -> frozenset[str]:
    """The letters that head its columns, one each."""
    letters = (_letter(field) for field in table.fields)
    return frozenset(letter for letter in letters if letter is not None)


def _with_legend(table: Table, above: Sequence[Table], sheet: Sheet) -> Table:
    """The table with the measures of its lettered columns, where a legend names all of them.

    Two entries that disagree about a letter make no legend. An entry in words that nobody knows
    leaves its column to be asked about. Among other letters an A is never the word for "to".
    """
    lettered = _letters(table)
    if len(lettered) < _FEWEST:
        return table
    around = (at.text for one in above for at in (*one.titles, *one.notes))
    legend = _legend((*sheet.context, *around, *sheet.notes))
    known = {letter for letter in lettered & legend.keys() if _names(legend[letter])}
    if not known or not lettered <= legend.keys():
        legend = {}
    return replace(table, fields=tuple(_named(field, legend) for field in table.fields))


def _named(field: Field, legend: dict[str, HeadingReading]) -> Field:
    """A lettered column with what the legend says of its letter; an end of a range it is not.

    Where heading and legend print two units, a person has to say what stands there.
    """
    letter, own = _letter(field), field.heading
    if letter is None or (not legend and own.role not in _ENDS):
        return field
    said = legend.get(letter, _UNNAMED)
    if None not in (said.unit, own.unit) and said.unit is not own.unit:
        said = _UNNAMED
    return replace(field, heading=replace(said, unit=own.unit or said.unit))


def _names(heading: HeadingReading) -> bool:
    return heading.role is Role.MEASURE


def _letter(field: Field) -> str | None:
    """The letter that alone heads a column of figures."""
    if field.kind is not FieldKind.VALUES or field.heading.dimension is not None:
        return None
    match = _LETTER.fullmatch(field.printed_heading)
    return match[1] if match is not None else None


def _entries(line: str) -> list[tuple[str, str]]:
    """The entries of one line: one, or several as in ``A = Chest, B = Waist``."""
    listed = entries_in_a_row(line)
    if listed:
        return listed
    match = _ENTRY.fullmatch(line)
    return [(match[1], match[2].strip())] if match is not None else []


def _legend(texts: Iterable[str]) -> dict[str, HeadingReading]:
    """What each letter stands for; letters said in two ways left out."""
    said: dict[str, set[str]] = {}
    lines = [line.strip() for text in texts for line in text.splitlines()]
    entries = [entry for line in lines for entry in _entries(line)]
    for letter, name in (*entries, *entries_below_each_other(lines)):
        said.setdefault(letter, set()).add(name)
    return {letter: _meant(names.pop()) for letter, names in said.items() if len(names) == 1}


def _meant(name: str) -> HeadingReading:
    """What a name measures: "Taille" is no size here; the figures tell a waist from a height."""
    heading = look(name).heading
    meant = measures_of(heading)
    if heading.role is Role.MEASURE or not meant:
        return heading
    several = tuple((Role.MEASURE, dimension) for dimension in meant)
    return replace(
        heading,
        role=Role.MEASURE,
        dimension=meant[0],
        candidates=several if len(several) > 1 else (),
    )
