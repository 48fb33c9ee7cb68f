"""Labels by numbers: 38, 36R, 10 1/4, 36/38, 104, 165/80A, 7080/8494, ages."""

from __future__ import annotations

import re
from typing import Final

from charts.labels.ages import age_label
from charts.labels.reading import LabelKind, SizeLabel, order_of
from charts.labels.words import length_words
from charts.vocabulary import normal, unaccented

_ZEROS: Final = re.compile(r"0{2,3}")
_NUMBER: Final = re.compile(r"(\d{1,3})(?:[.,](5|25|75)| ([1357])/(2|4|8))?")
_LENGTHS: Final = {"r": "regular", "l": "long", "s": "short", "t": "tall", "p": "petite"}
_WITH_LENGTH: Final = re.compile(r"(\d{1,3})[ -]?(mp|jp|st|xs|xl|[rlstp])")
_OTHER_LENGTHS: Final = {"mp": "petite", "jp": "petite", "xs": "extra short", "xl": "extra long"}
_FIGURE: Final = re.compile(r"(\d{1,2})([rts]) ?([+-])")
_BETWEEN: Final = re.compile(r"(\d{1,2})x")
_DUAL: Final = re.compile(r"(\d{1,3}) ?([/-]) ?(\d{1,3})")
_CODES: Final = (
    re.compile(r"(?P<height>1[3-9]\d|20\d) ?[/-] ?(?P<girth>\d{2,3})(?P<type>[a-z]{0,2})"),
    re.compile(r"(?P<height>\d{4})/(?P<girth>\d{4})"),
    re.compile(r"(?!20[0-4])(?P<height>\d{4})"),  # 2027 is a year
    re.compile(r"(?P<height>\d{2})/0"),
    re.compile(r"(?P<height>[1-6]\d)w"),  # women's sizes of a fuller cut
    re.compile(r"w?(?P<height>\d{2}) ?[/x] ?l?(?P<girth>\d{2})"),
    re.compile(r"(?P<height>\d{2,3}) ?/? ?(?P<type>[a-h]|aa|dd|ee|ff|gg)"),
)
_SMALLEST_HEIGHT: Final = 92
_TALLEST: Final = 188
_HEIGHT_STEPS: Final = 6


def numbers_label(text: str) -> SizeLabel | None:
    """The label by numbers that ``text`` is, or None."""
    folded = unaccented(text)
    return (
        age_label(text, folded)
        or _plain(text, folded)
        or _dual(text, folded)
        or _with_length(text, folded)
        or _code(text, folded)
    )


def _plain(text: str, folded: str) -> SizeLabel | None:
    if _ZEROS.fullmatch(folded):
        order = order_of(LabelKind.NUMBER, 1.0 - len(folded))
        return SizeLabel(text, LabelKind.NUMBER, folded, order)
    if match := _BETWEEN.fullmatch(folded):
        order = order_of(LabelKind.NUMBER, int(match[1]) + 0.5)
        return SizeLabel(text, LabelKind.NUMBER, folded.upper(), order)
    match = _NUMBER.fullmatch(folded)
    if match is None:
        return None
    place = float(match[1]) + float(f"0.{match[2] or 0}")
    if match[3]:
        place += int(match[3]) / int(match[4])
    return _numbered(text, f"{place:g}", place)


def _numbered(text: str, name: str, place: float) -> SizeLabel:
    if place.is_integer() and _is_height(int(place)):
        return SizeLabel(text, LabelKind.HEIGHT, name, order_of(LabelKind.HEIGHT, place))
    return SizeLabel(text, LabelKind.NUMBER, name, order_of(LabelKind.NUMBER, place))


def _is_height(number: int) -> bool:
    """Body heights that name sizes: 92, 98 ... 188 in steps of 6, and 95, 100 ... 185."""
    if not _SMALLEST_HEIGHT <= number <= _TALLEST:
        return False
    return (number - 50) % _HEIGHT_STEPS == 0 or number % 5 == 0


def _dual(text: str, folded: str) -> SizeLabel | None:
    """5/6, 6-8, 36/38, 134/140: one size that serves two numbers."""
    match = _DUAL.fullmatch(folded)
    if match is None or int(match[1]) >= int(match[3]):
        return None
    low, high = int(match[1]), int(match[3])
    kind = LabelKind.HEIGHT if _is_height(low) and _is_height(high) else LabelKind.NUMBER
    order = order_of(kind, (low + high) / 2, second=float(low))
    return SizeLabel(text, kind, f"{low}{match[2]}{high}", order)


def _with_length(text: str, folded: str) -> SizeLabel | None:
    """36R, 74L, 6MP, 14S +, 40 extra short."""
    if match := _FIGURE.fullmatch(folded):
        figure_length = _LENGTHS[match[2]]
        second = 1.0 if match[3] == "+" else -1.0
        kind = LabelKind.NUMBER_LENGTH
        order = order_of(kind, float(match[1]), second=second, length=figure_length)
        name = f"{match[1]}{match[2].upper()}{match[3]}"
        return SizeLabel(text, kind, name, order, figure_length)
    if match := _WITH_LENGTH.fullmatch(folded):
        letters = match[2]
        length = _LENGTHS.get(letters) or _OTHER_LENGTHS.get(letters)
        return _lengthened(text, match[1], letters.upper(), length)
    if match := re.fullmatch(r"(\d{1,3})[ /-]+([^\d]+)", folded):
        word = length_words().get(normal(match[2]))
        return None if word is None else _lengthened(text, match[1], f" {word}", word)
    return None


def _lengthened(text: str, number: str, letters: str, length: str | None) -> SizeLabel:
    kind = LabelKind.NUMBER_LENGTH
    order = order_of(kind, float(number), length=length)
    return SizeLabel(text, kind, f"{int(number)}{letters}", order, length)


def _code(text: str, folded: str) -> SizeLabel | None:
    for form in _CODES:
        if match := form.fullmatch(folded):
            given = match.groupdict()
            place, second = float(given["height"]), float(given.get("girth") or 0)
            order = order_of(LabelKind.CODE, place, second=second)
            return SizeLabel(text, LabelKind.CODE, folded.upper().replace(" ", ""), order)
    return None
