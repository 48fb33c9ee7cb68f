"""A table without a name whose sizes go on where those of the table before it end.

``Boys`` over the ages 3 to 10, and below a blank row the ages 11 to 16 under the same headings: a
table too wide for its page was cut in two. Men's sizes may follow upon women's by their number as
well (34 to 44, then 46 to 56), but then their figures do not go on: they begin anew lower down.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from itertools import pairwise
from typing import Final

from charts.columns.fitting import printed_figures
from charts.layout.fields import Field, FieldKind, Table
from charts.layout.looks import look
from charts.quantities import Unit
from charts.schema import Dimension
from charts.size_labels import LabelKind

_ENOUGH: Final = 2
"""Measures that go on, so that it is no chance (common practice, no source)."""
_WIDER: Final = 2
"""Times the widest step of both tables, as between children's and grown-ups' sizes (common
practice, no source)."""
Measured = tuple[Dimension, Unit | None]


def goes_on(table: Table, before: Table) -> bool:
    """Whether the sizes of ``table``, and every measure of both, go on from ``before``."""
    if table.titles or not _sizes_go_on(table, before):
        return False
    had = dict(_figures(before))
    shared = [(had[measure], own) for measure, own in _figures(table) if measure in had]
    dimensions = {measure[0] for measure, _ in _figures(table) if measure in had}
    return len(dimensions) >= _ENOUGH and all(_no_leap(*both) for both in shared)


def _no_leap(old: Sequence[Decimal], own: Sequence[Decimal]) -> bool:
    """Whether the step from one table to the next is hardly wider than those within them."""
    steps = [abs(after - one) for figures in (old, own) for one, after in pairwise(figures)]
    return old[-1] <= own[0] <= old[-1] + _WIDER * max(steps, default=Decimal(0))


def _sizes_go_on(table: Table, before: Table) -> bool:
    own, old = table.of(FieldKind.LABEL), before.of(FieldKind.LABEL)
    if len(own) != 1 or len(old) != 1 or own[0].printed_heading != old[0].printed_heading:
        return False
    after, earlier = list(_ranks(own[0])), list(_ranks(old[0]))
    kinds = {kind for kind, _ in (*after, *earlier)}
    grow = earlier == sorted(earlier) and after == sorted(after)
    return len(kinds) == 1 and bool(after and earlier) and grow and after[0] > earlier[-1]


def _ranks(sizes: Field) -> Iterator[tuple[LabelKind, tuple[float, ...]]]:
    for cell in sizes.cells:
        label = look(cell[0].text).label if cell else None
        if label is not None:
            yield label.kind, label.order


def _figures(table: Table) -> Iterator[tuple[Measured, list[Decimal]]]:
    for one in table.of(FieldKind.VALUES):
        figures = [value for value, _ in printed_figures(one)]
        if one.heading.dimension is not None and figures:
            yield (one.heading.dimension, one.heading.unit), figures
