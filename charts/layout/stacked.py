"""Tables on top of each other without a blank row: cut where headings start again."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import islice
from typing import Final

from charts.dimensions import Role
from charts.layout.fields import FieldKind
from charts.layout.forms import framed
from charts.layout.frames import Frame
from charts.layout.looks import Look, look
from charts.layout.rows import distinct
from charts.layout.view import View

_LEAST_HEIGHT: Final = 80
"""Numbers below it are no heights in cm (common practice, no source)."""
_MOST_CUTS: Final = 24
"""A run that could begin anew so often, and nowhere in tables, is prose in rows."""


def split_run(view: View) -> list[View]:
    """The run as one view, or as several when each part has headings and sizes of its own."""
    cuts = (cut for cut in range(1, len(view.rows) - 1) if _starts_again(view, cut))
    for cut in islice(cuts, _MOST_CUTS):
        above, below = view.with_rows(view.rows[:cut]), view.with_rows(view.rows[cut:])
        first = framed(above)
        if not first.complete:
            continue
        second = framed(below)
        if second.complete and not _other_names(first, second):
            return [above, *split_run(below)]
    return [view]


def _other_names(first: Frame, second: Frame) -> bool:
    """Whether the second part only names the same sizes otherwise and measures other things.

    ``UK size`` over the bust, ``EU size`` over the waist: one table with two rows of names.
    """
    if not first.view.turned or not second.view.turned or first.lines != second.lines:
        return False
    measured = [{f.heading.dimension for f in one.fields} - {None} for one in (first, second)]
    if measured[0] & measured[1]:
        return False
    keys, others = _naming(first), _naming(second)
    if _named_by_figures(first) and others is not None:
        return True
    return keys is not None and others is not None and keys != others


def _named_by_figures(frame: Frame) -> bool:
    """``Height | 150-160 | 160-170``: a measure in the place of the names, which stand further on.

    What names the sizes there is a measure by its heading and by each of its cells.
    """
    named = [field for field in frame.fields if field.kind in {FieldKind.LABEL, FieldKind.LENGTH}]
    return len(named) == 1 and (
        named[0].heading.role is Role.MEASURE
        and all(look(at.text).value for cell in named[0].cells for at in cell)
    )


def _naming(frame: Frame) -> str | None:
    """The heading of the sizes of a table; None where lengths stand for them."""
    kinds = {field.kind for field in frame.fields}
    if FieldKind.LENGTH in kinds:
        return None
    named = (field for field in frame.fields if field.kind is FieldKind.LABEL)
    first = next(named, None)
    if first is None or first.heading.role is Role.MEASURE:
        return None  # the corner names what is measured: Chest | S | M | L
    return first.printed_heading.lower()


def _starts_again(view: View, cut: int) -> bool:
    """A row of headings, or of sizes under a size heading, below a row of values."""
    above = [look(at.text) for at in distinct(view.sheet, view.rows[cut - 1], view.columns)]
    here = [look(at.text) for at in distinct(view.sheet, view.rows[cut], view.columns)]
    if not any(one.value for one in above):
        return False
    first, rest = here[0], here[1:]
    if not first.value and (_first_row_again(view, rest) or _of_others(view, first, rest)):
        return True
    if first.heading.role is Role.LABEL and not first.value:
        named = all(one.label is not None or one.heads for one in rest)
        sure = not first.heading.candidates or _sizes_again(view, rest)
        return named and (sure or _sizes_of_others(view, first, rest))
    if rest and all(one.length is not None or one.wordy_label for one in rest):
        return True
    if any(one.figures and not one.wordy_label for one in here):
        return False
    heads = sum(one.heads for one in here)
    return heads > 1 or (heads == 1 and first.heads)


def _first_row_again(view: View, rest: Sequence[Look]) -> bool:
    """``Body | 8 | 10`` and, below its figures, ``Garment | 8 | 10``: the same sizes once more."""
    top = [look(at.text).text for at in distinct(view.sheet, view.rows[0], view.columns)][1:]
    again = [one.text for one in rest]
    return len(set(again)) == len(again) > 1 and again == top


def _of_others(view: View, first: Look, rest: Sequence[Look]) -> bool:
    """``Men | 46 | 48`` below ``Women | 34 | 36``: who wears it stands before the sizes."""
    top = look(distinct(view.sheet, view.rows[0], view.columns)[0].text)
    bands = [one.band for one in (top, first) if one.heading.role is Role.BAND]
    named = all(one.label is not None for one in rest)
    return len(bands) > 1 and bands[0] != bands[1] and named and len(rest) > 1


def _sizes_of_others(view: View, first: Look, rest: Sequence[Look]) -> bool:
    """``Größe Damen | 36 | 38`` below other sizes: so small a number is no height of anybody."""
    top = look(distinct(view.sheet, view.rows[0], view.columns)[0].text)
    numbers = [one.text for one in rest if one.text.isdecimal()]
    small = all(int(number) < _LEAST_HEIGHT for number in numbers)
    sized = top.heading.role is Role.LABEL and first.band is not None and first.band != top.band
    return sized and len(numbers) == len(rest) > 1 and small


def _sizes_again(view: View, rest: Sequence[Look]) -> bool:
    """Whether a word that may be a measure ("Taille") stands before sizes, not before figures."""
    if all(one.sure_label for one in rest):
        return True
    top = {look(at.text).text for at in distinct(view.sheet, view.rows[0], view.columns)}
    return {one.text for one in rest} <= top


def heading_source_rows(frame: Frame) -> tuple[int, ...]:
    """The sheet's rows that a part further down shares with this table.

    For sizes down the rows these are its heading rows, for sizes across the rows of labels. A
    turned grid shares none, and neither do rows that were named by headings in another row.
    """
    view = frame.view
    if not view.turned:
        return view.rows[: frame.heading_rows]
    if frame.gridded:
        return ()
    kinds = {FieldKind.LABEL, FieldKind.LENGTH, FieldKind.BAND}
    named = {
        at.row
        for field in frame.fields
        if field.kind in kinds
        for cell in field.cells
        for at in cell
        if not field.heads or any(head.row == at.row for head in field.heads)
    }
    return tuple(row for row in view.rows if row in named)
