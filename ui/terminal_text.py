"""Plain text for a terminal: aligned columns, wrapped sentences, and letters any code page has."""

from __future__ import annotations

import codecs
import shutil
import sys
import textwrap
import unicodedata
from collections.abc import Sequence
from typing import Final, TextIO

_PLAIN: Final = {
    "\N{MINUS SIGN}": "-",
    "\N{EN DASH}": "-",
    "\N{EM DASH}": "-",
    "\N{MIDDLE DOT}": "-",
    "\N{LEFT DOUBLE QUOTATION MARK}": '"',
    "\N{RIGHT DOUBLE QUOTATION MARK}": '"',
    "\N{DOUBLE LOW-9 QUOTATION MARK}": '"',
    "\N{RIGHT SINGLE QUOTATION MARK}": "'",
    "\N{PLUS-MINUS SIGN}": "+/-",
    "ä": "ae",
    "ö": "oe",
    "ü": "ue",
    "Ä": "Ae",
    "Ö": "Oe",
    "Ü": "Ue",
    "ß": "ss",
}
_HANDLER: Final = "harmonizer-plain"
_WIDE: Final = frozenset("WF")
_NARROWEST: Final = 60
_WIDEST: Final = 120


def make_printable(stream: TextIO) -> None:
    """Let ``stream`` print everything: what its code page lacks is written in plain letters."""
    codecs.register_error(_HANDLER, _plain_letters)
    reconfigure = getattr(stream, "reconfigure", None)
    if reconfigure is not None:
        reconfigure(errors=_HANDLER)


def _plain_letters(fault: UnicodeError) -> tuple[str, int]:
    if not isinstance(fault, UnicodeEncodeError):
        raise fault
    lacking = fault.object[fault.start : fault.end]
    return "".join(_plain(letter) for letter in lacking), fault.end


def _plain(letter: str) -> str:
    """What stands for ``letter`` where only ASCII is sure: its letter without marks, or ``?``."""
    if letter in _PLAIN:
        return _PLAIN[letter]
    bare = unicodedata.normalize("NFKD", letter)[0]
    return bare if bare.isascii() else "?"


def terminal_width() -> int:
    """The columns of the terminal within reason; 100 where there is none."""
    if not sys.stdout.isatty():
        return 100
    return max(_NARROWEST, min(_WIDEST, shutil.get_terminal_size((100, 24)).columns))


def aligned(rows: Sequence[Sequence[str]], indent: int = 0) -> list[str]:
    """Rows of cells as lines with aligned columns, two spaces apart."""
    if not rows:
        return []
    widths = [max(_width(row[column]) for row in rows) for column in range(len(rows[0]))]
    lines = []
    for row in rows:
        cells = (
            cell + " " * (width - _width(cell)) for cell, width in zip(row, widths, strict=True)
        )
        lines.append((" " * indent + "  ".join(cells)).rstrip())
    return lines


def wrapped(text: str, indent: int, width: int) -> list[str]:
    """A sentence over as many lines as it needs, all of them indented."""
    space = " " * indent
    return textwrap.wrap(
        text, width, initial_indent=space, subsequent_indent=space, break_long_words=False
    )


def _width(text: str) -> int:
    """Columns of a terminal that ``text`` takes."""
    return sum(
        0 if unicodedata.combining(letter) else 1 + (unicodedata.east_asian_width(letter) in _WIDE)
        for letter in text
    )
