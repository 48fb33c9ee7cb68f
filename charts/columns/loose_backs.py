"""A word for the back that does not say whether its length or its width was measured.

"Back measurement" is either. "Back" alone is its length in a chart of riders' vests, and as likely
its width beside shoulders, sleeves and the length of a garment.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.headings.parts import Hit, hits_of, parts_of
from charts.schema import Definition, Dimension
from charts.vocabulary import normal

_OF_A_GARMENT: Final = frozenset({Dimension.SHOULDER_BREADTH, Dimension.ARM_LENGTH})
_LONGEST: Final = 600


def says_too_little(column: Column, columns: Sequence[Column], around: Surroundings) -> bool:
    """Whether a back length is taken from a word that may mean the width of the back as well."""
    if column.dimension is not Dimension.BACK_LENGTH or column.findings:
        return False
    if column.definition is not Definition.UNKNOWN:
        return False
    hits = parts_of(column.heading).hits
    backs = [hit for hit in hits if _names_the_back(hit)]
    if len(backs) != 1 or backs[0].entry is None:
        return False
    parts = backs[0].entry.parts
    if "back_measure" in parts:
        return True
    return "bare_back" in parts and (_beside_a_garment(columns) or _of_shoulders(around))


def _names_the_back(hit: Hit) -> bool:
    entry = hit.entry
    return entry is not None and any(
        one.dimension is Dimension.BACK_LENGTH for one in entry.columns
    )


def _beside_a_garment(columns: Sequence[Column]) -> bool:
    """Whether shoulders, sleeves or the garment's own length stand in the same table."""
    return any(one.dimension in _OF_A_GARMENT or is_a_garments_length(one) for one in columns)


def is_a_garments_length(column: Column) -> bool:
    """A length of the garment itself: ``Length``, ``Comprimento``, ``Body length``."""
    if column.dimension is not Dimension.OTHER or column.nameless:
        return False
    may_be_an_axis = (Role.LENGTH_AXIS, None) in column.field.heading.candidates
    return column.garment_sign or may_be_an_axis


def _of_shoulders(around: Surroundings) -> bool:
    """Whether the words around speak of how broad the shoulders are."""
    return any(
        hit.entry is not None
        and any(one.dimension is Dimension.SHOULDER_BREADTH for one in hit.entry.columns)
        for words in around.words
        for hit in hits_of(normal(words.text[:_LONGEST]))
    )
