"""How a bar is to be read: each kind of bar once, with its words. No Qt."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from charts.wording import Wording
from ui.wall_sheet.cell_shape import BAR_HEIGHT
from ui.wall_sheet.ink import Bar, End, Mark
from ui.wall_sheet.paper import SMALL, SMALL_STRONG
from ui.wall_sheet.type_setting import Setter, Setting

_WIDE: Final = 34.0
_ROW: Final = 15.0
_PLAIN: Final = Bar(0.0, _WIDE, 0.0, BAR_HEIGHT)
_SAMPLES: Final = (
    ("firm", "M", _PLAIN),
    ("open", "M", replace(_PLAIN, left_end=End.OPEN)),
    ("derived", "M", replace(_PLAIN, dashed=True)),
    ("otherwise", "M", replace(_PLAIN, hollow=True)),
    ("asked", "M?", replace(_PLAIN, hatched=True)),
)


def legend(setter: Setter, wording: Wording, edges: tuple[float, float]) -> Setting:
    """The samples from left to right, in as many rows as they need."""
    marks: list[Mark] = []
    x, top = edges[0], 0.0
    for code, label, sample in _SAMPLES:
        said = wording.say("wall_sheet", f"legend-{code}")
        wide = _WIDE + 5.0 + setter.measure(said, SMALL)
        if x > edges[0] and x + wide > edges[1]:
            x, top = edges[0], top + _ROW
        half = setter.measure(label, SMALL_STRONG) / 2
        middle = x + _WIDE / 2
        base = top + (BAR_HEIGHT + SMALL.capital) / 2
        marks.append(
            replace(
                sample,
                left=x,
                right=x + _WIDE,
                top=top,
                bottom=top + BAR_HEIGHT,
                clear_left=middle - half - 2.5,
                clear_right=middle + half + 2.5,
            )
        )
        marks.append(setter.around(middle, base, label, SMALL_STRONG))
        marks.append(setter.at(x + _WIDE + 5.0, base, said, SMALL))
        x += wide + 18.0
    return Setting(tuple(marks), top + _ROW)
