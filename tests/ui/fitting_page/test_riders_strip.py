"""The strip of open riders beside the filters: nothing lies over anything, whatever the room."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from ui import appearance
from ui.controls.buttons import FlatButton
from ui.fitting_page.riders_strip import RidersStrip
from ui.words import Words

NAMES = [
    "Wrenna Oskelby", "Tobin Harquell", "Maren Ullthwick", "Garrod Fenn", "Isbet Quarnlow",
    "Davin Eskrigarth", "Holm Vastrigg", "Lotta Brandeling", "Finn Sorrel", "Corra Lindqvarn",
    "Jory Wexbarrow", "Sunna Hallgarth", "",
]  # fmt: skip


def strip(qtbot: QtBot, points: float, language: str = "en") -> tuple[QWidget, RidersStrip]:
    window = QWidget()
    qtbot.addWidget(window)
    window.resize(1600, 60)
    made = RidersStrip(Words(language), QFont(appearance.fonts(points).small), window)
    with qtbot.waitExposed(window):
        window.show()
    return window, made


def laid(made: RidersStrip, width: int) -> list[QWidget]:
    """What is shown in the strip at this width, from left to right."""
    made.resize(width, 40)
    layout = made.layout()
    assert layout is not None
    layout.activate()
    shown = [one for one in made.findChildren(QWidget) if one.parent() is made]
    return sorted((one for one in shown if one.isVisible()), key=QWidget.x)


@pytest.mark.usefixtures("application")
@pytest.mark.parametrize("points", [9.5, 14.0, 19.0])
@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize("current", [0, 5, 12])
def test_no_chip_lies_over_another_or_beyond_the_strip(
    qtbot: QtBot, points: float, language: str, current: int
) -> None:
    _window, made = strip(qtbot, points, language)
    for width in range(round(26 * points), 1400, 37):
        made.show_riders(NAMES, current)
        shown = laid(made, width)
        assert shown
        ends = [one.geometry().right() for one in shown]
        assert all(end < two.x() for end, two in zip(ends, shown[1:], strict=False)), width
        assert ends[-1] < width


@pytest.mark.usefixtures("application")
def test_where_there_is_no_room_at_all_the_one_on_the_line_stays_with_the_list(
    qtbot: QtBot,
) -> None:
    _window, made = strip(qtbot, 19.0)
    made.show_riders(NAMES, 2)
    texts = [one.text() for one in laid(made, 244) if isinstance(one, FlatButton)]
    assert texts == ["Maren", "12 more"]
    texts = [one.text() for one in laid(made, 1900) if isinstance(one, FlatButton)]
    assert texts == [*(name.split()[0] if name else "Rider" for name in NAMES), "+ New"]
