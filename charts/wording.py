"""Codes and values to sentences, in the language of the reader. Every face speaks through here.

Sentences stand in ``resources/translations/<language>/<topic>.toml``: one key a code, with named
places for values. A sentence that depends on a count is a table with ``one`` and ``other``.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from decimal import ROUND_HALF_UP, Decimal
from functools import cache, lru_cache
from typing import Final

from charts.resource_files import resources

LANGUAGES: Final = ("en", "de")
_DECIMAL_MARK: Final[Mapping[str, str]] = {"en": ".", "de": ","}
_QUARTERS: Final = ("", " 1/4", " 1/2", " 3/4")
_CM_TO_INCH: Final = Decimal("2.54")
_MINUS: Final = "\N{MINUS SIGN}"

Sentence = str | Mapping[str, str]


@cache
def _topic(language: str, topic: str) -> Mapping[str, Sentence]:
    source = resources() / "translations" / language / f"{topic}.toml"
    return tomllib.loads(source.read_text(encoding="utf-8"))


class Wording:
    """Sentences and figures in one language.

    Attributes:
        language: "en" or "de".
    """

    def __init__(self, language: str = "en") -> None:
        if language not in LANGUAGES:
            raise ValueError(f"no sentences in {language!r}; there are {', '.join(LANGUAGES)}")
        self.language = language

    def say(self, topic: str, code: str, /, **values: object) -> str:
        """The sentence of ``code`` in ``topic`` with ``values`` put in.

        A whole-number value named ``count`` chooses between ``one`` and ``other``.
        Raises KeyError when the topic has no such code, or a value is missing.
        """
        sentence = _topic(self.language, topic)[code]
        if not isinstance(sentence, str):
            sentence = sentence["one" if values.get("count") == 1 else "other"]
        return sentence.format(**values)

    def has(self, topic: str, code: str) -> bool:
        """Whether ``topic`` has a sentence for ``code``."""
        return code in _topic(self.language, topic)

    def number(self, value: Decimal | float, step: str = "0.1") -> str:
        """``value`` rounded half up to ``step``, without needless zeros, in the local mark."""
        return _number(value, step, self.language)

    def cm(self, value: Decimal | float) -> str:
        """A reading or a range end in cm, shown to the half centimetre."""
        return self.number(value, "0.5")

    def margin(self, value: Decimal | float) -> str:
        """A margin in cm, shown to the millimetre."""
        return self.number(value, "0.1")

    def inches(self, value_cm: Decimal | float) -> str:
        """A length in cm shown in inches to the quarter: 92.71 is "36 1/2"."""
        quarters = int(
            (Decimal(str(value_cm)) / _CM_TO_INCH * 4).quantize(Decimal(1), ROUND_HALF_UP)
        )
        whole, rest = divmod(abs(quarters), 4)
        text = f"{whole}{_QUARTERS[rest]}" if whole or not rest else _QUARTERS[rest].strip()
        return (_MINUS if quarters < 0 else "") + text


@lru_cache(maxsize=4096)
def _number(value: Decimal | float, step: str, language: str) -> str:
    """The same, remembered: while a line is moved the same few figures are written again."""
    exact = Decimal(str(value))
    unit = Decimal(step)
    rounded = (exact / unit).quantize(Decimal(1), ROUND_HALF_UP) * unit
    text = f"{abs(rounded):f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    sign = _MINUS if rounded < 0 else ""
    return sign + text.replace(".", _DECIMAL_MARK[language])
