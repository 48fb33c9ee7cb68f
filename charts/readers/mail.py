"""Mail (.eml) and saved pages of the same form (.mht): the letter's text, and what is attached."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import Any, Final

from charts.findings import FindingLog
from charts.readers.captured.values import is_value
from charts.readers.inner_names import InnerNames
from charts.readers.mail_parts import Attached, Letter, taken_apart
from charts.readers.pasted import READER as PLAIN_TEXT
from charts.readers.source import (
    LARGEST_FILE,
    PASTED,
    Claim,
    InnerFile,
    Reader,
    Source,
    UnusableSourceError,
)
from charts.readers.web_page import READER as WEB_PAGE
from charts.sheet import Addressing, Sheet

_HEAD: Final = 8_000
_FIELD: Final = re.compile(rb"([A-Za-z][A-Za-z0-9-]*):[ \t]?")
_KNOWN: Final = frozenset(
    b"from to subject date message-id mime-version received content-type return-path "
    b"delivered-to reply-to cc x-mailer content-transfer-encoding".split()
)
_SURE: Final = frozenset((b"mime-version", b"received", b"message-id"))
_DECORATIONS: Final = ("image/", "font/", "text/css", "text/html", "text/javascript")
_NEVER_CHARTS: Final = (
    "application/pgp-signature",
    "application/pkcs7-signature",
    "application/x-pkcs7-signature",
    "text/calendar",
    "text/vcard",
    "text/x-vcard",
)
_FEW_VALUES: Final = 1


def _claims(source: Source) -> Claim:
    named = _fields(source.data[:_HEAD].lstrip())
    sure = len(named & _KNOWN) > 1 and bool(named & _SURE)
    by_ending = source.ending in ("eml", "mht", "mhtml") and len(named & _KNOWN) > 1
    pasted = source.name == PASTED and b"mime-version" not in named
    return Claim.CERTAIN if (sure or by_ending) and not pasted else Claim.NONE


def _fields(head: bytes) -> set[bytes]:
    """The names of the lines that a letter begins with; none where it does not begin so."""
    named: set[bytes] = set()
    for line in head.splitlines():
        if line[:1] in (b" ", b"\t"):
            continue
        found = _FIELD.match(line)
        if found is None:
            return named if not line else set() if len(named) < 3 else named
        named.add(found[1].lower())
    return named


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    """The tables of the letter's own text: pages and plain text, numbered through."""
    return _sheets(source, taken_apart(source.data), log)


def _sheets(source: Source, letter: Letter, log: FindingLog) -> tuple[Sheet, ...]:
    sheets: list[Sheet] = []
    for kind, text in letter.texts:
        own = Source(text.encode("utf-8", "replace"), PASTED)
        reader = WEB_PAGE if kind == "text/html" else PLAIN_TEXT
        aside = FindingLog()
        for sheet in reader.open(own, aside):
            sheets.append(_numbered(sheet, sheets))
        _carry_over(aside, source.name, log)
    return tuple(sheets)


def _numbered(sheet: Sheet, before: list[Sheet]) -> Sheet:
    """``sheet`` under a number of its own among the tables of the letter."""
    if sheet.addressing is not Addressing.TABLE:
        return sheet
    count = sum(one.addressing is Addressing.TABLE for one in before)
    return replace(sheet, name=f"table {count + 1}")


def _carry_over(aside: FindingLog, name: str, log: FindingLog) -> None:
    """What is wrong with a text, but not that it holds no table: the letter may hold others."""
    for one in aside.findings:
        if one.code != "no-table":
            place = name if one.place == PASTED else one.place
            values: dict[str, Any] = {  # a name may not be one of add's own
                key: name if text == PASTED else text for key, text in one.values.items()
            }
            log.add(one.code, place, key=name, **values)


def _unpack(source: Source, _log: FindingLog) -> Iterator[InnerFile]:
    """The attached files; a picture in the text only where nothing else could be the chart."""
    letter = taken_apart(source.data)
    attached = [one for one in letter.attached if not _is_decoration(one)]
    if not attached and not _holds_values(_sheets(source, letter, FindingLog())):
        attached = [one for one in letter.attached if one.kind.startswith("image/")]
    names = InnerNames()
    for one in attached:
        name = names.of(one.name, ending=one.ending)
        if name is not None and len(one.data) > LARGEST_FILE:
            yield InnerFile(name, problem=UnusableSourceError("too-large"))
        elif name is not None:
            yield InnerFile(name, one.data)


def _is_decoration(one: Attached) -> bool:
    """A logo, a style, a signature: what the text shows or mail programs add of themselves."""
    return one.kind in _NEVER_CHARTS or (one.shown_inside and one.kind.startswith(_DECORATIONS))


def _holds_values(sheets: Iterable[Sheet]) -> bool:
    cells = (cell for sheet in sheets for cell in sheet.cells.values())
    return sum(is_value(cell.text) for cell in cells) > _FEW_VALUES


READER: Final = Reader("mail", _claims, _open, _unpack)
