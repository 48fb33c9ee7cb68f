"""Phrases for how long a named garment is: ``trouser length``, ``Rocklänge``, ``longueur jupe``."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from charts.vocabulary import vocabulary


def garment_lengths(languages: Sequence[str]) -> Iterator[tuple[str, str]]:
    """(language, phrase) for every garment of these languages in every form."""
    for row in vocabulary("garment_lengths")["words"]:
        if row["language"] in languages:
            for form in row["forms"]:
                yield from ((row["language"], form.format(one)) for one in row["garments"])
