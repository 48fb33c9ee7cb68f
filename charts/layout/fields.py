"""A table as it was found: one field a column, one line a size, nothing interpreted yet."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum

from charts.dimensions import HeadingReading
from charts.layout.view import At
from charts.schema import UnitFrom
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
    """One column: its heading cells from top to bottom and its cells, one entry per line.

    An entry is empty where the cell is blank, and holds several cells where they hold for one size
    together (the bands of a grid that share a size). ``tolerance`` holds for the whole column.
    ``units`` are the cells of a column of units, one per line, where they are not all the same.
    """

    kind: FieldKind
    heads: tuple[At, ...]
    heading: HeadingReading
    cells: tuple[tuple[At, ...], ...]
    tolerance: At | None = None
    units: tuple[At | None, ...] = ()
    unit_said: UnitFrom | None = None

    @property
    def printed_heading(self) -> str:
        """The heading as printed, its rows joined by a space."""
        return " ".join(dict.fromkeys(" ".join(at.cell.printed.split()) for at in self.heads))


@dataclass(frozen=True, slots=True)
class Table:
    """One table: its fields, the titles above it, the words that hold for it.

    ``uneven`` are the lines of a grid whose cells fill no rectangle. ``turned`` says that the
    sizes run across in the source, ``gridded`` that they stand in the crossings of two axes.
    ``over`` are the titles of a table right above, from which no row parts this one.
    """

    sheet: Sheet
    area: str
    fields: tuple[Field, ...]
    lines: int
    titles: tuple[At, ...] = ()
    notes: tuple[At, ...] = ()
    uneven: frozenset[int] = frozenset()
    turned: bool = False
    gridded: bool = False
    over: tuple[At, ...] = ()
    _of: dict[FieldKind, tuple[Field, ...]] = field(
        default_factory=dict, init=False, repr=False, compare=False
    )

    def of(self, kind: FieldKind) -> tuple[Field, ...]:
        """The fields of one kind, from left to right; every column asks for them."""
        found = self._of.get(kind)
        if found is None:
            found = self._of[kind] = tuple(one for one in self.fields if one.kind is kind)
        return found
