"""Findings to sentences: one per code, or per code and case, from the topic ``findings``."""

from __future__ import annotations

from typing import Final

from charts.findings import Candidate, Finding
from charts.wording import Wording

TOPIC: Final = "findings"
_FILES: Final = "reading"
"""What readers say of a file; they speak of their own codes with their own values."""
CASE: Final = "case"
"""A value of a finding that chooses between several sentences of one code, where it has them."""


def sentence_of(finding: Finding, wording: Wording) -> str:
    """What was read, where, why it is doubtful and what else it could be, in one sentence."""
    key = f"{finding.code}-{finding.values.get(CASE, '')}"
    if not any(wording.has(topic, key) for topic in (TOPIC, _FILES)):
        key = finding.code
    topic = _FILES if wording.has(_FILES, key) else TOPIC
    return wording.say(topic, key, place=finding.place, **finding.values)


def reason_of(candidate: Candidate, wording: Wording) -> str:
    """Why a person may take this reading; "" when it needs no reason."""
    key = f"why-{candidate.why}"
    return wording.say(TOPIC, key) if wording.has(TOPIC, key) else candidate.why
