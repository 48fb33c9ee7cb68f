"""A word in the corner that speaks of the other headings: ``Measure`` over the names of measures.

Seen the way the sizes run, such a word stands over the sizes themselves and names them nothing.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import Look, look

_FEWEST: Final = 2
_WORDS: Final = frozenset(
    (
        *("measure", "measures", "measurement", "measurements", "measuring", "pom", "point"),
        *("punto", "description", "dimension", "dimensions", "position", "body", "part"),
        *("maß", "maße", "mass", "masse", "körpermaße", "messpunkt", "messstelle", "beschreibung"),
        *("bezeichnung", "mesure", "mesures", "désignation", "description", "medida", "medidas"),
        *("misura", "misure", "descrizione", "descripción", "maat", "maten", "lichaamsmaat"),
        *("mått", "mål", "kroppsmått", "kropsmål", "wymiar", "wymiary", "opis", "rozměr", "popis"),
    )
)
"""Words over the names of measures (common practice, no source); a price or a stock is none."""


def corners_mended(fields: Sequence[Field]) -> list[Field]:
    """The fields with sizes that a corner hides, or that its lack has moved, put right."""
    return corner_named(corner_missing(fields))


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


def corner_missing(fields: Sequence[Field]) -> list[Field]:
    """The fields with sizes that stand one place too far to the front put back.

    ``XS | S | M | L`` over ``Chest | 80 | 84 | 88 | 92``: the corner is missing, so that the first
    size stands where the name of the sizes is due and the last figures stand beside none.
    """
    found = list(fields)
    end = max((_filled_to(field) for field in found), default=0)
    for number, field in enumerate(found):
        others = [one for one in found if one is not field and any(one.cells)]
        ahead = _filled_to(field) == end - 1 and _too_far_in_front(field, end - 1)
        if ahead and others and all(one.cells[end - 1] for one in others):
            cells = (field.heads[:1], *field.cells[: end - 1], *field.cells[end:])
            nothing = HeadingReading(Role.UNKNOWN)
            found[number] = replace(
                field, kind=FieldKind.LABEL, heads=(), heading=nothing, cells=cells
            )
    return found


def _filled_to(field: Field) -> int:
    """How many of its cells there are up to the last filled one.

    Behind a table that stands above or below a wider one all are blank.
    """
    return max((number for number, cell in enumerate(field.cells, 1) if cell), default=0)


def _too_far_in_front(field: Field, sizes: int) -> bool:
    """Whether a heading is a size like the ``sizes`` cells below it, which are all filled."""
    if len(field.heads) != 1 or sizes < _FEWEST - 1:
        return False
    looks = [look(at.text) for at in (*field.heads, *(c[0] for c in field.cells[:sizes] if c))]
    kinds = {one.label.kind for one in looks if one.label is not None and not one.heads}
    filled = len(looks) == sizes + 1
    return filled and len(kinds) == 1 and all(one.label is not None for one in looks)


def _all_names(sizes: Sequence[Look]) -> bool:
    """Sizes by names of their own, each another, some of them known; or one size alone."""
    texts = {one.text for one in sizes}
    plain = not any(one.figures or one.blank or one.sentence or one.heads for one in sizes)
    known = any(one.sure_label for one in sizes)
    return plain and known and len(texts) == len(sizes)


def _hides_sizes(field: Field) -> bool:
    """Different labels, a step or a tolerance among them, under a word that is no size."""
    words = {word.strip("():.,/").lower() for word in field.printed_heading.split()}
    if field.kind not in {FieldKind.SKIPPED, FieldKind.NOTE} or not words & _WORDS:
        return False
    looks = [look(cell[0].text) for cell in field.cells if cell]
    sizes = [one for one in looks if one.heading.role not in {Role.STEP, Role.TOLERANCE}]
    if field.kind is FieldKind.NOTE:
        return _all_names(sizes)
    texts = {one.text for one in sizes}
    running = texts == {str(number) for number in range(1, len(texts) + 1)}
    plain = all(one.label is not None for one in sizes)
    if not plain:
        return _all_names(sizes)
    return len(texts) == len(sizes) >= _FEWEST and not running
