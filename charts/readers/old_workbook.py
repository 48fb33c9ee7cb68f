"""Workbooks of the old binary kind (.xls) to sheets, with the formats that show their values."""

from __future__ import annotations

import io
import struct
from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING, Final

from charts.findings import FindingLog
from charts.readers.hidden import note_hidden, shown_sheet
from charts.readers.merged_areas import Area, expand_merged
from charts.readers.old_box import BOX_MARK, stream_of
from charts.readers.old_workbook_cells import BookCells
from charts.readers.old_workbook_size import refuse_if_swollen
from charts.readers.plain_text import tidy
from charts.readers.sheet_allowance import read_in_turn
from charts.readers.source import Claim, Reader, Source, UnusableSourceError
from charts.sheet import Sheet

if TYPE_CHECKING:
    from xlrd.book import Book
    from xlrd.sheet import Sheet as BookSheet

_STREAMS: Final = ("Workbook", "Book")
_BARE: Final = (b"\x09\x00\x04\x00", b"\x09\x02\x06\x00", b"\x09\x04\x06\x00")
"""The first record of a workbook older than the box that later ones lie in."""
_LOCKS: Final = ("EncryptedPackage", "EncryptionInfo")
_MOST_SHEETS: Final = 200
_BROKEN: Final = (
    struct.error,
    AssertionError,
    AttributeError,
    ArithmeticError,
    LookupError,
    NotImplementedError,
    RecursionError,
    TypeError,
    ValueError,
)
"""What xlrd raises on damaged books besides its own errors; it was written for whole ones."""


def _claims(source: Source) -> Claim:
    data = source.data
    if data.startswith(_BARE):
        return Claim.CERTAIN
    boxed = data.startswith(BOX_MARK) and any(_holds(data, name) for name in _STREAMS)
    return Claim.CERTAIN if boxed and not any(_holds(data, name) for name in _LOCKS) else Claim.NONE


def _holds(data: bytes, stream: str) -> bool:
    return stream.encode("utf-16-le") + b"\0\0" in data


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    book = _book(source.data)
    names = list(book.sheet_names())[:_MOST_SHEETS]
    hidden = [name for number, name in enumerate(names) if book.sheet_by_index(number).visibility]
    shown = [name for name in names if name not in hidden] or names
    cells = BookCells(book)
    sheets = tuple(
        read_in_turn(
            shown, lambda name: _read(book.sheet_by_name(name), cells, log), source.name, log
        )
    )
    note_hidden(sheets, [name for name in names if name not in shown], log)
    if not any(sheet.cells for sheet in sheets) and not log.findings:
        raise UnusableSourceError("empty-file")
    return tuple(sheet for sheet in sheets if sheet.cells)


def _book(data: bytes) -> Book:
    from xlrd import XLRDError, open_workbook
    from xlrd.compdoc import CompDocError

    records = stream_of(data, _STREAMS) if data.startswith(BOX_MARK) else data
    if not records or records.startswith(BOX_MARK):
        raise UnusableSourceError("truncated")
    refuse_if_swollen(records)
    try:
        return open_workbook(
            logfile=io.StringIO(), file_contents=records, formatting_info=True, ragged_rows=True
        )
    except XLRDError as problem:
        locked = "encrypt" in str(problem).lower()
        raise UnusableSourceError("locked" if locked else "truncated") from problem
    except (CompDocError, *_BROKEN) as problem:
        raise UnusableSourceError("truncated") from problem


def _read(sheet: BookSheet, cells: BookCells, log: FindingLog) -> Sheet | None:
    """One sheet; None, with an error in the log, when this one sheet cannot be read."""
    try:
        return _sheet(sheet, cells)
    except UnusableSourceError as problem:
        log.add(problem.code, sheet.name, name=sheet.name, what=problem.what, case=problem.case)
    except _BROKEN:
        log.add("truncated", sheet.name, name=sheet.name, what="")
    return None


def _sheet(sheet: BookSheet, cells: BookCells) -> Sheet:
    found = dict(cells.of(sheet))
    expand_merged(found, _merged(sheet))
    hidden_rows, hidden_columns = _hidden_rows(sheet), _hidden_columns(sheet)
    return shown_sheet(sheet.name, found, hidden_rows, hidden_columns, comments=dict(_notes(sheet)))


def _notes(sheet: BookSheet) -> Iterator[tuple[tuple[int, int], str]]:
    for at, note in sheet.cell_note_map.items():
        if words := tidy(str(note.text or "")):
            yield at, words


def _hidden_rows(sheet: BookSheet) -> frozenset[int]:
    return frozenset(row for row, info in sheet.rowinfo_map.items() if info.hidden)


def _hidden_columns(sheet: BookSheet) -> frozenset[int]:
    known = sheet.colinfo_map.items()
    return frozenset(column for column, info in known if info.hidden or info.width == 0)


def _merged(sheet: BookSheet) -> Iterable[Area]:
    for top, bottom, left, right in sheet.merged_cells:  # its ends lie outside
        yield top, left, bottom - 1, right - 1


READER: Final = Reader("old workbook", _claims, _open)
