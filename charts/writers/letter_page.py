"""The letter to a maker as one web page: nothing is fetched, and it prints as it stands."""

from __future__ import annotations

from collections.abc import Iterator
from html import escape
from typing import Final

from charts.day_words import day_words
from charts.wording import Wording
from charts.writers.letter import (
    TOPIC,
    Letter,
    SheetCopy,
    asked_words,
    paragraphs,
    subject,
)

_STYLE: Final = """
@page { size: A4; margin: 20mm 18mm }
body { font: 11pt Calibri, Carlito, "Segoe UI", sans-serif; color: #1a1a1a; max-width: 60em }
h1 { font-size: 1.25em } h2 { font-size: 1.1em; margin-top: 2em; break-before: page }
ol { padding-left: 1.5em } li { margin: .4em 0 }
table { border-collapse: collapse } td { border: 1px solid #8a8a8a; padding: 2px 6px }
td { vertical-align: top; white-space: pre-line }
td.asked { border: 3px solid #1a1a1a; font-weight: 700 }
span.place { font-weight: 700 }
"""


def letter_page(letter: Letter, wording: Wording) -> bytes:
    """The finished page in UTF-8. Doubtful cells are framed and numbered, not only coloured."""
    title = subject(letter, wording)
    lines = [
        "<!doctype html>",
        f'<html lang="{wording.language}"><head><meta charset="utf-8">',
        f"<title>{escape(title)}</title><style>{_STYLE}</style></head><body>",
        f"<p>{escape(day_words(letter.dated, wording))}</p><h1>{escape(title)}</h1>",
        f"<p>{escape(wording.say(TOPIC, 'greeting'))}</p>",
        *(f"<p>{escape(text)}</p>" for text in paragraphs(letter, wording)),
        "<ol>",
        *_points(letter, wording),
        "</ol>",
        f"<p>{escape(wording.say(TOPIC, 'closing'))}</p>",
        f"<p>{'<br>'.join(escape(line) for line in _signature(letter, wording))}</p>",
        *(line for copy in letter.copies for line in _copy(copy, letter, wording)),
        "</body></html>",
    ]
    return "\n".join(lines).encode("utf-8", "replace")


def _points(letter: Letter, wording: Wording) -> Iterator[str]:
    for point in letter.points:
        place, asked = escape(point.finding.place), escape(asked_words(point.finding, wording))
        yield f'<li value="{point.number}"><span class="place">{place}</span>: {asked}</li>'


def _signature(letter: Letter, wording: Wording) -> list[str]:
    lines = (wording.say(TOPIC, "regards"), letter.signed, letter.shop)
    return [line for line in lines if line]


def _copy(copy: SheetCopy, letter: Letter, wording: Wording) -> Iterator[str]:
    head = wording.say(TOPIC, "copy-head", sheet=copy.sheet.name or letter.file)
    yield f"<h2>{escape(head)}</h2><p>{escape(wording.say(TOPIC, 'copy-key'))}</p><table>"
    for row in copy.rows:
        yield "<tr>" + "".join(_cells(copy, row)) + "</tr>"
    yield "</table>"
    if copy.cut:
        yield f"<p>{escape(wording.say(TOPIC, 'copy-cut'))}</p>"


def _cells(copy: SheetCopy, row: int) -> Iterator[str]:
    for column in copy.columns:
        cell = copy.sheet.cells.get((row, column))
        if cell is not None and cell.shared_from is not None and _begins(copy, cell.shared_from):
            continue
        mark = copy.mark(row, column)
        asked = ' class="asked"' if mark else ""
        text = escape(f"{copy.printed(row, column)} {mark}".strip())
        yield f"<td{asked}{_span(copy, row, column)}>{text}</td>"


def _begins(copy: SheetCopy, origin: tuple[int, int]) -> bool:
    """Whether the first cell of a merged area is shown, so that it spans the others."""
    return origin[0] in copy.rows and origin[1] in copy.columns


def _span(copy: SheetCopy, row: int, column: int) -> str:
    shared = [at for at, cell in copy.sheet.cells.items() if cell.shared_from == (row, column)]
    if not shared:
        return ""
    rows = sum(1 for each in copy.rows if row <= each <= max(at[0] for at in shared))
    columns = sum(1 for each in copy.columns if column <= each <= max(at[1] for at in shared))
    down = f' rowspan="{rows}"' if rows > 1 else ""
    return down + (f' colspan="{columns}"' if columns > 1 else "")
