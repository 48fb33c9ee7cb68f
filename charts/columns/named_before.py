"""Names before a colon that narrow what a note says: ``XS: of the garment``, ``Men: body``."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache
from typing import Final

from charts.columns.marks import marks_on
from charts.headings.clause_words import listed
from charts.layout.fields import FieldKind, Table
from charts.layout.looks import look
from charts.vocabulary import normal

_NAME: Final = re.compile(r"(?:^|[;.]\s*)([^:;.]{1,40}):\s*(?=[^\W\d_])")
_APART: Final = re.compile(r"\s*[,/&+]\s*|\s+")


@lru_cache(maxsize=4096)
def name_before(text: str) -> tuple[str, str]:
    """What a note names before a colon, and what stands behind it; "" where it names nothing."""
    found = _NAME.search(text)
    return (found[1].strip(), text[found.end() :]) if found else ("", text)


def names_rows(name: str, table: Table) -> bool:
    """Whether it names some sizes of a table, and not all: ``XS and S``."""
    labels = {normal(text) for text in _labels(table)}
    if normal(name) in labels:
        return len(labels) > 1
    named = {normal(part) for part in _APART.split(name)} - listed("joins") - {""}
    return bool(named) and named < labels


def bears_in_rows(mark: str, table: Table) -> bool:
    """Whether some labels or cells of a table bear a mark, and not each of its rows does."""
    rows = [
        any(mark in _signs(at.text) for field in table.fields for at in field.cells[line])
        for line in range(table.lines)
    ]
    return any(rows) and not all(rows)


def _signs(text: str) -> frozenset[str]:
    """The marks of a cell; its figures and letters are no marks."""
    return frozenset(one for one in marks_on(text) if not one.isascii() or not one.isalnum())


def of_band(name: str, table: Table, title: str | None) -> frozenset[str] | None:
    """The headings that a note about a band speaks of; None where it is about no band here."""
    seen = look(name)
    if not seen.bare_band:
        return None
    values = table.of(FieldKind.VALUES)
    banded = {one.printed_heading for one in values if one.heading.band == seen.band}
    if banded:
        return frozenset(banded)
    own = look(title).band if title else None
    if own is None or any(one.heading.band for one in values):
        return None
    same = own == seen.band
    return frozenset(one.printed_heading for one in values) if same else frozenset()


def _labels(table: Table) -> Iterator[str]:
    for field in table.of(FieldKind.LABEL)[:1]:
        yield from (cell[0].text for cell in field.cells if cell)
