"""Questions as rows: dangerous ones first, equal ones as one, each with its acts."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from charts.answers import Answer
from charts.importer import read_bytes
from charts.schema import FileReading
from charts.wording import Wording
from harmonizer.shop.season import FileRecord, stage_of
from ui.questions_page.question_rows import QuestionRow, Weight, answers_to, question_rows

EN = Wording("en")
DAY = date(2027, 2, 11)
TWO = b"Size,Chest (cm),Waist (cm)\nSt,84-92,68-76\nM,90-98,74-82\nL,96-104,805\nXL,102-110,86-96\n"
NO_UNIT = b"Size,Chest,Waist\nS,84-92,68-76\nM,90-98,74-82\nL,96-104,80-90\n"
TWICE = NO_UNIT + b"\n" + NO_UNIT.replace(b"84-92", b"85-92")


def rows(reading: FileReading) -> list[QuestionRow]:
    record = FileRecord(reading.file)
    return question_rows(reading, lambda finding: stage_of(finding, record), EN)


def read(data: bytes, answers: Sequence[Answer] = ()) -> FileReading:
    return read_bytes(data, "alder/harrier.csv", "alder", answers)


def test_the_dangerous_question_stands_first() -> None:
    weights = [row.weight for row in rows(read(TWO)) if row.is_open]
    assert weights[0] is Weight.DANGER
    assert Weight.QUESTION in weights
    assert weights == sorted(weights, key=list(Weight).index)


def test_every_question_offers_acts_in_words() -> None:
    open_ones = [row for row in rows(read(TWO)) if row.is_open]
    assert open_ones
    for row in open_ones:
        assert row.acts
        assert all(act.text for act in row.acts)


def test_no_two_acts_of_a_question_come_to_the_same() -> None:
    (row,) = [one for one in rows(read(TWO)) if one.first.code == "impossible"]
    figures = [act.text for act in row.acts if "80.5" in act.text]
    assert len(figures) == 1


def test_equal_questions_are_one_row_and_one_act_answers_all() -> None:
    reading = read(TWICE)
    asked = [one for one in reading.findings if one.code == "unit-missing"]
    grouped = [row for row in rows(reading) if row.first.code == "unit-missing"]
    assert sum(len(row.findings) for row in grouped) == len(asked)
    (row, *_) = grouped
    given = answers_to(row, row.acts[0].choice, reading, "Ada", DAY)
    again = read(TWICE, given)
    left = [one for one in rows(again) if one.is_open and one.first.code == "unit-missing"]
    assert len(left) == len(grouped) - 1


def test_what_is_settled_stays_listed_with_who_and_when() -> None:
    reading = read(NO_UNIT)
    (row,) = [one for one in rows(reading) if one.is_open]
    given = answers_to(row, row.acts[0].choice, reading, "Ada", DAY)
    settled = [one for one in rows(read(NO_UNIT, given)) if one.weight is Weight.SETTLED]
    assert len(settled) == 1
    assert "Ada" in settled[0].more
    assert "11 Feb 2027" in settled[0].more
