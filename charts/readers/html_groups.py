"""Blocks of a web page that only look like a table: rows or columns of boxes, definition lists.

Boxes make a table when neighbours of one kind hold the same number of short texts, and some of
them figures. Whether a box is a row or a column is told by its class; the importer finds the
direction of a table by what stands in it, so a wrong guess here turns nothing round.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, Final

from charts.readers.html_tables import is_table
from charts.readers.html_text import UNSEEN, is_hidden, text_of
from charts.readers.page_outline import PageTable
from charts.sheet import Cell

if TYPE_CHECKING:
    from lxml.etree import _Element

_LONGEST: Final = 80
_MOST_BOXES: Final = 400
_BOXES: Final = frozenset(
    ("div", "section", "article", "ul", "ol", "dl", "li", "main", "form", "fieldset", "p")
)
_COLUMN_WORDS: Final = ("col", "spalte", "colonne", "kolom")
Texts = tuple[str, ...]


def grids_of_blocks(page: _Element) -> dict[_Element, PageTable]:
    """The outermost elements of ``page`` whose children make a table."""
    found: dict[_Element, PageTable] = {}
    for element in page.iter(*_BOXES):
        inside = any(one in found or is_table(one) for one in element.iterancestors())
        if inside or not 2 <= len(element) <= _MOST_BOXES:
            continue
        grid = _terms(element) if element.tag == "dl" else _boxes(element)
        if grid is not None:
            found[element] = grid
    return found


def _boxes(element: _Element) -> PageTable | None:
    """A table of the children of ``element``, each a row or each a column of boxes."""
    children = _seen_children(element)
    groups = [(one, texts) for one in children if (texts := _texts(one)) is not None]
    lone = [one for one in children if not len(one) and text_of(one).text]
    if len(groups) < 2 or len(groups) + len(lone) < len(children):
        return None
    rows = [texts for _, texts in groups]
    if not _even(rows):
        return None
    if all(_is_column(one) for one, _ in groups):
        rows = list(zip(*rows, strict=True))
    first = children.index(groups[0][0])
    return _grid(
        rows,
        context=[text_of(one).text for one in lone if children.index(one) < first],
        notes=[text_of(one).text for one in lone if children.index(one) > first],
    )


def _terms(element: _Element) -> PageTable | None:
    """A definition list of several definitions to a term: each term is a row.

    One definition to a term is left to the reader of sentences, which knows whether the terms
    are sizes, or the dimensions of one size.
    """
    rows: list[list[str]] = []
    for one in element:
        if one.tag == "dt":
            rows.append([text_of(one).text])
        elif one.tag == "dd" and rows:
            rows[-1].append(text_of(one).text)
        elif one.tag == "div":
            return _boxes(element)
    texts = [tuple(row) for row in rows]
    if len(texts) < 2 or len(texts[0]) < 3 or not _even(texts):
        return None
    return _grid(texts)


def _texts(element: _Element) -> Texts | None:
    """The texts of a row of boxes; None when ``element`` holds anything else."""
    if (element.text or "").strip() or is_hidden(element):
        return None
    texts = []
    for box in _seen_children(element):
        nested = any(len(inner) and inner.tag in _BOXES for inner in box.iter())
        if is_table(box) or nested or (box.tail or "").strip():
            return None
        texts.append(text_of(box).text)
    return tuple(texts) if len(texts) > 1 else None


def _seen_children(element: _Element) -> list[_Element]:
    return [one for one in element.iterchildren("*") if one.tag not in UNSEEN]


def _even(rows: Sequence[Sequence[str]]) -> bool:
    """Whether rows of short texts are equally long and hold figures as a chart does."""
    if len({len(row) for row in rows}) != 1 or len(rows[0]) < 2:
        return False
    cells = [text for row in rows for text in row]
    figures = sum(any(sign.isdigit() for sign in text) for text in cells)
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
        columns=len(rows[0]),
        context=tuple(context),
        notes=tuple(notes),
    )


def _placed(rows: Sequence[Sequence[str]]) -> Iterator[tuple[tuple[int, int], Cell]]:
    for number, row in enumerate(rows):
        for column, text in enumerate(row):
            if text:
                yield (number, column), Cell(text)
