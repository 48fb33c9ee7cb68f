"""Letters to makers about the files at hand, under the names by which the shop knows the models."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from charts.answers import Answer, Question
from charts.findings import Finding
from charts.importer import folder_of, read_sheets
from charts.regions import regions_of
from charts.sources import LoadedFile
from charts.writers.letter import Letter, letter_of
from harmonizer.offers import offers


def letter_about(
    file: LoadedFile,
    answers: Sequence[Answer],
    on: date,
    *,
    shop: str = "",
    signed: str = "",
    questions: Sequence[Finding] | None = None,
) -> Letter:
    """The letter about a file's open questions, or some of them. Reads the file; pure.

    ``answers`` are those given already: what they settled is not asked again.
    """
    name = file.read_as or file.reading.file
    reading, sheets = read_sheets(file.data, name, folder_of(name), answers)
    asked = {Question.of(one) for one in questions} if questions is not None else None
    chosen = [one for one in reading.findings if asked is None or Question.of(one) in asked]
    models = dict.fromkeys(
        offer.model for offer in offers([reading], file.facts) if offer.facts is not None
    )
    return letter_of(
        reading,
        regions_of(reading, sheets),
        on,
        shop=shop,
        signed=signed,
        questions=None if asked is None else chosen,
        models=tuple(models),
    )
