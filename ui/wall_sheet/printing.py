"""The wall sheet on a printer: on the paper it holds, large or small."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Final

from PySide6.QtGui import QPageLayout, QPainter
from PySide6.QtPrintSupport import QPrinter

from ui.wall_sheet.ink import Page
from ui.wall_sheet.painter import paint
from ui.wall_sheet.paper import Paper, paper_of

_DOTS: Final = 72


def print_on(printer: QPrinter, pages_on: Callable[[Paper], Sequence[Page]]) -> bool:
    """Print what ``pages_on`` gives for the printer's paper; false where it cannot be reached."""
    printer.setPageOrientation(QPageLayout.Orientation.Landscape)
    printer.setFullPage(True)
    size = printer.pageLayout().fullRectPoints()
    pages = pages_on(paper_of(float(size.width()), float(size.height())))
    painter = QPainter()
    if not painter.begin(printer):
        return False
    for number, page in enumerate(pages):
        if number and not printer.newPage():
            painter.end()
            return False
        paint(painter, page, printer.resolution() / _DOTS)
    return painter.end()
