"""The full table behind the wall sheet: the workbook's content, model by model. No Qt."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import Final

from charts.writers.printed_table import InHouseTable, Role, TableCell, TableRow
from ui.wall_sheet.frame import Frame
from ui.wall_sheet.ink import Area, Mark, Stroke, Tone
from ui.wall_sheet.paper import MODEL, SMALL, SMALL_STRONG
from ui.wall_sheet.strips import Strip, dealt
from ui.wall_sheet.table_grid import GAP, PAIR_GAP, Column, Grid, face_of, grid
from ui.wall_sheet.type_setting import Setting, stacked
from ui.wall_sheet.wall_pages import Body

_WIDEST_GAP: Final = 32.0
_ROW_AIR: Final = 2.0
_MODEL_AIR: Final = 6.0
_NOTHING: Final = Setting((), 0.0)


def annex_bodies(frame: Frame, table: InHouseTable) -> Iterator[Body]:
    """The pages of the table; none where it has no rows."""
    if not table.rows:
        return
    left, right = frame.paper.left, frame.paper.right
    found = grid(table, frame.setter, right - left)
    head = frame.head(
        frame.wording.say("wall_sheet", "annex-title"), frame.wording.say("wall_sheet", "annex-key")
    )
    foot = frame.foot(_NOTHING, table.footnotes)
    for number, tier in enumerate(found.tiers):
        shaper = _Shaper(frame, table, found, (*found.names, *tier))
        around = frame.around(stacked(head, shaper.heads()), foot)
        for body in dealt(list(shaper.strips(with_facts=number == 0)), around.room):
            yield around, body


@dataclass(frozen=True, slots=True)
class _Shaper:
    """Shapes the rows of one table."""

    frame: Frame
    table: InHouseTable
    grid: Grid
    columns: tuple[Column, ...]

    def _spots(self) -> Iterator[tuple[Column, float]]:
        """Each column and where it begins."""
        paper = self.frame.paper
        used = sum(column.width for column in self.columns)
        gaps = max(len(self.columns) - 1, 1)
        gap = max(GAP, min((paper.right - paper.left - used) / gaps, _WIDEST_GAP))
        x = paper.left
        for column in self.columns:
            yield column, x
            x += column.width + gap

    def heads(self) -> Setting:
        """Two lines: the dimension, and its units below."""
        setter = self.frame.setter
        marks: list[Mark] = []
        for column, left in self._spots():
            marks.append(setter.at(left, SMALL_STRONG.rise, column.head, SMALL_STRONG))
            x = left
            for unit, width in zip(column.units, column.widths, strict=True):
                base = SMALL_STRONG.line + SMALL.rise
                marks.append(setter.at(x, base, unit, SMALL, Tone.SOFT))
                x += width + PAIR_GAP
        return Setting(tuple(marks), SMALL_STRONG.line + SMALL.line + 2.0)

    def strips(self, *, with_facts: bool) -> Iterator[Strip]:
        """Model after model: its name, what holds for all its sizes, its sizes."""
        for _, group in groupby(self.table.rows, key=self._of_model):
            rows = list(group)
            facts = self._facts(rows[0]) if with_facts else _NOTHING
            yield Strip(stacked(self._title(rows[0]), facts), keep=True)
            again = self._title(rows[0], goes_on=True)
            for number, row in enumerate(rows):
                # The first two rows stay with the name, the last two with each other.
                keep = number == 0 < len(rows) - 1 or number == len(rows) - 2
                yield Strip(self._row(row), keep, again)

    def _of_model(self, row: TableRow) -> tuple[str, ...]:
        return tuple(row.cells[number].text for number in (0, 1, *self.grid.said))

    def _title(self, row: TableRow, *, goes_on: bool = False) -> Setting:
        """A rule, the model and its maker."""
        say, setter, paper = self.frame.wording.say, self.frame.setter, self.frame.paper
        maker, model = row.cells[0].text, row.cells[1].text
        name = say("wall_sheet", "continued", cut=model) if goes_on else model
        rule = Stroke(paper.left, _MODEL_AIR / 2, paper.right, _MODEL_AIR / 2, 0.8, Tone.INK)
        base = _MODEL_AIR + MODEL.rise
        title = setter.at(paper.left, base, name, MODEL)
        by = setter.at(paper.left + title.width + 7.0, base, maker, SMALL)
        return Setting((rule, title, by), _MODEL_AIR + MODEL.line)

    def _facts(self, row: TableRow) -> Setting:
        """Everything the table says of the model as a whole, with its heads."""
        setter, paper = self.frame.setter, self.frame.paper
        said = [
            self.frame.wording.say(
                "wall_sheet",
                "annex-fact",
                head=self.table.columns[number].head,
                text=_in_one_line(row.cells[number]),
            )
            for number in self.grid.said
        ]
        lines = setter.listed(said, SMALL, paper.right - paper.left)
        marks = [
            setter.at(paper.left, number * SMALL.line + SMALL.rise, line, SMALL, Tone.SOFT)
            for number, line in enumerate(lines)
        ]
        return Setting(tuple(marks), len(lines) * SMALL.line + 3.0)

    def _row(self, row: TableRow) -> Setting:
        placed = [
            (self._lines(cells, width), cells, x, width) for cells, x, width in self._cells(row)
        ]
        height = max(len(lines) for lines, *_ in placed) * SMALL.line + 2 * _ROW_AIR
        paper = self.frame.paper
        marks: list[Mark] = [
            Area(x - 2.0, 0.5, x + width + 2.0, height - 0.5, Tone.WASH)
            for _, cell, x, width in placed
            if cell.open
        ]
        marks.append(Stroke(paper.left, 0.0, paper.right, 0.0, 0.4, Tone.GRID))
        for lines, cell, x, _ in placed:
            tone = Tone.SOFT if cell.role in (Role.CONVERTED, Role.MISSING) else Tone.INK
            marks += (
                self.frame.setter.at(
                    x, _ROW_AIR + number * SMALL.line + SMALL.rise, line, face_of(cell), tone
                )
                for number, line in enumerate(lines)
            )
        return Setting(tuple(marks), height)

    def _cells(self, row: TableRow) -> Iterator[tuple[TableCell, float, float]]:
        """Each cell with its place; "not given" is said once for both units."""
        for column, left in self._spots():
            cells = [row.cells[number] for number in column.cells]
            if all(cell.role is Role.MISSING for cell in cells):
                yield cells[0], left, column.width
                continue
            x = left
            for cell, width in zip(cells, column.widths, strict=True):
                yield cell, x, width
                x += width + PAIR_GAP

    def _lines(self, cell: TableCell, width: float) -> Sequence[str]:
        return self.frame.setter.lines(cell.text, face_of(cell), width)


def _in_one_line(cell: TableCell) -> str:
    """The lines of a cell one behind the other; a bracket belongs to what stands before it."""
    return cell.text.replace("\n(", " (").replace("\n", "; ")
