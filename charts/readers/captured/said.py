"""One line taken apart: the label in front, and a value to each name behind it.

``Talla S: Cintura 71-76 cm | Cadera 86-91 cm``, ``L (80kg to 105kg)``, ``S - chest 84 - waist 68``.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from charts.dimensions import Role, read_heading
from charts.notation import Reading, read_cell
from charts.readers.captured.lines import Line
from charts.readers.captured.value_runs import is_size, named_values, sized_values
from charts.readers.captured.values import is_glued, is_value, without_limit

_WORDED: Final = re.compile(
    r"\A(?P<word>[^\W\d_]{3,12})\s*:\s*(?P<size>[^\s:;,|]{1,9})(?=\s*[;|,])"
)
"""``Size: 36; Chest: 82-86``: the first colon belongs to the word for sizes."""
_BULLET: Final = re.compile(r"\s*(?:[•▪◦●○·*‣»>✓–-]\s+|\d{1,2}[.)]\s+(?=\D))?")
_LABEL_END: Final = re.compile(r"\s*[:=]\s*|\s+[-–—]\s*|\s*[→⇒➔➜►]\s*|[,;]\s+(?=[^\W\d_]{3})")
NO_LABEL: Final = re.compile(r"[\t;|,\"]|\S {2,}\S|\w / \w")
_PART_END: Final = re.compile(
    r"\s*[|;•·]\s*|,\s+(?=[^\d\s])|(?<=[^\W\d_]),\s+(?=\d)|\s+[-–—]\s+(?=[^\W\d_]{4})"
    r"|(?<!\bca)(?<!\bcca)(?<!\benv)(?<!approx)(?<=[^\W\d_])\.\s+(?=\d)"
)
_NAME_FIRST: Final = re.compile(
    r"(?P<name>\dX{0,4}[SLT](?![^\W_])|[^\d<>≤≥~±]*?)\s*[:=]?\s*"
    r"(?P<value>(?:[<>≤≥~±]|(?<=\s)\+(?=\d))?\s*\d.*)"
)
_VALUE_FIRST: Final = re.compile(r"(?P<value>[<>≤≥~]?\s*\d.*?)\s+(?P<name>[^\W\d_]{3}[^\d]*)")
_IN_BRACKETS: Final = re.compile(
    r"(?P<label>[^\d()][^()]{0,18}?|\d?X{1,4}[SL])\s*"
    r"\((?P<value>[^()]*\d\s?(?:cms?|kgs?|lbs?|pounds?|kilos?)\b[^()]*)\)\.?",
    re.IGNORECASE,
)
"""A size and, with its unit, what it is for: ``L (80kg to 105kg / 176-231lbs)``."""
_NAMED_IN_BRACKETS: Final = re.compile(
    r"(?P<label>[^\W\d_][^\d()]{0,18}?|\d?X{1,4}[SL])\s*"
    r"\((?P<name>[^\d()<>≤≥~]{3,30}?)\s*(?P<value>[<>≤≥~]?\s*\d[^()]*)\)\.?"
)
"""A size and a named measure of it: ``Small (Height < 5'4")``."""
_ARROWS_AND_COMMAS: Final = frozenset(",;→⇒➔➜►")
"""Signs that end a size only where measures follow: they stand between any two things."""
_DASHES: Final = frozenset("-–—")
_FIRST_NUMBER: Final = re.compile(r"\d{1,3}")
_WIDEST: Final = 1.5
"""A range ends at most half as far again above its beginning (common practice)."""
_ALL_IN_BRACKETS: Final = re.compile(r"(?P<label>[^():]{1,28}?)\s*\((?P<parts>[^()]{8,200})\)[.;]?")
"""A size and all its measures: ``Men's XS (Half chest: 47 cm, Length: 67 cm)``."""
_BEHIND_IN_BRACKETS: Final = re.compile(
    r"(?<=\S)\s*\((?P<name>[^\W\d_][^\d()<>≤≥~:=]{2,29}?)\s*[:=]?\s*(?P<value>\d[^()]*)\)"
)
"""One more measure in brackets: ``Chest 46 in (Length: 32)``."""
_FEWEST_IN_BRACKETS: Final = 2
_ENDS: Final = 2
_SEVERAL: Final = re.compile(r"\d[^\d,]*,\s[^\d,]*\d[^,]*,\s")
"""Three figures between commas and blanks are a list: ``2 years 54, 3 years 56, 4 years 58``."""
MONEY: Final = re.compile(r"[€$£¥]|\b(?:EUR|USD|GBP|CHF|PLN|SEK|DKK|NOK)\b|\d{5}")
"""Prices, and numbers of pieces or articles: no chart's figures are so long."""
LONGEST_LABEL: Final = 28
LONGEST_LINE: Final = 2_000


@dataclass(frozen=True, slots=True)
class Said:
    """One line taken apart: a label, and a value to each name ("" when there is one value).

    ``lines`` tells where each pair stands when that is not the line of the label.
    """

    label: str
    pairs: tuple[tuple[str, str], ...]
    line: int
    lines: tuple[int, ...] = ()

    @property
    def names(self) -> tuple[str, ...]:
        """The names of the values, in their order."""
        return tuple(name for name, _ in self.pairs)


def unbulleted(text: str) -> str:
    """``text`` without the sign of a list or a number in front."""
    bullet = _BULLET.match(text)
    return text[bullet.end() if bullet else 0 :].strip()


@lru_cache(maxsize=4096)
def taken_apart(line: Line) -> Said | None:
    """The label of a line and its named values; None where anything else stands in it."""
    if is_glued(line.text) or len(line.text) > LONGEST_LINE or MONEY.search(line.text):
        return None
    text = _WORDED.sub(r"\g<word> \g<size>", unbulleted(line.text), count=1)
    whole = _IN_BRACKETS.fullmatch(text)
    if whole is not None and is_size(whole["label"]) and is_value(whole["value"]):
        return Said(whole["label"], (("", whole["value"].strip()),), line.number)
    said = _named_in_brackets(text, line.number) or _all_in_brackets(text, line.number)
    if said is not None:
        return said
    text = _BEHIND_IN_BRACKETS.sub(_one_more, text)
    for end in _LABEL_END.finditer(text):
        label = text[: end.start()].strip()
        run = (named_values(text) or sized_values(text)) if label[-1:].isdigit() else None
        if run is not None and len(run.parts) > 1:
            return None  # "26 - 32 33 - 38", "2Y 1 - 2Y 86 cm": ranges, no label and its values
        if not label or len(label) > LONGEST_LABEL or NO_LABEL.search(label):
            return None
        parts = _parts(text[end.end() :])
        pairs = [pair for part in parts if (pair := pair_of(part.strip().rstrip(".")))]
        sign = end[0].strip()[:1]
        if sign in _DASHES and label.isdigit() and _goes_on(int(label), text[end.end() :]):
            return None
        if sign in _ARROWS_AND_COMMAS and not (is_size(label) and _all_measures(pairs)):
            return None
        if pairs and len(pairs) == len(parts) and len({name for name, _ in pairs}) == len(pairs):
            return Said(label, tuple(pairs), line.number)
    return None


def _parts(behind: str) -> list[str]:
    """What stands behind a label in its parts; one where all of it is a value with two ends.

    ``Over 33 lbs/15 kg, less than or equal to 55 lbs/25 kg`` is cut at no comma.
    """
    parts = [part for part in _PART_END.split(behind) if part.strip()]
    united = len(parts) == _ENDS and all(map(is_value, parts)) and is_value(behind)
    both = united and read_cell(behind).reading is Reading.READ
    return [behind] if both else parts


def _one_more(bracket: re.Match[str]) -> str:
    """A bracket that names a measure and gives its value, as one more part of the line."""
    named = is_value(bracket["value"]) and read_heading(bracket["name"]).role is Role.MEASURE
    return f", {bracket['name']}: {bracket['value']}" if named else bracket[0]


def _goes_on(low: int, behind: str) -> bool:
    """Whether a figure behind a dash ends the range that a number begins: ``100 - 110 cm``."""
    high = _FIRST_NUMBER.match(behind)
    return high is not None and low < int(high[0]) <= low * _WIDEST


def _all_measures(pairs: Sequence[tuple[str, str]]) -> bool:
    return all(read_heading(name).role is Role.MEASURE for name, _ in pairs)


def _named_in_brackets(text: str, number: int) -> Said | None:
    found = _NAMED_IN_BRACKETS.fullmatch(text)
    if found is None or not is_size(found["label"]) or not is_value(found["value"]):
        return None
    name, limit = without_limit(found["name"].strip(" :="))
    if read_heading(name).role is not Role.MEASURE:
        return None
    return Said(found["label"], ((name, limit + found["value"].strip()),), number)


def _all_in_brackets(text: str, number: int) -> Said | None:
    """A size and all its measures: ``Men's XS (Half chest: 47 cm, Length: 67 cm)``."""
    found = _ALL_IN_BRACKETS.fullmatch(text)
    if found is None or not is_size(found["label"]):
        return None
    parts = [part for part in _PART_END.split(found["parts"]) if part.strip()]
    pairs = [pair for part in parts if (pair := pair_of(part.strip())) is not None]
    names = {name for name, _ in pairs}
    if len(pairs) < len(parts) or len(names) < len(pairs) or len(pairs) < _FEWEST_IN_BRACKETS:
        return None
    return Said(found["label"], tuple(pairs), number) if _all_measures(pairs) else None


def _with_a_filler(part: str) -> bool:
    """``5'5" to 5'8" tall``: a word that every value of its kind may have behind it is no name."""
    last = part.rsplit(maxsplit=1)
    return len(last) > 1 and is_value(last[0]) and read_cell(part).reading is Reading.READ


def pair_of(part: str) -> tuple[str, str] | None:
    """``Chest: 86-91 cm`` or ``86-91 cm chest`` as a name and its value; None for neither."""
    if _SEVERAL.search(part):
        return None
    if is_value(part) or _with_a_filler(part):
        return "", part
    first = _NAME_FIRST.fullmatch(part)
    if first is not None and is_value(first["value"]):
        name, limit = without_limit(first["name"])
        return name.rstrip(" :="), limit + first["value"]
    last = _VALUE_FIRST.fullmatch(part)
    if last is not None and is_value(last["value"]):
        return last["name"].strip(), last["value"]
    return None
