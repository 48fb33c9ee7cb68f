"""Where the columns of the wall sheet stand: the model's name, then one tape a dimension. No Qt."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from charts.schema import Dimension
from harmonizer.wall_sheet import DRAWN
from ui.wall_sheet.paper import Paper

_GAP: Final = 22.0
_NAME_SHARE: Final = 0.175
_BACK_SHARE: Final = 0.88


@dataclass(frozen=True, slots=True)
class Columns:
    """Left and right ends in points."""

    name: tuple[float, float]
    tapes: dict[Dimension, tuple[float, float]]


def columns(paper: Paper) -> Columns:
    """The columns of ``paper``: girths of one width, the back a little narrower."""
    whole = paper.right - paper.left
    name = whole * _NAME_SHARE
    shares = [_BACK_SHARE if each is Dimension.BACK_LENGTH else 1.0 for each in DRAWN]
    one = (whole - name - _GAP * len(DRAWN)) / sum(shares)
    left = paper.left + name + _GAP
    tapes = {}
    for dimension, share in zip(DRAWN, shares, strict=True):
        tapes[dimension] = (left, left + one * share)
        left += one * share + _GAP
    return Columns((paper.left, paper.left + name), tapes)
