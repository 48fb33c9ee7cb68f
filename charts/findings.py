"""What an importer has to say: questions, errors and notes, each with a code and a place.

Bad input is a finding, collected and never raised. The sentence of a finding is made from its
code and values by ``charts.wording``; nothing here speaks.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from decimal import Decimal
from enum import StrEnum
from types import MappingProxyType
from typing import Final


class Level(StrEnum):
    """How much a finding weighs.

    A question must be answered by a person before the value is used without a mark; an error
    could not be read at all; a note only tells.
    """

    QUESTION = "question"
    ERROR = "error"
    NOTE = "note"


_QUESTIONS: Final = [
    "unit-missing",
    "units-disagree",
    "heading-two-readings",
    "heading-unknown",
    "laid-flat",
    "basis-doubtful",
    "was-a-date",
    "impossible",
    "order-broken",
    "step-broken",
    "columns-shifted",
    "units-swapped",
    "rotated",
    "label-repeated",
    "label-mistyped",
    "separator-lost",
    "double-range",
    "feet-or-range",
    "blank-inside",
    "text-order",
    "no-table",
    "column-unused",
]
_NOTES: Final = [
    "single-values",
    "border-shared",
    "overlap",
    "gap",
    "unit-extended",
    "cell-unit-beats-heading",
    "row-repeated",
    "hidden-left-out",
    "label-key-chosen",
    "second-axis",
    "merged-shared",
    "tolerance-kept",
    "rounding-between-units",
    "not-a-chart",
    "text-repaired",
    "several-models",
    "answer-not-applied",
    "habit-departure",
]
_ERRORS: Final = [
    "not-what-it-says",
    "empty-file",
    "truncated",
    "locked",
    "too-large",
    "picture",
    "unreadable",
    "format-newer",
    "formula-without-value",
    "not-there",
    "folder-closed",
    "facts-file",
]

LEVELS: Final[Mapping[str, Level]] = MappingProxyType(
    dict.fromkeys(_QUESTIONS, Level.QUESTION)
    | dict.fromkeys(_NOTES, Level.NOTE)
    | dict.fromkeys(_ERRORS, Level.ERROR)
)

DANGER: Final[Mapping[str, int]] = MappingProxyType(
    {
        code: rank
        for rank, code in enumerate(
            (
                "unit-missing",
                "units-swapped",
                "units-disagree",
                "laid-flat",
                "basis-doubtful",
                "rotated",
                "columns-shifted",
                "order-broken",
                "impossible",
                "heading-two-readings",
            )
        )
    }
)
"""Questions that can turn a right size into a wrong one, most dangerous first."""


@dataclass(frozen=True, slots=True)
class Candidate:
    """One way to read what was asked about, figures in the canonical unit (cm, kg, years)."""

    text: str
    unit: str | None = None
    low: Decimal | None = None
    high: Decimal | None = None
    value: Decimal | None = None
    why: str = ""


@dataclass(frozen=True, slots=True)
class Settled:
    """How a question was closed: the kind of answer, its own words if it has any, who and when.

    ``what`` is a code of the topic "season". ``habit`` is the version of the supplier's habits
    that gave the answer, 0 when a person gave it for this file. ``why`` tells the reading that
    was taken from others of the same text.
    """

    what: str
    text: str = ""
    by: str = ""
    on: date | None = None
    habit: int = 0
    why: str = ""


@dataclass(frozen=True, slots=True)
class Finding:
    """One question, error or note about one place of a source.

    ``values`` fills the sentence of ``code``; ``candidates`` are the readings a person may take.
    ``settled`` says how a question was closed; it stays listed and only tells from then on.
    ``parts`` are the questions of single cells that it asks together, empty where it asks one.
    """

    id: str
    code: str
    place: str
    values: Mapping[str, str] = field(default_factory=dict)
    candidates: tuple[Candidate, ...] = ()
    settled: Settled | None = None
    parts: tuple[Finding, ...] = ()

    @property
    def level(self) -> Level:
        """Question, error or note, fixed by the code; a settled question is a note."""
        return LEVELS[self.code] if self.settled is None else Level.NOTE


Settles = Callable[[Finding], Settled | None]
"""Whether somebody has closed a question already, and how."""


def listed(*ids: str) -> tuple[str, ...]:
    """Ids of findings as a value lists them: each once, in the order they were found."""
    return tuple(dict.fromkeys(ids))


class FindingLog:
    """Collects the findings of one file; equal questions (same code and key) become one.

    ``settles`` is asked of every question whether it is closed already.
    """

    def __init__(self, settles: Settles | None = None) -> None:
        self._findings: dict[tuple[str, str], Finding] = {}
        self._count = 0
        self._settles = settles
        self._closed: set[str] = set()

    def add(
        self,
        code: str,
        place: str,
        *,
        key: str | None = None,
        candidates: tuple[Candidate, ...] = (),
        **values: str,
    ) -> str:
        """Record a finding and return its id, to be listed at every value it bears on.

        ``key`` names the thing asked about (a column, a chart); without one, the place does.
        A second call with the same code and key returns the first id and changes nothing.
        Raises KeyError for a code that is not in the catalogue.
        """
        if code not in LEVELS:
            raise KeyError(code)
        at = (code, place if key is None else key)
        if at not in self._findings:
            self._count += 1
            ident = f"f{self._count}"
            found = Finding(ident, code, place, MappingProxyType(values), candidates)
            self._findings[at] = self._perhaps_settled(found)
        return self._findings[at].id

    def settled(self, ident: str) -> bool:
        """Whether the question of this id is closed: its values hold as they are printed."""
        return ident in self._closed

    def _perhaps_settled(self, finding: Finding) -> Finding:
        asked = self._settles is not None and finding.level is Level.QUESTION
        how = self._settles(finding) if self._settles is not None and asked else None
        if how is None:
            return finding
        self._closed.add(finding.id)
        return replace(finding, settled=how)

    def withdraw(self, ident: str) -> None:
        """Take a finding back because a wider one says it too; unknown ids are no error."""
        kept = {at: one for at, one in self._findings.items() if one.id != ident}
        self._findings = kept

    @property
    def findings(self) -> tuple[Finding, ...]:
        """Everything recorded, in the order it was found."""
        return tuple(self._findings.values())
