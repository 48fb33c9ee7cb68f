"""What the columns of some rows hold: kinds, families of units, and how their figures rise."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from charts.quantities import FAMILY, Family, Unit
from charts.readers.captured.shared_out.tokens import Kind, Part, Row
from charts.readers.captured.value_runs import is_size

_UNITS: Final = (
    (re.compile(r"\d\s?(?:cm|mm|m)\b|\dm\d|\d\s?см", re.IGNORECASE), Unit.CM),
    (re.compile(r"\d\s?(?:kgs?|кг)\b", re.IGNORECASE), Unit.KG),
    (re.compile(r"\d\s?(?:lbs?|st)\b", re.IGNORECASE), Unit.LB),
    (re.compile(r"[\d½¼¾⅛⅜⅝⅞]\s?(?:[\"”″“'’′]|ins?\b|inch)", re.IGNORECASE), Unit.IN),
)
_FEET: Final = re.compile(r"(\d)\s?['’′]-?\s?(\d{1,2})?")
_METRES: Final = re.compile(r"(\d)\s?m\s?(\d\d)|(\d)[.,](\d\d)(?=\s?m|\D+\d[.,]\d\d\s?m)")
_NUMBER: Final = re.compile(r"\d+(?:[.,]\d+)?")
_INCHES_IN_A_FOOT: Final = 12.0


@dataclass(frozen=True, slots=True)
class Column:
    """One column: what its cells hold, their texts, and the unit that all of them print."""

    kind: Kind
    texts: tuple[str, ...]
    unit: Unit | None

    @property
    def sizes(self) -> bool:
        """Whether every cell can be a size's name."""
        return all(map(is_size, self.texts))

    @property
    def numbers(self) -> tuple[float, ...]:
        """The first figure of every cell that has one."""
        return tuple(one for one in map(first_number, self.texts) if one is not None)

    def of(self, part: Part) -> bool:
        """Whether a cell is of the kind of this column, or blank."""
        return part.kind in (self.kind, Kind.NOTHING)

    def may_hold(self, part: Part) -> bool:
        """Whether a cell is of the kind and the unit of this column."""
        if part.kind is Kind.NOTHING:
            return True
        if not self.of(part):
            return False
        unit = unit_of(part.text)
        return unit is self.unit or unit is None or self.unit is None


def columns_of(rows: Sequence[Row]) -> list[Column] | None:
    """The columns of rows of equal width; None where a column has cells of several kinds."""
    found = []
    for at in range(len(rows[0].parts)):
        parts = [row.parts[at] for row in rows if row.parts[at].kind is not Kind.NOTHING]
        if not parts:
            return None
        (kind, often), *_ = Counter(part.kind for part in parts).most_common(1)
        odd = len(parts) - often
        if odd and (odd * 4 > len(parts) or kind is not Kind.VALUE):
            return None
        texts = tuple(part.text for part in parts if part.kind is kind)
        units = {unit_of(text) for text in texts} - {None}
        if len({family(unit) for unit in units}) > 1:
            return None
        found.append(Column(kind, texts, units.pop() if len(units) == 1 else None))
    return found


def family(unit: Unit | None) -> Family | None:
    """Whether a unit is one of lengths or of weights."""
    return FAMILY[unit] if unit is not None else None


@lru_cache(maxsize=4096)
def unit_of(text: str) -> Unit | None:
    """The unit that a value prints, None for none: cm, kg, lb or in for all of their kind."""
    return next((unit for sign, unit in _UNITS if sign.search(text)), None)


@lru_cache(maxsize=4096)
def first_number(text: str) -> float | None:
    """The first figure of a value; feet as inches, metres as centimetres."""
    feet = _FEET.search(text)
    if feet is not None:
        return float(feet[1]) * _INCHES_IN_A_FOOT + float(feet[2] or 0)
    metres = _METRES.search(text)
    if metres is not None:
        return float(metres[1] or metres[3]) * 100 + float(metres[2] or metres[4])
    found = _NUMBER.search(text)
    return float(found[0].replace(",", ".")) if found is not None else None
