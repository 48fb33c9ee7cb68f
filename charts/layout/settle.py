"""Which column names the sizes, when the columns are seen side by side."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.dimensions import Role, read_heading
from charts.layout.beside_things import measured_after_all
from charts.layout.dittos import dittos_filled
from charts.layout.false_friends import friends_told
from charts.layout.fields import Field, FieldKind
from charts.layout.groups_filled import groups_filled
from charts.layout.headless import headless, headless_inside
from charts.layout.kinds import Content
from charts.layout.letters_among_words import letters_among_words
from charts.layout.looks import look
from charts.layout.measured_names import measured_names
from charts.layout.numbers_beside_letters import numbers_beside_letters
from charts.layout.people_in_rows import band_under_size
from charts.layout.people_name_sizes import people_name_sizes
from charts.layout.prefixed import named_bands, prefixed
from charts.layout.shared_headings import shared_parted
from charts.layout.sizes_below import sizes_below
from charts.layout.sizes_by_girth import double_sizes, fits_beside_garments
from charts.layout.sizes_with_units import sizes_with_units
from charts.plausible_ranges import usual
from charts.quantities import Unit
from charts.schema import Dimension, Kind

_LABELLING: Final = frozenset({FieldKind.LABEL, FieldKind.LENGTH})
_HEIGHTS_CM: Final = (Decimal(92), Decimal(205))
"""Figures under a word for size that are body heights."""
_KEY_DIMENSIONS: Final = (Dimension.AGE, Dimension.HEIGHT, Dimension.NECK)


_OF_NO_SIZE: Final = {
    Role.IDENTITY: FieldKind.IDENTITY,
    Role.STEP: FieldKind.SKIPPED,
    Role.OTHER: FieldKind.SKIPPED,
}
"""Headings that name no size, and what stands under them instead."""


def settled(fields: Sequence[Field]) -> list[Field]:
    """The fields with one named as the sizes, where anything can name them."""
    fields = measured_after_all(dittos_filled(shared_parted(groups_filled(fields))))
    fields = [_named_size(field) for field in sizes_with_units(fields)]
    fields = [_article_beside_sizes(field, fields) for field in fields]
    fields = measured_names([_measured_sizes(field, fields) for field in fields])
    fields = friends_told([_in_its_language(field, fields) for field in fields])
    fields = [_measure_under_size(field, fields) for field in fields]
    fields = [band_under_size(field, fields) for field in fields]
    fields = [_figures_beside_sizes(field, fields) for field in fields]
    fields = people_name_sizes(sizes_below(_named_below_groups(fields)))
    fields = numbers_beside_letters(fields)
    if any(field.kind in _LABELLING for field in fields):
        return fields
    for choose in _CHOICES:
        chosen = choose(fields)
        if chosen is not None:
            fields[chosen] = replace(fields[chosen], kind=FieldKind.LABEL)
            break
    return fields


def _named_size(field: Field) -> Field:
    """``Glove size`` over 6, 7, 8: a word for size beside a thing that is no measure of a body."""
    if field.kind is not FieldKind.VALUES or field.heading.dimension is not Dimension.OTHER:
        return field
    named = _says_size(field) and _names_sizes(_texts(field))
    return replace(field, kind=FieldKind.LABEL) if named else field


def _article_beside_sizes(field: Field, fields: Sequence[Field]) -> Field:
    """``Art.-Nr.`` over WL-3301 is no size, however it is spelt, beside a column headed Größe."""
    if field.kind is not FieldKind.LABEL or field.heading.role not in _OF_NO_SIZE:
        return field
    others = [one for one in fields if one is not field and one.kind is FieldKind.LABEL]
    headed = any(one.heading.role is Role.LABEL and not _repeats(one) for one in others)
    return replace(field, kind=_OF_NO_SIZE[field.heading.role]) if headed else field


def _measured_sizes(field: Field, fields: Sequence[Field]) -> Field:
    """``Metric sizes (cm)`` over 92 96: figures in a printed unit beside letters for the sizes."""
    of_size = field.kind is FieldKind.LABEL and field.heading.role is Role.LABEL
    if not of_size or field.heading.unit is None:
        return field
    content = Content.of(field.cells)
    others = [one for one in fields if one is not field and one.kind is FieldKind.LABEL]
    lettered = any(Content.of(one.cells).most(Content.of(one.cells).wordy_labels) for one in others)
    lists = sum(len(text.split()) > 1 for text in _texts(field))
    measured = lettered and not content.wordy_labels and 2 * lists > content.filled
    return replace(field, kind=FieldKind.VALUES) if measured else field


def _in_its_language(field: Field, fields: Sequence[Field]) -> Field:
    """A word for size in one language that is a measure in the one the other headings speak.

    "Taille" between German headings is a waist.
    """
    spoken = {one.heading.language for one in fields if one is not field} - {None}
    if field.kind is not FieldKind.LABEL or not field.heading.candidates or len(spoken) != 1:
        return field
    meant = read_heading(field.printed_heading, spoken.pop())
    others = any(one.kind is FieldKind.LABEL for one in fields if one is not field)
    if meant.role is Role.MEASURE and not meant.candidates and others:
        return replace(field, kind=FieldKind.VALUES, heading=meant)
    return field


def _measure_under_size(field: Field, fields: Sequence[Field]) -> Field:
    """A word for size that can also name a measure, beside a column that surely names the sizes.

    "Größe" over 160-170 beside S, M, L is a height; a second "Taille" over 68-72 is a waist.
    A word that only means size holds measures when they are body heights.
    """
    if field.kind is not FieldKind.LABEL or field.heading.role is not Role.LABEL:
        return field
    others = [one for one in fields if one is not field and one.kind is FieldKind.LABEL]
    surer = [one for one in others if _surer(one, field)]
    if not surer or (all(_repeats(one) for one in surer) and _names_sizes(_texts(field))):
        return field
    given = {one.heading.dimension for one in fields if one.kind is FieldKind.VALUES}
    meant = [dim for role, dim in field.heading.candidates if role is Role.MEASURE and dim]
    if any(dim not in given and _usual(field, dim) for dim in meant) or (
        not meant and Dimension.HEIGHT not in given and _holds_heights(field)
    ):
        return replace(field, kind=FieldKind.VALUES)
    return field


def _texts(field: Field) -> list[str]:
    return [cell[0].text.strip() for cell in field.cells if cell]


def _repeats(field: Field) -> bool:
    """Whether a name stands twice: 46 and 48 are both M, so M is the key of neither."""
    texts = _texts(field)
    return len(set(texts)) < len(texts)


def _figures_beside_sizes(field: Field, fields: Sequence[Field]) -> Field:
    """Numbers under an unknown word are no names while another column is headed or sure."""
    content = Content.of(field.cells)
    unnamed = field.kind is FieldKind.LABEL and field.heading.role is Role.UNKNOWN and field.heads
    if not unnamed or content.most(content.sure_labels):
        return field
    others = [one for one in fields if one is not field and one.kind is FieldKind.LABEL]
    if any(one.heading.role is Role.LABEL or Content.of(one.cells).all_sure for one in others):
        return replace(field, kind=FieldKind.VALUES)
    return field


def _named_below_groups(fields: list[Field]) -> list[Field]:
    """``Short sizes | | | Tall sizes`` over 17, 18, 19, 68: the numbers below name the sizes.

    The words of the groups are incomplete and stand beside a headless column that is complete and
    repeats nothing.
    """
    for number, field in enumerate(fields[:-1]):
        below = fields[number + 1]
        gaps = sum(not cell for cell in field.cells)
        bare = below.kind is FieldKind.VALUES and not below.heads and all(below.cells)
        if field.kind is not FieldKind.LABEL or 3 * gaps < len(field.cells) or not bare:
            continue
        texts = [cell[0].text.strip() for cell in below.cells]
        if len(set(texts)) == len(texts) and all(look(text).label for text in texts):
            fields[number + 1] = replace(below, kind=FieldKind.LABEL)
    return fields


def _surer(one: Field, field: Field) -> bool:
    """Whether a column names the sizes more surely than one that could be a measure.

    By words, or because it stands first under a word for size and the other holds ranges.
    """
    content = Content.of(one.cells)
    if content.most(content.wordy_labels):
        return True
    before = one.heads and field.heads and one.heads[-1].origin < field.heads[-1].origin
    return bool(before) and one.heading.role is Role.LABEL and _ranges(field)


def _ranges(field: Field) -> bool:
    kinds = [q.kind for cell in field.cells if cell and (q := look(cell[0].text).reading.quantity)]
    return bool(kinds) and sum(kind is not Kind.SINGLE for kind in kinds) * 2 > len(kinds)


def _usual(field: Field, dimension: Dimension) -> bool:
    """Whether every figure is usual for the dimension in the heading's unit, in cm or in inches."""
    said = field.heading.unit
    for unit in (said,) if said else (Unit.CM, Unit.IN):
        limits = usual(dimension, unit)
        ends = _ends(field)
        if ends and limits and all(limits[0] <= end <= limits[1] for end in ends):
            return True
    return False


def _holds_heights(field: Field) -> bool:
    """Whether every figure lies where body heights lie, and no letters stand among them.

    ``140 | 152 | S | M``: the sizes of children and of grown-ups in one row.
    """
    low, high = _HEIGHTS_CM
    if Content.of(field.cells).wordy_labels:
        return False
    ends = _ends(field)
    return bool(ends) and all(low <= end <= high for end in ends)


def _ends(field: Field) -> list[Decimal]:
    ends: list[Decimal] = []
    for cell in field.cells:
        quantity = look(cell[0].text).reading.quantity if cell else None
        if quantity is not None:
            given = (quantity.low, quantity.high, quantity.value)
            ends += [end.value for end in given if end is not None]
    return ends


def _headed_size(fields: Sequence[Field]) -> int | None:
    """A word for size over measures names the sizes when nothing else does: ``bis 104 cm``."""
    values = [n for n, field in enumerate(fields) if field.kind is FieldKind.VALUES]
    if len(values) < 2 or fields[values[0]].heading.role is not Role.LABEL:
        return None
    return values[0]


def _running(fields: Sequence[Field]) -> int | None:
    """A running number is a size when nothing else is."""
    for number, field in enumerate(fields[:1]):
        if field.kind is FieldKind.SKIPPED and Content.of(field.cells).running:
            return number
    return None


def _key_dimension(fields: Sequence[Field]) -> int | None:
    """What the other columns are looked up by: ages, body heights, ``Waist size (UK)``.

    Below the ages may stand a size of the grown-ups: 11-12, 13-14, Adult S.
    """
    values = [n for n, field in enumerate(fields) if field.kind is FieldKind.VALUES]
    if len(values) < 2 or not fields[values[0]].heads:
        return None
    first = fields[values[0]]
    texts = [cell[0].text.strip() for cell in first.cells if cell]
    if first.heading.dimension in _KEY_DIMENSIONS:
        aged = first.heading.dimension is Dimension.AGE
        looks = [look(text) for text in texts]
        named = all(one.figures or (aged and one.sure_label) for one in looks)
        return values[0] if named else None
    named = _says_size(first) and (_names_sizes(texts) or double_sizes(texts))
    fitted = double_sizes(texts) and fits_beside_garments(first, fields)
    return values[0] if len(texts) > 1 and (named or fitted) else None


def _unknown_word(fields: Sequence[Field]) -> int | None:
    """Numbers under an unknown word at the edge of a table whose other words are all known."""
    filled = [n for n, field in enumerate(fields) if any(field.cells)]
    unknown = [n for n in filled if fields[n].heads and fields[n].heading.role is Role.UNKNOWN]
    if len(unknown) != 1 or len(filled) < 3 or unknown[0] not in {filled[0], filled[-1]}:
        return None
    texts = [cell[0].text.strip() for cell in fields[unknown[0]].cells if cell]
    return unknown[0] if len(texts) > 1 and _names_sizes(texts) else None


def _says_size(field: Field) -> bool:
    words = field.printed_heading.split()
    return any(read_heading(word).role is Role.LABEL for word in words)


def _names_sizes(texts: Sequence[str]) -> bool:
    """Plain whole numbers, each another: ``Waist size (UK)`` over 28, 30, 32."""
    plain = all(text.isdecimal() and len(text) < 4 for text in texts)
    return plain and len(set(texts)) == len(texts)


_CHOICES: Final = (
    named_bands,
    _headed_size,
    headless,
    _unknown_word,
    prefixed,
    _running,
    _key_dimension,
    headless_inside,
    letters_among_words,
)
"""What may name the sizes where no column surely does, the surest first."""
