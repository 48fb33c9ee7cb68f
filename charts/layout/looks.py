"""What one cell could be when nothing is known of its column: value, label, heading, band, words.

A cell may be several of these at once (34 is a value and a label). Only the table decides.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Final

from charts.cell_text import clean
from charts.dimensions import HeadingReading, Role, read_band, read_heading
from charts.notation import CellReading, Reading, read_cell
from charts.size_labels import LabelKind, SizeLabel, read_label, read_length

_VALUE: Final = frozenset({Reading.READ, Reading.ASK, Reading.TOLERANCE})
_WORDY: Final = frozenset({LabelKind.ALPHA, LabelKind.WORD, LabelKind.COMBINED})
_NO_HEADING: Final = HeadingReading(Role.UNKNOWN)
_HEADING_ROLES: Final = frozenset(Role) - {Role.UNKNOWN, Role.BAND, Role.NOTE}
_REFERENCE: Final = re.compile(r"^\s*[A-Z]\s*[:.)]\s+")
"""A letter that refers to a drawing: ``A: Chest``."""
_NUMBERED: Final = re.compile(
    r"(?:\d{1,2}\s*(?://|[.):])|½|1/2)\s*(?:[^\W\d_]{2,}+[^\d\w]*+)+(?:[^\W\d_]\d{1,2})?"
)
"""A name with its number or a half before it: ``03 // Total length``, ``1/2 hem sweep H4``."""
_SIZE_COMPOUND: Final = re.compile(
    r"(?!körper|koerper|kopf|lichaams|kropps|kropp)([^\W\d_]{3,})-?"
    r"(?:größen?|grössen?|groessen?|maat|maten|storlek|størrelse)",
    re.IGNORECASE,
)
"""Compounds such as Kleidergröße, kindermaat: words for a size, whatever stands before."""
_SHORT_NAME: Final = re.compile(r"[(\[]\s*([^\W\d_]{1,4}\.?)\s*[)\]]")
_LISTING: Final = re.compile(r"[^\W\d_]{2,}\s*[:=]\s*[<>~]?\d")
_NAMED_FIGURES: Final = re.compile(
    r"[^\W\d_]{3,}\s+[<>~]?\d[\d.,/ -]*(?:cm|mm|in(?:ch(?:es)?)?|kg|lbs?|\")", re.IGNORECASE
)
_SHARE: Final = re.compile(r"\d\s?%")
"""What something is made of: ``100% nylon``. No measure is a share of anything."""
_TOLERANCE_SIGNS: Final = frozenset({"+/-", "±", "+-", "(+/-)", "(±)"})
LONG_TEXT: Final = 40
"""Characters above which a lone cell is a sentence, no label and no heading (common practice)."""


@dataclass(frozen=True, slots=True)
class Look:
    """One text, seen from every side."""

    text: str
    blank: bool
    reading: CellReading
    label: SizeLabel | None
    length: str | None
    heading: HeadingReading
    band: str | None

    @property
    def value(self) -> bool:
        """Figures of a measurement can be read from it, and it names no size beside them."""
        return self.reading.reading in _VALUE and self.reading.label is None

    @property
    def figures(self) -> bool:
        """It holds digits and is no word: a value, or figures that no rule covers."""
        unread = self.reading.reading is Reading.UNREAD
        said = _NUMBERED.fullmatch(self.text) or _SHARE.search(self.text)
        return self.value or (unread and said is None)

    @property
    def wordy_label(self) -> bool:
        """A size label that cannot be a measurement: S, XL, Medium, Adult Small."""
        return self.label is not None and not self.value and self.label.kind in _WORDY

    @property
    def sure_label(self) -> bool:
        """A size label that cannot be a plain number."""
        return self.label is not None and not self.value

    @property
    def bare_band(self) -> bool:
        """It says who wears it and nothing else: ``Women``, and no size such as ``Youth S``."""
        named = self.label is not None and self.label.kind is not LabelKind.WORD
        return self.band is not None and not self.value and not named

    @property
    def heads(self) -> bool:
        """It names a column or a row."""
        named = self.heading.role in _HEADING_ROLES and not self._an_age and not self._a_size
        return named and not self.value and not self.listing

    @property
    def measures(self) -> bool:
        """It names a dimension."""
        named = self.heading.role is Role.MEASURE and not self._an_age
        return named and not self.value and not self.listing

    @property
    def _an_age(self) -> bool:
        """``Age 5-6`` is the name of a size; ``Age`` alone heads a column of them."""
        aged = self.label is not None and self.label.kind is LabelKind.AGE
        return aged and any(sign.isdigit() for sign in self.text)

    @property
    def _a_size(self) -> bool:
        """``Size 4`` is the name of one; ``Size`` alone heads a column of them."""
        named = self.heading.role is Role.LABEL and self.label is not None and not self.label.also
        return named and any(sign.isdigit() for sign in self.text)

    @property
    def listing(self) -> bool:
        """It names a measure and gives its figures too: ``Chest: 84-88 cm``."""
        if _LISTING.search(self.text) is not None:
            return True
        return len(_NAMED_FIGURES.findall(self.text)) > 1

    @property
    def sentence(self) -> bool:
        """It is too long to be a label or a heading."""
        return len(self.text) > LONG_TEXT


def _heading(text: str) -> HeadingReading:
    """The heading a text is; a short name of its own in brackets, such as (OW), says no more."""
    text = _REFERENCE.sub("", text)
    reading = read_heading(text)
    if not reading.candidates and reading.role is not Role.UNKNOWN:
        return reading
    compound = _SIZE_COMPOUND.fullmatch(text.strip())
    if compound is not None:
        band = reading.band or read_band(compound[1])
        return replace(
            reading, role=Role.LABEL, dimension=None, band=band, candidates=(), slips=(), strange=""
        )
    match = _SHORT_NAME.search(text)
    if match is None or read_heading(match[1]).role is not Role.UNKNOWN or read_band(match[1]):
        return reading
    bare = read_heading(_SHORT_NAME.sub(" ", text))
    return bare if bare.role is Role.MEASURE and not bare.candidates else reading


@lru_cache(maxsize=65536)
def look(text: str) -> Look:
    """See ``text`` from every side; cached, since sheets repeat themselves."""
    plain = clean(text)
    reading = read_cell(text)
    lettered = any(character.isalpha() for character in plain)
    named = lettered or plain in _TOLERANCE_SIGNS
    heading = _heading(text) if named and len(plain) <= 200 else _NO_HEADING
    return Look(
        text=plain,
        blank=reading.reading is Reading.BLANK,
        reading=reading,
        label=read_label(text) if plain and reading.reading is not Reading.BLANK else None,
        length=read_length(text) if lettered else None,
        heading=heading,
        band=read_band(text) if lettered else None,
    )
