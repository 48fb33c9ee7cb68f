"""Charts of one file told apart: the same sizes given twice must differ by some word."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from charts.findings import FindingLog
from charts.headings.garment_lengths import garments_by_name
from charts.schema import Basis, Chart, Dimension, Range, Size
from charts.vocabulary import normal

Key = tuple[str | None, str | None, Dimension]
Figures = tuple[Decimal | None, Decimal | None, Decimal | None]
_AROUND = frozenset({"sheet", "file", "folder"})
_NEAR_CM = Decimal("1.3")
"""Half an inch: a chart printed again in the other unit is the same chart."""


def told_apart(charts: Sequence[Chart], log: FindingLog) -> tuple[Chart, ...]:
    """The charts with a question where two of them give one size different figures and no word."""
    found = list(charts)
    for number, first in enumerate(charts):
        for other in range(number + 1, len(charts)):
            alike = _same_words(first, charts[other]) or (
                other == number + 1 and _left_unnamed(first, charts[other])
            )
            alike = alike and not _for_other_garments(first, charts[other])
            if alike and _contradict(first, charts[other]):
                ident = log.add("label-repeated", charts[other].place, case="chart", key="file")
                found[number] = _asked(found[number], ident)
                found[other] = _asked(found[other], ident)
    return tuple(found)


def _same_words(first: Chart, second: Chart) -> bool:
    """Whether nothing tells two charts apart: band, model, title, page."""
    pages = [chart.place.rpartition("!")[0] for chart in (first, second)]
    named = pages[0] != pages[1] and not all(page.startswith(("table ", "page ")) for page in pages)
    models = [chart.model.text if chart.model else None for chart in (first, second)]
    same = (first.band, first.title) == (second.band, second.title)
    return same and models[0] == models[1] and not named


def _for_other_garments(first: Chart, second: Chart) -> bool:
    """Whether the headings of their second names tell: ``Dress size`` in one, ``Pant size``."""
    one, other = _garments(first), _garments(second)
    return bool(one and other) and one.isdisjoint(other)


def _garments(chart: Chart) -> set[str]:
    """The garments after which the second names of the sizes are called."""
    headings = {also.heading for size in chart.sizes for also in size.also}
    return {word for one in headings for word in normal(one).split()} & garments_by_name()


def _left_unnamed(first: Chart, second: Chart) -> bool:
    """Whether a table without a title repeats sizes and measures of the one with a title above it.

    Under "Shorts" the shorts of women may follow those of men, their name lost.
    """
    modelled = second.model is not None and second.model.source not in _AROUND
    if second.title is not None or modelled or first.band != second.band:
        return False
    apart = first.place.rpartition("!")[0] != second.place.rpartition("!")[0]
    return not apart and _figures(first).keys() == _figures(second).keys()


def _contradict(first: Chart, second: Chart) -> bool:
    one, other = _figures(first), _figures(second)
    shared = [(one[key], other[key]) for key in one.keys() & other.keys()]
    return any(not _told_by_basis(a, b) and not _near(_ends(a), _ends(b)) for a, b in shared)


def _told_by_basis(one: Range, other: Range) -> bool:
    """Whether one is said to be the body's and the other the garment's: both hold."""
    bases = {one.basis, other.basis}
    return len(bases) > 1 and Basis.BODY in bases and Basis.UNKNOWN not in bases


def _ends(value: Range) -> Figures:
    return value.low, value.high, value.value


def _figures(chart: Chart) -> dict[Key, Range]:
    return {
        (size.label, size.length, value.dimension): value
        for size in chart.sizes
        for value in size.ranges
        if value.dimension is not Dimension.OTHER
    }


def _near(one: Figures, other: Figures) -> bool:
    return all(
        a is None or b is None or abs(a - b) <= _NEAR_CM for a, b in zip(one, other, strict=True)
    )


def _asked(chart: Chart, ident: str) -> Chart:
    return replace(chart, sizes=tuple(_asked_size(size, ident) for size in chart.sizes))


def _asked_size(size: Size, ident: str) -> Size:
    return replace(size, ranges=tuple(_asked_range(one, ident) for one in size.ranges))


def _asked_range(one: Range, ident: str) -> Range:
    return one if ident in one.findings else replace(one, findings=(*one.findings, ident))
