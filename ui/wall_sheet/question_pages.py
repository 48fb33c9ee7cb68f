"""The open questions behind the table, the dangerous ones first. No Qt."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from charts.writers.printed_table import QuestionList
from ui.wall_sheet.frame import Frame
from ui.wall_sheet.ink import Mark, Stroke, Tone
from ui.wall_sheet.paper import SMALL, SMALL_STRONG, Face
from ui.wall_sheet.strips import Strip, dealt
from ui.wall_sheet.type_setting import Setting, stacked
from ui.wall_sheet.wall_pages import Body

_GAP: Final = 14.0
_AIR: Final = 3.0


def question_bodies(frame: Frame, questions: QuestionList | None) -> Iterator[Body]:
    """A page or more of questions; none where nothing is open."""
    if questions is None:
        return
    spots = _spots(frame, questions.widths)
    heads = _row(frame, questions.heads, spots, SMALL_STRONG)
    head = frame.head(questions.title, frame.wording.say("wall_sheet", "questions-how"))
    around = frame.around(stacked(head, heads), frame.foot(Setting((), 0.0), ()))
    strips = [Strip(_row(frame, cells, spots, SMALL)) for cells in questions.rows]
    for body in dealt(strips, around.room):
        yield around, body


def _spots(frame: Frame, shares: Sequence[float]) -> list[tuple[float, float]]:
    """Left end and width of each column."""
    room = frame.paper.right - frame.paper.left - _GAP * (len(shares) - 1)
    spots = []
    x = frame.paper.left
    for share in shares:
        width = room * share / sum(shares)
        spots.append((x, width))
        x += width + _GAP
    return spots


def _row(
    frame: Frame, cells: Sequence[str], spots: Sequence[tuple[float, float]], face: Face
) -> Setting:
    setter, paper = frame.setter, frame.paper
    marks: list[Mark] = [Stroke(paper.left, 0.0, paper.right, 0.0, 0.4, Tone.EDGE)]
    most = 0
    for text, (x, width) in zip(cells, spots, strict=True):
        lines = setter.lines(text, face, width)
        most = max(most, len(lines))
        marks += (
            setter.at(x, _AIR + number * face.line + face.rise, line, face)
            for number, line in enumerate(lines)
        )
    return Setting(tuple(marks), most * face.line + 2 * _AIR)
