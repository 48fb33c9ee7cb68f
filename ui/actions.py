"""Every action of the program once: its words, its key, and where it stands in the menus."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Final

from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu

from ui.words import Words


@dataclass(frozen=True, slots=True)
class ActionFact:
    """One action. ``group`` makes it one choice of several; ``also`` is a second key for it."""

    key: str
    menu: str
    shortcut: str = ""
    group: str = ""
    checkable: bool = False
    line_before: bool = False
    also: str = ""


ACTIONS: Final = (
    ActionFact("open-files", "file", "Ctrl+O"),
    ActionFact("open-folder", "file", "Ctrl+Shift+O"),
    ActionFact("open-rider", "file", "Ctrl+R"),
    ActionFact("open-last", "file"),
    ActionFact("demo", "file"),
    ActionFact("read-again", "file", "Ctrl+Shift+R"),
    ActionFact("export-combined", "file", "Ctrl+E", line_before=True),
    ActionFact("wall-sheet", "file", "Ctrl+Shift+E"),
    ActionFact("print", "file", "Ctrl+P", line_before=True),
    ActionFact("pdf", "file", "Ctrl+Shift+P"),
    ActionFact("quit", "file", "Ctrl+Q", line_before=True),
    ActionFact("undo", "edit", "Ctrl+Z"),
    ActionFact("redo", "edit", "Ctrl+Shift+Z", also="Ctrl+Y"),
    ActionFact("paste-chart", "edit", "Ctrl+Shift+V", line_before=True),
    ActionFact("paste-stock", "edit", "Ctrl+Alt+V"),
    ActionFact("drop-stock", "edit"),
    ActionFact("copy-reply-en", "edit", "Ctrl+Shift+C"),
    ActionFact("copy-reply-de", "edit", "Ctrl+Shift+D"),
    ActionFact("new-rider", "rider", "Ctrl+N"),
    ActionFact("park", "rider", "Ctrl+K"),
    ActionFact("next-rider", "rider", "Ctrl+Tab"),
    ActionFact("close-rider", "rider", "Ctrl+W"),
    ActionFact("try-value", "rider", "Ctrl+T", line_before=True),
    ActionFact("taker", "rider", "F9"),
    ActionFact("pair", "rider", "F8"),
    ActionFact("hold", "rider", "F5"),
    ActionFact("came-out", "rider", "Ctrl+G"),
    ActionFact("approve", "chart", "Ctrl+Return", also="Ctrl+Enter"),
    ActionFact("keep-aside", "chart", "Ctrl+Shift+K"),
    ActionFact("reopen", "chart"),
    ActionFact("leave-out", "chart"),
    ActionFact("next-chart", "chart", "Ctrl+PgDown"),
    ActionFact("chart-before", "chart", "Ctrl+PgUp"),
    ActionFact("letter-en", "chart", "Ctrl+L", line_before=True),
    ActionFact("letter-de", "chart", "Ctrl+Shift+L"),
    ActionFact("letter-page-en", "chart"),
    ActionFact("letter-page-de", "chart"),
    ActionFact("model-facts", "chart", "Ctrl+M", line_before=True),
    ActionFact("type-chart", "chart", "Ctrl+Shift+T"),
    ActionFact("page-fitting", "view", "Ctrl+1", "page"),
    ActionFact("page-charts", "view", "Ctrl+2", "page"),
    ActionFact("page-settings", "view", "Ctrl+,", "page"),
    ActionFact("fold-readings", "view", "F4", checkable=True, line_before=True),
    ActionFact("go-readings", "view", "F6"),
    ActionFact("go-table", "view", "F7"),
    ActionFact("show-place", "view", "F3"),
    ActionFact("rows-low", "view", "Ctrl+Alt+1", "rows", line_before=True),
    ActionFact("rows-middle", "view", "Ctrl+Alt+2", "rows"),
    ActionFact("rows-tall", "view", "Ctrl+Alt+3", "rows"),
    ActionFact("larger", "view", "Ctrl++", line_before=True),
    ActionFact("smaller", "view", "Ctrl+-"),
    ActionFact("scheme-system", "view", "", "scheme", line_before=True),
    ActionFact("scheme-light", "view", "", "scheme"),
    ActionFact("scheme-dark", "view", "", "scheme"),
    ActionFact("scheme-forced", "view", "", "scheme"),
    ActionFact("cautions", "help", "F1"),
    ActionFact("keys", "help", "Shift+F1"),
)
MENUS: Final = ("file", "edit", "rider", "chart", "view", "help")


class Actions:
    """The window's actions by key, laid out in its menu bar."""

    def __init__(self, window: QMainWindow, words: Words) -> None:
        self._by_key: dict[str, QAction] = {}
        self._groups: dict[str, QActionGroup] = {}
        self._window = window
        self._words = words
        self._menus = {menu: window.menuBar().addMenu(words(f"menu-{menu}")) for menu in MENUS}
        for fact in ACTIONS:
            self._add(fact, self._menus[fact.menu])

    def __getitem__(self, key: str) -> QAction:
        return self._by_key[key]

    def connect(self, slots: Mapping[str, Callable[[], None]]) -> None:
        """Tie every action named in ``slots`` to its slot, which takes no argument."""
        for key, slot in slots.items():
            self._by_key[key].triggered.connect(slot)

    def _add(self, fact: ActionFact, menu: QMenu) -> None:
        if fact.line_before:
            menu.addSeparator()
        action = QAction(self._words(f"action-{fact.key}"), self._window)
        if fact.shortcut:
            keys = (fact.shortcut, fact.also) if fact.also else (fact.shortcut,)
            action.setShortcuts([QKeySequence(key) for key in keys])
        if fact.group:
            group = self._groups.setdefault(fact.group, QActionGroup(self._window))
            group.addAction(action)
        action.setCheckable(fact.checkable or bool(fact.group))
        menu.addAction(action)
        self._by_key[fact.key] = action
