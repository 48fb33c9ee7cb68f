"""Long work beside the screen: its result, its progress, its end."""

from __future__ import annotations

import threading

import pytest
from PySide6.QtCore import QThread
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from charts.sources import Progress
from ui.operations import Operations


@pytest.fixture
def operations(qapp: QApplication) -> Operations:
    return Operations(qapp)


def test_the_result_arrives_on_the_threads_of_the_screen(
    operations: Operations, qtbot: QtBot, qapp: QApplication
) -> None:
    ran: list[object] = []
    taken: list[tuple[object, bool]] = []

    def work(progress: Progress) -> object:
        del progress
        ran.append(threading.current_thread() is threading.main_thread())
        return 42

    def take(result: object) -> None:
        taken.append((result, QThread.currentThread() is qapp.thread()))

    with qtbot.waitSignal(operations.finished):
        assert operations.run("counting", work, take)
    assert ran == [False]
    assert taken == [(42, True)]
    assert not operations.busy


def test_progress_is_told_as_it_comes(operations: Operations, qtbot: QtBot) -> None:
    told: list[tuple[str, float]] = []
    operations.progressed.connect(lambda text, done: told.append((text, done)))

    def work(progress: Progress) -> object:
        progress("first", 0.25)
        progress("second", 0.5)
        return None

    with qtbot.waitSignal(operations.finished):
        operations.run("reading", work, lambda _: None)
    assert told == [("first", 0.25), ("second", 0.5)]


def test_a_cancelled_job_gives_no_result(operations: Operations, qtbot: QtBot) -> None:
    taken: list[object] = []
    started, go_on = threading.Event(), threading.Event()

    def work(progress: Progress) -> object:
        started.set()
        go_on.wait(5)
        progress("never seen", 1.0)
        return "result"

    with qtbot.waitSignal(operations.finished):
        operations.run("reading", work, taken.append)
        assert started.wait(5)
        operations.cancel()
        go_on.set()
    assert taken == []


def test_only_one_job_runs_at_a_time(operations: Operations, qtbot: QtBot) -> None:
    go_on = threading.Event()

    def work(progress: Progress) -> object:
        del progress
        go_on.wait(5)
        return None

    with qtbot.waitSignal(operations.finished):
        assert operations.run("first", work, lambda _: None)
        assert not operations.run("second", work, lambda _: None)
        go_on.set()


def test_a_fault_is_handed_over_and_the_next_job_may_run(
    operations: Operations, qtbot: QtBot
) -> None:
    def fault(progress: Progress) -> object:
        del progress
        raise OSError("disk full")

    with qtbot.waitSignal(operations.failed) as told:
        operations.run("writing", fault, lambda _: None)
    assert isinstance(told.args[0], OSError)
    for number in range(3):
        with qtbot.waitSignal(operations.finished):
            assert operations.run("again", lambda _, number=number: number, lambda _: None)


def test_closing_waits_for_the_job_and_drops_its_result(operations: Operations) -> None:
    taken: list[object] = []
    operations.run("reading", lambda _: "late", taken.append)
    operations.close()
    QApplication.processEvents()
    assert taken == []
