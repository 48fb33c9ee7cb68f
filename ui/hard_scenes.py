"""The hard cases of a fitting as pictures of the demo: each is one that a fitter meets."""

from __future__ import annotations

from typing import Final

from harmonizer.rider import Measure
from ui.preferences import Preferences
from ui.scene import Scene, came_out, choose, hold, in_winter, read, rider, then
from ui.theme import Scheme

_BACK: Final = Measure.BACK_LENGTH

HARD_SCENES: Final = (
    Scene(
        "20-the-length-stops-what-the-girths-allow",
        then(rider("Isbet Quarnlow"), choose("Brisouar")),
    ),
    Scene(
        "21-the-makers-rule-against-the-length",
        then(rider("Davin Eskrigarth"), read(_BACK, "46.4 cm"), choose("Brisouar")),
    ),
    Scene(
        "22-winter-changes-the-size",
        then(rider("Davin Eskrigarth"), in_winter("6"), choose("Gustwhirr")),
    ),
    Scene("23-nothing-fits-in-german", rider("Holm Vastrigg"), Preferences("de", Scheme.LIGHT)),
    Scene(
        "24-two-definitions-of-a-back",
        then(rider("Wrenna Oskelby"), choose("Airebruna")),
    ),
    Scene("25-the-adjuster-all-but-used", then(rider("Tobin Harquell"), choose("Steinflanke"))),
    Scene("26-measured-alone-a-coin-toss", rider("Jory Wexbarrow")),
    Scene(
        "27-two-rows-side-by-side",
        then(rider("Wrenna Oskelby"), choose("Gustwhirr"), hold("Moorflanke")),
    ),
    Scene(
        "28-two-rows-side-by-side-dark",
        then(rider("Maren Ullthwick"), choose("Alizane"), hold("Moorflanke")),
        Preferences("de", Scheme.DARK),
    ),
    Scene(
        "29-winter-on-paper",
        then(rider("Davin Eskrigarth"), in_winter("6"), choose("Gustwhirr")),
    ),
    Scene("30-estimates-on-paper", rider("Jory Wexbarrow"), Preferences("de", Scheme.LIGHT)),
    Scene(
        "31-twice-the-size",
        then(rider("Tobin Harquell"), choose("Steinflanke")),
        Preferences("en", Scheme.LIGHT, points=19.0),
        size=(2732, 1536),
    ),
    Scene("32-here-last-summer", rider("Finn Harquell"), size=(1366, 860)),
    Scene(
        "33-comes-out-smaller-than-its-chart",
        then(rider("Wrenna Oskelby"), came_out("Fellgarrow W", ("M", 8), ("L", 4))),
        size=(1600, 860),
    ),
)
ON_PAPER: Final = ("29-winter-on-paper", "30-estimates-on-paper")
