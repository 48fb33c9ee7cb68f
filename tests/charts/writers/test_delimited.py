"""The tidy text: one value a line, exact, and nothing in it that a spreadsheet would calculate."""

from __future__ import annotations

import csv
import io
from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.in_house import InHouseChart
from charts.writers.delimited import COLUMNS, delimited_bytes
from charts.writers.formula_text import harmless


def lines(chart: InHouseChart, separator: str = ",") -> list[dict[str, str]]:
    text = delimited_bytes(chart, separator).decode("utf-8-sig")
    return list(csv.DictReader(io.StringIO(text, newline=""), delimiter=separator))


def test_every_value_has_a_line_of_its_own(chart: InHouseChart) -> None:
    found = [(line["model"], line["size"], line["dimension"]) for line in lines(chart)]
    assert len(found) == 7
    assert found.count(("Fellrunner", "M", "back_length")) == 2


def test_figures_are_exact_beside_what_is_printed(chart: InHouseChart) -> None:
    line = lines(chart)[0]
    assert (Decimal(line["low"]), Decimal(line["high"])) == (Decimal("86.36"), Decimal("91.44"))
    assert (line["unit"], line["published"], line["published_unit"]) == ("cm", "34-36", "in")


def test_what_is_not_given_is_empty(chart: InHouseChart) -> None:
    line = lines(chart)[-1]
    assert (line["season"], line["value"], line["level"]) == ("", "", "")


def test_an_open_question_stands_at_its_value_only(chart: InHouseChart) -> None:
    assert [line["open_questions"] for line in lines(chart)][:2] == ["f3", ""]


def test_a_label_that_looks_like_a_formula_is_made_harmless(chart: InHouseChart) -> None:
    assert lines(chart)[-1]["size"] == "'=cmd|' /C calc'!A0"


def test_tabs_can_separate_instead_of_commas(chart: InHouseChart) -> None:
    assert lines(chart, "\t") == lines(chart)


def test_separators_quotes_and_line_ends_in_a_name_survive(chart: InHouseChart) -> None:
    odd = 'Fell, "run"\nner'
    row = replace(chart.rows[1], model=odd)
    assert lines(replace(chart, rows=(row,)))[0]["model"] == odd


def test_a_chart_without_rows_has_its_heads(chart: InHouseChart) -> None:
    data = delimited_bytes(replace(chart, rows=()))
    assert data.decode("utf-8-sig").strip() == ",".join(COLUMNS)


@pytest.mark.parametrize("text", ["=1+1", "+1+1", "-1+1", "@SUM(A1)", "\t=1", "\r=1", "＝1"])
def test_text_that_would_be_calculated_gets_an_apostrophe(text: str) -> None:
    assert harmless(text) == f"'{text}"


@pytest.mark.parametrize("text", ["", "84-88", "-5", "+5", "-5.25", "-5,25", "M", "1/2", "'x"])
def test_plain_text_and_plain_numbers_stay_as_they_are(text: str) -> None:
    assert harmless(text) == text


@given(st.text())
def test_nothing_harmless_starts_as_a_formula_does(text: str) -> None:
    made = harmless(text)
    assert made[:1] not in {"=", "@", "\t", "\r", "\n"}
    assert made.endswith(text)
