"""A paragraph that says sizes and figures in one rhythm of brackets somewhere among its words.

``Sizes: S (M; L) = 36 (39; 42)" / 92 (100; 108) cm bust. Yarn: 6 (7; 8) balls.``: as many figures
as sizes, with a unit, and one measure named before or behind them. Words were passed over, so that
the whole is to be compared.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import Final, NamedTuple

from charts.dimensions import Role, read_heading
from charts.readers.captured.brackets import ABOUT, ONE, SERIES, UNIT, bracketed_labels, rounding
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.sentences import measure_among
from charts.readers.captured.supplies import is_supply
from charts.readers.captured.values import OPEN_ENDED

_SIZE: Final = r"(?:\d?X{0,4}[SML]|\d{1,2}XL|\d{1,3}(?:[-/]\d{1,3})?)"
_GAP: Final = r"\s*[\s,;:/()\[\]]\s*(?:[(\[]\s*)?"
_SIZES: Final = re.compile(
    rf"(?<![\w(])[(\[]?{_SIZE}(?:{_GAP}{_SIZE}){{2,12}}(?:[)\]]|(?!\w))", re.IGNORECASE
)
_SAID: Final = re.compile(
    rf"(?P<first>{SERIES})(?P<unit>{UNIT})"
    rf"(?:\s*(?:/|(?P<open>[(\[]))\s*(?P<second>{SERIES})(?P<other>{UNIT})(?(open)\s*[)\]]))?",
    re.IGNORECASE,
)
_LETTER: Final = re.compile(r"[SML]", re.IGNORECASE)
_LAST_WORD: Final = re.compile(r"([^\W\d_]{2,20})\s*[:=]?\s*\Z")
_ENDED: Final = re.compile(r"[.!?;]\s|[)\]]\s*[,.]?\s|,\s")
_BEHIND: Final = re.compile(r"\s*[^\W\d_][^\d.;:!?,]{2,80}")
_ABOUT_LAST: Final = re.compile(rf"\s{ABOUT}\Z", re.IGNORECASE)
_WORD: Final = re.compile(r"[^\W\d_]+")
_EDGES: Final = " \t:=,;-–"
_LONGEST: Final = 4_000
_LONGEST_CLAUSE: Final = 80
_LONGEST_ABOUT: Final = 20


class _Series(NamedTuple):
    """The figures of one measure, and where they stand."""

    name: str
    cells: list[str]
    start: int
    end: int


def bracket_paragraph_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that the first line tells among its words; None where a count is in doubt."""
    text = lines[0].text.strip() if lines else ""
    if not 0 < len(text) <= _LONGEST or text.count("(") + text.count("[") < 2:
        return None
    listed = list(_sizes(text))
    if not listed or any(labels != listed[0][0] for labels, _, _ in listed):
        return None
    labels, start, end = listed[0]
    series = list(_series(text, listed))
    names = [one.name.lower() for one in series]
    if not series or len(set(names)) < len(names):
        return None
    if any(len(one.cells) != len(labels) for one in series):
        return None
    number = lines[0].number
    before, after = text[:start].strip(_EDGES), text[max(end, series[-1].end) :].strip(_EDGES)
    rows = [[before], ["", *labels], *([one.name, *one.cells] for one in series), [after]]
    kept = [[LineCell(one, number) for one in row] for row in rows if any(row)]
    return LineTable(kept, 1, inferred=True)


def _sizes(text: str) -> Iterator[tuple[list[str], int, int]]:
    """The sizes that are listed, each time with their place: letters, or numbers behind a word."""
    for found in _SIZES.finditer(text):
        labels = bracketed_labels(found[0]) if re.search(r"[(\[]", found[0]) else []
        word = _LAST_WORD.search(text[: found.start()])
        told = word is not None and read_heading(word[1]).role is Role.LABEL
        lettered = sum(_LETTER.search(one) is not None for one in labels) > 1
        if labels and (lettered or told):
            yield labels, found.start(), found.end()


def _series(text: str, sizes: Sequence[tuple[list[str], int, int]]) -> Iterator[_Series]:
    """The figures behind the first sizes for which one measure is named."""
    at = sizes[0][1]
    for found in _SAID.finditer(text, sizes[0][2]):
        start = max([at, *(end for _, _, end in sizes if end <= found.start())])
        name = _name(text, start, found, sizes[0][1])
        at = found.end()
        if name and not is_supply(text[found.end() :]):
            yield _Series(name, _cells(found), found.start(), found.end())


def _name(text: str, start: int, found: re.Match[str], first: int) -> str:
    """The measure in the words before the figures, behind them, or before the sizes."""
    before = _ENDED.split(_ABOUT_LAST.sub("", text[start : found.start()]))[-1].strip(_EDGES)
    behind = _BEHIND.match(text, found.end())
    after = behind[0].strip() if behind is not None else ""
    if any(map(OPEN_ENDED.fullmatch, _WORD.findall(f"{before} {after}"))):
        return ""
    if before:
        return _measure(before)
    opening = _ENDED.split(text[max(0, first - _LONGEST_CLAUSE) : first])[-1].strip(_EDGES)
    return _measure(after) or _measure(opening)


def _measure(words: str) -> str:
    """``words`` where they are the name of a measure whole, else the one among them."""
    if not words or len(words) > _LONGEST_CLAUSE:
        return ""
    whole = read_heading(words)
    if whole.role is Role.MEASURE and whole.dimension is not None:
        return words
    return measure_among(words) or ""


def _cells(found: re.Match[str]) -> list[str]:
    """Each figure with its unit, and in the other unit where both have as many; none else."""
    said = _ABOUT_LAST.search(found.string[max(0, found.start() - _LONGEST_ABOUT) : found.start()])
    about = rounding(said[0] if said is not None else "")
    first = [f"{about}{one}{found['unit'].strip()}" for one in ONE.findall(found["first"])]
    if not found["second"]:
        return first
    second = [f"{one}{found['other'].strip()}" for one in ONE.findall(found["second"])]
    if len(first) != len(second):
        return []
    return [f"{one} / {other}" for one, other in zip(first, second, strict=True)]
