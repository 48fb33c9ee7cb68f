"""A row of a measure in which a cell or two hold no figure: ``Waist (cm) 66-70 - 76-80``.

The row has as many pieces as there are sizes when a dash, ``n/a``, ``on request`` or a figure with
a mark counts as one; a cell left blank is found by the columns that the sizes stand in.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.value_pattern import VALUE
from charts.readers.captured.value_runs import Named
from charts.readers.captured.values import is_blank, is_value

_FIELD: Final = re.compile(r"\S+(?: \S+)*")
_MARK: Final = re.compile(r"[*†‡¹²³]+(?=\s|\Z)")
_FIGURE: Final = re.compile(r"\d{2}")
_SPACED: Final = re.compile(r"\d [-‐‑‒–—―−] (?=\d)")
_MOST_NAME_WORDS: Final = 8
_LONGEST: Final = 400
_LONGEST_ODD: Final = 16
_MOST_ODD_WORDS: Final = 2
_FEWEST: Final = 2
"""Figures beside which a piece that no list knows may be a cell of the same row."""
_TAB: Final = 8


def row_with_odd_cells(text: str, count: int, head: str) -> Named | None:
    """The name and ``count`` cells of ``text``, below the line ``head`` of sizes; else None."""
    if len(text) > _LONGEST or _FIGURE.search(text) is None:
        return None
    name = next((one for one in _names(text) if _is_measure(one)), None)
    if name is None:
        return None
    rest = text.strip()[len(name) :].lstrip(" \t:")
    for cells in (_FIELD.findall(rest), rest.split(), _pieces(rest)):
        if len(cells) == count and _fit(cells):
            return Named(name.rstrip(" :"), tuple(cells))
    cells = _below(text, head)
    fit = len(cells) == count + 1 and _fit([one for one in cells[1:] if one])
    return Named(cells[0], tuple(cells[1:])) if fit and cells[0] == name else None


def may_be_range(text: str, cells: Sequence[str]) -> bool:
    """Whether a dash that was read as a cell without a figure could join the two beside it."""
    inside = sum(len(_SPACED.findall(cell)) for cell in cells)
    return len(_SPACED.findall(text)) > inside


def _names(text: str) -> Iterator[str]:
    """The beginnings of a line that could be its name, the longest first."""
    ends = [one.end() for one in re.finditer(r"\S+", text.strip())][:_MOST_NAME_WORDS]
    return (text.strip()[:end] for end in reversed(ends[:-1]))


def _is_measure(name: str) -> bool:
    ended = (name[-1].isalnum() or name[-1] in ").]:") and not is_blank(name.rpartition(" ")[2])
    return ended and VALUE.search(name) is None and read_heading(name).role is Role.MEASURE


def _is_limit(word: str, limited: str) -> bool:
    return any(map(str.isalpha, word)) and not is_blank(word) and is_value(limited)


def _pieces(text: str) -> list[str]:
    """The values of a line, and the words between two of them as one piece."""
    found: list[str] = []
    at = 0
    for one in VALUE.finditer(text):
        if one.start() < at or (one.start() and not text[one.start() - 1].isspace()):
            continue
        before = text[at : one.start()].strip()
        limited = f"{before} {one[0]}"  # "max. 71" is one value
        found += [limited] if _is_limit(before, limited) else [before, one[0]]
        at = one.end()
    return [piece for piece in (*found, text[at:].strip()) if piece]


def _fit(cells: Sequence[str]) -> bool:
    """Whether the cells are figures but for what stands for one where none is given."""
    figures = [is_value(_MARK.sub("", cell)) for cell in cells]
    odd = [cell for cell, one in zip(cells, figures, strict=True) if not one]
    unknown = [cell for cell in odd if not is_blank(cell) and cell != "?"]
    if not any(figures) or (unknown and sum(figures) < _FEWEST):
        return False
    return len(unknown) <= 1 and all(map(_is_short, unknown))


def _is_short(text: str) -> bool:
    return len(text) <= _LONGEST_ODD and text.count(" ") < _MOST_ODD_WORDS


def _below(text: str, head: str) -> list[str]:
    """The fields of a line in the columns of the sizes' line; none where one stands elsewhere."""
    columns = [(one.start(), one.end()) for one in _FIELD.finditer(head.expandtabs(_TAB))]
    cells = [""] * len(columns)
    for one in _FIELD.finditer(text.expandtabs(_TAB)):
        under = [at for at, span in enumerate(columns) if _lined_up(span, (one.start(), one.end()))]
        if len(under) != 1 or cells[under[0]]:
            return []
        cells[under[0]] = one[0]
    return cells


def _lined_up(head: tuple[int, int], cell: tuple[int, int]) -> bool:
    return head[0] == cell[0] or head[1] == cell[1]
