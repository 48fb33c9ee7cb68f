"""The wall sheet as PDF."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QMarginsF, QSizeF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter

from charts.writers.own_files import MARK
from ui.wall_sheet.ink import Page
from ui.wall_sheet.painter import paint
from ui.wall_sheet.paper import Paper

_DOTS: Final = 1200
"""Dots per inch of the writer's own grid; nothing on the page is a picture of dots."""


def pdf_bytes(pages: Sequence[Page], title: str) -> bytes:
    """``pages`` as one PDF file."""
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    writer.setResolution(_DOTS)
    writer.setTitle(title)
    writer.setCreator(MARK)
    writer.setPageLayout(layout_of(pages[0].paper))
    painter = QPainter(writer)
    for number, page in enumerate(pages):
        if number:
            writer.setPageLayout(layout_of(page.paper))
            writer.newPage()
        paint(painter, page, _DOTS / 72)
    painter.end()
    buffer.close()
    return bytes(data.data())


def layout_of(paper: Paper) -> QPageLayout:
    """The whole sheet: the margins are our own."""
    size = QPageSize(
        QSizeF(paper.height, paper.width),
        QPageSize.Unit.Point,
        "",
        QPageSize.SizeMatchPolicy.FuzzyMatch,
    )
    return QPageLayout(size, QPageLayout.Orientation.Landscape, QMarginsF(0, 0, 0, 0))
