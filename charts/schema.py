"""One schema for every supplier's chart. Every value remembers its cell and its printed text.

All values are frozen; a change is a new value. Lengths are exact decimals in cm, masses in kg,
ages in years.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum

from charts.corrections import Correction
from charts.findings import Finding
from charts.quantities import Unit


class Dimension(StrEnum):
    """What is measured. High hip is OTHER; waist over shoulder is a definition of BACK_LENGTH."""

    CHEST = "chest"
    WAIST = "waist"
    HIP = "hip"
    BACK_LENGTH = "back_length"
    HEIGHT = "height"
    WEIGHT = "weight"
    NECK = "neck"
    SHOULDER_BREADTH = "shoulder_breadth"
    UNDERBUST = "underbust"
    INSEAM = "inseam"
    ARM_LENGTH = "arm_length"
    AGE = "age"
    OTHER = "other"


class Definition(StrEnum):
    """Between which points, or at which level. UNKNOWN is legal and shown as unknown."""

    UNKNOWN = "unknown"
    CHEST_WIDEST = "widest"
    CHEST_UNDER_ARM = "under_arm"
    WAIST_NATURAL = "natural"
    WAIST_MID = "mid"
    WAIST_NAVEL = "navel"
    WAIST_TROUSER = "trouser"
    HIP_BELOW_BELT = "below_belt"
    HIP_SEAT = "seat"
    BACK_C7_SI = "c7_to_si"
    BACK_C7_WAIST = "c7_to_waist"
    BACK_C7_SEAT = "c7_to_seat"
    BACK_SHOULDER_WAIST = "shoulder_to_waist"
    BACK_WAIST_SHOULDER_WAIST = "waist_over_shoulder"


class Basis(StrEnum):
    """Whose measure a figure is: the body's, the finished vest's, or half of it laid flat."""

    BODY = "body"
    FINISHED = "finished"
    FLAT = "flat"
    UNKNOWN = "unknown"


class Kind(StrEnum):
    """How a value is given. UNREAD keeps the printed text and no number."""

    RANGE = "range"
    AT_MOST = "at_most"
    AT_LEAST = "at_least"
    SINGLE = "single"
    UNREAD = "unread"


class UnitFrom(StrEnum):
    """Where the unit of a value stood, in the order in which it is looked for.

    PERSON and HABIT are no print: somebody said it of this file, or of the supplier's earlier ones.
    """

    CELL = "cell"
    HEADING = "heading"
    ROW = "row"
    TITLE = "title"
    NOTE = "note"
    FORMAT = "format"
    SHEET = "sheet"
    SIBLING = "sibling"
    INFERRED = "inferred"
    PERSON = "person"
    HABIT = "habit"


@dataclass(frozen=True, slots=True)
class PrintedBothWays:
    """The second of two printed units, kept beside the reading and never averaged with it.

    Figures and steps are in ``unit``, the unit printed.
    """

    text: str
    unit: Unit
    low: Decimal | None
    high: Decimal | None
    value: Decimal | None
    place: str
    low_step: Decimal | None = None
    high_step: Decimal | None = None


@dataclass(frozen=True, slots=True)
class Range:
    """What one chart says of one size in one dimension.

    ``low``, ``high``, ``value``, ``tolerance`` and the steps are in ``unit`` (cm, kg or years).
    ``low_step`` and ``high_step`` are the steps the two ends were printed to (for a single value
    both are its step). ``findings`` holds the ids of the findings that bear on this value.
    """

    dimension: Dimension
    heading: str
    kind: Kind
    published: str
    place: str
    unit: Unit
    unit_from: UnitFrom
    definition: Definition = Definition.UNKNOWN
    basis: Basis = Basis.UNKNOWN
    low: Decimal | None = None
    high: Decimal | None = None
    value: Decimal | None = None
    low_step: Decimal | None = None
    high_step: Decimal | None = None
    circa: bool = False
    low_included: bool = True
    high_included: bool = True
    tolerance: Decimal | None = None
    published_unit: Unit | None = None
    also_published: PrintedBothWays | None = None
    findings: tuple[str, ...] = ()
    corrected: Correction | None = None


@dataclass(frozen=True, slots=True)
class AlsoLabel:
    """A second name of a size, with the heading it stood under."""

    label: str
    heading: str


@dataclass(frozen=True, slots=True)
class Size:
    """One size of a chart. ``length`` is its place on the second axis (short, regular, long).

    ``corrected`` says that a person read the label otherwise; what is printed stands in it.
    """

    label: str | None
    ranges: tuple[Range, ...]
    length: str | None = None
    also: tuple[AlsoLabel, ...] = ()
    corrected: Correction | None = None


@dataclass(frozen=True, slots=True)
class Said:
    """A word about the chart itself (supplier, model, season) and where it stood."""

    text: str
    source: str


@dataclass(frozen=True, slots=True)
class Chart:
    """One table of one model: its sizes in source order.

    ``place`` is the table's area in the file. ``title`` and ``notes`` are as printed.
    ``band`` is women, men, girls, boys, kids, baby, unisex or None. ``models`` are the names of
    all its models where it is for several; ``model`` then holds them side by side.
    """

    place: str
    title: str | None
    sizes: tuple[Size, ...]
    supplier: Said | None = None
    model: Said | None = None
    season: Said | None = None
    band: str | None = None
    notes: tuple[str, ...] = ()
    models: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class FileReading:
    """Everything one file gave: its charts and its findings. Partial success is normal.

    ``corrections`` are the cells a person read otherwise, those that now say nothing among them.
    """

    file: str
    charts: tuple[Chart, ...] = ()
    findings: tuple[Finding, ...] = ()
    corrections: tuple[Correction, ...] = ()
