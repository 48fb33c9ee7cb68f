"""The charts page: every file a row with its maker, its models and its state."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from charts.findings import LEVELS, Finding, Level
from harmonizer.shop.season import FileState, State
from harmonizer.workspace import Workspace
from tests.ui.conftest import MakeDesk
from tests.ui.test_commands import CHART, opened
from ui.charts_page.file_model import Column
from ui.charts_page.file_rows import FileRow, file_rows
from ui.charts_page.first_question import first_question
from ui.desk import Desk
from ui.preferences import Preferences
from ui.theme import Scheme
from ui.words import Words

WORDS = Words("en")
NO_UNIT = "Size,Chest,Waist\nS,84-92,68-76\nM,92-98,76-82\nL,98-104,82-90\n"
FACTS = """format = 1
[[model]]
supplier = "Alderway Ltd"
model = "Harrier"
file = "harrier.csv"
"""


def folder(tmp_path: Path) -> Path:
    alder = tmp_path / "alder"
    alder.mkdir()
    (alder / "harrier.csv").write_text(CHART, encoding="utf-8")
    (alder / "asked.csv").write_text(NO_UNIT, encoding="utf-8")
    (alder / "empty.csv").write_bytes(b"")
    (alder / "models.toml").write_text(FACTS, encoding="utf-8")
    return alder


def rows(tmp_path: Path) -> list[FileRow]:
    workspace = Workspace()
    workspace.take(Workspace.load([folder(tmp_path)]))
    return list(file_rows(workspace, WORDS))


def test_what_wants_a_person_stands_first(tmp_path: Path) -> None:
    states = [row.state for row in rows(tmp_path)]
    assert states == [State.NOT_READABLE, State.QUESTIONS, State.READY]


def test_a_file_that_failed_says_why(tmp_path: Path) -> None:
    row = rows(tmp_path)[0]
    assert "empty" in row.says
    assert row.gave == ""


def test_a_file_tells_what_it_gave_and_what_is_open(tmp_path: Path) -> None:
    row = rows(tmp_path)[1]
    assert row.gave == "one chart, 3 sizes"
    assert row.says == "1 open question"


def test_the_maker_and_the_models_are_named_as_the_shop_names_them(tmp_path: Path) -> None:
    row = rows(tmp_path)[2]
    assert (row.maker, row.models) == ("Alderway Ltd", "Harrier")
    assert row.sentence.startswith("Alderway Ltd. Harrier. harrier.csv.")


def test_a_drop_is_summed_up_in_a_line(desk: Desk, qtbot: QtBot, tmp_path: Path) -> None:
    opened(desk, qtbot, folder(tmp_path))
    said = desk.window.charts.summary.text()
    assert said == "1 file is ready. 1 file has open questions. 1 file could not be read."


def test_the_next_drop_reads_only_what_changed(desk: Desk, qtbot: QtBot, tmp_path: Path) -> None:
    alder = folder(tmp_path)
    opened(desk, qtbot, alder)
    (alder / "asked.csv").write_text(NO_UNIT.replace("84-92", "86-92"), encoding="utf-8")
    opened(desk, qtbot, alder)
    assert "1 file was unchanged" in desk.window.charts.summary.text()


def test_an_approved_file_says_who_and_when(tmp_path: Path) -> None:
    from datetime import date

    workspace = Workspace()
    workspace.take(Workspace.load([folder(tmp_path)]))
    name = next(row.file for row in file_rows(workspace, WORDS) if row.state is State.READY)
    workspace.approve(name, "Ada", date(2027, 2, 11))
    row = next(row for row in file_rows(workspace, WORDS) if row.file == name)
    assert row.says == "Approved by Ada, 11 Feb 2027"


def test_the_line_over_the_files_keeps_its_margins_in_large_text(make: MakeDesk) -> None:
    for points in (10, 24):
        desk = make(Preferences("en", Scheme.LIGHT, points=points))
        px = desk.window.dress.type_.px
        assert desk.window.charts.summary.contentsMargins().left() == px(14)


def test_a_file_says_which_question_comes_first_and_that_it_is_dangerous(tmp_path: Path) -> None:
    workspace = Workspace()
    workspace.take(Workspace.load([folder(tmp_path)]))
    said = {}
    for language in ("en", "de"):
        row = file_rows(workspace, Words(language))[1]
        assert row.first is not None
        assert row.first.dangerous
        assert row.sentence.endswith(row.first.text)
        said[language] = row.first.text
    assert said == {
        "en": "Dangerous: no unit is printed",
        "de": "Gefährlich: keine Einheit angegeben",
    }


def test_what_has_no_open_question_says_nothing_of_one(tmp_path: Path) -> None:
    assert [row.first is None for row in rows(tmp_path)] == [True, False, True]


def asked_of(code: str) -> Finding:
    values = {"heading": "Chest", "text": "M", "first": "L"}
    return Finding(code, code, "B1", values)


def test_the_most_dangerous_question_comes_first() -> None:
    asked = [asked_of("label-mistyped"), asked_of("rotated"), asked_of("blank-inside")]
    state = FileState("one.csv", State.QUESTIONS, questions=tuple(asked))
    first = first_question(state, WORDS.wording)
    assert first is not None
    assert first.text == "Dangerous: a block may be turned"
    plain = first_question(replace(state, questions=(asked[2], asked[0])), WORDS.wording)
    assert plain is not None
    assert (plain.dangerous, plain.text) == (False, "First: a blank between figures")
    assert first_question(replace(state, questions=()), WORDS.wording) is None


@pytest.mark.parametrize("language", ["en", "de"])
def test_every_kind_of_question_has_its_short_words(language: str) -> None:
    asked = [code for code, level in LEVELS.items() if level is Level.QUESTION]
    short = {code: Words(language).wording.say("questions", f"short-{code}") for code in asked}
    assert len(set(short.values())) == len(asked)
    assert max(map(len, short.values())) <= 34


def test_the_tip_of_the_state_is_the_whole_question(
    desk: Desk, qtbot: QtBot, tmp_path: Path
) -> None:
    opened(desk, qtbot, folder(tmp_path))
    files = desk.window.charts.files
    index = files.index(1, Column.STATE)
    tip = files.data(index, Qt.ItemDataRole.ToolTipRole)
    assert isinstance(tip, str)
    assert tip.startswith("B1: no unit is printed for")
    assert "Dangerous: no unit" in str(files.data(index, Qt.ItemDataRole.AccessibleTextRole))
