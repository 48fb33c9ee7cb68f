"""What every action does: files in and out, riders, pages. The window only shows."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path
from typing import cast

from PySide6.QtCore import QObject
from PySide6.QtGui import QGuiApplication

from charts.in_house import InHouseChart
from charts.source_files import SourceFile
from charts.sources import Progress
from charts.wording import Wording
from charts.writers.whole_file import NotWrittenError
from harmonizer.shop.arrival import Arrival
from harmonizer.shop.drop_summary import summary_of
from harmonizer.workspace import Workspace
from ui.asking import Asker
from ui.file_states import fault_words
from ui.fitting_page.draft import ASKED
from ui.loading import Arrived, arrive, demo_paths
from ui.main_window import MainWindow

_CHART_FILES = (
    "*.xlsx *.xlsm *.xls *.ods *.csv *.tsv *.txt *.html *.htm *.md *.pdf *.docx *.odt *.eml *.mht"
    " *.zip"
)


class Commands(QObject):
    """Ties the window's actions to the workspace.

    Attributes:
        asker: asks for files and folders; tests put another one here.
    """

    def __init__(self, window: MainWindow, asker: Asker | None = None) -> None:
        super().__init__(window)
        self._window = window
        self.asker = asker or Asker(window.frame)
        self._target = Path()
        window.frame.dropped.connect(self.open_paths)
        window.wanted.connect(self._wanted)
        window.operations.failed.connect(self._failed)
        window.actions_.connect(self._slots())

    def _slots(self) -> dict[str, Callable[[], None]]:
        window = self._window
        return {
            "open-files": self.ask_files,
            "open-folder": self.ask_folder,
            "open-rider": self.ask_rider,
            "demo": self.open_demo,
            "read-again": self._read_all_again,
            "export-combined": self.ask_target,
            "quit": self._quit,
            "undo": window.workspace.undo,
            "redo": window.workspace.redo,
            "paste-chart": self.paste_chart,
            "new-rider": self._new_rider,
            "park": self._new_rider,
            "next-rider": self._next_rider,
            "close-rider": self._close_rider,
            "page-fitting": self._show_fitting,
            "page-charts": self._show_charts,
            "fold-readings": self._fold_readings,
            "go-readings": self._go_readings,
            "go-table": self._go_table,
            "show-place": self._show_place,
            "try-value": self._try_value,
            "taker": self._turn_taker,
            "pair": self._pair,
            "hold": self._hold,
            "came-out": self._came_out,
        }

    @property
    def _wording(self) -> Wording:
        return self._window.words.wording

    # Files in

    def ask_files(self) -> None:
        """Ask for files, and open them."""
        words = self._window.words
        kinds = words("file-kinds", kinds=_CHART_FILES)
        self.asker.files(words("title-open-files"), kinds, self.open_paths)

    def ask_folder(self) -> None:
        """Ask for a folder, and open everything in it."""
        self.asker.folder(self._window.words("title-open-folder"), self.open_paths)

    def ask_rider(self) -> None:
        """Ask for riders' files, and put them on the line."""
        words = self._window.words
        kinds = words("rider-kinds", kinds="*.toml")
        self.asker.files(words("title-open-rider"), kinds, self.open_paths)

    def open_demo(self) -> None:
        """Open the invented scenario that comes with the product."""
        self.open_paths(demo_paths())

    def open_paths(self, paths: Sequence[Path]) -> None:
        """Open files, folders and riders' files beside the screen."""
        wording, known = self._wording, self._window.workspace.known()

        def work(progress: Progress) -> object:
            return arrive(paths, wording, progress, known=known)

        self._run("job-reading", work, self._arrived)

    def read_again(self, folder: Path | None = None) -> None:
        """Read the files that are here once more from the disk, or only those of one folder."""
        found = (file.source for file in self._window.workspace.files)
        files = [file for file in found if file is not None]
        self.open_files([file for file in files if folder in (None, file.path.parent)])

    def open_files(self, files: Sequence[SourceFile]) -> None:
        """Open files from the disk under names that are known, beside the screen."""
        wording, known = self._wording, self._window.workspace.known()

        def work(progress: Progress) -> object:
            arrival = Workspace.load_again(files, progress, wording, known)
            return Arrived(arrival, (), (), asked_charts=True)

        if files:
            self._run("job-reading", work, self._arrived)

    def _read_all_again(self) -> None:
        self.read_again()

    def paste_chart(self) -> None:
        """Read the clipboard as a chart."""
        text = QGuiApplication.clipboard().text()
        wording = self._wording
        if not text.strip():
            self._window.notice.say(self._window.words("nothing-to-paste"))
            return

        def work(progress: Progress) -> object:
            return arrive((), wording, progress, text)

        self._run("job-reading", work, self._arrived)

    def _arrived(self, result: object) -> None:
        self.take_in(cast("Arrived", result))

    def take_in(self, arrived: Arrived) -> None:
        """Take what was read into the workspace, riders onto the line, and say what failed."""
        window = self._window
        window.workspace.take(arrived.charts)
        if isinstance(arrived.charts, Arrival):
            window.charts.show_summary(summary_of(arrived.charts).say(self._wording))
        window.fitting.open_riders(list(arrived.riders))
        self._tell(arrived)
        if window.page == "fitting":
            window.fitting.readings.start()

    def _tell(self, arrived: Arrived) -> None:
        """Say what could not be read; what went well shows by itself."""
        words, notice = self._window.words, self._window.notice
        failed = [file for file in arrived.charts.files if file.unusable]
        if arrived.refused:
            notice.say(arrived.refused[0])
        elif failed and len(arrived.charts.files) == 1:
            notice.say(fault_words(failed[0].reading, self._wording), words("show-charts"))
        elif failed:
            said = words(
                "files-failed", count=len(failed), files=len(arrived.charts.files),
                name=failed[0].reading.file,
            )  # fmt: skip
            notice.say(said, words("show-charts"))
        elif arrived.asked_charts and not arrived.charts.files:
            notice.say(words("no-files"))

    # Files out

    def ask_target(self) -> None:
        """Ask where the combined chart goes, and write it there."""
        words = self._window.words
        self.asker.target(
            words("title-export"), words("export-kinds"), words("export-name"), self._export
        )

    def _export(self, paths: list[Path]) -> None:
        if not paths:
            return
        self._target = paths[0]
        # A copy of what is held now: writing goes on beside the screen while this changes.
        workspace = self._window.workspace
        work = partial(_write, workspace, paths[0], self._wording)
        self._run("job-writing", work, self._written)

    def _written(self, result: object) -> None:
        chart = cast("InHouseChart", result)
        words = self._window.words
        self._window.notice.say(words("written", path=self._target.name, rows=len(chart.rows)))

    # Around the window

    def _run(
        self, says: str, work: Callable[[Progress], object], take: Callable[[object], None]
    ) -> None:
        window = self._window
        if not window.operations.run(window.words(says), work, take):
            window.notice.say(window.words("job-busy"))

    def _failed(self, fault: object) -> None:
        """The world's faults become a sentence; our own are raised again, to be reported."""
        if isinstance(fault, NotWrittenError):
            said = self._wording.say("faces", fault.code, path=fault.path.name, reason=fault.reason)
            self._window.notice.say(said)
            return
        if isinstance(fault, Exception):
            raise fault

    def _wanted(self, key: str) -> None:
        self._window.actions_[key].trigger()

    def _new_rider(self) -> None:
        self._show_fitting()
        self._window.fitting.new_rider()

    def _next_rider(self) -> None:
        self._show_fitting()
        self._window.fitting.next_rider()

    def _close_rider(self) -> None:
        self._window.fitting.close_rider()

    def _try_value(self) -> None:
        self._show_fitting()
        self._window.fitting.try_current()

    def _turn_taker(self) -> None:
        """Another one holds the tape for the reading that has the keyboard."""
        self._show_fitting()
        fields = self._window.fitting.readings.fields.values()
        at_hand = next((field for field in fields if field.line.edit.hasFocus()), None)
        if at_hand is None:
            self._window.notice.say(self._wording.say("keys", "choose-reading"))
        else:
            at_hand.taker_wanted.emit()

    def _pair(self) -> None:
        self._show_fitting()
        self._window.fitting.press_pair()

    def _hold(self) -> None:
        self._show_fitting()
        self._window.fitting.press_hold()

    def _came_out(self) -> None:
        self._show_fitting()
        self._window.fitting.press_came_out()

    def _show_place(self) -> None:
        self._window.fitting.reasons.ask_place()

    def _quit(self) -> None:
        self._window.frame.close()

    def _show_fitting(self) -> None:
        self._window.show_page("fitting")

    def _show_charts(self) -> None:
        self._window.notice.hide()
        self._window.show_page("charts")

    def _fold_readings(self) -> None:
        folded = self._window.actions_["fold-readings"].isChecked()
        self._window.fitting.fold_readings(folded)

    def _go_readings(self) -> None:
        self._window.show_page("fitting")
        action = self._window.actions_["fold-readings"]
        if action.isChecked():
            action.trigger()
        self._window.fitting.readings.fields[ASKED[0]].line.edit.setFocus()

    def _go_table(self) -> None:
        self._window.show_page("fitting")
        self._window.fitting.table.setFocus()


def _write(workspace: Workspace, path: Path, wording: Wording, progress: Progress) -> object:
    progress(path.name, 0.1)
    return workspace.combine(path, wording)
