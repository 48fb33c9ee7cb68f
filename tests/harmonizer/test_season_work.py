"""The season's work: each act is one step, is announced, and can be taken back exactly."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from charts.answers import Answer, CellReads, Corrected, LeftOut, Meaning, Part, Question, Scope
from charts.findings import Level
from charts.quantities import Unit
from harmonizer.shop.season import Stage, State, key_of, open_questions
from harmonizer.shop.shop_folder import ShopFolder
from harmonizer.workspace import Workspace

DAY = date(2027, 2, 11)
TWO = (
    "Women\n\nSize;Chest;Waist\nS;60;56\nM;65;58\nL;70;62\n\n"
    "Men\n\nSize;Chest (cm);Waist (cm)\nS;94;80\nM;98;84\nL;102;88\n"
)
CM = Answer(Meaning(Scope.FILE, unit=Unit.CM), "Ann", DAY)


def workspace_with(tmp_path: Path, text: str = TWO, name: str = "chart.csv") -> Workspace:
    (tmp_path / "north").mkdir(exist_ok=True)
    (tmp_path / "north" / name).write_text(text, encoding="utf-8")
    workspace = Workspace()
    workspace.take(workspace.load([tmp_path]))
    return workspace


FILE = "north/chart.csv"


@pytest.fixture
def workspace(tmp_path: Path) -> Workspace:
    return workspace_with(tmp_path)


def test_each_chart_has_its_own_state(workspace: Workspace) -> None:
    state = workspace.state(FILE)
    assert state.state is State.QUESTIONS
    assert [(one.state, len(one.questions)) for one in state.charts] == [
        (State.QUESTIONS, 1),
        (State.READY, 0),
    ]


def test_an_answer_is_one_step_and_says_what_changed(workspace: Workspace) -> None:
    told: list[frozenset[str]] = []
    workspace.on_change.append(told.append)
    workspace.answer(FILE, [CM])
    assert workspace.state(FILE).state is State.READY
    assert told == [frozenset({"charts", "season"})]
    workspace.undo()
    assert workspace.state(FILE).state is State.QUESTIONS
    workspace.redo()
    assert workspace.state(FILE).state is State.READY


def test_an_answer_withdrawn_later_asks_again(workspace: Workspace) -> None:
    before = workspace.charts()
    workspace.answer(FILE, [CM])
    workspace.approve(FILE, "Ann", DAY, key_of(workspace.charts()[0].charts[1]))
    workspace.withdraw(FILE, [CM])
    assert workspace.charts() == before


def test_a_question_answered_again_is_answered_anew(workspace: Workspace) -> None:
    asked = open_questions(workspace.charts()[0])[0]
    for unit in (Unit.IN, Unit.CM):
        act = Meaning(Scope.COLUMN, "A3:C6", ("Chest", "Waist"), unit)
        workspace.answer(FILE, [Answer(act, "Ann", DAY, Question.of(asked))])
    assert len(workspace.record(FILE).answers) == 1
    assert workspace.state(FILE).state is State.READY


def test_one_chart_is_approved_and_the_other_is_not(workspace: Workspace) -> None:
    men = workspace.charts()[0].charts[1]
    workspace.approve(FILE, "Ann", DAY, key_of(men))
    states = [one.state for one in workspace.state(FILE).charts]
    assert states == [State.QUESTIONS, State.APPROVED]
    workspace.approve(FILE, "Ann", DAY)
    assert workspace.state(FILE).state is State.APPROVED


def test_a_chart_kept_aside_is_neither_compared_nor_printed(workspace: Workspace) -> None:
    women = workspace.charts()[0].charts[0]
    assert len(workspace.offers) == 6
    workspace.keep_aside(FILE, "Ann", DAY, key_of(women), "asks for inches")
    assert len(workspace.offers) == 3
    assert len(workspace.in_house_chart(DAY).rows) == 3
    assert workspace.state(FILE).charts[0].state is State.ASIDE
    workspace.reopen(FILE, key_of(women))
    assert len(workspace.offers) == 6


def test_a_file_kept_aside_is_not_offered_at_all(workspace: Workspace) -> None:
    workspace.keep_aside(FILE, "Ann", DAY)
    assert (workspace.offers, workspace.state(FILE).state) == ((), State.ASIDE)


def test_an_approval_falls_when_an_answer_changes_its_chart(workspace: Workspace) -> None:
    workspace.approve(FILE, "Ann", DAY, key_of(workspace.charts()[0].charts[0]))
    workspace.approve(FILE, "Ann", DAY, key_of(workspace.charts()[0].charts[1]))
    workspace.answer(FILE, [Answer(Corrected((CellReads("B12", "98", "97"),)), "Ann", DAY)])
    states = [one.state for one in workspace.state(FILE).charts]
    assert states == [State.APPROVED, State.READY]


def test_a_chart_approved_with_open_questions_keeps_its_mark(workspace: Workspace) -> None:
    workspace.approve(FILE, "Ann", DAY)
    asking = [offer for offer in workspace.offers if offer.open_questions]
    assert len(asking) == 3


def test_a_question_goes_its_way_from_open_to_settled(workspace: Workspace) -> None:
    asked = open_questions(workspace.charts()[0])[0]
    question = Question.of(asked)
    stages = [workspace.stage(FILE, asked)[0]]
    workspace.sent(FILE, [question], DAY)
    stages.append(workspace.stage(FILE, asked)[0])
    workspace.replied(FILE, question, "centimetres", "the maker", DAY)
    stage, on_its_way = workspace.stage(FILE, asked)
    stages.append(stage)
    workspace.answer(FILE, [Answer(CM.act, "the maker", DAY, question)])
    closed = next(one for one in workspace.charts()[0].findings if one.code == asked.code)
    stages.append(workspace.stage(FILE, closed)[0])
    assert stages == [Stage.OPEN, Stage.SENT, Stage.ANSWERED, Stage.SETTLED]
    assert on_its_way is not None
    assert (on_its_way.sent, on_its_way.answer, on_its_way.by) == (DAY, "centimetres", "the maker")


def test_a_changed_file_keeps_its_answers_and_loses_its_approval(tmp_path: Path) -> None:
    workspace = workspace_with(tmp_path)
    workspace.answer(FILE, [CM])
    workspace.approve(FILE, "Ann", DAY)
    (tmp_path / FILE).write_text(TWO.replace("65", "66"), encoding="utf-8")
    workspace.take(workspace.load([tmp_path], known=workspace.known()))
    assert workspace.state(FILE).state is State.READY
    assert workspace.record(FILE).approved == ()


def test_the_same_file_under_another_name_is_known_again(tmp_path: Path) -> None:
    workspace = workspace_with(tmp_path)
    workspace.answer(FILE, [CM])
    (tmp_path / FILE).rename(tmp_path / "north" / "other.csv")
    fresh = Workspace()
    workspace.save_shop(ShopFolder(tmp_path / ".shop"))
    fresh.open_shop(ShopFolder(tmp_path / ".shop"))
    fresh.take(fresh.load([tmp_path], known=fresh.known()))
    assert fresh.state("north/other.csv").state is State.READY


def test_loading_beside_the_screen_touches_nothing(workspace: Workspace, tmp_path: Path) -> None:
    before = workspace.contents
    workspace.load([tmp_path], known=workspace.known())
    workspace.answered({FILE: [CM]})
    assert workspace.contents is before


ACTS: list[Callable[[Workspace], None]] = [
    lambda w: w.answer(FILE, [CM]),
    lambda w: w.answer(FILE, [Answer(Corrected((CellReads("B4", "60", "61"),)), "Bob", DAY)]),
    lambda w: w.answer(FILE, [Answer(LeftOut(Part.COLUMN, "C10"), "Bob", DAY)]),
    lambda w: w.withdraw(FILE, [CM]),
    lambda w: w.approve(FILE, "Ann", DAY),
    lambda w: w.keep_aside(FILE, "Ann", DAY, "A10:C13 men"),
    lambda w: w.reopen(FILE),
    lambda w: w.sent(FILE, [Question("unit-missing", "B3")], DAY),
    lambda w: w.leave_out(FILE) if w.contents.file(FILE) else None,
]


@settings(
    max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(st.lists(st.integers(0, len(ACTS) - 2), min_size=1, max_size=6))
def test_undo_restores_equal_readings_and_redo_repeats_them(
    tmp_path: Path, numbers: list[int]
) -> None:
    workspace = workspace_with(tmp_path)
    moments = [workspace.contents]
    for number in numbers:
        ACTS[number](workspace)
        if workspace.contents != moments[-1]:
            moments.append(workspace.contents)
    for before in reversed(moments[:-1]):
        workspace.undo()
        assert workspace.contents == before
    for after in moments[1:]:
        workspace.redo()
        assert workspace.contents == after
    assert not workspace.can_redo


def test_answers_never_turn_a_question_into_silence(workspace: Workspace) -> None:
    """Every value that was asked about is still there, asked about or settled."""
    asked = {
        one.place
        for chart in workspace.charts()[0].charts
        for size in chart.sizes
        for one in size.ranges
        if one.findings
    }
    workspace.answer(FILE, [CM])
    (reading,) = workspace.charts()
    told = {one.id for one in reading.findings if one.settled or one.level is Level.QUESTION}
    still = {
        one.place
        for chart in reading.charts
        for size in chart.sizes
        for one in size.ranges
        if told & set(one.findings)
    }
    assert still == asked


def zipped(**files: str) -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        for name, text in files.items():
            archive.writestr(f"{name}.csv", text)
    return out.getvalue()


def test_an_answer_to_one_file_of_an_archive_leaves_the_others_there(tmp_path: Path) -> None:
    bare = "Size;Chest;Waist\nS;60;56\nM;65;58\nL;70;62\n"
    (tmp_path / "drop.zip").write_bytes(zipped(a=bare, b=TWO))
    workspace = Workspace()
    workspace.take(workspace.load([tmp_path]))
    names = [reading.file for reading in workspace.charts()]
    assert len(names) == 2
    workspace.answer(names[0], [CM])
    assert [reading.file for reading in workspace.charts()] == names
    assert workspace.state(names[0]).state is State.READY
    again = workspace.load([tmp_path], known=workspace.known())
    assert again.unchanged == set(names)


def test_an_answer_to_pasted_text_answers_it_in_its_place() -> None:
    workspace = Workspace()
    workspace.take(workspace.load([], pasted=TWO.encode()))
    workspace.answer("-", [CM])
    assert [(state.file, state.state) for state in workspace.states()] == [("-", State.READY)]


def test_an_answer_does_not_change_who_a_renamed_file_is_from(tmp_path: Path) -> None:
    for folder in ("one", "two"):
        (tmp_path / folder / "north").mkdir(parents=True)
        (tmp_path / folder / "north" / "chart.csv").write_text(TWO + folder, encoding="utf-8")
    workspace = Workspace()
    for folder in ("one", "two"):
        workspace.take(workspace.load([tmp_path / folder]))
    renamed = next(r.file for r in workspace.charts() if r.file != FILE)
    suppliers = [chart.supplier for chart in workspace.charts()[1].charts]
    workspace.answer(renamed, [CM])
    after = next(r for r in workspace.charts() if r.file == renamed)
    assert [chart.supplier for chart in after.charts] == suppliers


def test_a_departure_is_still_named_after_an_answer(tmp_path: Path) -> None:
    clean = "Size;Chest (cm);Waist (cm)\nS;84-88;68-72\nM;89-93;73-77\nL;94-98;78-82\n"
    workspace = workspace_with(tmp_path, clean, "chart_2027.csv")
    workspace.approve("north/chart_2027.csv", "Ann", DAY)
    other = clean.replace("Waist", "Hip").replace("M;89-93", "M;83-87")
    (tmp_path / "north" / "chart_2028.csv").write_text(other, encoding="utf-8")
    workspace.take(workspace.load([tmp_path], known=workspace.known()))
    name = "north/chart_2028.csv"
    reading = next(one for one in workspace.charts() if one.file == name)
    before = [one.values for one in reading.findings if one.code == "habit-departure"]
    assert {values["case"] for values in before} == {"heading-new", "heading-gone"}
    workspace.answer(name, [Answer(Corrected((CellReads("B3", "83-87", "89-93"),)), "Ann", DAY)])
    reading = next(one for one in workspace.charts() if one.file == name)
    assert [one.values for one in reading.findings if one.code == "habit-departure"] == before
    assert len({one.id for one in reading.findings}) == len(reading.findings)
    assert workspace.state(name).state is State.READY


def keys(workspace: Workspace) -> list[str]:
    return [key_of(chart) for chart in workspace.charts()[0].charts]


def test_a_chart_taken_out_of_an_approved_file_leaves_the_others_approved(
    workspace: Workspace,
) -> None:
    women, _ = keys(workspace)
    workspace.approve(FILE, "Ann", DAY)
    workspace.keep_aside(FILE, "Bob", DAY, women)
    states = [one.state for one in workspace.state(FILE).charts]
    assert states == [State.ASIDE, State.APPROVED]
    workspace.reopen(FILE, women)
    states = [one.state for one in workspace.state(FILE).charts]
    assert states == [State.QUESTIONS, State.APPROVED]


def test_a_chart_kept_aside_stays_so_when_its_file_is_approved(workspace: Workspace) -> None:
    women, _ = keys(workspace)
    workspace.keep_aside(FILE, "Bob", DAY, women)
    workspace.approve(FILE, "Ann", DAY)
    states = [one.state for one in workspace.state(FILE).charts]
    assert states == [State.ASIDE, State.APPROVED]
    workspace.approve(FILE, "Ann", DAY, women)
    states = [one.state for one in workspace.state(FILE).charts]
    assert states == [State.APPROVED, State.APPROVED]


def test_one_chart_of_a_file_kept_aside_is_opened_alone(workspace: Workspace) -> None:
    women, _ = keys(workspace)
    workspace.keep_aside(FILE, "Bob", DAY)
    workspace.reopen(FILE, women)
    states = [one.state for one in workspace.state(FILE).charts]
    assert states == [State.QUESTIONS, State.ASIDE]


def test_a_file_teaches_when_its_last_chart_is_closed(workspace: Workspace) -> None:
    women, men = keys(workspace)
    workspace.answer(FILE, [CM])
    workspace.approve(FILE, "Ann", DAY, women)
    assert workspace.contents.habits == ()
    workspace.approve(FILE, "Ann", DAY, men)
    (habits,) = workspace.contents.habits
    assert habits.looks


def test_a_chart_kept_aside_is_not_approved_by_the_next_files_looks(workspace: Workspace) -> None:
    women, men = keys(workspace)
    workspace.answer(FILE, [CM])
    workspace.approve(FILE, "Ann", DAY, women)
    workspace.keep_aside(FILE, "Ann", DAY, men)
    (habits,) = workspace.contents.habits
    assert habits.headings
    assert habits.looks == ()
