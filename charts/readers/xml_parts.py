"""Pieces of XML inside a file, read without entities, document types or a network."""

from __future__ import annotations

import codecs
import re
from typing import TYPE_CHECKING, Final

from charts.readers.source import UnusableSourceError

if TYPE_CHECKING:
    from lxml.etree import _Element

WIDE_MARKS: Final = (codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)
_DECLARATION: Final = re.compile(r"\A\s*<\?xml[^>]*\?>")
_DOCUMENT_TYPE: Final = re.compile(rb"<!(?:DOCTYPE|ENTITY)", re.IGNORECASE)


def narrow(data: bytes) -> bytes:
    """``data`` in an encoding that leaves the marks of XML readable as single bytes."""
    if not data.startswith(WIDE_MARKS):
        return data.removeprefix(codecs.BOM_UTF8)
    text = data.decode("utf-16", "replace")
    return _DECLARATION.sub("", text).encode("utf-8", "replace")


def refuse_document_type(data: bytes) -> None:
    """Raise UnusableSourceError where ``data`` declares entities: no spreadsheet program does."""
    if _DOCUMENT_TYPE.search(data):
        raise UnusableSourceError("truncated")


def parsed(data: bytes) -> _Element:
    """The root of ``data``. Raises UnusableSourceError where it is broken or declares entities."""
    from lxml import etree

    data = narrow(data)
    refuse_document_type(data)
    parser = etree.XMLParser(resolve_entities=False, no_network=True, load_dtd=False)
    try:
        return etree.fromstring(data, parser)
    except (etree.XMLSyntaxError, ValueError) as problem:
        raise UnusableSourceError("truncated") from problem
