"""The combined chart as one web page: nothing is fetched, it prints as it stands."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape
from itertools import groupby
from typing import Final

from charts.day_words import day_words
from charts.in_house import InHouseChart
from charts.wording import Wording
from charts.writers.in_house_table import laid_out
from charts.writers.own_files import MARK
from charts.writers.printed_table import InHouseTable, QuestionList, TableColumn, TableRow

_STYLE: Final = """
@page { size: A3 landscape; margin: 12mm 10mm }
body { font: 11pt Calibri, Carlito, "Segoe UI", sans-serif; color: #1a1a1a; margin: 1.5em }
h1 { font-size: 1.6em; margin: 0 } h2 { font-size: 1.3em; margin: 1.5em 0 .5em }
p { margin: .3em 0 } p.key, p.footnote { font-size: .9em } p.caution { font-weight: 600 }
table { border-collapse: collapse; margin: 1em 0; table-layout: fixed }
thead { display: table-header-group } tr { break-inside: avoid }
th { background: #e3e6ea; print-color-adjust: exact }
th, td { border-top: 1px solid #b0b4ba; padding: 2px 4px; overflow-wrap: anywhere }
td { white-space: pre-line; text-align: left; vertical-align: middle }
td.group { border-left: 1px solid #b0b4ba }
tr.model > td { border-top: 2px solid #404040 }
td.name, td.size { font-weight: 700 } td.repeated { color: #5a5a5a }
td.words { font-size: .85em }
td.published, td.converted { text-align: center; white-space: pre }
td.published { font-weight: 700 } td.converted { font-style: italic; color: #5a5a5a }
td.missing { color: #5a5a5a; text-align: center; font-size: .75em }
td.open { background: #fff1c7; print-color-adjust: exact }
@media print { body { font-size: 8.5pt; margin: 0 } }
"""
_EMS_A_CHARACTER: Final = 0.55


def web_page_bytes(chart: InHouseChart, wording: Wording) -> bytes:
    """The finished page in UTF-8."""
    table = laid_out(chart, wording)
    lines = [
        "<!doctype html>",
        f'<html lang="{wording.language}"><head><meta charset="utf-8">',
        f'<meta name="generator" content="{MARK}">',
        f"<title>{escape(table.title)}</title><style>{_STYLE}</style></head><body>",
        f"<h1>{escape(table.title)}</h1><p>{escape(table.subtitle)}</p>",
        f'<p class="key">{escape(table.key)}</p>',
        *_table([column.width for column in table.columns]),
        *_heads(table.columns),
        "<tbody>",
        *(_row(row, _group_starts(table.columns)) for row in table.rows),
        "</tbody></table>",
        *_foot(table, day_words(chart.made_on, wording)),
        *(_questions(table.questions) if table.questions is not None else ()),
        "</body></html>",
    ]
    return "\n".join(lines).encode("utf-8", "replace")


def _heads(columns: Sequence[TableColumn]) -> Iterator[str]:
    yield "<thead><tr>"
    for head, group in groupby(columns, key=lambda column: (column.head, bool(column.unit))):
        count = len(list(group))
        if head[1]:
            yield f'<th colspan="{count}">{escape(head[0])}</th>'
        else:
            yield f'<th rowspan="2">{escape(head[0])}</th>' * count
    yield "</tr><tr>"
    yield from (f"<th>{escape(column.unit)}</th>" for column in columns if column.unit)
    yield "</tr></thead>"


def _table(widths: Sequence[float]) -> Iterator[str]:
    """The opening of a table whose columns are as wide as their characters in any font size."""
    whole = sum(widths)
    yield f'<table style="width: {whole * _EMS_A_CHARACTER:.1f}em"><colgroup>'
    yield from (f'<col style="width: {width / whole:.2%}">' for width in widths)
    yield "</colgroup>"


def _group_starts(columns: Sequence[TableColumn]) -> list[bool]:
    """Whether each column begins a group of its own."""
    before = [None, *columns[:-1]]
    return [
        above is None or not column.unit or above.head != column.head
        for above, column in zip(before, columns, strict=True)
    ]


def _row(row: TableRow, starts: Sequence[bool]) -> str:
    cells = []
    for cell, starts_group in zip(row.cells, starts, strict=True):
        marks = [cell.role.value, *["open"] * cell.open, *["group"] * starts_group]
        cells.append(f'<td class="{" ".join(marks)}">{escape(cell.text)}</td>')
    return f"<tr{' class=model' if row.starts_model else ''}>{''.join(cells)}</tr>"


def _foot(table: InHouseTable, today: str) -> Iterator[str]:
    yield from (f'<p class="footnote">{escape(text)}</p>' for text in table.footnotes)
    yield from (f'<p class="caution">{escape(text)}</p>' for text in table.cautions)
    version = table.margins.head[2].replace("{today}", today)
    yield f'<p class="footnote">{escape(version)}</p>'


def _questions(questions: QuestionList) -> Iterator[str]:
    yield f"<h2>{escape(questions.title)}</h2>"
    yield from _table(questions.widths)
    yield "<thead><tr>"
    yield from (f"<th>{escape(head)}</th>" for head in questions.heads)
    yield "</tr></thead><tbody>"
    for row in questions.rows:
        yield "<tr>" + "".join(f"<td>{escape(text)}</td>" for text in row) + "</tr>"
    yield "</tbody></table>"
