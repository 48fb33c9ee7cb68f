"""The wall sheet on a printer, tried with one that prints into a file."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QMarginsF
from PySide6.QtGui import QPageLayout, QPageSize
from PySide6.QtPrintSupport import QPrinter

from charts.in_house import InHouseChart
from tests.ui.wall_sheet.conftest import Draw
from ui.wall_sheet.ink import Page
from ui.wall_sheet.paper import Paper, PaperSize
from ui.wall_sheet.printing import print_on


@pytest.mark.parametrize(
    ("size", "kind"),
    [
        (QPageSize.PageSizeId.A3, PaperSize.A3),
        (QPageSize.PageSizeId.A4, PaperSize.A4),
        (QPageSize.PageSizeId.Letter, PaperSize.A4),
        (QPageSize.PageSizeId.Tabloid, PaperSize.A3),
    ],
)
def test_the_sheet_is_laid_out_for_the_paper_in_the_printer(
    printed: Draw,
    chart: InHouseChart,
    tmp_path: Path,
    size: QPageSize.PageSizeId,
    kind: PaperSize,
) -> None:
    import pdfplumber

    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFileName(str(tmp_path / "out.pdf"))
    printer.setPageLayout(
        QPageLayout(QPageSize(size), QPageLayout.Orientation.Portrait, QMarginsF(20, 20, 20, 20))
    )
    drawn: list[tuple[Paper, tuple[Page, ...]]] = []

    def pages_on(paper: Paper) -> tuple[Page, ...]:
        drawn.append((paper, printed(chart, paper)))
        return drawn[-1][1]

    assert print_on(printer, pages_on)
    ((paper, pages),) = drawn
    assert paper.size is kind
    with pdfplumber.open(tmp_path / "out.pdf") as pdf:
        assert len(pdf.pages) == len(pages)
        leaf = pdf.pages[0]
        assert leaf.width > leaf.height
        assert (paper.width, paper.height) == pytest.approx((leaf.width, leaf.height), abs=1.0)
        assert min(char["size"] for char in leaf.chars) > 8.95
        assert min(char["x0"] for char in leaf.chars) == pytest.approx(paper.left, abs=2.0)
        assert max(char["x1"] for char in leaf.chars) < leaf.width


@pytest.mark.qt_log_ignore("QPainter::begin", extend=True)  # Qt says it too, on its own channel
def test_a_printer_that_cannot_be_reached_is_said(
    printed: Draw, chart: InHouseChart, tmp_path: Path
) -> None:
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFileName(str(tmp_path / "no" / "such" / "out.pdf"))
    assert not print_on(printer, lambda paper: printed(chart, paper))
