"""The wall sheet's content: one line a model and cut, its sizes as intervals per dimension.

The combined chart once more, to be drawn: a block for each cut, nothing averaged, merged between
makers or filled in. What is left out is named.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from itertools import groupby
from types import MappingProxyType
from typing import Final

from charts.in_house import InHouseChart, InHouseRow
from charts.schema import Definition, Dimension
from harmonizer.settings import DEFAULTS, Settings
from harmonizer.shop.editions import Edition
from harmonizer.wall_runs import WallCell, wall_cell

DRAWN: Final = (Dimension.CHEST, Dimension.WAIST, Dimension.HIP, Dimension.BACK_LENGTH)


class Cut(StrEnum):
    """For whom a model is cut. Each has its own block and scale."""

    WOMEN = "women"
    MEN = "men"
    UNISEX = "unisex"
    CHILDREN = "children"
    NOT_SAID = "not-said"


_CUTS: Final = MappingProxyType(
    {
        "women": Cut.WOMEN,
        "men": Cut.MEN,
        "unisex": Cut.UNISEX,
        "girls": Cut.CHILDREN,
        "boys": Cut.CHILDREN,
        "kids": Cut.CHILDREN,
        "baby": Cut.CHILDREN,
    }
)


@dataclass(frozen=True, slots=True)
class WallLine:
    """One model in one cut. ``first`` is its first row and carries what holds for all of them."""

    first: InHouseRow
    cells: Mapping[Dimension, WallCell]

    @property
    def band(self) -> str | None:
        """For whom, as precisely as the chart says: "girls" within the children's block."""
        return self.first.band


@dataclass(frozen=True, slots=True)
class WallBlock:
    """The lines of one cut."""

    cut: Cut
    lines: tuple[WallLine, ...]


@dataclass(frozen=True, slots=True)
class WallSheet:
    """Everything on the wall. ``edition`` is None while the shop counts none."""

    chart: InHouseChart
    blocks: tuple[WallBlock, ...]
    edition: Edition | None = None

    @property
    def definitions(self) -> tuple[Definition, ...]:
        """The definitions that makers name, in the order of the dimensions."""
        found = {
            run.definition: None
            for dimension in DRAWN
            for block in self.blocks
            for line in block.lines
            for run in line.cells[dimension].runs
        }
        return tuple(each for each in found if each is not Definition.UNKNOWN)


def wall_sheet(
    chart: InHouseChart, settings: Settings = DEFAULTS, edition: Edition | None = None
) -> WallSheet:
    """``chart`` as lines and blocks; ``settings`` say between which points the shop measures."""
    lines: dict[Cut, list[WallLine]] = {cut: [] for cut in Cut}
    for _, rows in groupby(chart.rows, key=_model):
        line = _line(tuple(rows), settings)
        lines[_CUTS.get(line.band or "", Cut.NOT_SAID)].append(line)
    blocks = tuple(WallBlock(cut, tuple(found)) for cut, found in lines.items() if found)
    return WallSheet(chart, blocks, edition)


def _model(row: InHouseRow) -> tuple[object, ...]:
    return (row.supplier, row.model, row.band, row.file)


def _line(rows: tuple[InHouseRow, ...], settings: Settings) -> WallLine:
    cells = {dimension: wall_cell(rows, dimension, settings) for dimension in DRAWN}
    return WallLine(rows[0], MappingProxyType(cells))
