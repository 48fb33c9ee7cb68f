"""The judge itself: it must see each way to be wrong, and no more."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from judging import Expected, Outcome, Verdict, covers, judge

ENTRY: dict[str, Any] = {
    "size": "M",
    "band": "women",
    "dimension": "chest",
    "kind": "range",
    "low": 86,
    "high": 91.44,
    "unit": "cm",
    "ask": False,
    "place": "B3",
}
READING: dict[str, Any] = {
    "dimension": "chest",
    "heading": "Chest",
    "definition": "unknown",
    "basis": "body",
    "kind": "range",
    "low": 86.0,
    "high": 91.44,
    "value": None,
    "unit": "cm",
    "low_included": True,
    "high_included": True,
    "tolerance": None,
    "published": "86-91.44",
    "also_published": None,
    "place": "B3",
    "findings": [],
}


def judged(
    *readings: dict[str, Any],
    entry: dict[str, Any] | None = None,
    findings: tuple[dict[str, Any], ...] = (),
    label: str = "M",
    band: str | None = "women",
) -> Verdict:
    expected = Expected(
        "t",
        "t.csv",
        Path("open"),
        clean=False,
        allowed=frozenset(),
        entries=(ENTRY | (entry or {}),),
    )
    size = {"label": label, "length": None, "ranges": [READING | one for one in readings]}
    chart = {"band": band, "sizes": [size]}
    return judge(expected, {"charts": [chart], "findings": list(findings)})


def question(code: str = "unit-missing", place: str = "B1") -> dict[str, Any]:
    return {"id": "f1", "level": "question", "code": code, "place": place, "text": ""}


def test_an_equal_value_is_right() -> None:
    assert judged({}).judged[0].outcome is Outcome.RIGHT


@pytest.mark.parametrize(
    "slip",
    [
        {"low": 86.02},
        {"high": None},
        {"dimension": "waist"},
        {"kind": "single"},
        {"basis": "finished"},
        {"kind": "unread", "low": None, "high": None},
    ],
)
def test_a_slip_is_wrong_when_nobody_asks_and_asked_when_somebody_does(
    slip: dict[str, Any],
) -> None:
    assert judged(slip).judged[0].outcome is Outcome.WRONG
    doubted = judged(slip | {"findings": ["f1"]}, findings=(question(),))
    assert doubted.judged[0].outcome is Outcome.ASKED
    assert doubted.unnecessary == ()


def test_another_band_or_label_is_wrong() -> None:
    assert judged({}, band="men").judged[0].outcome is Outcome.WRONG
    assert judged({}, label="L").judged[0].outcome is Outcome.WRONG


def test_body_and_unknown_are_one_unless_the_basis_is_said() -> None:
    assert judged({"basis": "unknown"}).judged[0].outcome is Outcome.RIGHT
    said = judged({"basis": "unknown"}, entry={"basis": "body"})
    assert said.judged[0].outcome is Outcome.WRONG


def test_a_question_without_need_is_no_right_value() -> None:
    verdict = judged({"findings": ["f1"]}, findings=(question(),))
    assert verdict.judged[0].outcome is Outcome.ASKED
    assert len(verdict.unnecessary) == 1


def test_a_due_question_that_is_not_asked_is_wrong() -> None:
    assert judged({}, entry={"ask": True}).judged[0].outcome is Outcome.WRONG


def test_a_note_is_no_question() -> None:
    note = question() | {"level": "note"}
    verdict = judged({"low": 80, "findings": ["f1"]}, findings=(note,))
    assert verdict.judged[0].outcome is Outcome.WRONG


def test_a_lost_value_is_missing_unless_a_question_speaks_for_it() -> None:
    assert judged().judged[0].outcome is Outcome.MISSING
    at_heading = judged(findings=(question("heading-unknown"),))
    assert at_heading.judged[0].outcome is Outcome.ASKED
    elsewhere = judged(findings=(question("heading-unknown", "C1"),))
    assert elsewhere.judged[0].outcome is Outcome.MISSING


def test_the_due_figures_under_another_name_are_asked_about_or_lost() -> None:
    elsewhere = {"place": "table 1!B3", "dimension": "other"}
    entry = {"place": "D9"}
    doubted = judged(elsewhere | {"findings": ["f1"]}, entry=entry, findings=(question(),))
    assert doubted.judged[0].outcome is Outcome.ASKED
    assert judged(elsewhere, entry=entry).judged[0].outcome is Outcome.MISSING


def test_a_value_nobody_expects_is_extra() -> None:
    verdict = judged({}, {"dimension": "waist", "place": "C3"})
    assert len(verdict.extra) == 1
    assert verdict.silent == 1


@pytest.mark.parametrize(
    ("place", "code", "is_covered"),
    [
        ("B3", "impossible", True),
        ("A1:D9", "order-broken", True),
        ("B1", "unit-missing", False),
        ("B1", "column-unused", True),
        ("A3", "label-repeated", True),
        ("Other!B3", "impossible", False),
    ],
)
def test_a_place_covers_what_it_holds_and_a_heading_what_stands_under_it(
    place: str,
    code: str,
    is_covered: bool,
) -> None:
    assert covers(question(code, place), "Sizes!B3") is is_covered
