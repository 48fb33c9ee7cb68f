"""From the combined chart to painted pages, in one step."""

from __future__ import annotations

from charts.in_house import InHouseChart
from charts.wording import Wording
from harmonizer.settings import DEFAULTS, Settings
from harmonizer.shop.editions import Edition
from harmonizer.wall_sheet import wall_sheet
from ui.wall_sheet.ink import Page
from ui.wall_sheet.pages import all_pages
from ui.wall_sheet.painter import measured
from ui.wall_sheet.paper import Paper


def made(
    chart: InHouseChart,
    edition: Edition | None,
    paper: Paper,
    wording: Wording,
    settings: Settings = DEFAULTS,
) -> tuple[Page, ...]:
    """The pages of ``chart``; ``settings`` say between which points the shop measures."""
    return all_pages(wall_sheet(chart, settings, edition), paper, wording, measured)
