"""Letters for headings that a legend around the table tells off."""

from __future__ import annotations

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import questions, ranges, values

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
