"""A line that is the name of one size and nothing else: ``Size 36``, ``XS (34):``, ``Maat: S``."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final, NamedTuple

from charts.dimensions import Role, read_heading
from charts.readers.captured.value_runs import is_size, labels_in, values_in
from charts.readers.captured.values import is_value
from charts.size_labels import LabelKind, read_label

_BULLET: Final = re.compile(r"(?:[•▪◦●○·*‣»>✓–-]|#{1,6})\s+")
_AROUND: Final = " \t*_=:;,.–—-"
_LETTER: Final = re.compile(r"[^\W\d_]")
_DIGITS: Final = re.compile(r"\d+")
_LONGEST: Final = 40
_ONE_SIZE: Final = "one size"
_MOST_WORDS: Final = 2
"""Words for a size: ``EU size``, ``Taille enfant``."""


class SizeLine(NamedTuple):
    """The word for sizes that a line begins with, "" for none, its size, and what parts them."""

    word: str
    size: str
    joint: str = ""

    @property
    def for_all(self) -> bool:
        """Whether the size is the only one there is: ``One size``."""
        label = read_label(self.size)
        return label is not None and label.normal == _ONE_SIZE

    def is_like(self, other: SizeLine) -> bool:
        """Whether both name sizes of one list: ``Taille 38`` and ``Taille : 66`` may be waists."""
        if self.word.lower() != other.word.lower():
            return False
        plain = not self.word or not read_heading(self.word).candidates
        return (
            plain
            or not is_value(self.size)
            or (self.joint, self._shape) == (other.joint, other._shape)
        )

    @property
    def _shape(self) -> str:
        return _DIGITS.sub("0", self.size)


@lru_cache(maxsize=4096)
def size_line(text: str) -> SizeLine | None:
    """The one size that ``text`` names; None where it says more, or could say anything else."""
    text = _BULLET.sub("", text.strip(), count=1).strip(_AROUND)
    if not text or len(text) > _LONGEST or labels_in(text) is not None:
        return None
    words = text.replace(":", " : ").split()
    for count in range(1, min(_MOST_WORDS, len(words) - 1) + 1):
        word = " ".join(words[:count])
        behind = " ".join(words[count:])
        rest = behind.lstrip(" :=–—-").strip()
        if rest and _is_word(word) and _is_named_size(rest) and not _is_word(rest.split()[0]):
            return SizeLine(word, rest, behind[: len(behind) - len(rest)].strip())
    return SizeLine("", text) if is_size(text) or _is_for_all(text) else None


def may_measure(name: str) -> bool:
    """Whether ``name`` is a measure's, or may be one where another word names the sizes: Taille."""
    heading = read_heading(name)
    return Role.MEASURE in {heading.role, *(role for role, _ in heading.candidates)}


def _is_word(text: str) -> bool:
    """Whether ``text`` is a word for sizes and no size itself: ``S`` is none."""
    return not is_size(text) and read_heading(text).role is Role.LABEL and len(text) > 1


def _is_named_size(text: str) -> bool:
    """Whether ``text`` is a size where a word for sizes stands before it: then ``140 cm`` is."""
    if is_size(text) or _is_for_all(text):
        return True
    label = read_label(text)
    known = label is not None and label.doubtful is None and label.kind is not LabelKind.WORD
    measured = is_value(text) and len(values_in(text)) == 1 and _LETTER.search(text) is not None
    return known or measured


def _is_for_all(text: str) -> bool:
    label = read_label(text)
    return label is not None and label.normal == _ONE_SIZE
