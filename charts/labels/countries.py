"""Numbers with the country whose sizes they are: ``EU 36``, ``36 EU``, ``EU 36 / UK 10 / US 8``."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from charts.labels.numbers import numbers_label
from charts.labels.reading import SizeLabel
from charts.labels.words import label_words
from charts.vocabulary import unaccented

_PARTS: Final = re.compile(r"\s*[/|,]\s*|\s+-\s+")
_BEFORE: Final = re.compile(r"([a-z]{1,4})\.?[ :-]?\s*(?=\d)(.+)")
_BEHIND: Final = re.compile(r"(\d[\d/-]*)\s?\(?([a-z]{2,4})\)?")
"""Two letters at least behind the number: 36 D is the size of a cup."""
_MOST: Final = 5


def without_country(text: str) -> str | None:
    """The number of ``EU 36``, ``36 EU`` and ``36 (EU)``; None where no country is named."""
    folded = unaccented(text)
    if (before := _BEFORE.fullmatch(folded)) and before[1] in label_words("systems"):
        return before[2]
    behind = _BEHIND.fullmatch(folded)
    return behind[1] if behind and behind[2] in label_words("systems") else None


def countries_label(text: str) -> SizeLabel | None:
    """One size by its numbers in one country or several: the first names it; or None."""
    parts = _PARTS.split(text)
    if len(parts) > _MOST or not any(map(str.isdigit, text)):
        return None
    numbers = [_number(part) for part in parts]
    first = numbers[0]
    if first is None or any(one is None for one in numbers):
        return None
    return replace(first, text=text, also=tuple(parts[1:]))


def _number(part: str) -> SizeLabel | None:
    bare = without_country(part)
    return numbers_label(bare) if bare else None
