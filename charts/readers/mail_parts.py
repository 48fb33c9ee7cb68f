"""A letter by mail taken apart: what it says itself, and what is attached to it.

The oldest way of reading headers is used: it takes every line that has ever been sent, where
the newer one raises on many.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from email import message_from_bytes
from email.errors import MessageError
from email.header import decode_header, make_header
from email.message import Message
from email.policy import compat32
from typing import Final, TypeAlias

from charts.readers.source import UnusableSourceError, too_many
from charts.readers.text_encoding import decoded

_MOST_PARTS: Final = 300
_DEEPEST: Final = 20
_SAME: Final = {"iso-8859-1": "cp1252", "latin-1": "cp1252", "us-ascii": "cp1252"}
_ENDINGS: Final = {
    "text/html": ".html",
    "text/plain": ".txt",
    "text/csv": ".csv",
    "application/pdf": ".pdf",
    "message/rfc822": ".eml",
}
_QUOTED: Final = re.compile(r"^(?:> ?)+", re.MULTILINE)
"""What stands before the lines of a letter that another one answers or sends on."""
_Part: TypeAlias = "Message[str, str]"  # the class takes no arguments when it runs


@dataclass(frozen=True, slots=True)
class Attached:
    """A file sent with a letter.

    ``kind`` is its media type, ``name`` "" where it has none; ``shown_inside`` says that the
    letter's text shows it.
    """

    name: str
    kind: str
    data: bytes
    shown_inside: bool = False

    @property
    def ending(self) -> str:
        """The ending a file of this kind has, "" where its kind tells none."""
        return _ENDINGS.get(self.kind, "")


@dataclass(frozen=True, slots=True)
class Letter:
    """The texts of a letter in their order, each as its best form, and what is attached."""

    texts: tuple[tuple[str, str], ...]
    attached: tuple[Attached, ...]


def taken_apart(data: bytes) -> Letter:
    """The parts of a letter. Raises UnusableSourceError when it is damaged or absurd."""
    try:
        letter = message_from_bytes(data, policy=compat32)
        parts = list(_parts(letter, 0))
    except (MessageError, ValueError, LookupError, TypeError, AttributeError) as problem:
        raise UnusableSourceError("truncated") from problem
    if len(parts) > _MOST_PARTS:
        raise too_many(len(parts))
    texts = [(part.get_content_type(), _text(part)) for part in parts if _is_text(part)]
    attached = [_attached(part) for part in parts if not _is_text(part)]
    return Letter(tuple(text for text in texts if text[1].strip()), tuple(attached))


def _parts(part: _Part, depth: int) -> Iterator[_Part]:
    """The parts a person meets; of several forms of one text only the best."""
    if depth > _DEEPEST:
        return
    if part.get_content_type() == "message/rfc822" or not part.is_multipart():
        yield part
        return
    inner = [one for one in part.get_payload() if isinstance(one, Message)]
    if part.get_content_type() == "multipart/alternative":
        inner = [_best(inner)] if inner else []
    for one in inner:
        yield from _parts(one, depth + 1)


def _best(forms: list[_Part]) -> _Part:
    """The form that keeps tables: a page before plain text (RFC 2046: the best stands last)."""
    for form in reversed(forms):
        kinds = {one.get_content_type() for one in form.walk()}
        if "text/html" in kinds:
            return form
    return forms[-1]


def _is_text(part: _Part) -> bool:
    is_file = part.get_content_disposition() == "attachment" or part.get_filename() is not None
    return not is_file and part.get_content_type() in ("text/plain", "text/html")


def _text(part: _Part) -> str:
    data = _bytes(part)
    charset = (part.get_content_charset() or "utf-8").lower()
    try:
        text = data.decode(_SAME.get(charset, charset))
    except (LookupError, UnicodeError):
        found = decoded(data)
        text = found.text if found is not None else ""
    return text if part.get_content_type() == "text/html" else _QUOTED.sub("", text)


def _attached(part: _Part) -> Attached:
    kind = part.get_content_type()
    referred_to = part.get("Content-ID") or part.get("Content-Location")
    inside = part.get_content_disposition() != "attachment" and referred_to is not None
    return Attached(_name(part), kind, _bytes(part), inside)


def _bytes(part: _Part) -> bytes:
    if part.get_content_type() == "message/rfc822":
        inner = part.get_payload()
        letters = [one for one in inner if isinstance(one, Message)] if inner else []
        return letters[0].as_bytes() if letters else b""
    data = part.get_payload(decode=True)
    return data if isinstance(data, bytes) else b""


def _name(part: _Part) -> str:
    said = part.get_filename() or ""
    try:
        return str(make_header(decode_header(said)))
    except (LookupError, UnicodeError, ValueError, MessageError):
        return said
