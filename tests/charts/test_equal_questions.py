"""What is asked of two tables alike is one question of the file, and one act settles both."""

from __future__ import annotations

from datetime import date

import pytest

from charts.answers import Answer
from charts.choices import answers, choices, words
from charts.finding_sentences import sentence_of
from charts.findings import Finding, Level
from charts.importer import read_bytes
from charts.schema import FileReading
from charts.wording import LANGUAGES, Wording
from tests.charts.read_text import asked_at, questions

DAY = date(2027, 2, 11)
KINDS = [
    ("Size,Chest,Waist\nS,84,66\nM,88,70\nL,92,74\n", "unit-missing", 12),
    ("Size,Chest width (cm),Hip (cm)\nS,94,90\nM,98,95\nL,102,99\n", "basis-doubtful", 6),
    ("Size,Chest (cm),Zorbel (cm)\nS,84,30\nM,88,32\nL,92,34\n", "heading-unknown", 6),
    ("Size,Chest (cm),Hip blorpy (cm)\nS,84,90\nM,88,94\nL,92,98\n", "heading-two-readings", 6),
    ("Size,Chest (cm)\nS,44\nM,47\nL,50\n", "laid-flat", 6),
]


def twice(text: str) -> str:
    """The table, and under it another one with its largest size called otherwise."""
    return f"{text}\n{text.replace('L,', 'XXL,')}"


def read(text: str, *given: Answer) -> FileReading:
    return read_bytes(twice(text).encode(), "chart.csv", answers=given)


def asked(reading: FileReading) -> Finding:
    (found,) = (one for one in reading.findings if one.level is Level.QUESTION)
    return found


@pytest.mark.parametrize(("text", "code", "count"), KINDS)
def test_it_is_asked_once_and_bears_on_both_tables(text: str, code: str, count: int) -> None:
    reading = read(text)
    assert len(reading.charts) == 2
    assert questions(reading) == [code]
    assert len(asked_at(reading, code)) == count


@pytest.mark.parametrize(("text", "code", "count"), KINDS)
def test_each_choice_settles_both(text: str, code: str, count: int) -> None:
    reading = read(text)
    offered = choices(asked(reading), reading)
    assert offered
    for one in offered:
        after = read(text, *answers(one, asked(reading), "Ann", DAY))
        assert code not in questions(after), one.code
        assert "answer-not-applied" not in {each.code for each in after.findings}, one.code
    assert len(asked_at(reading, code)) == count


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize(("text", "code", "count"), KINDS)
def test_its_choices_are_said_in_words(text: str, code: str, count: int, language: str) -> None:
    reading = read(text)
    said = [words(one, Wording(language)) for one in choices(asked(reading), reading)]
    assert len(set(said)) == len(said) > 0, (code, count)


def test_two_columns_of_one_table_stay_two_questions() -> None:
    text = "Size,Chest (cm),Zorbel (cm),Zorbel (cm)\nS,84,30,60\nM,88,32,64\nL,92,34,68\n"
    reading = read_bytes(text.encode(), "chart.csv")
    assert questions(reading).count("heading-unknown") == 2


def test_other_headings_and_other_units_are_other_questions() -> None:
    text = "Size,Chest\nS,84\nM,88\n\nSize,Chest\nS,34\nM,36\n"
    assert questions(read_bytes(text.encode(), "chart.csv")).count("unit-missing") == 2
    text = "Size,Chest (cm),Zorbel (cm)\nS,84,30\nM,88,32\n"
    text += f"\n{text.replace('Zorbel', 'Quix')}"
    assert questions(read_bytes(text.encode(), "chart.csv")).count("heading-unknown") == 2


SLIPPED = {
    "step-broken": (
        "Size,Chest (cm),Waist (cm)\nXS,84,66\nS,90,71\nM,100,81\nL,101,81\nXL,106,86\nXXL,111,91\n"
    ),
    "order-broken": (
        "Size,Chest (cm),Waist (cm)\n44,100,80\n46,104,84\n48,109,93\n"
        "80,93,77\n84,97,81\n88,101,85\n"
    ),
}


@pytest.mark.parametrize("code", SLIPPED)
def test_a_size_all_of_whose_figures_are_off_is_one_question(code: str) -> None:
    reading = read_bytes(SLIPPED[code].encode(), "chart.csv")
    (found,) = (one for one in reading.findings if one.code == code)
    assert len(found.parts) == 2
    assert {place[0] for place in asked_at(reading, code)} == {"B", "C"}
    for language in LANGUAGES:
        assert "1" in sentence_of(found, Wording(language))
    (chosen,) = choices(found, reading)
    given = answers(chosen, found, "Ann", DAY)
    after = read_bytes(SLIPPED[code].encode(), "chart.csv", answers=given)
    assert code not in questions(after)
    assert "answer-not-applied" not in {each.code for each in after.findings}


def test_slips_of_two_sizes_are_two_questions() -> None:
    text = (
        "Size,Chest (cm),Waist (cm)\nXS,84,66\nS,88,70\nM,82,74\nL,96,78\nXL,100,72\nXXL,104,86\n"
    )
    reading = read_bytes(text.encode(), "chart.csv")
    assert len({one.place for one in reading.findings if one.code == "order-broken"}) == 2
