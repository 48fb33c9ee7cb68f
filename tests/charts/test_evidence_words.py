"""Every reading the grammar offers can be explained to a person, in both languages."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

import charts.grammar
from charts.findings import LEVELS
from charts.wording import LANGUAGES, Wording

SOURCES = sorted(Path(charts.grammar.__file__).parent.glob("*.py"))
OFFERED = re.compile(r'Doubt\("([a-z-]+)", "([a-z-]+)"\)')
CANDIDATE = re.compile(r'[,(] "((?:[a-z]+-)+[a-z]+)"\)')


def evidence() -> set[str]:
    """The evidence named in the source of the grammar."""
    text = "\n".join(path.read_text(encoding="utf-8") for path in SOURCES)
    found = {match[2] for match in OFFERED.finditer(text)}
    return found | {match[1] for match in CANDIDATE.finditer(text)}


def test_the_codes_of_doubt_are_questions_of_the_catalogue() -> None:
    for path in SOURCES:
        for match in OFFERED.finditer(path.read_text(encoding="utf-8")):
            assert LEVELS[match[1]] == "question"


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("why", sorted(evidence()))
def test_a_reason_has_its_words(language: str, why: str) -> None:
    assert Wording(language).has("findings", f"why-{why}")
