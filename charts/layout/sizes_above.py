"""A row of sizes above the title of a section: ``Size | 34 | 36``, ``Body``, ``Bust | 80 | 84``.

The section alone would take its sizes from a measure: a height that is the same in all of them,
or a word for size that is a measure as well. The row that waits above the title names them.
"""

from __future__ import annotations

from collections.abc import Collection
from typing import Final

from charts.dimensions import Role
from charts.headings.bands import names_adults
from charts.headings.reading import HeadingReading
from charts.identity import own_words
from charts.layout.false_friends import measures_of
from charts.layout.fields import Field, FieldKind
from charts.layout.frames import Frame
from charts.layout.lengths_under_sizes import measured_under_sizes
from charts.layout.looks import look
from charts.layout.view import At, View
from charts.schema import Basis, Dimension

_FEWEST_SIZES: Final = 2
"""So many at least tell a row of sizes from a word with a figure behind it."""


def only_sizes(view: View) -> bool:
    """Whether each row is a word for size with the sizes behind it, of which numbers are some.

    Words for whom they are may stand above them: ``| Kids | | Adults`` over ``Size | 140 | S``.
    """
    first = _below_people(view)
    rows = [
        [look(at.text) for at in view.row(row) if at is not None]
        for row in range(first, view.height)
    ]
    return bool(rows) and all(
        len(row) > _FEWEST_SIZES
        and _heads_sizes(row[0].heading)
        and not row[0].value
        and all(one.label is not None for one in row[1:])
        for row in rows
    )


def _below_people(view: View) -> int:
    """The first row below one that only names people, over the sizes and not in front of them."""
    corner, *words = view.row(0)
    named = [at for at in words if at is not None]
    people = all(look(at.text).bare_band or names_adults(at.text) for at in named)
    return 1 if corner is None and len(named) > 1 and people else 0


def only_of_a_section(title: str) -> bool:
    """Whether a title says what is measured, the body or which garment, and not for whom."""
    one = look(title)
    of_what = one.heading.basis is not Basis.UNKNOWN and one.heading.dimension is None
    nobody = one.band is None and not names_adults(title)
    return nobody and (of_what or not own_words(title)) and not one.sentence


def named_above(
    alone: Frame,
    together: Frame,
    rows: Collection[int],
    before: Frame | None,
    titles: Collection[At] = (),
) -> bool:
    """Whether the sizes stand in ``rows`` and ``alone`` only names them by a measure.

    ``before`` is the table whose rows they are; None where they wait for their first. Another
    table may be looked up by its own heights, so that there the measure has to be the same in
    several sizes, one of those that are measured in the table before, or no height of anybody
    who wears its sizes. ``titles`` stand between the two.
    """
    own, above = _naming(alone), _naming(together)
    if own is None or above is None or not together.complete:
        return False
    parted = any(at.row > min(rows) for at in titles)
    if before is None and not parted and _names_again(own, above, rows):
        return True
    if not _only_measures(own):
        return False
    if before is None and not above.heads and _sure_names(above, rows):
        return True
    if not above.heads or not _over(above.heads, rows) or not _heads_sizes(above.heading):
        return False
    known = before is None or _repeats(own) or _measured_in(before, own)
    return known or measured_under_sizes(own, above, titles)


def _over(heads: Collection[At], rows: Collection[int]) -> bool:
    return {at.row for at in heads} <= set(rows)


def _sure_names(field: Field, rows: Collection[int]) -> bool:
    """Whether names that are no figures stand in ``rows``: ``| S | M``, behind a blank corner."""
    cells = [at for cell in field.cells for at in cell]
    return _over(cells, rows) and all(look(at.text).sure_label for at in cells)


def _names_again(own: Field, above: Field, rows: Collection[int]) -> bool:
    """``EU size | 44 | 46`` over ``INT size | S | M``, which a blank row parts: two names each."""
    if len(rows) > 1 or not above.heads or not _over(above.heads, rows):
        return False
    words = all(one.heads and _heads_sizes(one.heading) for one in (own, above))
    columns = [[at.column for cell in one.cells for at in cell] for one in (own, above)]
    return words and columns[0] == columns[1]


def _heads_sizes(heading: HeadingReading) -> bool:
    """Whether it is a word for sizes, or for the ages that name those of children."""
    return heading.role is Role.LABEL or heading.dimension is Dimension.AGE


def _naming(frame: Frame) -> Field | None:
    """What names the sizes of a table whose sizes run across; None where lengths part them."""
    named = [one for one in frame.fields if one.kind in {FieldKind.LABEL, FieldKind.LENGTH}]
    plain = frame.view.turned and not frame.gridded and named
    return named[0] if plain and named[0].kind is FieldKind.LABEL else None


def _only_measures(field: Field) -> bool:
    """Whether a measure heads it, in one sense at least, over figures alone."""
    measured = field.heading.role is Role.MEASURE or bool(measures_of(field.heading))
    return measured and all(look(at.text).value for cell in field.cells for at in cell)


def _measured_in(before: Frame, own: Field) -> bool:
    """Whether the table before has the same heading over values, and it can name no sizes."""
    if own.heading.role is not Role.MEASURE or own.heading.candidates:
        return False
    heading = own.printed_heading.strip().lower()
    values = [one for one in before.fields if one.kind is FieldKind.VALUES]
    return any(one.printed_heading.strip().lower() == heading for one in values)


def _repeats(field: Field) -> bool:
    texts = [at.text.strip() for cell in field.cells for at in cell]
    return len(set(texts)) < len(texts)
