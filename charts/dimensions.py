"""What a heading says: which column it is, what is measured, in which unit, whose measure.

The words stand in ``resources/vocabulary``, one file a language. What a word of the trade can
mean twice comes back as candidates; an unknown heading is offered near ones and never taken.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache
from typing import Final, TypeVar

from charts.headings.bands import band_of, read_band
from charts.headings.meaning import Meant, meant
from charts.headings.near import mistyped
from charts.headings.parts import Hit, measure_elsewhere, parts_of
from charts.headings.reading import HeadingReading, Role
from charts.headings.short import names_a_file
from charts.plausible_ranges import plausible, usual
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension
from charts.unit_words import find_units

__all__ = [
    "HeadingReading",
    "Role",
    "find_units",
    "plausible",
    "read_band",
    "read_heading",
    "usual",
]

_T = TypeVar("_T")
_LONGEST: Final = 200
_LEGEND_LETTER: Final = re.compile(r"(?<=[a-z\u00df-\u04ff.,)])\s+\(?A\)?$")
"""The letter of a drawing behind a heading that is not in capitals: no Italian "a", up to."""
_GARMENT_PARTS: Final = frozenset({"garment", "finished", "flat"})
_SMALL_OF: Final = {Unit.FT: Unit.IN, Unit.ST: Unit.LB}


def read_heading(text: str, language: str | None = None) -> HeadingReading:
    """What the heading ``text`` says of its column or row.

    ``language`` ("nl") settles a word that is a false friend between languages, where the other
    headings of a table have told which it speaks.
    """
    return _read(text[:_LONGEST], language)


@lru_cache(maxsize=8192)
def _read(text: str, language: str | None) -> HeadingReading:
    parts = parts_of(text)
    elsewhere = measure_elsewhere(parts, language)
    if elsewhere is not None:
        parts = parts._replace(hits=(elsewhere,))
    units = _units(parts.units)
    found = meant(
        parts.hits,
        has_unit=bool(units),
        language=language,
        capitals=parts.capitals,
        listed=parts.listed,
    )
    role = Role.UNIT if units and not parts.hits else found.role
    if role is Role.HIGH_END and (lettered := _LEGEND_LETTER.search(text)) is not None:
        return _read(text[: lettered.start()], language)
    first = found.candidates[0][1] if found.candidates else None
    dimension = first or _one_of({one.dimension for one in found.meanings})
    is_strange = role is Role.UNKNOWN and not found.used
    heads_nothing = names_a_file(text)  # and is looked at for its band alone
    slips: tuple[str, ...] = ()
    if not (is_strange or heads_nothing):
        slips = mistyped(parts.hits, parts.words, measures=role is Role.MEASURE)
    if slips:
        found, role, dimension = Meant(Role.UNKNOWN), Role.UNKNOWN, None
    return HeadingReading(
        role,
        dimension,
        _definition(found, parts.hits, dimension),
        _basis(found, parts.hits),
        units[0] if units else None,
        units[1] if len(units) > 1 else None,
        None if elsewhere else band_of(parts.hits) or read_band(text),
        found.candidates if len(found.candidates) > 1 else (),
        slips,
        parts.words if is_strange and not heads_nothing else "",
        _one_of({one.language for one in found.meanings}) or None,
        _garment_sign(found, parts.hits),
        _across(found, parts.hits),
        _rest(found, parts.hits),
        found.beside_thing,
    )


def _one_of(values: set[_T]) -> _T | None:
    """The only one of several, None where there is none or a choice."""
    return next(iter(values)) if len(values) == 1 else None


def _units(units: tuple[Unit, ...]) -> tuple[Unit, ...]:
    """Feet and inches side by side are one way to print a length, no two units; so are stones."""
    found = list(units)
    for big, small in _SMALL_OF.items():
        if big in found and small in found:
            found.remove(small)
    return tuple(found)


def _definition(found: Meant, hits: Sequence[Hit], dimension: Dimension | None) -> Definition:
    if dimension is None:
        return Definition.UNKNOWN
    said = {one.definition for one in found.meanings if one.dimension is dimension}
    if said <= {Definition.UNKNOWN}:
        said = {hit.entry.points.get(dimension, Definition.UNKNOWN) for hit in hits if hit.entry}
    return _one_of(said - {Definition.UNKNOWN}) or Definition.UNKNOWN


def _parts(found: Meant, hits: Sequence[Hit]) -> set[str]:
    """The kinds of part that stand beside the measuring words."""
    core = found.used if found.meanings else frozenset()
    beside = [hit.entry for hit in hits if hit.entry and hit.phrase not in core]
    return {part for entry in beside for part in entry.parts}


def _basis(found: Meant, hits: Sequence[Hit]) -> Basis:
    """What is said beside the measuring words, else by them; several readings must share it."""
    parts = _parts(found, hits)
    for part, basis in (("flat", Basis.FLAT), ("finished", Basis.FINISHED), ("body", Basis.BODY)):
        if part in parts:
            return basis
    said = {one.basis for one in found.meanings}
    if len(found.candidates) == 1 and found.candidates[0][1] is not Dimension.OTHER:
        said -= {Basis.UNKNOWN}
    return _one_of(said) or Basis.UNKNOWN


def _garment_sign(found: Meant, hits: Sequence[Hit]) -> bool:
    parts = _parts(found, hits)
    if parts & _GARMENT_PARTS:
        return "body" not in parts or bool(parts & {"finished", "flat"})
    if len(found.candidates) > 1 or not found.meanings or "body" in parts:
        return False
    return all(one.garment or one.basis in {Basis.FLAT, Basis.FINISHED} for one in found.meanings)


def _across(found: Meant, hits: Sequence[Hit]) -> bool:
    """Whether one of the words is for a width, alone or within a phrase: ``body width``."""
    if not found.meanings:
        return False
    return any(_is_a_width(word) for hit in hits for word in hit.phrase.split())


@lru_cache(maxsize=4096)
def _is_a_width(word: str) -> bool:
    named = (hit.entry for hit in parts_of(word).hits)
    return any("garment" in entry.parts for entry in named if entry is not None)


def _rest(found: Meant, hits: Sequence[Hit]) -> str:
    """The words that are neither the measure nor a known part beside it."""
    return " ".join(
        hit.phrase
        for hit in hits
        if hit.phrase not in found.used
        and (hit.entry is None or not (hit.entry.parts or hit.entry.bands or hit.entry.points))
    )
