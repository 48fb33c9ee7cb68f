"""What is offered for a question: every question of the demo can be answered, and by its words."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from charts.choices import alike, answers, choices, same_choice, settled_words, words
from charts.findings import LEVELS, Candidate, Finding, Level
from charts.importer import read_bytes
from charts.resource_files import resources
from charts.schema import FileReading, Kind
from charts.wording import LANGUAGES, Wording

DAY = date(2027, 2, 11)
DEMO = Path(str(resources())) / "demo" / "charts"
TABLES = Path(__file__).parent / "met_tables"
QUESTIONS = [code for code, level in LEVELS.items() if level is Level.QUESTION]


def read(text: str) -> FileReading:
    return read_bytes(text.encode(), "chart.csv", "north")


def questions(reading: FileReading) -> list[Finding]:
    return [one for one in reading.findings if one.level is Level.QUESTION]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("code", QUESTIONS)
def test_every_question_offers_something_in_words(code: str, language: str) -> None:
    candidates = (
        Candidate("36 in", "cm", why="column-fits"),
        Candidate("chest", why="heading-fits-values"),
        Candidate("10-12", why="day-month"),
    )
    finding = Finding("f1", code, "B3", {"heading": "Chest", "text": "36"}, candidates)
    offered = choices(finding, FileReading("chart.csv", findings=(finding,)))
    said = [words(one, Wording(language)) for one in offered]
    assert said
    assert len(set(said)) == len(said)
    assert all(one.acts for one in offered)


@pytest.mark.parametrize(
    "path", [p for p in sorted(DEMO.rglob("*")) if p.suffix in {".csv", ".tsv", ".md", ".txt"}],
    ids=lambda path: path.name,
)  # fmt: skip
def test_every_choice_of_the_demo_closes_its_question(path: Path) -> None:
    data = path.read_bytes()
    reading = read_bytes(data, path.name, "north")
    for asked in questions(reading):
        offered = choices(asked, reading)
        assert offered, asked.code
        for one in offered:
            after = read_bytes(data, path.name, "north", answers(one, asked, "Ann", DAY))
            left = {(f.code, f.place, f.values.get("text")) for f in questions(after)}
            assert (asked.code, asked.place, asked.values.get("text")) not in left, one.code
            assert not [f for f in after.findings if f.code == "answer-not-applied"]


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_settled_question_says_by_whom_and_what(language: str) -> None:
    reading = read("Size;Chest (cm)\nS;84-88\nM;33 - 40 in (91-102 cm)\nL;94-98\n")
    (asked,) = [one for one in questions(reading) if one.code == "units-disagree"]
    given = answers(choices(asked, reading)[0], asked, "Ann", DAY)
    text = "Size;Chest (cm)\nS;84-88\nM;33 - 40 in (91-102 cm)\nL;94-98\n"
    after = read_bytes(text.encode(), "chart.csv", "north", given)
    (closed,) = [one for one in after.findings if one.settled is not None]
    said = settled_words(closed, Wording(language))
    assert "Ann" in said
    assert "91" in said
    assert "102" in said
    assert settled_words(asked, Wording(language)) == ""


def test_the_figure_of_a_reading_is_shown_where_its_print_hides_it() -> None:
    hidden = Candidate("505", "cm", value=read_decimal("50.5"), why="decimal-lost")
    shown = Candidate("91-102 cm", "cm", read_decimal("91"), read_decimal("102"), why="as-printed")
    finding = Finding("f1", "impossible", "F20", {"case": "cell", "text": "505"}, (hidden, shown))
    said = [words(one, Wording()) for one in choices(finding, FileReading("a.csv"))]
    assert said[0].startswith("Take 505 as 50.5 cm")
    assert said[1].startswith("Take 91-102 cm (")


def read_decimal(text: str) -> object:
    from decimal import Decimal

    return Decimal(text)


def test_equal_questions_are_answered_by_one_act() -> None:
    text = "Size;Chest (cm);Hip (cm)\nS;84;90\nM;8;95\nL;92;99\n"
    reading = read(f"{text}\n{text.replace('84', '85')}")
    doubted = [one for one in questions(reading) if one.code == "impossible"]
    assert len(doubted) == 2
    assert alike(doubted[0], reading) == tuple(doubted)
    chosen = choices(doubted[0], reading)[0]
    given = list(answers(chosen, doubted[0], "Ann", DAY))
    same = same_choice(chosen, doubted[1], reading)
    assert same is not None
    given += answers(same, doubted[1], "Ann", DAY)
    after = read_bytes(f"{text}\n{text.replace('84', '85')}".encode(), "chart.csv", "north", given)
    assert "impossible" not in {one.code for one in questions(after)}


def test_questions_about_other_headings_are_not_equal() -> None:
    reading = read("Size;Zorbel (cm);Quix (cm);Chest (cm)\nS;60;40;84\nM;62;42;88\nL;64;44;92\n")
    unknown = [one for one in questions(reading) if one.code == "heading-unknown"]
    assert len(unknown) == 2
    assert alike(unknown[0], reading) == (unknown[0],)


def test_a_turned_block_can_be_turned_back_in_one_act() -> None:
    data = (DEMO / "heidezwaan" / "maattabel.md").read_bytes()
    reading = read_bytes(data, "maattabel.md")
    (asked,) = questions(reading)
    back = next(one for one in choices(asked, reading) if one.code == "turn-back")
    after = read_bytes(data, "maattabel.md", "", answers(back, asked, "Ann", DAY))
    assert questions(after) == []
    block = [one for size in after.charts[0].sizes for one in size.ranges]
    assert all(one.kind is not Kind.UNREAD for one in block)
    # The three cells of the diagonal stand where they stood.
    assert sum(one.corrected is not None for one in block) == 6
