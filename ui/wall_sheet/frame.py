"""What stands on every page: the head with number and day, the foot with cautions. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from charts import cautions
from charts.day_words import day_words
from charts.wording import Wording
from harmonizer.wall_sheet import WallSheet
from ui.wall_sheet.ink import Mark, Page, Stroke, Tone, Words, lowered
from ui.wall_sheet.paper import HEAD, PLAIN, SMALL, SMALL_STRONG, TITLE, Paper, PaperSize
from ui.wall_sheet.type_setting import SEPARATOR, Setter, Setting, in_columns, run_on

_TEXT_COLUMNS: Final = {PaperSize.A3: 3, PaperSize.A4: 2}
_GAP: Final = 4.0
_LEAD_GAP: Final = 24.0
_BELOW_HEAD: Final = 7.0
_ABOVE_FOOT: Final = 4.0
_RULE: Final = 0.6


@dataclass(frozen=True, slots=True)
class Around:
    """Head and foot of one kind of page, and the height left between them."""

    head: Setting
    foot: Setting
    room: float


@dataclass(frozen=True, slots=True)
class Frame:
    """Heads and feet for the pages of ``sheet`` on ``paper``."""

    setter: Setter
    wording: Wording
    paper: Paper
    sheet: WallSheet

    def around(self, head: Setting, foot: Setting) -> Around:
        """``head`` and ``foot`` of pages, and what is left between."""
        whole = self.paper.bottom - self.paper.top
        return Around(head, foot, whole - head.height - foot.height - _ABOVE_FOOT)

    def head(self, title: str, lead: str) -> Setting:
        """Title and number, below them how to read the page and which sheet it replaces."""
        left, right = self.paper.left, self.paper.right
        setter = self.setter
        number = setter.until(right, TITLE.rise, self._number(), HEAD)
        replaces = setter.until(right, TITLE.line + PLAIN.rise, self._replaces(), PLAIN)
        marks: list[Mark] = [setter.at(left, TITLE.rise, title, TITLE), number, replaces]
        top = TITLE.line
        for line in setter.lines(lead, PLAIN, replaces.x - _LEAD_GAP - left):
            marks.append(setter.at(left, top + PLAIN.rise, line, PLAIN))
            top += PLAIN.line
        return Setting(tuple(marks), top + _BELOW_HEAD)

    def foot(self, above: Setting, notes: Sequence[str]) -> Setting:
        """``above``, footnotes and cautions; the last line comes with the page's number."""
        left, right = self.paper.left, self.paper.right
        marks: list[Mark] = list(above.marks)
        top = above.height + _GAP if above.marks else 0.0
        said = [self.wording.say(cautions.TOPIC, code) for code in cautions.GENERAL]
        set_in = in_columns if self.paper.size is PaperSize.A3 else run_on
        for texts, face in ((notes, SMALL), (said, SMALL_STRONG)):
            if not texts:
                continue
            marks.append(Stroke(left, top, right, top, _RULE, Tone.EDGE))
            columns = _TEXT_COLUMNS[self.paper.size]
            part = set_in(self.setter, texts, face, (left, right), columns)
            marks += lowered(part.marks, top + _GAP)
            top += part.height + 2 * _GAP
        marks.append(Stroke(left, top, right, top, _RULE, Tone.EDGE))
        return Setting(tuple(marks), top + _GAP + SMALL_STRONG.line)

    def pages(self, bodies: Sequence[tuple[Around, Sequence[Mark]]]) -> tuple[Page, ...]:
        """``bodies`` between their heads and feet, numbered from 1."""
        return tuple(
            Page(
                self.paper,
                _drawn(
                    *lowered(around.head.marks, self.paper.top),
                    *lowered(body, self.paper.top + around.head.height),
                    *lowered(around.foot.marks, self.paper.bottom - around.foot.height),
                    *self._last_line(number, len(bodies)),
                ),
            )
            for number, (around, body) in enumerate(bodies, 1)
        )

    def _last_line(self, number: int, pages: int) -> Sequence[Mark]:
        """Number, what it replaces, version, the day of printing, and the page's own number."""
        say, chart = self.wording.say, self.sheet.chart
        day = day_words(chart.made_on, self.wording)
        printed = say("wall_sheet", "version", version=chart.version, day=day)
        said = SEPARATOR.join(part for part in (self._number(), self._replaces(), printed) if part)
        page = say("combined", "page", number=number, pages=pages)
        base = self.paper.bottom - SMALL.line + SMALL.rise
        return (
            self.setter.at(self.paper.left, base, said, SMALL_STRONG),
            self.setter.until(self.paper.right, base, page, SMALL_STRONG),
        )

    def _number(self) -> str:
        """The number of the sheet and its day, or the day alone where nobody counts."""
        edition, chart = self.sheet.edition, self.sheet.chart
        if edition is None:
            day = day_words(chart.made_on, self.wording)
            return self.wording.say("wall_sheet", "no-number", day=day)
        day = day_words(edition.made_on, self.wording)
        return self.wording.say("wall_sheet", "number", number=edition.number, day=day)

    def _replaces(self) -> str:
        edition = self.sheet.edition
        if edition is None:
            return ""
        if edition.replaces is None:
            return self.wording.say("wall_sheet", "replaces-none")
        return self.wording.say("wall_sheet", "replaces", number=edition.replaces)


def _drawn(*marks: Mark) -> tuple[Mark, ...]:
    """``marks`` without the words that say nothing."""
    return tuple(mark for mark in marks if not isinstance(mark, Words) or mark.text)
