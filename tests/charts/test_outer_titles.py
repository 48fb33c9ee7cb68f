"""Two titles above one table and one above the next: a name over both and a name of each."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Basis
from tests.charts.read_text import questions, ranges, table

TOPS = "Size | Chest (cm) | Waist (cm)\nS | 84-88 | 66-70\nM | 88-92 | 70-74\n"
SKIRTS = "Size | Waist (cm) | Hip (cm)\n38 | 66-70 | 90-94\n40 | 70-74 | 94-98\n"


def bands(text: str) -> list[str | None]:
    return [chart.band for chart in table(text).charts]


def test_a_band_over_the_name_of_a_table_holds_for_the_names_below_it() -> None:
    women = f"Women\nTops\n{TOPS}\nSkirts\n{SKIRTS}\n"
    men = f"Men\nShirts\n{TOPS}\nTrousers\n{SKIRTS}\nOveralls\n{SKIRTS}"
    assert bands("Spring\n" + women + men) == ["women", "women", "men", "men", "men"]


@pytest.mark.parametrize(
    ("above", "below"),
    [
        ("Women\nSize chart", "Skirts"),  # the second title names no table
        ("Women\nTops", "Size chart"),
        ("Women\nTops", "Men's skirts"),
        ("Women\nSizes in cm", "Skirts"),
        ("Women's tops\nTops", "Zorbo's tops"),  # like the name of a band, of nobody known
    ],
)
def test_no_band_is_carried_where_a_title_is_of_another_kind(above: str, below: str) -> None:
    men = f"Men\nShirts\n{TOPS}"
    assert bands(f"Spring\n{above}\n{TOPS}\n{below}\n{SKIRTS}\n{men}")[1] in {None, "men"}


def test_no_band_is_carried_where_none_other_stands_over_names() -> None:
    assert bands(f"Spring\nWomen\nTops\n{TOPS}\nGloves\n{SKIRTS}") == ["women", None]


def test_a_sentence_over_the_name_of_a_table_holds_for_the_names_below_it() -> None:
    garment = "The figures below are those of the finished garment, not of the body."
    text = f"{garment}\nTops\n{TOPS}\nSkirts\n{SKIRTS}"
    assert {one.basis for one in ranges(table(text))} == {Basis.FINISHED}


def test_a_note_about_all_measures_holds_for_the_table_below_it_too() -> None:
    text = (
        f"Tops\n{TOPS}\nAll measures are taken on the body, not on the garment.\nSkirts\n{SKIRTS}"
    )
    assert {one.basis for one in ranges(table(text))} == {Basis.BODY}


def test_an_unnamed_table_that_repeats_the_sizes_of_the_one_above_is_asked_about() -> None:
    other = TOPS.replace("84-88", "94-98").replace("88-92", "98-102")
    assert questions(table(f"Tops\n{TOPS}\n{other}")) == ["label-repeated"]
    assert questions(table(f"Tops\n{TOPS}\nShirts\n{other}")) == []


NECKS = "Size | Neck (cm)\nS | 36-37\nM | 38-39\n"


def test_a_band_holds_for_tables_without_a_name_down_to_the_next_band() -> None:
    text = f"Men\n{NECKS}\n{SKIRTS}\nWomen\n{TOPS}\n{NECKS}\nKids\n{TOPS}"
    assert bands(text) == ["men", "men", "women", "women", "kids"]


@pytest.mark.parametrize(
    ("first", "between", "second"),
    [
        ("Men", TOPS, "Women"),  # it measures the same again: a name may be lost
        ("Men", NECKS, "Zorbo"),
        ("Men's Zorbo", NECKS, "Women"),  # what is not a Zorbo may be anybody's
        ("Men", NECKS, "Men"),
        ("Men", " | " + NECKS.strip().replace("\n", "\n | "), "Women"),
    ],
)
def test_no_band_is_carried_down_to_a_table_that_may_have_lost_its_name(
    first: str, between: str, second: str
) -> None:
    assert bands(f"{first}\n{TOPS}\n{between}\n\n{second}\n{TOPS}")[1] is None


def test_behind_the_last_band_a_table_without_a_name_is_nobodys() -> None:
    assert bands(f"Men\n{TOPS}\nWomen\n{TOPS}\n{NECKS}") == ["men", "women", None]


_BODY = "Size,Chest (cm),Waist (cm)\nS,88-92,76-80\nM,92-98,80-86\n"
_JACKET = "Size,Width under the arms,Length\nS,52,68\nM,55,70\n"
_LONG = "Measurements of the jacket - laid flat (all in cm)"


def test_a_long_title_behind_a_blank_row_is_of_the_table_below_it() -> None:
    text = f"Men's softshell jackets\nBody measurements\n{_BODY}\n{_LONG}\n{_JACKET}"
    reading = read_bytes(text.encode(), "a.csv")
    assert [chart.band for chart in reading.charts] == ["men", "men"]
    bases = [{one.basis for one in chart.sizes[0].ranges} for chart in reading.charts]
    assert (bases[0], bases[1]) == ({Basis.BODY}, {Basis.FLAT})
    assert questions(reading) == []


@pytest.mark.parametrize("end", [".", " of everybody."])
def test_a_sentence_there_is_a_note_of_the_table_above(end: str) -> None:
    text = f"Jackets\n{_BODY}\n{_LONG}{end}\n{_JACKET}"
    assert read_bytes(text.encode(), "a.csv").charts[0].notes == (f"{_LONG}{end}",)


def test_whose_measures_follow_ends_no_name_but_where_names_are_for_different_people() -> None:
    both = f"Men's jackets\n{_BODY}\nGarment measurements\n{_JACKET}"
    assert [one.band for one in read_bytes(both.encode(), "a.csv").charts] == ["men", "men"]
    third = f"Women's jackets\n{_BODY}\n{both}"
    assert read_bytes(third.encode(), "a.csv").charts[2].band is None


@pytest.mark.parametrize(
    ("second", "asked"), [("Pant Size", []), ("Dress Size", ["label-repeated"])]
)
def test_the_garments_of_second_names_tell_two_tables_apart(second: str, asked: list[str]) -> None:
    first = "Size,Dress Size,Waist (cm)\nS,8,66-70\nM,10,70-74\nL,12,74-78\n"
    other = f"Size,{second},Waist (cm)\nS,8,72-76\nM,10,76-80\nL,12,80-84\n"
    reading = read_bytes(f"{first},,\n{other}".encode(), "chart.csv")
    assert questions(reading) == asked
