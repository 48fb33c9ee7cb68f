"""One cell a line, a blank line between the rows: the blank lines tell what belongs together.

Nothing has to be known of the cells: a colour, a price or a second name of the size stands in its
place. Lines in front of the headings are titles, a line alone between rows stands for itself. Where
rows have unlike many cells one was left out somewhere, and nothing is put together here.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import lru_cache
from itertools import islice
from typing import Final

from charts.dimensions import Role, read_band, read_heading
from charts.readers.captured.group_heads import Headings, headings_over
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.size_names import may_measure
from charts.readers.captured.value_runs import is_cell_value
from charts.readers.captured.values import is_blank
from charts.size_labels import read_label

_FEWEST_ROWS: Final = 2
_FEWEST_CELLS: Final = 2
_MOST_CELLS: Final = 24
_MOST_TITLES: Final = 4
_GROUPS_OF_HEADS: Final = 5
"""Two levels of headings, a lone word and two rows."""
_MOST_LINES: Final = 600
_LONGEST: Final = 80
_LONGEST_HEAD: Final = 40

Group = tuple[Line, ...]


def row_group_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that groups of lines at the beginning make; None where they are unlike long.

    The first line has to be the first of its group.
    """
    first = lines[:_MOST_CELLS]
    if not lines or not lines[0].text.strip() or all(one.text.strip() for one in first):
        return None
    if not _may_begin(lines):
        return None
    groups = list(_groups(lines[:_MOST_LINES]))
    start = next((at for at, group in enumerate(groups) if at and _holds_figures(group)), 0)
    heads = [group for group in groups[:start] if len(group) > 1]
    if not heads and start:  # sizes that are numbers stand over the figures
        heads, start = [groups[start]], start + 1
    width = next((len(group) for group in groups[start:] if len(group) > 1), 0)
    rows = _rows(groups[start:], width) if width else None
    if rows is None or start - len(heads) > _MOST_TITLES:
        return None
    found = headings_over(heads, width)
    if found is None or not _are_rows(found, rows):
        return None
    under = next((at for at, group in enumerate(groups) if group is heads[-1]), start)
    titles: list[Group] = [group for group in groups[:under] if len(group) == 1]
    rows = [*groups[under + 1 : start], *rows]
    while _is_unit(rows[0]):  # it parts no sizes from what they measure
        titles.append(rows.pop(0))
    table = [*titles, *((one,) for one in found.titles), *found.rows, *rows]
    last = rows[-1][-1].number
    used = next(at for at, line in enumerate(lines, start=1) if line.number == last)
    cells = [[LineCell(one.text, one.number) for one in row] for row in table]
    return LineTable(cells, used, inferred=not found.sure)


def _may_begin(lines: Sequence[Line]) -> bool:
    """Whether figures come within the first groups, and two rows of one length; cheap."""
    groups = list(islice(_groups(lines[:_MOST_LINES]), _MOST_TITLES + _GROUPS_OF_HEADS))
    start = next((at for at, group in enumerate(groups) if at and _holds_figures(group)), 0)
    widths = [len(group) for group in groups[start:] if len(group) > 1]
    return bool(start) and len(widths) >= _FEWEST_ROWS and len({*widths[-_FEWEST_ROWS:]}) == 1


def begins_group(lines: Sequence[Line], at: int) -> bool:
    """Whether a line is the first of its group, and no names stand above it that no table took.

    Of headings in two groups the upper ones must not be lost.
    """
    if not at:
        return True
    if lines[at - 1].text.strip():
        return False
    above: list[str] = []
    for line in reversed(lines[max(0, at - _MOST_CELLS) : at]):
        if line.text.strip():
            above.append(line.text.strip())
        elif above:
            break
    return len(above) < _FEWEST_CELLS or not all(map(_may_head, above))


@lru_cache(maxsize=4096)
def _may_head(text: str) -> bool:
    named = read_heading(text).role is not Role.UNKNOWN or read_band(text) is not None
    return named and len(text) <= _LONGEST_HEAD and not is_cell_value(text)


def _groups(lines: Sequence[Line]) -> Iterator[Group]:
    """The lines between blank lines."""
    here: list[Line] = []
    for line in lines:
        text = line.text.strip()
        if text:
            here.append(line if text == line.text else replace(line, text=text))
        elif here:
            yield tuple(here)
            here = []
    if here:
        yield tuple(here)


def _is_lone_word(group: Group) -> bool:
    return len(group) == 1 and not is_cell_value(group[0].text)


def _is_unit(group: Group) -> bool:
    return len(group) == 1 and read_heading(group[0].text).role is Role.UNIT


def _holds_figures(group: Group) -> bool:
    return any(is_cell_value(one.text) for one in group)


def _rows(groups: Sequence[Group], width: int) -> list[Group] | None:
    """The rows of one table, lone lines between them; None where some row lost a cell."""
    rows: list[Group] = []
    lone: list[Group] = []
    for group in groups:
        if _is_lone_word(group):
            lone.append(group)
        elif len(group) == width and not (_heads(group) and (lone or _measures_across(group))):
            rows += [*lone, group]
            lone = []
        else:
            broken = len(group) < width and _holds_figures(group) and not lone
            return None if broken else rows
    return rows


def _heads(group: Group) -> bool:
    """Whether a group is the headings of a table, and no row: names or sizes, and no figure."""
    texts = [one.text for one in group]
    if read_heading(texts[0]).role is Role.LABEL and None not in map(read_label, texts[1:]):
        return True
    named = any(read_heading(text).role in (Role.MEASURE, Role.LABEL) for text in texts)
    return not _holds_figures(group) and (named or None not in map(read_label, texts))


def _measures_across(group: Group) -> bool:
    return any(_is_measure(one.text) for one in group[1:])


def _are_rows(heads: Headings, rows: Sequence[Group]) -> bool:
    """Whether groups are rows of figures behind a name, and measures are named with them."""
    whole = [row for row in rows if len(row) > 1]
    if len(whole) < _FEWEST_ROWS or not _FEWEST_CELLS <= len(whole[0]) <= _MOST_CELLS:
        return False
    cells = [one.text for row in whole for one in row[1:]]
    figures = sum(is_cell_value(text) or is_blank(text) for text in cells)
    firsts = [row[0].text for row in whole]
    if 2 * figures < len(cells) or any(len(text) > _LONGEST for text in (*cells, *firsts)):
        return False
    across = any(map(may_measure, firsts))
    if across == any(_is_measure(one.text) for head in heads.rows for one in head[1:]):
        return False
    second = any(read_heading(one.text).role is Role.LABEL for one in heads.rows[-1][1:])
    return across or second or all(map(_names_size, firsts))


def _is_measure(text: str) -> bool:
    return read_heading(text).role is Role.MEASURE


def _names_size(text: str) -> bool:
    return read_label(text) is not None or not is_cell_value(text)
