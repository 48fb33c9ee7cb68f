"""The table's head: titles, the reading over each tape, and the tape's two edges."""

from __future__ import annotations

from functools import partial
from typing import Final

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QAccessible, QMouseEvent, QPainter, QPolygonF
from PySide6.QtWidgets import QHeaderView, QWidget

from ui.drawing.head_painter import HeadPainter
from ui.drawing.smooth import smooth
from ui.dress import Dress
from ui.fitting_page.cell_pictures import CellPictures
from ui.fitting_page.columns import PAD_LEFT, PAD_RIGHT, TAPE_COLUMNS, Column, tape_scale
from ui.fitting_page.rows import Sheet, TapeHead
from ui.fitting_page.table_model import FittingModel
from ui.fitting_page.tape_cells import Spot, rider_x
from ui.theme import Ink

HEIGHT: Final = 66.0
TAPE_TOP: Final = 24.0
_TITLE: Final = 20.0


class TapeHeadView(QHeaderView):
    """Paints the columns' titles; the sizes come from the view's column plan.

    Signals:
        wanted_tape(int): bring the tape of this column into sight.
    """

    wanted_tape = Signal(int)

    def __init__(self, model: FittingModel, dress: Dress, parent: QWidget) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._rows = model
        self.wear(dress)
        self.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.setHighlightSections(False)
        self.setSectionsClickable(False)
        self.setMinimumSectionSize(1)

    def wear(self, dress: Dress) -> None:
        """Paint in another dress from now on."""
        self.dress = dress
        self._pictures = CellPictures()

    def sizeHint(self) -> QSize:
        """High enough for a title and both edges of a tape."""
        return QSize(super().sizeHint().width(), self.dress.type_.px(HEIGHT))

    def paint_changes(self, before: Sheet, after: Sheet) -> None:
        """Have the heads painted that tell something else in ``after``, and a screen reader told.

        The model's own signal has the whole table laid out anew: it is sent where one listens.
        """
        heads, told = (before.heads, after.heads), before.summary != after.summary
        changed = [column for column, one in TAPE_COLUMNS.items() if heads[0][one] != heads[1][one]]
        for column in (*changed, *((Column.MODEL, Column.SIZE) if told else ())):
            self.updateSection(column)
            if QAccessible.isActive():
                self._rows.headerDataChanged.emit(Qt.Orientation.Horizontal, column, column)

    def paintSection(self, painter: QPainter, rect: QRect, logicalIndex: int) -> None:  # noqa: N803 - Qt's name
        """One column's head."""
        painter.save()
        column, sheet = Column(logicalIndex), self._rows.sheet
        if column in TAPE_COLUMNS and sheet is not None:
            head = sheet.heads[TAPE_COLUMNS[column]]
            seen = (column, head, self._left_out_beside(column))
            paint = partial(self._paint_column, column=column)
            self._pictures.paint(Spot(painter, QRectF(rect)), seen, paint)
        else:
            self._paint_column(Spot(painter, QRectF(rect)), column)
        painter.restore()

    def _left_out_beside(self, column: Column) -> tuple[bool, bool]:
        """Whether a tape before this one, and one after it, is not shown for want of room."""
        return self._is_left_out(column, column - 1), self._is_left_out(column, column + 1)

    def _paint_column(self, spot: Spot, column: Column) -> None:
        painter, rect = spot.painter, spot.box.toRect()
        colours = self.dress.colours
        painter.fillRect(rect, colours[Ink.BAND])
        painter.fillRect(rect.left(), rect.bottom(), rect.width(), 1, colours[Ink.EDGE])
        if column in TAPE_COLUMNS:
            self._paint_tape_column(painter, rect, column)
        else:
            self._paint_plain_column(painter, rect, column)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """A press beside the sign of further tapes brings the next one in."""
        column = self.logicalIndexAt(event.position().toPoint())
        inner = event.position().x() - self.sectionViewportPosition(column)
        neighbour = column + (1 if inner > self.sectionSize(column) / 2 else -1)
        if self._is_left_out(column, neighbour):
            self.wanted_tape.emit(neighbour)
            return
        super().mousePressEvent(event)

    def _is_left_out(self, column: int, neighbour: int) -> bool:
        both = column in TAPE_COLUMNS and neighbour in TAPE_COLUMNS
        return both and self.isSectionHidden(neighbour)

    def _paint_plain_column(self, painter: QPainter, rect: QRect, column: Column) -> None:
        """A title at the foot; over the first what was compared, beside the last the units."""
        type_ = self.dress.type_
        box = QRectF(rect).adjusted(type_.px(PAD_LEFT), 0, -2, 0)
        box.setTop(rect.bottom() - type_.px(_TITLE + 2))
        self.dress.small.left(painter, box, self._title(column), self.dress.colours[Ink.QUIET])
        sheet = self._rows.sheet
        if column in (Column.MODEL, Column.SIZE) and sheet is not None:
            self._paint_summary(painter, rect, sheet.summary)
        if column is Column.VERDICT:
            self._paint_units(painter, rect)

    def _paint_tape_column(self, painter: QPainter, rect: QRect, column: Column) -> None:
        self._paint_onward(painter, rect, column)
        type_, colours = self.dress.type_, self.dress.colours
        line = QRectF(rect).adjusted(type_.px(PAD_LEFT), type_.px(4), -type_.px(PAD_RIGHT), 0)
        line.setHeight(type_.px(_TITLE))
        sheet = self._rows.sheet
        head = sheet.heads.get(TAPE_COLUMNS[column]) if sheet else None
        if head is None:
            self.dress.strong.left(painter, line, self._title(column), colours[Ink.TEXT])
            return
        self.dress.strong.left(painter, line, head.title, colours[Ink.TEXT])
        measured = head.centre_cm is not None
        if not measured:
            room = line.width() - self.dress.strong.width(head.title) - type_.px(5)
            fits = self.dress.small.width(head.reading) <= room
            text = head.reading if fits else head.brief
            self.dress.small.right(painter, line, text, colours[Ink.QUIET])
        if head.middle_cm is None:
            return
        if measured:
            self._paint_remark(painter, line, head)
            self.dress.plain.right(painter, line, head.reading, colours[Ink.TEXT])
        unit = self.dress.unit
        scale = tape_scale(rect.left(), rect.width(), unit, head.middle_cm, head.half_span_cm)
        edges = (float(rect.top() + type_.px(TAPE_TOP)), float(rect.bottom()))
        tape = HeadPainter(colours, type_, self.dress.small)
        tape.paint(painter, scale, edges, rider_x(head, scale), measured=measured)

    def _paint_remark(self, painter: QPainter, line: QRectF, head: TapeHead) -> None:
        """That this tape has another scale than its neighbours."""
        if not head.remark:
            return
        gap = self.dress.type_.px(6)
        after = self.dress.strong.width(head.title) + gap
        before = self.dress.plain.width(head.reading) + gap
        room = line.adjusted(after, 0, -before, 0)
        self.dress.small.left(painter, room, head.remark, self.dress.colours[Ink.QUIET])

    def _paint_summary(self, painter: QPainter, rect: QRect, lines: tuple[str, str]) -> None:
        """How much was compared, over the first two columns; each of them paints its own part."""
        type_ = self.dress.type_
        first = self.sectionViewportPosition(Column.MODEL)
        wide = self.sectionSize(Column.MODEL) + self.sectionSize(Column.SIZE)
        box = QRectF(first, rect.top(), wide, rect.height())
        box.adjust(type_.px(PAD_LEFT), type_.px(5), -type_.px(2), 0)
        painter.setClipRect(rect)
        box.setHeight(type_.line * 1.1)
        hands = ((self.dress.strong, Ink.TEXT), (self.dress.small, Ink.QUIET))
        for text, (letters, ink) in zip(reversed(lines), hands, strict=True):
            letters.left(painter, box, text, self.dress.colours[ink])
            box.translate(0, box.height())

    def _paint_units(self, painter: QPainter, rect: QRect) -> None:
        """Which unit stands on which edge of the tapes, just left of the first of them."""
        type_ = self.dress.type_
        top, bottom = float(rect.top() + type_.px(TAPE_TOP)), float(rect.bottom())
        half = (bottom - top) / 2 - type_.px(5)
        box = QRectF(rect.left(), top, rect.width() - type_.px(2), half)
        small, quiet = self.dress.small, self.dress.colours[Ink.QUIET]
        small.right(painter, box, self._rows.words("head-inches"), quiet)
        below = box.translated(0, bottom - top - half)
        small.right(painter, below, self._rows.words("head-cm"), quiet)

    def _paint_onward(self, painter: QPainter, rect: QRect, column: Column) -> None:
        """A sign at the side where further tapes are, for want of room."""
        sides = [
            (step, x)
            for step, x in ((-1, rect.left()), (1, rect.right()))
            if self._is_left_out(column, column + step)
        ]
        if not sides:
            return
        unit, y = self.dress.unit, rect.top() + self.dress.type_.px(14)
        smooth(painter)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self.dress.colours[Ink.FOCUS])
        for step, edge in sides:
            tip = QPointF(edge - step * 2 * unit, y)
            back = edge - step * 7 * unit
            ends = [QPointF(back, y - 4 * unit), QPointF(back, y + 4 * unit)]
            painter.drawPolygon(QPolygonF([tip, *ends]))

    def _title(self, column: Column) -> str:
        return str(self._rows.headerData(column, Qt.Orientation.Horizontal) or "")
