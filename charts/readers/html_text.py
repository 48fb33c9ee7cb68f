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
    gone: list[str] = field(default_factory=list)
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
    from lxml import etree

    if not len(element):
        return CellText(tidy(_BLANKS.sub(" ", element.text or "")))
    collected = InlineText()
    part_hidden = False
    struck_depth = link_depth = 0
    walker = etree.iterwalk(element, events=("start", "end", "comment", "pi"))
    for event, inner in walker:
        if event not in ("start", "end"):
            _collect(collected, inner.getparent(), inner.tail, struck_depth, link_depth)
            continue
        tag, starts = inner.tag, event == "start"
        struck_depth += (1 if starts else -1) * (tag in _STRUCK)
        link_depth += (1 if starts else -1) * (tag == "a")
        if starts and inner is not element:
            hidden = is_hidden(inner)
            part_hidden |= hidden and bool("".join(inner.itertext()).strip())
            if hidden or tag in UNSEEN or tag == "table":
                walker.skip_subtree()
                continue
        if (tag == "br" and starts) or (tag in BLOCKS and inner is not element):
            collected.line_break()
        if starts:
            _collect(collected, inner, inner.text, struck_depth, link_depth)
        elif inner is not element:
            collected.after_span = tag == "span" and not inner.tail
            parent = inner.getparent()
            _collect(collected, parent, inner.tail, struck_depth, link_depth)
    text = collected.text()
    if not text and collected.gone:
        return CellText(tidy(" ".join(collected.gone)), struck=True, part_hidden=part_hidden)
    linked = bool(text) and not collected.outside_links
    return CellText(text or _picture_text(element), bool(collected.gone), linked, part_hidden)


def _collect(
    collected: InlineText, element: _Element | None, text: str | None, struck: int, linked: int
) -> None:
    if struck and text and text.strip():
        collected.gone.append(text.strip())
    else:
        collected.add(text, element, linked=linked > 0)


def _picture_text(element: _Element) -> str:
    """The words that stand for a picture in a cell that holds nothing else."""
    words = [image.get("alt") or "" for image in element.iter("img")]
    return tidy(" ".join(words))
