"""The form about a model: checked as typed, saved as a file that reads back the same."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from charts.model_facts import VestKind, read_model_facts
from tests.ui.test_commands import CHART, Answers, opened
from ui.desk import Desk
from ui.model_form.dialog import ModelForm

pytestmark = pytest.mark.qt_log_ignore("propagateSizeHints", extend=True)
"""Without a screen Qt says of every dialog that it cannot hint its size."""


@pytest.fixture(autouse=True)
def put_away(desk: Desk) -> Iterator[None]:
    yield
    if desk.models.form is not None:
        desk.models.form.reject()
    QApplication.processEvents()


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    alder = tmp_path / "alder"
    alder.mkdir()
    (alder / "harrier.csv").write_text(CHART, encoding="utf-8")
    return alder


def form_of(desk: Desk) -> ModelForm:
    desk.window.show_page("charts")
    desk.window.actions_["model-facts"].trigger()
    form = desk.models.form
    assert form is not None
    return form


def fill(form: ModelForm, key: str, text: str) -> None:
    edit = form.fields[key].line.edit
    edit.setText(text)
    edit.textEdited.emit(text)


def test_a_new_form_holds_what_the_chart_says_itself(
    desk: Desk, qtbot: QtBot, folder: Path
) -> None:
    opened(desk, qtbot, folder)
    form = form_of(desk)
    assert form.fields["file"].text == "harrier.csv"


def test_a_fault_is_said_as_it_is_typed_and_saving_waits(
    desk: Desk, qtbot: QtBot, folder: Path
) -> None:
    opened(desk, qtbot, folder)
    form = form_of(desk)
    fill(form, "model", "Harrier")
    assert form.save.isEnabled()
    fill(form, "weight_floor", "70")
    assert not form.fields["weight_floor"].fault.isHidden()
    assert "no unit" in form.fields["weight_floor"].fault.text()
    assert not form.save.isEnabled()
    fill(form, "weight_floor", "70 lb")
    assert form.fields["weight_floor"].fault.isHidden()
    assert form.save.isEnabled()


def test_a_rule_wants_the_place_where_it_stands(desk: Desk, qtbot: QtBot, folder: Path) -> None:
    opened(desk, qtbot, folder)
    form = form_of(desk)
    fill(form, "model", "Harrier")
    choice = form.fields["between_sizes"].choice
    choice.setCurrentIndex(choice.findData("larger"))
    assert not form.save.isEnabled()
    fill(form, "between_sizes_source", "instructions p. 4")
    assert form.save.isEnabled()


def test_what_is_saved_reads_back_and_is_used_at_once(
    desk: Desk, qtbot: QtBot, folder: Path
) -> None:
    opened(desk, qtbot, folder)
    form = form_of(desk)
    fill(form, "model", "Harrier")
    choice = form.fields["kind"].choice
    choice.setCurrentIndex(choice.findData("inflatable"))
    fill(form, "weight_floor", "70 lb")
    target = folder / "models.toml"
    desk.models.asker = Answers([target])
    with qtbot.waitSignal(desk.window.operations.finished, timeout=20000):
        form.save.click()
    (facts,) = read_model_facts(target.read_text("utf-8"), "alder/models.toml")
    assert facts.kind is VestKind.INFLATABLE
    assert [each.model for each in desk.window.workspace.facts] == ["Harrier"]


def test_the_file_beside_the_charts_opens_in_the_form(
    desk: Desk, qtbot: QtBot, folder: Path
) -> None:
    text = 'format = 1\n[[model]]\nmodel = "Harrier"\nfile = "harrier.csv"\nlevel = "2"\n'
    (folder / "models.toml").write_text(text, encoding="utf-8")
    opened(desk, qtbot, folder)
    assert form_of(desk).fields["level"].text == "2"


def test_a_file_that_cannot_be_used_is_one_sentence(desk: Desk, qtbot: QtBot, folder: Path) -> None:
    opened(desk, qtbot, folder)
    (folder / "models.toml").write_text("format = 1\n[[model]]\nmodle = 1\n", encoding="utf-8")
    desk.window.show_page("charts")
    desk.window.actions_["model-facts"].trigger()
    assert desk.models.form is None
    assert "Line 2" in desk.window.notice.says.text()


def test_a_further_model_takes_its_makers_name(desk: Desk, qtbot: QtBot, folder: Path) -> None:
    opened(desk, qtbot, folder)
    form = form_of(desk)
    fill(form, "supplier", "Alderway")
    form._add_model()
    assert form.fields["supplier"].text == "Alderway"
    assert form.fields["model"].text == ""
    assert form.models.count() == 2


def test_a_foams_thickness_wants_its_source_and_a_foam_vest(
    desk: Desk, qtbot: QtBot, folder: Path
) -> None:
    opened(desk, qtbot, folder)
    form = form_of(desk)
    fill(form, "model", "Harrier")
    fill(form, "foam_thickness", "18 mm")
    assert not form.save.isEnabled()
    fill(form, "foam_thickness_source", "instructions p. 3")
    assert form.save.isEnabled()
    kind = form.fields["kind"].choice
    kind.setCurrentIndex(kind.findData("inflatable"))
    assert "foam vest" in form.fields["foam_thickness"].fault.text()
    assert not form.save.isEnabled()
