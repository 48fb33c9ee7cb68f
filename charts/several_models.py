"""One chart for several models: the names that a title or a file's name lists side by side.

Only a plain list is taken: behind a word for models ("Models: A, B and C"), or parted by slashes
or plus signs ("A / B size chart"), every part a name of its own. Anything else is one name.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.schema import Said
from charts.size_labels import read_label

_WORD_FOR_MODELS: Final = re.compile(
    r"^.*?\b(?:models?|modelle|modèles?|modelos?|modelli|modellen|modeller|styles)\s*:\s*(?P<names>.+)$",
    re.IGNORECASE,
)
_LISTED: Final = re.compile(r"\s*(?:[,;/+&]|\b(?:and|und|et|y|e|en|och|og)\b)\s*", re.IGNORECASE)
_PARTED: Final = re.compile(r"\s+[/+]\s+|(?<=\w)/(?=\w)")
_AROUND: Final = re.compile(r"\s+[-–—|:]\s+|:\s+")
_MOST: Final = 8
_LONGEST_NAME: Final = 4
"""Words of a model's name (common practice, no source)."""
_LONGEST_LABEL: Final = 4
"""Letters of a size's name that could be taken for a model's: XXXL."""
_NO_NAMES: Final = frozenset({Role.MEASURE, Role.LABEL, Role.LENGTH_AXIS, Role.UNIT})


def models_in(
    titles: Sequence[str], file: str, own_words: Callable[[str], str]
) -> tuple[Said, ...]:
    """The models a chart is for, where its titles or its file's name list two or more.

    ``own_words`` gives the words of a text that not every chart has.
    """
    for title in titles:
        names = _behind_a_word(title, own_words) or _side_by_side(title, own_words)
        if names:
            return tuple(Said(name, "title") for name in names)
    stem = file.rpartition("/")[2].rpartition(".")[0].replace("_", " ")
    return tuple(Said(name, "file") for name in _side_by_side(stem, own_words))


def _behind_a_word(title: str, own_words: Callable[[str], str]) -> list[str]:
    match = _WORD_FOR_MODELS.match(title.strip())
    return _names(_LISTED.split(match["names"]), own_words) if match else []


def _side_by_side(text: str, own_words: Callable[[str], str]) -> list[str]:
    for part in _AROUND.split(text):
        names = _names(_PARTED.split(part), own_words)
        if names:
            return names
    return []


def _names(parts: Sequence[str], own_words: Callable[[str], str]) -> list[str]:
    """The names of a list; none unless every part is one and no two are the same."""
    names = [own_words(part) for part in parts]
    if not 2 <= len(names) <= _MOST or not all(names):
        return []
    plain = all(_is_name(part, name) for part, name in zip(parts, names, strict=True))
    return names if plain and len({name.casefold() for name in names}) == len(names) else []


def _is_name(part: str, name: str) -> bool:
    """A capitalised name of a few words that names no measure and no size."""
    measured = read_heading(part).role is Role.MEASURE or read_heading(name).role in _NO_NAMES
    size = len(name) <= _LONGEST_LABEL and read_label(name) is not None
    return len(name.split()) <= _LONGEST_NAME and name[:1].isupper() and not measured and not size
