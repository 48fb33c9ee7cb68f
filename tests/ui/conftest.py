"""What the tests of the screen stand on: one dressed application, and a desk of one's own."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from ui import appearance
from ui.desk import Desk, make_desk
from ui.drawing.row_shape import Density
from ui.dress import Dress
from ui.frame import Frame
from ui.preferences import Preferences
from ui.questions_page.case import SheetShelf
from ui.theme import Scheme, Theme
from ui.words import Words

MakeDesk = Callable[..., Desk]


@pytest.fixture
def application(qapp: QApplication) -> QApplication:
    """The application in the program's own fonts and the light scheme."""
    appearance.load_fonts()
    appearance.apply(qapp, Theme(Scheme.LIGHT), appearance.fonts())
    return qapp


@pytest.fixture(autouse=True)
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    """Every file counts as quick to read: acts are done when they return, on a busy machine too."""
    monkeypatch.setattr(SheetShelf, "is_slow", lambda _shelf, _file: False)


@pytest.fixture
def dress(application: QApplication) -> Dress:
    return Dress.of(Theme(Scheme.LIGHT), appearance.fonts(), Density.LOW)


@pytest.fixture
def words() -> Words:
    return Words("en")


@pytest.fixture
def make(qtbot: QtBot, qapp: QApplication) -> Iterator[MakeDesk]:
    """Makes a shown, furnished window; nothing is kept on disk."""
    desks: list[Desk] = []

    def made(preferences: Preferences | None = None, size: tuple[int, int] = (1366, 768)) -> Desk:
        chosen = preferences or Preferences("en", Scheme.LIGHT)
        frame = Frame(Theme(chosen.scheme or Scheme.LIGHT))
        qtbot.addWidget(frame)
        desk = make_desk(qapp, frame, chosen)
        frame.resize(*size)
        with qtbot.waitExposed(frame):
            frame.show()
        desks.append(desk)
        return desk

    yield made
    for desk in desks:
        desk.window.operations.close()


@pytest.fixture
def desk(make: MakeDesk) -> Desk:
    return make()
