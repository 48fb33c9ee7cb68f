"""Rows under one heading line, all in single blanks, and what their cells and headings share.

``Size Chest Price`` over ``M 88-94 £42.00``; ``Size Chest (cm) Role`` over ``M 88-94 lead rider``.
A row counts by its cells, the heading is shared out over as many columns by its words and by what
they hold. A blank cell is placed by the rows around it, and a person compares the whole then.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from charts.dimensions import Role, read_band, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.rows import LIST_ITEM
from charts.readers.captured.shared_out.blanks import with_blanks
from charts.readers.captured.shared_out.columns import columns_of
from charts.readers.captured.shared_out.fitting import Heads, shared_heads
from charts.readers.captured.shared_out.named_bands import banded_names
from charts.readers.captured.shared_out.tokens import Row, row_of
from charts.readers.captured.sizes_last import or_sizes_last
from charts.readers.captured.value_runs import is_size, rises
from charts.readers.captured.values import is_value
from charts.size_labels import LabelKind, read_label

_MOST_ROWS: Final = 60
_FEWEST_ROWS: Final = 2
_MOST_COLUMNS: Final = 14
_LONGEST_HEAD: Final = 300
_LONGEST_BAND: Final = 40
_UNFIT: Final = re.compile(r"[\t|;]|\S\s{2,}\S")
_LONGEST_NAME: Final = 30
_STOPS: Final = (".", "!", "?", ":")


@dataclass(frozen=True, slots=True)
class _Body:
    """The rows below a heading, with the bands between them and how many lines they take up."""

    rows: tuple[Row, ...]
    bands: tuple[Line, ...]
    used: int
    cut: bool


def shared_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose heading line ``lines`` begin with; None where its parts do not come out."""
    head = lines[0].text.strip() if len(lines) > _FEWEST_ROWS else ""
    if not _may_head(head):
        return None
    body = _body(lines)
    body = replace(body, rows=_named_whole(body.rows))
    if len(body.rows) < _FEWEST_ROWS:
        return None
    width = _width(body.rows)
    full = [row for row in body.rows if len(row.parts) == width]
    columns = columns_of(full) if len(full) >= _FEWEST_ROWS else None
    heads = shared_heads(head, columns) if columns is not None else None
    if heads is None or columns is None or not _name_sizes(body.rows, heads):
        return None
    placed = with_blanks(body.rows, columns)
    if None in placed:
        return None
    sure = heads.sure and len(full) == len(body.rows) and not body.cut
    sure = sure and all(one.of(row.parts[at]) for row in full for at, one in enumerate(columns))
    rows = [row for row in placed if row is not None]
    cells = _laid(lines[0], heads, rows, body.bands)
    return or_sizes_last(LineTable(cells, body.used, inferred=not sure))


def is_shared_row(line: Line) -> bool:
    """Whether a line is a name and figures in single blanks."""
    text = line.text.strip()
    return _may_be_row(text) and row_of(text, line.number) is not None


def _may_head(text: str) -> bool:
    """Whether a line can be headings: words with no figures but in brackets, and no sentence."""
    if not text or len(text) > _LONGEST_HEAD or _UNFIT.search(text):
        return False
    first, *others = text.split()
    sized = is_size(first) and read_heading(first).role is not Role.LABEL
    return bool(others) and not sized and not is_value(first) and not text.endswith(_STOPS)


def _body(lines: Sequence[Line]) -> _Body:
    rows: list[Row] = []
    bands: list[Line] = []
    used, cut, parted = 1, False, False
    for at, line in enumerate(lines[1 : _MOST_ROWS + 1], start=1):
        text = line.text.strip()
        row = row_of(text, line.number) if _may_be_row(text) else None
        if not text and rows and not parted:
            parted = True
        elif row is not None and _goes_on(rows, row, parted=parted):
            rows.append(row)
            used, parted = at + 1, False
        elif _is_band(text) and at + 1 < len(lines) and row_of(lines[at + 1].text, 0) is not None:
            bands.append(line)
        else:
            cut = row is not None and not parted
            break
    kept = tuple(band for band in bands if rows and band.number < rows[-1].line)
    return _Body(tuple(rows), kept, used, cut)


def _named_whole(rows: tuple[Row, ...]) -> tuple[Row, ...]:
    """The rows, a bracket behind most of their names as a part of these: ``S (38-39) 93-97``."""
    behind = sum(row.parts[0].text.startswith("(") for row in rows)
    if behind * 2 <= len(rows):
        return rows
    return tuple(
        replace(row, name=f"{row.name} {row.parts[0].text}", parts=row.parts[1:])
        if row.parts[0].text.startswith("(")
        else row
        for row in rows
    )


def _may_be_row(text: str) -> bool:
    return _UNFIT.search(text) is None and LIST_ITEM.match(text) is None


def _goes_on(rows: Sequence[Row], row: Row, *, parted: bool) -> bool:
    """Whether a row belongs to those before it; behind an empty line only one that is like them."""
    if len(row.parts) > _MOST_COLUMNS:
        return False
    told = row.name.count(" ") < _FEWEST_ROWS or read_label(row.name) is not None
    if rows and not told and len(row.parts) < len(rows[-1].parts):
        return False  # "Delivery takes only 30-40 days"
    return not parted or row.kinds == rows[-1].kinds


def _is_band(text: str) -> bool:
    short = 0 < len(text) <= _LONGEST_BAND and not any(map(str.isdigit, text))
    return short and read_band(text) is not None and read_heading(text).role is not Role.MEASURE


def _width(rows: Sequence[Row]) -> int:
    """How many cells the rows have: as most of them, or the most of any two."""
    counts = Counter(len(row.parts) for row in rows)
    return max((width for width, often in counts.items() if often >= _FEWEST_ROWS), default=0)


def _name_sizes(rows: Sequence[Row], heads: Heads) -> bool:
    """Whether what stands in front of the rows can be names of sizes, each its own."""
    names = [row.name for row in rows]
    known = [label for name in names if (label := read_label(name)) is not None]
    told = sum(label.kind is not LabelKind.WORD and label.doubtful is None for label in known)
    named = any(read_heading(one).role is Role.LABEL for one in _ends(heads.texts[0]))
    if told * 2 < len(names) and not named:
        return False
    if any(map(_is_measure, names)):
        return False
    short = all(len(name) <= _LONGEST_NAME and name[0].isalnum() for name in names)
    apart = _tell_apart(names, rows) or _tell_apart(banded_names(names), rows)
    rising = rises(list(dict.fromkeys(filter(is_value, names))))
    return short and apart and rising


def _ends(head: str) -> tuple[str, str]:
    """A heading and its last word: ``Model Size`` stands over two names."""
    return head, head.rpartition(" ")[2]


def _tell_apart(names: Sequence[object], rows: Sequence[Row]) -> bool:
    """Whether no name stands before two rows that differ."""
    lines = {(name, row.parts) for name, row in zip(names, rows, strict=True)}
    return len(lines) == len(set(names))


def _is_measure(name: str) -> bool:
    return read_label(name) is None and read_heading(name).role is Role.MEASURE


def _laid(
    head: Line, heads: Heads, rows: Sequence[Row], bands: Sequence[Line]
) -> list[list[LineCell]]:
    cells = {head.number: [LineCell(text, head.number) for text in heads.texts]}
    cells |= {band.number: [LineCell(band.text.strip(), band.number)] for band in bands}
    for row in rows:
        texts = (row.name, *(part.text for part in row.parts))
        cells[row.line] = [LineCell(text, row.line) for text in texts]
    return [cells[number] for number in sorted(cells)]
