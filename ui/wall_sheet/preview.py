"""The wall sheet on the screen before it is printed or saved: its pages, its paper, its number."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Final

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ui.controls.buttons import FlatButton
from ui.controls.segments import Choice, Segments
from ui.controls.strokes import px
from ui.wall_sheet.ink import Page
from ui.wall_sheet.painter import paint
from ui.wall_sheet.paper import PaperSize
from ui.words import Words

Say = Callable[[str], str]
PagesOf = Mapping[PaperSize, Sequence[Page]]
_SHARE: Final = 0.92
_WIDEST: Final = 1500


class PageView(QWidget):
    """One page, as wide as the widget, with the height that belongs to it."""

    def __init__(self, page: Page, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._page = page
        self.setAccessibleName(" ".join(page.texts))

    def heightForWidth(self, width: int) -> int:
        """The height of the page at ``width``."""
        return round(width * self._page.paper.height / self._page.paper.width)

    def hasHeightForWidth(self) -> bool:
        """The height follows the width."""
        return True

    def sizeHint(self) -> QSize:
        """A page that can be read on most screens."""
        return QSize(_WIDEST, self.heightForWidth(_WIDEST))

    def minimumSizeHint(self) -> QSize:
        """Small enough for a small window."""
        return QSize(px(self, 200), self.heightForWidth(px(self, 200)))

    def paintEvent(self, event: QPaintEvent) -> None:
        """The page on white."""
        painter = QPainter(self)
        painter.fillRect(event.rect(), Qt.GlobalColor.white)
        paint(painter, self._page, self.width() / self._page.paper.width)
        painter.end()


class Preview(QDialog):
    """Shows the pages; what is wanted of them is said by signals.

    Signals:
        wanted(str): "pdf", "web" or "print".
    """

    wanted = Signal(str)

    def __init__(self, pages: PagesOf, number: str, words: Words, parent: QWidget) -> None:
        super().__init__(parent)
        self._pages = pages
        self._words = words
        self.setWindowTitle(self._say("dialog-title"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.papers = Segments(
            [Choice(size.value, self._say(f"paper-{size.value}")) for size in PaperSize]
        )
        self.buttons = {
            code: FlatButton(self._say(f"button-{code}"), urgent=code == "pdf")
            for code in ("pdf", "web", "print", "close")
        }
        self.said = QLabel(number)
        self.said.setWordWrap(True)
        self.area = QScrollArea()
        self._lay_out()
        self._connect()
        self.papers.press(PaperSize.A3.value)
        self._show_pages(PaperSize.A3.value)
        self.resize(parent.size() * _SHARE)

    @property
    def paper(self) -> PaperSize:
        """The paper that was chosen."""
        return PaperSize(self.papers.key)

    @property
    def pages(self) -> Sequence[Page]:
        """The pages on the chosen paper."""
        return self._pages[self.paper]

    def say(self, sentence: str) -> None:
        """Say what became of the pages."""
        self.said.setText(sentence)

    def _say(self, code: str) -> str:
        return self._words.wording.say("wall_sheet", code)

    def _lay_out(self) -> None:
        self.area.setWidgetResizable(True)
        self.area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.area.setBackgroundRole(QPalette.ColorRole.Mid)
        self.area.setAccessibleName(self._say("dialog-pages"))
        self.papers.setAccessibleName(self._say("dialog-paper"))
        row = QHBoxLayout()
        row.addWidget(self.papers)
        row.addWidget(self.said, 1)
        for button in self.buttons.values():
            row.addWidget(button)
        column = QVBoxLayout(self)
        column.addLayout(row)
        column.addWidget(self.area, 1)

    def _connect(self) -> None:
        self.papers.picked.connect(self._show_pages)
        self.buttons["pdf"].clicked.connect(self._want_pdf)
        self.buttons["web"].clicked.connect(self._want_web)
        self.buttons["print"].clicked.connect(self._want_print)
        self.buttons["close"].clicked.connect(self.close)

    def _show_pages(self, key: str) -> None:
        whole = QWidget()
        whole.setBackgroundRole(QPalette.ColorRole.Mid)
        column = QVBoxLayout(whole)
        for page in self._pages[PaperSize(key)]:
            column.addWidget(PageView(page, whole))
        column.addStretch(1)
        self.area.setWidget(whole)

    def _want_pdf(self) -> None:
        self.wanted.emit("pdf")

    def _want_web(self) -> None:
        self.wanted.emit("web")

    def _want_print(self) -> None:
        self.wanted.emit("print")
