"""Open spreadsheets (.ods) to sheets: the displayed text of each cell and the value behind it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from charts.findings import FindingLog
from charts.readers.formulas import note_formulas
from charts.readers.hidden import note_hidden, shown_sheet
from charts.readers.merged_areas import expand_merged
from charts.readers.open_document_cells import read_table
from charts.readers.open_document_looks import Looks
from charts.readers.open_document_parts import (
    OFFICE,
    TABLE,
    content_of,
    open_document_kind,
    styles_of,
)
from charts.readers.sheet_allowance import read_in_turn
from charts.readers.source import Claim, Reader, Source, UnusableSourceError
from charts.readers.zip_package import package_of
from charts.sheet import Sheet

if TYPE_CHECKING:
    from lxml.etree import _Element

_MOST_SHEETS: Final = 200


def _claims(source: Source) -> Claim:
    return Claim.CERTAIN if open_document_kind(source.data) == "spreadsheet" else Claim.NONE


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    package = package_of(source.data)
    content, shared = content_of(package), styles_of(package)
    looks = Looks([content] if shared is None else [content, shared])
    tables = list(content.iterfind(f"{OFFICE}body/{OFFICE}spreadsheet/{TABLE}table"))
    tables = tables[:_MOST_SHEETS]
    visible = [one for one in tables if not looks.of(one.get(f"{TABLE}style-name")).hidden]
    visible = visible or tables
    sheets = tuple(read_in_turn(visible, lambda table: _read(table, looks, log), source.name, log))
    note_formulas(sheets, log)
    note_hidden(sheets, [_name(table) for table in tables if table not in visible], log)
    if not any(sheet.cells for sheet in sheets) and not log.findings:
        pictures = any(name.startswith("pictures/") for name in package.names)
        raise UnusableSourceError("picture" if pictures else "empty-file")
    return tuple(sheet for sheet in sheets if sheet.cells)


def _name(table: _Element) -> str:
    return table.get(f"{TABLE}name", "")


def _read(table: _Element, looks: Looks, log: FindingLog) -> Sheet | None:
    """One sheet; None, with an error in the log, when this one sheet cannot be read."""
    try:
        return _sheet(table, looks)
    except UnusableSourceError as problem:
        log.add(problem.code, _name(table), name=_name(table), what=problem.what, case=problem.case)
        return None


def _sheet(table: _Element, looks: Looks) -> Sheet:
    found = read_table(table, looks)
    comments = {at: cell.comment for at, cell in found.cells.items() if cell.comment}
    filled = {
        at: cell for at, cell in found.cells.items() if cell.text or cell.formula_without_value
    }
    expand_merged(filled, found.merged)
    return shown_sheet(
        _name(table), filled, found.hidden_rows, found.hidden_columns, comments=comments
    )


READER: Final = Reader("open spreadsheet", _claims, _open)
