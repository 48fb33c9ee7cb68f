"""Children's figures above those of most grown-ups under the same heading: rows exchanged.

``Half chest`` and ``Length`` stand in each other's row for the children's sizes of a chart, and
each figure alone is one that somebody measures.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.findings import FindingLog, listed
from charts.headings.bands import CHILDREN
from charts.labels.reading import ADULT
from charts.schema import Basis, Chart, Definition, Dimension, Range, Size
from charts.size_labels import LabelKind, read_label

_GROWN: Final = frozenset({"women", "men"})
_LETTERS: Final = frozenset({LabelKind.ALPHA, LabelKind.COMBINED})
_UNCOMPARED: Final = frozenset({Dimension.OTHER, Dimension.AGE})
Key = tuple[Dimension, Definition, Basis, str]


def children_above_asked(charts: Sequence[Chart], log: FindingLog) -> tuple[Chart, ...]:
    """The charts with a question on what children measure all more of than the middle grown-up."""
    grown: dict[Key, list[Decimal]] = {}
    for chart in charts if any(one.band in CHILDREN for one in charts) else ():
        for key, figure, _ in _figures(chart) if _is_of_grown_ups(chart) else ():
            grown.setdefault(key, []).append(figure)
    return tuple(
        _asked(chart, grown, log) if grown and chart.band in CHILDREN else chart for chart in charts
    )


def _is_of_grown_ups(chart: Chart) -> bool:
    if chart.band in _GROWN:
        return True
    labels = (read_label(size.label) for size in chart.sizes if size.label)
    lettered = any(one and one.kind in _LETTERS and one.order[0] == ADULT for one in labels)
    return chart.band not in CHILDREN and lettered


def _figures(chart: Chart) -> Iterator[tuple[Key, Decimal, Range]]:
    """The smallest figure of each value that can be compared."""
    for one in (one for size in chart.sizes for one in size.ranges):
        figure = one.value if one.value is not None else one.low
        if figure is not None and one.dimension not in _UNCOMPARED:
            yield (one.dimension, one.definition, one.basis, one.heading), figure, one


def _asked(chart: Chart, grown: dict[Key, list[Decimal]], log: FindingLog) -> Chart:
    own: dict[Key, list[Decimal]] = {}
    places: dict[Key, str] = {}
    for key, figure, one in _figures(chart):
        own.setdefault(key, []).append(figure)
        places.setdefault(key, one.place)
    asked = {
        key: log.add(
            "columns-shifted", places[key], key=places[key], case="children", heading=key[-1]
        )
        for key, figures in own.items()
        if key in grown and min(figures) > sorted(grown[key])[len(grown[key]) // 2]
    }
    return replace(chart, sizes=tuple(_with(size, asked) for size in chart.sizes))


def _with(size: Size, asked: dict[Key, str]) -> Size:
    ranges = (replace(one, findings=listed(*one.findings, *_of(one, asked))) for one in size.ranges)
    return replace(size, ranges=tuple(ranges))


def _of(one: Range, asked: dict[Key, str]) -> tuple[str, ...]:
    key = (one.dimension, one.definition, one.basis, one.heading)
    return (asked[key],) if key in asked else ()
