"""Questions of one kind are asked once a file, bear on each value, and are settled by one act."""

from __future__ import annotations

from datetime import date

import pytest

from charts.answers import Answer, AsPrinted, CellReads, Corrected
from charts.choices import answers, choices, words
from charts.finding_sentences import sentence_of
from charts.findings import Finding, Level
from charts.importer import read_bytes
from charts.schema import FileReading
from charts.wording import LANGUAGES, Wording
from tests.charts.read_text import asked_at, questions, ranges, values

DAY = date(2027, 2, 11)
STONES = "Size,Hips (cm),Weight (st-lb)\nS,90-94,9-7\nM,94-98,10-12\nL,98-102,12-1\n"
KINDS = [
    ("Size,Height,Chest (in)\nS,5-4,34-36\nM,5-6,36-38\nL,5-11,38-40\n", "feet-or-range", 3),
    (STONES, "feet-or-range", 3),
    ("Size,Hips (cm),Weight (st)\nS,90,9.7\nM,94,10.3\nL,98,11.75\n", "feet-or-range", 3),
    ("Size,Hips (cm),Weight (lbs)\nS,90,3050\nM,94,5070\n", "separator-lost", 2),
    (
        "Size,Chest (in),Waist (in),Hips (in)\nS,34-1/2,28-1/2,36\nM,36-1/2,30-1/4,38\n",
        "double-range",
        4,
    ),
    (
        'Size,Hips,Chest\nS,90 cm,"20-23"" to 23-25"""\nM,94 cm,"23-25"" to 25-27"""\n',
        "double-range",
        2,
    ),
    (
        "Size,Hips (cm),Chest (cm)\nS,90,88-84\nM,94,92-88\nL,98,96-92\nXL,102,100-96\n",
        "order-broken",
        4,
    ),
    (
        (
            'Size,Hips,Chest\nS,90 cm,"34-36"" (86-96 cm)"\nM,94 cm,"36-38"" (91-99 cm)"\n'
            'L,98 cm,"38-40"" (97-106 cm)"\n'
        ),
        "units-disagree",
        3,
    ),
    (
        "Age,Chest,Waist\n0-3 M,26 cm,26 cm\n6-12 M,50 cm,50 cm\n2,53 cm,52 cm\n",
        "laid-flat",
        2,
    ),
]


def read(text: str, *given: Answer) -> FileReading:
    return read_bytes(text.encode(), "chart.csv", answers=given)


def asked(reading: FileReading) -> Finding:
    (found,) = (one for one in reading.findings if one.level is Level.QUESTION)
    return found


@pytest.mark.parametrize(("text", "code", "count"), KINDS)
def test_cells_of_one_kind_are_one_question(text: str, code: str, count: int) -> None:
    reading = read(text)
    assert questions(reading) == [code]
    assert len(asked_at(reading, code)) == count
    assert len(asked(reading).parts) == count


@pytest.mark.parametrize(("text", "code", "count"), KINDS)
def test_each_choice_settles_all_its_values_at_once(text: str, code: str, count: int) -> None:
    reading = read(text)
    offered = choices(asked(reading), reading)
    assert offered
    for one in offered:
        signed = answers(one, asked(reading), "Ann", DAY)
        after = read(text, *signed)
        assert questions(after) == [], one.code
        assert [each.code for each in after.findings if each.settled] == [code], one.code
        assert len(asked_at(after, code)) == count, one.code
        assert "answer-not-applied" not in {each.code for each in after.findings}


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize(("text", "code", "count"), KINDS)
def test_it_is_said_in_words(text: str, code: str, count: int, language: str) -> None:
    reading, wording = read(text), Wording(language)
    sentence = sentence_of(asked(reading), wording)
    assert str(count - 1) in sentence
    assert "{" not in sentence
    said = [words(one, wording) for one in choices(asked(reading), reading)]
    assert len(set(said)) == len(said) > 0, code


def test_what_one_cell_cannot_be_is_offered_for_none() -> None:
    reading = read(STONES)
    assert [one.why for one in asked(reading).candidates] == ["stones-pounds"]
    first = choices(asked(reading), reading)[0]
    after = read(STONES, *answers(first, asked(reading), "Ann", DAY))
    read_as = {key: value for key, value in values(after).items() if "weight" in key}
    assert read_as == {"S weight": 60.33, "M weight": 68.95, "L weight": 76.66}


def test_a_question_asked_once_stays_about_its_cell() -> None:
    reading = read("Size,Height,Chest (in)\nS,5-4,34-36\nM,66,36-38\n")
    (found,) = (one for one in reading.findings if one.code == "feet-or-range")
    assert found.parts == ()
    assert found.values["case"] == "cell"


def test_two_slips_are_two_questions() -> None:
    text = "Size,Chest (cm)\nS,88-84\nM,88-92\nL,96-92\nXL,96-100\n"
    assert questions(read(text)).count("order-broken") == 2


def test_a_cell_that_changed_since_is_asked_about_again() -> None:
    reading = read(STONES)
    signed = answers(choices(asked(reading), reading)[0], asked(reading), "Ann", DAY)
    after = read(STONES.replace("10-12", "11-3"), *signed)
    assert asked_at(after, "feet-or-range")
    assert [one.place for one in ranges(after) if _open(after, one.findings)] == ["C3"]


def test_a_cell_that_is_corrected_alone_leaves_the_others_asked_about() -> None:
    act = Corrected((CellReads("C2", "9-7", "9st 7lb"),))
    after = read(STONES, Answer(act, "Ann", DAY))
    assert [one.place for one in ranges(after) if _open(after, one.findings)] == ["C3", "C4"]


def test_a_cell_that_is_confirmed_alone_leaves_the_others_asked_about() -> None:
    text = KINDS[4][0]
    act = AsPrinted("B2", "double-range", "Chest (in)", "34-1/2")
    after = read(text, Answer(act, "Ann", DAY))
    assert [one.place for one in ranges(after) if _open(after, one.findings)] == ["C2", "B3", "C3"]


def _open(reading: FileReading, ids: tuple[str, ...]) -> bool:
    still = {one.id for one in reading.findings if one.level is Level.QUESTION}
    return bool(still & set(ids))
