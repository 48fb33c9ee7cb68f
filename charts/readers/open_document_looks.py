"""The styles of an open document: what is struck out or raised, and number formats as codes.

A number format is written there as a row of elements; it is told here in the code that
workbooks use (``d-mmm``, ``0.0" cm"``), so that the importer meets one notation only.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from charts.readers.open_document_parts import NUMBER, STYLE, TABLE

if TYPE_CHECKING:
    from lxml.etree import _Element

_KINDS: Final = (
    "number-style",
    "date-style",
    "time-style",
    "percentage-style",
    "currency-style",
    "text-style",
)
_LONGEST_CHAIN: Final = 20


@dataclass(frozen=True, slots=True)
class Look:
    """What one style says: of its text, its row or sheet, and its numbers."""

    struck: bool = False
    raised: bool = False
    lowered: bool = False
    hidden: bool = False
    number_format: str = ""


class Looks:
    """Every style of a document by its name, looked up once."""

    def __init__(self, roots: Iterable[_Element]) -> None:
        self._styles: dict[str, _Element] = {}
        self._codes: dict[str, str] = {}
        self._known: dict[str, Look] = {"": Look()}
        for root in roots:
            for style in root.iter(f"{STYLE}style"):
                self._styles.setdefault(style.get(f"{STYLE}name", ""), style)
            for kind in _KINDS:
                for style in root.iter(f"{NUMBER}{kind}"):
                    self._codes.setdefault(style.get(f"{STYLE}name", ""), _code(style))

    def of(self, name: str | None) -> Look:
        """The look of the style ``name``, with what it takes from the styles behind it."""
        name = name or ""
        if name not in self._known:
            self._known[name] = self._look(name)
        return self._known[name]

    def _look(self, name: str) -> Look:
        chain = list(self._chain(name))
        line = _first(chain, "text-properties", f"{STYLE}text-line-through-style")
        kind = _first(chain, "text-properties", f"{STYLE}text-line-through-type")
        level = _first(chain, "text-properties", f"{STYLE}text-position").partition(" ")[0]
        shown = _first(chain, "table-properties", f"{TABLE}display")
        data = next((d for one in chain if (d := one.get(f"{STYLE}data-style-name"))), "")
        return Look(
            struck=(line or kind or "none") != "none",
            raised=level == "super" or (level.rstrip("%").isdigit() and level != "0%"),
            lowered=level == "sub" or level.startswith("-"),
            hidden=shown == "false",
            number_format=self._codes.get(data, ""),
        )

    def _chain(self, name: str) -> Iterable[_Element]:
        for _ in range(_LONGEST_CHAIN):
            style = self._styles.get(name)
            if style is None:
                return
            yield style
            name = style.get(f"{STYLE}parent-style-name", "")


def _first(chain: Iterable[_Element], group: str, attribute: str) -> str:
    for style in chain:
        for properties in style.iterfind(f"{STYLE}{group}"):
            if said := properties.get(attribute):
                return said
    return ""


def _code(style: _Element) -> str:
    parts = []
    for element in style.iterchildren(f"{NUMBER}*"):
        draw = _DRAWN.get(element.tag.removeprefix(NUMBER))
        if draw is not None:
            parts.append(draw(element))
    return "".join(parts)


def _is_long(element: _Element) -> bool:
    return element.get(f"{NUMBER}style") == "long"


def _number(element: _Element) -> str:
    whole = _count(element, "min-integer-digits", 1)
    places = _count(element, "decimal-places", 0)
    return ("0" * whole or "#") + ("." + "0" * places if places else "")


def _fraction(element: _Element) -> str:
    bottom = element.get(f"{NUMBER}denominator-value") or "?" * max(
        1, _count(element, "min-denominator-digits", 1)
    )
    whole = "# " if element.get(f"{NUMBER}min-integer-digits") is not None else ""
    return f"{whole}{'?' * max(1, _count(element, 'min-numerator-digits', 1))}/{bottom}"


def _month(element: _Element) -> str:
    named = element.get(f"{NUMBER}textual") == "true"
    return ("mmmm" if _is_long(element) else "mmm") if named else _twice(element, "m")


def _twice(element: _Element, letter: str) -> str:
    return letter * 2 if _is_long(element) else letter


def _count(element: _Element, name: str, missing: int) -> int:
    text = element.get(f"{NUMBER}{name}", "")
    return min(int(text), 12) if text.isascii() and text.isdigit() else missing


def _literal(element: _Element) -> str:
    text = element.text or ""
    if not text:
        return ""
    return "".join(f"\\{sign}" for sign in text) if '"' in text else f'"{text}"'


_DRAWN: Final[Mapping[str, Callable[[_Element], str]]] = {
    "number": _number,
    "fraction": _fraction,
    "scientific-number": lambda one: _number(one) + "E+00",
    "text": _literal,
    "currency-symbol": _literal,
    "text-content": lambda _: "@",
    "day": lambda one: _twice(one, "d"),
    "month": _month,
    "year": lambda one: "yyyy" if _is_long(one) else "yy",
    "day-of-week": lambda one: "dddd" if _is_long(one) else "ddd",
    "hours": lambda one: _twice(one, "h"),
    "minutes": lambda one: _twice(one, "m"),
    "seconds": lambda one: _twice(one, "s"),
    "am-pm": lambda _: "AM/PM",
}
