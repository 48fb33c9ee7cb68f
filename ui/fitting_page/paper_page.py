"""Paints the fitting sheet on one page with what paints the screen; pixels at 96 to the inch."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Final

from PySide6.QtCore import QRectF, QSizeF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter

from charts.day_words import day_words
from harmonizer.cautions import cautions_for
from harmonizer.setting_words import figures_in_force, hand_in_force
from ui.drawing.head_painter import HeadPainter
from ui.drawing.length_painter import paint_length_check
from ui.dress import Dress
from ui.fitting_page.cell_painter import CellPainter
from ui.fitting_page.chosen import reasons_for
from ui.fitting_page.columns import PAD_LEFT, PAD_RIGHT, TAPE_COLUMNS, Column, ColumnPlan, plan
from ui.fitting_page.draft import ASKED, Draft, other_system, text_of
from ui.fitting_page.echo import figure_in
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.head import HEIGHT, TAPE_TOP
from ui.fitting_page.row_words import RowWords
from ui.fitting_page.rows import SEPARATOR, ModelRow, TapeHead
from ui.fitting_page.tape_cells import Spot
from ui.theme import Ink
from ui.words import Words

_WRAP: Final = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop) | int(
    Qt.TextFlag.TextWordWrap
)
LEFT: Final = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
RIGHT: Final = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


@dataclass(frozen=True, slots=True)
class Printed:
    """What goes on paper: the rider, the sheet, the rows, the day, and what is said of a pair."""

    draft: Draft
    sheet: FittingSheet
    rows: tuple[ModelRow, ...]
    on: date
    pair: tuple[str, ...] = ()


class PaperPage:
    """One page on one painter."""

    def __init__(self, painter: QPainter, dress: Dress, words: Words) -> None:
        self._painter = painter
        self._words = words
        self._dress = dress
        self._cells = CellPainter(dress)

    def paint(self, size: QSizeF, printed: Printed) -> float:
        """The whole page; returns where its last caution ends."""
        notes = printed.sheet.has_notes
        longest = max(
            self._dress.small_strong.width(word) for word in RowWords(self._words).all_verdicts()
        )
        verdict = longest / self._dress.unit + 26.0
        columns = plan(size.width(), self._dress.unit, notes=notes, verdict=verdict)
        top = self._paint_title(size.width(), printed)
        top = self._paint_head(top, columns, printed.sheet)
        for row in printed.rows:
            top = self._paint_row(top, columns, printed.sheet, row)
        top = self._paint_reasons(top + 14 * self._dress.unit, size, printed)
        return self._paint_cautions(max(top, 0.0), size, printed)

    def _paint_title(self, width: float, printed: Printed) -> float:
        type_, words = self._dress.type_, self._words
        line = QRectF(0, 0, width, type_.line * 1.7)
        name = printed.draft.given.name or words("print-title")
        self._write(line, name, type_.large)
        made = words("print-made", day=day_words(printed.on, words.wording))
        self._write(line, made, type_.small, Ink.QUIET, RIGHT)
        readings = SEPARATOR.join(self._readings(printed.draft))
        below = QRectF(0, line.bottom() + 2, width, type_.line * 1.2)
        self._write(below, readings, type_.plain)
        taken = words(f"taker-{printed.draft.given.taken_by.value}")
        who = below.translated(0, below.height())
        self._write(who, taken, type_.small, Ink.QUIET)
        return who.bottom() + 8 * self._dress.unit

    def _readings(self, draft: Draft) -> list[str]:
        said = []
        for measure in ASKED:
            reading = draft.reading(measure)
            if reading is not None:
                other = figure_in(reading, other_system(reading), self._words)
                name = self._words(f"field-{measure.value}")
                said.append(
                    self._words("print-reading", name=name, text=text_of(reading), other=other)
                )
        return said

    def _paint_head(self, top: float, columns: ColumnPlan, sheet: FittingSheet) -> float:
        bottom = top + HEIGHT * self._dress.unit
        left = 0.0
        for column, width in columns.widths.items():
            dimension = TAPE_COLUMNS.get(column)
            if dimension is not None:
                box = QRectF(left, top, width, bottom - top)
                self._paint_tape_head(box, sheet.heads[dimension])
            left += width
        self._painter.fillRect(QRectF(0, bottom - 1, left, 1), self._dress.colours[Ink.EDGE])
        return bottom

    def _paint_tape_head(self, box: QRectF, head: TapeHead) -> None:
        unit, type_ = self._dress.unit, self._dress.type_
        line = box.adjusted(PAD_LEFT * unit, 0, -PAD_RIGHT * unit, 0)
        line.setHeight(TAPE_TOP * unit)
        title = self._words("head-titled", title=head.title, remark=head.remark)
        self._write(line, title if head.remark else head.title, type_.strong)
        self._write(line, head.reading, type_.plain, Ink.TEXT, RIGHT)
        scale = self._cells.tapes.scale(head, box.left(), box.width())
        if scale is not None:
            tape = HeadPainter(self._dress.colours, type_, self._dress.small)
            edges = (box.top() + TAPE_TOP * unit, box.bottom())
            tape.paint(self._painter, scale, edges, scale.centre)

    def _paint_row(
        self,
        top: float,
        columns: ColumnPlan,
        sheet: FittingSheet,
        row: ModelRow,
    ) -> float:
        left, high = 0.0, self._dress.shape.height
        for column, width in columns.widths.items():
            spot = Spot(self._painter, QRectF(left, top, width, high))
            self._cells.ground(spot, column)
            self._paint_cell(spot, column, sheet, row)
            left += width
        return top + high

    def _paint_cell(self, spot: Spot, column: Column, sheet: FittingSheet, row: ModelRow) -> None:
        dimension = TAPE_COLUMNS.get(column)
        if dimension is not None:
            self._cells.tapes.paint(spot, sheet.heads[dimension], row.cells.get(dimension))
        elif column is Column.MODEL:
            self._cells.model(spot, row)
        elif column is Column.SIZE:
            self._cells.size(spot, row)
        elif column is Column.VERDICT:
            self._cells.verdict(spot, row)
        else:
            self._cells.note(spot, row)

    def _paint_reasons(self, top: float, size: QSizeF, printed: Printed) -> float:
        """Why the first of the models, and the length check beside it."""
        type_, unit = self._dress.type_, self._dress.unit
        side = 112 * unit
        paint_length_check(
            self._painter, QRectF(size.width() - side, top, side, side), self._dress.colours
        )
        words = QRectF(size.width() - side - 150 * unit, top + 8 * unit, 142 * unit, side)
        wording, settings = self._words.wording, printed.sheet.fit.settings
        check = [self._words("length-check-line"), self._words("length-check-scale")]
        self._paint_lines(words, [*check, hand_in_force(settings, wording)])
        reasons = reasons_for(printed.sheet, printed.rows[0], self._words)
        room = words.left() - 20 * unit
        self._write(QRectF(0, top, room, type_.line * 1.3), reasons.heading, type_.title)
        box = QRectF(0, top + type_.line * 1.5, room, side)
        lines = [line.text for line in reasons.lines]
        bottom = self._paint_lines(box, [*lines, *figures_in_force(settings, wording)])
        if printed.pair:
            bottom = self._paint_pair(QRectF(0, bottom, room, side), printed.pair)
        return max(bottom, top + side)

    def _paint_pair(self, room: QRectF, lines: Sequence[str]) -> float:
        """What is said of a foam and an inflatable vest together."""
        type_, unit = self._dress.type_, self._dress.unit
        title = QRectF(room.left(), room.top() + 6 * unit, room.width(), type_.line * 1.3)
        self._write(title, self._words.wording.say("pair", "title"), type_.title)
        return self._paint_lines(room.translated(0, title.height() + 8 * unit), lines)

    def _paint_cautions(self, top: float, size: QSizeF, printed: Printed) -> float:
        """All cautions in two columns at the foot of the page; returns where they end."""
        said = cautions_for(printed.draft.rider(), self._words.wording)
        half = -(-len(said) // 2)
        wide = size.width() / 2 - 12 * self._dress.unit
        high = self._dress.type_.line * 0.9 * (half + 1) + 16 * self._dress.unit
        start = max(top + 10 * self._dress.unit, size.height() - high)
        self._painter.fillRect(QRectF(0, start, size.width(), 1), self._dress.colours[Ink.EDGE])
        start += 6 * self._dress.unit
        left = self._paint_lines(QRectF(0, start, wide, 400), said[:half])
        right = QRectF(size.width() - wide, start, wide, 400)
        return max(left, self._paint_lines(right, said[half:]))

    def _paint_lines(self, box: QRectF, lines: Sequence[str]) -> float:
        """Small lines one below the other; returns where they end."""
        font = self._dress.type_.small
        measure = QFontMetricsF(font)
        self._painter.setFont(font)
        self._painter.setPen(self._dress.colours[Ink.TEXT])
        top = box.top()
        for line in lines:
            room = QRectF(box.left(), top, box.width(), 1000.0)
            high = measure.boundingRect(room, _WRAP, line).height()
            self._painter.drawText(room, _WRAP, line)
            top += high + 1.5 * self._dress.unit
        return top

    def _write(
        self,
        box: QRectF,
        text: str,
        font: QFont,
        ink: Ink = Ink.TEXT,
        side: Qt.AlignmentFlag = LEFT,
    ) -> None:
        self._painter.setFont(font)
        self._painter.setPen(self._dress.colours[ink])
        self._painter.drawText(box, side, text)
