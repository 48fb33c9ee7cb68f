"""The text of a paragraph in a word-processor document (.docx) as a person sees it.

What a tracked change has deleted or moved away is left out, what it has inserted stays.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING, Final

from charts.readers.plain_text import tidy
from charts.readers.raised_text import Piece, on_one_line

if TYPE_CHECKING:
    from lxml.etree import _Element

WORD: Final = "{http://schemas.openxmlformats.org/wordprocessingml/2006/main}"
STRICT_WORD: Final = b"http://purl.oclc.org/ooxml/wordprocessingml/main"
_COMPATIBLE: Final = "{http://schemas.openxmlformats.org/markup-compatibility/2006}"
GONE: Final = frozenset(
    (f"{WORD}del", f"{WORD}moveFrom", f"{WORD}delText", f"{_COMPATIBLE}Fallback")
)
"""What a reader of the document does not see: deleted text, and a drawing's second telling."""
_OFF: Final = ("0", "false", "off", "none")
_SIGNS: Final = {
    f"{WORD}tab": " ",
    f"{WORD}br": "\n",
    f"{WORD}cr": "\n",
    f"{WORD}noBreakHyphen": "-",
}
_MATH: Final = "{http://schemas.openxmlformats.org/officeDocument/2006/math}"
_SYMBOLS: Final = {"A3": "≤", "B3": "≥", "B1": "±", "B0": "°", "B4": "×", "BB": "≈", "2D": "-"}
"""Signs of the font Symbol, by the end of their number."""
_UNKNOWN_SIGN: Final = "?"  # a sign that cannot be told must not vanish from before a figure
_NOTES: Final = (f"{WORD}footnoteReference", f"{WORD}endnoteReference")
_DEEPEST: Final = 60


class SeenRuns:
    """Text collected from paragraphs, with what is struck out kept apart.

    Attributes:
        notes: the numbers of the footnotes that the text refers to.
    """

    def __init__(self) -> None:
        self.notes: list[str] = []
        self._pieces: list[Piece] = []
        self._gone: list[str] = []

    def add(self, paragraph: _Element) -> None:
        """One paragraph, on a new line."""
        if self._pieces:
            self._pieces.append(Piece("\n"))
        self._walk(paragraph, 0)

    def told(self) -> tuple[str, bool]:
        """What is to be seen, and whether a part of it, or all of it, is struck out."""
        text = tidy(on_one_line(self._pieces))
        return text or tidy(" ".join(self._gone)), bool(self._gone)

    def _walk(self, element: _Element, depth: int) -> None:
        for child in element.iterchildren("*"):
            if child.tag == f"{WORD}r":
                self._run(child)
            elif child.tag == f"{_MATH}oMath":
                self._pieces.append(Piece(_formula(child)))
            elif child.tag not in GONE and child.tag != f"{WORD}pPr" and depth < _DEEPEST:
                self._walk(child, depth + 1)

    def _run(self, run: _Element) -> None:
        properties = run.find(f"{WORD}rPr")
        if is_on(properties, "vanish"):
            return
        struck = is_on(properties, "strike") or is_on(properties, "dstrike")
        level = _level(properties)
        for child in run.iterchildren("*"):
            if child.tag in _NOTES:
                self.notes.append(child.get(f"{WORD}id", ""))
            text = _sign(child)
            if struck and text.strip():
                self._gone.append(text)
            elif text:
                self._pieces.append(Piece(text, level == "superscript", level == "subscript"))


def paragraph_text(paragraph: _Element) -> str:
    """The text of one paragraph."""
    seen = SeenRuns()
    seen.add(paragraph)
    return seen.told()[0]


def inside(element: _Element, *, depth: int = 0) -> Iterator[_Element]:
    """The paragraphs, tables, rows and cells right inside ``element``, through its wrappers."""
    kinds = (f"{WORD}p", f"{WORD}tbl", f"{WORD}tr", f"{WORD}tc")
    for child in element.iterchildren("*"):
        if child.tag in kinds:
            yield child
        elif child.tag not in GONE and not child.tag.endswith("Pr") and depth < _DEEPEST:
            yield from inside(child, depth=depth + 1)


def _level(properties: _Element | None) -> str:
    """Whether a run stands above or below the line, said by its kind or by its height."""
    height = _value(properties, "position")
    if height.lstrip("-").strip("0"):
        return "subscript" if height.startswith("-") else "superscript"
    return _value(properties, "vertAlign")


def _sign(element: _Element) -> str:
    if element.tag == f"{WORD}t":
        return element.text or ""
    if element.tag == f"{WORD}sym":
        known = element.get(f"{WORD}font", "").lower() == "symbol"
        code = element.get(f"{WORD}char", "")[-2:].upper()
        return _SYMBOLS.get(code, _UNKNOWN_SIGN) if known else _UNKNOWN_SIGN
    return _SIGNS.get(element.tag, "")


def _formula(element: _Element) -> str:
    """A formula on one line: a fraction as `` 1/2``, everything else in its order."""
    if element.tag == f"{_MATH}t":
        return element.text or ""
    if element.tag == f"{_MATH}f":
        parts = [element.find(f"{_MATH}{name}") for name in ("num", "den")]
        top, bottom = ("" if part is None else _formula(part) for part in parts)
        return f" {top}/{bottom}"
    return "".join(_formula(child) for child in element.iterchildren(f"{_MATH}*"))


def is_on(properties: _Element | None, name: str) -> bool:
    """Whether a property that can only be on or off is on."""
    if properties is None or (found := properties.find(f"{WORD}{name}")) is None:
        return False
    return found.get(f"{WORD}val", "1") not in _OFF


def whole(element: _Element | None, name: str, missing: int, most: int) -> int:
    """A whole number that a property says, between 0 and ``most``."""
    text = _value(element, name)
    return min(int(text), most) if text.isascii() and text.isdigit() and len(text) < 8 else missing


def _value(properties: _Element | None, name: str) -> str:
    found = properties.find(f"{WORD}{name}") if properties is not None else None
    return found.get(f"{WORD}val", "") if found is not None else ""
