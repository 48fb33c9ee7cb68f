"""How one whole value is printed: a figure or a range, with its limits and in one unit or two."""

from __future__ import annotations

import re
from typing import Final

_FIGURE: Final = r"(?:\d+(?:[.,]\d{1,3})?(?:\s?[½¼¾⅛⅜⅝⅞]|\s\d/(?:2|4|8|16)(?!\d))?|[½¼¾⅛⅜⅝⅞])"
_UNIT: Final = (
    r"(?:(?<=[.,]\d\d)\s?m(?![^\W\d_])"  # heights in metres have two places
    r"|\+?\s?(?:cms?|mm|ins?|inch(?:es)?|kgs?|lbs?|ft|st|zoll|pouces|tum|см|кг"
    r"|years?|yrs?|jahre?|ans|años|anni|anos|jaar|år|lat|let|лет)(?![^\W\d_])\.?"
    r"|\s?(?:''|’’|′′|[\"”″“]))?"
)
_FEET: Final = rf"\d\s?['’′]-?\s?(?:{_FIGURE}\s?[\"”″]?)?"
_FEET_WORD: Final = r"\d\s?ft\.?(?:\s?(?:1[01]|\d)(?![\d.,/-])(?:\s?in\b|\s?[\"”″])?)?"
_METRES: Final = r"[12]\s?m\s?\d\d(?![\d.,])"  # 1m55
_JOINT: Final = r"(?:\s*[-‐‑‒–—―−~]\s*|\s+(?:to|bis|à|a|al|tot|til|till|do|až|até|до)\s+)"
UPPER: Final = (
    r"(?:(?:up to|under|below|less than|bis zu|bis|unter|jusqu['’]à|moins de|fino a|sotto|hasta"
    r"|menos de|até|abaixo de|tot|op til|do|poniżej|до|mindre än)\s+|max\.?\s?)"
)
LIMIT: Final = (
    r"(?:[<>≤≥~±]\s*|(?:ca|approx|env|cca|min|mind)\.?\s?|(?:circa|about|etwa|environ)\s+"
    r"|(?:over|above|more than|ab|über|plus de|oltre|más de|acima de|mais de"
    r"|vanaf|od|ponad|powyżej|от|свыше|över|mer än)\s+)?"
)
_ENDLESS: Final = (
    r"(?:\+|\s\+(?=\s*\Z)"
    r"|\s(?:and (?:above|up|over|under|below|more|less)|or (?:more|less|over|under|taller)"
    r"|(?:und|oder) (?:mehr|weniger|größer|darüber)|(?:et|ou) (?:plus|moins)|[yo] (?:más|menos)"
    r"|[eo] (?:oltre|più|meno)|(?:en|of) (?:meer|minder)|(?:e|ou) (?:mais|menos)"
    r"|(?:a|nebo) (?:více|méně)|(?:i|lub) (?:więcej|mniej)|(?:og|och|eller) (?:mere?|mindre)"
    r"|(?:и|или) (?:более|больше|менее|меньше)))?"
)
"""What leaves the end of a value open: ``6'2" and above``."""
_STONE: Final = r"\d{1,2}\s?st\.?\s?\d{1,2}(?:\s?lbs?)?"
_ONE: Final = rf"(?:{_FEET}|{_FEET_WORD}|{_STONE}|{_METRES}|{_FIGURE}{_UNIT})"
WHOLE: Final = rf"(?:{UPPER}{_ONE}(?:\s*[-–]\s*{_ONE})?|{LIMIT}{_ONE}(?:{_JOINT}{_ONE})?{_ENDLESS})"
"""No word joins two values behind an upper limit: ``bis 80 bis 62`` is of two cells."""
_METRIC: Final = rf"(?:{UPPER}|{LIMIT}){_FIGURE}(?:{_JOINT}{_FIGURE})?\s?(?:cm|kg)"
_IMPERIAL: Final = (
    rf"(?:{UPPER}|{LIMIT}){_FIGURE}(?:{_JOINT}{_FIGURE})?\s?(?:''|’’|′′|[\"”″“]|in\b|lbs?\b)"
)
_SAME: Final = rf"(?:{_METRIC}\s?/\s?{_IMPERIAL}|{_IMPERIAL}\s?/\s?{_METRIC})"
"""The same in both units, each with its own: ``86 - 92 cm / 33 3/4 to 36 1/4"``."""
VALUE: Final = re.compile(rf"(?:{_SAME}|{WHOLE}(?:\s*\({WHOLE}\))?)(?=\s|\Z)", re.IGNORECASE)
"""One whole value, in one unit or in two."""
