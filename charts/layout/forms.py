"""Which form a view has: sizes down, sizes across, a grid, or one row per size and dimension."""

from __future__ import annotations

from charts.layout.frames import Frame, frame
from charts.layout.grid import grid
from charts.layout.long_form import widened
from charts.layout.view import View


def framed(view: View) -> Frame:
    """The form that explains the view best; sizes down the rows when two are equal."""
    found = grid(view)
    if found is not None:
        return found
    down = frame(view)
    wide = widened(down)
    if wide is not None:
        return wide
    across = frame(view.turn())
    return across if across.score > down.score else down
