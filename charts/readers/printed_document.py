"""PDF files to sheets: one for every page that may hold a chart, ``page 3!C4``.

Of a catalogue only the pages that speak of measures and hold figures are taken apart; the
others are named in a note. The importer asks once for the whole file to compare with the page.
"""

from __future__ import annotations

import io
import logging
from collections.abc import Iterable, Iterator, Sequence
from typing import Final

from charts.findings import FindingLog
from charts.measure_words import speaks_of_measures
from charts.patience import Patience
from charts.readers.captured.values import is_value
from charts.readers.pdf_file import (
    BROKEN,
    MOST_WORK,
    clean_copy,
    load_libraries,
    texts_of,
    works_of,
)
from charts.readers.print_continued import with_headings
from charts.readers.print_page import Piece, sheet_of
from charts.readers.printed_page import pieces_from
from charts.readers.source import Claim, Reader, Source, UnusableSourceError
from charts.sheet import Sheet

_MARK: Final = b"%PDF-"
_HEAD: Final = 1024
_END_MARK: Final = b"%%EOF"
_TAIL: Final = 4096
_LONGEST_S: Final = 0.6
"""Seconds of work for one file; what comes after the reader has the rest of two seconds."""
_FEW_VALUES: Final = 4
_LEAST_LETTERS: Final = 8
_MOST_LETTERS: Final = 20_000


def _claims(source: Source) -> Claim:
    return Claim.CERTAIN if _MARK in source.data[:_HEAD] else Claim.NONE


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    load_libraries()  # seconds on a machine's first day, and none of them the file's
    for name in ("pdfminer", "pdfplumber"):  # what is wrong with a file is told by findings
        logging.getLogger(name).setLevel(logging.CRITICAL)
    patience = Patience(_LONGEST_S)
    clean = clean_copy(source.data)
    if _END_MARK not in source.data[-_TAIL:]:
        log.add("truncated", source.name, name=source.name, what="")
    works = works_of(clean)
    able = [number for number, work in enumerate(works) if work is not None and work <= MOST_WORK]
    texts = texts_of(clean, able, patience)
    pictures = [number for number, text in texts.items() if len(text.strip()) < _LEAST_LETTERS]
    if len(pictures) == len(works):
        raise UnusableSourceError("picture", case="pages")
    chosen = _chosen({number: text for number, text in texts.items() if number not in pictures})
    read = dict(_pieces(clean, chosen, patience))
    unread = [number for number in chosen if number in read and read[number] is None]
    fair = {number for number, text in texts.items() if len(text) <= _MOST_LETTERS}
    _say(
        source.name,
        log,
        pictures=[*pictures, *unread],
        too_much={*range(len(works))} - (fair - {*chosen}) - {*read},
        others=fair - {*chosen, *pictures},
    )
    pages = {number: pieces for number, pieces in read.items() if pieces}
    if not pages and unread:
        raise UnusableSourceError("picture", case="pages")
    return tuple(sheet_of(pieces, at + 1) for at, pieces in with_headings(pages).items())


def _chosen(texts: dict[int, str]) -> list[int]:
    """The pages that may hold a chart: all of them where none speaks of measures."""
    fair = {number: text for number, text in texts.items() if len(text) <= _MOST_LETTERS}
    figures = [number for number, text in fair.items() if _values(text) >= _FEW_VALUES]
    measures = {number for number in figures if speaks_of_measures(texts[number])}
    goes_on = {number + 1 for number in measures if _values(fair.get(number + 1, ""))}
    return sorted(measures | goes_on) or figures or [*fair]


def _values(text: str) -> int:
    return sum(map(is_value, text.split()))


def _pieces(
    clean: bytes, chosen: Sequence[int], patience: Patience
) -> Iterator[tuple[int, list[Piece] | None]]:
    """What stands on each chosen page, None where it cannot be read, while there is patience.

    The first is always read.
    """
    import pdfplumber
    from pdfminer.psexceptions import PSException
    from pdfplumber.utils.exceptions import PdfminerException

    broken = (PSException, PdfminerException, *BROKEN)
    try:
        document = pdfplumber.open(io.BytesIO(clean), pages=[number + 1 for number in chosen])
        pages = list(document.pages)
    except broken as problem:
        raise UnusableSourceError("truncated") from problem
    for page in pages:
        if page is not pages[0] and patience.is_over:
            return
        try:
            yield page.page_number - 1, pieces_from(page)
        except broken:
            yield page.page_number - 1, None
        page.close()


def _say(
    name: str,
    log: FindingLog,
    *,
    pictures: Iterable[int],
    too_much: Iterable[int],
    others: Iterable[int],
) -> None:
    """One finding for each kind of pages that are not read."""
    if places := _places(too_much):
        log.add("too-large", name, key="pages", name=name, what=places, case="pages")
    if places := _places(pictures):
        log.add("not-a-chart", places, key="pictures", case="pictures")
    if places := _places(others):
        log.add("not-a-chart", places, key="pages", case="pages")


def _places(numbers: Iterable[int]) -> str:
    """Pages as a person writes them: "page 1–3, 7"."""
    runs: list[list[int]] = []
    for number in sorted(set(numbers)):
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    said = [f"{run[0] + 1}–{run[-1] + 1}" if len(run) > 1 else str(run[0] + 1) for run in runs]
    return f"page {', '.join(said)}" if said else ""


READER: Final = Reader("printed document", _claims, _open)
