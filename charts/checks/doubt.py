"""What a check of a whole chart says: a code, a place, and the values it bears on."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from itertools import groupby
from typing import Final

from charts.findings import LEVELS, Candidate, FindingLog, Level, listed
from charts.notation import read_cell
from charts.quantities import CANONICAL, FAMILY, canonical
from charts.schema import Basis, Chart, Definition, Dimension, Kind, Range
from charts.size_labels import read_label

_JOINT: Final = Decimal("1.27")
"""Ranges that follow each other share a border, or are a centimetre or half an inch apart."""
_FEWEST_BESIDE_UNKNOWN: Final = 4
Spot = tuple[int, int]
"""A value of a chart: the number of its size, the number of its range within the size."""


@dataclass(frozen=True, slots=True)
class Doubt:
    """One thing a check found. Its question is listed at ``spots``; ``unread`` takes the figures.

    ``kept`` are spots that keep their figures all the same.
    ``case`` chooses among the sentences of a code; ``candidates`` are readings a person may take.
    """

    code: str
    spots: tuple[Spot, ...]
    heading: str
    text: str = ""
    first: str = ""
    unit: str = ""
    case: str = ""
    unread: bool = False
    kept: frozenset[Spot] = frozenset()
    candidates: tuple[Candidate, ...] = ()


@dataclass(frozen=True, slots=True)
class Column:
    """One dimension of a chart along its sizes: the values that are comparable with each other."""

    dimension: Dimension
    definition: Definition
    basis: Basis
    heading: str
    spots: tuple[Spot, ...]
    values: tuple[Range, ...]

    @property
    def lows(self) -> list[Decimal | None]:
        """The lower ends, or the single figures, in size order."""
        return [value.value if value.value is not None else value.low for value in self.values]

    @property
    def highs(self) -> list[Decimal | None]:
        """The upper ends, or the single figures, in size order."""
        return [value.value if value.value is not None else value.high for value in self.values]


def adjoin(column: Column, lower: int, upper: int) -> bool:
    """Whether one value begins where the other leaves off, by their numbers in the column.

    With a wrong digit at that end it would not.
    """
    end, start = column.highs[lower], column.lows[upper]
    return end is not None and start is not None and 0 <= start - end <= _JOINT


def columns(
    chart: Chart, asked: frozenset[str] = frozenset(), nameless: frozenset[str] = frozenset()
) -> list[Column]:
    """The columns of a chart, each within one length of its second axis, figures only.

    A value that carries one of the questions ``asked`` by itself, not with its whole column, is
    left out: what is doubted already must not throw doubt on its neighbours; where most are, the
    few others can be looked at beside them only. So is one with a
    question of ``nameless``: what is no known measure has no order and no steps.
    """
    found: dict[tuple[object, ...], list[tuple[Spot, Range]]] = {}
    for number, (size, axis) in enumerate(zip(chart.sizes, _axes(chart), strict=True)):
        for place, value in enumerate(size.ranges):
            if value.kind is Kind.UNREAD or nameless.intersection(value.findings):
                continue
            key = (value.dimension, value.definition, value.basis, value.heading, axis)
            found.setdefault(key, []).append(((number, place), value))
    return [_column(_undoubted(entries, asked)) for entries in found.values()]


def _axes(chart: Chart) -> list[tuple[object, ...] | None]:
    """What each size can be compared with: those of one length and of one kind of people.

    A single name that nobody knows among four of one kind, ``Small jersey``, is of that kind.
    """
    labels = [read_label(size.label) if size.label is not None else None for size in chart.sizes]
    axes = [
        (size.length, label.length, label.order[:2]) if label is not None else None
        for size, label in zip(chart.sizes, labels, strict=True)
    ]
    known = [axis for axis in axes if axis is not None]
    if len(known) == len(axes) - 1 >= _FEWEST_BESIDE_UNKNOWN and len(set(known)) == 1:
        return [known[0]] * len(axes)
    return list(axes)


def printed_columns(chart: Chart) -> list[Column]:
    """The columns with the figures of unread cells as they are printed, for what looks at blocks.

    A turned block makes some of its cells impossible under their new headings.
    """
    found: dict[tuple[object, ...], list[tuple[Spot, Range]]] = {}
    for number, size in enumerate(chart.sizes):
        for place, value in enumerate(size.ranges):
            key = (value.dimension, value.definition, value.basis, value.heading)
            found.setdefault(key, []).append(((number, place), _as_printed(value, size.ranges)))
    return [_column(entries) for entries in found.values()]


def _as_printed(value: Range, beside: Sequence[Range]) -> Range:
    """An unread value with the figures of its text, in the unit its neighbours are printed in."""
    quantity = read_cell(value.published).quantity if value.kind is Kind.UNREAD else None
    if quantity is None:
        return value
    units = [one.published_unit for one in beside if one.published_unit and one.unit is value.unit]
    unit = quantity.unit or (units[0] if units else None)
    if unit is None or CANONICAL[FAMILY[unit]] is not value.unit:
        return value
    low, high, single = (
        canonical(end.value, unit) if end is not None else None
        for end in (quantity.low, quantity.high, quantity.value)
    )
    return replace(value, kind=quantity.kind, low=low, high=high, value=single)


def _undoubted(
    entries: Sequence[tuple[Spot, Range]], asked: frozenset[str]
) -> Sequence[tuple[Spot, Range]]:
    counts = Counter(ident for _, value in entries for ident in value.findings if ident in asked)
    own = {ident for ident, count in counts.items() if 2 * count < len(entries)}
    kept = [entry for entry in entries if not own & set(entry[1].findings)]
    return kept if 2 * len(kept) > len(entries) else entries


def _column(entries: Sequence[tuple[Spot, Range]]) -> Column:
    first = entries[0][1]
    return Column(
        first.dimension,
        first.definition,
        first.basis,
        first.heading,
        tuple(spot for spot, _ in entries),
        tuple(value for _, value in entries),
    )


def applied(chart: Chart, doubts: Iterable[Doubt], log: FindingLog) -> Chart:
    """The chart with each doubt logged once and its id at every value it bears on."""
    changed: dict[Spot, Range] = {}
    for doubt in doubts:
        ident = _logged(chart, doubt, log)
        if LEVELS[doubt.code] is Level.NOTE:
            continue
        for spot in doubt.spots:
            value = changed.get(spot, chart.sizes[spot[0]].ranges[spot[1]])
            unread = doubt.unread and spot not in doubt.kept and not log.settled(ident)
            if doubt.unread:
                value = _freed(value, log)
            changed[spot] = _with(value, ident, unread=unread)
    return _replaced(chart, changed) if changed else chart


def _freed(value: Range, log: FindingLog) -> Range:
    """A value of a doubted block without the question that its cell raised by itself."""
    own = {one.id for one in log.findings if one.code == "impossible" and one.place == value.place}
    for ident in own:
        log.withdraw(ident)
    return replace(value, findings=tuple(one for one in value.findings if one not in own))


def _logged(chart: Chart, doubt: Doubt, log: FindingLog) -> str:
    first = doubt.spots[0]
    value = chart.sizes[first[0]].ranges[first[1]]
    said = {"heading": doubt.heading, "text": doubt.text or value.published, "first": doubt.first}
    optional = {"unit": doubt.unit, "case": doubt.case}
    said |= {name: text for name, text in optional.items() if text}
    key = f"{chart.place} {chart.band} {doubt.heading} {doubt.case} {value.place}"
    return log.add(doubt.code, value.place, key=key, candidates=doubt.candidates, **said)


def _with(value: Range, ident: str, *, unread: bool) -> Range:
    value = replace(value, findings=listed(*value.findings, ident))
    if not unread:
        return value
    return replace(
        value, kind=Kind.UNREAD, low=None, high=None, value=None, low_step=None, high_step=None
    )


def _replaced(chart: Chart, changed: dict[Spot, Range]) -> Chart:
    sizes = list(chart.sizes)
    for number, spots in groupby(sorted(changed), key=lambda spot: spot[0]):
        ranges = list(sizes[number].ranges)
        for spot in spots:
            ranges[spot[1]] = changed[spot]
        sizes[number] = replace(sizes[number], ranges=tuple(ranges))
    return replace(chart, sizes=tuple(sizes))


def steps(ends: Sequence[Decimal | None]) -> Iterator[tuple[int, Decimal]]:
    """The steps between neighbouring figures, each with the number of the later one."""
    before: Decimal | None = None
    for number, end in enumerate(ends):
        if end is not None and before is not None:
            yield number, end - before
        before = end if end is not None else before
