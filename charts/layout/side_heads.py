"""``Body | | Garment |`` over the measures, where no merged cell says how far each word reaches.

A word for a side of the table holds up to the next one. Only where both sides are named in one
row: a word alone may be a heading of its own column.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from charts.headings.sides import side_of, told_apart
from charts.layout.fields import Field
from charts.layout.heads import with_unit_of
from charts.layout.looks import look
from charts.layout.view import At


def sides_carried(fields: Sequence[Field], *, turned: bool) -> list[Field]:
    """The fields with the word for their side above their own heading, as if it spanned them."""
    rows: dict[int, list[At]] = {}
    for at in {at.origin: at for field in fields for at in field.heads}.values():
        rows.setdefault(_level(at, turned=turned), []).append(at)
    found = list(fields)
    for level, heads in rows.items():
        if not told_apart(at.text for at in heads):
            continue
        for number, field in enumerate(found):
            word = _word_over(field, level, heads, turned=turned)
            if word is not None:
                heading = with_unit_of(field.heading, [look(word.text).heading])
                found[number] = replace(field, heads=(word, *field.heads), heading=heading)
    return found


def _word_over(field: Field, level: int, heads: Sequence[At], *, turned: bool) -> At | None:
    """The word to the left that reaches a field with a heading of its own below that row only."""
    levels = [_level(at, turned=turned) for at in field.heads]
    if not levels or level in levels or max(levels) < level:
        return None
    place = _along(field.heads[-1], turned=turned)
    before = [at for at in heads if _along(at, turned=turned) < place]
    nearest = max(before, key=lambda at: _along(at, turned=turned), default=None)
    if nearest is None or nearest.cell.shared_from is not None:
        return None
    return nearest if side_of(nearest.text) is not None else None


def _level(at: At, *, turned: bool) -> int:
    return at.column if turned else at.row


def _along(at: At, *, turned: bool) -> int:
    return at.row if turned else at.column
