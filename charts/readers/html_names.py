"""What names a table of a web page from afar: the label of its tab, the words of its box's id.

A page that switches between women and men often says so only there.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, Final

from charts.dimensions import find_units, read_band
from charts.readers.html_tables import is_table
from charts.readers.html_text import text_of
from charts.readers.plain_text import tidy
from charts.size_labels import LabelKind, read_label

if TYPE_CHECKING:
    from lxml.etree import _Element

_TAB_WORD: Final = re.compile(r"(?:^|[\s_-])(?:tabs?|pills|switch)(?:$|[\s_-])", re.IGNORECASE)
_WORD: Final = re.compile(r"[A-Z]?[^\W\d_A-Z]+")
_LONGEST_NAME: Final = 30
_LONGEST_LABEL: Final = 80
_SAID_IN_DATA: Final = re.compile(
    r"data-(?:[a-z]+-)?(?:title|heading|caption|name|label|tab|category|gender|band|audience|group"
    r"|units?|system|measure(?:ment)?s?)"
)
_UNIT_WORDS: Final = frozenset({"cm", "inch", "inches", "zoll", "metric", "imperial"})
"""Words that name a unit in the id or the class of a box; "in" is a word of many other classes."""
_MOST_TABS: Final = 12
_SWITCHES: Final = frozenset(("a", "button"))
_HERE: Final = re.compile(r"\s*(?:$|#|javascript:)", re.IGNORECASE)
"""Where a link leads that only opens something on its own page."""
_SURE_NAMES: Final = frozenset((LabelKind.ALPHA, LabelKind.AGE))
_HEADINGS: Final = tuple(f"h{level}" for level in range(1, 7))


class TableNames:
    """The names that a page gives its boxes.

    Attributes:
        tab_lists: rows of tabs whose labels are the names of panels, in the page's order.
    """

    def __init__(self, page: _Element) -> None:
        self._by_id = {str(one.get("id")): one for one in page.iterfind(".//*[@id]")}
        self._linked = dict(_links_within(page))
        self.tab_lists: set[_Element] = set()
        self._tab_of: dict[_Element, str] = {}
        for element in page.iterfind(".//*"):
            if element.get("role") == "tablist" or _TAB_WORD.search(element.get("class") or ""):
                self._name_panels(element)

    def of(self, table: _Element, heading: str = "") -> list[str]:
        """The names of the boxes around ``table``, outermost first.

        ``heading`` stands right above it. For whom it is, that tells before any box's id does,
        which often is a copy of the box before.
        """
        around = (*reversed(list(table.iterancestors())), table)
        names = list(dict.fromkeys(name for element in around for name in self._names(element)))
        band = next((word for one in reversed(around) if (word := _band_word(one))), None)
        unit = next((word for one in reversed(around) if (word := _unit_word(one))), None)
        if band is not None and not any(read_band(name) for name in (*names, heading)):
            names.append(band)
        if unit is not None and not any(find_units(name) for name in names):
            names.insert(0, unit)
        return names

    def _names(self, element: _Element) -> Iterator[str]:
        if element in self._tab_of:
            yield self._tab_of[element]
        if (words := self._linked.get(element.get("id") or "")) and element not in self._tab_of:
            yield words
        if words := _name_of_switch(element):
            yield words
        for ident in element.get("aria-labelledby", "").split():
            if ident in self._by_id and (words := text_of(self._by_id[ident]).text):
                yield words
        if not is_table(element) and (words := tidy(element.get("aria-label") or "")):
            yield words[:_LONGEST_LABEL]
        for key, value in element.items():
            words = tidy(str(value))
            if _SAID_IN_DATA.fullmatch(str(key)) and _says_something(words):
                yield words

    def _name_panels(self, tab_list: _Element) -> None:
        """Give the labels of a row of tabs to as many panels that follow it."""
        labels = [text_of(one).text for one in tab_list.iterchildren("*")]
        if not 2 <= len(labels) <= _MOST_TABS or any(
            not label or len(label) > _LONGEST_NAME for label in labels
        ):
            return
        following = list(tab_list.itersiblings("*"))
        nested = [list(one.iterchildren("*")) for one in following[:2]]
        for row in (following, *nested):
            panels = [one for one in row if _holds_table(one)]
            if len(panels) == len(labels) and not _switches_all(labels, panels):
                self.tab_lists.add(tab_list)
                self._tab_of |= dict(zip(panels, labels, strict=True))
                return


def _links_within(page: _Element) -> Iterator[tuple[str, str]]:
    """The boxes to which links on the page lead, with what the links say of them.

    ``<a href="#w">Women</a>`` names the box ``w``, where it says for whom or in which unit.
    """
    for link in page.iterfind(".//a[@href]"):
        target = str(link.get("href"))
        words = text_of(link).text
        short = target[:1] == "#" and len(target) > 1 and 0 < len(words) <= _LONGEST_NAME
        if short and _says_something(words):
            yield target[1:], words


def _name_of_switch(box: _Element) -> str:
    """The size or the people on a link or button of its own right above ``box``, which it opens.

    Of several in a row none is the name of the one box below them.
    """
    switch = box.getprevious()
    if switch is None or switch.tag not in _SWITCHES or (switch.tail or "").strip():
        return ""
    before = switch.getprevious()
    leads_elsewhere = _HERE.match(switch.get("href") or "") is None
    if leads_elsewhere or (before is not None and before.tag in _SWITCHES):
        return ""
    words = " ".join(text_of(switch).text.split())
    label = read_label(words) if 0 < len(words) <= _LONGEST_NAME else None
    named = read_band(words) is not None or (label is not None and label.kind in _SURE_NAMES)
    return words if named and len(words) <= _LONGEST_NAME and _holds_table(box) else ""


def _switches_all(labels: Sequence[str], panels: Sequence[_Element]) -> bool:
    """Whether units are chosen for all that follows: of a panel each, all would show the same."""
    if not all(map(find_units, labels)):
        return False
    return len({_title_in(one) for one in panels}) > 1 or len(set(map(_shape_of, panels))) > 1


def _title_in(panel: _Element) -> str:
    """The first heading in a panel without the unit that it may name."""
    found = next((one for one in panel.iterdescendants(*_HEADINGS)), None)
    words = text_of(found).text if found is not None else ""
    return " ".join(word for word in _WORD.findall(words) if not find_units(word)).lower()


def _shape_of(panel: _Element) -> tuple[int, int]:
    """How many rows and cells stand in a panel."""
    rows = sum(1 for _ in panel.iter("tr"))
    return rows, sum(1 for _ in panel.iter("td", "th"))


def _holds_table(element: _Element) -> bool:
    return is_table(element) or any(is_table(one) for one in element.iterdescendants())


def _says_something(words: str) -> bool:
    """Whether the data of a box names for whom it is or in which unit, and is no code."""
    if len(words) > _LONGEST_LABEL:
        return False
    return words.lower() == "in" or read_band(words) is not None or bool(find_units(words))


def _unit_word(element: _Element) -> str | None:
    """A unit in the id or the classes of a box: ``sizes-cm``."""
    said = f"{element.get('id') or ''} {element.get('class') or ''}"
    found = {word.lower() for word in _WORD.findall(said)} & _UNIT_WORDS
    return next(iter(found)) if len(found) == 1 else None


def _band_word(element: _Element) -> str | None:
    """A word for whom it is in the id or the classes of a box: ``sizes-women``.

    A box that names several, ``women-and-men``, holds tables of each and says it of none.
    """
    said = f"{element.get('id') or ''} {element.get('class') or ''}"
    named = [word for word in _WORD.findall(said) if read_band(word)]
    both = " ".join(named)
    return both if (both and read_band(both) != "unisex") or len(named) == 1 else None
