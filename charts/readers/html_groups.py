"""Blocks of a web page that only look like a table: rows or columns of boxes, definition lists.

Boxes make a table when neighbours of one kind hold the same number of short texts, and some of
them figures. Whether a box is a row or a column is told by its class; the importer finds the
direction of a table by what stands in it, so a wrong guess here turns nothing round.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, Final

from charts.readers.captured.cells import cell_table
from charts.readers.captured.lines import Line
from charts.readers.captured.prose import prose_table
from charts.readers.captured.values import is_value
from charts.readers.html_tables import is_table
from charts.readers.html_text import UNSEEN, is_hidden, text_of
from charts.readers.page_outline import PageTable
from charts.sheet import Cell
from charts.size_labels import read_label

if TYPE_CHECKING:
    from lxml.etree import _Element

_LONGEST: Final = 80
_MOST_BOXES: Final = 400
_MOST_AROUND: Final = 6
_BOXES: Final = frozenset(
    ("div", "section", "article", "ul", "ol", "dl", "li", "main", "form", "fieldset", "p")
)
_COLUMN_WORDS: Final = ("col", "spalte", "colonne", "kolom")
_MOST_COLUMNS: Final = 30
_WIDTH: Final = re.compile(
    r"repeat\(\s*(\d{1,2})\s*,|column-count\s*:\s*(\d{1,2})|\b(?:grid-)?col(?:umn)?s-(\d{1,2})\b",
    re.IGNORECASE,
)
_TRACKS: Final = re.compile(r"grid-template-columns\s*:\s*([^;()]+)", re.IGNORECASE)
Texts = tuple[str, ...]


def grids_of_blocks(page: _Element) -> dict[_Element, PageTable]:
    """The outermost elements of ``page`` whose children make a table."""
    found: dict[_Element, PageTable] = {}
    for element in page.iter(*_BOXES, "span", "body"):
        inside = any(one in found or is_table(one) for one in element.iterancestors())
        inside = inside or any(map(is_table, element))  # a box of tables is no row of boxes
        if inside or not 2 <= len(element) <= _MOST_BOXES:
            continue
        grid = _terms(element) if element.tag == "dl" else _boxes(element)
        if grid is not None:
            found[element] = grid
    return found


def _boxes(element: _Element) -> PageTable | None:
    """A table of the boxes in ``element``, each a row or each a column."""
    seen = _seen_children(element)
    children = _spliced(seen)
    if any(one.tag == "br" for one in children):
        return _broken(children)
    groups = [(one, texts) for one in children if (texts := _texts(one)) is not None]
    lone = [one for one in children if not len(one) and text_of(one).text]
    filled = sum(bool(text_of(one).text) for one in children)  # an empty box only keeps distance
    if len(groups) < 2 or len(groups) + len(lone) < filled:
        return _flat(element, children) if len(lone) == len(children) else None
    places = [children.index(one) for one, _ in groups]
    between = [one for one in lone if places[0] < children.index(one) < places[-1]]
    if between and len(children) > len(seen):
        return None  # what stands between boxes of rows parts tables
    rows = [texts for _, texts in groups]
    if not _even(rows) or _sizes_come_second(rows):
        return None if lone else _headed(rows)
    if all(_is_column(one) for one, _ in groups):
        if between:
            return None
        rows = list(zip(*rows, strict=True))
    elif between:
        rows = [_texts(one) or (text_of(one).text,) for one in children[places[0] : places[-1] + 1]]
    return _grid(
        rows,
        context=[text_of(one).text for one in lone if children.index(one) < places[0]],
        notes=[text_of(one).text for one in lone if children.index(one) > places[-1]],
    )


def _sizes_come_second(rows: Sequence[Texts]) -> bool:
    """Whether a box of sizes stands behind the first, and boxes of nothing but figures behind it.

    As many headings as sizes would look like the first row of a table.
    """
    heads, sizes, *others = rows
    named = not any(map(is_value, heads)) and not any(map(read_label, heads))
    sized = all(read_label(one) is not None for one in sizes)
    return named and sized and bool(others) and all(is_value(one) for row in others for one in row)


def _headed(rows: Sequence[Texts]) -> PageTable | None:
    """One box of headings, and beside it a box for each of them, perhaps after one of sizes."""
    heads, *others = rows
    known = len(others) - len(heads)
    if known not in (0, 1) or len(others) < 2 or not _even(others) or any(map(is_value, heads)):
        return None
    return _grid([(head, *row) for head, row in zip(("",) * known + heads, others, strict=True)])


def _spliced(children: list[_Element]) -> list[_Element]:
    """Heads and bodies that only hold rows are replaced by their rows."""
    spliced: list[_Element] = []
    for one in children:
        inner = _seen_children(one)
        holds_rows = _texts(one) is None and all(_texts(row) is not None for row in inner)
        spliced.extend(inner if inner and holds_rows else [one])
    return spliced


def _broken(children: list[_Element]) -> PageTable | None:
    """Rows of inline boxes with a line break behind each."""
    rows: list[list[str]] = [[]]
    for one in children:
        if (one.tail or "").strip():
            return None
        if one.tag == "br":
            rows.append([])
        else:
            rows[-1].append(text_of(one).text)
    rows = [row for row in rows if row]
    return _grid(rows) if len(rows) > 1 and _even(rows) else None


def _flat(element: _Element, children: list[_Element]) -> PageTable | None:
    """Cells one after the other, as many in a row as the page says or as come out even."""
    texts = [text_of(one).text for one in children]
    width = _said_width(element)
    if width is None:
        lines = [Line(text, number) for number, text in enumerate(texts)]
        table = cell_table(lines)
        if table is None or table.used < len(lines):
            return None
        return _grid([[cell.text for cell in row] for row in table.rows])
    rows = [tuple(texts[at : at + width]) for at in range(0, len(texts), width)]
    return _grid(rows) if len(rows) > 1 and _even(rows) else None


def _said_width(element: _Element) -> int | None:
    """How many columns the page's own style, class or role gives the element."""
    said = element.get("aria-colcount") or ""
    found = _WIDTH.search(f"{element.get('style') or ''} {element.get('class') or ''} cols-{said}")
    number = next((one for one in found.groups() if one), None) if found else None
    if number is None:
        tracks = _TRACKS.search(element.get("style") or "")
        return len(tracks[1].split()) if tracks and len(tracks[1].split()) > 1 else None
    return int(number) if 2 <= int(number) <= _MOST_COLUMNS else None


def terms_of(element: _Element) -> list[str]:
    """A definition list as lines: ``Chest: 86-91 cm``."""
    lines: list[str] = []
    for one in element.iter("dt", "dd"):
        text = text_of(one).text.replace("\n", " | ")
        if one.tag == "dt" or not lines:
            lines.append(f"{text.rstrip(':')}:")
        else:
            lines[-1] += f" {text}" if lines[-1].endswith(":") else f" | {text}"
    return [line for line in lines if line.strip(": ")]


def _terms(element: _Element) -> PageTable | None:
    """A definition list of several definitions to a term: each term is a row.

    Lists whose lines make sentences are left to the reader of sentences, which knows whether
    the terms are sizes, or the dimensions of one size.
    """
    lines = [Line(text, number) for number, text in enumerate(terms_of(element))]
    if prose_table(lines) is not None:
        return None
    rows: list[list[str]] = []
    for one in element.iter("dt", "dd"):
        if one.tag == "dt":
            rows.append([text_of(one).text])
        elif rows:
            rows[-1].append(text_of(one).text)
    even = len(rows) > 1 and len(rows[0]) > 2 and _even(rows)
    return _grid(rows) if even else None


def _texts(element: _Element) -> Texts | None:
    """The texts of a row of boxes; None when ``element`` holds anything else."""
    if (element.text or "").strip() or is_hidden(element) or _names_and_values(element):
        return None
    texts = []
    for box in _seen_children(element):
        if is_table(box) or not _is_cell(box) or (box.tail or "").strip():
            return None
        texts.append(text_of(box).text)
    return tuple(texts) if len(texts) > 1 else None


def _names_and_values(element: _Element) -> bool:
    """A list of terms with one definition each: lines of one size, and no row of cells."""
    tags = [one.tag for one in _seen_children(element)]
    return element.tag == "dl" and tags == ["dt", "dd"] * (len(tags) // 2)


def _is_cell(box: _Element) -> bool:
    """Whether a box holds one text: nothing is nested in it, but for boxes around all of it."""
    if not any(len(inner) and inner.tag in _BOXES for inner in box.iter()):
        return True
    inner = box
    for _ in range(_MOST_AROUND):
        alone = len(inner) == 1 and not (inner.text or "").strip()
        if not alone or (inner[0].tail or "").strip():
            break
        inner = inner[0]
    return not any(one.tag in _BOXES or is_table(one) for one in inner.iterdescendants())


def _seen_children(element: _Element) -> list[_Element]:
    return [one for one in element.iterchildren("*") if one.tag not in UNSEEN]


def _even(rows: Sequence[Sequence[str]]) -> bool:
    """Whether rows of short texts are equally long and hold values as a chart does."""
    if len({len(row) for row in rows}) != 1 or len(rows[0]) < 2:
        return False
    cells = [text for row in rows for text in row]
    figures = sum(is_value(text) for text in cells)
    return figures * 4 >= len(cells) and all(len(text) <= _LONGEST for text in cells)


def _is_column(element: _Element) -> bool:
    words = (element.get("class") or "").lower()
    return any(word in words for word in _COLUMN_WORDS)


def _grid(
    rows: Sequence[Sequence[str]], context: Sequence[str] = (), notes: Sequence[str] = ()
) -> PageTable:
    return PageTable(
        cells=dict(_placed(rows)),
        rows=len(rows),
        columns=max(map(len, rows)),
        context=tuple(context),
        notes=tuple(notes),
    )


def _placed(rows: Sequence[Sequence[str]]) -> Iterator[tuple[tuple[int, int], Cell]]:
    for number, row in enumerate(rows):
        for column, text in enumerate(row):
            if text:
                yield (number, column), Cell(text)
