"""Letters for headings that a legend around the table tells off."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.layout.legend_lines import entries_below_each_other, entries_in_a_row
from charts.schema import FileReading
from tests.charts.read_text import questions, ranges, table, values

TABLE = "| Size | A | B |\n|---|---|---|\n| S | 84-88 | 68-72 |\n| M | 88-92 | 72-76 |\n"


def _page(before: str, after: str = "") -> FileReading:
    return read_bytes(f"# Vests\n\n{before}\n\n{TABLE}\n{after}\n".encode(), "vests.md")


def test_a_legend_above_or_below_names_the_lettered_columns() -> None:
    read = {"S chest": (84, 88), "S waist": (68, 72), "M chest": (88, 92), "M waist": (72, 76)}
    for reading in (
        _page("A — Chest girth (cm)\n\nB — Waist girth (cm)"),
        _page("Made with care.", "A: Chest girth (cm)\n\nB: Waist girth (cm)"),
    ):
        assert values(reading) == read
        assert questions(reading) == []


def test_a_legend_that_lacks_a_letter_or_contradicts_itself_names_none() -> None:
    lacking = _page("A — Chest girth (cm)\n\nThe vests are made with care.")
    assert questions(lacking).count("heading-unknown") == 2
    two = _page("A — Chest girth (cm)\n\nB — Waist girth (cm)\n\nB — Hip girth (cm)")
    assert "heading-unknown" in questions(two)
    assert {value.dimension.value for value in ranges(two)} == {"other"}


CODED = "Gr.\tA (cm)\tB (cm)\tC (cm)\nS\t69.0\t84.0\t61.0\nM\t72.0\t88.0\t63.0\n"


def test_a_unit_beside_the_letter_hides_no_legend_and_an_unknown_entry_is_asked() -> None:
    page = f"A - Taillenumfang in cm\nB - Brustumfang in cm\nC - Ärmelblah\n\n{CODED}"
    reading = read_bytes(page.encode(), "shirts.txt")
    named = {(one.heading, one.dimension.value) for one in ranges(reading)}
    assert named == {("A (cm)", "waist"), ("B (cm)", "chest"), ("C (cm)", "other")}
    assert [one.place for one in reading.findings if one.code == "heading-unknown"] == ["D5"]


def test_an_a_among_other_letters_is_not_the_word_for_an_end() -> None:
    page = f"Ärmellänge in cm\n\n{CODED}"
    reading = read_bytes(page.encode(), "shirts.txt")
    assert {value.dimension.value for value in ranges(reading)} == {"other"}
    assert questions(reading).count("heading-unknown") == 3


def test_a_legend_in_another_unit_than_the_heading_names_nothing() -> None:
    page = f"A - Taillenumfang in Zoll\nB - Brustumfang in cm\nC - Hüftumfang in cm\n\n{CODED}"
    reading = read_bytes(page.encode(), "shirts.txt")
    assert {value.dimension.value for value in ranges(reading) if value.heading == "A (cm)"} == {
        "other"
    }


def _listed(legend: str) -> FileReading:
    """A chart of three lettered columns, or of three lettered rows, below a legend."""
    rows = "| Size | A | B | C |\n|---|---|---|---|\n| S | 82-86 | 66-70 | 90-94 |\n"
    return read_bytes(f"{legend}\n\n{rows}| M | 87-91 | 71-75 | 95-99 |\n".encode(), "vests.md")


LISTED = {
    "S chest": (82, 86),
    "S waist": (66, 70),
    "S hip": (90, 94),
    "M chest": (87, 91),
    "M waist": (71, 75),
    "M hip": (95, 99),
}


@pytest.mark.parametrize(
    "legend",
    [
        "A = Chest, B = Waist, C = Hips. All in cm.",
        "A: Chest; B: Waist; C: Hips. All in cm.",
        "A - Chest B - Waist C - Hips. All in cm.",
        "(A) chest (B) waist (C) hips\n\nAll measurements in cm",
        "A Chest / B Waist / C Hips, in cm",
        "A = Brustumfang, B = Taillenumfang, C = Hüftumfang (Angaben in cm)",
        "A = tour de poitrine (cm), B = tour de taille (cm), C = tour de hanches (cm)",
    ],
)
def test_a_legend_told_off_in_one_line_names_the_columns_too(legend: str) -> None:
    reading = _listed(legend)
    assert values(reading) == LISTED
    assert questions(reading) == []


@pytest.mark.parametrize(
    "line",
    [
        "A chest and a B cup",
        "A = Chest, C = Hips",
        "See A = Chest, B = Waist",
        "A = Blah, B = Waist",
    ],
)
def test_other_lines_are_no_such_legend(line: str) -> None:
    assert entries_in_a_row(line) == []


def test_units_that_each_name_prints_stay_its_own() -> None:
    line = "A = Chest (cm), B = Weight (kg)"
    assert entries_in_a_row(line) == [("A", "Chest (cm)"), ("B", "Weight (kg)")]


def test_a_word_for_a_size_too_is_a_measure_behind_its_letter() -> None:
    reading = table("""Größe | A | B | C
S | 82-86 | 66-70 | 42
M | 87-91 | 71-75 | 44
A - Brustumfang, B - Taille, C - Rückenlänge (cm)""")
    found = values(reading)
    assert (found["M chest"], found["M waist"], found["M back_length"]) == ((87, 91), (71, 75), 44)
    assert questions(reading) == []


@pytest.mark.parametrize("rows", [("S", "M", "L"), ("36", "38", "40")])
def test_letters_over_measures_that_leap_are_no_cups(rows: tuple[str, str, str]) -> None:
    sizes = "".join(
        f"{row} | {52 + 2 * n} | {61 + 2 * n} | {72 + 2 * n}\n" for n, row in enumerate(rows)
    )
    reading = table(f"Size | A | B | C\n{sizes}All in cm")
    assert [size.label for size in reading.charts[0].sizes] == list(rows)
    assert questions(reading) == ["heading-unknown"] * 3


def test_letters_with_a_blank_behind_them_are_told_by_the_lines_that_go_on() -> None:
    legend = "A  Medida pecho (cm)\nB  Medida cintura (cm)"
    reading = table(f"{legend}\n\nTalla | A | B\nS | 84-88 | 68-72\nM | 88-92 | 72-76")
    assert values(reading)["S chest"] == (84, 88)
    assert values(reading)["M waist"] == (72, 76)
    assert questions(reading) == []


def test_a_letter_alone_before_a_measure_is_no_legend() -> None:
    lines = ["A  chest strap holds it", "B  Waist", "D  Hips"]
    assert entries_below_each_other(lines) == []
    assert entries_below_each_other(["A  Chest", "B  Waist", "D  Hips"]) == [
        ("A", "Chest"),
        ("B", "Waist"),
    ]


SIDES = (
    "A  Chest (cm)\nB  Waist (cm)\n\nMen | | | | Women\nSize | A | B | | Size | A | B\n"
    "S | 90-94 | 78-82 | | S | 82-86 | 66-70\nM | 94-98 | 82-86 | | M | 86-90 | 70-74"
)
STACKED = (
    "A  Chest (cm)\nB  Waist (cm)\n\nMen\nSize | A | B\nS | 90-94 | 78-82\nM | 94-98 | 82-86\n\n"
    "Women\nSize | A | B\nS | 82-86 | 66-70\nM | 86-90 | 70-74"
)


@pytest.mark.parametrize("text", [SIDES, STACKED], ids=["beside", "below"])
def test_a_legend_holds_for_the_next_table_under_people_alone(text: str) -> None:
    found = values(table(text))
    assert found["women S chest"] == (82, 86)
    assert found["women M waist"] == (70, 74)
    assert found["men M waist"] == (82, 86)


def test_a_table_with_a_name_of_its_own_takes_no_legend_from_the_one_above() -> None:
    reading = table(STACKED.replace("Women", "Trousers"))
    assert {one.dimension.value for one in ranges(reading)} == {"chest", "waist", "other"}
    assert "heading-unknown" in questions(reading)
