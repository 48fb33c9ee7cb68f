"""A table as it was found: one field a column, one line a size, nothing interpreted yet."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from charts.dimensions import HeadingReading
from charts.layout.view import At
from charts.sheet import Sheet


class FieldKind(StrEnum):
    """What a column of a table holds, as far as its heading and its cells agree."""

    LABEL = "label"
    LENGTH = "length"
    BAND = "band"
    IDENTITY = "identity"
    VALUES = "values"
    TOLERANCE = "tolerance"
    UNIT = "unit"
    NAMES = "names"  # names of dimensions: long form, or the heads of a table read the wrong way
    SKIPPED = "skipped"  # running numbers, steps, prices, order numbers
    NOTE = "note"
    EMPTY = "empty"


@dataclass(frozen=True, slots=True)
class Field:
    """One column: its heading cells from top to bottom, its cells, one per line (None: blank).

    A cell that stands for several, such as the bands of a grid that share one size, is a tuple.
    """

    kind: FieldKind
    heads: tuple[At, ...]
    heading: HeadingReading
    cells: tuple[tuple[At, ...], ...]

    @property
    def printed_heading(self) -> str:
        """The heading as printed, its rows joined by a space."""
        return " ".join(dict.fromkeys(" ".join(at.text.split()) for at in self.heads))


@dataclass(frozen=True, slots=True)
class Table:
    """One table: its fields, the titles above it, the words that hold for it."""

    sheet: Sheet
    area: str
    fields: tuple[Field, ...]
    lines: int
    titles: tuple[At, ...] = ()
    notes: tuple[At, ...] = ()

    def of(self, kind: FieldKind) -> tuple[Field, ...]:
        """The fields of one kind, from left to right."""
        return tuple(field for field in self.fields if field.kind is kind)
