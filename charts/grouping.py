"""Questions of one kind as one question of the file: one act settles the values of all of them.

The question stays attached to every value it bears on, and keeps its parts, each with the place
and the print of its own cell, so that an answer notices a cell that has changed since.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Final

from charts.equal_questions import one_of_each, with_joined
from charts.findings import LEVELS, Finding, Level
from charts.schema import FileReading

GROUP: Final = "group"
"""The case of a finding's sentence that speaks of several cells."""
_CELL: Final = "cell"
_NOTATIONS: Final = frozenset({"feet-or-range", "separator-lost", "double-range"})
"""Ways of writing: whoever writes one cell so writes all of them so."""
_HALVES: Final = "laid-flat"
_SLIPS: Final = frozenset({"impossible", "units-disagree", "order-broken"})
"""Slips of single cells, each another: only many alike are one question."""
_MANY: Final = 3


@dataclass(slots=True)
class _Kind:
    """Findings that ask the same, and why each reading may be taken that all of them offer."""

    parts: list[Finding]
    whys: tuple[str, ...]


def grouped(reading: FileReading) -> FileReading:
    """The reading with the questions of one kind joined; what is asked once stays as it is."""
    reading = one_of_each(reading)
    joined: dict[str, Finding] = {}
    for kind in _kinds(reading.findings):
        least = 2 if kind.parts[0].code in _NOTATIONS | {_HALVES} else _MANY
        if len(kind.parts) >= least:
            joined |= dict.fromkeys((part.id for part in kind.parts), _joined(kind))
    return with_joined(reading, joined)


def _kinds(findings: Sequence[Finding]) -> Iterator[_Kind]:
    """The findings that may be joined, by kind: of one code, closed alike, sharing a reading."""
    found: dict[tuple[object, ...], list[_Kind]] = {}
    for one in findings:
        if LEVELS[one.code] is not Level.QUESTION or not _of_a_cell(one):
            continue
        whys = tuple(candidate.why for candidate in one.candidates)
        kinds = found.setdefault((one.code, one.settled), [])
        kind = next((kind for kind in kinds if _shared(kind, one.code, whys)), None)
        if kind is None:
            kinds.append(_Kind([one], whys))
        else:
            kind.parts.append(one)
            kind.whys = tuple(why for why in kind.whys if why in whys)
    for kinds in found.values():
        yield from kinds


def _of_a_cell(one: Finding) -> bool:
    case = one.values.get("case", "")
    if one.code in _NOTATIONS | {_HALVES}:
        return case == _CELL
    return one.code in _SLIPS and (case == _CELL or (case == "" and "other" in one.values))


def _shared(kind: _Kind, code: str, whys: tuple[str, ...]) -> bool:
    """Whether one act can settle both: they offer the same, or a way of writing that both have."""
    if code in _NOTATIONS and kind.whys:
        return any(why in kind.whys for why in whys)
    return kind.whys == whys


def _joined(kind: _Kind) -> Finding:
    first = kind.parts[0]
    more = str(len(kind.parts) - 1)
    return replace(
        first,
        values=MappingProxyType({**first.values, "case": GROUP, "more": more}),
        candidates=tuple(one for one in first.candidates if one.why in kind.whys),
        parts=tuple(kind.parts),
    )
