"""Archives (.zip): the files inside, one after the other, never more than a stated amount.

Nothing is written anywhere: the files are taken out into memory and read from there.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from charts.findings import FindingLog
from charts.readers.inner_names import InnerNames
from charts.readers.source import (
    LARGEST_FILE,
    MEGABYTE,
    Claim,
    InnerFile,
    Reader,
    Source,
    UnusableSourceError,
)
from charts.readers.zip_package import ZIP_MARK, Package, package_of
from charts.sheet import Sheet

_MOST_FILES: Final = 300
_LARGEST_TOGETHER: Final = 200 * MEGABYTE
_DENSEST: Final = 150
"""How many times larger than in the archive a file may be; spreadsheets reach about 30."""
_SMALL: Final = MEGABYTE
_DOCUMENT_SIGNS: Final = (
    "[content_types].xml",
    "mimetype",
    "xl/workbook.xml",
    "word/document.xml",
    "index/document.iwa",
)


def _claims(source: Source) -> Claim:
    if not source.data.startswith(ZIP_MARK):
        return Claim.NONE
    try:
        names = package_of(source.data).names
    except UnusableSourceError:
        return Claim.NONE  # a damaged archive: the reader of other kinds says so
    is_document = any(sign in names for sign in _DOCUMENT_SIGNS)
    return Claim.NONE if is_document or not names else Claim.CERTAIN


def _open(_source: Source, _log: FindingLog) -> tuple[Sheet, ...]:
    return ()  # an archive has no words of its own


def _unpack(source: Source, log: FindingLog) -> Iterator[InnerFile]:
    package = package_of(source.data)
    names = InnerNames()
    together = taken = 0
    for said, packed, size in sorted(package.files()):
        name = names.of(said)
        if name is None:
            continue
        taken += 1
        if taken > _MOST_FILES:
            count = str(len(package.names))
            log.add("too-large", source.name, name=source.name, what=count, case="many")
            return
        if size > LARGEST_FILE or (size > _SMALL and size > packed * _DENSEST):
            yield InnerFile(name, problem=_too_large(size))
            continue
        together += size
        if together > _LARGEST_TOGETHER:
            what = f"{together // MEGABYTE} MB"
            log.add("too-large", source.name, name=source.name, what=what, case="")
            return
        yield _taken_out(package, said, name)


def _taken_out(package: Package, said: str, name: str) -> InnerFile:
    try:
        return InnerFile(name, package.read(said, LARGEST_FILE))
    except UnusableSourceError as problem:
        return InnerFile(name, problem=problem)


def _too_large(size: int) -> UnusableSourceError:
    return UnusableSourceError("too-large", f"{size // MEGABYTE} MB")


READER: Final = Reader("archive", _claims, _open, _unpack)
