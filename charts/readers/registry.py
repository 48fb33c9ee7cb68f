"""Which reader takes a source: by what it holds, never by its ending alone.

A new kind of source is one new module in this package with a ``READER`` in it.
"""

from __future__ import annotations

import pkgutil
from functools import cache
from importlib import import_module

import charts.readers
from charts.findings import FindingLog
from charts.readers.source import LARGEST_FILE, MEGABYTE, Claim, Reader, Source
from charts.sheet import Sheet


@cache
def readers() -> tuple[Reader, ...]:
    """Every reader of this package, in the order of the modules' names."""
    found = []
    for module in pkgutil.iter_modules(charts.readers.__path__):
        reader = getattr(import_module(f"charts.readers.{module.name}"), "READER", None)
        if isinstance(reader, Reader):
            found.append(reader)
    return tuple(found)


def open_bytes(data: bytes, name: str, log: FindingLog) -> tuple[Sheet, ...]:
    """The sheets of a file, claimed by its content. Bad input is a finding in ``log``."""
    if not data.strip(b"\0\t\r\n "):
        log.add("empty-file", name, name=name)
        return ()
    if len(data) > LARGEST_FILE:
        size = str(round(len(data) / MEGABYTE))
        log.add("too-large", name, name=name, size=size, limit=str(LARGEST_FILE // MEGABYTE))
        return ()
    return _opened(Source(data, name), log)


def open_pasted(text: str, log: FindingLog) -> tuple[Sheet, ...]:
    """The sheets of a pasted text: lines, columns, Markdown or a piece of a web page."""
    return open_bytes(text.encode("utf-8", "replace"), "-", log)


def _opened(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    claimed = [(reader.claims(source), reader) for reader in readers()]
    claim, reader = max(claimed, key=lambda pair: pair[0])
    if claim is Claim.NONE:
        log.add("unreadable", source.name, name=source.name)
        return ()
    return reader.open(source, log)
