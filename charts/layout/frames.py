"""One view as a table: its heading rows, its fields, and how much it looks like a chart."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.bands import bands_carried
from charts.layout.corners import corners_mended
from charts.layout.cups import with_cups
from charts.layout.end_rows import ends_joined
from charts.layout.ends_beside import ends_beside
from charts.layout.fields import Field, FieldKind, Table
from charts.layout.front_cells import heads_in_front, in_front, lacks_in_front
from charts.layout.heads import (
    combined,
    continued,
    continues,
    heading_rows,
    heads_of,
    names_itself,
)
from charts.layout.kinds import Content, kind_of
from charts.layout.labels_by_length import with_labels_by_length
from charts.layout.lengths import with_lengths
from charts.layout.lists_in_cells import parted_lists
from charts.layout.missing_corner import groups_missing, heading_missing
from charts.layout.odd_lines import sorted_out
from charts.layout.settle import settled
from charts.layout.side_heads import sides_carried
from charts.layout.twins import with_twins
from charts.layout.unit_columns import labels_parted, with_unit_columns
from charts.layout.view import At, View

_WEIGHT: Final[dict[FieldKind, float]] = {
    FieldKind.LABEL: 3.0,
    FieldKind.LENGTH: 2.5,
    FieldKind.BAND: 0.5,
    FieldKind.IDENTITY: 0.5,
    FieldKind.NAMES: -5.0,
}


@dataclass(frozen=True, slots=True)
class Frame:
    """A view read as a table with sizes down the rows.

    ``heading_rows`` leading rows of the view are headings; ``fields`` has one field per column
    of the view, with one entry per size. ``uneven`` and ``gridded`` as in a table.
    """

    view: View
    heading_rows: int
    fields: tuple[Field, ...]
    score: float
    lines: int
    uneven: frozenset[int] = frozenset()
    gridded: bool = False

    @property
    def labelled(self) -> bool:
        """Whether something names the sizes."""
        return any(field.kind in {FieldKind.LABEL, FieldKind.LENGTH} for field in self.fields)

    @property
    def valued(self) -> bool:
        """Whether something is measured."""
        return any(field.kind is FieldKind.VALUES for field in self.fields)

    @property
    def named(self) -> bool:
        """Whether a dimension is named in its headings."""
        return any(
            field.kind is FieldKind.VALUES and field.heading.dimension is not None
            for field in self.fields
        )

    @property
    def complete(self) -> bool:
        """Whether it can stand alone: sizes, and values under a heading of their own."""
        return self.labelled and self.valued and self.heading_rows > 0

    def table(self, titles: tuple[At, ...], notes: tuple[At, ...]) -> Table:
        """The table that it is, with the words around it."""
        return Table(
            self.view.sheet,
            self.view.area,
            self.fields,
            self.lines,
            titles,
            notes,
            self.uneven,
            self.view.turned,
            self.gridded,
        )


def frame(view: View) -> Frame:
    """The view as it stands, read as a table with sizes down the rows."""
    rows = heading_rows(view)
    slipped = heading_missing(view, rows)
    apart = groups_missing(view, rows)
    longer = not slipped and in_front(view, rows)
    shorter = not slipped and not longer and lacks_in_front(view, rows)
    fields: list[Field] = []
    first = next((n for n in range(view.width) if any(view.column(n))), 0)
    left: HeadingReading | None = None
    for column in range(view.width):
        heads = heads_of(view, column - slipped, rows) if column >= slipped else ()
        if apart:
            heads = (heads_of(view, column - 1, 1) if column else ()) + heads_of(view, column, 2)[
                -1:
            ]
        if longer:
            heads = heads_in_front(view, column, rows)
        elif shorter:
            heads = heads_of(view, column + 1, rows) if column + 1 < view.width else ()
        heading = combined(heads)
        beside = left.dimension if left is not None else None
        goes_on = continues(heading, beside) and not names_itself(heads, fields)
        if left is not None and (goes_on or _band_below(view, column, heads, rows)):
            heading = continued(heading, left)
        elif heading.dimension is not None and heading.role is not Role.TOLERANCE:
            left = heading
        elif heading.role is Role.LOW_END:
            left = heading if heading.candidates else None  # "Taille von | bis" is no chest's end
        cells = tuple(_cell(view.at(row, column)) for row in range(rows, view.height))
        content = Content.of(cells)
        fields.append(Field(kind_of(heading, content, column - first), heads, heading, cells))
    fields = settled(
        labels_parted(sorted_out(corners_mended(parted_lists(ends_joined(bands_carried(fields))))))
    )
    fields = ends_beside(_continued_again(fields))
    fields = with_twins(with_unit_columns(fields))
    lines = len(fields[0].cells) if fields else 0
    fields = sides_carried(with_lengths(with_cups(fields)), turned=view.turned)
    fields = with_labels_by_length(fields)
    twice_named = bool(fields) and len(fields[0].cells) > lines
    lines = len(fields[0].cells) if fields else 0
    return Frame(view, rows, tuple(fields), _score(fields), lines, gridded=twice_named)


def _continued_again(fields: list[Field]) -> list[Field]:
    """A bare unit takes what the heading to its left was settled to be: Taille, Zoll.

    A bare ``to`` makes the measure to its left the lower end: ``Chest | to``.
    """
    found = list(fields)
    for number in range(1, len(found)):
        left, field = found[number - 1], found[number]
        own = combined(field.heads)
        if names_itself(field.heads, (left,)):
            continue
        if continues(own) and own.role is Role.HIGH_END and left.heading.role is Role.MEASURE:
            heading = replace(left.heading, role=Role.LOW_END)
            left = found[number - 1] = replace(left, heading=heading)
        if (
            field.kind is left.kind is FieldKind.VALUES
            and left.heading.dimension
            and continues(own, left.heading.dimension)
        ):
            found[number] = replace(field, heading=continued(own, left.heading))
    return found


def _band_below(view: View, column: int, heads: tuple[At, ...], rows: int) -> bool:
    """A band word in a lower row of the heading belongs to the measure above and to its left."""
    if rows < 2 or len(heads) != 1 or combined(heads).role is not Role.BAND:
        return False
    return view.at(0, column) is None


def _cell(at: At | None) -> tuple[At, ...]:
    return () if at is None else (at,)


def _score(fields: list[Field]) -> float:
    score = 0.0
    labels = False
    for field in fields:
        if field.kind is FieldKind.VALUES:
            known = field.heading.dimension is not None
            score += (4.0 if known else 0.5) * _share(field)
        elif field.kind is FieldKind.LABEL:
            score += 0.0 if labels else _label_score(field)
            labels = True
        else:
            score += _WEIGHT.get(field.kind, 0.0)
    return score


def _share(field: Field) -> float:
    """How much of a column is a value: a heading of a whole column weighs more than a lone one."""
    content = Content.of(field.cells)
    return content.values / max(1, content.filled)


def _label_score(field: Field) -> float:
    content = Content.of(field.cells)
    sure = content.sure_labels / max(1, content.filled)
    named = 1.0 if field.heading.role is Role.LABEL else 0.0
    return 1.0 + 1.5 * sure + named
