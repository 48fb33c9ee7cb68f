"""The words of size tables in many languages, read once from ``resources/vocabulary``.

What each table of those files means is said at the top of ``en.toml``.
"""

from __future__ import annotations

import re
import tomllib
import unicodedata
from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import cache, lru_cache
from typing import Any, Final

from charts.resource_files import resources

MAIN: Final = ("en", "de", "fr", "nl", "it", "es", "pt", "sv", "da", "pl", "cs")
FURTHER: Final = (
    "fi", "is", "et", "lv", "lt", "sk", "hu", "ro", "sl", "sr", "mk", "bg", "uk", "ru", "el", "tr",
    "ca", "vi", "ja", "zh", "ko", "th", "ar", "fa", "he", "id",
)  # fmt: skip
"""Languages whose words never change what a word of the main ones means."""
LANGUAGES: Final = MAIN + FURTHER
SPACELESS: Final = (
    "\u0e00-\u0e7f\u1100-\u11ff\u3005-\u3007\u3040-\u30ff\u3130-\u318f\u3400-\u9fff\uac00-\ud7af"
)
"""For a character class: Thai, Chinese, Japanese and Korean letters, written without a space
between words, or between a word and a unit in Latin letters."""
_LETTERS: Final = str.maketrans(
    {"ł": "l", "ø": "o", "æ": "ae", "œ": "oe", "đ": "d", "ß": "ss", "ı": "i", "°": "o", "º": "o"}
)
_SPELLED_OUT: Final = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue", "ø": "oe", "å": "aa"})
_POSSESSIVE: Final = re.compile(r"(?<=\w)'s\b|(?<=s)'(?=\s|$)")
_PLUS_MINUS: Final = re.compile(r"\+\s*/?\s*-|±")
_WORD: Final = re.compile(rf"\d+/\d+|[{SPACELESS}]+|[^\W_{SPACELESS}]+|[#±]")
_KEPT: Final = frozenset({0, 8})
"""Combining classes that are no accent: none, and the voicing of a Japanese syllable."""

Table = Mapping[str, Any]  # a table as TOML gives it: its values have no one type


@cache
def vocabulary(name: str) -> Table:
    """One file of the vocabulary as it stands. Raises FileNotFoundError for an unknown name."""
    source = resources() / "vocabulary" / f"{name}.toml"
    return tomllib.loads(source.read_text(encoding="utf-8"))


def tables(*path: str, among: Sequence[str] | None = None) -> Iterator[tuple[str, Any]]:
    """(language, what stands at ``path``) for every language that has it, the main ones first."""
    for name in LANGUAGES if among is None else among:
        found: Any = vocabulary(name)
        for step in path:
            found = found.get(step, {}) if isinstance(found, dict) else {}
        if found:
            yield str(vocabulary(name)["language"]), found


def words_at(*path: str) -> frozenset[str]:
    """Every spelling of the word lists at ``path``, in all languages, in normal form."""
    return frozenset(
        spelling for _, words in tables(*path) for word in words for spelling in spellings(word)
    )


def unaccented(text: str) -> str:
    """``text`` folded to lower case without accents: "Größe" is "grosse"."""
    if text.isascii():
        return text.lower()
    decomposed = unicodedata.normalize("NFD", text.casefold().translate(_LETTERS))
    bare = "".join(one for one in decomposed if unicodedata.combining(one) in _KEPT)
    return unicodedata.normalize("NFC", bare)


@lru_cache(maxsize=16384)
def normal(text: str) -> str:
    """The words of ``text`` in lower case, without accents and punctuation, one space between.

    "Taille-omtrek (B)" is "taille omtrek b"; "Women's" is "womens"; "±" and "+/-" are "±".
    """
    folded = unaccented(_PLUS_MINUS.sub(" ± ", text))
    folded = _POSSESSIVE.sub(lambda match: match[0].strip("'"), folded)
    return " ".join(_WORD.findall(folded))


def spellings(word: str) -> Iterable[str]:
    """The normal forms a word is met in: without its accents, and with ä as ae, ø as oe."""
    found = {normal(word)}
    spelled_out = word.lower().translate(_SPELLED_OUT)
    if spelled_out != word.lower():
        found.add(normal(spelled_out))
    return found - {""}
