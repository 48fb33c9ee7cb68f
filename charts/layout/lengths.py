"""Lengths in headings: ``Back length short | regular | long``, or ``Height`` over the three.

A size then has a line for each length, as where the lengths stand in a column of their own.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final, NamedTuple

from charts.cell_text import clean
from charts.dimensions import HeadingReading, Role
from charts.layout.fields import Field, FieldKind
from charts.layout.heads import combined
from charts.layout.kinds import Content
from charts.layout.second_names import Group, joined, pairs_of, repeated
from charts.layout.view import At
from charts.schema import Dimension
from charts.size_labels import read_length

_UNIT_BEHIND: Final = re.compile(r"(?<!\s)\s*+[(\[][^()\[\]]*[)\]]\s*$")
_IN_BRACKET: Final = re.compile(r"[(\[]\s*([^\W\d_]{3,})\s*[)\]]")
_UNFIT: Final = frozenset({None, Dimension.OTHER, Dimension.ARM_LENGTH})
"""A long sleeve and a short one are two garments, no two lengths of one size."""
_SHORTEST: Final = 3
"""Letters of a word for a length: S, R and L in a heading are sizes, or letters of a drawing."""


class LengthColumn(NamedTuple):
    """A column for one length: its normal name, the cell that says it, the rest of its heading."""

    length: str
    said: At
    names: tuple[At, ...]


def with_lengths(fields: Sequence[Field]) -> list[Field]:
    """The fields with one line for each size and length, where columns stand for lengths."""
    kinds = {field.kind for field in fields}
    columns = _columns(fields)
    groups = _groups(fields, columns)
    if FieldKind.LABEL not in kinds or FieldKind.LENGTH in kinds or not groups:
        return list(fields)
    said = {column.length: column.said for column in reversed(columns.values())}
    order = list(dict.fromkeys(column.length for column in columns.values()))
    pairs = pairs_of(len(fields[0].cells), order, groups)
    kept = [field for number, field in enumerate(fields) if number not in columns]
    cells = tuple((said[name],) if name else () for _, name in pairs)
    lengths = Field(FieldKind.LENGTH, (), HeadingReading(Role.UNKNOWN), cells)
    found = [repeated(field, pairs) for field in kept]
    measures = [joined(one, pairs, combined(next(iter(one.values())).heads)) for one in groups]
    return [*found, lengths, *measures]


def _columns(fields: Sequence[Field]) -> dict[int, LengthColumn]:
    """The columns of figures whose headings name a length and a measure we know."""
    found: dict[int, LengthColumn] = {}
    for number, field in enumerate(fields):
        content = Content.of(field.cells)
        named = parted(field.heads) if content.most(content.values) else None
        if named is None:
            continue
        left = found.get(number - 1)
        if not named.names and left is not None and left.length != named.length:
            named = named._replace(names=left.names)
        if combined(named.names).dimension not in _UNFIT:
            found[number] = named
    return _plain_ones(fields, found) | found


def _plain_ones(
    fields: Sequence[Field], found: Mapping[int, LengthColumn]
) -> dict[int, LengthColumn]:
    """``Inseam`` beside ``short inseam`` and ``tall inseam``: the measure of the plain size."""
    names = {combined(column.names) for column in found.values()}
    lengths = {column.length for column in found.values()}
    return {
        number: LengthColumn("", field.heads[0], field.heads)
        for number, field in enumerate(fields)
        if number not in found
        and "regular" not in lengths
        and field.kind is FieldKind.VALUES
        and field.heads
        and field.heading in names
    }


def parted(heads: Sequence[At]) -> LengthColumn | None:
    """The heading without its word for a length; None where there is none, or several."""
    found = [(at, said) for at in heads if (said := _length_in(at.text)) is not None]
    if len(found) != 1:
        return None
    at, (word, rest) = found[0]
    length = read_length(word)
    names = tuple(_with_text(one, rest) if one is at else one for one in heads)
    kept = tuple(one for one in names if one.text.strip())
    return LengthColumn(length, _with_text(at, word), kept) if length is not None else None


def _length_in(text: str) -> tuple[str, str] | None:
    """The word for a length at either end of a heading or in brackets, and what else it says."""
    plain = clean(text).replace("\n", " ")
    bracket = _IN_BRACKET.search(plain)
    if bracket is not None and read_length(bracket[1]) is not None:
        return bracket[1], " ".join((plain[: bracket.start()] + plain[bracket.end() :]).split())
    unit = _UNIT_BEHIND.search(plain)
    words = (plain[: unit.start()] if unit else plain).split()
    for word in (words[-1:], words[:1]):
        if word and len(word[0]) >= _SHORTEST and read_length(word[0]) is not None:
            rest = [*(words[:-1] if word == words[-1:] else words[1:]), unit[0] if unit else ""]
            return word[0], " ".join(rest).strip() if len(words) > 1 else ""
    return None


def _groups(fields: Sequence[Field], columns: Mapping[int, LengthColumn]) -> list[Group]:
    found: dict[HeadingReading, Group] = {}
    for number, column in columns.items():
        group = found.setdefault(combined(column.names), {})
        if column.length in group:
            return []
        group[column.length] = replace(fields[number], heads=column.names)
    groups = list(found.values())
    return groups if all(len(group) > 1 for group in groups) else []


def _with_text(at: At, text: str) -> At:
    return replace(at, cell=replace(at.cell, text=text))
