"""Letters for headings, told off in a legend around the table: ``B: Chest (cm)`` for a column B."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.fields import Field, FieldKind, Table
from charts.layout.looks import look
from charts.sheet import Sheet

_ENTRY: Final = re.compile(r"[(\[]?([A-Z])[)\]]?\s*(?:[—–:=.)]|-\s)\s*(\S[^\n]{2,60}?)[.;,]?\s*")
_LETTER: Final = re.compile(r"[(\[]?([A-Z])[)\]]?")
_FEWEST: Final = 2
"""Columns that a legend names; one letter before a word stands in many a text."""


def with_legend(table: Table, sheet: Sheet) -> Table:
    """The table with the measures of its lettered columns, where a legend names all of them.

    Two entries that disagree about a letter make no legend.
    """
    lettered = {letter for field in table.fields if (letter := _letter(field)) is not None}
    if len(lettered) < _FEWEST:
        return table
    around = (at.text for at in (*table.titles, *table.notes))
    legend = _legend((*sheet.context, *around, *sheet.notes))
    if not lettered <= legend.keys():
        return table
    fields = (
        replace(field, heading=legend[letter]) if (letter := _letter(field)) else field
        for field in table.fields
    )
    return replace(table, fields=tuple(fields))


def _letter(field: Field) -> str | None:
    """The letter that alone heads a column of figures."""
    if field.kind is not FieldKind.VALUES or field.heading.dimension is not None:
        return None
    match = _LETTER.fullmatch(field.printed_heading)
    return match[1] if match is not None else None


def _legend(texts: Iterable[str]) -> dict[str, HeadingReading]:
    """What each letter stands for, each on a line of its own; letters said in two ways left out."""
    said: dict[str, set[str]] = {}
    for text in texts:
        for line in text.splitlines():
            match = _ENTRY.fullmatch(line.strip())
            if match is not None:
                said.setdefault(match[1], set()).add(match[2].strip())
    sure = {letter: look(names.pop()).heading for letter, names in said.items() if len(names) == 1}
    return {letter: heading for letter, heading in sure.items() if heading.role is Role.MEASURE}
