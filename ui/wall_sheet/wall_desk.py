"""The wall sheet of a window: drawn beside the screen, shown, saved, printed and counted."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import cast

from PySide6.QtCore import QObject
from PySide6.QtPrintSupport import QPrinter

from charts.in_house import InHouseChart
from charts.sources import Progress
from charts.writers.own_files import is_ours
from charts.writers.whole_file import NotWrittenError, write_whole
from harmonizer.settings import Settings
from harmonizer.shop.editions import Edition
from ui.asking import Asker
from ui.main_window import MainWindow
from ui.wall_sheet.editions_file import EditionsFile
from ui.wall_sheet.ink import Page
from ui.wall_sheet.making import made
from ui.wall_sheet.paper import PAPERS, Paper
from ui.wall_sheet.pdf import pdf_bytes
from ui.wall_sheet.preview import PagesOf, Preview
from ui.wall_sheet.printing import print_on
from ui.wall_sheet.web_page import web_page_bytes


@dataclass(frozen=True, slots=True)
class Drawn:
    """A wall sheet ready to be shown, and what it was made of."""

    chart: InHouseChart
    edition: Edition
    settings: Settings
    pages: PagesOf


class WallDesk(QObject):
    """Draws the sheet of all that is loaded, and does with it what is wanted.

    Attributes:
        preview: the open preview, None while there is none.
    """

    def __init__(self, window: MainWindow, asker: Asker, book: Path | None) -> None:
        super().__init__(window)
        self._window = window
        self._asker = asker
        self._book = EditionsFile(book)
        self._drawn: Drawn | None = None
        self.preview: Preview | None = None

    def draw(self) -> None:
        """Draw the wall sheet of all that is loaded, and show it."""
        window = self._window
        workspace, wording, book = window.workspace, window.words.wording, self._book

        def work(progress: Progress) -> object:
            chart, settings = workspace.in_house_chart(), workspace.settings
            edition = book.edition(chart, wording)
            pages = {}
            for done, (size, paper) in enumerate(PAPERS.items()):
                progress(wording.say("wall_sheet", f"paper-{size.value}"), done / len(PAPERS))
                pages[size] = made(chart, edition, paper, wording, settings)
            return Drawn(chart, edition, settings, pages)

        if not window.operations.run(self._say("job-drawing"), work, self._show):
            window.notice.say(window.words("job-busy"))

    def _say(self, code: str, /, **values: object) -> str:
        return self._window.words.wording.say("wall_sheet", code, **values)

    def _show(self, result: object) -> None:
        drawn = cast("Drawn", result)
        window = self._window
        number = self._say("dialog-number", number=drawn.edition.number)
        self._drawn = drawn
        self.preview = Preview(drawn.pages, number, window.words, window.frame)
        self.preview.wanted.connect(self._wanted)
        self.preview.destroyed.connect(self._closed)
        self.preview.open()

    def _closed(self) -> None:
        self.preview = None

    def _wanted(self, kind: str) -> None:
        if kind == "print":
            self._asker.printer(self._print)
            return
        then = self._write_pdf if kind == "pdf" else self._write_web
        self._asker.target(
            self._say(f"title-{kind}"), self._say(f"kinds-{kind}"), self._say(f"name-{kind}"), then
        )

    def _write_pdf(self, paths: list[Path]) -> None:
        if self.preview is not None:
            self._write(paths, pdf_bytes(self.preview.pages, self._say("title")))

    def _write_web(self, paths: list[Path]) -> None:
        if self.preview is not None:
            self._write(paths, web_page_bytes(self.preview.pages, self._window.words.wording))

    def _write(self, paths: list[Path], data: bytes) -> None:
        drawn = self._drawn
        if not paths or drawn is None:
            return
        try:
            self._refuse_a_source(paths[0])
            write_whole(paths[0], data)
            self._book.keep(drawn.edition, self._window.words.wording)
        except NotWrittenError as fault:
            self._tell_fault(fault)
            return
        self._tell(self._say("saved", path=paths[0].name, number=drawn.edition.number))

    def _refuse_a_source(self, path: Path) -> None:
        """A supplier's own file is never written over."""
        files = self._window.workspace.files
        sources = {file.path.resolve() for file in files if file.path is not None}
        if path.resolve() in sources and not is_ours(path):
            raise NotWrittenError("target-is-source", path)

    def _print(self, printer: QPrinter) -> None:
        drawn = self._drawn
        if drawn is None:
            return
        wording = self._window.words.wording

        def pages_on(paper: Paper) -> tuple[Page, ...]:
            return made(drawn.chart, drawn.edition, paper, wording, drawn.settings)

        if not print_on(printer, pages_on):
            self._tell(self._say("not-printed"))
            return
        try:
            self._book.keep(drawn.edition, wording)
        except NotWrittenError as fault:
            self._tell_fault(fault)
            return
        self._tell(self._say("printed", number=drawn.edition.number))

    def _tell_fault(self, fault: NotWrittenError) -> None:
        wording = self._window.words.wording
        self._tell(wording.say("faces", fault.code, path=fault.path.name, reason=fault.reason))

    def _tell(self, sentence: str) -> None:
        if self.preview is not None:
            self.preview.say(sentence)
        else:
            self._window.notice.say(sentence)
