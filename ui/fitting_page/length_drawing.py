"""What the length check shows for one size: plain, or to scale where both lengths are known.

No Qt: what is drawn, in which ink, and the words beside it, for the screen and for paper.
"""

from __future__ import annotations

from dataclasses import dataclass

from harmonizer.clearance import Clearance
from harmonizer.fit_row import FitRow
from ui.drawing.clearance_shape import ClearanceShape, clearance_shape
from ui.fitting_page.advice_lines import CLEARANCE_LOOKS
from ui.theme import Ink
from ui.words import Words


@dataclass(frozen=True, slots=True)
class LengthDrawing:
    """``shape`` is the drawing to scale, None for the plain check that is the same for all."""

    title: str
    line: str
    scale: str
    shape: ClearanceShape | None = None
    ink: Ink = Ink.GOOD


def length_drawing(row: FitRow | None, words: Words) -> LengthDrawing:
    """To scale where the rider's seat height and the vest's own length are known; else plain."""
    found = row.clearance if row is not None else None
    seat = row.arrays.body.c7_above_seat if row is not None else None
    if row is None or found is None or seat is None:
        codes = ("length-check-title", "length-check-line", "length-check-scale")
        title, line, scale = (words(code) for code in codes)
        return LengthDrawing(title, line, scale)
    settings = row.arrays.settings
    own = seat - found.cm - settings.saddle_rise
    shape = clearance_shape(seat, own, settings.saddle_rise, settings.hand_width)
    title, line, scale = _words(found, settings.hand_width, words)
    return LengthDrawing(title, line, scale, shape, CLEARANCE_LOOKS[found.band].ink)


def _words(found: Clearance, hand: float, words: Words) -> tuple[str, str, str]:
    wording = words.wording
    values = {
        "c": wording.margin(abs(found.cm)),
        "hands": wording.number(found.hands),
        "hand": wording.number(hand),
    }
    code = "clearance-line" if found.cm >= 0 else "clearance-under"
    title, scale = (wording.say("advice", f"clearance-{one}") for one in ("title", "scale"))
    return title, wording.say("advice", code, **values), scale
