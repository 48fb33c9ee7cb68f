"""One line of the wall sheet: the model in words at the left, its sizes as bars beside. No Qt."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Final

from charts.day_words import day_words
from charts.quantities import Unit, converted
from charts.schema import Dimension
from charts.wording import Wording
from harmonizer.wall_sheet import Cut, WallLine
from ui.wall_sheet.axis import Axis
from ui.wall_sheet.cell_shape import CellShaper
from ui.wall_sheet.columns import Columns
from ui.wall_sheet.ink import Mark, Tone, lowered
from ui.wall_sheet.paper import MODEL, SMALL, Face
from ui.wall_sheet.type_setting import Setter, Setting

LINE_AIR: Final = 4.0
"""Above and below what stands in a line."""

Axes = Mapping[Dimension, Axis | None]


@dataclass(frozen=True, slots=True)
class LineShaper:
    """Shapes lines for one paper."""

    setter: Setter
    wording: Wording
    columns: Columns
    cells: CellShaper

    def shape(self, line: WallLine, cut: Cut, axes: Axes) -> Setting:
        """The whole line from its upper to its lower hairline."""
        settings = [self._name(line, cut)]
        for dimension, box in self.columns.tapes.items():
            settings.append(self.cells.shape(line.cells[dimension], axes[dimension], box))
        marks = [mark for setting in settings for mark in lowered(setting.marks, LINE_AIR)]
        height = max(setting.height for setting in settings)
        return Setting(tuple(marks), height + 2 * LINE_AIR)

    def _name(self, line: WallLine, cut: Cut) -> Setting:
        left, right = self.columns.name
        marks: list[Mark] = []
        top = 0.0
        for texts, face, tone in self._said(line, cut):
            for part in self.setter.listed(texts, face, right - left):
                marks.append(self.setter.at(left, top + face.rise, part, face, tone))
                top += face.line
        return Setting(tuple(marks), top)

    def _said(self, line: WallLine, cut: Cut) -> Iterator[tuple[Sequence[str], Face, Tone]]:
        say, row = self.wording.say, line.first
        missing = say("combined", "not-given")
        yield [row.model or missing], MODEL, Tone.INK
        code = "chart-of" if row.season else "chart-of-no-season"
        chart = say("wall_sheet", code, maker=row.supplier or missing, season=row.season)
        yield [chart], SMALL, Tone.INK
        yield list(self._kind(line, cut)), SMALL, Tone.SOFT
        limits = self._limits(line)
        if limits is not None:
            yield [limits], SMALL, Tone.INK

    def _kind(self, line: WallLine, cut: Cut) -> Iterator[str]:
        """Kind and level as far as they are given, and the day of the file."""
        facts = line.first.facts
        if cut is Cut.CHILDREN and line.band != "kids":
            yield self._word("band", line.band)
        if facts is not None and facts.kind is not None:
            yield self._word("kind", facts.kind.value)
        if facts is not None and facts.level is not None:
            yield self.wording.say("wall_sheet", "level", level=facts.level)
        day = day_words(line.first.dated, self.wording)
        yield self.wording.say("wall_sheet", "file-of", day=day)

    def _word(self, what: str, key: str | None) -> str:
        return self.wording.say("combined", f"{what}-{key}")

    def _limits(self, line: WallLine) -> str | None:
        """The rider's weight that the model is made for."""
        facts = line.first.facts
        if facts is None:
            return None
        ends = {"floor": facts.weight_floor, "ceiling": facts.weight_ceiling}
        given = {name: end for name, end in ends.items() if end is not None}
        if not given:
            return None
        number = self.wording.number
        figures = {f"{name}_kg": number(end, "0.1") for name, end in given.items()}
        figures |= {
            f"{name}_lb": number(converted(end, Unit.KG, Unit.LB), "1")
            for name, end in given.items()
        }
        return self.wording.say("wall_sheet", "limits-" + "-".join(given), **figures)
