"""The wall sheet without a window: what the command line writes for a name that ends in .pdf."""

from __future__ import annotations

import os
from functools import cache
from pathlib import Path
from typing import Final

from PySide6.QtCore import QCoreApplication, QStandardPaths
from PySide6.QtGui import QGuiApplication

from charts.in_house import InHouseChart
from charts.wording import Wording
from harmonizer.shop.editions import Edition
from ui import appearance
from ui.wall_sheet.editions_file import BOOK_NAME, EditionsFile
from ui.wall_sheet.making import made
from ui.wall_sheet.paper import A3
from ui.wall_sheet.pdf import pdf_bytes

_NAME: Final = "size-chart-harmonizer"


def wall_pdf(chart: InHouseChart, wording: Wording) -> bytes:
    """The wall sheet of ``chart`` on A3, the full table behind it.

    Raises NotWrittenError when the book of wall sheets cannot be read.
    """
    _application()
    edition = EditionsFile(book_file()).edition(chart, wording)
    return pdf_bytes(made(chart, edition, A3, wording), wording.say("wall_sheet", "title"))


def keep_edition(chart: InHouseChart, wording: Wording) -> Edition:
    """Note that the wall sheet of ``chart`` was written, and under which number.

    Raises NotWrittenError.
    """
    book = EditionsFile(book_file())
    edition = book.edition(chart, wording)
    book.keep(edition, wording)
    return edition


def book_file() -> Path:
    """Where this shop's book of wall sheets lies: beside what it chose for the screen."""
    kind = QStandardPaths.StandardLocation.AppConfigLocation
    return Path(QStandardPaths.writableLocation(kind)) / BOOK_NAME


@cache
def _application() -> QCoreApplication:
    """The application that fonts need, without a screen; kept as long as the program runs."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    application = QGuiApplication.instance()
    if application is None:
        application = QGuiApplication([_NAME])
        application.setApplicationName(_NAME)
    appearance.load_fonts()
    return application
