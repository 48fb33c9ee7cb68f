"""What a text says and the table laid out from it does not: it is asked about, once a text."""

from __future__ import annotations

from charts.findings import FindingLog
from charts.readers.captured.losses import first_lossy
from charts.sheet import Addressing, Sheet


def say_lost_in_layout(sheet: Sheet, laid: Sheet, log: FindingLog) -> None:
    """Ask about the first line of ``sheet`` whose figures stand in no cell of ``laid``."""
    if sheet.addressing is not Addressing.LINE or laid is sheet:
        return
    said = ((at, cell.text) for at, cell in sorted(sheet.cells.items()))
    place = first_lossy(said, (cell.text for cell in laid.cells.values()))
    if place is not None:
        text = sheet.text(*place).strip()
        log.add("text-order", sheet.place(*place), case="left", text=text)
