"""Hold the importer's JSON of one file against what its table really says."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from functools import lru_cache
from pathlib import Path
from typing import Any, Final

Json = Mapping[str, Any]
TOLERANCE: Final = 0.01
ALSO_TOLERANCE: Final = 0.02
STRUCTURAL: Final = frozenset(
    [
        "no-table",
        "text-order",
        "columns-shifted",
        "rotated",
        "heading-unknown",
        "heading-two-readings",
        "column-unused",
        "separator-lost",
        "label-repeated",
        "was-a-date",
    ]
)
"""Questions at a heading or a table that speak for the unread values below or beside it."""

WHOLE: Final = frozenset(["no-table", "text-order", "separator-lost", "columns-shifted"])
"""Questions that speak for a whole file or table when they stand at no cell."""


class Outcome(StrEnum):
    """How one expected value came out."""

    RIGHT = "right"
    ASKED = "asked"
    WRONG = "wrong"
    MISSING = "missing"
    UNUSED = "unused"  # an optional value that was not read


@dataclass(frozen=True, slots=True)
class Expected:
    """One file's expectation."""

    name: str
    source: str
    folder: Path
    clean: bool
    allowed: frozenset[str]
    entries: tuple[Json, ...]

    @property
    def closed(self) -> bool:
        """Whether the file is for measuring only."""
        return self.folder.name.startswith("closed")


@dataclass(frozen=True, slots=True)
class Value:
    """One RANGE of the JSON with what it inherits from its chart and size."""

    band: str | None
    label: str | None
    length: str | None
    reading: Json
    questions: frozenset[str]


@dataclass(frozen=True, slots=True)
class Judged:
    """One expected value beside the one read for it."""

    entry: Json
    value: Value | None
    outcome: Outcome
    why: str


@dataclass(frozen=True, slots=True)
class Verdict:
    """One file: its judged values, the extra ones, and its questions."""

    expected: Expected
    judged: tuple[Judged, ...]
    extra: tuple[Value, ...]
    questions: tuple[Json, ...]
    unnecessary: tuple[Json, ...]
    findings: tuple[Json, ...] = field(default=())

    def count(self, outcome: Outcome) -> int:
        """How many expected values came out so."""
        return sum(one.outcome is outcome for one in self.judged)

    @property
    def values(self) -> int:
        """How many values count: all but the optional ones that were not read."""
        return len(self.judged) - self.count(Outcome.UNUSED)

    @property
    def silent(self) -> int:
        """Values that are wrong, missing or invented, and nobody is asked."""
        return self.count(Outcome.WRONG) + self.count(Outcome.MISSING) + len(self.extra)


def load_expected(path: Path) -> Expected:
    """Read one ``NAME.expected.json``."""
    document = json.loads(path.read_text(encoding="utf-8"))
    return Expected(
        name=path.name.removesuffix(".expected.json"),
        source=document["source"],
        folder=path.parent,
        clean=document["clean"],
        allowed=frozenset(document.get("questions", ())),
        entries=tuple(document["entries"]),
    )


def judge(expected: Expected, file_json: Json) -> Verdict:
    """Compare ``file_json`` (one element of ``files``) with the expectation."""
    findings = tuple(file_json.get("findings", ()))
    questions = tuple(one for one in findings if one["level"] == "question")
    values = list(_values(file_json, frozenset(one["id"] for one in questions)))
    pairs, rest = _pair(expected.entries, values)
    judged = tuple(
        _outcome(entry, value, findings)
        for entry, value in zip(expected.entries, pairs, strict=True)
    )
    extra = tuple(value for value in rest if not value.questions)
    doubted = tuple(value for value in rest if value.questions)
    unnecessary = tuple(
        one
        for one in questions
        if (expected.clean and one["code"] not in expected.allowed)
        or not _due(one, expected.allowed, judged, (*extra, *doubted))
    )
    return Verdict(expected, judged, extra, questions, unnecessary, findings)


def _values(file_json: Json, questions: frozenset[str]) -> Iterator[Value]:
    for chart in file_json.get("charts", ()):
        for size in chart["sizes"]:
            for reading in size["ranges"]:
                yield Value(
                    chart["band"],
                    size["label"],
                    size["length"],
                    reading,
                    questions & frozenset(reading["findings"]),
                )


def _pair(entries: Sequence[Json], values: list[Value]) -> tuple[list[Value | None], list[Value]]:
    """Find each entry's value: an equal one first, then one at its place, then its namesake."""
    pairs: list[Value | None] = [None] * len(entries)
    rest = list(values)
    for same in (_equal_there, _equal, _there, _namesake_in_band, _namesake, _kept_with_a_question):
        for index, entry in enumerate(entries):
            if pairs[index] is None:
                found = next((one for one in rest if same(entry, one)), None)
                if found is not None:
                    pairs[index] = found
                    rest.remove(found)
    return pairs, rest


def _equal(entry: Json, value: Value) -> bool:
    return not differences(entry, value)


def _equal_there(entry: Json, value: Value) -> bool:
    return _at_place(entry, value) and _equal(entry, value)


def _at_place(entry: Json, value: Value) -> bool:
    place = entry.get("place")
    return place is not None and _same_place(place, str(value.reading["place"]))


def _there(entry: Json, value: Value) -> bool:
    return _at_place(entry, value) and (
        _named(entry, value) or value.reading["dimension"] in _several(entry["dimension"])
    )


def _named(entry: Json, value: Value) -> bool:
    labels = {_squeezed(one) for one in _several(entry.get("size"))}
    return _squeezed(value.label) in labels and (
        "length" not in entry or _squeezed(entry["length"]) == _squeezed(value.length)
    )


def _namesake(entry: Json, value: Value) -> bool:
    return _named(entry, value) and value.reading["dimension"] in _several(entry["dimension"])


def _kept_with_a_question(entry: Json, value: Value) -> bool:
    """The due figures stand under that size, named as something else, and somebody is asked."""
    return (
        bool(value.questions)
        and _named(entry, value)
        and _band_fits(entry, value)
        and not _number_differences(entry, value.reading)
    )


def _namesake_in_band(entry: Json, value: Value) -> bool:
    return _namesake(entry, value) and _band_fits(entry, value)


def differences(entry: Json, value: Value) -> list[str]:
    """What differs between an expected and a read value, one phrase each."""
    found = []
    if not _named(entry, value):
        found.append(f"size {value.label!r} length {value.length!r}")
    if not _band_fits(entry, value):
        found.append(f"band {value.band!r}, due {entry.get('band')!r}")
    found += _word_differences(entry, value.reading)
    found += _number_differences(entry, value.reading)
    if "also" in entry:
        found += _also_differences(entry["also"], value.reading["also_published"])
    return found


def _word_differences(entry: Json, reading: Json) -> list[str]:
    found = [
        f"{key} {reading[key]!r}, due {entry[key]!r}"
        for key in ("dimension", "kind", "unit", "definition", "low_included", "high_included")
        if key in entry and reading[key] not in _several(entry[key])
    ]
    basis = _several(entry["basis"]) if "basis" in entry else ("unknown", "body")
    if reading["basis"] not in basis:
        found.append(f"basis {reading['basis']!r}, due {basis!r}")
    return found


def _number_differences(entry: Json, reading: Json) -> list[str]:
    return [
        f"{key} {reading[key]!r}, due {entry.get(key)!r}"
        for key in ("low", "high", "value", "tolerance")
        if not (key == "tolerance" and key not in entry)
        and not _close(entry.get(key), reading[key], TOLERANCE)
    ]


def _also_differences(due: Json, also: Json | None) -> list[str]:
    if also is None:
        return [f"the other unit is lost, due {due!r}"]
    same = also["unit"] == due["unit"] and all(
        _close(due.get(key), also[key], ALSO_TOLERANCE) for key in ("low", "high", "value")
    )
    return [] if same else [f"the other unit {also!r}, due {due!r}"]


def _close(due: float | None, read: float | None, tolerance: float) -> bool:
    if due is None or read is None:
        return due is read
    return abs(float(due) - float(read)) <= tolerance


def _band_fits(entry: Json, value: Value) -> bool:
    band = entry.get("band")
    return band == "any" or value.band in _several(band)


def _several(one: Any) -> Sequence[Any]:
    return one if isinstance(one, list) else (one,)


@lru_cache(maxsize=4096)
def _squeezed(text: str | None) -> str | None:
    """One spelling of blanks and dashes: XXS–XS and XXS-XS are one label, only cleaned."""
    return None if text is None else re.sub(r"[‐-―−]", "-", re.sub(r"\s+", " ", text)).strip()


def _outcome(entry: Json, value: Value | None, findings: Sequence[Json]) -> Judged:
    if value is None:
        return _without_value(entry, findings)
    differ = differences(entry, value)
    ask = entry["ask"]
    if differ:
        outcome = Outcome.ASKED if value.questions else Outcome.WRONG
        return Judged(entry, value, outcome, "; ".join(differ))
    if ask is True and not value.questions:
        return Judged(entry, value, Outcome.WRONG, "no question, and one is due")
    if ask is False and value.questions:
        return Judged(entry, value, Outcome.ASKED, "a question without need")
    return Judged(entry, value, Outcome.RIGHT, "")


def _without_value(entry: Json, findings: Sequence[Json]) -> Judged:
    if entry.get("optional"):
        return Judged(entry, None, Outcome.UNUSED, "")
    for one in findings:
        if one["level"] != "note" and covers(one, entry.get("place")):
            return Judged(entry, None, Outcome.ASKED, f"not read, {one['code']} at {one['place']}")
    return Judged(entry, None, Outcome.MISSING, "no value and no question")


def _due(
    question: Json, allowed: frozenset[str], judged: Sequence[Judged], rest: Sequence[Value]
) -> bool:
    """Whether a question had a reason: it is expected, or something really is in doubt."""
    ident = question["id"]
    if any(ident in value.questions for value in rest):
        return True
    borne = [one for one in judged if one.value is not None and ident in one.value.questions]
    if borne:
        return any(one.entry["ask"] is not False or differences_of(one) for one in borne)
    if question["code"] in allowed:
        return True
    return any(one.value is None and covers(question, one.entry.get("place")) for one in judged)


def differences_of(one: Judged) -> list[str]:
    """What differs in a judged value; nothing when it was not read."""
    return differences(one.entry, one.value) if one.value is not None else []


_CELLS: Final = re.compile(r"([A-Z]+)(\d+)(?::([A-Z]+)(\d+))?")


def _split(place: str) -> tuple[str, str]:
    sheet, mark, cells = place.rpartition("!")
    return (sheet, cells) if mark else ("", place)


def _rectangle(cells: str) -> tuple[int, int, int, int] | None:
    match = _CELLS.fullmatch(cells)
    if match is None:
        return None
    left, top = _column(match[1]), int(match[2])
    right = _column(match[3]) if match[3] else left
    bottom = int(match[4]) if match[4] else top
    return left, top, right, bottom


def _column(letters: str) -> int:
    number = 0
    for letter in letters:
        number = number * 26 + ord(letter) - ord("A") + 1
    return number


def _same_place(one: str, other: str) -> bool:
    (sheet, cells), (other_sheet, other_cells) = _split(one), _split(other)
    sheets_fit = not sheet or not other_sheet or sheet == other_sheet
    return sheets_fit and cells == other_cells


def covers(finding: Json, value_place: str | None) -> bool:
    """Whether a question or an error speaks for a value that was not read."""
    place, code = str(finding["place"]), finding["code"]
    error = finding["level"] == "error"
    whole = code in WHOLE or error
    if value_place is None:
        return whole
    (sheet, cells), (value_sheet, value_cells) = _split(place), _split(value_place)
    if sheet and value_sheet and sheet != value_sheet:
        return False
    outer, inner = _rectangle(cells), _rectangle(value_cells)
    if outer is None or inner is None:
        return whole
    inside = _within(outer[0], inner[0], outer[2]) and _within(outer[1], inner[1], outer[3])
    if inside or not (code in STRUCTURAL or error):
        return inside
    above = outer[3] < inner[1] and _within(outer[0], inner[0], outer[2])
    beside = outer[2] < inner[0] and _within(outer[1], inner[1], outer[3])
    return above or beside


def _within(low: int, middle: int, high: int) -> bool:
    return low <= middle <= high
