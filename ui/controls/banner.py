"""A strip with one sentence that belongs to what stands below it."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtGui import QColor, QPalette, QResizeEvent
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

from ui.controls.strokes import px

_SIDE = 10
_ABOVE = 5


class Banner(QWidget):
    """One sentence on a ground of its own; hidden while there is nothing to say.

    The label lies in no layout: each new sentence would have the whole page laid out anew, and
    while a line is dragged there is one at every step. The page hears of another height only.
    """

    def __init__(self, ground: QColor, text: QColor, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        dress = QPalette(self.palette())
        dress.setColor(QPalette.ColorRole.Window, ground)
        dress.setColor(QPalette.ColorRole.WindowText, text)
        self.setPalette(dress)
        self.setAutoFillBackground(True)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self._label = QLabel(self)
        self._label.setWordWrap(True)
        self.hide()

    def text(self) -> str:
        """The sentence that is shown, "" where there is none."""
        return self._label.text()

    def say(self, sentence: str) -> None:
        """Show ``sentence``; "" hides the strip."""
        self._label.setText(sentence)
        self.setAccessibleName(sentence)
        self._fit()
        self.setVisible(bool(sentence))

    def sizeHint(self) -> QSize:
        """As high as the sentence is where the strip is as wide as now."""
        return QSize(self.width(), self.height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Break the sentence anew."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        """Lay the label into the strip; as high as its lines, whatever they say."""
        side, above = px(self, _SIDE), px(self, _ABOVE)
        wide = max(self.width() - 2 * side, 1)
        high = self._label.heightForWidth(wide)
        self._label.setGeometry(side, above, wide, high)
        if self.minimumHeight() != high + 2 * above:
            self.setFixedHeight(high + 2 * above)
