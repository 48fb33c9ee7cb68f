"""Meanings and how they look: a colour for each scheme and a mark, never the colour alone.

No Qt here: the contrast of every pair that meets on the page is computed by the tests.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import Final


class Scheme(StrEnum):
    """How the screen is lit. PAPER is the light scheme on plain white, for print and PDF."""

    LIGHT = "light"
    DARK = "dark"
    FORCED = "forced"
    PAPER = "paper"


class Ink(StrEnum):
    """What a colour is for."""

    WINDOW = "window"  # the frame around the page
    PANEL = "panel"  # the readings
    GROUND = "ground"  # rows and fields
    BAND = "band"  # a band's heading row
    CHOSEN = "chosen"  # the row the reasons speak of
    TEXT = "text"
    QUIET = "quiet"  # second lines and hints
    RULE = "rule"  # hairlines between rows: ornament, carries nothing
    EDGE = "edge"  # the frame of a field or a button
    FOCUS = "focus"  # the frame of what has the keyboard
    ACCENT = "accent"  # pressed choices
    ON_ACCENT = "on_accent"
    RIDER = "rider"  # the rider's line
    HALO = "halo"  # the light beside it
    GOOD = "good"
    CHECK = "check"  # to be looked at in the saddle
    NEAR = "near"
    STOP = "stop"
    UNKNOWN = "unknown"
    OTHER = "other"  # the sizes beside the best one
    TRYING = "trying"  # the ground of the banner while a value is tried


class Mark(StrEnum):
    """A drawn sign, one for each meaning; no two share a shape."""

    FULL = "full"  # a filled disc
    HALF = "half"  # a disc filled on one side
    UP = "up"  # a hollow triangle on its base
    DOWN = "down"  # a hollow triangle on its tip
    RING = "ring"  # an empty ring, broken
    CROSS = "cross"  # a cross
    STOP = "stop"  # a filled octagon with a bar
    GATE = "gate"  # a barred circle


_LIGHT: Final[Mapping[Ink, str]] = {
    Ink.WINDOW: "#f4f3ef",
    Ink.PANEL: "#eceae4",
    Ink.GROUND: "#ffffff",
    Ink.BAND: "#f4f3ef",
    Ink.CHOSEN: "#e6f0f2",
    Ink.TEXT: "#1a2129",
    Ink.QUIET: "#545d68",
    Ink.RULE: "#dfdcd4",
    Ink.EDGE: "#858a90",
    Ink.FOCUS: "#1f5fa8",
    Ink.ACCENT: "#22384f",
    Ink.ON_ACCENT: "#ffffff",
    Ink.RIDER: "#10141a",
    Ink.HALO: "#ffffff",
    Ink.GOOD: "#12666b",
    Ink.CHECK: "#3c5599",
    Ink.NEAR: "#8d5200",
    Ink.STOP: "#a3221b",
    Ink.UNKNOWN: "#59616c",
    Ink.OTHER: "#7c8894",
    Ink.TRYING: "#fff1cc",
}

_DARK: Final[Mapping[Ink, str]] = {
    Ink.WINDOW: "#14181d",
    Ink.PANEL: "#1b2026",
    Ink.GROUND: "#181d23",
    Ink.BAND: "#20262d",
    Ink.CHOSEN: "#1e323a",
    Ink.TEXT: "#e9ecef",
    Ink.QUIET: "#a9b2bc",
    Ink.RULE: "#2f363f",
    Ink.EDGE: "#76808b",
    Ink.FOCUS: "#7fb4f2",
    Ink.ACCENT: "#c6d6e6",
    Ink.ON_ACCENT: "#14181d",
    Ink.RIDER: "#f6f7f8",
    Ink.HALO: "#0c0f12",
    Ink.GOOD: "#6cc9c4",
    Ink.CHECK: "#a3b8f5",
    Ink.NEAR: "#eab054",
    Ink.STOP: "#ff9186",
    Ink.UNKNOWN: "#b0b8c1",
    Ink.OTHER: "#7f8b98",
    Ink.TRYING: "#4a3a12",
}

_FORCED: Final[Mapping[Ink, str]] = dict.fromkeys(Ink, "#ffffff") | {
    Ink.WINDOW: "#000000",
    Ink.PANEL: "#000000",
    Ink.GROUND: "#000000",
    Ink.BAND: "#000000",
    Ink.CHOSEN: "#002b5c",
    Ink.FOCUS: "#ffff00",
    Ink.ACCENT: "#1aebff",
    Ink.ON_ACCENT: "#000000",
    Ink.HALO: "#000000",
    Ink.NEAR: "#ffff00",
    Ink.STOP: "#ffff00",
    Ink.TRYING: "#3d3d00",
}

_PAPER: Final[Mapping[Ink, str]] = {**_LIGHT, Ink.WINDOW: "#ffffff", Ink.CHOSEN: "#ffffff"}

COLOURS: Final[Mapping[Scheme, Mapping[Ink, str]]] = MappingProxyType(
    {
        Scheme.LIGHT: _LIGHT,
        Scheme.DARK: _DARK,
        Scheme.FORCED: _FORCED,
        Scheme.PAPER: _PAPER,
    }
)


@dataclass(frozen=True, slots=True)
class Look:
    """How one meaning is shown: the ink repeats what the mark says."""

    ink: Ink
    mark: Mark


GIRTH_LOOKS: Final[Mapping[str, Look]] = MappingProxyType(
    {
        "inside": Look(Ink.GOOD, Mark.FULL),
        "edge": Look(Ink.GOOD, Mark.HALF),
        "near": Look(Ink.NEAR, Mark.UP),
        "miss": Look(Ink.STOP, Mark.CROSS),
        "not_checked": Look(Ink.UNKNOWN, Mark.RING),
    }
)
LENGTH_LOOKS: Final[Mapping[str, Look]] = MappingProxyType(
    {
        "clear": Look(Ink.GOOD, Mark.FULL),
        "check": Look(Ink.CHECK, Mark.HALF),
        "not_known": Look(Ink.UNKNOWN, Mark.RING),
        "short": Look(Ink.NEAR, Mark.UP),
        "likely_long": Look(Ink.STOP, Mark.DOWN),
        "too_short": Look(Ink.STOP, Mark.CROSS),
        "too_long": Look(Ink.STOP, Mark.STOP),
    }
)
GATE_LOOK: Final = Look(Ink.STOP, Mark.GATE)


@dataclass(frozen=True, slots=True)
class Theme:
    """The colours of one scheme."""

    scheme: Scheme = Scheme.LIGHT

    def colour(self, ink: Ink) -> str:
        """The colour of ``ink`` as ``#rrggbb``."""
        return COLOURS[self.scheme][ink]


def luminance(colour: str) -> float:
    """Relative luminance of ``#rrggbb``, 0 to 1. Source: WCAG 2.2, definition of the term."""
    channels = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    red, green, blue = (
        part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in channels
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """Contrast ratio of two colours, 1 to 21. Source: WCAG 2.2, definition of the term."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)
