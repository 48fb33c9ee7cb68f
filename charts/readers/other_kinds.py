"""Documents that are recognised but not read: each is named, with what to do instead.

A reader that claims one of them with certainty takes it; nothing has to be changed here.
"""

from __future__ import annotations

import json
from typing import Final

from charts.findings import FindingLog
from charts.readers.source import Claim, Reader, Source, UnusableSourceError
from charts.readers.zip_package import ZIP_MARK, Package, package_of
from charts.sheet import Sheet

_OLD_OFFICE: Final = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_EMPTY_ZIP: Final = b"PK\5\6"
_MARKS: Final = (
    (b"%PDF-", "PDF"),
    (b"{\\rtf", "RTF"),
    (b"\x1f\x8b", "GZ"),
    (b"7z\xbc\xaf\x27\x1c", "7Z"),
    (b"Rar!\x1a\x07", "RAR"),
)
_IN_A_ZIP: Final = (
    ("xl/workbook.bin", "XLSB"),
    ("word/document.xml", "DOCX"),
    ("ppt/presentation.xml", "PPTX"),
    ("index/document.iwa", "NUMBERS"),
)
_OPEN_DOCUMENT: Final = (
    ("opendocument.spreadsheet", "ODS"),
    ("opendocument.text", "ODT"),
    ("opendocument", "ODF"),
    ("epub", "EPUB"),
)
_STREAMS: Final = (
    ("Workbook", "XLS"),
    ("Book", "XLS"),
    ("WordDocument", "DOC"),
    ("__properties_version1.0", "MSG"),
)
_HEAD: Final = 1024


def _claims(source: Source) -> Claim:
    head = source.data[:_HEAD]
    boxed = head.startswith((ZIP_MARK, _EMPTY_ZIP, _OLD_OFFICE))
    return Claim.RECOGNISED if boxed or _by_mark(head) or _marked_up(source) else Claim.NONE


def _open(source: Source, _log: FindingLog) -> tuple[Sheet, ...]:
    data = source.data
    if data.startswith(_EMPTY_ZIP):
        raise UnusableSourceError("empty-file")
    if data.startswith(_OLD_OFFICE):
        raise _old_office(data)
    if data.startswith(ZIP_MARK):
        raise _zipped(package_of(data), source.ending)
    raise _unread(_by_mark(data[:_HEAD]) or _marked_up(source))


def _unread(kind: str) -> UnusableSourceError:
    return UnusableSourceError("unreadable", kind, "kind")


def _by_mark(head: bytes) -> str:
    if b"%PDF-" in head:  # other bytes may stand before it
        return "PDF"
    return next((kind for mark, kind in _MARKS if head.startswith(mark)), "")


def _marked_up(source: Source) -> str:
    """Data for programs; a page that is also XML is claimed with certainty by another reader."""
    text = source.text.strip()
    if text.startswith("<?xml"):
        return "XML"
    if text.startswith(("{", "[")) and text.endswith(("}", "]")):
        return "JSON" if _is_json(text) else ""
    return ""


def _is_json(text: str) -> bool:
    try:
        json.loads(text)
    except (ValueError, RecursionError):
        return False
    return True


def _old_office(data: bytes) -> UnusableSourceError:
    """A container of the old office formats; new ones are put into it to encrypt them."""
    if _has_stream(data, "EncryptedPackage") or _has_stream(data, "EncryptionInfo"):
        return UnusableSourceError("locked")
    kind = next((kind for name, kind in _STREAMS if _has_stream(data, name)), "")
    return _unread(kind) if kind else UnusableSourceError("truncated")


def _has_stream(data: bytes, name: str) -> bool:
    return name.encode("utf-16-le") + b"\0\0" in data


def _zipped(package: Package, ending: str) -> UnusableSourceError:
    kind = next((kind for part, kind in _IN_A_ZIP if part in package), "")
    if not kind and "mimetype" in package:
        said = package.read("mimetype", _HEAD).decode("ascii", "replace")
        kind = next((kind for word, kind in _OPEN_DOCUMENT if word in said), "")
    if kind or ending == "zip":
        return _unread(kind or "ZIP")
    return UnusableSourceError("not-what-it-says")


READER: Final = Reader("document of another kind", _claims, _open)
