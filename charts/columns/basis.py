"""Whose measure a column gives: the body's, the finished vest's, or half of it laid flat.

Cell words beat the heading, the heading the title, the title a note. Beside height or weight a
figure is the body's. Asked about, once a table: a sign of garment measures without a word that says
so, a title that says the opposite of a heading, and words that leave it open.
"""

from __future__ import annotations

import re
from collections.abc import Sequence, Set
from dataclasses import replace
from typing import Final

from charts.answers import Meaning, Scope
from charts.columns.beside_heights import garments_beside_heights
from charts.columns.flat_refuted import flat_refuted, headings_refuted
from charts.columns.meaning import Column
from charts.columns.perhaps_lengths import may_be_a_length
from charts.columns.roomy_for_children import roomy_for_children
from charts.columns.roomy_letters import roomy_for_letters
from charts.columns.said_basis import Said, opposed, said_around, table_of_the_body
from charts.columns.sides import beside_sides, side_over
from charts.columns.twice_a_width import twice_a_width
from charts.columns.words import Surroundings
from charts.headings.ease import speaks_of_ease
from charts.headings.over_clothes import over_clothes
from charts.layout.fields import FieldKind
from charts.schema import Basis, Dimension

_OF_THE_BODY: Final = frozenset({Dimension.HEIGHT, Dimension.WEIGHT, Dimension.AGE})
_BODY_OUTRIGHT: Final = re.compile(
    r"\bbody\b|\bto fit\b|^\s*fits\b|\bfits\s+(?:a|an|the|up|from|chest|bust|waist|hips?|\d)"
    r"|\bkörper|\bcorps\b|corporel|lichaam|\bcorpo\b|cuerpo|corporal"
    r"|\bkropp|\bkrop|\bciała\b|\btěl|passend für",
    re.IGNORECASE,
)
"""Words of a heading that name the body itself, not only a girth."""
_NOT_HALVED: Final = frozenset(
    {Dimension.BACK_LENGTH, Dimension.ARM_LENGTH, Dimension.INSEAM, Dimension.SHOULDER_BREADTH}
)
"""What lies flat is as long as ever; only a girth is half of itself."""
_OF_A_GARMENT: Final = frozenset({Dimension.SHOULDER_BREADTH, Dimension.ARM_LENGTH})
_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_ASKED_BESIDE: Final = _GIRTHS | _NOT_HALVED
_SILENT: Final = frozenset({Dimension.INSEAM, Dimension.OTHER})
"""Beside a person's height an inseam is still the trousers' own as often as the leg's."""


def with_basis(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with their basis, and the question where nothing settles it."""
    beside = any(one.dimension in _OF_THE_BODY and not may_be_a_length(one) for one in columns)
    toleranced = bool(around.table.of(FieldKind.TOLERANCE)) or any(
        column.field.tolerance is not None for column in columns
    )
    outright = {_outright(column) for column in columns}
    if beside:
        columns = garments_beside_heights(columns, _said_outright(columns, around))
    made = toleranced or _of_a_garment(columns)
    roomy = roomy_for_children(columns, around)
    if made or roomy or roomy_for_letters(columns, around):
        columns = [_in_doubt(column, around, unsaid=roomy) for column in columns]
    beside_a_body = table_of_the_body(around)
    doubled = twice_a_width(columns)
    found = []
    flat = ""
    for column in columns:
        said = said_around(column, around)
        if (beside_a_body and said.words == around.file) or _of_another(said, column, columns):
            said = Said()  # what a file of several tables is called holds for one of them at least
        if _answered(column, around) and column.basis is not Basis.UNKNOWN:
            found.append(column)  # no words around are believed more than a person
            continue
        if side_over(column, around) is not None:
            found.append(column)  # nor more than the word right above it
            continue
        if over_clothes(column.heading) and not _answered(column, around):
            found.append(_asked(replace(column, basis=Basis.UNKNOWN), around, case="clothes"))
            continue
        flat = said.words if said.basis is Basis.FLAT else flat
        resolved = _resolved(column, said, beside=beside, toleranced=toleranced)
        resolved = _of_a_width(resolved, column, said, doubled)
        if _left_open(column, said, outright, around):
            likely = _of_tolerances(_of_a_pattern(resolved, around), toleranced=toleranced)
            found.append(_asked(likely, around, said.words))
        elif beside_sides(column, around) and column.dimension in _ASKED_BESIDE:
            found.append(_asked(replace(resolved, basis=column.basis), around))
        elif _sounds_made(resolved) and not _is_a_length(resolved):
            found.append(_asked(resolved, around))
        elif resolved.basis is Basis.UNKNOWN and column.dimension in _GIRTHS and beside_a_body:
            likely = _of_tolerances(resolved, toleranced=toleranced)
            found.append(_asked(likely, around, beside_a_body))
        else:
            found.append(resolved)
    found = flat_refuted(found, flat, around) if flat else found
    return headings_refuted(found, [one for one in found if not _answered(one, around)], around)


def _of_a_width(resolved: Column, column: Column, said: Said, doubled: Set[int]) -> Column:
    """A girth of twice a width, no longer the body's for its sound or for what is beside it."""
    unsaid = _outright(column) is Basis.UNKNOWN and said.basis is not Basis.BODY
    if resolved.basis is not Basis.BODY or not unsaid or column.number not in doubled:
        return resolved
    return replace(resolved, basis=Basis.UNKNOWN, garment_sign=True)


def _said_outright(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns whose own heading, or the word above it, or a person says whose they are."""
    return [
        one
        for one in columns
        if _outright(one) is not Basis.UNKNOWN
        or _answered(one, around)
        or side_over(one, around) is not None
    ]


def _of_a_garment(columns: Sequence[Column]) -> bool:
    """Shoulders, sleeves and the garment's own length together are a garment's measures."""
    measures = {column.dimension for column in columns if column.basis is not Basis.BODY}
    length = any(one.garment_sign and one.dimension is Dimension.OTHER for one in columns)
    return length and measures >= _OF_A_GARMENT


def _sounds_made(column: Column) -> bool:
    """A word by which garments are measured, where nothing says whose measure it is."""
    return column.basis is Basis.UNKNOWN and column.garment_sign


def _is_a_length(column: Column) -> bool:
    return column.dimension is Dimension.OTHER and not column.field.heading.across


def _in_doubt(column: Column, around: Surroundings, *, unsaid: bool) -> Column:
    """A girth that only sounds like a body's may be the garment's beside its other measures.

    So may one that nothing is said of, where what is beside it would make it the body's.
    """
    kinds = {Basis.BODY, Basis.UNKNOWN} if unsaid else {Basis.BODY}
    sounds = column.basis in kinds and _outright(column) is Basis.UNKNOWN
    sounds = sounds and side_over(column, around) is None
    if not sounds or column.dimension not in _GIRTHS or _answered(column, around):
        return column
    return replace(column, basis=Basis.UNKNOWN, garment_sign=True)


def _outright(column: Column) -> Basis:
    """The basis that a heading itself says, not by sounding like a girth; UNKNOWN else."""
    if column.dimension in _OF_THE_BODY or column.dimension is Dimension.OTHER:
        return Basis.UNKNOWN
    if column.basis is Basis.BODY and _BODY_OUTRIGHT.search(column.heading) is None:
        return Basis.UNKNOWN
    return column.basis


def _of_another(said: Said, column: Column, columns: Sequence[Column]) -> bool:
    """Whether words of the garment are another column's: no table gives one measure twice.

    ``Your chest | Chest of the vest`` under ``Garment measurements``: only the second is headed so.
    """
    return (
        opposed(said.basis, Basis.BODY)
        and _outright(column) is Basis.UNKNOWN
        and any(
            one.dimension is column.dimension
            and one.unit is column.unit
            and opposed(_outright(one), Basis.BODY)
            for one in columns
            if one is not column
        )
    )


def _resolved(column: Column, said: Said, *, beside: bool, toleranced: bool) -> Column:
    if column.basis is not Basis.UNKNOWN and not _overruled(column, said.basis):
        return column
    if column.dimension in _OF_THE_BODY:
        return replace(column, basis=Basis.BODY)
    if said.basis is Basis.FLAT and column.dimension in _NOT_HALVED:
        return replace(column, basis=Basis.FINISHED)
    if said.basis is Basis.BODY and column.garment_sign and column.dimension is Dimension.OTHER:
        return column  # "measure your body" makes no sleeve and no breadth of a shirt the body's
    if said.basis is not Basis.UNKNOWN:
        return replace(column, basis=said.basis)
    # Body measures never carry a tolerance: a doubtful heading beside one is the vest's own.
    if column.garment_sign and toleranced:
        return replace(column, basis=Basis.FINISHED)
    if beside and column.dimension not in _SILENT and not column.garment_sign and not said.open:
        return replace(column, basis=Basis.BODY)
    return column


def _overruled(column: Column, said: Basis) -> bool:
    """Whether the words around say garment where the heading only sounds like a body.

    A vest has a girth as well: "tour de poitrine" under "mesures du vêtement fini" is the vest's.
    """
    sounds = column.basis is Basis.BODY and _outright(column) is Basis.UNKNOWN
    return sounds and opposed(said, Basis.BODY) and column.dimension not in _OF_THE_BODY


def _left_open(column: Column, said: Said, outright: Set[Basis], around: Surroundings) -> bool:
    """Whether the words around leave the basis open, or say the opposite of the heading.

    A heading beside which another one says the same as the title is told apart by its own words.
    """
    if column.dimension in _OF_THE_BODY or _answered(column, around):
        return False
    own = _outright(column)
    if own is Basis.UNKNOWN:
        return said.open and column.basis in {Basis.UNKNOWN, Basis.BODY}
    agreeing = any(not opposed(said.basis, one) for one in outright - {Basis.UNKNOWN, own})
    return opposed(own, said.basis) and not agreeing


def _of_a_pattern(column: Column, around: Surroundings) -> Column:
    """A girth of a pattern, no longer taken for the body's because it is called a girth."""
    if column.dimension not in _GIRTHS or _outright(column) is not Basis.UNKNOWN:
        return column
    patterned = any(speaks_of_ease(one.text) for one in around.words)
    return replace(column, basis=Basis.UNKNOWN) if patterned else column


def _of_tolerances(column: Column, *, toleranced: bool) -> Column:
    """A girth that is asked about beside tolerances: only what is made has them."""
    doubtful = column.basis is Basis.UNKNOWN and column.dimension in _GIRTHS
    return replace(column, basis=Basis.FINISHED) if toleranced and doubtful else column


def _answered(column: Column, around: Surroundings) -> bool:
    """Whether a person has said whose measures the column gives."""
    return any(
        act.basis is not None and (act.scope is not Scope.COLUMN or column.heading in act.headings)
        for _, act in around.answers.of(Meaning)
    )


def _asked(column: Column, around: Surroundings, words: str = "", *, case: str = "") -> Column:
    ident = around.log.add(
        "basis-doubtful",
        column.place,
        key=f"{around.table.area} {case}".rstrip(),
        heading=column.heading,
        case="words" if words else case,
        text=words,
    )
    return column.asking(ident)
