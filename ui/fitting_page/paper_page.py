"""Paints the fitting sheet on one page with what paints the screen; pixels at 96 to the inch."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QRectF, QSizeF
from PySide6.QtGui import QPainter

from charts.day_words import day_words
from harmonizer.cautions import cautions_for
from ui.drawing.head_painter import HeadPainter
from ui.drawing.unbroken import NO_BREAK
from ui.dress import Dress
from ui.fitting_page.advice_lines import nearest_sentence
from ui.fitting_page.cell_painter import CellPainter
from ui.fitting_page.columns import PAD_LEFT, PAD_RIGHT, TAPE_COLUMNS, Column, ColumnPlan, plan
from ui.fitting_page.draft import ASKED, Draft, other_system, text_of
from ui.fitting_page.echo import figure_in
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.head import HEIGHT, TAPE_TOP
from ui.fitting_page.paper_reasons import PaperReasons
from ui.fitting_page.paper_sheet import certainty_words, estimate_line, tape_lines
from ui.fitting_page.paper_text import RIGHT, PaperText
from ui.fitting_page.printed import Printed
from ui.fitting_page.row_words import RowWords
from ui.fitting_page.rows import SEPARATOR, ModelRow, TapeHead
from ui.fitting_page.tape_cells import Spot
from ui.theme import Ink
from ui.words import Words

_SIGN: Final = 26.0  # what stands before a word of a verdict
_PLAIN: Final = 8.0  # and before what has no mark


class PaperPage:
    """One page on one painter."""

    def __init__(self, painter: QPainter, dress: Dress, words: Words) -> None:
        self._painter = painter
        self._words = words
        self._dress = dress
        self._cells = CellPainter(dress)
        self._text = PaperText(painter, dress)

    def paint(self, size: QSizeF, printed: Printed) -> float:
        """The whole page; returns where its last caution ends."""
        unit = self._dress.unit
        sure = {row.key: self._sure(printed, row) for row in printed.rows}
        columns = self._columns(size.width(), printed.sheet, list(sure.values()))
        top = self._paint_title(size.width(), printed)
        top = self._paint_head(top, columns, printed.sheet)
        for row in printed.rows:
            top = self._paint_row(top, columns, printed, row, sure[row.key])
        below = QRectF(0, top + 12 * unit, size.width(), size.height())
        top = PaperReasons(self._text, self._words).paint(below, printed)
        return self._paint_cautions(top, size, printed)

    def _columns(self, width: float, sheet: FittingSheet, sure: list[str]) -> ColumnPlan:
        """The columns of the screen, the verdict's as wide as its longest word."""
        dress = self._dress
        words = [dress.small_strong.width(one) for one in RowWords(self._words).all_verdicts()]
        less = (_SIGN - _PLAIN) * dress.unit
        longest = max([*words, *(dress.small.width(one) - less for one in sure)])
        verdict = longest / dress.unit + _SIGN
        return plan(width, dress.unit, notes=sheet.has_notes, verdict=verdict)

    def _sure(self, printed: Printed, row: ModelRow) -> str:
        return certainty_words(printed.sheet.fit_row(row), self._words)

    def _paint_title(self, width: float, printed: Printed) -> float:
        """Who, when, what was read and by whom; in grey what was only estimated."""
        type_, words, text = self._dress.type_, self._words, self._text
        line = QRectF(0, 0, width, type_.line * 1.7)
        name = printed.draft.given.name or words("print-title")
        text.write(line, name, type_.large)
        made = words("print-made", day=day_words(printed.on, words.wording))
        text.write(line, made, type_.small, Ink.QUIET, RIGHT)
        # A line breaks between two readings, never inside one.
        whole = (one.replace(" ", NO_BREAK) for one in self._readings(printed.draft))
        readings = SEPARATOR.join(whole)
        below = QRectF(0, line.bottom() + 2, width, 0)
        top = text.broken(below, readings, type_.plain)
        taken = words(f"taker-{printed.draft.given.taken_by.value}")
        measured = SEPARATOR.join([taken, *tape_lines(printed.sheet, words)])
        quiet = [measured, estimate_line(printed.draft, printed.sheet, words)]
        below.moveTop(top + 2)
        top = text.lines(below, [one for one in quiet if one], Ink.QUIET)
        nearest = nearest_sentence(printed.sheet.fit, words.wording)
        if nearest:
            below.moveTop(top)
            top = text.broken(below, nearest, type_.strong)
        return top + 6 * self._dress.unit

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
        unit, type_, measured = self._dress.unit, self._dress.type_, head.centre_cm is not None
        line = box.adjusted(PAD_LEFT * unit, 0, -PAD_RIGHT * unit, 0)
        line.setHeight(TAPE_TOP * unit)
        title = self._words("head-titled", title=head.title, remark=head.remark)
        self._text.write(line, title if head.remark and measured else head.title, type_.strong)
        if measured:
            self._text.write(line, head.reading, type_.plain, Ink.TEXT, RIGHT)
        else:
            self._text.write(line, self._unmeasured(line, head), type_.small, Ink.QUIET, RIGHT)
        scale = self._cells.tapes.scale(head, box.left(), box.width())
        if scale is not None:
            tape = HeadPainter(self._dress.colours, type_, self._dress.small)
            edges = (box.top() + TAPE_TOP * unit, box.bottom())
            tape.paint(self._painter, scale, edges, scale.centre, measured=measured)

    def _unmeasured(self, line: QRectF, head: TapeHead) -> str:
        """That there is no reading, or what is estimated, as long as there is room."""
        room = line.width() - self._dress.strong.width(head.title) - 5 * self._dress.unit
        return head.reading if self._dress.small.width(head.reading) <= room else head.brief

    def _paint_row(
        self, top: float, columns: ColumnPlan, printed: Printed, row: ModelRow, sure: str
    ) -> float:
        left, high = 0.0, self._dress.shape.height
        chosen, held = row.key == printed.told.key, row.key == printed.held
        for column, width in columns.widths.items():
            spot = Spot(self._painter, QRectF(left, top, width, high), chosen, held)
            self._cells.ground(spot, column)
            self._paint_cell(spot, column, printed.sheet, row, sure)
            left += width
        return top + high

    def _paint_cell(
        self, spot: Spot, column: Column, sheet: FittingSheet, row: ModelRow, sure: str
    ) -> None:
        dimension = TAPE_COLUMNS.get(column)
        if dimension is not None:
            self._cells.tapes.paint(spot, sheet.heads[dimension], row.cells.get(dimension))
        elif column is Column.MODEL:
            self._cells.model(spot, row)
        elif column is Column.SIZE:
            self._cells.size(spot, row)
        elif column is Column.VERDICT:
            self._cells.verdict(spot, row, sure)
        else:
            self._cells.note(spot, row)

    def _paint_cautions(self, top: float, size: QSizeF, printed: Printed) -> float:
        """All cautions in two columns at the foot of the page; returns where they end."""
        unit, small = self._dress.unit, self._dress.type_.small
        said = cautions_for(printed.draft.rider(), self._words.wording)
        half = -(-len(said) // 2)
        wide = size.width() / 2 - 12 * unit
        sides = (said[:half], said[half:])
        high = max(
            sum(self._text.height(one, wide, small) + 1.5 * unit for one in side) for side in sides
        )
        start = max(top + 8 * unit, size.height() - high - 6 * unit)
        self._painter.fillRect(QRectF(0, start, size.width(), 1), self._dress.colours[Ink.EDGE])
        start += 6 * unit
        lefts = (0.0, size.width() - wide)
        return max(
            self._text.lines(QRectF(left, start, wide, 400), side)
            for left, side in zip(lefts, sides, strict=True)
        )
