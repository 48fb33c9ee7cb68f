"""Labels by ages: 3-4 Years, 12 ans, 6 months - 1 year, Age 14+, 2T; never a measurement."""

from __future__ import annotations

import re
from functools import cache
from typing import Final

from charts.labels.reading import (
    CHILD,
    INFANT,
    TODDLER,
    YOUTH,
    LabelKind,
    SizeLabel,
    order_of,
)
from charts.labels.words import label_words

_TODDLER: Final = re.compile(r"([2-5])t(?: ?[-/] ?([2-5])t)?|([2-5]) ?[-/] ?([2-5])t")
_JOINTS: Final = " (?:to|bis|a|tot|til|till|do|al|hasta) "
"""Words between two ages as they are folded: "0 à 6 mois" is "0 a 6 mois"."""
_HALF: Final = re.compile(r"(?<=\d)(?: ?½| 1[/⁄]2(?!\d))")
_GROWN: Final = 13
_CHILD_OF: Final = 2
_MOST_MONTHS: Final = 36


def age_label(text: str, folded: str) -> SizeLabel | None:
    """The label by one age or by two that ``text`` is, or None."""
    if match := _TODDLER.fullmatch(folded):
        ends = sorted(float(end) for end in match.groups() if end)
        order = order_of(LabelKind.AGE, sum(ends) / len(ends), rank=TODDLER, second=ends[0])
        return SizeLabel(text, LabelKind.AGE, folded.upper(), order)
    match = _ages().fullmatch(_HALF.sub(".5", folded))
    if match is None or not (match["age"] or match["unit"] or match["first"]):
        return None
    low = float(match["low"].replace(",", "."))
    high = float((match["high"] or match["low"]).replace(",", "."))
    months = _in_months(match["unit"] or match["first"])
    first = _in_months(match["first"]) if match["first"] else months
    years = [end / (12 if unit else 1) for end, unit in ((low, first), (high, months))]
    if years[1] < years[0] or max((low if first else 0), (high if months else 0)) > _MOST_MONTHS:
        return None
    place = sum(years) / 2
    order = order_of(LabelKind.AGE, place, rank=_rank_of_age(place), second=low)
    return SizeLabel(text, LabelKind.AGE, _name(match, (low, first), (high, months)), order)


def _name(match: re.Match[str], low: tuple[float, bool], high: tuple[float, bool]) -> str:
    """``3-4 years``, ``14+ years``, ``6 months-1 years``."""
    units = ["months" if months else "years" for _, months in (low, high)]
    more = "+" if match["more"] or match["plus"] else ""
    if units[0] != units[1]:
        return f"{low[0]:g} {units[0]}-{high[0]:g}{more} {units[1]}"
    span = f"{low[0]:g}-{high[0]:g}" if high[0] > low[0] else f"{low[0]:g}"
    return f"{span}{more} {units[1]}"


@cache
def _ages() -> re.Pattern[str]:
    units = _either("years", "months")
    return re.compile(
        rf"(?P<age>(?:{_either('age')})[ :]*)?(?P<low>\d{{1,2}}(?:[.,]\d)?)"
        rf"(?:(?: ?(?P<first>{units})\.?)?(?: ?[-/~] ?|{_JOINTS})(?P<high>\d{{1,2}}(?:[.,]\d)?))?"
        rf"(?P<plus> ?\+)? ?(?P<unit>{units})?\.? ?(?P<more>\+)?"
    )


def _either(*names: str) -> str:
    words = {word for name in names for word in label_words(name)}
    return "|".join(re.escape(word) for word in sorted(words, key=len, reverse=True))


def _in_months(word: str | None) -> bool:
    return word in label_words("months")


def _rank_of_age(years: float) -> float:
    if years < _CHILD_OF:
        return INFANT
    return CHILD if years < _GROWN else YOUTH
