"""The charts page: every file a row, its open questions first, each cell to be found."""

from __future__ import annotations

from charts.findings import Candidate, FindingLog
from charts.schema import FileReading
from tests.ui.shop import model_chart
from ui.charts_page.file_report import FileReport
from ui.charts_page.file_rows import CLEAR, PROBLEM, QUESTION, file_rows
from ui.theme import Theme
from ui.words import Words

WORDS = Words("en")


def asked() -> FileReading:
    log = FindingLog()
    log.add(
        "unit-missing",
        "Women!C3",
        heading="Chest",
        unit="cm",
        other="in",
        candidates=(Candidate("84-88 cm"), Candidate("84-88 in")),
    )
    return FileReading("alder/women.xlsx", (model_chart("Alder", "Harrier"),), log.findings)


def failed() -> FileReading:
    log = FindingLog()
    log.add("empty-file", "empty.csv", name="empty.csv")
    return FileReading("alder/empty.csv", (), log.findings)


CLEAN = FileReading("alder/men.csv", (model_chart("Alder", "Merle"),))


def test_problems_stand_first_then_questions_then_the_rest() -> None:
    rows = file_rows([CLEAN, asked(), failed()], WORDS)
    assert [row.look for row in rows] == [PROBLEM, QUESTION, CLEAR]


def test_a_file_that_failed_says_why() -> None:
    (row,) = file_rows([failed()], WORDS)
    assert "empty" in row.says
    assert row.sentence.startswith("empty.csv")


def test_a_file_tells_what_it_gave_and_what_is_open() -> None:
    (row,) = file_rows([asked()], WORDS)
    assert row.says == "one chart, 6 sizes · 1 open question"


def test_the_report_lists_the_question_with_its_readings_and_every_value() -> None:
    (row,) = file_rows([asked()], WORDS)
    page = FileReport(Theme(), WORDS).page(row)
    assert "84-88 in" in page
    assert page.index("Women!C3") < page.index("<table")
    assert page.count("<tr") == 7


def test_the_asked_place_is_marked_in_the_report() -> None:
    (row,) = file_rows([CLEAN], WORDS)
    plain = FileReport(Theme(), WORDS).page(row)
    marked = FileReport(Theme(), WORDS).page(row, "Women!C4")
    assert "name='here'" not in plain
    assert "name='here'" in marked


def test_what_stands_in_a_file_is_never_taken_for_markup() -> None:
    reading = FileReading("<b>.csv", (model_chart("<i>Alder", "Harrier"),))
    (row,) = file_rows([reading], WORDS)
    page = FileReport(Theme(), WORDS).page(row)
    assert "<i>Alder" not in page
    assert "&lt;b&gt;.csv" in page
