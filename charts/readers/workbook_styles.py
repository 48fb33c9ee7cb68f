"""What a workbook's styles say of a value: its number format, and whether it is struck out."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from lxml.etree import _Element

_OFF: Final = ("0", "false")


@dataclass(frozen=True, slots=True)
class Style:
    """One style of cells.

    ``dated`` says that a number under it is a day or a time, ``span`` that it is a duration.
    """

    number_format: str = "General"
    struck: bool = False
    dated: bool = False
    span: bool = False


def styles_of(root: _Element) -> list[Style]:
    """The styles of cells in the order in which cells name them."""
    formats = {
        whole_number(element, "numFmtId"): element.get("formatCode", "General")
        for element in _children(root, "numFmts", "numFmt")
    }
    struck = [_is_on(font.find("{*}strike")) for font in _children(root, "fonts", "font")]
    return [_style(xf, formats, struck) for xf in _children(root, "cellXfs", "xf")]


def whole_number(element: _Element, attribute: str, missing: int = 0) -> int:
    """A whole number in an attribute, ``missing`` where there is none."""
    text = element.get(attribute, "")
    return int(text) if text.isascii() and text.isdigit() and len(text) < 10 else missing


def _children(root: _Element, group: str, name: str) -> list[_Element]:
    parent = root.find(f"{{*}}{group}")
    return [] if parent is None else list(parent.iterfind(f"{{*}}{name}"))


def _is_on(element: _Element | None) -> bool:
    return element is not None and element.get("val", "1") not in _OFF


def dated_style(code: str, *, struck: bool) -> Style:
    """The style of the number format ``code``, which itself says whether it shows a day."""
    from openpyxl.styles.numbers import is_date_format, is_timedelta_format

    return Style(code, struck, dated=is_date_format(code), span=is_timedelta_format(code))


def _style(xf: _Element, formats: dict[int, str], struck: list[bool]) -> Style:
    from openpyxl.styles.numbers import BUILTIN_FORMATS

    number, font = whole_number(xf, "numFmtId"), whole_number(xf, "fontId")
    code = formats.get(number) or BUILTIN_FORMATS.get(number, "General")
    return dated_style(code, struck=font < len(struck) and struck[font])
