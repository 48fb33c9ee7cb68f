"""Long work beside the screen: one job at a time, with progress, cancel and one report.

The worker never touches a widget. Its relay lives in the window's thread; the worker's signals
reach bound slots there, so that results arrive on the UI thread whatever happens in between.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Generic, TypeVar

from PySide6.QtCore import QObject, QRunnable, QThreadPool, Signal

from charts.sources import Cancelled, Progress

Result = TypeVar("Result")
Work = Callable[[Progress], Result]


class Relay(QObject):
    """Carries a job's reports into the window's thread.

    Signals:
        progressed(str, float): the thing at hand and the fraction done, 0 to 1.
        done(object): the job's result.
        failed(object): the exception that ended it.
        cancelled(): it stopped because somebody wished so.
    """

    progressed = Signal(str, float)
    done = Signal(object)
    failed = Signal(object)
    cancelled = Signal()


class _Job(QRunnable, Generic[Result]):
    def __init__(self, work: Work[Result], relay: Relay) -> None:
        super().__init__()
        self.setAutoDelete(False)
        self._work = work
        self._relay = relay
        self.stop_wished = False

    def run(self) -> None:
        try:
            result = self._work(self._progress)
        except Cancelled:
            self._relay.cancelled.emit()
        except Exception as fault:  # noqa: BLE001 - handed whole to the window, which reports it
            self._relay.failed.emit(fault)
        else:
            self._relay.done.emit(result)

    def _progress(self, message: str, fraction: float) -> None:
        if self.stop_wished:
            raise Cancelled
        self._relay.progressed.emit(message, fraction)


class Operations(QObject):
    """Runs one job at a time off the UI thread.

    Signals:
        started(str): a job began; the text says what it does.
        progressed(str, float): how far it has come.
        finished(): it ended, one way or the other.
        failed(object): it ended with this exception.
    """

    started = Signal(str)
    progressed = Signal(str, float)
    finished = Signal()
    failed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._job: _Job[object] | None = None
        self._relay: Relay | None = None
        self._spent: tuple[_Job[object], Relay] | None = None
        self._take: Callable[[object], None] | None = None

    @property
    def busy(self) -> bool:
        """Whether a job is under way."""
        return self._job is not None

    def run(self, says: str, work: Work[object], take: Callable[[object], None]) -> bool:
        """Start ``work`` and hand its result to ``take`` here; false while another one runs.

        ``work`` gets a progress callable that raises Cancelled once ``cancel`` was called.
        """
        if self._job is not None:
            return False
        relay = Relay(self)
        relay.progressed.connect(self.progressed)
        relay.done.connect(self._done)
        relay.failed.connect(self._failed)
        relay.cancelled.connect(self._cancelled)
        self._relay, self._take = relay, take
        self._job = _Job(work, relay)
        self.started.emit(says)
        self._pool.start(self._job)
        return True

    def cancel(self) -> None:
        """Ask the job to stop at its next step."""
        if self._job is not None:
            self._job.stop_wished = True

    def close(self) -> None:
        """Stop the job and wait for it; its result is dropped."""
        self.cancel()
        self._take = None
        self._pool.waitForDone()

    def _done(self, result: object) -> None:
        take = self._take
        self._clear()
        if take is not None:
            take(result)
        self.finished.emit()

    def _failed(self, fault: object) -> None:
        self._clear()
        self.failed.emit(fault)
        self.finished.emit()

    def _cancelled(self) -> None:
        self._clear()
        self.finished.emit()

    def _clear(self) -> None:
        """Forget the job, but keep it alive: its thread may not have come out of it yet.

        By the end of the next job the one thread of the pool has long left this one.
        """
        if self._spent is not None:
            self._spent[1].deleteLater()
        if self._job is not None and self._relay is not None:
            self._spent = (self._job, self._relay)
        self._job = self._relay = self._take = None
