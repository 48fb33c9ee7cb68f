"""What a heading says: which column it is, what is measured, in which unit, whose measure."""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from typing import Final

from charts.cell_text import clean
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension


class Role(StrEnum):
    """What a row or column is for."""

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

    LOW_END, HIGH_END and TOLERANCE carry the dimension they belong to when the heading names
    one. ``candidates`` are the readings of a false friend, the likelier first; ``role`` and
    ``dimension`` are then the first of them. ``near`` are known headings an unknown one
    resembles. ``rest`` are the words that were not understood.
    """

    role: Role
    dimension: Dimension | None = None
    definition: Definition = Definition.UNKNOWN
    basis: Basis = Basis.UNKNOWN
    unit: Unit | None = None
    second_unit: Unit | None = None
    band: str | None = None
    candidates: tuple[tuple[Role, Dimension | None], ...] = ()
    near: tuple[str, ...] = ()
    language: str | None = None
    garment_sign: bool = False
    rest: str = ""


_MEASURES: Final = {
    "chest": Dimension.CHEST,
    "bust": Dimension.CHEST,
    "brustumfang": Dimension.CHEST,
    "waist": Dimension.WAIST,
    "taillenumfang": Dimension.WAIST,
    "hip": Dimension.HIP,
    "hips": Dimension.HIP,
    "back length": Dimension.BACK_LENGTH,
    "height": Dimension.HEIGHT,
    "weight": Dimension.WEIGHT,
}
_UNITS: Final = {
    "cm": Unit.CM,
    "in": Unit.IN,
    "inches": Unit.IN,
    "kg": Unit.KG,
    "lb": Unit.LB,
    "lbs": Unit.LB,
}
_BANDS: Final = {"women": "women", "women's": "women", "ladies": "women", "men": "men"}


def read_heading(text: str) -> HeadingReading:
    """What the heading ``text`` says of its column or row."""
    words = clean(text[:200]).lower()
    units = find_units(words)
    unit = units[0] if units else None
    words = re.sub(r"\(.*?\)", "", words).strip()
    if words in {"size", "größe"}:
        return HeadingReading(Role.LABEL, unit=unit)
    if words in _MEASURES:
        return HeadingReading(Role.MEASURE, _MEASURES[words], unit=unit)
    return HeadingReading(Role.UNKNOWN, unit=unit, rest=words)


def find_units(text: str) -> tuple[Unit, ...]:
    """The units named in a heading, caption or note, in their order; "in" only as a unit."""
    found = [_UNITS[word] for word in re.findall(r"[a-z]+", text[:2000].lower()) if word in _UNITS]
    return tuple(dict.fromkeys(found))


def read_band(text: str) -> str | None:
    """The band ``text`` names: women, men, girls, boys, kids, baby, unisex; or None."""
    for word in clean(text[:200]).lower().split():
        if word in _BANDS:
            return _BANDS[word]
    return None


def plausible(dimension: Dimension, unit: Unit) -> tuple[Decimal, Decimal] | None:
    """The lowest and highest figure in ``unit`` that a body, adult or child, can have."""
    del dimension, unit
    return None
