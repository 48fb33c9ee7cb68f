"""A measure that names the sizes: ``Size (height in cm)`` over 110, 116, beside an ``EU``.

Such a heading says both what the sizes are called and what is measured. It is the name of the
sizes in its own right, before a column of another system of sizes and before one without a heading.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import Role, read_heading
from charts.labels.words import label_words
from charts.layout.fields import Field, FieldKind
from charts.layout.kinds import Content
from charts.vocabulary import normal

_NAMING: Final = frozenset({FieldKind.LABEL, FieldKind.LENGTH})
_WORD_ENDS: Final = "()[]:,;./"


def measured_names(fields: Sequence[Field]) -> list[Field]:
    """The fields with the first one as sizes, where its heading says so and others only repeat it.

    A column under another word for size, or one of letters, is no such system and stays the key.
    """
    found = list(fields)
    first = next((n for n, field in enumerate(found) if any(field.cells)), None)
    if first is None or not _says_both(found[first]) or not _names(found[first]):
        return found
    rivals = [field for field in found if field.kind in _NAMING]
    nameless = any(not field.heads and any(field.cells) for field in found)
    if (rivals or nameless) and all(map(_a_system, rivals)):
        found[first] = replace(found[first], kind=FieldKind.LABEL)
    return found


def _says_both(field: Field) -> bool:
    """A word for size and another word for a measure with its unit: ``Größe (cm)`` has but one."""
    heading = field.heading
    if field.kind is not FieldKind.VALUES or heading.unit is None or heading.dimension is None:
        return False
    words = [word.strip(_WORD_ENDS) for word in field.printed_heading.split()]
    readings = [read_heading(word) for word in words if word]
    of_size = [one for one in readings if _of_size(one.role, one.candidates)]
    of_measure = [one for one in readings if one.role is Role.MEASURE and one not in of_size]
    return bool(of_size and of_measure)


def _of_size(role: Role, candidates: Sequence[tuple[Role, object]]) -> bool:
    return role is Role.LABEL or any(one is Role.LABEL for one, _ in candidates)


def _names(field: Field) -> bool:
    """Whole numbers, each another and none missing."""
    texts = [cell[0].text.strip() if cell else "" for cell in field.cells]
    return len(set(texts)) == len(texts) > 1 and all(map(str.isdecimal, texts))


def _a_system(field: Field) -> bool:
    """``EU``, ``US``, ``Talla EU``: a country or a region over sizes that are no letters."""
    words = {normal(word.strip(_WORD_ENDS)) for word in field.printed_heading.split()}
    return bool(words & label_words("systems")) and not Content.of(field.cells).wordy_labels
