"""All that the words of the main languages are read as, to compare it with and without others."""

from __future__ import annotations

from typing import Any

from charts.dimensions import HeadingReading, read_band, read_heading
from charts.grammar import senses
from charts.headings.whose import whose
from charts.labels.words import known_words, length_words, letter_words, rank_words
from charts.unit_words import figure_units
from charts.vocabulary import MAIN, vocabulary

HALVES_OF_PHRASES = {"garments", "itself"}
"""Lists whose words are only read together: "of the {} itself" with each garment."""


def main_headings() -> list[str]:
    """Every heading word of the main languages, alone, in capitals and as it is printed."""
    words = [
        word
        for name in MAIN
        for key in ("column", "false_friend", "definition")
        for row in vocabulary(name).get(key, ())
        for word in row["words"]
    ]
    beside = [
        word
        for name in MAIN
        for key in ("part", "bands", "basis", "lengths", "labels")
        for part, listed in vocabulary(name).get(key, {}).items()
        if part not in HALVES_OF_PHRASES
        for word in listed
    ]
    forms = [form for word in words for form in (word, word.upper(), f"{word} (cm)")]
    return sorted({*forms, *beside})


def everything_about_main_words() -> dict[str, Any]:
    """All that the main languages' words are read as, in a form that can be compared."""
    texts = main_headings()
    ignored = ("near",)
    fields = [name for name in HeadingReading.__slots__ if name not in ignored]
    cells = {
        word for name in MAIN for listed in vocabulary(name)["cell"].values() for word in listed
    }
    told_units = {
        word: figure_units()[word]
        for table_ in vocabulary("units").values()
        if isinstance(table_, dict)
        for listed in table_.values()
        for word in listed
        if word in figure_units()
    }
    return {
        "headings": {
            text: str([getattr(read_heading(text), name) for name in fields]) for text in texts
        },
        "bands": {text: read_band(text) for text in texts},
        "whose": {text: str(whose(text)) for text in texts},
        "cells": {word: senses.phrases().get(word) for word in sorted(cells)},
        "labels": {
            text: [str(listed.get(text)) for listed in (known_words(), length_words(),
                                                        letter_words(), rank_words())]
            for text in texts
        },
        "units": told_units,
    }  # fmt: skip
