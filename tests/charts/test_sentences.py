"""Every sentence exists in both languages and names the same values."""

from __future__ import annotations

import string
import tomllib
from pathlib import Path

import pytest

from charts.resource_files import resources
from charts.wording import LANGUAGES

TOPICS = sorted(
    Path(str(file)).stem
    for file in (resources() / "translations" / LANGUAGES[0]).iterdir()
    if str(file).endswith(".toml")
)


def sentences(language: str, topic: str) -> dict[str, str]:
    """The sentences of a topic, those that depend on a count as ``code.one`` and ``code.other``."""
    file = resources() / "translations" / language / f"{topic}.toml"
    found: dict[str, str] = {}
    for code, sentence in tomllib.loads(file.read_text(encoding="utf-8")).items():
        if isinstance(sentence, str):
            found[code] = sentence
        else:
            found |= {f"{code}.{number}": text for number, text in sentence.items()}
    return found


def values_of(sentence: str) -> set[str]:
    return {name for _, name, _, _ in string.Formatter().parse(sentence) if name}


@pytest.mark.parametrize("topic", TOPICS)
def test_both_languages_say_the_same_things(topic: str) -> None:
    english, german = (sentences(language, topic) for language in LANGUAGES)
    assert english.keys() == german.keys()


@pytest.mark.parametrize("topic", TOPICS)
def test_both_languages_name_the_same_values(topic: str) -> None:
    english, german = (sentences(language, topic) for language in LANGUAGES)
    differing = {
        code: (values_of(english[code]), values_of(german[code]))
        for code in english.keys() & german.keys()
        if not code.endswith(".one") and values_of(english[code]) != values_of(german[code])
    }
    assert differing == {}


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("topic", TOPICS)
def test_a_sentence_that_counts_has_one_and_other(language: str, topic: str) -> None:
    numbers: dict[str, set[str]] = {}
    for code in sentences(language, topic):
        base, dot, number = code.rpartition(".")
        if dot:
            numbers.setdefault(base, set()).add(number)
    assert {base: found for base, found in numbers.items() if found != {"one", "other"}} == {}
