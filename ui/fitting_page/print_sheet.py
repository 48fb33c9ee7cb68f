"""The fitting sheet on paper or as PDF: two to five models, reasons, cautions."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QMarginsF, QSizeF
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPdfWriter, QPicture
from PySide6.QtPrintSupport import QPrinter

from ui.appearance import paper_fonts
from ui.drawing.row_shape import Density
from ui.dress import Dress
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.paper_page import PaperPage
from ui.fitting_page.printed import Printed
from ui.fitting_page.rows import ModelRow
from ui.theme import Scheme, Theme
from ui.words import Words

MOST_MODELS: Final = 5
LEAST_MODELS: Final = 2
DOTS_PER_INCH: Final = 96


def rows_to_print(
    sheet: FittingSheet,
    chosen: ModelRow | None,
    most: int = MOST_MODELS,
    held: str | None = None,
) -> tuple[ModelRow, ...]:
    """The chosen model, the one held against it and the best of the others, in the table's order.

    ``most`` in all, two at least; a model that is folded away is not printed.
    """
    rows = [row for at in range(len(sheet)) if isinstance(row := sheet.row(at), ModelRow)]
    wanted = {held, chosen.key if chosen is not None else None}
    asked = [row for row in rows if row.key in wanted]
    others = [row for row in rows if row.key not in wanted]
    kept = {row.key for row in (*asked, *others[: most - len(asked)])}
    return tuple(row for row in rows if row.key in kept)


def fits_page(printed: Printed, words: Words) -> bool:
    """Whether everything, to the last caution, stands on one page of A4."""
    page = _layout().paintRectPixels(DOTS_PER_INCH)
    tried = QPicture()
    painter = QPainter(tried)
    size = QSizeF(page.width(), page.height())
    bottom = PaperPage(painter, _paper_dress(), words).paint(size, printed)
    painter.end()
    return bottom <= size.height()


def write_pdf(path: str, printed: Printed, words: Words) -> bool:
    """Write the page to a PDF; false where the file cannot be written."""
    writer = QPdfWriter(path)
    writer.setResolution(DOTS_PER_INCH)
    writer.setPageLayout(_layout())
    writer.setTitle(words("print-title"))
    painter = QPainter()
    if not painter.begin(writer):
        return False
    page = PaperPage(painter, _paper_dress(), words)
    page.paint(QSizeF(writer.width(), writer.height()), printed)
    return painter.end()


def print_on(printer: QPrinter, printed: Printed, words: Words) -> bool:
    """Print the page; false where the printer cannot be reached."""
    printer.setPageLayout(_layout())
    painter = QPainter()
    if not painter.begin(printer):
        return False
    scale = printer.resolution() / DOTS_PER_INCH
    painter.scale(scale, scale)
    area = printer.pageLayout().paintRectPixels(printer.resolution())
    page = PaperPage(painter, _paper_dress(), words)
    page.paint(QSizeF(area.width() / scale, area.height() / scale), printed)
    return painter.end()


def _paper_dress() -> Dress:
    return Dress.of(Theme(Scheme.PAPER), paper_fonts(), Density.TALL)


def _layout() -> QPageLayout:
    """A4 on its side; a printer keeps its own size of paper when it has another."""
    return QPageLayout(
        QPageSize(QPageSize.PageSizeId.A4),
        QPageLayout.Orientation.Landscape,
        QMarginsF(12, 11, 12, 11),
        QPageLayout.Unit.Millimeter,
    )
