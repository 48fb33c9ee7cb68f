"""The text of a piece of a web page as a person sees it: breaks kept, hidden parts left out."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Final

from charts.readers.plain_text import tidy
from charts.readers.raised_text import Piece, on_one_line

if TYPE_CHECKING:
    from lxml.etree import _Element

# fmt: off
UNSEEN: Final = frozenset((
    "script", "style", "template", "head", "svg", "math", "iframe", "object", "canvas", "audio",
    "video", "select", "option", "datalist", "textarea", "noframes", "map",
))
"""Elements whose text nobody reads as part of the page."""
BLOCKS: Final = frozenset((
    "address", "article", "aside", "blockquote", "body", "caption", "center", "dd", "details",
    "div", "dl", "dt", "fieldset", "figcaption", "figure", "footer", "form", "h1", "h2", "h3",
    "h4", "h5", "h6", "header", "hr", "html", "legend", "li", "main", "nav", "ol", "p", "pre",
    "section", "summary", "table", "tbody", "td", "tfoot", "th", "thead", "tr", "ul",
))
# fmt: on
_STRUCK: Final = frozenset(("s", "strike", "del"))
_BLANKS: Final = re.compile(r"[ \t\r\n\f]+")
_BREAK: Final = re.compile(r"[ \t]*\n[ \t\n]*")
_OUT_OF_SIGHT: Final = re.compile(
    r"display\s*:\s*none|visibility\s*:\s*(?:hidden|collapse)", re.IGNORECASE
)


def is_hidden(element: _Element) -> bool:
    """Whether the element itself is out of sight; its ancestors are not asked."""
    if element.get("hidden") is not None:
        return True
    style = element.get("style")
    return style is not None and _OUT_OF_SIGHT.search(style) is not None


@dataclass(slots=True)
class InlineText:
    """Collects text until a block ends."""

    pieces: list[Piece] = field(default_factory=list)
    outside_links: bool = False
    after_span: bool = False

    def add(self, text: str | None, element: _Element | None, *, linked: bool = False) -> None:
        """``text`` as it stands inside ``element``: raised, lowered, or on the line."""
        if not text:
            return
        text = _BLANKS.sub(" ", text)
        tag = element.tag if element is not None else ""
        if self.after_span and self._would_glue(text):
            self.pieces.append(Piece("\n"))
        self.after_span = False
        self.outside_links |= bool(text.strip()) and not linked
        self.pieces.append(Piece(text, raised=tag == "sup", lowered=tag == "sub"))

    def line_break(self) -> None:
        """A new line inside the block."""
        self.pieces.append(Piece("\n"))

    def text(self) -> str:
        """What has been collected, with its line breaks."""
        return tidy(_BREAK.sub("\n", re.sub(r" +", " ", on_one_line(self.pieces))))

    def _would_glue(self, text: str) -> bool:
        last = self.pieces[-1].text[-1:] if self.pieces else ""
        return last.isalnum() and text[:1].isalnum()


@dataclass(frozen=True, slots=True)
class CellText:
    """The text of a cell, and what else is to be said of it."""

    text: str
    struck: bool = False
    linked: bool = False
    part_hidden: bool = False


def text_of(element: _Element) -> CellText:
    """The text inside ``element`` without nested tables and hidden parts.

    Blocks inside become lines; two neighbouring spans are never glued into one figure.
    """
    if not len(element):
        return CellText(tidy(_BLANKS.sub(" ", element.text or "")))
    return _CellWalk(element).text()


class _CellWalk:
    """One pass over the inside of a cell."""

    def __init__(self, element: _Element) -> None:
        self._element = element
        self._collected = InlineText()
        self._gone: list[str] = []
        self._part_hidden = False
        self._struck = self._links = 0

    def text(self) -> CellText:
        from lxml import etree

        walker = etree.iterwalk(self._element, events=("start", "end", "comment", "pi"))
        for event, inner in walker:
            if event not in ("start", "end"):
                self._collect(inner.getparent(), inner.tail)
                continue
            step = 1 if event == "start" else -1
            self._struck += step * (inner.tag in _STRUCK)
            self._links += step * (inner.tag == "a")
            if event == "start" and not self._enter(inner):
                walker.skip_subtree()
            elif event == "end" and inner is not self._element:
                self._leave(inner)
        text = self._collected.text()
        if not text and self._gone:
            text = tidy(" ".join(self._gone))
        linked = bool(text) and not self._collected.outside_links and not self._gone
        text = text or _picture_text(self._element)
        return CellText(text, bool(self._gone), linked, self._part_hidden)

    def _enter(self, inner: _Element) -> bool:
        """Meet ``inner``; False when nothing inside it is to be seen here."""
        if inner is not self._element:
            hidden = is_hidden(inner)
            self._part_hidden |= hidden and any(str(text).strip() for text in inner.itertext())
            if hidden or inner.tag in UNSEEN or inner.tag == "table":
                return False
            if inner.tag == "br" or inner.tag in BLOCKS:
                self._collected.line_break()
        self._collect(inner, inner.text)
        return True

    def _leave(self, inner: _Element) -> None:
        if inner.tag in BLOCKS:
            self._collected.line_break()
        self._collected.after_span = inner.tag == "span" and not inner.tail
        self._collect(inner.getparent(), inner.tail)

    def _collect(self, around: _Element | None, text: str | None) -> None:
        if self._struck and text and text.strip():
            self._gone.append(text.strip())
        else:
            self._collected.add(text, around, linked=self._links > 0)


def _picture_text(element: _Element) -> str:
    """The words that stand for a picture in a cell that holds nothing else."""
    words = [image.get("alt") or "" for image in element.iter("img")]
    return tidy(" ".join(words))
