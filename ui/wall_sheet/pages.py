"""The wall sheet with its annex: the bars, the full table, the open questions. No Qt."""

from __future__ import annotations

from charts.wording import Wording
from charts.writers.in_house_table import laid_out
from charts.writers.marks import Marks
from harmonizer.wall_sheet import WallSheet
from ui.wall_sheet.annex import annex_bodies
from ui.wall_sheet.frame import Frame
from ui.wall_sheet.ink import Page
from ui.wall_sheet.paper import Measure, Paper
from ui.wall_sheet.question_pages import question_bodies
from ui.wall_sheet.type_setting import Setter
from ui.wall_sheet.wall_pages import wall_bodies


def all_pages(
    sheet: WallSheet, paper: Paper, wording: Wording, measure: Measure
) -> tuple[Page, ...]:
    """Every page of ``sheet`` on ``paper``, numbered through."""
    frame = Frame(Setter(measure), wording, paper, sheet)
    table = laid_out(sheet.chart, wording)
    bodies = [
        *wall_bodies(frame, Marks.of_chart(sheet.chart, wording)),
        *annex_bodies(frame, table),
        *question_bodies(frame, table.questions),
    ]
    return frame.pages(bodies)
