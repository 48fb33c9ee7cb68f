"""What the words around a table say of some of its columns only.

A clause that names columns, or begins with a mark that they bear, speaks of these; the rest of the
text speaks of the others. What is said of one column is believed before what is said of all.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final, NamedTuple

from charts.columns.clauses import Clauses, clauses_of
from charts.columns.marks import marked_parts, marks_on
from charts.columns.named_before import bears_in_rows, name_before, names_rows, of_band
from charts.columns.words import Surroundings, Words, title_of
from charts.headings.whose import Whose
from charts.layout.fields import FieldKind, Table
from charts.remembered import remembered
from charts.schema import Basis, UnitFrom

_SCOPED: Final = frozenset({UnitFrom.NOTE, UnitFrom.TITLE})


class OfSome(NamedTuple):
    """What is said of one column in particular, and the words that say it."""

    said: Whose
    words: str


def said_of_some(heading: str, around: Surroundings) -> OfSome | None:
    """What is said of the column under ``heading`` in particular; None where nothing is.

    Two notes that say opposite things of it leave it open.
    """
    found = [
        OfSome(one.said, words.text)
        for words in around.words
        for one in _clauses(words, around).scoped
        if heading in one.headings
    ]
    if not found:
        return None
    bases = {one.said.basis for one in found} - {Basis.UNKNOWN}
    if len(bases) > 1 and Basis.BODY in bases:
        return found[0]._replace(said=Whose(open=True))
    return next((one for one in found if one.said.basis is not Basis.UNKNOWN), found[0])


def said_of_all(words: Words, heading: str, around: Surroundings) -> str:
    """What is left of a text for the column under ``heading`` without what it says of others."""
    clauses = _clauses(words, around)
    if not clauses.divided:
        return words.text
    return "" if heading in clauses.apart else ". ".join(clauses.general)


@remembered
def _clauses(words: Words, around: Surroundings) -> Clauses:
    """The clauses of one text, those behind a mark or a name for what bears it."""
    headings = _headings(around)
    if words.kind not in _SCOPED or not headings:
        return Clauses()
    parts = [_of_part(mark, part, headings, around) for mark, part in marked_parts(words.text)]
    return Clauses(
        tuple(statement for one in parts for statement in one.scoped),
        tuple(clause for one in parts for clause in one.general),
        frozenset().union(*(one.apart for one in parts)),
        any(one.divided for one in parts),
    )


def _of_part(mark: str, text: str, headings: tuple[str, ...], around: Surroundings) -> Clauses:
    bearing = frozenset(one for one in headings if mark and mark in marks_on(one))
    if bearing:
        return clauses_of(text, headings, bearing)
    if mark and bears_in_rows(mark, around.table):
        return _in_doubt(clauses_of(text, headings, frozenset(headings)))
    name, behind = name_before(text)
    if not name:
        return clauses_of(text, headings)
    if names_rows(name, around.table):
        return _in_doubt(clauses_of(behind, headings, frozenset(headings)))
    banded = of_band(name, around.table, title_of(around.table))
    if banded is None:
        return clauses_of(text, headings)
    return clauses_of(behind, headings, banded) if banded else Clauses(divided=True)


def _in_doubt(clauses: Clauses) -> Clauses:
    """What is said of some rows of a column leaves open whose measures the column gives."""
    scoped = (one._replace(said=Whose(open=True)) for one in clauses.scoped)
    return replace(clauses, scoped=tuple(scoped))


def _headings(around: Surroundings) -> tuple[str, ...]:
    return _headings_of(around.table)


@remembered
def _headings_of(table: Table) -> tuple[str, ...]:
    values = table.of(FieldKind.VALUES)
    return tuple(dict.fromkeys(one.printed_heading for one in values if one.heads))
