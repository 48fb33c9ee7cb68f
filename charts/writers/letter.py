"""The letter to a maker: the open questions of a file, numbered, with a copy of its sheets.

``letter_of`` lays it out once; ``letter_text`` and ``charts.writers.letter_page`` print it. What is
asked is put in sentences for the maker (topic "letter"), not in those for the shop.
"""

from __future__ import annotations

import textwrap
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final

from charts.asked_values import values_of
from charts.choices import in_danger_order
from charts.day_words import day_words
from charts.finding_sentences import CASE
from charts.findings import Finding, Level
from charts.places import cells_at, rectangle_in
from charts.regions import SheetRegions
from charts.schema import FileReading
from charts.sheet import Addressing, Sheet
from charts.wording import Wording

TOPIC: Final = "letter"
_WIDTH: Final = 78
_MOST_ROWS: Final = 120
_MOST_COLUMNS: Final = 30
_MOST_MARKED: Final = 40
_WIDEST_CELL: Final = 26
At = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Point:
    """One numbered question."""

    number: int
    finding: Finding


@dataclass(frozen=True, slots=True)
class SheetCopy:
    """A sheet with the numbers of the questions at its cells. ``cut``: not all of it is shown."""

    sheet: Sheet
    rows: tuple[int, ...]
    columns: tuple[int, ...]
    numbers: Mapping[At, tuple[int, ...]]
    cut: bool

    def printed(self, row: int, column: int) -> str:
        """The text of a cell as the source prints it; "" for the rest of a merged area."""
        cell = self.sheet.cells.get((row, column))
        if cell is None or cell.shared_from is not None:
            return ""
        return " ".join(cell.printed.split())

    def mark(self, row: int, column: int) -> str:
        """The numbers that stand at a cell: ``[1]``, ``[1][3]``, or nothing."""
        return "".join(f"[{number}]" for number in self.numbers.get((row, column), ()))


@dataclass(frozen=True, slots=True)
class Letter:
    """One letter about one file. ``signed`` is who writes, ``shop`` for whom."""

    file: str
    charts: tuple[str, ...]
    supplier: str
    points: tuple[Point, ...]
    copies: tuple[SheetCopy, ...]
    dated: date
    shop: str = ""
    signed: str = ""


def letter_of(
    reading: FileReading,
    sheets: Sequence[SheetRegions],
    dated: date,
    *,
    shop: str = "",
    signed: str = "",
    questions: Sequence[Finding] | None = None,
    models: Sequence[str] = (),
) -> Letter:
    """The letter about the open questions of a file, or about some of them.

    ``models`` are the names the shop knows the charts by; without them the charts' own are used.
    """
    asked = [one for one in reading.findings if one.level is Level.QUESTION]
    chosen = in_danger_order(asked if questions is None else questions)
    points = tuple(Point(number, finding) for number, finding in enumerate(chosen, 1))
    said = [chart.model.text for chart in reading.charts if chart.model is not None]
    names = list(models) or said
    suppliers = [chart.supplier.text for chart in reading.charts if chart.supplier is not None]
    copies = [_copied(one.sheet, points, reading) for one in sheets]
    return Letter(
        reading.file.rpartition("/")[2],
        tuple(dict.fromkeys(names)),
        suppliers[0] if suppliers else "",
        points,
        tuple(one for one in copies if one is not None),
        dated,
        shop,
        signed,
    )


def asked_words(finding: Finding, wording: Wording) -> str:
    """What the maker is asked."""
    values = {"heading": "", "text": "", "first": "", "unit": "", "other": "", **finding.values}
    for code in (f"ask-{finding.code}-{finding.values.get(CASE, '')}", f"ask-{finding.code}"):
        if wording.has(TOPIC, code):
            return wording.say(TOPIC, code, **values)
    return wording.say(TOPIC, "ask-anything-else")


def chart_words(letter: Letter, wording: Wording) -> str:
    """The charts by the names of their models; what stands in their place where none is known."""
    return ", ".join(letter.charts) or wording.say(TOPIC, "no-chart-name")


def subject(letter: Letter, wording: Wording) -> str:
    """The line above the letter."""
    return wording.say(TOPIC, "subject", chart=chart_words(letter, wording))


def letter_text(letter: Letter, wording: Wording) -> str:
    """The letter as plain text of 78 columns, the copies as aligned columns below it."""
    return "\n".join((*_head(letter, wording), *_points(letter, wording), *_foot(letter, wording)))


def paragraphs(letter: Letter, wording: Wording) -> tuple[str, str]:
    """The two paragraphs before the points: what this is about, and what is asked for."""
    values = {"chart": chart_words(letter, wording), "file": letter.file}
    opening = wording.say(TOPIC, "opening", **values)
    return opening, wording.say(TOPIC, "request", count=len(letter.points))


def _head(letter: Letter, wording: Wording) -> Iterator[str]:
    yield day_words(letter.dated, wording)
    yield from ("", subject(letter, wording), "", wording.say(TOPIC, "greeting"), "")
    for paragraph in paragraphs(letter, wording):
        yield textwrap.fill(paragraph, _WIDTH)
        yield ""


def _points(letter: Letter, wording: Wording) -> Iterator[str]:
    for point in letter.points:
        said = wording.say(
            TOPIC,
            "point",
            number=point.number,
            place=point.finding.place,
            question=asked_words(point.finding, wording),
        )
        yield textwrap.fill(said, _WIDTH, subsequent_indent="   ")
    yield ""


def _foot(letter: Letter, wording: Wording) -> Iterator[str]:
    yield textwrap.fill(wording.say(TOPIC, "closing"), _WIDTH)
    yield from ("", wording.say(TOPIC, "regards"))
    yield from (line for line in (letter.signed, letter.shop) if line)
    for copy in letter.copies:
        yield from ("", "", wording.say(TOPIC, "copy-head", sheet=copy.sheet.name or letter.file))
        yield from (wording.say(TOPIC, "copy-key"), "")
        yield from _aligned(copy)
        if copy.cut:
            yield wording.say(TOPIC, "copy-cut")
    yield ""


def _aligned(copy: SheetCopy) -> Iterator[str]:
    """The rows of a copy in columns as wide as their widest cell; long texts run on freely."""
    texts = {
        (row, column): f"{copy.printed(row, column)} {copy.mark(row, column)}".strip()
        for row in copy.rows
        for column in copy.columns
    }
    widths = {
        column: max(
            (len(texts[row, column]) for row in copy.rows if _short(texts[row, column])), default=0
        )
        for column in copy.columns
    }
    for row in copy.rows:
        cells = [texts[row, column].ljust(widths[column]) for column in copy.columns]
        yield "  ".join(cells).rstrip()


def _short(text: str) -> bool:
    return len(text) <= _WIDEST_CELL


def _copied(sheet: Sheet, points: Sequence[Point], reading: FileReading) -> SheetCopy | None:
    """The sheet with its numbers; None where no question stands on it."""
    numbers: dict[At, list[int]] = {}
    for point in points:
        for at in _cells(point.finding, sheet, reading):
            numbers.setdefault(at, []).append(point.number)
    if not numbers:
        return None
    rows = sorted({*sheet.filled_rows, *(row for row, _ in numbers)})
    columns = sorted({column for _, column in (*sheet.cells, *numbers)})
    return SheetCopy(
        sheet,
        tuple(rows[:_MOST_ROWS]),
        tuple(columns[:_MOST_COLUMNS]),
        {at: tuple(found) for at, found in numbers.items()},
        len(rows) > _MOST_ROWS or len(columns) > _MOST_COLUMNS,
    )


def _cells(finding: Finding, sheet: Sheet, reading: FileReading) -> list[At]:
    """Where a question's number stands: at its place, and at the values if it is about values."""
    places = [one.place for _, one in values_of(finding, reading)]
    wanted = [finding.place]
    if finding.place in places and len(places) <= _MOST_MARKED:
        wanted = places
    return list(dict.fromkeys(at for place in wanted for at in _at(sheet, place, finding)))


def _at(sheet: Sheet, place: str, finding: Finding) -> Sequence[At]:
    if sheet.addressing is Addressing.LINE:
        cells = cells_at(sheet, place)
        text = finding.values.get("text", "")
        return [at for at in cells if sheet.text(*at).strip() == text] or cells[:1]
    area = rectangle_in(sheet, place)
    if area is None:
        return ()
    return cells_at(sheet, place) or [(area.top, area.left)]
