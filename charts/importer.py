"""Files to charts with findings. One bad cell never stops a file; nothing raises on bad input."""

from __future__ import annotations

from pathlib import Path

from charts.columns_charts import charts_of
from charts.columns_dates import without_dates
from charts.columns_words import Surroundings, words_around
from charts.findings import FindingLog
from charts.identity import identified
from charts.layout.find import find_tables
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
    for sheet in sheets:
        plain, dates = without_dates(sheet)
        found = find_tables(plain)
        for table in found.tables:
            around = Surroundings(table, words_around(table, name), name, log, dates)
            titles = [words.text for words in around.words if words.kind is UnitFrom.TITLE]
            charts += [
                identified(chart, titles, sheet.name, name, folder) for chart in charts_of(around)
            ]
    return FileReading(name, tuple(charts), log.findings)
