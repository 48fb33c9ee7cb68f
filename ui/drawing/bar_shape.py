"""The outline of one bar, its hatching and the dashes of a stroke, as shapes to be painted."""

from __future__ import annotations

from PySide6.QtCore import QLineF, QRectF
from PySide6.QtGui import QPainterPath

from ui.drawing.tape import Bar, End


def outline(bar: Bar, box: QRectF, notch: float) -> QPainterPath:
    """The bar's outline: pointed where the tape cuts it, notched along the top if too long.

    ``notch`` is how wide one notch is, in pixels.
    """
    point = min(box.height() * 0.9, box.width() / 2)
    left, right = box.left(), box.right()
    path = QPainterPath()
    if bar.left_end is End.CUT:
        path.moveTo(left + point, box.bottom())
        path.lineTo(left, box.center().y())
        path.lineTo(left + point, box.top())
    else:
        path.moveTo(left, box.bottom())
        path.lineTo(left, box.top())
    if bar.notched:
        _cut_notches(path, left, right, box, notch)
    if bar.right_end is End.CUT:
        path.lineTo(right - point, box.top())
        path.lineTo(right, box.center().y())
        path.lineTo(right - point, box.bottom())
    else:
        path.lineTo(right, box.top())
        path.lineTo(right, box.bottom())
    path.closeSubpath()
    return path


def _cut_notches(path: QPainterPath, left: float, right: float, box: QRectF, step: float) -> None:
    x = left + step / 2
    while x + step < right:
        path.lineTo(x, box.top())
        path.lineTo(x + step / 2, box.top() + box.height() * 0.62)
        path.lineTo(x + step, box.top())
        x += step * 1.3


def dashes(start: float, end: float, dash: float) -> list[tuple[float, float]]:
    """Dashes of ``dash`` pixels with gaps two thirds as long, the last one cut at ``end``."""
    step = dash * 5 / 3
    count = int((end - start) / step) + 1
    return [
        (start + n * step, min(start + n * step + dash, end))
        for n in range(count)
        if start + n * step < end
    ]


def hatching(box: QRectF, step: float) -> list[QLineF]:
    """Slanted lines that fill ``box`` and stay inside it."""
    lines: list[QLineF] = []
    x = box.left() + step / 2
    while x + box.height() <= box.right():
        lines.append(QLineF(x, box.bottom(), x + box.height(), box.top()))
        x += step
    return lines
