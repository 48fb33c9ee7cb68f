"""Cells that repeat the heading of their column: ``Chest (cm)`` over ``Chest (cm): 82-86``.

Pages made for small screens write it into each cell and show it only where the table is narrow.
What repeats the heading is no part of the value or of the size.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from functools import lru_cache
from typing import Final

from charts.dimensions import find_units
from charts.layout.looks import look
from charts.sheet import Cell, Sheet

_END: Final = re.compile(r"(?<!\s)\s*+[:：]?\s*+\Z")
_BRACKET: Final = re.compile(r"(?<!\s)\s*+[(\[][^()\[\]]*[)\]]\Z")
_BEHIND: Final = re.compile(r"\s*+(?:[(\[]([^()\[\]]{1,8})[)\]])?\s*+[:：=]?\s*")
_LONGEST: Final = 80
Heads = Mapping[int, re.Pattern[str]]


def heads_told_once(sheet: Sheet) -> Sheet:
    """The sheet without the headings that its cells repeat; as it is where none do."""
    cells: dict[tuple[int, int], Cell] = {}
    heads: Heads = {}
    changed = False
    for row in sheet.filled_rows:
        own = list(sheet.row(row))
        rests = _without_heads(own, heads)
        if rests is None:
            heads = _heads(own) or heads
            cells |= {(row, column): cell for column, cell in own}
            continue
        changed = True
        for (column, cell), rest in zip(own, rests, strict=True):
            if rest:
                cells[row, column] = replace(cell, text=rest) if rest != cell.text else cell
    return replace(sheet, cells=cells) if changed else sheet


def _heads(row: Sequence[tuple[int, Cell]]) -> Heads:
    """What the cells of a row begin with if they repeat it, by column; empty for no headings."""
    found = {}
    for column, cell in row:
        ways = _repeated(cell.text)
        if ways is not None:
            found[column] = ways
    measured = any(look(cell.text).measures for column, cell in row if column in found)
    if len(found) < 2 or not measured:
        return {}
    return {column: _begins(ways) for column, ways in found.items()}


@lru_cache(maxsize=4096)
def _repeated(text: str) -> tuple[str, ...] | None:
    """The ways in which a cell repeats a heading; None for what is none."""
    name = _END.sub("", text)
    if not any(map(str.isalpha, name)) or len(name) > _LONGEST or look(text).value:
        return None
    return tuple(way for way in (name, _BRACKET.sub("", name)) if way.strip())


@lru_cache(maxsize=4096)
def _begins(ways: tuple[str, ...]) -> re.Pattern[str]:
    """What a cell begins with that repeats a heading in one of these ways."""
    return re.compile("|".join(map(_spelt, ways)), re.IGNORECASE)


def _spelt(name: str) -> str:
    """The words of a name with any white space between them, and no word that only begins so.

    A capital or a figure right behind it begins the next thing: ``SizeS``, as a browser shows it.
    """
    last = name.rstrip()[-1:]
    inside = r"(?-i:(?![a-zß-öø-ÿ]))" if last.isalpha() else r"(?!\d)" if last.isdigit() else ""
    return r"\s+".join(map(re.escape, name.split())) + inside


def _without_heads(row: Sequence[tuple[int, Cell]], heads: Heads) -> list[str] | None:
    """The texts of a row without their headings; None where they do not all repeat them.

    Only the first cell, the name of the size, may stand without. A cell of nothing but its
    heading is blank; a row without figures is one of headings again, in another unit perhaps.
    """
    if not heads:
        return None
    rests: list[str] = []
    for number, (column, cell) in enumerate(row):
        found = heads[column].match(cell.text.strip()) if column in heads else None
        if found is None and number:
            return None
        rests.append(cell.text if found is None else _behind(cell.text.strip(), found.end()))
    figures = any(character.isdigit() for rest in rests[1:] for character in rest)
    return rests if figures else None


def _behind(text: str, end: int) -> str:
    """What stands behind a heading; a unit in brackets that the heading lacks goes with it."""
    found = _BEHIND.match(text, end)
    bracket, rest = (found[1], text[found.end() :]) if found is not None else (None, "")
    if bracket is None:
        return rest
    return f"{rest} {bracket}" if rest and find_units(bracket) else text[end:].strip(" :：=")
