"""What a heading was read as: the role of its column, the dimension, the unit, whose measure."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension


class Role(StrEnum):
    """What a row or column is for. OTHER stands beside measurements and is none."""

    MEASURE = "measure"
    LABEL = "label"
    LENGTH_AXIS = "length_axis"
    UNIT = "unit"
    LOW_END = "low_end"
    HIGH_END = "high_end"
    TOLERANCE = "tolerance"
    STEP = "step"
    NOTE = "note"
    BAND = "band"
    IDENTITY = "identity"
    OTHER = "other"
    UNKNOWN = "unknown"


@dataclass(frozen=True, slots=True)
class HeadingReading:
    """One heading, read.

    LOW_END, HIGH_END, TOLERANCE and STEP carry the dimension they belong to when the heading
    names one. MEASURE with dimension OTHER is a measurement of no known dimension (high hip).
    ``candidates`` are the readings of a false friend, the likelier first; ``role`` and
    ``dimension`` are then the first of them, ``basis`` what all of them share.
    ``garment_sign`` tells that a word stands there by which garments are measured (width, laid
    flat, finished), ``across`` that it is a word for a width. ``slips`` are known measures that
    the heading is one slip of typing away from; ``strange`` is an unknown heading in normal form
    (``near.near_headings`` says what it resembles). ``rest`` are the words that were not
    understood, in normal form. ``beside_thing`` is the measure named beside a word for a thing or
    a number that makes the role OTHER: the figures say which of the two the column is.
    """

    role: Role
    dimension: Dimension | None = None
    definition: Definition = Definition.UNKNOWN
    basis: Basis = Basis.UNKNOWN
    unit: Unit | None = None
    second_unit: Unit | None = None
    band: str | None = None
    candidates: tuple[tuple[Role, Dimension | None], ...] = ()
    slips: tuple[str, ...] = ()
    strange: str = ""
    language: str | None = None
    garment_sign: bool = False
    across: bool = False
    rest: str = ""
    beside_thing: Dimension | None = None
