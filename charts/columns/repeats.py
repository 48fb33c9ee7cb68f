"""Sizes that stand twice: the same row printed again is dropped and said, another one is asked."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.columns.lines import Line
from charts.columns.values import Filled
from charts.columns.words import Surroundings

_Figures = tuple[object, ...]
_LETTERS: Final = re.compile(r"(?:([2-9])X|(X{2,9}))([SL])")


def without_repeats(
    lines: Sequence[Line], columns: Sequence[Filled], around: Surroundings
) -> list[Line]:
    """The lines with identical rows dropped, and a question at sizes listed with other figures."""
    kept: list[Line] = []
    firsts: dict[tuple[str | None, ...], list[Line]] = {}
    for line in lines:
        name = (_spelt_out(line.label), line.length, line.band, line.group)
        same = firsts.setdefault(name, []) if line.label is not None or line.length else []
        figures = _figures(line, columns)
        if any(_figures(one, columns) == figures for one in same):
            _say(line, "row-repeated", around)
            continue
        same.append(line)
        kept.append(line)
    twice = [line for same in firsts.values() if len(same) > 1 for line in same]
    names = {name for line in twice for name in _beside(line)}
    asked = {line.number for line in twice}
    asked |= {line.number for line in kept if not names.isdisjoint(_beside(line))}
    return [_asked(line, asked, around) for line in kept]


def _beside(line: Line) -> list[tuple[str | None, ...]]:
    """What a size is called as well. Under one name 46 and 52 may be the ends of a single size.

    They are where the one of them is a size under another name too: then both are asked about.
    """
    return [(one.label, one.heading, line.band, line.group) for one in line.also]


def _spelt_out(label: str | None) -> str | None:
    """One spelling for each number of X: XXL and 2XL are the same size."""
    match = _LETTERS.fullmatch(label) if label is not None else None
    return f"{match[1] or len(match[2])}X{match[3]}" if match else label


def _figures(line: Line, columns: Sequence[Filled]) -> _Figures:
    found: list[object] = []
    for one in columns:
        value = one.ranges.get(line.number)
        found.append((value.low, value.high, value.value, value.kind) if value else None)
    return tuple(found)


def _say(line: Line, code: str, around: Surroundings, key: str | None = None) -> str:
    place = around.place(line.at.row, line.at.column) if line.at else around.table.area
    return around.log.add(code, place, key=key, text=line.label or line.length or "")


def _asked(line: Line, asked: set[int], around: Surroundings) -> Line:
    if line.number not in asked:
        return line
    ident = _say(line, "label-repeated", around, around.table.area)
    return replace(line, findings=(*line.findings, ident))
