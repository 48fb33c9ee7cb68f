"""Which reader takes a source: by what it holds, never by its ending alone.

A new kind of source is one new module in this package with a ``READER`` in it.
"""

from __future__ import annotations

import pkgutil
from collections.abc import Iterator
from functools import cache
from importlib import import_module
from typing import Final

import charts.readers
from charts.findings import FindingLog
from charts.readers.source import (
    LARGEST_FILE,
    LARGEST_TEXT,
    MEGABYTE,
    PASTED,
    Claim,
    InnerFile,
    Reader,
    Source,
    UnusableSourceError,
)
from charts.sheet import Sheet

# fmt: off
_ENDINGS: Final = frozenset((
    "csv", "tsv", "tab", "txt", "md", "htm", "html", "xhtml", "xlsx", "xlsm", "xltx", "xls", "ods",
    "pdf", "docx", "odt", "rtf", "eml", "png", "jpg", "jpeg", "gif", "webp", "bmp", "tif", "tiff",
    "heic", "zip",
))
# fmt: on


@cache
def readers() -> tuple[Reader, ...]:
    """Every reader of this package by its module's name; those that are slow to claim last."""
    found = []
    for module in pkgutil.iter_modules(charts.readers.__path__):
        reader = getattr(import_module(f"charts.readers.{module.name}"), "READER", None)
        if isinstance(reader, Reader):
            found.append(reader)
    return tuple(sorted(found, key=lambda reader: reader.is_slow_to_claim))


def open_bytes(data: bytes, name: str, log: FindingLog) -> tuple[Sheet, ...]:
    """The sheets of a file, claimed by its content. Bad input is a finding in ``log``.

    Files inside it are not gone into.
    """
    if not data.strip(b"\0\t\r\n \xef\xbb\xbf\xff\xfe"):  # byte order marks are no content
        case = "pasted" if name == PASTED else ""
        log.add("empty-file", name, name=name, what="", case=case)
        return ()
    try:
        return _opened(Source(data, name), log)
    except UnusableSourceError as problem:
        log.add(problem.code, name, name=name, what=problem.what, case=problem.case)
        return ()


def inner_files(data: bytes, name: str, log: FindingLog) -> Iterator[InnerFile]:
    """The files inside a file, one after the other; none in most. Bad input is a finding."""
    source = Source(data, name)
    for reader in readers():
        if reader.unpack is None or len(data) > LARGEST_FILE:
            continue
        try:
            if reader.claims(source) is Claim.CERTAIN:
                yield from reader.unpack(source, log)
                return
        except UnusableSourceError as problem:
            log.add(problem.code, name, name=name, what=problem.what, case=problem.case)
            return


def _claims(source: Source) -> Iterator[tuple[Claim, Reader]]:
    for reader in readers():
        claim = reader.claims(source)
        yield claim, reader
        if claim is Claim.CERTAIN:
            return


def _opened(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    size = len(source.data)
    if size > LARGEST_FILE:
        raise UnusableSourceError("too-large", f"{size // MEGABYTE} MB")
    claim, reader = max(_claims(source), key=lambda pair: pair[0])
    if claim is Claim.NONE:
        if size > LARGEST_TEXT:
            raise UnusableSourceError("too-large", f"{size // MEGABYTE} MB")
        if source.ending in _ENDINGS:
            raise UnusableSourceError("not-what-it-says")
        raise UnusableSourceError("unreadable")
    return reader.open(source, log)
