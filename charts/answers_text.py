"""A text file read in the encoding or by the separator that a person gives for it."""

from __future__ import annotations

import codecs

from charts.answering import Answering
from charts.answers import TextForm
from charts.findings import FindingLog
from charts.readers.delimited import parsed_rows
from charts.readers.plain_text import tidy
from charts.readers.registry import open_bytes
from charts.readers.source import Source, UnusableSourceError
from charts.sheet import Addressing, Cell, Sheet


def opened(data: bytes, name: str, answering: Answering, log: FindingLog) -> tuple[Sheet, ...]:
    """The sheets of a file, read as a person says its text is written."""
    for answer, form in answering.of(TextForm):
        text = _decoded(data, form)
        if text is None:
            continue
        answering.use(answer)
        if form.separator is None:
            return open_bytes(codecs.BOM_UTF8 + text.encode(), name, log)
        return _parted(text, name, form.separator, log)
    return open_bytes(data, name, log)


def _decoded(data: bytes, form: TextForm) -> str | None:
    """The text of the bytes; None when they cannot be read so."""
    if form.encoding is None:
        return Source(data, "").text or None
    try:
        return data.decode(form.encoding).removeprefix("\N{ZERO WIDTH NO-BREAK SPACE}")
    except (LookupError, UnicodeDecodeError):
        return None


def _parted(text: str, name: str, separator: str, log: FindingLog) -> tuple[Sheet, ...]:
    try:
        rows = parsed_rows(text, separator)
    except UnusableSourceError as problem:
        log.add(problem.code, name, name=name, what=problem.what)
        return ()
    cells = {
        (number, column): Cell(shown)
        for number, row in enumerate(rows)
        for column, field in enumerate(row.fields)
        if (shown := tidy(field))
    }
    columns = max((column for _, column in cells), default=-1) + 1
    lines = {number: row.line for number, row in enumerate(rows)}
    return (Sheet("", Addressing.PLAIN, cells, len(rows), columns, line_of_row=lines),)
