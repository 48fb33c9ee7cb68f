"""One figure of the shop: name and effect, the control, default and origin, the way back."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from charts.reason import Reason
from harmonizer.setting_checks import CHOICES, changed_figure, refusal
from harmonizer.setting_words import default_of, effect, name, origin, refused, whole
from harmonizer.settings import DEFAULTS, Settings
from ui.controls.buttons import FlatButton
from ui.dress import Dress
from ui.settings_page.figure_control import DefinitionChoice, FigureLine
from ui.words import Words

_TOP: Final = Qt.AlignmentFlag.AlignTop
_BAR: Final = 4.0
_ANY: Final = (1 << 24) - 1
_NOTE: Final = 290.0
_COLUMNS: Final = {2: 262.0, 3: _NOTE, 4: 200.0}


class FigureRow(QWidget):
    """A figure that is changed in place; a changed one carries a bar and the word for it.

    Signals:
        changed(object): other Settings are wanted.
    """

    changed = Signal(object)

    def __init__(self, key: str, words: Words, dress: Dress, parent: QWidget) -> None:
        super().__init__(parent)
        self.key = key
        self._dress = dress
        self._words = words
        self._settings: Settings = DEFAULTS
        self._is_wide: bool | None = None
        wording = words.wording
        kind = DefinitionChoice if key in CHOICES else FigureLine
        self.name = QLabel(name(key, wording), self)
        self.mark = QLabel(wording.say("settings", "changed-mark"), self)
        self.effect = QLabel(effect(key, wording), self)
        self.control = kind(key, wording, dress.type_.small, self)
        self.note = QLabel(self)
        self.back = FlatButton(self._back_words("one-back"), self)
        self._build()

    def _build(self) -> None:
        type_ = self._dress.type_
        self.name.setFont(type_.strong)
        self.mark.setFont(type_.small_strong)
        self.mark.setForegroundRole(QPalette.ColorRole.Link)
        self.effect.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        for label in (self.effect, self.note):
            label.setFont(type_.small)
            label.setWordWrap(True)
        self.back.setFont(type_.small)
        self.back.setAccessibleName(self._back_words("one-back-sentence"))
        kept = self.back.sizePolicy()
        kept.setRetainSizeWhenHidden(True)
        self.back.setSizePolicy(kept)
        self.control.given.connect(self._given)
        self.control.put_back.connect(self._calm)
        self.back.clicked.connect(self._go_back)
        self._grid = QGridLayout(self)
        px = type_.px
        self._grid.setContentsMargins(px(14), px(6), px(14), px(7))
        self._grid.setHorizontalSpacing(px(14))
        self._grid.setVerticalSpacing(px(2))
        self.lay(wide=True)

    def lay(self, *, wide: bool) -> None:
        """Three columns, or two with the note below where there is little room."""
        if wide is self._is_wide:
            return
        self._is_wide = wide
        grid, px = self._grid, self._dress.type_.px
        grid.addWidget(self.name, 0, 0)
        grid.addWidget(self.mark, 0, 1, Qt.AlignmentFlag.AlignLeft)
        grid.addWidget(self.effect, 1, 0, 1, 2)
        # With the note below, the way back shares the column: its words must not move the control.
        side = Qt.AlignmentFlag.AlignLeft if wide else Qt.AlignmentFlag.AlignRight
        grid.addWidget(self.control, 0, 2, 2, 1, _TOP | side)
        if wide:
            grid.addWidget(self.note, 0, 3, 2, 1, _TOP)
            grid.addWidget(self.back, 0, 4, 2, 1, _TOP)
        else:
            grid.addWidget(self.note, 2, 0, 1, 2)
            grid.addWidget(self.back, 2, 2, _TOP | side)
        self.note.setMinimumWidth(px(_NOTE) if wide else 0)
        self.note.setMaximumWidth(px(_NOTE) if wide else _ANY)
        grid.setColumnStretch(1, 1)
        for column, measure in _COLUMNS.items():
            grid.setColumnMinimumWidth(column, px(measure) if wide else 0)

    def paintEvent(self, event: QPaintEvent) -> None:
        """A hairline below, and a bar at the side of a changed figure."""
        del event
        painter = QPainter(self)
        palette = self.palette()
        rule = QRectF(0, self.height() - 1, self.width(), 1)
        painter.fillRect(rule, palette.color(QPalette.ColorRole.Midlight))
        if self.is_changed:
            bar = QRectF(0, 0, _BAR * self._dress.unit, self.height())
            painter.fillRect(bar, palette.color(QPalette.ColorRole.Highlight))
        painter.end()

    @property
    def is_changed(self) -> bool:
        """Whether the shop has another figure than the default."""
        return bool(getattr(self._settings, self.key) != getattr(DEFAULTS, self.key))

    def show_settings(self, settings: Settings) -> None:
        """Show what is in force; what is being typed and was refused stays while that is so."""
        before, now = (getattr(one, self.key) for one in (self._settings, settings))
        self._settings = settings
        if before != now or not self.note.text():
            self.control.show_value(now)
            self._calm()
        self.mark.setVisible(self.is_changed)
        self.back.setVisible(self.is_changed)
        self.update()

    def _given(self, figure: object) -> None:
        """Take a figure, or say in a sentence why it cannot be."""
        if isinstance(figure, Reason):
            self._refuse(figure)
            return
        value = figure if self.key in CHOICES else float(str(figure))
        settings = changed_figure(self._settings, self.key, value)  # type: ignore[arg-type]  # the choice's own signal carries a Definition
        wrong = refusal(settings, self.key)
        if wrong is not None:
            self._refuse(wrong)
        elif settings == self._settings:
            self.control.show_value(getattr(settings, self.key))
            self._calm()
        else:
            self.changed.emit(settings)

    def _refuse(self, wrong: Reason) -> None:
        said = refused(wrong, self._words.wording)
        self.control.want(True)
        self.note.setText(said)
        self.note.setForegroundRole(QPalette.ColorRole.LinkVisited)
        self.control.say(said)

    def _calm(self) -> None:
        wording = self._words.wording
        said = wording.say(
            "settings",
            "default-line",
            default=whole(self.key, default_of(self.key), wording),
            origin=origin(self.key, wording),
        )
        self.note.setText(said)
        self.note.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.control.say(wording.say("settings", f"{self.key}-effect"))

    def _go_back(self) -> None:
        self.control.setFocus(Qt.FocusReason.OtherFocusReason)
        usual = default_of(self.key)
        self._given(usual)

    def _back_words(self, code: str) -> str:
        wording = self._words.wording
        default = whole(self.key, default_of(self.key), wording)
        if code == "one-back" and self.key in CHOICES:
            code = "one-back-definition"
        return wording.say("settings", code, name=name(self.key, wording), default=default)
