"""Cells one after the other without their rows: put back where only one way comes out even.

The rows begin with a text and go on with figures, as many in each; or the labels are numbers and
the headings tell how many. Nothing has to be known of the language: a heading is a text without a
figure. What more than one way explains equally well is left alone.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import is_cell_value, is_named_row, rises, takes_turns
from charts.readers.captured.values import is_blank
from charts.size_labels import LabelKind, read_label

_MOST_COLUMNS: Final = 20
_LONGEST: Final = 40
_LEAD: Final = 40
MOST_LEAD: Final = 2 * _LEAD
"""Lines before the first figure at most: a heading takes up two where its bracket is broken off."""
_AGE: Final = re.compile(r"\D{0,8}\d[\d\s½–-]*(?:\s?[^\W\d_]{1,3}\.?\s?\d+)?\s[^\W\d_]{2,9}\.?")
"""Figures with a word behind them that no vocabulary knows: ``0 a 3 meses``, ``4-6 kuukautta``."""
_NUMBER: Final = re.compile(r"\d{1,3}(?:\s?[-/–]\s?\d{1,3})?")


@dataclass(frozen=True, slots=True)
class _Way:
    """One way to cut the cells: where the first row begins, its width, how many rows."""

    start: int
    width: int
    rows: int
    head: int

    @property
    def covered(self) -> int:
        return self.rows * self.width


def stream_table(cells: Sequence[Line], *, inferred: bool = True) -> LineTable | None:
    """The table that ``cells`` begin with, the headings first; an empty text is an empty cell.

    ``used`` counts the cells. The headings may lack the corner over the sizes.
    """
    lead = _lead(cells)
    if not lead:
        return _under_bare_sizes(cells)
    ways = list(_ways(cells, lead))
    most = max((way.covered for way in ways), default=0)
    best = [way for way in ways if way.covered == most]
    if len(best) != 1:
        return None
    way = best[0]
    end = way.start + way.covered
    rows = [cells[at : at + way.width] for at in range(way.start, end, way.width)]
    head = _head(cells[: way.start], way)
    if head is None:
        return None
    titles = [[one] for one in cells[: way.head] if one.text]
    return LineTable(
        [[LineCell(one.text, one.number) for one in row] for row in (*titles, head, *rows)],
        used=end,
        inferred=inferred,
    )


def may_stream(cells: Sequence[Line]) -> bool:
    """Whether a table may begin with ``cells``; those of its beginning are enough to tell."""
    if is_cell_value(cells[0].text):
        return _bare_sizes(cells) > 0
    return any(_is_figure(one.text) for one in cells[:MOST_LEAD])


def _bare_sizes(cells: Sequence[Line]) -> int:
    """How many numbers that rise as sizes do stand before the first word; 0 for too few."""
    count = next((at for at, one in enumerate(cells[:_LEAD]) if not _is_figure(one.text)), 0)
    sizes = [one.text for one in cells[:count]]
    return count if count >= 3 and all(map(_is_size, sizes)) and rises(sizes) else 0


def _under_bare_sizes(cells: Sequence[Line]) -> LineTable | None:
    """Sizes that are numbers without a word above them, then names with a figure for each."""
    count = _bare_sizes(cells)
    if not count:
        return None
    rows = _rows(cells[count:], count + 1)
    names = [cells[count + row * (count + 1)].text for row in range(rows)]
    end = count + rows * (count + 1)
    over = end < len(cells) and _is_figure(cells[end].text)
    if rows < 2 or over or any(map(_is_figure, names)):
        return None
    table = [cells[at : at + count + 1] for at in range(count, end, count + 1)]
    head = [Line("", cells[0].number), *cells[:count]]
    found = [[LineCell(one.text, one.number) for one in row] for row in (head, *table)]
    return LineTable(found, used=end, inferred=True)


def _lead(cells: Sequence[Line]) -> int:
    """How many cells stand before the first figure; 0 when no table can begin here."""
    for at, one in enumerate(cells[:_LEAD]):
        if _is_figure(one.text):
            return at
        if len(one.text) > _LONGEST or "\t" in one.text or "|" in one.text:
            return 0
    return 0


def _ways(cells: Sequence[Line], lead: int) -> Iterator[_Way]:
    for start in (lead - 1, lead):
        for width in range(2, _MOST_COLUMNS + 1):
            rows = _rows(cells[start:], width)
            head = _head_start(cells[:start], width)
            if head is not None and _enough(cells, start, width, rows, head):
                yield _Way(start, width, rows, head)
            elif start < lead and rows > 1 and _sizes_first(cells[start:], width, rows):
                yield _Way(start + width, width, rows - 1, start)


def _sizes_first(cells: Sequence[Line], width: int, rows: int) -> bool:
    """Whether the first row names the sizes by numbers: ``Größe``, ``36``, ``38``, ``40``."""
    name, *sizes = [one.text for one in cells[:width]]
    labels = [cells[row * width].text for row in range(rows)]
    role = read_heading(name).role
    sure = role is Role.LABEL or (role is Role.UNKNOWN and len(sizes) > 2)
    numbers = all(_NUMBER.fullmatch(one) and _is_size(one) for one in sizes)
    after = rows * width
    ends = after >= len(cells) or not _is_figure(cells[after].text)
    return sure and numbers and ends and rises(sizes) and not any(map(_is_figure, labels))


def _rows(cells: Sequence[Line], width: int) -> int:
    """How many rows of a label and figures stand here, one behind the other."""
    count = 0
    labels: set[str] = set()
    while (count + 1) * width <= len(cells):
        label, *values = [one.text for one in cells[count * width : (count + 1) * width]]
        filled = sum(_is_figure(text) for text in values)
        even = all(_is_figure(text) or is_blank(text) or not text for text in values)
        even = even and not (_is_age(label) and any(map(_is_age, values)))
        if not even or not filled or label in labels or not _names_row(label):
            break
        labels.add(label)
        count += 1
    return count


def _names_row(text: str) -> bool:
    if not text or len(text) > _LONGEST or is_named_row(text):
        return False
    return not _is_figure(text) or _NUMBER.fullmatch(text) is not None or _is_age(text)


def _is_age(text: str) -> bool:
    """Whether ``text`` is an age with the word for years or months: ``2 ans``, ``6-9 mesi``."""
    label = read_label(text)
    return label is not None and label.kind is LabelKind.AGE and label.doubtful is None


def _head_start(before: Sequence[Line], width: int) -> int | None:
    """Where the headings of ``width`` columns begin, with the corner or without it."""
    filled = [at for at, one in enumerate(before) if one.text]
    if len(filled) < width - 1:
        return None
    heads = filled[-(width - 1) :]
    if any(at < filled[-1] and not before[at].text for at in range(heads[0], filled[-1])):
        return None
    corner = heads[0] - 1
    if corner >= 0 and (not before[corner].text or _is_corner(before, corner, heads)):
        return corner
    return heads[0]


def _is_corner(before: Sequence[Line], corner: int, heads: Sequence[int]) -> bool:
    """Whether the text before the headings belongs to them: a word for size, or the only one."""
    role = read_heading(before[corner].text).role
    known = [read_heading(before[at].text).role for at in heads]
    return role is Role.LABEL or (corner == 0 and Role.LABEL not in known)


def _enough(cells: Sequence[Line], start: int, width: int, rows: int, head: int) -> bool:
    """Whether rows and headings prove each other."""
    heads = [one.text for one in cells[head:start] if one.text][-(width - 1) :]
    labels = [cells[start + row * width].text for row in range(rows)]
    sizes_across = all(map(_is_size, heads))
    if any(map(_is_figure, heads)) or (sizes_across and any(map(_is_size, labels))):
        return False
    if rows < (1 if sizes_across and len(heads) > 1 else 2):
        return False
    # Rows that begin with a text end before the next one: no figure may be left over.
    after = start + rows * width
    ends = after >= len(cells) or not _is_figure(cells[after].text)
    numbers = [label for label in labels if _is_figure(label)]
    if numbers:  # numbers for labels: they rise, and letters stand before or behind all of them
        sizes = all(map(_is_size, labels)) and rises(numbers) and not takes_turns(labels)
        aged = any(map(_is_age, labels))
        return sizes and (not aged or (all(map(_is_age, labels)) and ends))
    return ends


def _is_size(text: str) -> bool:
    label = read_label(text)
    return label is not None and label.doubtful is None


@lru_cache(maxsize=8192)
def _is_figure(text: str) -> bool:
    return bool(text) and (is_cell_value(text) or _AGE.fullmatch(text) is not None)


def _head(before: Sequence[Line], way: _Way) -> list[Line] | None:
    """The headings as a row of its own, with an empty corner where none is printed."""
    own = [one for one in before[way.head :] if one.text]
    lacking = way.width - len(own)
    if lacking not in (0, 1):
        return None
    return [*[Line("", before[-1].number)] * lacking, *own]
