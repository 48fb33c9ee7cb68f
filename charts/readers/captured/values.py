"""Whether a piece of plain text is a value of a chart, told by its signs and never converted."""

from __future__ import annotations

import re
from functools import cache, lru_cache
from typing import Final

from charts.cell_text import narrow
from charts.vocabulary import tables

_LIMITS: Final = (
    r"up to|upto|less than(?: or equal to)?|more than|greater than|under|over|below|above|from"
    r"|to|and up|and|or|max(?:imum)?\.?|min(?:imum)?\.?|about|approx(?:imately)?\.?|roughly"
    r"|around|circa|ca\.?|env(?:iron)?\.?"
    r"|bis(?: zu)?|ab|unter|über|von|mind(?:estens)?\.?|höchstens|und"
    r"|jusqu['’]à|moins de|plus de|à partir de|de|al|et|hasta|desde|menos de|más de"
    r"|até|acima de|abaixo de|fino a|da|oltre|sotto|tot|vanaf|van|en|til|till|fra|från|op til"
    r"|upp till|do|od|ponad|poniżej|powyżej|от|до|or taller"
    r"|mehr als|weniger als|över|mer än|mindre än|mere end|mindre end|meer dan|minder dan"
    r"|più di|meno di|mais de|přes|nad"
)
_UNITS: Final = (
    r"mm|cms?\.?|centimet(?:re|er)s?|zentimetern?|metres?|meters?|ins?\.?|inch(?:es)?|zoll"
    r"|pouces?|tum|cale|ft\.?|feet|foot|kgs?\.?|kilos?|kilograms?|lbs?\.?|pounds?|st|stone"
    r"|years?|yrs?\.?|jahre?|ans|años|anni|anos|jaar|år|lat|см|кг|лет|entre"
)
_FIGURE: Final = re.compile(r"[\d½¼¾⅛⅜⅝⅞]")
_SIGNS: Final = re.compile(r"[\d½¼¾⅛⅜⅝⅞\s.,/⁄'\"’‘‛”“″′´`<>=≤≥~±+()\[\]\-‐‑‒–—―−]+")
_WORDS: Final = re.compile(rf"(?<![^\W\d_])(?:{_LIMITS}|{_UNITS})(?![^\W\d_])", re.IGNORECASE)
_LETTERS: Final = re.compile(
    # A letter alone is a unit or a joint behind a figure only: "M 90-96" begins with a label.
    # The apostrophe of "jusqu'à" stands behind a word.
    r"(?:(?<=[\d½¼¾⅛⅜⅝⅞\"”])|(?<=\d[’'])|(?<=[\d½¼¾⅛⅜⅝⅞\"”]\s)|(?<=\d[’']\s)"
    r"|(?<=\dkg\s)|(?<=\d\skg\s)|(?<=\dcm\s)|(?<=\d\scm\s))[mghaàeyи](?![^\W\d_])",
    re.IGNORECASE,
)
_OPEN: Final = ("or_more", "or_less")
_LIMIT_LAST: Final = re.compile(rf"(?:^|\s)((?:{_LIMITS})\s*)\Z", re.IGNORECASE)
_BLANK: Final = re.compile(r"[-‐‑‒–—―−]+|n\.?/?a\.?|k\.\s?A\.|tbc|x|/|\.{3}|…", re.IGNORECASE)

OPEN_ENDED: Final = re.compile(
    r"less|more|under|over|above|below|up|smaller|larger|moins|plus|menos|más|weniger|mehr|meno|più"
    r"|mindre|mer|minder|meer|mniej|więcej",
    re.IGNORECASE,
)
"""Words behind a figure that leave an end open: "90 cm or less" is not 90 cm."""

_SIZE_WORDS: Final = r"x*-?(?:small|large)|medium|x+[sl]"
_LOOKED_AT: Final = 400
_RUN_OF_SIZES: Final = re.compile(rf"(?:{_SIZE_WORDS}){{3,}}", re.IGNORECASE)
_LABEL_AND_FIGURES: Final = re.compile(
    rf"^(?:{_SIZE_WORDS}|\d?x*[sml]|[^\W\d_]{{2,10}})\d{{6,}}\s*[-–]", re.IGNORECASE
)
_FIGURES_TOGETHER: Final = re.compile(
    r"[^\W\d_]{2,}\d{2,3}(?:[.,]\d+)?[\"”″]\d{2,3}|\d ?(?:cm|kg|lbs|in)\d{2,3}\b"
)
_LONGEST: Final = 80
_RAN_ON: Final = re.compile(
    r"^[^\W\d_][^\d]{1,60}(?:[^\W\d_]|[)\].:])\d{2,3}(?:[.,]\d{1,2})?"
    r"\s*[-–]\s*(?P<end>\d{2,3}(?:[.,]\d{1,2})?)(?P=end)\s*[-–]\s*\d"
)
"""A range behind its name that begins again with its own end: ``Chest (in.)26.5 - 2727 - 28``."""


def is_value(text: str) -> bool:
    """Whether ``text`` holds a figure and nothing beside it but signs, units and limits."""
    return len(text) <= _LONGEST and _FIGURE.search(text) is not None and _is_bare(text)


@lru_cache(maxsize=8192)
def _is_bare(text: str) -> bool:
    bare = _endless().sub("", narrow(text))
    return not _SIGNS.sub("", _WORDS.sub("", _LETTERS.sub("", bare)))


@cache
def _endless() -> re.Pattern[str]:
    """What leaves the end of a value open, behind its figure or unit: ``155 cm and more``.

    Of several words: ``42 plus`` is a size.
    """
    found = {word for name in _OPEN for _, words in tables("cell", name) for word in words}
    several = sorted((word for word in found if " " in word), key=len, reverse=True)
    words = "|".join(map(re.escape, several))
    return re.compile(rf"(?<=[\w\"”″'’′])\s+(?:{words})\s*\Z", re.IGNORECASE)


def is_blank(text: str) -> bool:
    """Whether ``text`` is what people write into a cell that has no value."""
    return _BLANK.fullmatch(text.strip()) is not None


def without_limit(name: str) -> tuple[str, str]:
    """A name and the limit at its end: "Chest up to" is ("Chest", "up to ")."""
    found = _LIMIT_LAST.search(name)
    if found is None:
        return name.strip(), ""
    return name[: found.start(1)].strip(), found[1].strip() + " "


def is_glued(text: str) -> bool:
    """Whether the separators between the fields of a line are lost beyond safe repair."""
    compact = text[:_LOOKED_AT].strip()
    return any(
        pattern.search(compact)
        for pattern in (_RUN_OF_SIZES, _LABEL_AND_FIGURES, _FIGURES_TOGETHER, _RAN_ON)
    )
