"""Marks that a mail program or a terminal puts around lines: signs of quoting, drawn frames.

Lines keep their numbers; only what was added around them is taken away.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import Final

_QUOTED: Final = re.compile(r"\s{0,3}(?:>\s?)+")
_FEWEST_QUOTED: Final = 3
_FRAME: Final = str.maketrans(
    dict.fromkeys("│┃║╎╏┆┇┊┋", "|")
    | dict.fromkeys("─━═╌╍┄┅┈┉", "-")
    | dict.fromkeys("┼╋╬├┤┝┥┠┨┣┫╠╣┬┴┯┷┳┻╦╩┌┐└┘┏┓┗┛╔╗╚╝╭╮╰╯╪╫╞╡╟╢╤╧╥╨", "+")
)
_LONE_BULLET: Final = re.compile(r"^[ \t]*[•▪◦●○·*‣–-][ \t]*$(?=\r?\n[^\n]{30})", re.MULTILINE)
"""The sign of a list on a line of its own, before a line too long to be a cell."""
_DRAWN: Final = re.compile(r"[│┃║]")
_STROKES: Final = frozenset("-=_+:|")
_STROKE: Final = ("---", "===", "___")


def without_marks(text: str) -> str:
    """``text`` without signs of quoting and lone bullets, its drawn frames as plain bars."""
    if _DRAWN.search(text):
        text = text.translate(_FRAME)
    text = _LONE_BULLET.sub("", text)
    if ">" not in text or "<" in text:
        return text
    return "\n".join(_unquoted(text.split("\n")))


def is_drawn(fields: Sequence[str]) -> bool:
    """Whether a row is a line of the box around the cells, ``+-----+----+``, and holds none."""
    drawn = [text for field in fields if (text := field.strip())]
    return all(_STROKES.issuperset(one) and any(map(one.count, _STROKE)) for one in drawn)


def _unquoted(lines: Sequence[str]) -> Iterator[str]:
    at = 0
    while at < len(lines):
        end = at
        while end < len(lines) and _QUOTED.match(lines[end]):
            end += 1
        run = lines[at:end]
        yield from ([_QUOTED.sub("", line, count=1) for line in run] if _is_quoted(run) else run)
        if end < len(lines):
            yield lines[end]
        at = end + 1


def _is_quoted(run: Sequence[str]) -> bool:
    """Whether the signs are a mail program's: "> 60 kg" on a line is more than sixty."""
    rest = [_QUOTED.sub("", line, count=1) for line in run]
    words = sum(1 for line in rest if line[:1].isalpha() or line[:1] in "|*•-")
    return len(run) >= _FEWEST_QUOTED and words > 0
