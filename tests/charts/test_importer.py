"""Whatever comes in, the importer answers: no exception, no dangling id, no silent figure."""

from __future__ import annotations

import io
import json
import tomllib
from pathlib import Path

import openpyxl
import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from charts.finding_sentences import sentence_of
from charts.findings import LEVELS, Level
from charts.importer import read_bytes, read_file, read_pasted
from charts.json_form import document
from charts.resource_files import resources
from charts.schema import FileReading, Kind
from charts.wording import LANGUAGES, Wording
from tests.charts.read_text import asked_at, notes, questions, ranges, table, values

WORDS = [
    "Size", "Größe", "Taille", "Chest (cm)", "Chest", "Waist (in)", "Taille (cm)", "Hauteur",
    "Back length", "Weight (kg)", "Brustumfang in cm", "cm", "inch", "from", "to", "min", "max",
    "Women", "Men", "Kids", "S", "M", "L", "XL", "2XL", "Short", "Regular", "Long", "36R", "A", "B",
    "Model", "Unit", "Tolerance", "+/- 1", "± 0.5", "84-88", "84 - 88 cm", "34-36", '34"-36"',
    "5'4\" - 5'6\"", "34 1/2", "57,5", "575", '< 79 cm / < 31"', "bis 60 kg", "L (bis 60 kg)",
    "12-Oct", "2027-10-12", "36526", "3050", "-", "n/a", "?", "", "", "see above", "lorem ipsum",
    "Sizes may vary, please measure twice before you order anything.", "1", "2", "3", "104",
    "9 st 7", "1m55", "85-60-90", "Age", "3-4 years", "#", "EAN", "4012345678901", "½", "²", "١٢",
    "Chest: 84-88 cm\nWaist: 68-72 cm", "86-91\n34-36", "1/2 chest", "Size 34", "=1+1", "1e9",
]  # fmt: skip
TOPICS = tuple(
    topic.name.removesuffix(".toml") for topic in (resources() / "translations" / "en").iterdir()
)
ROWS = st.lists(st.lists(st.sampled_from(WORDS), min_size=1, max_size=7), min_size=1, max_size=9)


def sound(reading: FileReading) -> None:
    """What must hold of every reading, whatever was read."""
    ids = [one.id for one in reading.findings]
    assert len(set(ids)) == len(ids)
    asked = {one.id for one in reading.findings if one.level is Level.QUESTION}
    for value in ranges(reading):
        assert set(value.findings) <= set(ids), "a value names a finding that is not listed"
        assert len(set(value.findings)) == len(value.findings)
        figures = (value.low, value.high, value.value)
        if value.kind is Kind.UNREAD:
            assert figures == (None, None, None)
            assert asked & set(value.findings), "a value without figures needs a question"
        if value.low is not None and value.high is not None:
            assert value.low <= value.high
    assert reading.charts or reading.findings, "a file may not give nothing and say nothing"
    for language in LANGUAGES:
        for one in reading.findings:
            assert sentence_of(one, Wording(language))
    json.dumps(document([reading]), allow_nan=False)


@given(ROWS)
@example([["Size", "Chest (cm)"], ["S", "²"], ["M", "1²"]])
def test_no_table_whatever_makes_the_importer_raise(rows: list[list[str]]) -> None:
    text = "\n".join("\t".join(cell.replace("\n", " / ") for cell in row) for row in rows)
    sound(read_bytes(text.encode(), "any.tsv"))


@given(ROWS)
def test_no_web_page_whatever_makes_the_importer_raise(rows: list[list[str]]) -> None:
    cells = (f"<tr>{''.join(f'<td>{cell}</td>' for cell in row)}</tr>" for row in rows)
    sound(read_bytes(f"<table>{''.join(cells)}</table>".encode(), "any.html"))


@given(st.text(max_size=300))
def test_no_pasted_text_makes_the_importer_raise(text: str) -> None:
    sound(read_pasted(text))


@given(st.binary(max_size=300))
def test_no_bytes_make_the_importer_raise(data: bytes) -> None:
    sound(read_bytes(data, "any.xlsx"))


def test_a_file_that_is_not_there_is_an_error_finding(tmp_path: Path) -> None:
    reading = read_file(tmp_path / "gone.csv", "gone.csv")
    assert [one.level for one in reading.findings] == [Level.ERROR]


def test_every_code_has_a_sentence_in_every_language() -> None:
    for language in LANGUAGES:
        speech = Wording(language)
        lacking = [
            code
            for code in LEVELS
            if not any(speech.has(topic, code) for topic in TOPICS)
            and not speech.has("findings", f"{code}-cell")
        ]
        assert lacking == []


def test_both_languages_have_the_same_sentences() -> None:
    keys = []
    for language in LANGUAGES:
        source = resources() / "translations" / language / "findings.toml"
        keys.append(set(tomllib.loads(source.read_text(encoding="utf-8"))))
    assert keys[0] == keys[1]


def test_a_unit_in_the_heading_is_the_headings() -> None:
    (value, *_) = ranges(table("Size | Chest (in)\nS | 34-36\nM | 36-38"))
    assert (value.unit_from, value.published_unit, value.unit) == ("heading", "in", "cm")


def test_a_unit_in_the_title_is_the_titles() -> None:
    (value, *_) = ranges(table("All sizes in inches\nSize | Chest\nS | 34-36\nM | 36-38"))
    assert (value.unit_from, value.published_unit) == ("title", "in")


def test_a_unit_below_the_table_is_a_notes() -> None:
    reading = table("Size | Chest\nS | 86-90\nM | 90-94\nAll measurements are given in cm here.")
    assert ranges(reading)[0].unit_from == "note"
    assert questions(reading) == []


def test_the_unit_of_the_cell_beats_the_headings_and_is_said() -> None:
    reading = table('Size | Chest (cm)\nS | 34-36"\nM | 36-38"')
    assert values(reading)["S chest"] == (86.36, 91.44)
    assert ranges(reading)[0].unit_from == "cell"
    assert "cell-unit-beats-heading" in notes(reading)


def test_a_unit_on_one_of_several_rows_holds_for_its_like_and_is_said() -> None:
    reading = table("Size | Height (cm) | Chest\nS | 150-160 | 80-84\nM | 160-170 | 84-88")
    assert ranges(reading)[1].unit_from == "sibling"
    assert "unit-extended" in notes(reading)
    assert questions(reading) == []


def test_a_missing_unit_is_asked_once_with_both_readings() -> None:
    reading = table("Size | Chest | Waist\nS | 84-88 | 68-72\nM | 88-92 | 72-76")
    assert questions(reading) == ["unit-missing"]
    assert len(asked_at(reading, "unit-missing")) == 4
    (finding,) = [one for one in reading.findings if one.code == "unit-missing"]
    assert [one.text.rpartition(" ")[2] for one in finding.candidates] == ["cm", "in"]
    assert ranges(reading)[0].published_unit is None


def test_two_printed_units_stand_beside_each_other() -> None:
    reading = table("Size | Chest (in) | Chest (cm)\nS | 34-36 | 86-91\nM | 36-38 | 91-97")
    assert values(reading) == {"S chest": (86, 91), "M chest": (91, 97)}
    also = ranges(reading)[0].also_published
    assert also is not None
    assert (also.unit, also.low, also.high, also.place) == ("in", 34, 36, "B2")
    assert questions(reading) == []


def test_one_row_that_contradicts_its_second_unit_is_asked_about_alone() -> None:
    reading = table(
        "Size | Chest (in) | Chest (cm)\nS | 34-36 | 86-91\nM | 36-38 | 91-97\nL | 38-40 | 107-112"
    )
    assert asked_at(reading, "units-disagree") == ["C4"]


def test_exchanged_unit_headings_are_asked_once() -> None:
    reading = table("Size | Chest (in) | Chest (cm)\nS | 86-91 | 34-36\nM | 91-97 | 36-38")
    assert questions(reading) == ["units-swapped"]
    assert values(reading) == {"S chest": (86, 91), "M chest": (91, 97)}


def test_a_half_girth_is_never_doubled_and_is_asked_about() -> None:
    reading = table("Size | Chest (cm) | Sleeve (cm)\nS | 49 | 60\nM | 52 | 61\nL | 55 | 62")
    assert "laid-flat" in questions(reading)
    assert values(reading)["S chest"] == 49


def test_a_half_girth_that_says_so_is_not_asked_about() -> None:
    reading = table("Size | Chest laid flat (cm)\nS | 49\nM | 52\nL | 55")
    assert questions(reading) == []
    assert ranges(reading)[0].basis == "flat"


def test_figures_beside_height_or_weight_are_the_bodys() -> None:
    reading = table("Size | Chest (cm) | Weight (kg)\nS | 84-88 | 50-60\nM | 88-92 | 60-70")
    assert {value.basis for value in ranges(reading)} == {"body"}


def test_a_word_for_size_over_heights_is_read_as_height_and_asked() -> None:
    reading = table("Size | Chest (cm) | Size\nS | 84-88 | 150-160 cm\nM | 88-92 | 160-170 cm")
    assert values(reading)["S height"] == (150, 160)
    assert questions(reading) == ["heading-two-readings"]


def test_an_unknown_heading_keeps_its_figures_and_is_asked() -> None:
    reading = table("Size | Chest (cm) | Zibbel (cm)\nS | 84-88 | 20-22\nM | 88-92 | 22-24")
    assert values(reading)["S other"] == (20, 22)
    assert questions(reading) == ["heading-unknown"]


def test_a_second_column_of_one_measure_is_not_dropped_silently() -> None:
    reading = table("Size | Chest (cm) | Chest (cm)\nS | 84-88 | 80-84\nM | 88-92 | 84-88")
    assert "column-unused" in questions(reading)


def test_an_age_that_became_a_date_is_turned_back_and_asked() -> None:
    reading = table("Size | Height (cm)\n8-9 | 128-134\n12-Oct | 140-146\n13-14 | 152-158")
    assert [size.label for size in reading.charts[0].sizes] == ["8-9", "10-12", "13-14"]
    assert asked_at(reading, "was-a-date") == ["B3"]


def test_a_height_that_became_a_date_keeps_no_figure() -> None:
    reading = table("Size | Height\nS | 5'1\"\nM | 04-May\nL | 5'7\"")
    assert values(reading)["M height"] is None
    assert asked_at(reading, "was-a-date") == ["B3"]


def test_a_swallowed_decimal_comma_is_offered_and_not_stored() -> None:
    reading = table("Size | Back length (cm)\nS | 57\nM | 575\nL | 58")
    assert values(reading)["M back_length"] is None
    (finding,) = [one for one in reading.findings if one.level is Level.QUESTION]
    assert "57.5" in {f"{one.value:f}" for one in finding.candidates if one.value is not None}


def test_one_value_out_of_order_is_asked_about() -> None:
    reading = table(
        "Size | Chest (cm)\nS | 84-88\nM | 88-92\nL | 62-66\nXL | 96-100\nXXL | 100-104"
    )
    assert asked_at(reading, "order-broken") == ["B4"]


def test_a_column_that_falls_where_sizes_rise_keeps_no_figure() -> None:
    reading = table("Size | Chest (cm)\nS | 96-100\nM | 92-96\nL | 88-92\nXL | 84-88")
    assert questions(reading) == ["rotated"]
    assert set(values(reading).values()) == {None}


def test_a_chart_that_lists_its_largest_size_first_is_in_order() -> None:
    reading = table("Size | Chest (cm)\nXL | 96-100\nL | 92-96\nM | 88-92\nS | 84-88")
    assert questions(reading) == []


def test_a_figure_off_the_step_is_asked_about() -> None:
    reading = table(
        "Size | Chest (cm)\nXS | 80\nS | 84\nM | 88\nL | 90\nXL | 96\nXXL | 100\n3XL | 104"
    )
    assert asked_at(reading, "step-broken") == ["B5"]


def test_a_block_with_rows_and_columns_exchanged_keeps_no_figure() -> None:
    reading = table(
        """
        Size | Chest (cm) | Waist (cm) | Hip (cm)
        XS | 78-82 | 62-66 | 86-90
        S | 82-86 | 86-90 | 90-94
        M | 66-70 | 70-74 | 74-78
        L | 90-94 | 94-98 | 98-102
        XL | 94-98 | 78-82 | 102-106
        """
    )
    assert "rotated" in questions(reading)


def test_figures_that_step_back_are_asked_about_with_those_they_repeat() -> None:
    reading = table(
        "Size | Chest (cm) | Waist (cm)\n38 | 80 | 64\n40 | 84 | 68\n42 | 88 | 72\n"
        "44 | 92 | 76\n46 | 88 | 72\n48 | 92 | 76"
    )
    found = values(reading)
    assert set(asked_at(reading, "rotated")) == {f"{c}{row}" for c in "BC" for row in range(4, 8)}
    assert (found["42 chest"], found["48 waist"], found["46 chest"]) == (88, 76, None)
    assert found["40 chest"] == 84


def test_a_block_upside_down_is_found_in_a_long_table_too() -> None:
    """Trying every block of it would take hours."""
    rows = [(size, 40 + size, 30 + size) for size in range(1, 121)]
    rows[50:54] = [(50 + at + 1, *rows[53 - at][1:]) for at in range(4)]
    lines = ["Size | Chest (cm) | Waist (cm)", *(" | ".join(map(str, row)) for row in rows)]
    reading = table("\n".join(lines))
    turned = {f"{column}{row}" for column in "BC" for row in range(52, 56)}
    assert set(asked_at(reading, "rotated")) == turned


def test_a_sheet_without_a_chart_beside_a_chart_is_noted() -> None:
    book = openpyxl.Workbook()
    page = book.active
    assert page is not None
    for row in (["Size", "Chest (cm)"], ["S", "84-88"], ["M", "88-92"]):
        page.append(row)
    book.create_sheet("About")["A1"] = "Our vests are made by hand."
    out = io.BytesIO()
    book.save(out)
    reading = read_bytes(out.getvalue(), "two.xlsx")
    assert "not-a-chart" in notes(reading)
    assert questions(reading) == []


def test_equal_tables_that_nothing_tells_apart_are_asked_about() -> None:
    page = (
        "<table><tr><th>Size</th><th>Chest (cm)</th></tr><tr><td>S</td><td>{}</td></tr>"
        "<tr><td>M</td><td>{}</td></tr></table>"
    )
    html = page.format("82-86", "86-90") + page.format("92-96", "96-100")
    assert questions(read_bytes(html.encode(), "two.html")) == ["label-repeated"]


@pytest.mark.parametrize("text", ["see XS", "ask us", "adjustable"])
def test_words_where_a_figure_is_due_are_not_dropped(text: str) -> None:
    reading = table(f"Size | Chest (cm)\nS | 84-88\nM | {text}\nL | 92-96")
    assert values(reading)["M chest"] is None
    assert asked_at(reading, "impossible") == ["B3"]
