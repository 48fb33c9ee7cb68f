"""How a cell of the printed workbook looks. Weight, slant and a sign tell; colour only repeats."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache
from typing import TYPE_CHECKING, Final

from charts.writers.printed_table import Role, TableCell

if TYPE_CHECKING:
    from openpyxl.cell.cell import Cell, MergedCell
    from openpyxl.styles import Alignment, Border, Font, PatternFill

FONT: Final = "Calibri"
_INK: Final = "FF1A1A1A"
_GREY: Final = "FF5A5A5A"
_HEAD_FILL: Final = "FFE3E6EA"
_OPEN_FILL: Final = "FFFFF1C7"
_RULE: Final = "FF404040"
_HAIR: Final = "FFB0B4BA"


@dataclass(frozen=True, slots=True)
class Look:
    """Everything that decides how one cell is printed; sizes in points."""

    size: float = 11
    bold: bool = False
    italic: bool = False
    grey: bool = False
    fill: str | None = None
    centred: bool = False
    wrap: bool = True
    rule_above: bool = False
    line_above: bool = False
    line_left: bool = False


TITLE: Final = Look(size=18, bold=True, wrap=False)
SUBTITLE: Final = Look(size=11, wrap=False)
KEY: Final = Look(size=10, grey=True, wrap=False)
HEAD: Final = Look(bold=True, fill=_HEAD_FILL, centred=True, line_above=True)
FOOTNOTE: Final = Look(size=10)
CAUTION: Final = Look(size=11, bold=True)
LAST_LINE: Final = Look(line_above=True)
LISTED: Final = Look(size=10, line_above=True, line_left=True)

_ROLES: Final = {
    Role.NAME: Look(bold=True),
    Role.REPEATED: Look(grey=True),
    Role.SIZE: Look(size=12, bold=True, centred=True),
    Role.WORDS: Look(size=9),
    Role.PUBLISHED: Look(bold=True, centred=True),
    Role.CONVERTED: Look(italic=True, grey=True, centred=True),
    Role.MISSING: Look(size=8, grey=True, centred=True),
}


def of_cell(cell: TableCell, *, starts_model: bool, starts_group: bool) -> Look:
    """The look of a body cell: a rule where another model begins, a line where a group does."""
    return replace(
        _ROLES[cell.role],
        fill=_OPEN_FILL if cell.open else None,
        rule_above=starts_model,
        line_above=True,
        line_left=starts_group,
    )


def dress(cell: Cell | MergedCell, look: Look) -> None:
    """Give ``cell`` its look."""
    font, fill, alignment, border = _parts(look)
    cell.font = font
    cell.alignment = alignment
    cell.border = border
    if fill is not None:
        cell.fill = fill


@cache
def _parts(look: Look) -> tuple[Font, PatternFill | None, Alignment, Border]:
    from openpyxl.styles import Alignment, Border, Font, PatternFill, Side

    nothing = Side()
    hair = Side(style="thin", color=_HAIR)
    rule = Side(style="medium", color=_RULE)
    above = rule if look.rule_above else hair if look.line_above else nothing
    return (
        Font(
            name=FONT,
            size=look.size,
            bold=look.bold,
            italic=look.italic,
            color=_GREY if look.grey else _INK,
        ),
        PatternFill("solid", start_color=look.fill) if look.fill else None,
        Alignment(
            horizontal="center" if look.centred else "left",
            indent=int(look.line_left and not look.centred),
            vertical="center",
            wrap_text=look.wrap,
        ),
        Border(top=above, left=hair if look.line_left else nothing),
    )
