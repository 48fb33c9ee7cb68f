"""Word-processor documents (.docx) to sheets: one for each table, with the words around it.

Tables are numbered in the order of the document: ``table 2!C4``.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING, Final

from charts.findings import FindingLog
from charts.readers.document_runs import GONE, STRICT_WORD, WORD, inside, paragraph_text
from charts.readers.document_tables import read_table
from charts.readers.page_outline import Entry, Part
from charts.readers.source import MEGABYTE, Claim, Reader, Source, UnusableSourceError, too_many
from charts.readers.word_tables import sheets_of_document
from charts.readers.xml_parts import parsed
from charts.readers.zip_package import ZIP_MARK, Package, package_of
from charts.sheet import Sheet

if TYPE_CHECKING:
    from lxml.etree import _Element

_MAIN: Final = "word/document.xml"
_LARGEST_PART: Final = 24 * MEGABYTE
_MOST_TAGS: Final = 800_000
_BESIDE: Final = re.compile(r"word/header\d*\.xml")
_FOOT: Final = re.compile(r"word/footer\d*\.xml")
_HEADING_NAME: Final = re.compile(r"heading (\d)")
_DEEPEST_NESTED: Final = 5


def _claims(source: Source) -> Claim:
    if not source.data.startswith(ZIP_MARK):
        return Claim.NONE
    try:
        return Claim.CERTAIN if _MAIN in package_of(source.data) else Claim.NONE
    except UnusableSourceError:
        return Claim.NONE  # a damaged archive: the reader of other kinds says so


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    package = package_of(source.data)
    root = _part(package, _MAIN)
    if root is None:
        raise UnusableSourceError("truncated")
    entries = list(_outline(root, package))
    pictures = any(name.startswith("word/media/") for name in package.names)
    return sheets_of_document(entries, source.name, log, pictures=pictures)


def _part(package: Package, name: str) -> _Element | None:
    data = package.read(name, _LARGEST_PART)
    if not data:
        return None
    if (count := data.count(b"<")) > _MOST_TAGS:
        raise too_many(count)
    return parsed(data.replace(STRICT_WORD, WORD[1:-1].encode()))


def _outline(root: _Element, package: Package) -> Iterator[Entry]:
    """Everything a person meets: the head of the pages, the text, its notes, the foot."""
    levels = _heading_levels(package)
    footnotes = _footnotes(package)
    yield from _beside(package, _BESIDE)
    body = root.find(f"{WORD}body")
    for block in inside(root if body is None else body):
        if block.tag == f"{WORD}p":
            yield from _paragraph(block, levels)
            yield from _boxes(block, levels)
        elif block.tag == f"{WORD}tbl":
            yield from _table(block, footnotes, 0)
    yield from _beside(package, _FOOT)


def _paragraph(paragraph: _Element, levels: dict[str, int]) -> Iterator[Entry]:
    text = paragraph_text(paragraph)
    style = paragraph.find(f"{WORD}pPr/{WORD}pStyle")
    level = levels.get(style.get(f"{WORD}val", "") if style is not None else "", 0)
    if text and level:
        yield Entry(Part.HEADING, text.replace("\n", " "), level)
    elif text:
        yield from (Entry(Part.WORDS, line) for line in text.split("\n") if line.strip())


def _boxes(paragraph: _Element, levels: dict[str, int]) -> Iterator[Entry]:
    """What stands in a text box that floats over the page."""
    for box in paragraph.iter(f"{WORD}txbxContent"):
        if any(above.tag in GONE for above in box.iterancestors()):
            continue
        for block in inside(box):
            if block.tag == f"{WORD}tbl":
                yield from _table(block, {}, 0)
            elif block.tag == f"{WORD}p":
                yield from _paragraph(block, levels)


def _table(element: _Element, footnotes: dict[str, str], depth: int) -> Iterator[Entry]:
    """A table, or what lies in it when it only lays out the page; then its footnotes."""
    found = read_table(element)
    own = [cell for cell in found.table.cells.values() if cell.shared_from is None]
    if len(own) == 1:
        yield Entry(Part.WORDS, own[0].text)
    elif len(own) > 1:
        yield Entry(Part.TABLE, table=found.table)
    for number in found.notes:
        if words := footnotes.get(number):
            yield Entry(Part.WORDS, words)
    for nested in found.nested if depth < _DEEPEST_NESTED else ():
        yield from _table(nested, footnotes, depth + 1)


def _heading_levels(package: Package) -> dict[str, int]:
    """The styles that make a paragraph a heading, and of which level; their ids are localised."""
    root = _part(package, "word/styles.xml")
    found: dict[str, int] = {}
    for style in root.iter(f"{WORD}style") if root is not None else ():
        name = style.find(f"{WORD}name")
        words = (name.get(f"{WORD}val", "") if name is not None else "").lower()
        if match := _HEADING_NAME.fullmatch(words):
            found[style.get(f"{WORD}styleId", "")] = int(match[1])
        elif words == "title":
            found[style.get(f"{WORD}styleId", "")] = 1
    return found


def _footnotes(package: Package) -> dict[str, str]:
    root = _part(package, "word/footnotes.xml")
    if root is None:
        return {}
    return {
        note.get(f"{WORD}id", ""): " ".join(paragraph_text(one) for one in inside(note))
        for note in root.iter(f"{WORD}footnote")
    }


def _beside(package: Package, names: re.Pattern[str]) -> Iterator[Entry]:
    """The words at the head or the foot of the pages, each once."""
    said: set[str] = set()
    for name in sorted(package.names):
        root = _part(package, name) if names.fullmatch(name) else None
        for paragraph in inside(root) if root is not None else ():
            text = paragraph_text(paragraph) if paragraph.tag == f"{WORD}p" else ""
            if text and text not in said:
                said.add(text)
                yield Entry(Part.WORDS, text)


READER: Final = Reader("document", _claims, _open)
