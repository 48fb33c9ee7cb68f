"""A made-up language 40 % longer than English: nothing that must be read whole is cut."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QLabel

from tests.ui.conftest import MakeDesk
from ui import desk as desk_module
from ui.controls.buttons import FlatButton
from ui.controls.segments import Segment
from ui.desk import Desk
from ui.words import Words


class LongWords(Words):
    """English with two fifths more letters to every sentence."""

    def __call__(self, code: str, /, **values: object) -> str:
        said = super().__call__(code, **values)
        return said + "~" * round(len(said) * 0.4)


@pytest.fixture
def long_desk(make: MakeDesk, monkeypatch: pytest.MonkeyPatch) -> Desk:
    monkeypatch.setattr(desk_module, "Words", LongWords)
    return make()


def test_no_choice_is_cut(long_desk: Desk) -> None:
    for segment in long_desk.frame.findChildren(Segment):
        if segment.isVisible():
            wanted = segment.fontMetrics().horizontalAdvance(segment.text())
            assert wanted <= segment.width(), segment.text()


def test_no_button_is_cut(long_desk: Desk) -> None:
    for button in long_desk.frame.findChildren(FlatButton):
        if button.isVisible():
            wanted = button.fontMetrics().horizontalAdvance(button.text())
            assert wanted <= button.width(), button.text()


def test_no_line_under_a_field_is_cut(long_desk: Desk) -> None:
    panel = long_desk.window.fitting.readings
    for field in panel.fields.values():
        for label in (field.label, field.hint):
            wanted = label.fontMetrics().horizontalAdvance(label.text())
            breaks = label.wordWrap()
            assert breaks or wanted <= label.width(), label.text()


def test_the_readings_never_reach_beyond_their_panel(long_desk: Desk) -> None:
    panel = long_desk.window.fitting.readings
    inner = panel.widget()
    assert inner is not None
    assert inner.width() <= panel.viewport().width()


def test_the_cautions_break_and_stay_whole(long_desk: Desk) -> None:
    cautions = [
        label
        for label in long_desk.frame.findChildren(QLabel)
        if label.text().startswith("The maker's chart")
    ]
    (label,) = cautions
    assert label.height() >= label.heightForWidth(label.width())
