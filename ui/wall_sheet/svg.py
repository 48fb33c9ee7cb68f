"""Pages of the wall sheet as SVG, by the same painter."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QRectF, QSize
from PySide6.QtGui import QPainter
from PySide6.QtSvg import QSvgGenerator

from ui.wall_sheet.ink import Page
from ui.wall_sheet.painter import paint

_DOTS: Final = 72


def svg_text(page: Page, name: str, title: str) -> str:
    """The ``svg`` element of ``page``, a point to the unit.

    ``name`` tells it from the other pages of one document, ``title`` is said of it.
    """
    data = QByteArray()
    buffer = QBuffer(data)
    generator = QSvgGenerator()
    generator.setOutputDevice(buffer)
    generator.setResolution(_DOTS)
    generator.setTitle(title)
    generator.setDescription("")
    size = QSize(round(page.paper.width), round(page.paper.height))
    generator.setSize(size)
    generator.setViewBox(QRectF(0.0, 0.0, page.paper.width, page.paper.height))
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    painter = QPainter(generator)
    paint(painter, page, 1.0)
    painter.end()
    buffer.close()
    whole = bytes(data.data()).decode()
    element = whole[whole.index("<svg") :]
    # Fades are named from 1 in every picture; in one document a name stands once.
    return element.replace('id="gradient', f'id="{name}-').replace("url(#gradient", f"url(#{name}-")
