"""The combined chart as tidy delimited text: one value a line, for whoever calculates further.

Figures are exact, in cm, kg or years, with a point as decimal mark; the printed text stands beside
them. The heads are keys for machines and do not change with the language.
"""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from typing import Final

from charts.in_house import InHouseChart, InHouseRow
from charts.schema import Range
from charts.writers.formula_text import harmless

COLUMNS: Final = (
    "supplier",
    "model",
    "model_kind",
    "level",
    "band",
    "season",
    "size",
    "also_called",
    "length",
    "dimension",
    "definition",
    "basis",
    "kind",
    "low",
    "high",
    "value",
    "tolerance",
    "unit",
    "low_included",
    "high_included",
    "circa",
    "heading",
    "published",
    "published_unit",
    "also_published",
    "also_published_unit",
    "unit_from",
    "open_questions",
    "file",
    "area",
    "cell",
    "file_date",
)


def delimited_bytes(chart: InHouseChart, separator: str = ",") -> bytes:
    """The finished text in UTF-8 with its mark, so that a spreadsheet reads it right."""
    import pandas as pd

    lines = [_line(row, value) for row in chart.rows for value in _values(row)]
    table = pd.DataFrame(lines, columns=list(COLUMNS), dtype=str)
    text = table.to_csv(sep=separator, index=False, lineterminator="\r\n")
    return text.encode("utf-8-sig", "replace")


def _values(row: InHouseRow) -> Iterator[Range]:
    for ranges in row.measures.values():
        yield from ranges


def _line(row: InHouseRow, value: Range) -> list[str]:
    also = value.also_published
    asked = [each for each in value.findings if each in row.open_questions]
    kind = row.facts.kind if row.facts else None
    cells = (
        *(row.supplier, row.model, kind, row.facts.level if row.facts else None),
        *(row.band, row.season, row.size, " / ".join(row.also), row.length),
        *(value.dimension, value.definition, value.basis, value.kind),
        *(value.low, value.high, value.value, value.tolerance, value.unit),
        *(value.low_included, value.high_included, value.circa),
        *(value.heading, value.published, value.published_unit),
        *(also.text if also else None, also.unit if also else None),
        *(value.unit_from, " ".join(asked)),
        *(row.file, row.place, value.place, row.dated.isoformat()),
    )
    return [harmless(_text(cell)) for cell in cells]


def _text(cell: object) -> str:
    if cell is None:
        return ""
    if isinstance(cell, bool):
        return "yes" if cell else "no"
    if isinstance(cell, Decimal):
        return f"{cell:f}"
    return str(cell)
