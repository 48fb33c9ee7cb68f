"""What is known of a column before a cell is read, and what one cell was read as.

These are the words between the grammar of one cell and whoever asks it. ``charts.notation`` is
the door; it gives these names too.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from enum import StrEnum
from typing import NamedTuple

from charts.quantities import Figure, Unit
from charts.schema import Basis, Definition, Dimension, Kind


@dataclass(frozen=True, slots=True)
class Expected:
    """What the column says of its cells.

    ``unit`` is the unit printed in the heading, title or note, None when none is known.
    ``second_unit`` is the other one of a heading such as "Chest (in/cm)". ``decimal_comma`` says
    whether a comma may be a decimal mark. ``basis`` and ``definition`` bear on what is plausible:
    half for what lies flat, more for a finished vest, more for a waist over the shoulder; below
    the usual limits a child may measure ``least_cm`` and more at its age.
    """

    dimension: Dimension | None = None
    unit: Unit | None = None
    second_unit: Unit | None = None
    decimal_comma: bool = True
    basis: Basis = Basis.UNKNOWN
    definition: Definition = Definition.UNKNOWN
    least_cm: Decimal | None = None

    _hash: int = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        """Work out the hash once: it is asked for with every cell, and this much tells columns."""
        object.__setattr__(self, "_hash", hash((self.dimension, self.unit, self.second_unit)))

    def __hash__(self) -> int:
        return self._hash


class Quantity(NamedTuple):
    """One quantity as printed: a range, an open end or a single value, figures in ``unit``.

    Feet and inches come as inches, stones as pounds, months as years. ``unit`` is None when the
    cell prints none and its notation proves none: it is the column's then. ``tolerance`` is in
    the same unit and never widens ``low`` and ``high``. A named tuple is made in a quarter of the
    time of a frozen dataclass, and thousands are made for a file.
    """

    kind: Kind
    text: str
    low: Figure | None = None
    high: Figure | None = None
    value: Figure | None = None
    unit: Unit | None = None
    low_included: bool = True
    high_included: bool = True
    circa: bool = False
    tolerance: Figure | None = None


class Reading(StrEnum):
    """What a cell turned out to be.

    READ may be stored. ASK needs a person: ``quantity`` is then the preferred reading or, with
    the code "impossible", what is printed and must not be stored; None when nothing is preferred.
    NOTE is words without a figure. UNREAD holds figures that no rule covers.
    """

    BLANK = "blank"
    READ = "read"
    ASK = "ask"
    NOTE = "note"
    TOLERANCE = "tolerance"
    UNREAD = "unread"


class CellReading(NamedTuple):
    """One cell, read.

    ``quantity`` is the metric one when two units are printed, ``also`` the other. ``label`` is
    the label part of a cell such as "L (bis 60 kg)". ``code`` is a finding code when the reading
    is ASK or UNREAD; ``notes`` are note codes. ``candidates`` are readings with their evidence.
    A TOLERANCE cell ("+/- 1") carries its figure in ``quantity.tolerance``.
    """

    reading: Reading
    quantity: Quantity | None = None
    also: Quantity | None = None
    label: str | None = None
    code: str | None = None
    notes: tuple[str, ...] = ()
    candidates: tuple[tuple[Quantity, str], ...] = ()
