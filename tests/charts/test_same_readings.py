"""One chart in every kind of file gives the same readings."""

from __future__ import annotations

from email.message import EmailMessage
from pathlib import Path
from typing import Final

import pytest

from charts.importer import read_bytes
from charts.inner_files import parts_of
from charts.schema import FileReading, UnitFrom
from tests.charts.hostile.making import zipped
from tests.charts.read_text import asked_at, notes, questions, ranges

DATA: Final = Path(__file__).resolve().parents[1] / "data"
Told = tuple[object, ...]


def told(reading: FileReading) -> list[Told]:
    """Every value with all that its place in the file does not decide."""
    return [
        (
            chart.band,
            size.label,
            size.length,
            one.dimension,
            one.heading,
            one.definition,
            one.basis,
            one.kind,
            one.low,
            one.high,
            one.value,
            one.unit,
            one.unit_from,
            one.published,
        )
        for chart in reading.charts
        for size in chart.sizes
        for one in size.ranges
    ]


def data_file(name: str) -> FileReading:
    return read_bytes((DATA / name).read_bytes(), name)


def letter() -> bytes:
    message = EmailMessage()
    message["From"], message["To"] = "office@maker.example", "buyer@shop.example"
    message["Subject"], message["Message-ID"] = "Fernside", "<1@maker.example>"
    message.set_content("Dear buyer,\nhere is the chart.\n")
    page = (DATA / "one_chart.html").read_text(encoding="utf-8")
    message.add_alternative(page, subtype="html")
    return bytes(message)


def test_the_workbook_itself_is_read_right() -> None:
    whole = data_file("one_chart.xlsx")
    assert len(told(whole)) == 15
    assert questions(whole) == []
    first = ranges(whole)[0]
    assert (first.low, first.high, first.unit_from) == (80, 84, UnitFrom.TITLE)


@pytest.mark.parametrize("ending", ["xls", "ods", "docx", "odt", "html", "pdf"])
def test_another_kind_of_file_gives_the_same_readings(ending: str) -> None:
    assert told(data_file(f"one_chart.{ending}")) == told(data_file("one_chart.xlsx"))


@pytest.mark.parametrize("ending", ["xls", "ods", "docx", "odt", "html"])
def test_another_kind_of_file_asks_and_notes_the_same(ending: str) -> None:
    other, whole = data_file(f"one_chart.{ending}"), data_file("one_chart.xlsx")
    assert (questions(other), notes(other)) == (questions(whole), notes(whole))


def test_a_letter_that_holds_the_chart_gives_the_same_readings() -> None:
    reading = read_bytes(letter(), "fernside.eml")
    assert told(reading) == told(data_file("one_chart.xlsx"))
    assert questions(reading) == []


def test_a_chart_in_an_archive_gives_the_same_readings() -> None:
    packed = zipped({"spring/one_chart.xlsx": (DATA / "one_chart.xlsx").read_bytes()})
    (inner, _outer) = parts_of(packed, "charts.zip")
    assert inner.name == "charts.zip/spring/one_chart.xlsx"
    assert told(read_bytes(inner.data, inner.name)) == told(data_file("one_chart.xlsx"))


@pytest.mark.parametrize("ending", ["xls", "ods"])
def test_number_formats_raised_figures_and_dates_survive(ending: str) -> None:
    other, whole = data_file(f"formats.{ending}"), data_file("formats.xlsx")
    assert told(other) == told(whole)
    assert (questions(other), notes(other)) == (questions(whole), notes(whole))


def test_every_value_of_a_printed_page_carries_one_question_for_the_file() -> None:
    reading = data_file("one_chart.pdf")
    assert questions(reading) == ["text-order"]
    assert len(asked_at(reading, "text-order")) == 15
    (question,) = [one for one in reading.findings if one.code == "text-order"]
    assert question.place == "one_chart.pdf"
    assert ranges(reading)[0].place == "page 1!B5:C5"
