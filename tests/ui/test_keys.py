"""Every key of the program: no two the same, each in a menu or on the page of keys, both languages.

The menus are those of the real window.
"""

from __future__ import annotations

import re
from collections import Counter
from pathlib import Path

import pytest
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QDialog, QMenu, QTextBrowser
from pytestqt.qtbot import QtBot

import ui
from charts.wording import LANGUAGES
from harmonizer.rider import Measure
from tests.ui.conftest import MakeDesk
from ui.desk import Desk
from ui.key_facts import FURTHER_KEYS
from ui.keys_page import key_name
from ui.preferences import Preferences
from ui.theme import Scheme

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints", extend=True)
_UI = Path(ui.__file__).parent
_SAID_OTHERWISE = {"Shift", "Control", "Alt", "Tab", "Backtab"}
"""What moves the keyboard in every program, and is no act of this one."""


def menus_of(desk: Desk) -> dict[str, QMenu]:
    """Every menu of the window, also those behind buttons."""
    bar = desk.frame.menuBar()
    menus = {action.text(): action.menu() for action in bar.actions()}
    page = desk.window.charts.questions
    return {
        **{title: menu for title, menu in menus.items() if isinstance(menu, QMenu)},
        "table": page.keys.menu,
        "letters": page.head._letters,
    }


def mnemonic(text: str) -> str:
    found = re.search(r"&([^&])", text)
    return found[1].casefold() if found else ""


def all_actions(desk: Desk) -> list[QAction]:
    page = desk.window.charts.questions
    found = [*desk.frame.findChildren(QAction), *page.actions()]
    return list(dict.fromkeys(found))


@pytest.mark.parametrize("language", LANGUAGES)
def test_within_each_menu_every_letter_is_used_once(make: MakeDesk, language: str) -> None:
    desk = make(Preferences(language, Scheme.LIGHT))
    bar = [action.text() for action in desk.frame.menuBar().actions()]
    for title, texts in {
        "bar": bar,
        **{
            name: [one.text() for one in menu.actions() if not one.isSeparator()]
            for name, menu in menus_of(desk).items()
        },
    }.items():
        letters = Counter(letter for text in texts if (letter := mnemonic(text)))
        assert {letter for letter, many in letters.items() if many > 1} == set(), (title, texts)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_entry_of_the_menu_bar_has_a_letter(make: MakeDesk, language: str) -> None:
    desk = make(Preferences(language, Scheme.LIGHT))
    for action in desk.frame.menuBar().actions():
        menu = action.menu()
        assert isinstance(menu, QMenu)
        bare = [
            one.text()
            for one in menu.actions()
            if not one.isSeparator() and not mnemonic(one.text())
        ]
        assert bare == []


def test_no_two_acts_have_the_same_key(desk: Desk) -> None:
    keys = Counter(key.toString() for action in all_actions(desk) for key in action.shortcuts())
    assert {key for key, many in keys.items() if many > 1} == set()


def keys_page(desk: Desk) -> str:
    desk.window.actions_["keys"].trigger()
    dialog = desk.frame.findChildren(QDialog)[-1]
    text = dialog.findChild(QTextBrowser)
    assert text is not None
    return text.toPlainText()


def test_in_german_the_keys_have_their_german_names(make: MakeDesk) -> None:
    """Qt's own words follow the program's language, and go back to English with it."""
    said = keys_page(make(Preferences("de", Scheme.LIGHT)))
    assert "Strg+O" in said
    assert "Ctrl" not in said
    assert "Ctrl+O" in keys_page(make(Preferences("en", Scheme.LIGHT)))


def test_a_second_look_at_the_keys_takes_the_place_of_the_first(desk: Desk) -> None:
    keys_page(desk)
    keys_page(desk)
    shown = [one for one in desk.frame.findChildren(QDialog) if one.isVisible()]
    assert len(shown) == 1


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_page_of_keys_has_every_key_of_a_menu(make: MakeDesk, language: str) -> None:
    desk = make(Preferences(language, Scheme.LIGHT))
    said = keys_page(desk)
    for action in all_actions(desk):
        for key in action.shortcuts():
            assert key_name(key.toString()) in said, action.text()
        assert action.text().replace("&", "").rstrip("…") in said or not action.shortcuts()


def test_every_key_that_a_widget_listens_to_is_on_the_page_of_keys() -> None:
    """By the source: a key that is asked for in the code is named among the further keys."""
    listed = " ".join(key for fact in FURTHER_KEYS for key in fact.keys)
    actions = (_UI / "actions.py").read_text("utf-8")
    used = {
        name
        for path in _UI.rglob("*.py")
        for name in re.findall(r"Qt\.Key\.Key_(\w+)", path.read_text("utf-8"))
    } - _SAID_OTHERWISE
    names = {"Escape": "Esc", "Delete": "Del", "Return": "Enter"}
    missing = {
        name
        for name in used
        if not re.search(rf"\b{names.get(name, name)}\b", listed) and f'"{name}"' not in actions
    }
    assert missing == set()


def test_who_holds_the_tape_is_asked_from_the_menu_too(desk: Desk, qtbot: QtBot) -> None:
    field = desk.window.fitting.readings.fields[Measure.WAIST]
    desk.frame.activateWindow()
    field.line.edit.setFocus()
    qtbot.waitUntil(field.line.edit.hasFocus)
    before = field.hint.text()
    desk.window.actions_["taker"].trigger()
    assert field.hint.text() != before


def test_without_a_reading_at_hand_it_says_what_to_do(desk: Desk, qtbot: QtBot) -> None:
    desk.frame.activateWindow()
    desk.window.fitting.table.setFocus()
    qtbot.waitUntil(desk.window.fitting.table.hasFocus)
    hints = [each.hint.text() for each in desk.window.fitting.readings.fields.values()]
    desk.window.actions_["taker"].trigger()
    assert [each.hint.text() for each in desk.window.fitting.readings.fields.values()] == hints
    assert "F9" in desk.window.notice.says.text()


def test_redo_has_the_key_of_either_custom(desk: Desk) -> None:
    keys = [key.toString() for key in desk.window.actions_["redo"].shortcuts()]
    assert keys == ["Ctrl+Shift+Z", "Ctrl+Y"]
