"""The height of a place on the body, "shoulder height", "hauteur du dos": nobody's own height.

A word for a height beside one for a place measures from the floor, or from the seat, to there. A
height of the back is its length.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from charts.headings.parts import Hit
from charts.headings.reading import Role
from charts.schema import Dimension

Candidate = tuple[Role, Dimension | None]
_HEIGHT: Final = (Role.MEASURE, Dimension.HEIGHT)
_OTHER: Final = (Role.MEASURE, Dimension.OTHER)
_OF_ALL: Final = frozenset({Dimension.HEIGHT, Dimension.WEIGHT, Dimension.AGE})
_UPWARDS: Final = frozenset({Dimension.BACK_LENGTH, Dimension.ARM_LENGTH, Dimension.INSEAM})
"""Lengths that a height of their own may be another word for."""


def at_a_place(hits: Sequence[Hit], cores: Sequence[Sequence[Candidate]]) -> tuple[Candidate, ...]:
    """What a height of a place is, the likelier first; nothing where no such is named.

    ``cores`` are what each measuring word of the heading can be.
    """
    tall = [one for one in cores if _HEIGHT in one and set(one) <= {_HEIGHT, _OTHER}]
    if not tall or any(hit.phrase.isdecimal() for hit in hits):
        return ()
    places = [one for one in cores if _HEIGHT not in one]
    named = {dimension for one in places for _, dimension in one if dimension is not None}
    if named & _OF_ALL:
        return ()
    if named == {Dimension.BACK_LENGTH}:
        return ((Role.MEASURE, Dimension.BACK_LENGTH),)
    along = named & _UPWARDS
    if len(along) == 1 and len(named) == 1:
        return ((Role.MEASURE, along.pop()), _OTHER)
    return (_OTHER,) if named or _points_along_the_back(hits) else ()


def _points_along_the_back(hits: Sequence[Hit]) -> bool:
    """``to waist``, ``to seat``: points that a back length ends at, and a height as well."""
    return any(hit.entry and Dimension.BACK_LENGTH in hit.entry.points for hit in hits)
