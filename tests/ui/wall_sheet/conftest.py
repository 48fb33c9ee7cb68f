"""The hard chart on paper, measured with a plain rule or with the program's own fonts."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

import pytest
from PySide6.QtWidgets import QApplication

from charts.in_house import InHouseChart
from charts.wording import Wording
from harmonizer.combined import combined
from harmonizer.shop.editions import Edition
from harmonizer.wall_sheet import wall_sheet
from tests.demo_scenario import CHART_FILES, all_offers, reading_of
from tests.ui.wall_sheet.hard_wall import DAY, hard_chart
from ui.wall_sheet.ink import Page
from ui.wall_sheet.pages import all_pages
from ui.wall_sheet.painter import measured
from ui.wall_sheet.paper import A3, Face, Paper

Draw = Callable[..., tuple[Page, ...]]


def by_rule(text: str, face: Face) -> float:
    """Every letter 0.55 of the size, as wide as letters are in the mean; no font needed."""
    return len(text) * face.size * 0.55


@pytest.fixture(scope="session")
def chart() -> InHouseChart:
    return hard_chart()


@pytest.fixture(scope="session")
def demo() -> InHouseChart:
    readings = [reading_of(file) for file in CHART_FILES]
    dates = {reading.file: date(2026, 11, 3) for reading in readings}
    return combined(readings, all_offers(), dates, DAY)


def drawing(width: Callable[[str, Face], float]) -> Draw:
    """Draws a chart whose words are as wide as ``width`` says, in points."""

    def drawn(
        chart: InHouseChart,
        paper: Paper = A3,
        wording: Wording | None = None,
        edition: Edition | None = None,
    ) -> tuple[Page, ...]:
        sheet = wall_sheet(chart, edition=edition)
        return all_pages(sheet, paper, wording or Wording("en"), width)

    return drawn


@pytest.fixture
def ruled() -> Draw:
    """Draws a chart as numbers alone."""
    return drawing(by_rule)


@pytest.fixture
def printed(application: QApplication) -> Draw:
    """Draws a chart with the fonts it is printed in."""
    return drawing(measured)
