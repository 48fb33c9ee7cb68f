"""What the readers' tests share: reading bytes, and workbooks built on the spot."""

from __future__ import annotations

import io
import zipfile
from collections.abc import Callable
from dataclasses import dataclass

from openpyxl import Workbook
from openpyxl.worksheet.worksheet import Worksheet

from charts.findings import Finding, FindingLog
from charts.readers.registry import open_bytes
from charts.readers.source import PASTED
from charts.sheet import Sheet


@dataclass(frozen=True)
class Read:
    """What came out of one source."""

    sheets: tuple[Sheet, ...]
    findings: tuple[Finding, ...]

    @property
    def sheet(self) -> Sheet:
        assert len(self.sheets) == 1, [sheet.name for sheet in self.sheets]
        return self.sheets[0]

    @property
    def codes(self) -> list[str]:
        return [finding.code for finding in self.findings]

    def rows(self, number: int = 0) -> list[list[str]]:
        return rows_of(self.sheets[number])


def rows_of(sheet: Sheet) -> list[list[str]]:
    """The texts of every filled row, "" where a cell is empty."""
    return [[sheet.text(row, at) for at in range(sheet.columns)] for row in sheet.filled_rows]


def read(data: bytes | str, name: str = "chart.csv") -> Read:
    log = FindingLog()
    raw = data.encode() if isinstance(data, str) else data
    return Read(open_bytes(raw, name, log), log.findings)


def paste(text: str) -> Read:
    log = FindingLog()
    return Read(open_bytes(text.encode("utf-8", "replace"), PASTED, log), log.findings)


def saved(book: Workbook) -> bytes:
    stream = io.BytesIO()
    book.save(stream)
    return stream.getvalue()


def book_of(*rows: list[object], title: str = "Women") -> tuple[Workbook, Worksheet]:
    book = Workbook()
    sheet = book.worksheets[0]
    sheet.title = title
    for row in rows:
        sheet.append(row)
    return book, sheet


def with_part(data: bytes, part: str, change: Callable[[str], str | bytes]) -> bytes:
    """The workbook ``data`` with one of its parts rewritten."""
    packed = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(data)) as old, zipfile.ZipFile(packed, "w", 8) as new:
        for name in old.namelist():
            content = old.read(name)
            new.writestr(name, change(content.decode()) if name == part else content)
    return packed.getvalue()
