"""Weights in grams beside a length that is perhaps a child's: one question for both."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from charts.columns.fitting import printed_figures
from charts.columns.meaning import Column
from charts.quantities import Unit
from charts.schema import Dimension


def weighed_in_grams(columns: Sequence[Column]) -> list[Column]:
    """The columns with weights in grams under the question whether the length is a child's.

    The weight of something for sale is printed in grams as well; beside a length that is taken for
    a child's it is the child's, however small, and both are one question.
    """
    lengths = [one for one in columns if one.dimension is Dimension.HEIGHT and one.doubted]
    ids = [ident for one in lengths for ident in one.findings]
    return [
        replace(one, doubted=True).asking(*ids) if ids and _in_grams(one) else one
        for one in columns
    ]


def _in_grams(column: Column) -> bool:
    units = {own or column.unit for _, own in printed_figures(column.field)}
    return column.dimension is Dimension.WEIGHT and units == {Unit.G}
