"""The text of a piece of an open document as a person sees it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Final

from charts.readers.open_document_looks import Look, Looks
from charts.readers.open_document_parts import OFFICE, TABLE, TEXT
from charts.readers.plain_text import tidy
from charts.readers.raised_text import Piece, on_one_line

if TYPE_CHECKING:
    from lxml.etree import _Element

PARAGRAPHS: Final = (f"{TEXT}p", f"{TEXT}h")
# fmt: off
_UNSEEN: Final = frozenset((
    f"{OFFICE}annotation", f"{TABLE}table", f"{TEXT}note-body", f"{TEXT}tracked-changes",
    f"{TEXT}hidden-text",
))
# fmt: on
_SIGNS: Final = {f"{TEXT}tab": " ", f"{TEXT}line-break": "\n", f"{TEXT}s": " "}
_DEEPEST: Final = 50


class SeenText:
    """Text collected from paragraphs: raised figures keep their sense, struck ones are left out."""

    def __init__(self, looks: Looks) -> None:
        self._looks = looks
        self._pieces: list[Piece] = []
        self._gone: list[str] = []

    def add(self, paragraph: _Element) -> None:
        """One paragraph, on a new line."""
        if self._pieces:
            self._pieces.append(Piece("\n"))
        self._walk(paragraph, Look(), 0)

    def told(self) -> tuple[str, bool]:
        """What is to be seen, and whether a part of it, or all of it, is struck out."""
        text = tidy(on_one_line(self._pieces))
        return text or tidy(" ".join(self._gone)), bool(self._gone)

    def _walk(self, element: _Element, around: Look, depth: int) -> None:
        name = element.get(f"{TEXT}style-name")
        look = self._looks.of(name) if name and depth else around
        self._put(element.text, look)
        for child in element.iterchildren("*"):
            if child.tag in _SIGNS:
                self._put(_SIGNS[child.tag], look)
            elif child.tag not in _UNSEEN and depth < _DEEPEST:
                self._walk(child, look, depth + 1)
            self._put(child.tail, look)

    def _put(self, text: str | None, look: Look) -> None:
        blank_again = text == " " and bool(self._pieces) and self._pieces[-1].text.endswith(" ")
        if not text or blank_again:
            return
        if look.struck:
            self._gone.append(text)
        else:
            self._pieces.append(Piece(text, look.raised, look.lowered))


def cell_text(cell: _Element, looks: Looks) -> tuple[str, bool]:
    """What stands in a cell, a paragraph a line, and whether some of it is struck out."""
    seen = SeenText(looks)
    for paragraph in _paragraphs(cell, 0):
        seen.add(paragraph)
    return seen.told()


def comment_of(cell: _Element) -> str:
    """What somebody noted at a cell."""
    notes = cell.iterchildren(f"{OFFICE}annotation")
    lines = [tidy("".join(map(str, p.itertext()))) for one in notes for p in one.iter(*PARAGRAPHS)]
    return "\n".join(line for line in lines if line)


def _paragraphs(element: _Element, depth: int) -> Iterator[_Element]:
    for child in element.iterchildren("*"):
        if child.tag in PARAGRAPHS:
            yield child
        elif child.tag not in _UNSEEN and depth < _DEEPEST:
            yield from _paragraphs(child, depth + 1)
