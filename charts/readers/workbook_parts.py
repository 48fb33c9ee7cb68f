"""What stands in a workbook's package: its sheets in order, their states, comments and text boxes.

Pictures, charts, themes, names and links are never opened: they hold no value of a chart.
"""

from __future__ import annotations

import posixpath
import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from charts.readers.sheet_xml import position
from charts.readers.source import MEGABYTE, UnusableSourceError
from charts.readers.workbook_styles import Style, styles_of
from charts.readers.xml_parts import parsed
from charts.readers.zip_package import Package

if TYPE_CHECKING:
    from lxml.etree import _Element

_SMALL_PART: Final = 4 * MEGABYTE
_STRINGS_PART: Final = 8 * MEGABYTE
_MOST_STRING_MARKS: Final = 1_000_000
_MOST_SHEETS: Final = 200
_THREADED: Final = re.compile(r"\A\[Threaded comment\].*?\n\s*(?:Comment|Kommentar):\s*", re.DOTALL)


@dataclass(frozen=True, slots=True)
class SheetPart:
    """One worksheet of the package, before it is parsed."""

    title: str
    hidden: bool
    part: str


@dataclass(frozen=True, slots=True)
class BookParts:
    """The sheets of a workbook in their order, and whether its days count from 1904."""

    sheets: tuple[SheetPart, ...]
    from_1904: bool
    strings_part: str
    styles_part: str


def book_parts(package: Package, workbook_part: str) -> BookParts:
    """The parts that the workbook itself names."""
    root = parsed(package.read(workbook_part, _SMALL_PART))
    linked = _linked(package, workbook_part)
    sheets = []
    for element in list(root.iter("{*}sheet"))[:_MOST_SHEETS]:
        kind, part = linked.get(_link_of(element), ("", ""))
        if kind == "worksheet" and part in package:
            hidden = element.get("state", "visible") != "visible"
            sheets.append(SheetPart(element.get("name") or "", hidden, part))
    properties = next(root.iter("{*}workbookPr"), None)
    from_1904 = properties is not None and properties.get("date1904") in ("1", "true")
    by_kind = dict(linked.values())
    return BookParts(
        tuple(sheets), from_1904, by_kind.get("sharedstrings", ""), by_kind.get("styles", "")
    )


def comments_of(package: Package, sheet: SheetPart) -> dict[tuple[int, int], str]:
    """The comments of ``sheet`` by 0-based row and column."""
    found: dict[tuple[int, int], str] = {}
    for kind, part in _linked(package, sheet.part).values():
        if kind != "comments" or part not in package:
            continue
        for element in parsed(package.read(part, _SMALL_PART)).iter("{*}comment"):
            place = position(element.get("ref", ""))
            text = _THREADED.sub("", "".join(_texts(element))).strip()
            if place is not None and text:
                found[place] = text
    return found


def text_boxes_of(package: Package, sheet: SheetPart) -> tuple[str, ...]:
    """Sentences that float over the cells of ``sheet``, one a paragraph."""
    found: list[str] = []
    for kind, part in _linked(package, sheet.part).values():
        if kind == "drawing" and part in package:
            paragraphs = parsed(package.read(part, _SMALL_PART)).iter("{*}p")
            found.extend("".join(_texts(paragraph)).strip() for paragraph in paragraphs)
    return tuple(text for text in found if text)


def strings_of(
    package: Package, parts: BookParts, mend: Callable[[_Element], None]
) -> list[_Element]:
    """The texts that cells refer to by number; ``mend`` puts broken letters right.

    Raises UnusableSourceError when there are more than any size chart has.
    """
    data = package.read(parts.strings_part, _STRINGS_PART)
    if not data:
        return []
    if data.count(b"<") > _MOST_STRING_MARKS:
        raise UnusableSourceError("too-large", f"{len(data) // MEGABYTE} MB")
    root = parsed(data)
    mend(root)
    return list(root.iterfind("{*}si"))


def book_styles(package: Package, parts: BookParts) -> list[Style]:
    """The styles that cells refer to by number."""
    data = package.read(parts.styles_part, _SMALL_PART)
    return styles_of(parsed(data)) if data else []


def _linked(package: Package, part: str) -> Mapping[str, tuple[str, str]]:
    """Link id to (last word of its kind in lower case, part) of all that ``part`` names."""
    folder, name = posixpath.split(part)
    links = package.read(f"{folder}/_rels/{name}.rels", _SMALL_PART)
    if not links:
        return {}
    found = {}
    for element in parsed(links).iter("{*}Relationship"):
        if element.get("TargetMode") == "External":
            continue
        target = element.get("Target", "")
        path = target.lstrip("/") if target.startswith("/") else posixpath.join(folder, target)
        kind = element.get("Type", "").rpartition("/")[2].lower()
        found[element.get("Id", "")] = (kind, posixpath.normpath(path))
    return found


def _link_of(element: _Element) -> str:
    return next((str(v) for k, v in element.attrib.items() if str(k).endswith("}id")), "")


def _texts(element: _Element) -> Iterable[str]:
    return (piece.text or "" for piece in element.iter("{*}t"))


def main_part(package: Package) -> str | None:
    """The workbook's own part; None when the package holds no workbook that can be read."""
    if "xl/workbook.xml" in package:
        return "xl/workbook.xml"
    if "[Content_Types].xml" not in package:
        return None
    for element in parsed(package.read("[Content_Types].xml", _SMALL_PART)).iter("{*}Override"):
        kind, name = element.get("ContentType", ""), element.get("PartName", "").lstrip("/")
        if "main+xml" in kind and ("spreadsheetml" in kind or "ms-excel" in kind):
            return name if name in package else None
    return None
