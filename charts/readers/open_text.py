"""Open text documents (.odt) to sheets: one for each table, with the words around it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Final

from charts.findings import FindingLog
from charts.readers.merged_areas import expand_merged
from charts.readers.open_document_cells import read_table
from charts.readers.open_document_looks import Looks
from charts.readers.open_document_parts import (
    OFFICE,
    TABLE,
    TEXT,
    content_of,
    open_document_kind,
    styles_of,
)
from charts.readers.open_document_text import SeenText
from charts.readers.page_outline import Entry, PageTable, Part
from charts.readers.source import Claim, Reader, Source
from charts.readers.word_tables import sheets_of_document
from charts.readers.zip_package import package_of
from charts.sheet import Sheet

if TYPE_CHECKING:
    from lxml.etree import _Element

_DEEPEST: Final = 40


def _claims(source: Source) -> Claim:
    return Claim.CERTAIN if open_document_kind(source.data) == "text" else Claim.NONE


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    package = package_of(source.data)
    content, shared = content_of(package), styles_of(package)
    looks = Looks([content] if shared is None else [content, shared])
    body = content.find(f"{OFFICE}body/{OFFICE}text")
    entries = [] if body is None else list(_blocks(body, looks, 0))
    pictures = any(name.startswith("pictures/") for name in package.names)
    return sheets_of_document(entries, source.name, log, pictures=pictures)


def _blocks(element: _Element, looks: Looks, depth: int) -> Iterator[Entry]:
    """The headings, paragraphs and tables inside ``element``, through sections and lists."""
    for child in element.iterchildren("*"):
        if child.tag == f"{TABLE}table":
            yield from _table(child, looks, depth)
        elif child.tag in (f"{TEXT}p", f"{TEXT}h"):
            yield from _words(child, looks)
        elif child.tag != f"{TEXT}tracked-changes" and depth < _DEEPEST:
            yield from _blocks(child, looks, depth + 1)


def _words(paragraph: _Element, looks: Looks) -> Iterator[Entry]:
    seen = SeenText(looks)
    seen.add(paragraph)
    text, _ = seen.told()
    level = paragraph.get(f"{TEXT}outline-level", "1")
    if text and paragraph.tag == f"{TEXT}h":
        yield Entry(Part.HEADING, text, int(level) if level.isdigit() and len(level) < 3 else 1)
    elif text:
        yield from (Entry(Part.WORDS, line) for line in text.split("\n") if line.strip())


def _table(table: _Element, looks: Looks, depth: int) -> Iterator[Entry]:
    """A table, then the tables that lie in its cells."""
    found = read_table(table, looks)
    cells = {at: cell for at, cell in found.cells.items() if cell.text}
    if len(cells) == 1:
        yield from (Entry(Part.WORDS, cell.text) for cell in cells.values())
    elif cells:
        expand_merged(cells, found.merged)
        rows, columns = (max(at[axis] for at in cells) + 1 for axis in (0, 1))
        yield Entry(Part.TABLE, table=PageTable(cells, rows, columns))
    for nested in table.iterdescendants(f"{TABLE}table"):
        outer = next(nested.iterancestors(f"{TABLE}table"))
        if outer is table and depth < _DEEPEST:
            yield from _table(nested, looks, depth + 10)


READER: Final = Reader("open text document", _claims, _open)
