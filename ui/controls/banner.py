"""A strip with one sentence that belongs to what stands below it."""

from __future__ import annotations

from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QLabel, QWidget

from ui.controls.strokes import px


class Banner(QLabel):
    """One sentence on a ground of its own; hidden while there is nothing to say."""

    def __init__(self, ground: QColor, text: QColor, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        dress = QPalette(self.palette())
        dress.setColor(QPalette.ColorRole.Window, ground)
        dress.setColor(QPalette.ColorRole.WindowText, text)
        self.setPalette(dress)
        self.setAutoFillBackground(True)
        self.setWordWrap(True)
        self.setContentsMargins(px(self, 10), px(self, 5), px(self, 10), px(self, 5))
        self.hide()

    def say(self, sentence: str) -> None:
        """Show ``sentence``; "" hides the strip."""
        self.setText(sentence)
        self.setAccessibleName(sentence)
        self.setVisible(bool(sentence))
