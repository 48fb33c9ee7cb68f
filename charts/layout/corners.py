"""A word in the corner that speaks of the other headings: ``Measure`` over the names of measures.

Seen the way the sizes run, such a word stands over the sizes themselves and names them nothing.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look

_FEWEST: Final = 2
_WORDS: Final = frozenset(
    (
        *("measure", "measures", "measurement", "measurements", "measuring", "pom", "point"),
        *("description", "dimension", "dimensions", "position", "body", "part"),
        *("maß", "maße", "mass", "masse", "körpermaße", "messpunkt", "messstelle", "beschreibung"),
        *("bezeichnung", "mesure", "mesures", "désignation", "description", "medida", "medidas"),
        *("misura", "misure", "descrizione", "descripción", "maat", "maten", "lichaamsmaat"),
        *("mått", "mål", "kroppsmått", "kropsmål", "wymiar", "wymiary", "opis", "rozměr", "popis"),
    )
)
"""Words over the names of measures (common practice, no source); a price or a stock is none."""


def corner_named(fields: Sequence[Field]) -> list[Field]:
    """The fields with the first one as the sizes, where only a word for measures hides them."""
    found = list(fields)
    first = next((number for number, field in enumerate(found) if any(field.cells)), None)
    named = [field for field in found if field.kind in {FieldKind.LABEL, FieldKind.LENGTH}]
    if first is None or named or not _hides_sizes(found[first]):
        return found
    others = [field for field in found if field is not found[first] and any(field.cells)]
    if any(field.heading.role is Role.MEASURE for field in others):
        found[first] = replace(found[first], kind=FieldKind.LABEL)
    return found


def _hides_sizes(field: Field) -> bool:
    """Different labels, a step or a tolerance among them, under a word that is no size."""
    words = {word.strip("():.,/").lower() for word in field.printed_heading.split()}
    if field.kind is not FieldKind.SKIPPED or not words & _WORDS:
        return False
    looks = [look(cell[0].text) for cell in field.cells if cell]
    sizes = [one for one in looks if one.heading.role not in {Role.STEP, Role.TOLERANCE}]
    texts = {one.text for one in sizes}
    running = texts == {str(number) for number in range(1, len(texts) + 1)}
    plain = all(one.label is not None for one in sizes)
    return plain and len(texts) == len(sizes) >= _FEWEST and not running
