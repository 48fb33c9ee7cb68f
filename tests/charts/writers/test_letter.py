"""The letter to a maker: every open question once, numbered, its number at the doubtful cells."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest
from lxml import html

from charts.answers import Answer, Question
from charts.choices import answers, choices
from charts.findings import LEVELS, Finding, Level
from charts.importer import read_sheets
from charts.regions import regions_of
from charts.resource_files import resources
from charts.wording import LANGUAGES, Wording
from charts.writers.letter import Letter, asked_words, letter_of, letter_text
from charts.writers.letter_page import letter_page

DAY = date(2027, 2, 11)
TEXT = "Size;Chest (cm);Waist (cm)\nS;84-88;68-72\nM;889-93;73-77\nL;94-98;78-82\n"
DEMO = Path(str(resources())) / "demo" / "charts"


def letter(text: str, *given: Answer, name: str = "chart.csv", folder: str = "north") -> Letter:
    return letter_of_bytes(text.encode(), *given, name=name, folder=folder)


def letter_of_bytes(data: bytes, *given: Answer, name: str, folder: str = "") -> Letter:
    reading, sheets = read_sheets(data, name, folder, given)
    return letter_of(reading, regions_of(reading, sheets), DAY, shop="Oxmarrick", signed="Ann")


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("code", [code for code, level in LEVELS.items() if level == "question"])
def test_every_kind_of_question_has_a_sentence_for_the_maker(code: str, language: str) -> None:
    wording = Wording(language)
    asked = asked_words(Finding("f1", code, "B3", {"text": "12", "heading": "Hip"}), wording)
    assert asked.endswith(("?", "."))
    assert asked != wording.say("letter", "ask-anything-else")


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_question_stands_once_with_its_place_and_number(language: str) -> None:
    wording = Wording(language)
    found = letter(TEXT)
    assert found.points
    text = " ".join(letter_text(found, wording).split())
    for point in found.points:
        said = f"{point.number}. {point.finding.place}: {asked_words(point.finding, wording)}"
        assert text.count(" ".join(said.split())) == 1


def test_the_number_stands_at_the_doubtful_cell_and_nowhere_else() -> None:
    found = letter(TEXT)
    rows = [line for line in letter_text(found, Wording()).splitlines() if "[1]" in line]
    assert [row.split() for row in rows] == [["M", "889-93", "[1]", "73-77"]]


def test_the_copy_shows_every_cell_as_printed() -> None:
    text = letter_text(letter(TEXT), Wording())
    for line in TEXT.splitlines():
        assert all(cell in text for cell in line.split(";"))


def test_a_settled_question_is_not_asked_again() -> None:
    reading, _ = read_sheets(TEXT.encode(), "chart.csv", "north")
    given = []
    for asked in [one for one in reading.findings if one.level is Level.QUESTION]:
        given += answers(choices(asked, reading)[-1], asked, "Ann", DAY)
    assert given
    assert {one.about for one in given} == {Question.of(p.finding) for p in letter(TEXT).points}
    assert letter(TEXT, *given).points == ()


def test_a_question_about_a_column_stands_at_its_heading() -> None:
    found = letter("Size;Chest;Waist\nS;60;56\nM;65;58\nL;70;62\n")
    (copy,) = found.copies
    assert copy.numbers == {(0, 1): (1,)}


def test_a_turned_block_is_numbered_at_all_its_cells() -> None:
    data = (DEMO / "heidezwaan" / "maattabel.md").read_bytes()
    found = letter_of_bytes(data, name="maattabel.md")
    (copy,) = found.copies
    assert sorted(copy.numbers) == [(row, column) for row in (1, 2, 3) for column in (2, 3, 4)]


def test_merged_cells_of_the_page_stay_merged() -> None:
    name = "Tarnwhistle size guide SS27.xlsx"
    found = letter_of_bytes((DEMO / "tarnwhistle" / name).read_bytes(), name=name)
    page = html.fromstring(letter_page(found, Wording()))
    spans = [int(cell.get("colspan", "1")) for cell in page.xpath("//tr[3]/td")]
    assert spans.count(2) == 4
    (asked,) = page.xpath("//td[@class='asked']")
    assert asked.text_content().split() == ["in", "[1]"]


def test_the_page_fetches_nothing_and_runs_nothing() -> None:
    page = letter_page(letter(TEXT.replace("S;", "<script>x</script>;")), Wording()).decode()
    assert not re.search(r"<script|<img|<link|https?:|src=|url\(", page)
    assert "&lt;script&gt;" in page


def test_a_long_sheet_is_cut_and_says_so() -> None:
    more = "\n" + TEXT.replace("889", "89")
    text = letter_text(letter(TEXT + 40 * more), Wording())
    assert Wording().say("letter", "copy-cut") in text
    assert len(text.splitlines()) < 200


def test_the_two_languages_are_two_letters() -> None:
    found = letter(TEXT)
    english, german = (letter_text(found, Wording(language)) for language in LANGUAGES)
    assert "Dear" in english
    assert "Sehr geehrte" in german
    assert replace(found, signed="") != found
