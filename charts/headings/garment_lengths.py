"""Phrases for how long a named garment is: ``trouser length``, ``Rocklänge``, ``longueur jupe``."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache

from charts.vocabulary import normal, vocabulary


def garment_lengths(languages: Sequence[str]) -> Iterator[tuple[str, str]]:
    """(language, phrase) for every garment of these languages in every form."""
    for row in vocabulary("garment_lengths")["words"]:
        if row["language"] in languages:
            for form in row["forms"]:
                yield from ((row["language"], form.format(one)) for one in row["garments"])


@cache
def garments_by_name() -> frozenset[str]:
    """The words for garments that are sold beside each other, of all languages."""
    rows = vocabulary("garment_lengths")["words"]
    return frozenset(normal(one) for row in rows for one in row["garments"])
