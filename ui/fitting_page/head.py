"""The table's head: titles, the reading over each tape, and the tape's two edges."""

from __future__ import annotations

from PySide6.QtCore import QRect, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QHeaderView, QWidget

from ui.drawing.head_painter import HeadPainter
from ui.dress import Dress
from ui.fitting_page.cell_painter import rider_x
from ui.fitting_page.columns import PAD_LEFT, PAD_RIGHT, TAPE_COLUMNS, Column, tape_scale
from ui.fitting_page.rows import TapeHead
from ui.fitting_page.table_model import FittingModel
from ui.theme import Ink

_HEIGHT = 66.0
_TITLE = 20.0
_TAPE_TOP = 24.0
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


class TapeHeadView(QHeaderView):
    """Paints the columns' titles; the sizes come from the view's column plan."""

    def __init__(self, model: FittingModel, dress: Dress, parent: QWidget) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._rows = model
        self.dress = dress
        self.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.setHighlightSections(False)
        self.setSectionsClickable(False)
        self.setMinimumSectionSize(1)

    def sizeHint(self) -> QSize:
        """High enough for a title and both edges of a tape."""
        return QSize(super().sizeHint().width(), self.dress.type_.px(_HEIGHT))

    def paintSection(self, painter: QPainter, rect: QRect, logicalIndex: int) -> None:  # noqa: N803 - Qt's name
        """One column's head."""
        painter.save()
        colours = self.dress.colours
        painter.fillRect(rect, colours[Ink.BAND])
        painter.setPen(QPen(colours[Ink.EDGE], 1))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        column = Column(logicalIndex)
        sheet = self._rows.sheet
        head = sheet.heads.get(TAPE_COLUMNS[column]) if sheet and column in TAPE_COLUMNS else None
        if head is None:
            self._paint_title(painter, rect, column)
            if column is Column.MODEL and sheet is not None:
                self._paint_summary(painter, rect, sheet.summary)
            if column is Column.VERDICT:
                self._paint_edges(painter, rect)
        else:
            self._paint_tape(painter, rect, head)
        painter.restore()

    def _paint_remark(self, painter: QPainter, line: QRectF, head: TapeHead) -> None:
        """That this tape has another scale than its neighbours."""
        if not head.remark or head.centre_cm is None:
            return
        type_ = self.dress.type_
        after = self.dress.strong_width.horizontalAdvance(head.title) + type_.px(6)
        before = self.dress.plain_width.horizontalAdvance(head.reading) + type_.px(6)
        room = line.adjusted(after, 0, -before, 0)
        painter.setFont(type_.small)
        painter.setPen(self.dress.colours[Ink.QUIET])
        text = self.dress.small_width.elidedText(
            head.remark, Qt.TextElideMode.ElideRight, room.width()
        )
        painter.drawText(room, _LEFT, text)
        painter.setPen(self.dress.colours[Ink.TEXT])

    def _paint_title(self, painter: QPainter, rect: QRect, column: Column) -> None:
        type_ = self.dress.type_
        box = QRectF(rect).adjusted(type_.px(PAD_LEFT), 0, -2, 0)
        if column not in TAPE_COLUMNS:
            box.setTop(rect.bottom() - type_.px(_TITLE + 2))
        else:
            box.setBottom(rect.top() + type_.px(_TAPE_TOP))
        text = self._rows.headerData(column, Qt.Orientation.Horizontal)
        painter.setFont(type_.small if column not in TAPE_COLUMNS else type_.strong)
        ink = Ink.QUIET if column not in TAPE_COLUMNS else Ink.TEXT
        painter.setPen(self.dress.colours[ink])
        painter.drawText(box, _LEFT, str(text or ""))

    def _paint_summary(self, painter: QPainter, rect: QRect, lines: tuple[str, str]) -> None:
        """How much was compared; it may run on over the next column's empty head."""
        type_ = self.dress.type_
        box = QRectF(rect).adjusted(type_.px(PAD_LEFT), type_.px(5), type_.px(60), 0)
        box.setHeight(type_.line * 1.1)
        painter.setClipping(False)
        for text, font in zip(reversed(lines), (type_.strong, type_.small), strict=True):
            painter.setFont(font)
            painter.setPen(self.dress.colours[Ink.TEXT if font is type_.strong else Ink.QUIET])
            painter.drawText(box, _LEFT, text)
            box.translate(0, box.height())

    def _paint_edges(self, painter: QPainter, rect: QRect) -> None:
        """Which unit stands on which edge of the tapes, just left of the first of them."""
        type_ = self.dress.type_
        top, bottom = rect.top() + type_.px(_TAPE_TOP), rect.bottom()
        half = (bottom - top) / 2 - type_.px(5)
        box = QRectF(rect.left(), top, rect.width() - type_.px(2), half)
        painter.setFont(type_.small)
        painter.setPen(self.dress.colours[Ink.QUIET])
        painter.drawText(box, _RIGHT, self._rows.words("head-inches"))
        painter.drawText(
            box.translated(0, bottom - top - half), _RIGHT, self._rows.words("head-cm")
        )

    def _paint_tape(self, painter: QPainter, rect: QRect, head: TapeHead) -> None:
        type_, colours = self.dress.type_, self.dress.colours
        line = QRectF(rect).adjusted(type_.px(PAD_LEFT), type_.px(4), -type_.px(PAD_RIGHT), 0)
        line.setHeight(type_.px(_TITLE))
        painter.setFont(type_.strong)
        painter.setPen(colours[Ink.TEXT])
        painter.drawText(line, _LEFT, head.title)
        self._paint_remark(painter, line, head)
        painter.setFont(type_.plain if head.centre_cm is not None else type_.small)
        if head.centre_cm is None:
            painter.setPen(colours[Ink.QUIET])
        painter.drawText(line, _RIGHT, head.reading)
        if head.centre_cm is None:
            return
        scale = tape_scale(
            rect.left(), rect.width(), type_.line / 16.0, head.centre_cm, head.half_span_cm
        )
        bottom = float(rect.bottom())
        edges = (float(rect.top() + type_.px(_TAPE_TOP)), bottom)
        HeadPainter(colours, type_).paint(painter, scale, edges, rider_x(head, scale))
