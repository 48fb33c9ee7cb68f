"""Upper and lower before a measure: an end of a range beside its other end, else a place.

``Lower waist | Upper waist`` are two ends; ``Upper waist`` alone is a girth somewhere above the
waist and no limit, and whether it is the waist of the schema is for a person to say.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.answers import Meaning
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.findings import Candidate
from charts.headings.parts import parts_of
from charts.schema import Dimension

_ENDS: Final = {"low_end": Role.LOW_END, "high_end": Role.HIGH_END}
_POSITION: Final = "position"


def positions_told(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with ends that only a word of place names, and no partner, made plain."""
    return [
        _doubted(one, around) if _placed(one) and not _partner(one, columns) else one
        for one in columns
    ]


def _placed(column: Column) -> bool:
    """Whether the heading is a measure behind a word of place, which alone makes it an end."""
    if column.role not in _ENDS.values() or column.field.heading.candidates:
        return False
    hits = [hit for hit in parts_of(column.heading).hits if hit.entry is not None]
    ends = [hit for hit in hits if hit.entry and not _ENDS.keys().isdisjoint(hit.entry.parts)]
    first = bool(hits) and hits[0] in ends
    places = [hit.entry is not None and _POSITION in hit.entry.parts for hit in ends]
    return column.dimension is not Dimension.OTHER and first and all(places)


def _partner(column: Column, columns: Sequence[Column]) -> bool:
    other = Role.LOW_END if column.role is Role.HIGH_END else Role.HIGH_END
    return any(one.role is other and one.dimension is column.dimension for one in columns)


def _doubted(column: Column, around: Surroundings) -> Column:
    plain = replace(column, role=Role.MEASURE)
    for _, act in around.answers.of(Meaning):
        if column.heading in act.headings and act.dimension is not None:
            return plain
    readings = (column.dimension, Dimension.OTHER)
    ident = around.log.add(
        "heading-two-readings",
        column.place,
        candidates=tuple(Candidate(one.value, why="heading-fits-values") for one in readings),
        heading=column.heading,
        first=column.dimension.value,
    )
    return plain.asking(ident)
