"""A whole table in one line: ``Size chart (length / chest, inches): XS 26½/19 · S 27½/20``.

The bracket, or the words before the colon, name what stands between the strokes; every size must
have as many figures as there are names.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, find_units, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.values import is_value
from charts.size_labels import read_label

_LISTED: Final = re.compile(r"(?P<title>[^:]{3,120}?)\s*:\s*(?P<items>.{8,})")
_BRACKET: Final = re.compile(r"\(([^()]*)\)")
_ITEM_END: Final = re.compile(r"\s*[·•;|]\s*|,\s+")
_STROKE: Final = re.compile(r"\s*/\s*|\s+[x×]\s+")
_ITEM: Final = re.compile(
    r"(?P<label>[^\s:=(]+(?: [^\W\d_]+)?)\s*(?:[:=]?\s+|=)(?P<values>[\d½¼¾<>].*)"
)
_IN_BRACKET: Final = re.compile(r"([^()]+)\(([^()]+)\)")
_LONGEST: Final = 2_000


def listed_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that the first line is; None when its sizes and names do not come out even."""
    if not lines or len(lines[0].text) > _LONGEST:
        return None
    found = _LISTED.fullmatch(lines[0].text.strip().rstrip("."))
    names = _names(found["title"]) if found is not None else []
    if found is None or not names:
        return None
    parts = [part for part in _ITEM_END.split(found["items"]) if part.strip()]
    if len(names) == 1 and not all(map(_IN_BRACKET.fullmatch, parts)):
        return None  # "Chest: S 84, M 90" is a sentence like others
    items = [item for part in parts if (item := _item(part.strip(), len(names))) is not None]
    if len(items) < 2 or len(items) < len(parts):
        return None
    number = lines[0].number
    rows = [[found["title"]], ["", *names], *items]
    return LineTable([[LineCell(text, number) for text in row] for row in rows], used=1)


def _names(title: str) -> list[str]:
    """The measures that a bracket or the title lists between strokes, without a unit behind."""
    bracket = _BRACKET.search(title)
    said = bracket[1] if bracket is not None and "/" in bracket[1] else _BRACKET.sub("", title)
    head, comma, tail = said.rpartition(",")
    names = _STROKE.split(head if comma and find_units(tail) else said)
    named = any(read_heading(name).role is Role.MEASURE for name in names)
    return [name.strip() for name in names] if named and all(map(str.strip, names)) else []


def _item(text: str, count: int) -> list[str] | None:
    bracketed = _IN_BRACKET.fullmatch(text)  # "XS (78-82 cm)"
    found = _ITEM.fullmatch(f"{bracketed[1].strip()} {bracketed[2]}" if bracketed else text)
    label = read_label(found["label"]) if found is not None else None
    if found is None or label is None:
        return None
    values = _STROKE.split(found["values"].strip()) if count > 1 else [found["values"].strip()]
    even = len(values) == count and all(map(is_value, values))
    return [found["label"], *values] if even else None
