"""Files to charts with findings. One bad cell never stops a file; nothing raises on bad input."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from charts.answering import Answering
from charts.answers import Answer
from charts.answers_settled import with_settled
from charts.answers_sheets import answered_sheet, left_out
from charts.answers_tables import answered_tables
from charts.answers_text import opened
from charts.checks.children_above import children_above_asked
from charts.checks.file import told_apart
from charts.checks.left_cells import say_left_cells, say_unread_sheet
from charts.checks.left_over import say_left_over
from charts.checks.lost_in_layout import say_lost_in_layout
from charts.checks.measures_in_names import say_measures_in_names
from charts.checks.not_understood import understood
from charts.checks.one_person import people_left_out
from charts.checks.people_unheard import people_unheard_asked
from charts.checks.printed import compared_with_page
from charts.checks.titles_behind import titles_behind_asked
from charts.checks.whole import checked
from charts.columns.band_scope import names_of_source, names_of_tables
from charts.columns.charts import charts_of
from charts.columns.dates import without_dates
from charts.columns.named_in_pairs import named_in_pairs
from charts.columns.other_tables import far_words, outer_words
from charts.columns.words import (
    SourceNames,
    Surroundings,
    Words,
    page_words,
    words_around,
)
from charts.findings import FindingLog, Level
from charts.grouping import grouped
from charts.identity import identified
from charts.layout.fields import Table
from charts.layout.find import find_tables
from charts.layout.joined_rows import ranges_joined
from charts.layout.lists import laid_out
from charts.layout.repeated_heads import heads_told_once
from charts.layout.section_units import units_named
from charts.layout.spans_lost import spans_restored
from charts.layout.spans_slipped import spans_set_right
from charts.layout.unit_rows import units_spread
from charts.readers.captured.values import is_value
from charts.remembered import forget
from charts.schema import Chart, FileReading, UnitFrom
from charts.sheet import Sheet
from charts.twin_tables import strangers_asked, twins_joined
from charts.worth_reading import Allowance

PASTED = "-"
_HOLDERS = (".zip", ".eml", ".mht", ".mhtml")
_FEW_VALUES = 3


@dataclass(frozen=True, slots=True)
class SheetReading:
    """One sheet and what was found in it.

    ``sheet`` is as it came, ``laid`` as its tables were looked for (a list laid out as a table,
    cells read otherwise); None where the sheet was left out.
    """

    sheet: Sheet
    laid: Sheet | None = None
    tables: tuple[Table, ...] = ()
    charts: tuple[Chart, ...] = ()


def read_bytes(
    data: bytes, name: str, folder: str = "", answers: Sequence[Answer] = ()
) -> FileReading:
    """Read one file's bytes into charts; ``folder`` may name the supplier.

    ``answers`` are what a person said of the file before: their questions come back settled.
    """
    return read_sheets(data, name, folder, answers)[0]


def read_sheets(
    data: bytes, name: str, folder: str = "", answers: Sequence[Answer] = ()
) -> tuple[FileReading, tuple[SheetReading, ...]]:
    """Read one file, and show what was found in each of its sheets."""
    answering = Answering(answers)
    now, sheets = _read(data, name, folder, answering)
    if not answers:
        return now, sheets
    before, _ = _read(data, name, folder, Answering())
    return with_settled(before, now, answering), sheets


def read_file(path: Path, name: str) -> FileReading:
    """Read one file; what the outside world refuses becomes an error finding."""
    try:
        data = path.read_bytes()
    except OSError:
        return not_opened(name)
    return read_bytes(data, name, folder_of(name))


def folder_of(name: str) -> str:
    """The folder a file's name is in, "" when it is in none; archives and mail are no folders."""
    folders = name.split("/")[:-1]
    kept = (part for part in folders if not part.lower().endswith(_HOLDERS) and part != PASTED)
    return "/".join(kept)


def not_opened(name: str) -> FileReading:
    """What is said of a file that the system would not open."""
    log = FindingLog()
    log.add("locked", name, name=name)
    return FileReading(name, findings=log.findings)


def read_pasted(text: str) -> FileReading:
    """Read a pasted text; its file is "-"."""
    return read_bytes(text.encode("utf-8", "replace"), PASTED)


def _read(
    data: bytes, name: str, folder: str, answering: Answering
) -> tuple[FileReading, tuple[SheetReading, ...]]:
    log = FindingLog(answering.settles)
    allowance = Allowance(name, log)
    sheets = opened(data, name, answering, log)
    found = tuple(
        _read_sheet(sheet, name, folder, log, answering, page=page_words(sheet, sheets), told=names)
        if allowance.worth_reading(sheet)
        else SheetReading(sheet)
        for sheet, names in zip(sheets, names_of_source(sheets), strict=True)
    )
    charts = people_left_out([chart for one in found for chart in one.charts], log)
    without = [one.sheet for one in found if one.laid and one.sheet.cells and not one.charts]
    if not found or any(one.laid for one in found):
        _say_nothing_found(charts, without, name, log)
    joined = twins_joined(named_in_pairs(charts, log), sheets, log)
    compared = children_above_asked(joined, log)
    apart = strangers_asked(told_apart(compared, log), sheets, log)
    forget()
    return understood(grouped(FileReading(name, apart, log.findings)), sheets), found


def _read_sheet(
    sheet: Sheet,
    name: str,
    folder: str,
    log: FindingLog,
    answering: Answering,
    *,
    page: tuple[Words, ...],
    told: SourceNames,
) -> SheetReading:
    if left_out(sheet, answering):
        return SheetReading(sheet)
    laid = laid_out(heads_told_once(sheet))
    whole = ranges_joined(spans_set_right(spans_restored(units_spread(units_named(laid)))))
    plain, dates = answered_sheet(*without_dates(whole), answering)
    tables = answered_tables(plain, find_tables(plain).tables, answering)
    charts: list[Chart] = []
    titled = told.above + names_of_tables(tables)
    for table in tables:
        words, far = words_around(table, name, told), far_words(table, tables)
        around = Surroundings(
            *(table, words, name, log, far, page, titled, told, dates, answering),
            outer=outer_words(table, tables),
        )
        titles = [words.text for words in around.words if words.kind is UnitFrom.TITLE]
        charts += [
            identified(_checked(chart, table, log), titles, sheet.name, name, folder)
            for chart in charts_of(around)
        ]
    for chart in charts:
        if chart.models:
            log.add("several-models", chart.place, text=", ".join(chart.models))
    if charts:
        say_lost_in_layout(sheet, laid, log)
        say_left_over(plain, tables, charts, log)
        say_left_cells(plain, tables, log)
        say_measures_in_names(plain, tables, charts, log)
    charts = people_unheard_asked(charts, plain, tables, log)
    charts = titles_behind_asked(charts, plain, tables, log)
    charts = compared_with_page(charts, (plain,), name, log)
    return SheetReading(sheet, plain, tables, tuple(charts))


def _checked(chart: Chart, table: Table, log: FindingLog) -> Chart:
    """The checks of a whole chart; sizes of a grid stand in no order that could be broken."""
    return chart if table.gridded else checked(chart, log)


def _say_nothing_found(
    charts: list[Chart], without: list[Sheet], name: str, log: FindingLog
) -> None:
    """A file that gives no chart is asked about; a sheet without one beside charts is a note."""
    if charts:
        for finding in log.findings:
            if finding.code == "no-table" and finding.place == name:
                log.withdraw(finding.id)  # its reader saw lines, and a table was found in them
    for sheet in without:
        if charts and not say_unread_sheet(sheet, log):
            first = next(iter(sheet.cells))
            log.add("not-a-chart", sheet.place(*first), key=sheet.name)
    failed = any(finding.level is Level.ERROR for finding in log.findings)
    if not charts and not failed and not _beside_trade_lists(without, log):
        log.add("no-table", name)


def _beside_trade_lists(without: Sequence[Sheet], log: FindingLog) -> bool:
    """Whether the other sheets of a price list are its cover and its terms: they hold no values."""
    listed = any(finding.values.get("case") == "trade" for finding in log.findings)
    cells = (cell for sheet in without for cell in sheet.cells.values())
    return listed and sum(is_value(cell.text) for cell in cells) < _FEW_VALUES
