"""Files to charts with findings. One bad cell never stops a file; nothing raises on bad input."""

from __future__ import annotations

from pathlib import Path

from charts.checks import checked
from charts.checks_file import told_apart
from charts.columns_charts import charts_of
from charts.columns_dates import without_dates
from charts.columns_words import Surroundings, far_words, words_around
from charts.findings import FindingLog, Level
from charts.identity import identified
from charts.layout.find import find_tables
from charts.layout.lists import laid_out
from charts.readers.registry import open_bytes, open_pasted
from charts.schema import Chart, FileReading, UnitFrom
from charts.sheet import Sheet

PASTED = "-"


def read_bytes(data: bytes, name: str, folder: str = "") -> FileReading:
    """Read one file's bytes into charts; ``folder`` may name the supplier."""
    log = FindingLog()
    return _read(open_bytes(data, name, log), name, folder, log)


def read_file(path: Path, name: str) -> FileReading:
    """Read one file; what the outside world refuses becomes an error finding."""
    try:
        data = path.read_bytes()
    except OSError:
        log = FindingLog()
        log.add("locked", name, name=name)
        return FileReading(name, findings=log.findings)
    return read_bytes(data, name, Path(name).parent.as_posix().removeprefix("."))


def read_pasted(text: str) -> FileReading:
    """Read a pasted text; its file is "-"."""
    log = FindingLog()
    return _read(open_pasted(text, log), PASTED, "", log)


def _read(sheets: tuple[Sheet, ...], name: str, folder: str, log: FindingLog) -> FileReading:
    charts: list[Chart] = []
    without: list[Sheet] = []
    for sheet in sheets:
        found = _read_sheet(sheet, name, folder, log)
        charts += found
        if not found and sheet.cells:
            without.append(sheet)
    _say_nothing_found(charts, without, name, log)
    told = told_apart(charts, log)
    return FileReading(name, told, log.findings)


def _read_sheet(sheet: Sheet, name: str, folder: str, log: FindingLog) -> list[Chart]:
    plain, dates = without_dates(laid_out(sheet))
    charts: list[Chart] = []
    tables = find_tables(plain).tables
    for table in tables:
        words = words_around(table, name)
        around = Surroundings(table, words, name, log, far_words(table, tables), dates)
        titles = [words.text for words in around.words if words.kind is UnitFrom.TITLE]
        charts += [
            identified(checked(chart, log), titles, sheet.name, name, folder)
            for chart in charts_of(around)
        ]
    return charts


def _say_nothing_found(
    charts: list[Chart], without: list[Sheet], name: str, log: FindingLog
) -> None:
    """A file that gives no chart is asked about; a sheet without one beside charts is a note."""
    for sheet in without:
        if charts:
            first = next(iter(sheet.cells))
            log.add("not-a-chart", sheet.place(*first), key=sheet.name)
    failed = any(finding.level is Level.ERROR for finding in log.findings)
    if not charts and not failed:
        log.add("no-table", name)
