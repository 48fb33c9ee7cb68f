"""Workbooks to sheets: what a person sees in each cell, with the stored value behind it.

The cells are walked here and not by openpyxl's loader, which needs twice the time for the same
values, fails on styles and names that bear on no value, and walks a million empty cells; its
tables of number formats and its calendar are used, and the tests hold both readings together.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from functools import partial
from typing import TYPE_CHECKING, Final

from charts.findings import FindingLog
from charts.readers.formulas import note_formulas
from charts.readers.hidden import note_hidden, shown_sheet
from charts.readers.merged_areas import Area, expand_merged
from charts.readers.mojibake import repaired
from charts.readers.sheet_allowance import read_in_turn
from charts.readers.sheet_xml import position, without_empty_cells
from charts.readers.source import MEGABYTE, Claim, Reader, Source, UnusableSourceError
from charts.readers.workbook_cells import Surroundings, cells_of
from charts.readers.workbook_parts import (
    SheetPart,
    book_parts,
    book_styles,
    comments_of,
    main_part,
    strings_of,
    text_boxes_of,
)
from charts.readers.workbook_styles import whole_number
from charts.readers.xml_parts import parsed
from charts.readers.zip_package import ZIP_MARK, Package, package_of
from charts.sheet import Sheet

if TYPE_CHECKING:
    from lxml.etree import _Element

_LARGEST_SHEET: Final = 160 * MEGABYTE
_LAST_COLUMN: Final = 16_384
_ON: Final = ("1", "true")


def _claims(source: Source) -> Claim:
    if not source.data.startswith(ZIP_MARK):
        return Claim.NONE
    try:
        return Claim.NONE if main_part(package_of(source.data)) is None else Claim.CERTAIN
    except UnusableSourceError:
        return Claim.NONE  # a damaged archive: the reader of other kinds says so


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    package = package_of(source.data)
    parts = book_parts(package, main_part(package) or "")
    if not parts.sheets:
        raise UnusableSourceError("truncated")
    visible = [sheet for sheet in parts.sheets if not sheet.hidden] or list(parts.sheets)
    mend = partial(_mend, name=source.name, log=log)
    around = Surroundings(
        strings_of(package, parts, mend), book_styles(package, parts), parts.from_1904, {}
    )
    read = partial(_read, package, around=around, mend=mend, log=log)
    sheets = tuple(read_in_turn(visible, read, source.name, log))
    note_formulas(sheets, log)
    note_hidden(sheets, [sheet.title for sheet in parts.sheets if sheet not in visible], log)
    _refuse_without_cells(sheets, package, log)
    return tuple(sheet for sheet in sheets if sheet.cells)


def _mend(root: _Element, name: str, log: FindingLog) -> None:
    """Put broken letters right in every text: tables are often pasted in broken."""
    for element in root.iter("{*}t"):
        text = element.text or ""
        if text.isascii():
            continue
        element.text, example = repaired(text)
        if example is not None:
            before, after = example
            log.add("text-repaired", name, name=name, before=before, after=after)


def _read(
    package: Package,
    part: SheetPart,
    *,
    around: Surroundings,
    mend: Callable[[_Element], None],
    log: FindingLog,
) -> Sheet | None:
    """One sheet; None, with an error in the log, when this one sheet cannot be read."""
    try:
        root = parsed(without_empty_cells(package.chunks(part.part, _LARGEST_SHEET)))
        mend(root)
        around = replace(around, comments=comments_of(package, part))
        return _sheet(part, root, around, text_boxes_of(package, part))
    except UnusableSourceError as problem:
        log.add(problem.code, part.title, name=part.title, what=problem.what, case=problem.case)
        return None


def _sheet(part: SheetPart, root: _Element, around: Surroundings, notes: tuple[str, ...]) -> Sheet:
    hidden_rows, hidden_columns = set(_hidden_rows(root)), set(_hidden_columns(root))
    cells = dict(cells_of(root, around))
    expand_merged(cells, _merged(root))
    return shown_sheet(
        part.title, cells, hidden_rows, hidden_columns, comments=around.comments, notes=notes
    )


def _hidden_rows(root: _Element) -> Iterator[int]:
    for number, row in enumerate(root.iterfind("{*}sheetData/{*}row"), start=1):
        if row.get("hidden") in _ON or row.get("ht") == "0":
            yield whole_number(row, "r", number) - 1


def _hidden_columns(root: _Element) -> Iterator[int]:
    for column in root.iterfind("{*}cols/{*}col"):
        if column.get("hidden") in _ON or column.get("width") == "0":
            # One entry can stand for a span of columns.
            last = min(whole_number(column, "max"), _LAST_COLUMN)
            yield from range(whole_number(column, "min", 1) - 1, last)


def _merged(root: _Element) -> Iterator[Area]:
    for element in root.iterfind("{*}mergeCells/{*}mergeCell"):
        first, _, last = element.get("ref", "").partition(":")
        start, end = position(first), position(last or first)
        if start is not None and end is not None:
            top, bottom = sorted((start[0], end[0]))
            left, right = sorted((start[1], end[1]))
            yield top, left, bottom, right


def _refuse_without_cells(sheets: tuple[Sheet, ...], package: Package, log: FindingLog) -> None:
    """Say why a workbook gave nothing, unless that has been said already."""
    if any(sheet.cells for sheet in sheets) or log.findings:
        return
    pictures = any(name.startswith("xl/media/") for name in package.names)
    raise UnusableSourceError("picture" if pictures else "empty-file")


READER: Final = Reader("workbook", _claims, _open)
