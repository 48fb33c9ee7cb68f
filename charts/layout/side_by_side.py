"""Tables side by side: cut where no table row has a cell, or where the sizes are headed again."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations, pairwise

from charts.dimensions import Role
from charts.layout.false_friends import in_proportion, measures_of
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.layout.rows import distinct
from charts.layout.view import At, View
from charts.schema import Kind


def parted(view: View) -> list[View]:
    """The parts of a view between its empty columns, or between repeated size headings."""
    groups = _between_gaps(view)
    if len(groups) < 2:
        groups = _between_repeats(view)
    return [View(view.sheet, view.rows, tuple(group)) for group in groups]


def _between_gaps(view: View) -> list[list[int]]:
    used: set[int] = set()
    for row in view.rows:
        filled = distinct(view.sheet, row, view.columns)
        if len(filled) > 1:
            used |= {column for column in view.columns if view.sheet.text(row, column).strip()}
    groups: list[list[int]] = []
    for before, column in zip((None, *view.columns), view.columns, strict=False):
        if column not in used:
            continue
        if before is not None and before in used and column - before == 1:
            groups[-1].append(column)
        else:
            groups.append([column])
    return groups


def _between_repeats(view: View) -> list[list[int]]:
    """``Size | Chest | Size | Chest``: the same size heading again starts the next table."""
    for row in view.rows:
        starts = _repeated_label_heading(view, row)
        starts = starts if len(starts) > 1 else _repeated_behind_a_corner(view, row)
        if len(starts) > 1:
            return _cut(view.columns, [_with_its_name(view, row, start) for start in starts])
    return [list(view.columns)]


def _with_its_name(view: View, row: int, start: int) -> int:
    """The column of a heading, or of the word for whom in front of it, below which nothing is."""
    at = view.columns.index(start)
    if at == 0:
        return start
    before = view.columns[at - 1]
    filled = [number for number in view.rows if view.sheet.text(number, before).strip()]
    named = len(filled) == 1 and filled[0] <= row
    return before if named and look(view.sheet.text(filled[0], before)).bare_band else start


def _repeated_behind_a_corner(view: View, row: int) -> list[int]:
    """`` | Length | Width | | Length | Width``: the same measures again behind an empty corner.

    Below each corner stand names and no figures, of which none stands in two of the parts.
    """
    heads = [view.sheet.text(row, column).strip().lower() for column in view.columns]
    if not heads or heads[0]:
        return []
    starts = [n for n, head in enumerate(heads) if not head]
    parts = {tuple(heads[a:b]) for a, b in pairwise([*starts, len(heads)])}
    first = next(iter(parts))
    if len(starts) < 2 or len(parts) > 1 or len(first) < 3:
        return []
    if not all(look(head).measures for head in first[1:]):
        return []
    return [view.columns[n] for n in starts] if _other_names(view, row, starts) else []


def _other_names(view: View, row: int, starts: Sequence[int]) -> bool:
    """Whether words that differ stand below ``row`` in every one of the columns."""
    below = [number for number in view.rows if number > row]
    names = [[view.sheet.text(r, view.columns[n]).strip() for r in below] for n in starts]
    texts = [text for column in names for text in column if text]
    named = all(any(column) for column in names) and not any(look(text).value for text in texts)
    return named and len(set(texts)) == len(texts)


def _repeated_label_heading(view: View, row: int) -> list[int]:
    found: dict[str, list[int]] = {}
    for at in distinct(view.sheet, row, view.columns):
        one = look(at.text)
        if one.heading.role is Role.LABEL and not one.value:
            found.setdefault(one.text.lower(), []).append(at.column)
    starts = max(found.values(), key=len, default=[])
    starts = [column for column in starts if not _measures(view, row, starts, column)]
    apart = all(after - before > 1 for before, after in pairwise(starts))
    return starts if apart and starts and starts[0] == _first(view, row) else []


def _measures(view: View, row: int, starts: Sequence[int], column: int) -> bool:
    """Whether a word for size heads a measure here: the second "Taille" over 60-64 is a waist.

    Over single figures it is one where the parts measure nothing twice: they are one table then.
    """
    first = starts[0]
    if column == first or not look(view.sheet.text(row, column)).heading.candidates:
        return False
    below = _own_rows(view, row, column)
    names = {view.sheet.text(number, first).strip() for number in below} - {""}
    texts = {view.sheet.text(number, column).strip() for number in below} - {""}
    spans = [q.kind is Kind.RANGE for text in texts if (q := look(text).reading.quantity)]
    if not spans or names & texts:
        return False
    return all(spans) or (not _same_measures(view, row, starts) and _may_fit(view, row, column))


def _own_rows(view: View, row: int, column: int) -> list[int]:
    """The rows below a heading down to the next word in its column: further tables may follow."""
    found: list[int] = []
    for number in view.rows:
        text = view.sheet.text(number, column).strip()
        if number > row and text and not any(map(str.isdigit, text)):
            break
        if number > row and text:
            found.append(number)
    return found


def _may_fit(view: View, row: int, column: int) -> bool:
    """Whether nothing beside the column says that its figures cannot be measured."""
    below = [number for number in view.rows if number > row]
    fields = {
        one: Field(
            FieldKind.VALUES,
            (),
            look(view.sheet.text(row, one)).heading,
            tuple(_cell(view, number, one) for number in below),
        )
        for one in view.columns
    }
    meant = measures_of(fields[column].heading)
    beside = tuple(fields.values())
    return any(in_proportion(fields[column], one, beside) is not False for one in meant)


def _cell(view: View, row: int, column: int) -> tuple[At, ...]:
    cell = view.sheet.cells.get((row, column))
    return () if cell is None else (At(cell, row, column),)


def _same_measures(view: View, row: int, starts: Sequence[int]) -> bool:
    """Whether a heading stands in more than one of the parts that begin at ``starts``."""
    parts = [
        {view.sheet.text(row, column).strip().lower() for column in part if column not in starts}
        for part in _cut(view.columns, starts)
    ]
    return any(one & other - {""} for one, other in combinations(parts, 2))


def _first(view: View, row: int) -> int:
    return next(column for column in view.columns if view.sheet.text(row, column).strip())


def _cut(columns: Sequence[int], starts: Sequence[int]) -> list[list[int]]:
    edges = [*starts, columns[-1] + 1]
    return [
        [column for column in columns if start <= column < end] for start, end in pairwise(edges)
    ]
