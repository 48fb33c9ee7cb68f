"""A web page read from top to bottom: its headings, sentences, comments and tables in order."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import TYPE_CHECKING, Final

from charts.readers.html_groups import terms_of
from charts.readers.html_lines import preformatted_table
from charts.readers.html_names import TableNames
from charts.readers.html_tables import grid_of, is_table, said_in_comment
from charts.readers.html_text import BLOCKS, UNSEEN, InlineText, is_hidden, text_of
from charts.readers.page_outline import Entry, PageTable, Part
from charts.readers.plain_text import tidy
from charts.readers.source import MOST_LINES, too_many
from charts.sheet import Cell

if TYPE_CHECKING:
    from lxml.etree import _Element

_HEADINGS: Final = {f"h{level}": level for level in range(1, 7)}
_PARTS: Final = frozenset(("section", "article"))
_MENUS: Final = frozenset(("nav", "button"))
_WHOLE: Final = frozenset((*_HEADINGS, "summary", "figcaption", "dl", "pre"))
_SUMMARY_LEVEL: Final = 7  # the name of a folded part holds below every heading
Grids = Mapping["_Element", PageTable]


def outline_of(page: _Element, grids: Grids) -> list[Entry]:
    """Everything a person meets on ``page``; ``grids`` are blocks that only look like tables."""
    walk = _Walk(page, grids)
    walk.entries += _above_the_page(page)
    title = page.find(".//title")
    if title is not None and (words := tidy(title.text or "")):
        walk.entries.append(Entry(Part.HEADING, words))
    body = page.find("body")
    walk.read(page if body is None else body)
    return walk.entries


def _above_the_page(page: _Element) -> list[Entry]:
    """Comments before the page or in its head: they hold for all of it, as its title does."""
    from lxml import etree

    head = page.find("head")
    before = list(page.itersiblings(etree.Comment, preceding=True))[::-1]
    before += page.iterchildren(etree.Comment)
    before += head.iterchildren(etree.Comment) if head is not None else ()
    said = [words for one in before if (words := said_in_comment(one.text))]
    return [Entry(Part.HEADING, words, at - len(said)) for at, words in enumerate(said)]


class _Walk:
    """The state of one pass over a page.

    Attributes:
        entries: what has been met so far.
    """

    def __init__(self, page: _Element, grids: Grids) -> None:
        self.entries: list[Entry] = []
        self._names = TableNames(page)
        self._grids = grids
        self._inline = InlineText()
        self._hidden: list[_Element] = []
        self._links = 0
        self._block = 0
        self._within: list[_Element] = []
        self._numbers: tuple[int, ...] = ()

    def read(self, body: _Element) -> None:
        from lxml import etree

        walker = etree.iterwalk(body, events=("start", "end", "comment", "pi"))
        for event, element in walker:
            if event == "start":
                if not self._start(element):
                    walker.skip_subtree()
            elif event == "end":
                self._end(element, body)
            else:
                self._aside(element, comment=event == "comment")
        self._flush()

    def _start(self, element: _Element) -> bool:
        """Meet ``element``; False when its inside is done with."""
        tag = element.tag
        if tag in _PARTS and self._holds_a_table(element):
            self._flush()
            self._within.append(element)
            self._numbers += (len(self.entries),)
        if is_hidden(element):
            self._flush()
            self._hidden.append(element)
        self._links += tag == "a"
        if tag in UNSEEN or tag in _MENUS or element in self._names.tab_lists:
            return False
        if tag in BLOCKS or is_table(element) or element in self._grids:
            self._flush()
            self._block += 1
        if is_table(element) or element in self._grids:
            return not self._table(element)
        if tag in _WHOLE and not any(map(is_table, element.iterdescendants())):
            self._whole(element)
            return False
        if tag == "br":
            self._flush()
        self._inline.add(element.text, element, linked=self._links > 0)
        return True

    def _whole(self, element: _Element) -> None:
        """Take in a heading, a list of terms or lines of text at once."""
        hidden = bool(self._hidden)
        if element.tag == "dl":
            lines = terms_of(element)
        elif element.tag == "pre":
            if (table := preformatted_table(element)) is not None:
                self._add(Entry(Part.TABLE, hidden=hidden, table=table))
                return
            lines = _text_lines(element)
        else:
            level = _HEADINGS.get(element.tag, _SUMMARY_LEVEL)
            if words := text_of(element).text:
                self._add(Entry(Part.HEADING, words, level, hidden))
            return
        for line in lines:
            self._add(Entry(Part.WORDS, line, hidden=hidden))

    def _end(self, element: _Element, body: _Element) -> None:
        tag = element.tag
        if tag in BLOCKS or is_table(element):
            self._flush()
            self._block += 1
        self._links -= tag == "a"
        if self._hidden and self._hidden[-1] is element:
            self._flush()
            self._hidden.pop()
        if self._within and self._within[-1] is element:
            self._flush()
            self._within.pop()
            self._numbers = self._numbers[:-1]
        if element is not body:
            self._inline.after_span = tag == "span" and not element.tail
            self._inline.add(element.tail, element.getparent(), linked=self._links > 0)

    def _aside(self, element: _Element, *, comment: bool) -> None:
        if comment and (words := said_in_comment(element.text)):
            self._flush()
            self._add(Entry(Part.WORDS, words, hidden=bool(self._hidden), announces=True))
        self._inline.add(element.tail, element.getparent(), linked=self._links > 0)

    def _flush(self) -> None:
        """End the block: what has been collected becomes words, unless all of it is links."""
        words = self._inline.text()
        if words and self._inline.outside_links:
            for line in words.split("\n"):
                self._add(Entry(Part.WORDS, line, hidden=bool(self._hidden)))
        self._inline = InlineText()

    def _table(self, element: _Element) -> bool:
        """Take ``element`` as a table; False when it only lays out the page."""
        grid = self._grids.get(element) or grid_of(element)
        if element not in self._grids and _only_lays_out(element, grid):
            return False
        said = {one.text for one in self.entries}
        for words in self._names.of(element, self._heading_above()):
            if words not in said:
                self._add(Entry(Part.WORDS, words, hidden=bool(self._hidden)))
        self._add(Entry(Part.TABLE, hidden=bool(self._hidden), table=grid))
        for nested in element.iterdescendants():
            if is_table(nested) and nested.getparent() is not None:
                inner = grid_of(nested)
                if len(inner.cells) > 1:
                    self._add(Entry(Part.TABLE, hidden=bool(self._hidden), table=inner))
        return True

    def _holds_a_table(self, element: _Element) -> bool:
        return any(is_table(one) or one in self._grids for one in element.iterdescendants())

    def _heading_above(self) -> str:
        """The nearest heading below the table before, "" where none stands there."""
        for entry in reversed(self.entries):
            if entry.part is Part.TABLE:
                break
            if entry.part is Part.HEADING and entry.level:
                return entry.text
        return ""

    def _add(self, entry: Entry) -> None:
        self.entries.append(replace(entry, within=self._numbers, block=self._block))
        if len(self.entries) > MOST_LINES:
            raise too_many(len(self.entries))


def _text_lines(element: _Element) -> list[str]:
    """The lines of preformatted text."""
    text = "".join(str(piece) for piece in element.itertext())
    return [words for line in text.split("\n") if (words := tidy(line))]


def _only_lays_out(table: _Element, grid: PageTable) -> bool:
    """Whether a table only puts parts of a page side by side: its own cells make no table."""
    if table.get("role") in ("presentation", "none"):
        return True
    own = [cell for cell in grid.cells.values() if cell.shared_from is None]
    if len(own) < 2:
        return True
    nests = any(is_table(one) for one in table.iterdescendants())
    holds_headings = any(one.tag in _HEADINGS and len(own) < 4 for one in table.iterdescendants())
    rows = {row for row, _ in grid.cells}
    columns = {column for _, column in grid.cells}
    short = sum(len(cell.text) <= 60 for cell in own)
    makes_table = len(rows) > 1 and len(columns) > 1 and short * 2 > len(own)
    linked = all(text_of(one).linked for one in table.iter("td", "th") if len(one))
    only_links = linked and bool(table.find(".//a") is not None)
    return ((nests or holds_headings) and not makes_table) or (only_links and not _has_figures(own))


def _has_figures(cells: list[Cell]) -> bool:
    return any(sign.isdigit() for cell in cells for sign in cell.text)
