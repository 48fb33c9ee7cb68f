"""Remembers how cells look: those seen a second time are copied from then on.

A name, a size and a verdict are the same from reading to reading and from row to row, and so are
the tapes of the three dimensions that a reading does not concern, while each costs a handful of
texts, bars and marks. What moves under the hand is not kept: it is another picture at each step.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable
from typing import Final

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPixmap

from ui.fitting_page.tape_cells import Spot

_MOST_BYTES: Final = 12_000_000
"""What one generation may take."""
_MOST_SEEN_ONCE: Final = 4096

_BYTES_A_PIXEL: Final = 4


class Same:
    """Stands for one object in what tells a cell's look: hashed and compared by identity.

    A tape holds every size of its model; to compare them all costs as much as to copy the cell.
    """

    __slots__ = ("it",)

    def __init__(self, it: object) -> None:
        self.it = it

    def __hash__(self) -> int:
        return id(self.it)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Same) and self.it is other.it


class CellPictures:
    """Cells by what stands in them, in two generations: those not seen for longest go first."""

    def __init__(self) -> None:
        self._young: dict[Hashable, QPixmap] = {}
        self._old: dict[Hashable, QPixmap] = {}
        self._once: set[Hashable] = set()
        self._bytes = 0

    def paint(self, spot: Spot, what: Hashable, painted: Callable[[Spot], None]) -> None:
        """The cell at ``spot`` from what is remembered, else by ``painted``.

        ``what`` tells all that ``painted`` draws there, save the room it has. Where the screen's
        pixels are a broken share of ours a copy would blur, so there each cell is painted.
        """
        ratio = spot.painter.device().devicePixelRatioF()
        box = spot.box
        if not ratio.is_integer() or not (box.left().is_integer() and box.top().is_integer()):
            painted(spot)
            return
        key = (what, box.width(), box.height(), ratio, spot.chosen, spot.held)
        picture = self._young.get(key)
        if picture is None:
            picture = self._old.get(key)
            if picture is None:
                if self._is_new(key):
                    painted(spot)
                    return
                picture = _picture(spot, ratio, painted)
            self._keep(key, picture)
        spot.painter.drawPixmap(box.topLeft(), picture)

    def _is_new(self, key: Hashable) -> bool:
        """Whether a cell is seen for the first time: many are never seen again."""
        if key in self._once:
            self._once.discard(key)
            return False
        if len(self._once) >= _MOST_SEEN_ONCE:
            self._once.clear()
        self._once.add(key)
        return True

    def _keep(self, key: Hashable, picture: QPixmap) -> None:
        """Remember a picture; a full generation takes the place of the one before it."""
        if self._bytes > _MOST_BYTES:
            self._old, self._young, self._bytes = self._young, {}, 0
        self._young[key] = picture
        self._bytes += _bytes(picture)


def _picture(spot: Spot, ratio: float, painted: Callable[[Spot], None]) -> QPixmap:
    box = QRectF(0.0, 0.0, spot.box.width(), spot.box.height())
    picture = QPixmap(round(box.width() * ratio), round(box.height() * ratio))
    picture.setDevicePixelRatio(ratio)
    picture.fill(Qt.GlobalColor.white)
    painter = QPainter(picture)
    painted(Spot(painter, box, spot.chosen, spot.held))
    painter.end()
    return picture


def _bytes(picture: QPixmap) -> int:
    return picture.width() * picture.height() * _BYTES_A_PIXEL
