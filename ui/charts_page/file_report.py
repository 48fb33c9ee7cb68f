"""One file as a page: its charts as tables, and what is open with its readings. No Qt."""

from __future__ import annotations

from collections.abc import Iterator
from html import escape
from typing import Final

from charts.finding_sentences import reason_of, sentence_of
from charts.findings import Finding, Level
from charts.schema import Chart, FileReading, Range
from ui.chart_table import names_of
from ui.charts_page.file_rows import FileRow, weighed
from ui.fitting_page.rows import SEPARATOR
from ui.theme import Ink, Theme
from ui.words import Words

HERE: Final = "here"
"""The anchor of the place that was asked for."""


class FileReport:
    """Makes the page of one file in one theme and language."""

    def __init__(self, theme: Theme, words: Words) -> None:
        self._theme = theme
        self._words = words

    def page(self, row: FileRow, place: str = "") -> str:
        """The whole page as HTML; the cell at ``place`` is marked and anchored."""
        reading = row.reading
        parts = [self._title(row.name, "x-large")]
        if row.folder:
            parts.append(self._quiet(row.folder))
        parts.extend(self._findings(reading, open_only=True))
        parts.extend(self._chart(chart, reading, place) for chart in reading.charts)
        parts.extend(self._findings(reading, open_only=False))
        return "".join(parts)

    def _findings(self, reading: FileReading, *, open_only: bool) -> Iterator[str]:
        """What is open stands before the charts, notes after them."""
        chosen = [
            finding
            for finding in weighed(reading.findings)
            if (finding.level is not Level.NOTE) is open_only
        ]
        if chosen:
            title = self._words("report-open" if open_only else "report-notes")
            yield self._title(title, "large")
        for finding in chosen:
            yield self._finding(finding)

    def _finding(self, finding: Finding) -> str:
        ink = {Level.ERROR: Ink.STOP, Level.QUESTION: Ink.NEAR}.get(finding.level, Ink.QUIET)
        level = escape(self._words(f"level-{finding.level.value}"))
        colour = self._theme.colour(ink)
        text = escape(sentence_of(finding, self._words.wording))
        said = [
            "<p style='margin-top:6px;margin-bottom:2px'>",
            f"<span style='font-weight:600;color:{colour}'>{level}</span>&nbsp; {text}</p>",
        ]
        for candidate in finding.candidates:
            why = reason_of(candidate, self._words.wording)
            line = f"<span style='font-weight:600'>{escape(candidate.text)}</span>"
            line += f" &nbsp;{escape(why)}" if why else ""
            said.append(f"<p style='margin:0 0 0 22px'>{line}</p>")
        do = f"do-{finding.code}"
        if finding.level is not Level.NOTE and self._words.wording.has("faces", do):
            said.append(self._quiet(self._words.wording.say("faces", do)))
        return "".join(said)

    def _chart(self, chart: Chart, reading: FileReading, place: str) -> str:
        names = SEPARATOR.join(names_of(chart, self._words.wording))
        head = self._title(names, "large") + self._quiet(
            self._words("report-chart", place=chart.place, count=len(chart.sizes))
        )
        asked = {one.id for one in reading.findings if one.level is Level.QUESTION}
        headings = list(dict.fromkeys(_heading(one) for size in chart.sizes for one in size.ranges))
        rows = [self._head(["", *headings])]
        for size in chart.sizes:
            by_heading = {_heading(one): one for one in size.ranges}
            cells = [self._value(by_heading.get(one), asked, place) for one in headings]
            label = " ".join(part for part in (size.label, size.length) if part)
            rows.append(f"<tr>{self._cell(self._strong(escape(label)))}{''.join(cells)}</tr>")
        return f"{head}<table cellspacing='0' cellpadding='6'>{''.join(rows)}</table>"

    def _head(self, texts: list[str]) -> str:
        ground = self._theme.colour(Ink.BAND)
        cells = "".join(f"<td align='left'>{self._strong(escape(text))}</td>" for text in texts)
        return f"<tr bgcolor='{ground}'>{cells}</tr>"

    def _cell(self, inner: str, ground: str = "") -> str:
        """A cell with a hairline below."""
        behind = f" bgcolor='{ground}'" if ground else ""
        rule = self._theme.colour(Ink.RULE)
        return f"<td{behind} style='border-bottom:1px solid {rule}'>{inner}</td>"

    @staticmethod
    def _strong(inner: str) -> str:
        return f"<span style='font-weight:600'>{inner}</span>"

    def _value(self, value: Range | None, asked: set[str], place: str) -> str:
        """A value as printed; asked about in the colour of questions, with a mark in words."""
        if value is None:
            return self._cell("")
        text = escape(value.published)
        if asked.intersection(value.findings):
            near = self._theme.colour(Ink.NEAR)
            text = f"<span style='font-weight:600;color:{near}'>{text} ?</span>"
        if place and value.place == place:
            chosen = self._theme.colour(Ink.TRYING)
            return self._cell(f"<a name='{HERE}'></a>{self._strong(text)}", chosen)
        return self._cell(text)

    def _title(self, text: str, size: str) -> str:
        """A heading; the fonts that come with the program have no heavier face than this."""
        top = 0 if size == "x-large" else 18
        style = f"font-size:{size};font-weight:600"
        return (
            f"<p style='margin-top:{top}px;margin-bottom:4px'>"
            f"<span style='{style}'>{escape(text)}</span></p>"
        )

    def _quiet(self, text: str) -> str:
        return (
            f"<p style='margin-top:0;margin-bottom:4px'>"
            f"<font color='{self._theme.colour(Ink.QUIET)}'>{escape(text)}</font></p>"
        )


def _heading(value: Range) -> str:
    return value.heading or value.dimension.value
