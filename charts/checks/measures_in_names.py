"""Names of sizes whose heading names a measure too: their figures are asked about.

Under ``Size/Chest`` the 88 of ``S/88`` may be a chest or the same size in another country; as a
second name of the size it would be measured by nothing, and nobody would be told.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role
from charts.findings import FindingLog
from charts.layout.fields import Field, FieldKind, Table
from charts.layout.looks import look
from charts.layout.view import At
from charts.schema import Chart, Dimension
from charts.sheet import Sheet

_JOINTS: Final = re.compile(r"[/|&+,()\[\]\n]")
_FIGURE: Final = re.compile(r"\d\d")
"""A measure has two figures at least."""


def say_measures_in_names(
    sheet: Sheet, tables: Sequence[Table], charts: Sequence[Chart], log: FindingLog
) -> None:
    """Ask once a table about figures behind its sizes that its heading calls a measure."""
    ranges = (one for chart in charts for size in chart.sizes for one in size.ranges)
    measured = {one.place for one in ranges}
    for table in tables:
        for field in table.of(FieldKind.LABEL):
            named = [at for cell in field.cells for at in cell if _second_figures(at)]
            if named and _names_both(field):
                first, last = named[0], named[-1]
                if sheet.place(first.row, first.column) in measured:
                    continue  # figures parted from their sizes speak for themselves
                area = sheet.area((first.row, first.column), (last.row, last.column))
                log.add("text-order", area, case="left", text=first.text.strip())
                break


def _second_figures(at: At) -> bool:
    """Whether the size is called by a number as well: ``S/88``, ``S (88)``."""
    label = look(at.text).label
    return label is not None and any(_FIGURE.search(name) for name in label.also)


def _names_both(field: Field) -> bool:
    """Whether one part of the heading is a word for sizes and another a measure of bodies."""
    parts = [part for part in _JOINTS.split(field.printed_heading) if part.strip()]
    said = [look(part.strip()).heading for part in parts]
    sizes = any(one.role is Role.LABEL for one in said)
    return sizes and any(
        one.role is Role.MEASURE and not one.candidates and one.dimension is not Dimension.AGE
        for one in said
    )
