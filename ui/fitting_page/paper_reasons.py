"""Paints what stands below the table of the fitting sheet: reasons, length check, seasons, pair."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QRectF
from PySide6.QtGui import QFont

from harmonizer.setting_words import figures_in_force, hand_in_force
from ui.drawing.marks import paint_mark
from ui.fitting_page.advice_lines import again_sentence
from ui.fitting_page.length_check_view import paint_drawing
from ui.fitting_page.length_drawing import length_drawing
from ui.fitting_page.paper_sheet import SeasonLine, legend, reasons_on_paper, season_lines
from ui.fitting_page.paper_text import PaperText
from ui.fitting_page.printed import Printed
from ui.theme import Ink, Look, Mark
from ui.words import Words

_DRAWING: Final = 112.0
_BESIDE: Final = 138.0
_GAP: Final = 20.0
_SEASON: Final = 0.33
_SERVES: Final = {
    2: (Look(Ink.GOOD, Mark.FULL), "season-serves-both"),
    1: (Look(Ink.CHECK, Mark.HALF), "season-serves-one"),
    0: (Look(Ink.STOP, Mark.CROSS), "season-serves-none"),
}


class PaperReasons:
    """Paints on one page."""

    def __init__(self, text: PaperText, words: Words) -> None:
        self._text = text
        self._dress = text.dress
        self._words = words

    def paint(self, room: QRectF, printed: Printed) -> float:
        """Everything below the table, from the top of ``room``; returns where it ends."""
        unit = self._dress.unit
        drawn = self._paint_check(room, printed)
        beside = (_DRAWING + _BESIDE + 2 * _GAP) * unit
        words = room.adjusted(0, 0, -beside, 0)
        bottom = self._paint_reasons(words, printed)
        for paint in (self._paint_seasons, self._paint_pair):
            words.moveTop(bottom)
            bottom = paint(words, printed)
        return self._paint_notes(room, max(bottom, drawn), printed)

    def _paint_check(self, room: QRectF, printed: Printed) -> float:
        """The length check at the right, to scale where that can be computed, with its words."""
        unit, type_, text = self._dress.unit, self._dress.type_, self._text
        row = printed.sheet.fit_row(printed.told)
        drawing = length_drawing(row, self._words)
        side = _DRAWING * unit
        box = QRectF(room.right() - side, room.top(), side, side)
        paint_drawing(text.painter, box, self._dress.colours, drawing)
        beside = QRectF(0, room.top() + 4 * unit, _BESIDE * unit, side)
        beside.moveRight(box.left() - 8 * unit)
        top = text.broken(beside, drawing.title, type_.small_strong)
        beside.moveTop(top + 1.5 * unit)
        hand = hand_in_force(row.arrays.settings, self._words.wording)
        lines = [drawing.line, drawing.scale, hand]
        return max(text.lines(beside, lines), box.bottom())

    def _paint_reasons(self, room: QRectF, printed: Printed) -> float:
        """Why the chosen one; and why not the one that it is held against."""
        top = room.top()
        said = reasons_on_paper(printed.sheet, printed.told, printed.held, self._words)
        for one in said:
            box = QRectF(room.left(), top, room.width(), room.height())
            box.moveTop(self._title(box, one.heading))
            top = self._text.in_columns(box, one.lines, _GAP * self._dress.unit)
            top += 4 * self._dress.unit
        return top

    def _paint_seasons(self, room: QRectF, printed: Printed) -> float:
        """Summer and winter side by side, the sizes that serve both first."""
        lines = season_lines(printed.sheet, printed.rows, self._words)
        if not lines:
            return room.top()
        say, unit, type_ = self._words.wording.say, self._dress.unit, self._dress.type_
        top = self._title(room, say("paper", "seasons-title"))
        adds = self._words.wording.margin(printed.sheet.fit.body.allowance)
        heads = ("", say("paper", "season-summer"), say("paper", "season-winter", adds=adds))
        top = self._row(room, top, heads, type_.small, Ink.QUIET)
        for line in lines:
            look, code = _SERVES[sum(line.serves)]
            top = self._season(room, top, line, look, say("paper", code))
        return top + 4 * unit

    def _season(self, room: QRectF, top: float, line: SeasonLine, look: Look, serves: str) -> float:
        """One size: its mark and what it serves, its name, both verdicts."""
        unit, type_, colours = self._dress.unit, self._dress.type_, self._dress.colours
        side, high = 7.5 * unit, self._text.height(line.size, room.width(), type_.small)
        sign = QRectF(room.left(), top + (high - side) / 2, side, side)
        ground = colours[Ink.GROUND]
        paint_mark(self._text.painter, sign, look.mark, colours[look.ink], ground)
        name = self._words.wording.say("paper", "season-size-serves", size=line.size, serves=serves)
        cells = (name, line.summer, line.winter)
        return self._row(room, top, cells, type_.small, Ink.TEXT)

    def _row(self, room: QRectF, top: float, cells: Sequence[str], font: QFont, ink: Ink) -> float:
        """Three cells beside each other; returns where the highest of them ends."""
        unit = self._dress.unit
        indent = 13 * unit
        wide = room.width() - indent
        shares = (1.0 - 2 * _SEASON, _SEASON, _SEASON)
        left, bottom = room.left() + indent, top
        for text, share in zip(cells, shares, strict=True):
            box = QRectF(left, top, wide * share - 10 * unit, room.height())
            bottom = max(bottom, self._text.broken(box, text, font, ink))
            left += wide * share
        return bottom + 1.5 * unit

    def _paint_pair(self, room: QRectF, printed: Printed) -> float:
        """What is said of a foam and an inflatable vest together."""
        if not printed.pair:
            return room.top()
        box = QRectF(room)
        box.moveTop(self._title(room, self._words.wording.say("pair", "title")))
        return self._text.lines(box, printed.pair) + 4 * self._dress.unit

    def _paint_notes(self, room: QRectF, top: float, printed: Printed) -> float:
        """What to measure again first, what the drawing means, the shop's own figures."""
        sheet, wording = printed.sheet, self._words.wording
        again = again_sentence(sheet.fit, wording)
        box = QRectF(room.left(), top, room.width(), room.height())
        box.moveTop(self._text.lines(box, [again] if again else []))
        # Whole sentences, one behind the other: a paragraph leaves the room that a list takes.
        meaning = " ".join(legend(sheet, printed.rows, self._words))
        own = figures_in_force(sheet.fit.settings, wording)
        return self._text.lines(box, [one for one in (meaning, *own) if one], Ink.QUIET)

    def _title(self, room: QRectF, text: str) -> float:
        """A heading; returns where what stands below it begins."""
        type_ = self._dress.type_
        line = QRectF(room.left(), room.top(), room.width(), type_.line * 1.25)
        self._text.write(line, text, type_.title)
        return line.bottom() + 2 * self._dress.unit
