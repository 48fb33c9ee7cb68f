"""Equal questions as one question of the file: of several tables, or of one size throughout.

A page prints its men's and its women's table under the same headings: what ``Length`` means, and
which unit stands nowhere, is asked once and bears on every value of both. Where all figures of one
size leave the order or the step, the size is asked about and not each figure. The question keeps
its parts, so that an answer finds each of them by its own place.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType
from typing import Final

from charts.findings import LEVELS, Finding, Level, listed
from charts.schema import Chart, FileReading, Range, Size

_OF_COLUMNS: Final = {
    "heading-two-readings": ("",),
    "heading-unknown": ("", "near"),
    "basis-doubtful": ("",),
    "laid-flat": ("",),
    "impossible": ("column",),
}
"""The questions that one word about a column answers, with the cases in which they are such."""
_UNIT: Final = "unit-missing"
_OF_A_SIZE: Final = frozenset({"order-broken", "step-broken"})
_SIZE: Final = "size"
"""The case of a finding's sentence that speaks of all figures of one size."""
_NEIGHBOURS: Final = 2
"""Sizes that a break of the order lies between."""


def one_of_each(reading: FileReading) -> FileReading:
    """The reading with the equal questions of different tables, and of one size, joined."""
    joined: dict[str, Finding] = {}
    for parts in _equal(reading.findings, _tables(reading.charts)):
        first = replace(parts[0], parts=tuple(parts))
        joined |= dict.fromkeys((part.id for part in parts), first)
    for parts in _of_one_size(reading):
        said = {**parts[0].values, "case": _SIZE, "more": str(len(parts) - 1)}
        first = replace(parts[0], values=MappingProxyType(said), parts=tuple(parts))
        joined |= dict.fromkeys((part.id for part in parts), first)
    return with_joined(reading, joined)


def with_joined(reading: FileReading, joined: Mapping[str, Finding]) -> FileReading:
    """The reading with each finding of ``joined`` in the place of those that it stands for."""
    if not joined:
        return reading
    findings = dict.fromkeys(joined.get(one.id, one).id for one in reading.findings)
    by_id = {one.id: one for one in reading.findings} | {one.id: one for one in joined.values()}
    return replace(
        reading,
        charts=_with_ids(reading.charts, {part: one.id for part, one in joined.items()}),
        findings=tuple(by_id[ident] for ident in findings),
    )


def _with_ids(charts: Sequence[Chart], ids: Mapping[str, str]) -> tuple[Chart, ...]:
    """The charts whose values list, for each id in ``ids``, the one it stands for."""
    return tuple(
        replace(chart, sizes=tuple(_of_size(size, ids) for size in chart.sizes)) for chart in charts
    )


def _of_size(size: Size, ids: Mapping[str, str]) -> Size:
    return replace(size, ranges=tuple(_of_range(one, ids) for one in size.ranges))


def _of_range(one: Range, ids: Mapping[str, str]) -> Range:
    if ids.keys().isdisjoint(one.findings):
        return one
    return replace(one, findings=listed(*(ids.get(each, each) for each in one.findings)))


def _tables(charts: Sequence[Chart]) -> Mapping[str, frozenset[str]]:
    """The tables that each finding bears on, by its id."""
    found: dict[str, set[str]] = {}
    for chart in charts:
        for size in chart.sizes:
            for ident in {each for one in size.ranges for each in one.findings}:
                found.setdefault(ident, set()).add(chart.place)
    return {ident: frozenset(places) for ident, places in found.items()}


def _of_one_size(reading: FileReading) -> Iterator[list[Finding]]:
    """Findings of one code that are about figures of the same size or neighbours."""
    sizes: dict[str, set[tuple[str, int]]] = {}
    for chart in reading.charts:
        for number, size in enumerate(chart.sizes):
            for ident in {each for one in size.ranges for each in one.findings}:
                sizes.setdefault(ident, set()).add((chart.place, number))
    kinds: dict[tuple[object, ...], list[Finding]] = {}
    for one in reading.findings:
        plain = one.code in _OF_A_SIZE and not one.values.get("case") and not one.candidates
        if plain and 0 < len(sizes.get(one.id, ())) <= _NEIGHBOURS:
            kind = (one.code, one.settled, frozenset(sizes[one.id]))
            kinds.setdefault(kind, []).append(one)
    yield from (parts for parts in kinds.values() if len(parts) > 1)


def _equal(
    findings: Sequence[Finding], tables: Mapping[str, frozenset[str]]
) -> Iterator[list[Finding]]:
    """Groups of two and more findings that ask the same of tables that are not the same."""
    kinds: dict[tuple[object, ...], list[Finding]] = {}
    for one in findings:
        kind = _kind(one)
        if kind is not None and tables.get(one.id):
            kinds.setdefault(kind, []).append(one)
    for alike in kinds.values():
        taken: frozenset[str] = frozenset()
        group: list[Finding] = []
        for one in alike:
            if taken.isdisjoint(tables[one.id]):
                group.append(one)
                taken |= tables[one.id]
        if len(group) > 1:
            yield group


def _kind(finding: Finding) -> tuple[object, ...] | None:
    """What a finding asks, and how it was closed; None for no question about whole columns."""
    if LEVELS[finding.code] is not Level.QUESTION:
        return None
    closed = finding.settled
    heading = finding.values.get("heading", "").strip().casefold()
    if finding.code == _UNIT:
        return finding.code, closed, finding.values.get("unit"), finding.values.get("other")
    case = finding.values.get("case", "")
    if not heading or case not in _OF_COLUMNS.get(finding.code, ()):
        return None
    offered = () if finding.code == "impossible" else finding.candidates
    return finding.code, closed, case, heading, tuple((one.why, one.text) for one in offered)
