"""Smooth edges, asked for once: to ask again makes a painter set its whole state anew."""

from __future__ import annotations

from typing import Final

from PySide6.QtGui import QPainter

_SMOOTH: Final = QPainter.RenderHint.Antialiasing


def smooth(painter: QPainter) -> None:
    """Paint with smooth edges from now on."""
    if not painter.testRenderHint(_SMOOTH):
        painter.setRenderHint(_SMOOTH, True)
