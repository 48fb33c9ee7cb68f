"""Paper, type sizes and greys of the wall sheet. All measures in points of 1/72 inch. No Qt."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

SMALLEST: Final = 9.0
"""Nothing on the sheet is set smaller than this."""

_MM: Final = 72 / 25.4


class PaperSize(StrEnum):
    """The papers a shop hangs up, on their side."""

    A3 = "a3"
    A4 = "a4"


@dataclass(frozen=True, slots=True)
class Paper:
    """A sheet of paper and its margins, in points."""

    size: PaperSize
    width: float
    height: float
    margin: float

    @property
    def left(self) -> float:
        """Where the printed area begins."""
        return self.margin

    @property
    def right(self) -> float:
        """Where the printed area ends."""
        return self.width - self.margin

    @property
    def top(self) -> float:
        """The upper edge of the printed area."""
        return self.margin

    @property
    def bottom(self) -> float:
        """The lower edge of the printed area."""
        return self.height - self.margin


# ISO 216, on its side; the margins are what office printers can print to, and a little more.
A3: Final = Paper(PaperSize.A3, 420 * _MM, 297 * _MM, 11 * _MM)
A4: Final = Paper(PaperSize.A4, 297 * _MM, 210 * _MM, 9 * _MM)
PAPERS: Final = {PaperSize.A3: A3, PaperSize.A4: A4}
_LARGE: Final = 1000.0


def paper_of(width: float, height: float) -> Paper:
    """Paper of any size, in points: laid out as A3 where it is about as wide, else as A4."""
    kind = A3 if width >= _LARGE else A4
    return Paper(kind.size, width, height, kind.margin)


@dataclass(frozen=True, slots=True)
class Face:
    """A size of type in points, strong or plain."""

    size: float
    strong: bool = False

    @property
    def line(self) -> float:
        """The distance from one line of this type to the next."""
        return self.size * 1.27

    @property
    def rise(self) -> float:
        """From the top of a line to its baseline."""
        return self.size * 0.98

    @property
    def capital(self) -> float:
        """The height of a capital letter or a figure."""
        return self.size * 0.727


SMALL: Final = Face(9.0)
SMALL_STRONG: Final = Face(9.0, strong=True)
PLAIN: Final = Face(9.5)
STRONG: Final = Face(9.5, strong=True)
MODEL: Final = Face(11.0, strong=True)
HEAD: Final = Face(11.5, strong=True)
BLOCK: Final = Face(13.0, strong=True)
TITLE: Final = Face(19.0, strong=True)

Measure = Callable[[str, Face], float]
"""How wide a text is in a face, in points."""
