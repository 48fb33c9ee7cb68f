"""One block of the wall sheet: rulers above and below, lines between, a grid behind. No Qt."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from charts.wording import Wording
from harmonizer.wall_runs import WallCell
from harmonizer.wall_sheet import DRAWN, Cut, WallBlock
from ui.wall_sheet.axis import Axis, Tick, axis_for, extent
from ui.wall_sheet.columns import Columns
from ui.wall_sheet.ink import Mark, Stroke, Tone, lowered
from ui.wall_sheet.line_shape import Axes, LineShaper
from ui.wall_sheet.paper import BLOCK, HEAD, SMALL, SMALL_STRONG, STRONG
from ui.wall_sheet.type_setting import Setter, Setting

RULER: Final = 18.0
"""The height of a ruler with its figures."""

_AIR: Final = 8.0
_TRIES: Final = 4
_TIGHT: Final = 10.5
_SHORT: Final = 3.0
_LONG: Final = 5.5
_UNIT_GAP: Final = 5.0


@dataclass(frozen=True, slots=True)
class ShapedBlock:
    """A block whose lines are shaped but not yet placed."""

    cut: Cut
    axes: Axes
    lines: tuple[Setting, ...]


@dataclass(frozen=True, slots=True)
class BlockShaper:
    """Shapes blocks for one paper."""

    setter: Setter
    wording: Wording
    columns: Columns
    lines: LineShaper

    def shape(self, block: WallBlock) -> ShapedBlock:
        """Every line of ``block`` on the block's own scale."""
        found = self._axes(block)
        lines = tuple(self.lines.shape(line, block.cut, found) for line in block.lines)
        return ShapedBlock(block.cut, found, lines)

    def _axes(self, block: WallBlock) -> Axes:
        """One ruler a dimension for all lines of the block, as large as its tape allows."""
        return {
            dimension: self._axis([line.cells[dimension] for line in block.lines], box)
            for dimension, box in self.columns.tapes.items()
        }

    def _axis(self, cells: Sequence[WallCell], box: tuple[float, float]) -> Axis | None:
        """The axis on which all of ``cells``, with their words, stay inside ``box``."""
        runs = [run for cell in cells for run in cell.runs]
        stretch = extent(span for run in runs for span in run.spans)
        air = (_AIR, _AIR)
        axis = axis_for(stretch, box, air)
        for _ in range(_TRIES):
            if axis is None:
                break
            reached = [self.lines.cells.reach(run, axis) for run in runs]
            left = box[0] - min(each[0] for each in reached)
            right = max(each[1] for each in reached) - box[1]
            if max(left, right) <= 0:
                break
            air = (air[0] + max(left, 0.0), air[1] + max(right, 0.0))
            axis = axis_for(stretch, box, air)
        return axis

    def placed(self, block: ShapedBlock, lines: Sequence[Setting], *, goes_on: bool) -> Setting:
        """``lines`` of ``block`` between their rulers, from the top 0 down.

        ``goes_on``: earlier lines of the block stand on the page before.
        """
        bottom = RULER + sum(line.height for line in lines)
        marks: list[Mark] = []
        for dimension in DRAWN:
            axis = block.axes[dimension]
            if axis is not None:
                marks += self._grid(axis, bottom)
        marks += self._title(block.cut, goes_on=goes_on)
        left, right = self.columns.name[0], self.columns.tapes[DRAWN[-1]][1]
        top = RULER
        for number, line in enumerate(lines):
            tone = Tone.EDGE if number else Tone.INK
            marks.append(Stroke(left, top, right, top, 0.4 if number else 0.8, tone))
            marks += lowered(line.marks, top)
            top += line.height
        marks.append(Stroke(left, bottom, right, bottom, 0.8, Tone.INK))
        return Setting(tuple(marks), bottom + RULER)

    def _title(self, cut: Cut, *, goes_on: bool) -> list[Mark]:
        said = self.wording.say("wall_sheet", f"cut-{cut.value}")
        if goes_on:
            said = self.wording.say("wall_sheet", "continued", cut=said)
        left, right = self.columns.name
        face = self.setter.fitting(said, (BLOCK, HEAD, STRONG, SMALL_STRONG), right - left)
        lines = self.setter.lines(said, face, right - left)
        return [
            self.setter.at(left, RULER - 5.0 - _TIGHT * (len(lines) - number), line, face)
            for number, line in enumerate(lines, 1)
        ]

    def _grid(self, axis: Axis, bottom: float) -> Iterator[Mark]:
        """Both rulers of one tape, and a line behind the bars for each of their centimetres."""
        cm, inches = axis.cm_ticks(self._figure_width), axis.inch_ticks(self._figure_width)
        for tick in cm:
            tone = Tone.GRID if tick.long else Tone.THREAD
            yield Stroke(tick.x, RULER, tick.x, bottom, 0.6 if tick.long else 0.4, tone)
        yield from self._ruler(axis, cm, RULER, -1.0, "cm")
        yield from self._ruler(axis, inches, bottom, 1.0, "in")

    def _figure_width(self, figure: str) -> float:
        return self.setter.measure(figure, SMALL)

    def _ruler(
        self, axis: Axis, ticks: Sequence[Tick], edge: float, side: float, unit: str
    ) -> Iterator[Mark]:
        """Ticks from ``edge`` outward: ``side`` -1 is up, 1 is down."""
        far = edge + side * (_LONG + 1.5)
        base = far if side < 0 else far + SMALL.capital
        for tick in ticks:
            reach = edge + side * (_LONG if tick.long else _SHORT)
            yield Stroke(tick.x, edge, tick.x, reach, 0.6, Tone.INK if tick.long else Tone.EDGE)
            if tick.figure is not None:
                yield self.setter.around(tick.x, base, str(tick.figure), SMALL)
        yield self.setter.until(axis.left - _UNIT_GAP, base, unit, SMALL, Tone.SOFT)
