"""The page of the shop's figures: every one in sight, changed in place, refused with a sentence."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel
from pytestqt.qtbot import QtBot

from charts.schema import Definition
from harmonizer.setting_checks import CHOICES
from harmonizer.settings import DEFAULTS, Settings, setting_facts
from ui.dress import Dress
from ui.frame import Frame
from ui.settings_page.figure_control import DefinitionChoice, FigureLine
from ui.settings_page.page import SettingsPage
from ui.words import Words


class Shop:
    """A page whose changes come back to it, as the window sees to."""

    def __init__(self, frame: Frame, page: SettingsPage) -> None:
        self.frame = frame
        self.page = page
        self.settings = DEFAULTS
        page.changed.connect(self._take)

    def _take(self, settings: object) -> None:
        assert isinstance(settings, Settings)
        self.settings = settings
        self.page.show_settings(settings)

    def line(self, key: str) -> FigureLine:
        control = self.page.rows[key].control
        assert isinstance(control, FigureLine)
        return control

    def choice(self, key: str) -> DefinitionChoice:
        control = self.page.rows[key].control
        assert isinstance(control, DefinitionChoice)
        return control

    def type(self, key: str, text: str) -> None:
        edit = self.line(key).edit
        edit.setFocus()
        edit.selectAll()
        QTest.keyClick(edit, Qt.Key.Key_Delete)
        QTest.keyClicks(edit, text)
        QTest.keyClick(edit, Qt.Key.Key_Return)


@pytest.fixture
def shop(qtbot: QtBot, dress: Dress, words: Words) -> Shop:
    frame = Frame(dress.theme)
    qtbot.addWidget(frame)
    page = SettingsPage(words, dress)
    frame.setCentralWidget(page)
    frame.resize(1366, 640)
    with qtbot.waitExposed(frame):
        frame.show()
    return Shop(frame, page)


def test_every_figure_stands_on_the_page_with_name_effect_default_and_origin(shop: Shop) -> None:
    assert list(shop.page.rows) == list(setting_facts())
    for row in shop.page.rows.values():
        assert row.name.text()
        assert row.effect.text().endswith(".")
        assert row.note.text().startswith("Default ")
        assert not row.mark.isVisible()


def test_the_rows_are_made_when_the_page_is_first_looked_at(dress: Dress, words: Words) -> None:
    assert SettingsPage(words, dress).rows == {}


def test_a_figure_typed_over_holds_at_once_and_is_marked(shop: Shop) -> None:
    shop.type("hand_width", "8,5")
    row = shop.page.rows["hand_width"]
    assert shop.settings == replace(DEFAULTS, hand_width=8.5)
    assert row.mark.isVisible()
    assert row.back.text() == "Back to 9 cm"
    assert shop.page.count.text() == "One figure is changed."


@pytest.mark.parametrize(
    ("typed", "cm"), [("3 1/2 in", 8.89), ("85 mm", 8.5), ("8.5 cm", 8.5), (" 8 ", 8.0)]
)
def test_another_unit_is_converted(shop: Shop, typed: str, cm: float) -> None:
    shop.type("hand_width", typed)
    assert shop.settings.hand_width == pytest.approx(cm)


def test_thousandths_are_never_taken_for_thousands(shop: Shop) -> None:
    shop.type("clear_factor", "1,281")
    assert shop.settings.clear_factor == 1.281


@pytest.mark.parametrize(
    ("key", "typed", "said"),
    [
        ("hand_width", "0", "At least 6 cm"),
        ("hand_width", "wide", "One figure, please."),
        ("hand_width", "", "One figure, please."),
        ("hand_width", "9 kg", "That unit does not measure this."),
        ("hands_check", "1.5", "cannot lie above “Clearance: short”"),
    ],
)
def test_an_impossible_figure_is_refused_in_words_and_nothing_changes(
    shop: Shop, key: str, typed: str, said: str
) -> None:
    shop.type(key, typed)
    row = shop.page.rows[key]
    assert said in row.note.text()
    assert shop.line(key).wanting
    assert shop.line(key).edit.accessibleDescription() == row.note.text()
    assert shop.settings == DEFAULTS


def test_escape_puts_back_what_was_refused(shop: Shop) -> None:
    shop.type("hand_width", "80")
    QTest.keyClick(shop.line("hand_width").edit, Qt.Key.Key_Escape)
    row = shop.page.rows["hand_width"]
    assert shop.line("hand_width").edit.text() == "9"
    assert row.note.text().startswith("Default ")
    assert not shop.line("hand_width").wanting


def test_what_was_refused_stays_in_its_line_while_another_figure_changes(shop: Shop) -> None:
    shop.type("hand_width", "80")
    shop.type("saddle_rise", "4")
    assert shop.line("hand_width").edit.text() == "80"
    assert "At most 14 cm" in shop.page.rows["hand_width"].note.text()


def test_escape_with_nothing_typed_leaves_the_page(shop: Shop, qtbot: QtBot) -> None:
    edit = shop.line("hand_width").edit
    edit.setFocus()
    with qtbot.waitSignal(shop.page.left):
        QTest.keyClick(edit, Qt.Key.Key_Escape)


def test_leaving_a_line_counts_what_stands_in_it(shop: Shop) -> None:
    edit = shop.line("hand_width").edit
    edit.setFocus()
    edit.selectAll()
    QTest.keyClicks(edit, "8")
    QTest.keyClick(edit, Qt.Key.Key_Tab)
    assert shop.settings.hand_width == 8.0


def test_one_figure_goes_back_to_its_default_and_the_others_stay(shop: Shop) -> None:
    shop.type("hand_width", "8")
    shop.type("saddle_rise", "4")
    QTest.keyClick(shop.page.rows["hand_width"].back, Qt.Key.Key_Return)
    assert shop.settings == replace(DEFAULTS, saddle_rise=4.0)


def test_all_go_back_with_one_button(shop: Shop) -> None:
    shop.type("hand_width", "8")
    shop.type("saddle_rise", "4")
    QTest.keyClick(shop.page.all_back, Qt.Key.Key_Return)
    assert shop.settings == DEFAULTS
    assert not shop.page.all_back.isVisible()


def test_a_definition_is_picked_from_those_of_its_dimension(shop: Shop) -> None:
    choice = shop.choice("default_waist")
    actions = choice.menu.actions()
    assert [action.data() for action in actions] == list(CHOICES["default_waist"])
    actions[2].trigger()
    assert shop.settings.default_waist is Definition.WAIST_NAVEL
    assert choice.text() == "the waist at the navel"


def test_the_place_where_figures_are_kept_is_named(shop: Shop) -> None:
    assert "until the program is closed" in shop.page.kept.text()
    shop.page.show_place(Path("shop") / "settings.toml")
    assert "settings.toml" in shop.page.kept.text()


@pytest.mark.parametrize("width", [1366, 683])
def test_no_word_is_cut_at_either_width(shop: Shop, qtbot: QtBot, width: int) -> None:
    shop.type("hand_width", "8")
    shop.frame.resize(width, 640)
    qtbot.waitUntil(lambda: shop.page.rows["hand_width"].width() <= width)
    for label in shop.page.findChildren(QLabel):
        if not label.isVisible() or not label.text():
            continue
        if label.wordWrap():
            assert label.height() >= label.heightForWidth(label.width()), label.text()
        else:
            assert label.width() >= label.sizeHint().width(), label.text()


@pytest.mark.parametrize("width", [760, 1366])
def test_the_controls_stand_in_line_whatever_their_unit_is_called(shop: Shop, width: int) -> None:
    shop.frame.resize(width, 640)
    QApplication.processEvents()
    lines = [row.control for row in shop.page.rows.values() if isinstance(row.control, FigureLine)]
    left = {line.mapTo(shop.page, line.rect().topLeft()).x() for line in lines}
    assert len(left) == 1
