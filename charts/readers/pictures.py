"""Pictures: recognised, never read. A person types the chart or asks for another form of it."""

from __future__ import annotations

import re
from typing import Final

from charts.findings import FindingLog
from charts.readers.source import Claim, Reader, Source, UnusableSourceError
from charts.sheet import Sheet

_MARKS: Final = (
    b"\x89PNG\r\n\x1a\n",
    b"\xff\xd8\xff",
    b"GIF87a",
    b"GIF89a",
    b"II*\0",
    b"MM\0*",
    b"\0\0\1\0",
)
_BITMAP: Final = re.compile(rb"BM.{4}\0{4}.{4}[\x0c\x28\x34\x38\x40\x6c\x7c]\0\0\0", re.DOTALL)
_IN_A_BOX: Final = re.compile(
    rb"RIFF.{4}WEBP|.{4}ftyp(?:heic|heix|hevc|heim|mif1|msf1|avif|avis)", re.DOTALL
)
_DRAWN: Final = re.compile(
    rb"\s*(?:<\?xml[^>]*>|<!--.*?-->|<!DOCTYPE svg[^>]*>|\s)*<svg\b", re.DOTALL
)
_HEAD: Final = 2000


def _claims(source: Source) -> Claim:
    head = source.data[:_HEAD].removeprefix(b"\xef\xbb\xbf")
    found = (
        head.startswith(_MARKS)
        or _BITMAP.match(head)
        or _IN_A_BOX.match(head)
        or _DRAWN.match(head)
    )
    return Claim.CERTAIN if found else Claim.NONE


def _open(_source: Source, _log: FindingLog) -> tuple[Sheet, ...]:
    raise UnusableSourceError("picture")


READER: Final = Reader("picture", _claims, _open)
