"""What goes on the fitting sheet. No Qt."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from ui.fitting_page.draft import Draft
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.rows import ModelRow


@dataclass(frozen=True, slots=True)
class Printed:
    """What goes on paper: the rider, the sheet, the rows, the day, and what is said of a pair.

    ``chosen`` is the model the reasons speak of, the first of the rows where it is None; ``held``
    the one it is compared with.
    """

    draft: Draft
    sheet: FittingSheet
    rows: tuple[ModelRow, ...]
    on: date
    pair: tuple[str, ...] = ()
    chosen: str | None = None
    held: str | None = None

    @property
    def told(self) -> ModelRow:
        """The row the reasons speak of."""
        return next((row for row in self.rows if row.key == self.chosen), self.rows[0])
