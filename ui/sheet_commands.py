"""What leaves the fitting page: the reply as text, the sheet on paper or as PDF."""

from __future__ import annotations

from datetime import UTC, date, datetime
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtGui import QGuiApplication
from PySide6.QtPrintSupport import QPrinter

from ui.asking import Asker
from ui.fitting_page.print_sheet import (
    LEAST_MODELS,
    MOST_MODELS,
    fits_page,
    print_on,
    rows_to_print,
    write_pdf,
)
from ui.fitting_page.printed import Printed
from ui.fitting_page.reply import reply
from ui.main_window import MainWindow


class SheetCommands(QObject):
    """Ties the actions that copy, print and save the page to the window."""

    def __init__(self, window: MainWindow, asker: Asker) -> None:
        super().__init__(window)
        self._window = window
        self._asker = asker
        window.actions_.connect(
            {
                "copy-reply-en": self.copy_english,
                "copy-reply-de": self.copy_german,
                "print": self.ask_printer,
                "pdf": self.ask_pdf,
            }
        )

    def copy_english(self) -> None:
        """Put the reply on the clipboard in English."""
        self._copy("en")

    def copy_german(self) -> None:
        """Put the reply on the clipboard in German."""
        self._copy("de")

    def ask_printer(self) -> None:
        """Ask for a printer, and print the page."""
        if not self._may_print():
            return
        self._asker.printer(self._print)

    def ask_pdf(self) -> None:
        """Ask where the PDF goes, and write it there."""
        if not self._may_print():
            return
        words = self._window.words
        self._asker.target(
            words("title-pdf"), words("print-kinds"), words("print-name"), self._write_pdf
        )

    def _copy(self, language: str) -> None:
        fitting = self._window.fitting
        if fitting.is_trying:
            self._say("trying-wait")
            return
        if fitting.sheet is None or fitting.groups is None:
            self._say("reply-not-yet")
            return
        draft = fitting.readings.draft
        pair = fitting.pairing.pair(draft)
        text = reply(fitting.sheet, fitting.groups, draft, language, pair)
        QGuiApplication.clipboard().setText(text)
        self._say(f"reply-copied-{language}")

    def _may_print(self) -> bool:
        if self._window.fitting.is_trying:
            self._say("trying-wait")
            return False
        if self.printed() is None:
            self._say("print-not-yet")
            return False
        return True

    def printed(self) -> Printed | None:
        """What goes on paper, fewer models where the cautions would run off the page; else nothing.

        Nothing while nothing is compared or a value is only being tried.
        """
        fitting = self._window.fitting
        if fitting.sheet is None or fitting.is_trying:
            return None
        draft, pair = fitting.readings.draft, fitting.pairing.statement(fitting.readings.draft)
        chosen, held = fitting.table.chosen_row(), fitting.held
        key = chosen.key if chosen is not None else None
        printed = None
        for most in range(MOST_MODELS, LEAST_MODELS - 1, -1):
            rows = rows_to_print(fitting.sheet, chosen, most, held)
            if not rows:
                return None
            printed = Printed(draft, fitting.sheet, rows, _today(), pair, key, held)
            if fits_page(printed, self._window.words):
                break
        return printed

    def _print(self, printer: QPrinter) -> None:
        printed = self.printed()
        if printed is not None and not print_on(printer, printed, self._window.words):
            self._say("print-failed")

    def _write_pdf(self, paths: list[Path]) -> None:
        printed = self.printed()
        if printed is None or not paths:
            return
        done = write_pdf(str(paths[0]), printed, self._window.words)
        said = self._window.words("printed" if done else "pdf-failed", path=paths[0].name)
        self._window.notice.say(said)

    def _say(self, code: str) -> None:
        self._window.notice.say(self._window.words(code))


def _today() -> date:
    return datetime.now(UTC).astimezone().date()
