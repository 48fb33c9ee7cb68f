"""``Size 36 | 38 | 40`` over rows of two figures: the corner names a size that has no figures.

Each figure may stand under the size after its own, or the first ones are lost.
"""

from __future__ import annotations

from collections.abc import Sequence

from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.size_labels import without_word_for_size


def corner_sizes_asked(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns, with one question where the corner of sizes across is one of them."""
    named = around.table.of(FieldKind.LABEL) if around.table.turned else ()
    corner = next((field for field in named if _names_one_more(field)), None)
    if corner is None:
        return list(columns)
    at = corner.heads[-1]
    ident = around.log.add(
        "columns-shifted",
        around.place(at.row, at.column),
        key=f"corner {around.table.area}",
        case="corner",
        heading=corner.printed_heading,
    )
    return [one.asking(ident) for one in columns]


def _names_one_more(field: Field) -> bool:
    """Whether a word for size stands before a size like the others that is none of them."""
    heading = field.printed_heading
    rest = without_word_for_size(heading).strip()
    if not field.heads or rest == heading.strip() or not rest:
        return False
    own = look(rest).label
    others = [look(cell[0].text).label for cell in field.cells if cell]
    known = [one for one in others if one is not None]
    if own is None or not known or len(known) < len(others):
        return False
    return all(own.kind is one.kind and own.normal != one.normal for one in known)
