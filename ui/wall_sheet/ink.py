"""What can stand on a page: words, strokes, areas and the bars of sizes. In points. No Qt.

The pages are made of these and of nothing else, so that whatever holds for them holds for the
PDF, the print and the web page alike.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import TypeAlias

from ui.wall_sheet.paper import Face, Paper


class Tone(StrEnum):
    """Greys, named by what they are for. The sheet has no other colours."""

    INK = "ink"  # words, and the frames of bars
    SOFT = "soft"  # words of the second rank
    EDGE = "edge"  # rules and rulers
    GRID = "grid"  # every fifth centimetre behind the bars
    THREAD = "thread"  # every centimetre
    BAR = "bar"  # inside a bar
    WASH = "wash"  # heads of tables, cells in question
    PAPER = "paper"


class End(StrEnum):
    """How a bar ends: at a figure, or open, fading into an arrow."""

    FIRM = "firm"
    OPEN = "open"


@dataclass(frozen=True, slots=True)
class Words:
    """A text from ``x`` along its baseline ``y``; ``width`` as it was measured."""

    x: float
    y: float
    text: str
    face: Face
    width: float
    tone: Tone = Tone.INK


@dataclass(frozen=True, slots=True)
class Stroke:
    """A straight line."""

    x1: float
    y1: float
    x2: float
    y2: float
    width: float
    tone: Tone = Tone.EDGE
    dashed: bool = False


@dataclass(frozen=True, slots=True)
class Area:
    """A filled rectangle without a frame."""

    left: float
    top: float
    right: float
    bottom: float
    tone: Tone


@dataclass(frozen=True, slots=True)
class Bar:
    """One size as a bar.

    ``hollow``: measured between other points than the shop measures. ``dashed``: derived from a
    single value. ``hatched``: a question is open; the label keeps the stretch from ``clear_left``
    to ``clear_right`` free.
    """

    left: float
    right: float
    top: float
    bottom: float
    left_end: End = End.FIRM
    right_end: End = End.FIRM
    hollow: bool = False
    dashed: bool = False
    hatched: bool = False
    clear_left: float = 0.0
    clear_right: float = 0.0


Mark: TypeAlias = Words | Stroke | Area | Bar


@dataclass(frozen=True, slots=True)
class Page:
    """One page: what stands on it, first the lowest."""

    paper: Paper
    marks: tuple[Mark, ...]

    @property
    def texts(self) -> tuple[str, ...]:
        """Every text on the page, in the order of drawing."""
        return tuple(mark.text for mark in self.marks if isinstance(mark, Words))


def moved(mark: Mark, down: float) -> Mark:
    """The same mark ``down`` points lower."""
    if isinstance(mark, Words):
        return replace(mark, y=mark.y + down)
    if isinstance(mark, Stroke):
        return replace(mark, y1=mark.y1 + down, y2=mark.y2 + down)
    return replace(mark, top=mark.top + down, bottom=mark.bottom + down)


def lowered(marks: Sequence[Mark], down: float) -> tuple[Mark, ...]:
    """``marks`` ``down`` points lower."""
    return tuple(moved(mark, down) for mark in marks)
