"""Web pages to sheets: one for each table, with the headings above it and the sentences below.

Tables are numbered in the order of the page, so a place is always ``table 2!C4``, also where a
page holds one table only. Tables that only lay out the page are not counted.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from charts.findings import FindingLog, Level
from charts.readers.hidden import note_hidden
from charts.readers.html_groups import grids_of_blocks
from charts.readers.html_lines import sheet_of_words
from charts.readers.html_outline import outline_of
from charts.readers.html_tables import is_cell, is_row
from charts.readers.page_outline import sheets_of
from charts.readers.source import MOST_TABLES, Claim, Reader, Source, UnusableSourceError, too_many
from charts.readers.word_tables import with_word_tables
from charts.sheet import Sheet

if TYPE_CHECKING:
    from lxml.etree import _Element

_SURE: Final = re.compile(r"<!doctype\s+html|<(?:html|table|body|tr|td)[\s>]", re.IGNORECASE)
_PIECE: Final = re.compile(
    r"<(?:div|p|ul|ol|li|dl|h[1-6]|br|span|section|article)[\s/>]", re.IGNORECASE
)
_OPENED: Final = re.compile(r"<table[\s>]", re.IGNORECASE)
_CLOSED: Final = re.compile(r"</table\s*>", re.IGNORECASE)
_DECLARATION: Final = re.compile(r"\A\s*<\?xml[^>]*\?>")
_DOCUMENT_TYPE: Final = re.compile(
    r"\A\s*<!DOCTYPE[^>\[]*(?:\[.*?\]\s*)?>", re.IGNORECASE | re.DOTALL
)
_CODE: Final = re.compile(r"<(script|style)\b|<(!--)", re.IGNORECASE)
_NO_TAG: Final = re.compile(r"<(?![a-zA-Z/!?])")
_MOST_TAGS: Final = 60_000
_HEAD: Final = 200_000
_CHARSET: Final = re.compile(rb"<meta[^>]*charset\s*=\s*[\"']?\s*([\w-]+)", re.IGNORECASE)
_SAME: Final = {"iso-8859-1": "cp1252", "latin1": "cp1252", "us-ascii": "cp1252"}


def _claims(source: Source) -> Claim:
    head = source.text[:_HEAD]
    if "<" not in head:
        return Claim.NONE
    if _SURE.search(head):
        return Claim.CERTAIN
    return Claim.CERTAIN if len(_PIECE.findall(head)) > 3 else Claim.NONE


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    text = _in_declared_charset(source, source.opened_text(log))
    page = _parsed(text)
    _note_break(text, page, source.name, log)
    outline = outline_of(page, grids_of_blocks(page))
    sheets = sheets_of(with_word_tables(outline)) or sheet_of_words(outline, source.name, log)
    note_hidden(sheets, (), log)
    if not sheets and not any(finding.level is Level.ERROR for finding in log.findings):
        log.add("no-table", source.name, name=source.name)
    return sheets


def _note_break(text: str, page: _Element, name: str, log: FindingLog) -> None:
    """Where the page breaks off inside a table, its last row is in doubt and left out."""
    text = _without_code(text)
    opened, closed = len(_OPENED.findall(text)), len(_CLOSED.findall(text))
    if opened <= closed:
        return
    log.add("truncated", name, name=name, what="")
    rows = [one for one in page.iter() if is_row(one)]
    for cell in list(rows[-1]) if rows else ():
        if is_cell(cell):
            rows[-1].remove(cell)


def _without_code(text: str) -> str:
    kept, end = [], 0
    while found := _CODE.search(text, end):
        kept.append(text[end : found.start()])
        mark = "-->" if found[2] else f"</{found[1]}"
        end = text.find(mark, found.end())
        if end < 0:
            return "".join(kept)
    return "".join([*kept, text[end:]])


def _in_declared_charset(source: Source, text: str) -> str:
    """The text in the encoding that the page itself names, where the bytes are not Unicode."""
    found = source.decoded
    said = _CHARSET.search(source.data[:4000])
    if found is None or found.encoding.startswith("utf") or said is None:
        return text
    name = said[1].decode("ascii").lower()
    try:
        return source.data.decode(_SAME.get(name, name))
    except (LookupError, UnicodeError):
        return text


def _parsed(text: str) -> _Element:
    from lxml import etree, html

    # A bad reader eats "<" before a figure; and no document type is ever looked at.
    text = _DOCUMENT_TYPE.sub("", _DECLARATION.sub("", text), count=1)
    text = _NO_TAG.sub("&lt;", text)
    seen = _without_code(text)
    if (count := seen.count("<")) > _MOST_TAGS or len(_OPENED.findall(seen)) > MOST_TABLES:
        raise too_many(count)
    if "<table" not in text.lower() and re.search(r"<tr[\s>]", text, re.IGNORECASE):
        text = f"<table>{text}</table>"
    parser = html.HTMLParser(no_network=True, remove_pis=True)
    try:
        page = html.document_fromstring(text, parser=parser)
    except (etree.ParserError, etree.XMLSyntaxError, ValueError) as problem:
        raise UnusableSourceError("truncated") from problem
    if any("depth" in entry.message for entry in parser.error_log):
        raise UnusableSourceError("truncated")
    for term in list(page.iter("dd")):  # the parser nests definitions that are not closed
        around = term.getparent()
        if around is not None and around.tag == "dd":
            around.addnext(term)
    return page


READER: Final = Reader("web page", _claims, _open)
