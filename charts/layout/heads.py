"""Headings of one to three rows: which rows they are, and what the parts say together."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache
from typing import Final, TypeVar

from charts.dimensions import HeadingReading, Role, read_heading
from charts.headings.ways import begins_at_a_place
from charts.layout.fields import Field
from charts.layout.looks import Look, look
from charts.layout.named_value import named_parts
from charts.layout.view import At, View
from charts.quantities import FAMILY, Family, Unit
from charts.schema import Basis, Definition, Dimension

MOST_HEADING_ROWS: Final = 4
T = TypeVar("T")
_THING: Final = re.compile(r"\d\s?[^\W\d_]{1,3}\s+[^\W\d_]{4,}\s*$")
"""``100 g balls``: an amount and what there is of it."""
_LETTER: Final = re.compile(r"[A-Z][.)]?")
_ENDS: Final = frozenset({Role.LOW_END, Role.HIGH_END})
_CONTINUING: Final = _ENDS | {Role.UNIT}
_MASSES: Final = frozenset({Unit.KG, Unit.LB, Unit.ST})
_MAY_BE_MASSES: Final = frozenset({Dimension.WEIGHT, Dimension.OTHER, None})


def heading_rows(view: View) -> int:
    """How many leading rows of the view are headings: 0 to 4.

    A heading row holds no value. Rows of labels only belong to the body, unless a row that names
    dimensions follows them (reference letters above the names).
    """
    if _size_in_the_corner(view):
        return 1
    looks: list[list[Look]] = []
    for row in range(min(view.height, MOST_HEADING_ROWS + 1)):
        here = [look(at.text) for at in view.row(row) if at is not None]
        if any(_is_figure(one) for one in here) and not _names_with_a_thing(here):
            break
        if _names_its_values(view, row):
            break
        looks.append(here)
    while looks and not (_is_heading_row(looks[-1]) or _lengths_below(view, looks)):
        looks.pop()
    return min(len(looks), MOST_HEADING_ROWS)


def _names_its_values(view: View, row: int) -> bool:
    """``S | Chest 82-86 cm`` over ``M | Chest 87-91 cm``: each cell names what it measures."""
    if row + 1 == view.height:
        return False
    for here, below in zip(view.row(row), view.row(row + 1), strict=True):
        if here is None or below is None or not any(map(str.isdigit, here.text)):
            continue
        first, second = ({name.lower() for name in named_parts(at.text)} for at in (here, below))
        if first & second:
            return True
    return False


def _size_in_the_corner(view: View) -> bool:
    """``36 | Chest | Waist`` over ``38 | 84 | 68`` down to a blank: the corner is missing."""
    if view.height < 3 or view.at(view.height - 1, 0) is not None:
        return False
    first, *rest = [look(at.text) if at is not None else None for at in view.row(0)]
    named = bool(rest) and all(one is not None and one.measures for one in rest)
    return named and first is not None and first.label is not None and first.value


def _lengths_below(view: View, looks: Sequence[Sequence[Look]]) -> bool:
    """``Height | | |`` over ``Short | Regular | Tall``: lengths below a measure, beside no size."""
    if len(looks) < 2:
        return False
    corner, above = view.at(len(looks) - 1, 0), view.at(len(looks) - 2, 0)
    spans = corner is not None and above is not None and corner.origin == above.origin
    below = looks[-1][1:] if spans else looks[-1]
    if (corner is not None and not spans) or len(below) < 2:
        return False
    words = all(one.length is not None and len(one.text) > 2 for one in below)
    return words and any(one.measures for one in looks[-2])


def _is_figure(one: Look) -> bool:
    """A value, a list of them, or figures that no rule covers: they start like figures."""
    if one.listing:
        return True
    if one.wordy_label or one.heads:
        return False
    return one.value or (one.figures and one.text[:1] in "0123456789<>~≤≥+-(")


def _names_with_a_thing(looks: Sequence[Look]) -> bool:
    """Names of measures, and something counted among them: ``100 g balls`` is no figure."""
    counted = [one for one in looks if _is_figure(one)]
    things = all(not one.value and _THING.search(one.text) for one in counted)
    measures = sum(one.measures for one in looks)
    return things and len(counted) < measures and measures > 1


def _is_heading_row(looks: Sequence[Look]) -> bool:
    """A row that names something, holds words that are no labels, or several bands."""
    if len(looks) > 1 and all(one.band is not None for one in looks):
        return True
    if any(one.heads for one in looks):
        return not _labels_after_a_name(looks)
    return any(not one.sure_label and not one.blank for one in looks)


def _labels_after_a_name(looks: Sequence[Look]) -> bool:
    """``Size | S | M | L``: a row of a table whose sizes run across, read the wrong way.

    A name with a unit is none of them: ``Länge (cm)`` measures, ``Länge`` may be a long size.
    """
    return len(looks) > 1 and all(one.wordy_label and one.heading.unit is None for one in looks[1:])


def heads_of(view: View, column: int, rows: int) -> tuple[At, ...]:
    """The heading cells over a column, from top to bottom, merged ones once."""
    found: dict[tuple[int, int], At] = {}
    for row in range(rows):
        at = view.at(row, column)
        if at is not None and not look(at.text).blank:
            found.setdefault(at.origin, at)
    return tuple(found.values())


def combined(heads: Sequence[At]) -> HeadingReading:
    """What the heading cells of one column say together; the lowest that speaks is believed."""
    return _combined(tuple(at.text for at in heads))


@lru_cache(maxsize=8192)
def _combined(texts: tuple[str, ...]) -> HeadingReading:
    if not texts:
        return HeadingReading(Role.UNKNOWN)
    # A letter beside a name is a reference to a drawing: A, Brustumfang.
    texts = tuple(text for text in texts if not _LETTER.fullmatch(text.strip())) or texts
    if len(texts) == 1:
        return look(texts[0]).heading
    texts = _without_places(texts)
    parts = [look(text).heading for text in texts]
    named = [part for part in parts if part.role is not Role.UNKNOWN]
    joined = read_heading(" ".join(texts))
    if not any(part.role is Role.MEASURE for part in parts) and joined.role is Role.MEASURE:
        named = [joined]
    elif joined.role in _ENDS and not any(part.role in _ENDS for part in parts):
        named.append(joined)  # French "de", alone the letters of a country, is an end here
    if not named:
        return joined
    merged = _merged(named)
    if _broken(merged, joined, parts):
        return with_unit_of(joined, parts)
    # "Back" over "length", "Chest" over "girth": one heading that was broken over two rows.
    if _vague(merged) and joined.role is Role.MEASURE and not _vague(joined):
        merged = replace(joined, unit=merged.unit or joined.unit, band=merged.band or joined.band)
    return with_unit_of(merged, parts)


def _broken(
    merged: HeadingReading, joined: HeadingReading, parts: Sequence[HeadingReading]
) -> bool:
    """Whether ``Tour`` over ``de`` over ``poitrine`` is one name that was broken at its blanks.

    A part alone may be an end, "de" from, where the whole is a measure; or only the whole says
    whose it is: ``To fit`` over ``chest``.
    """
    if joined.role is not Role.MEASURE or joined.dimension is None or joined.candidates:
        return False
    last = next((part for part in reversed(parts) if part.role is not Role.UNIT), joined)
    if last.role in _ENDS and last.dimension is None:
        return False  # "To fit" over "waist" over "from"
    ends = any(part.role in _ENDS for part in parts)
    whose = merged.dimension is joined.dimension and merged.basis is Basis.UNKNOWN
    return ends or (whose and joined.basis is not Basis.UNKNOWN)


def _without_places(texts: tuple[str, ...]) -> tuple[str, ...]:
    """``Waist`` over ``from 2 cm above the navel``: where it is measured, and no end of a range."""
    first = look(texts[0]).heading
    if first.role is not Role.MEASURE or first.dimension is None or first.candidates:
        return texts
    found = [texts[0]]
    for text in texts[1:]:
        if look(text).heading.role not in _ENDS or not begins_at_a_place(text):
            found.append(text)
            continue
        whole = read_heading(f"{texts[0]} {text}")
        if whole.dimension is first.dimension and not whole.candidates:
            found[0] = f"{texts[0]} {text}"  # it may say how, or whose: from armpit to armpit
        elif look(text).heading.dimension is not None:
            found.append(text.split(maxsplit=1)[1])
    return tuple(found)


def with_unit_of(reading: HeadingReading, parts: Sequence[HeadingReading]) -> HeadingReading:
    """A heading with the unit that words without a measure print above it: Garment (in)."""
    mass = reading.dimension is Dimension.WEIGHT
    family = Family.MASS if mass else Family.LENGTH
    units = [one.unit for one in parts if one.unit is not None and FAMILY[one.unit] is family]
    if reading.unit is not None or reading.dimension in {None, Dimension.AGE} or not units:
        return reading
    return replace(reading, unit=units[-1])


def _vague(reading: HeadingReading) -> bool:
    return reading.role not in _ENDS and reading.dimension in {None, Dimension.OTHER}


def _merged(parts: Sequence[HeadingReading]) -> HeadingReading:
    measures = [part for part in parts if part.role is Role.MEASURE]
    head = _role_giver(parts)
    dimension = next((part.dimension for part in reversed(parts) if part.dimension), None)
    said = measures[-1] if measures else head
    return replace(
        head,
        dimension=dimension,
        definition=_last(parts, "definition", Definition.UNKNOWN),
        basis=_last(parts, "basis", Basis.UNKNOWN),
        unit=_last(parts, "unit", None),
        second_unit=_last(parts, "second_unit", None),
        band=_last(parts, "band", None),
        candidates=said.candidates or _friends(parts, head),
        garment_sign=any(part.garment_sign for part in parts),
        across=any(part.across for part in parts),
    )


def _friends(
    parts: Sequence[HeadingReading], head: HeadingReading
) -> tuple[tuple[Role, Dimension | None], ...]:
    """What a word for size measures over the end of a range: ``Taille`` over ``von``, ``bis``."""
    if head.role not in _ENDS:
        return ()
    said = next((part.candidates for part in reversed(parts) if part.candidates), ())
    return tuple(one for one in said if one[0] is Role.MEASURE)


def _role_giver(parts: Sequence[HeadingReading]) -> HeadingReading:
    """The part that says what the column is for: an end beats a measure, a measure a unit."""
    for roles in (
        {Role.LOW_END, Role.HIGH_END, Role.TOLERANCE, Role.STEP},
        {Role.MEASURE},
        {Role.LABEL, Role.LENGTH_AXIS, Role.IDENTITY, Role.OTHER},
    ):
        for part in reversed(parts):
            if part.role in roles:
                return part
    return parts[-1]


def _last(parts: Sequence[HeadingReading], name: str, nothing: T) -> T:
    for part in reversed(parts):
        value: T = getattr(part, name)
        if value != nothing:
            return value
    return nothing


def continues(reading: HeadingReading, left: Dimension | None = None) -> bool:
    """Whether a heading needs the dimension of its ``left`` neighbour: ``inch``, ``to``."""
    if reading.unit in _MASSES and left not in _MAY_BE_MASSES:
        return False  # no kilograms are how tall somebody is
    if reading.rest or (reading.role is Role.UNIT and reading.unit is None):
        return False  # "Nape to floor" is a measure of its own, whatever its "to" could be
    if reading.candidates:
        return False  # "Taille min" names a measure, in one language or another
    return reading.role in _CONTINUING and reading.dimension is None


def names_itself(heads: Sequence[At], before: Sequence[Field]) -> bool:
    """Whether words nobody knows stand over a unit, and not over the column to the left as well.

    ``Leg loops`` over ``cm`` beside ``Waist`` over ``cm`` is no second waist.
    """
    shared = {at.origin for field in before[-1:] for at in field.heads}
    own = (look(at.text).heading for at in heads[:-1] if at.origin not in shared)
    return any(reading.role is Role.UNKNOWN and reading.rest for reading in own)


def continued(reading: HeadingReading, left: HeadingReading) -> HeadingReading:
    """A heading such as ``inch`` or ``to`` with the dimension of the heading to its left."""
    return replace(
        reading,
        role=Role.MEASURE if reading.role in {Role.UNIT, Role.BAND} else reading.role,
        dimension=left.dimension,
        definition=left.definition,
        basis=left.basis,
        unit=reading.unit or (left.unit if reading.role is not Role.UNIT else None),
        band=reading.band or left.band,
        candidates=left.candidates,
        garment_sign=left.garment_sign,
        across=left.across,
    )
