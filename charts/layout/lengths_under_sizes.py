"""``Body length | 62 | 64 | 66`` after a remark below ``Size | S | M | L``: no heights of anybody.

Alone such rows would be looked up by a measure that may be a height. Figures in the columns of
lettered sizes, too small for the height of anyone who wears letters, are measured in those sizes.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from charts.dimensions import Role
from charts.headings.bands import names_adults
from charts.layout.fields import Field
from charts.layout.looks import look
from charts.layout.view import At
from charts.schema import Dimension

_NO_HEIGHT: Final = 80
"""Figures below it are heights of babies at most, in inches of giants (common practice, no
source)."""


def measured_under_sizes(own: Field, sizes: Field, titles: Iterable[At]) -> bool:
    """Whether ``own``, which would name the sizes of its rows, is measured in the ``sizes`` above.

    The ``titles`` between them must not say for whom the rows are.
    """
    columns = [[at.column for cell in field.cells for at in cell] for field in (own, sizes)]
    return (
        columns[0] == columns[1]
        and _perhaps_a_height(own)
        and any(look(at.text).wordy_label for cell in sizes.cells for at in cell)
        and all(_too_small(at.text) for cell in own.cells for at in cell)
        and all(look(at.text).band is None and not names_adults(at.text) for at in titles)
    )


def _perhaps_a_height(field: Field) -> bool:
    """Whether the heading names a height in one sense and a length of something in another."""
    measured = {dim for role, dim in field.heading.candidates if role is Role.MEASURE}
    return {Dimension.HEIGHT, Dimension.OTHER} <= measured


def _too_small(text: str) -> bool:
    quantity = look(text).reading.quantity
    ends = (quantity.low, quantity.high, quantity.value) if quantity is not None else ()
    figures = [end.value for end in ends if end is not None]
    return bool(figures) and max(figures) < _NO_HEIGHT
