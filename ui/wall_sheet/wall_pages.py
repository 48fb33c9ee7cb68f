"""The lines of the wall sheet dealt to pages, heads and feet on each. No Qt."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from charts.in_house import WithheldModel
from charts.wording import Wording
from charts.writers.marks import Marks
from harmonizer.wall_sheet import DRAWN
from ui.wall_sheet.block_shape import RULER, BlockShaper, ShapedBlock
from ui.wall_sheet.cell_shape import CellShaper
from ui.wall_sheet.columns import Columns, columns
from ui.wall_sheet.frame import Around, Frame
from ui.wall_sheet.ink import Mark, lowered
from ui.wall_sheet.legend import legend
from ui.wall_sheet.line_shape import LineShaper
from ui.wall_sheet.paper import HEAD
from ui.wall_sheet.type_setting import Setting, stacked

_BETWEEN: Final = 5.0
_MOST_SPARE: Final = 9.0
"""Points that a line may grow by where the page has room."""
_WORTH_STARTING: Final = 0.5
"""A block that would fit a page of its own is broken only where more than this would stay empty."""

Body = tuple[Around, Sequence[Mark]]


@dataclass(frozen=True, slots=True)
class _Part:
    """Lines of one block on one page; ``goes_on`` after a part on the page before."""

    block: ShapedBlock
    lines: tuple[Setting, ...]
    goes_on: bool

    @property
    def height(self) -> float:
        return 2 * RULER + sum(line.height for line in self.lines) + _BETWEEN


def wall_bodies(frame: Frame, signs: Marks) -> Iterator[Body]:
    """The pages that hang on the wall, each with its head and foot."""
    setter, wording, paper = frame.setter, frame.wording, frame.paper
    places = columns(paper)
    cells = CellShaper(setter, wording, signs)
    shaper = BlockShaper(setter, wording, places, LineShaper(setter, wording, places, cells))
    head = frame.head(wording.say("wall_sheet", "title"), wording.say("wall_sheet", "how"))
    around = frame.around(
        stacked(head, _column_heads(frame, places)),
        frame.foot(
            legend(setter, wording, (paper.left, paper.right)),
            [*signs.footnotes(), wording.say("wall_sheet", "no-sign"), *_left_out(frame)],
        ),
    )
    blocks = [shaper.shape(block) for block in frame.sheet.blocks]
    for parts in _dealt(blocks, around.room):
        yield around, _placed(shaper, parts, around.room)


def _column_heads(frame: Frame, places: Columns) -> Setting:
    say = frame.wording.say
    heads = [(places.name[0], say("wall_sheet", "model"))]
    heads += ((places.tapes[each][0], say("combined", f"dimension-{each.value}")) for each in DRAWN)
    marks = tuple(frame.setter.at(x, HEAD.rise, text, HEAD) for x, text in heads)
    return Setting(marks, HEAD.line + 1.0)


def _left_out(frame: Frame) -> Iterator[str]:
    """Models and files that are not on the sheet, and what is still asked."""
    chart, say = frame.sheet.chart, frame.wording.say
    if chart.withheld:
        names = ", ".join(_withheld(each, frame.wording) for each in chart.withheld)
        yield say("combined", "withheld", count=len(chart.withheld), names=names)
    if chart.not_read:
        yield say("wall_sheet", "not-read", count=len(chart.not_read))
    if chart.questions:
        yield say("wall_sheet", "open-questions", count=len(chart.questions))


def _withheld(model: WithheldModel, wording: Wording) -> str:
    code = f"withheld-{model.why.value}"
    said = wording.say("combined", code, supplier=model.supplier or "", model=model.model)
    return said.strip()


def _placed(shaper: BlockShaper, parts: Sequence[_Part], room: float) -> list[Mark]:
    """``parts`` one below the other; lines grow a little where the page has room."""
    spare = room - sum(part.height for part in parts)
    lines = max(sum(len(part.lines) for part in parts), 1)
    each = max(min(spare / lines, _MOST_SPARE), 0.0)
    body: list[Mark] = []
    top = 0.0
    for part in parts:
        grown = [Setting(line.marks, line.height + each) for line in part.lines]
        placed = shaper.placed(part.block, grown, goes_on=part.goes_on)
        body += lowered(placed.marks, top)
        top += placed.height + _BETWEEN
    return body


def _dealt(blocks: Sequence[ShapedBlock], room: float) -> Iterator[list[_Part]]:
    """The parts of each page; a block is kept together where that does not waste much paper."""
    page: list[_Part] = []
    top = 0.0
    for block in blocks:
        left = block.lines
        while left:
            count = _fitting(left, room - top)
            if page and _better_on_the_next(left, count, room, top):
                yield page
                page, top = [], 0.0
                continue
            part = _Part(block, left[: max(count, 1)], len(left) < len(block.lines))
            page.append(part)
            top += part.height
            left = left[len(part.lines) :]
    yield page


def _fitting(lines: Sequence[Setting], room: float) -> int:
    """How many of ``lines``, with their rulers, go into ``room``."""
    used, count = 2 * RULER, 0
    for line in lines:
        used += line.height
        if used > room:
            break
        count += 1
    return count


def _better_on_the_next(lines: Sequence[Setting], count: int, room: float, top: float) -> bool:
    """Whether to begin a new page: nothing fits here, or the block is better kept together."""
    if count == len(lines):
        return False
    whole = 2 * RULER + sum(line.height for line in lines) <= room
    return count == 0 or (whole and room - top <= room * _WORTH_STARTING)
