"""Everything the program asks through a dialog. Dialogs are opened, never run; tests ask nobody."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QFileDialog, QWidget

Paths = Callable[[list[Path]], None]


class Asker:
    """Asks a person at the screen, and hands the answer on when it comes."""

    def __init__(self, window: QWidget) -> None:
        self._window = window
        self._dialog: QFileDialog | QPrintDialog | None = None
        self._then: Paths | None = None
        self._print: Callable[[QPrinter], None] | None = None

    def files(self, title: str, kinds: str, then: Paths) -> None:
        """Which files to open; ``kinds`` are the endings as the dialog wants them."""
        dialog = QFileDialog(self._window, title)
        dialog.setFileMode(QFileDialog.FileMode.ExistingFiles)
        dialog.setNameFilter(kinds)
        self._open(dialog, then)

    def folder(self, title: str, then: Paths) -> None:
        """Which folder to open."""
        dialog = QFileDialog(self._window, title)
        dialog.setFileMode(QFileDialog.FileMode.Directory)
        self._open(dialog, then)

    def target(self, title: str, kinds: str, name: str, then: Paths) -> None:
        """Where to write; ``name`` is what is proposed."""
        dialog = QFileDialog(self._window, title)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setNameFilter(kinds)
        dialog.setDefaultSuffix(name.rpartition(".")[2])
        dialog.selectFile(name)
        self._open(dialog, then)

    def printer(self, then: Callable[[QPrinter], None]) -> None:
        """On which printer."""
        dialog = QPrintDialog(QPrinter(QPrinter.PrinterMode.HighResolution), self._window)
        self._print = then
        self._dialog = dialog
        dialog.accepted.connect(self._printer_chosen)
        dialog.setModal(True)
        dialog.show()

    def _open(self, dialog: QFileDialog, then: Paths) -> None:
        self._dialog, self._then = dialog, then
        dialog.filesSelected.connect(self._files_chosen)
        dialog.open()

    def _files_chosen(self, names: list[str]) -> None:
        then, self._then = self._then, None
        if then is not None:
            then([Path(name) for name in names])

    def _printer_chosen(self) -> None:
        then, self._print = self._print, None
        if then is not None and isinstance(self._dialog, QPrintDialog):
            then(self._dialog.printer())
