"""A column that says who wears the sizes beside it: ``Women``, ``Kids``, ``Adults``."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.headings.bands import names_adults
from charts.layout.fields import Field, FieldKind
from charts.layout.kinds import Content
from charts.layout.looks import look

_LABELLING: Final = frozenset({FieldKind.LABEL, FieldKind.LENGTH})


def band_under_size(field: Field, fields: Sequence[Field]) -> Field:
    """A column of band words is no key while another column names the sizes."""
    banded = field.kind is FieldKind.LABEL and (_all_bands(field) or _parts_people(field))
    others = [one for one in fields if one.kind in _LABELLING and one is not field]
    others = [one for one in others if not _all_bands(one)]
    return replace(field, kind=FieldKind.BAND) if banded and others else field


def _all_bands(field: Field) -> bool:
    content = Content.of(field.cells)
    return content.bands == content.filled


def _parts_people(field: Field) -> bool:
    """``Kids | | Adults | |``: the grown-ups, who are no band, beside bands in groups of rows.

    Where each stands once and none is missing, they are the names of the sizes.
    """
    texts = [cell[0].text.strip() for cell in field.cells if cell]
    grouped = len(texts) < len(field.cells) or len(set(texts)) < len(texts)
    people = all(look(text).bare_band or names_adults(text) for text in texts)
    return grouped and people and any(look(text).bare_band for text in texts)
