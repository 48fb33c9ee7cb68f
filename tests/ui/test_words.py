"""What the screen says: both languages whole, every sentence used, and room for longer ones."""

from __future__ import annotations

import re
import string
import tomllib
from collections.abc import Mapping
from pathlib import Path

import pytest

from charts.wording import LANGUAGES

ROOT = Path(__file__).resolve().parents[2]
Sentences = Mapping[str, str | Mapping[str, str]]


def sentences(language: str) -> Sentences:
    text = (ROOT / "resources" / "translations" / language / "screen.toml").read_text("utf-8")
    return tomllib.loads(text)


def places(sentence: str | Mapping[str, str]) -> set[str]:
    """The named places of a sentence, over all its forms."""
    forms = [sentence] if isinstance(sentence, str) else list(sentence.values())
    return {name for form in forms for _, name, _, _ in string.Formatter().parse(form) if name}


def test_both_languages_say_the_same_things() -> None:
    assert set(sentences("en")) == set(sentences("de"))


@pytest.mark.parametrize("key", sorted(sentences("en")))
def test_both_languages_have_the_same_places(key: str) -> None:
    assert places(sentences("en")[key]) == places(sentences("de")[key])


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_count_has_both_its_forms(language: str) -> None:
    for sentence in sentences(language).values():
        if not isinstance(sentence, str):
            assert set(sentence) == {"one", "other"}


def test_every_sentence_is_said_somewhere() -> None:
    """A key is named whole, or by the stem that the code completes."""
    code = "\n".join(path.read_text("utf-8") for path in (ROOT / "ui").rglob("*.py"))
    unused = [
        key
        for key in sentences("en")
        if f'"{key}"' not in code
        and not any(f'f"{key[: at + 1]}{{' in code for at, mark in enumerate(key) if mark == "-")
    ]
    assert not unused


@pytest.mark.parametrize("language", LANGUAGES)
def test_nothing_is_promised(language: str) -> None:
    """No protection claims: neither safe nor guaranteed, nor what stands for them."""
    text = (ROOT / "resources" / "translations" / language / "screen.toml").read_text("utf-8")
    assert not re.search(
        r"\b(safe|guarante\w*|perfect|sicher|garantier\w*|ideal)\b", text, re.IGNORECASE
    )
