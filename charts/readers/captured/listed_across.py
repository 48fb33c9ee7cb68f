"""Sizes listed in one line, and as many figures behind each measure on the lines below.

``Sizes: S, M, L, XL`` over ``Chest: 82-86, 87-91, 92-96, 97-102 cm``; strokes, bars and semicolons
part them as well. A unit behind the last figure alone is that of all.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final, NamedTuple

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.said import MONEY, unbulleted
from charts.readers.captured.size_names import may_measure
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import is_blank, is_value

_SIGNS: Final = (r"\s*;\s*", r"\s*\|\s*", r"\s+/\s+", r",\s+", r"\s*[·•]\s*")
_NAMED: Final = re.compile(r"(?P<name>[^;|/,:=\d]{2,50}?)\s*(?:[:=]\s*|\s)(?P<items>\S.*)")
_COLON: Final = re.compile(r"(?P<name>[^:=]{2,60}?)\s*[:=]\s*(?P<items>\S.*)")
_UNIT: Final = re.compile(
    r"(?P<value>.*\d)\s*(?P<unit>cms?|mm|in(?:ch(?:es)?)?|kgs?|lbs?|[\"”″])\.?"
)
_FEWEST: Final = 2
_LONGEST: Final = 400
_MOST_ROWS: Final = 30


class _Listed(NamedTuple):
    name: str
    items: tuple[str, ...]


def listed_across_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose listed sizes ``lines`` begin with; None where no measure has as many."""
    sizes = _sizes(lines[0].text) if lines else None
    if sizes is None:
        return None
    rows = [[LineCell(text, lines[0].number) for text in (sizes.name, *sizes.items)]]
    used = 1
    for at, line in enumerate(lines[1:_MOST_ROWS], start=2):
        if not line.text.strip():
            continue
        row = _measured(line.text, len(sizes.items))
        if row is None:
            break
        rows.append([LineCell(text, line.number) for text in (row.name, *row.items)])
        used = at
    return LineTable(rows, used) if len(rows) > 1 else None


def _sizes(text: str) -> _Listed | None:
    """A word for sizes and two or more of them between equal signs."""
    text = unbulleted(text).rstrip(" .")
    found = _NAMED.fullmatch(text) if len(text) <= _LONGEST else None
    if found is None or read_heading(found["name"]).role is not Role.LABEL:
        return None
    for sign in _SIGNS:
        items = re.split(sign, found["items"])
        if len(items) >= _FEWEST and len(set(items)) == len(items) and all(map(is_size, items)):
            return _Listed(found["name"], tuple(items))
    return None


def _measured(text: str, count: int) -> _Listed | None:
    """A measure and ``count`` figures between equal signs."""
    text = unbulleted(text).rstrip(" .;,|")
    if len(text) > _LONGEST or MONEY.search(text):
        return None
    found = _COLON.fullmatch(text) or _NAMED.fullmatch(text)
    if found is None or not may_measure(found["name"]):
        return None
    for sign in _SIGNS:
        items = [one.strip() for one in re.split(sign, found["items"])]
        if len(items) == count and all(is_value(one) or is_blank(one) for one in items):
            return _with_unit(found["name"].strip(), items)
    return None


def _with_unit(name: str, items: Sequence[str]) -> _Listed:
    """The unit that only the last figure prints, moved behind the name: it is that of all."""
    last = _UNIT.fullmatch(items[-1])
    if last is None or any(_UNIT.fullmatch(one) for one in items[:-1]):
        return _Listed(name, tuple(items))
    return _Listed(f"{name} ({last['unit']})", (*items[:-1], last["value"]))
