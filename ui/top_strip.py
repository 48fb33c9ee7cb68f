"""The strip over the pages: which page, which rider, and what kind of vest is wanted."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtGui import QAction, QActionGroup, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QMenu, QWidget

from charts.model_facts import VestKind
from ui.appearance import Type
from ui.controls.buttons import FlatButton
from ui.controls.segments import Choice, Segments
from ui.fitting_page.riders_strip import RidersStrip
from ui.stock_words import StockWords
from ui.words import Words

ANY = "any"
_LEAST_RIDERS = 330
"""What the riders and the air between the parts need at least, in pixels at a line of 16."""


class TopStrip(QWidget):
    """Pages left, open riders in the middle, filters right.

    Signals:
        page_picked(str): "fitting" or "charts".
        kind_picked(str): "any", "foam" or "inflatable".
        level_picked(str): a level, or "" for any.
        stock_picked(bool): only what is in the house, or everything.
    """

    page_picked = Signal(str)
    kind_picked = Signal(str)
    level_picked = Signal(str)
    stock_picked = Signal(bool)

    def __init__(self, words: Words, type_: Type, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self._levels: tuple[str, ...] = ()
        self.pages = Segments(
            [Choice("fitting", words("page-fitting")), Choice("charts", words("page-charts"))]
        )
        self.pages.picked.connect(self.page_picked)
        self.riders = RidersStrip(words, type_.small, self)
        self.kinds = Segments(
            [
                Choice(ANY, words("kind-any")),
                *(Choice(kind.value, words(f"kind-{kind.value}")) for kind in VestKind),
            ]
        )
        self.kinds.setFont(type_.small)
        self.kinds.picked.connect(self.kind_picked)
        self.level = FlatButton("", self)
        self.level.setFont(type_.small)
        self.level.clicked.connect(self._open_levels)
        self._level_menu = QMenu(self)
        self.stock = FlatButton(words.wording.say("stock", "filter"), self)
        self.stock.setFont(type_.small)
        self.stock.setCheckable(True)
        self.stock.clicked.connect(self.stock_picked)
        self._has_stock = False
        self._stock_words: StockWords | None = None
        self._least_riders = type_.px(_LEAST_RIDERS)
        self._air_between = (type_.px(14), type_.px(6))
        self._lay(type_)
        self.pages.press("fitting")
        self.kinds.press(ANY)

    def _lay(self, type_: Type) -> None:
        px = type_.px
        self.pages.setFixedWidth(px(244))
        row = QHBoxLayout(self)
        row.setContentsMargins(px(14), px(6), px(12), px(6))
        row.setSpacing(self._air_between[0])
        row.addWidget(self.pages)
        row.addWidget(self.riders, 100)
        row.addStretch(1)
        row.addWidget(self.kinds)
        row.addWidget(self.level)
        row.addWidget(self.stock)

    def show_page(self, page: str, questions: int) -> None:
        """Press the page's button; filters belong to the fitting page only."""
        self.pages.press(page)
        title = self._words("page-charts-open", count=questions) if questions else ""
        self.pages.retitle("charts", title or self._words("page-charts"))
        fitting = page == "fitting"
        self.riders.setVisible(fitting)
        self.kinds.setVisible(fitting)
        self.level.setVisible(fitting and bool(self._levels))
        self.stock.setVisible(fitting and self._has_stock)

    def show_needs(self, kind: str, level: str, levels: Sequence[str]) -> None:
        """Show what is wanted, and the levels that there are."""
        self.kinds.press(kind)
        self._levels = tuple(levels)
        self.level.setText(
            self._words("level-asked", level=level) if level else self._words("level-any")
        )
        self.level.updateGeometry()
        self.level.setVisible(bool(levels) and self.kinds.isVisibleTo(self))
        self._level_menu.clear()
        group = QActionGroup(self._level_menu)
        for value in ("", *self._levels):
            text = self._words("level-asked", level=value) if value else self._words("level-any")
            action = QAction(text, self._level_menu)
            action.setData(value)
            action.setCheckable(True)
            action.setChecked(value == level)
            group.addAction(action)
            self._level_menu.addAction(action)
        group.triggered.connect(self._level_chosen)

    def show_stock(self, has_list: bool, in_house: bool, words: StockWords) -> None:
        """Show whether only what is in the house is wanted; without a stock list, nothing."""
        self._has_stock = has_list
        self._stock_words = words
        self.stock.setAccessibleDescription(words.said)
        self.stock.setToolTip(words.said)
        self.stock.setChecked(in_house)
        self.stock.setVisible(has_list and self.kinds.isVisibleTo(self))
        self._name_stock()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The day of the stock list where there is room for it."""
        super().resizeEvent(event)
        self._name_stock()

    def _name_stock(self) -> None:
        """The filter's name, with the day only where the riders keep enough room."""
        words = self._stock_words
        if words is None:
            return
        self.stock.setText(words.name)
        beside = (self.pages, self.kinds, self.level, self.stock)
        wide = sum(one.sizeHint().width() for one in beside if one.isVisibleTo(self))
        tight = wide + self._least_riders > self.width()
        if tight:
            self.stock.setText(words.short)
        layout = self.layout()
        if layout is not None:
            layout.setSpacing(self._air_between[tight])
        self.stock.updateGeometry()

    def _open_levels(self) -> None:
        self._level_menu.popup(self.level.mapToGlobal(self.level.rect().bottomLeft()))

    def _level_chosen(self, action: QAction) -> None:
        self.level_picked.emit(str(action.data()))
