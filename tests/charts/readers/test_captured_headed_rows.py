"""Rows of single blanks under headings of several words: parted by what is known of both."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.importer import read_bytes, read_pasted
from charts.readers.captured.headed import headed_table
from charts.readers.captured.heads import parted_heads
from charts.readers.captured.lines import LineTable, numbered
from charts.readers.captured.pieces import pieces
from charts.schema import FileReading
from tests.charts.read_text import questions, values


def _table(text: str) -> LineTable | None:
    return headed_table(numbered(dedent(text)))


def _read(text: str) -> FileReading:
    return read_pasted(dedent(text))


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("18 50 1 month 3-4 41 - 43", ["18", "50", "1 month", "3-4", "41 - 43"]),
        ("Junior XS 4-5 Jahre ca. 56-60", ["Junior", "XS", "4-5 Jahre", "ca. 56-60"]),
        ("S 8st - 9st 7lb 5'2\" - 5'5\"", ["S", "8st - 9st 7lb", "5'2\" - 5'5\""]),
        ("M 6 Monate - 1 Jahr -", ["M", "6 Monate - 1 Jahr", "-"]),
    ],
)
def test_a_line_is_cut_into_whole_values_ages_and_words(text: str, parts: list[str]) -> None:
    assert pieces(text) == parts


def test_a_unit_ends_a_heading_and_begins_none() -> None:
    found = parted_heads("Размер Обхват груди, см Обхват талии, см Рост, см", 4)
    assert found == ["Размер", "Обхват груди, см", "Обхват талии, см", "Рост, см"]


def test_what_is_not_known_stays_one_heading_between_two_units() -> None:
    text = "Size Height Weight, kg Zork bulk (A), cm Waist (B), cm The length of the sleeve"
    found = parted_heads(text, 6)
    assert found is not None
    assert found[3:] == ["Zork bulk (A), cm", "Waist (B), cm", "The length of the sleeve"]


def test_headings_that_two_ways_part_are_left_alone() -> None:
    assert parted_heads("Chest Waist Hip Inseam", 3) is None


def test_rows_with_ages_are_read_under_their_headings() -> None:
    reading = _read("""\
        Size Height (cm) Age Weight (kg) Chest girth (cm)
        80 76-82 9-12 months 9-11 49-51
        92 86-93 1.5-2 years 11-14 51-54
        104 98-105 3-4 years 14-17 54-57
        """)
    assert values(reading)["92 chest"] == (51, 54)
    assert values(reading)["80 weight"] == (9, 11)
    assert questions(reading) == []


@pytest.mark.parametrize(
    ("text", "key", "value"),
    [
        (
            """\
            Размер Обхват груди, см Обхват талии, см Рост, см
            XS 78-84 60-66 152-158
            S 84-90 66-72 158-164
            """,
            "S waist",
            (66, 72),
        ),
        (
            """\
            Größe Alter Brustumfang in cm Taillenumfang in cm
            Kinder S 6-7 60-64 54-57
            Kinder M 8-9 64-70 57-60
            """,
            "Kinder M chest",
            (64, 70),
        ),
        (
            """\
            Size Height Weight
            S 5'2" - 5'5" 8st - 9st 7lb
            M 5'5" - 5'8" 9st - 11st
            """,
            "M height",
            (165.1, 172.72),
        ),
        (
            """\
            Taille US EU Tour de poitrine (cm) Tour de taille (cm)
            XS 0-2 32-34 80-84 62-66
            S 4-6 36-38 84-88 66-70
            """,
            "S chest",
            (84, 88),
        ),
        (
            """\
            Age Height Weight Chest
            3 months 62 cm 6 kg 43 cm
            6 months 68 cm 8 kg 45 cm
            """,
            "6 months chest",
            45,
        ),
    ],
)
def test_rows_come_out_as_their_headings_do(text: str, key: str, value: object) -> None:
    assert values(_read(text))[key] == value


def test_commas_in_headings_part_no_cells_of_such_rows() -> None:
    text = dedent("""\
        Size Height Age Weight, kg Chest (A), cm Waist (B), cm
        104 98-104 3-4 years 14-17 54-56 51-53
        116 110-116 5-6 years 17-20,5 57-59 53-55
        """)
    found = values(read_bytes(text.encode(), "children.txt"))
    assert found["kids 116 weight"] == (17, 20.5)
    assert found["kids 116 waist"] == (53, 55)


def test_a_size_may_come_twice_beside_what_tells_its_rows_apart() -> None:
    found = _table("""\
        Size Height Age Chest, cm
        24 74 6-9 months 49-51
        24 80 12 months 51-53
        26 86 2 years 52-54
        """)
    assert found is not None
    assert [row[0].text for row in found.rows[1:]] == ["24", "24", "26"]
    assert not found.inferred


def test_a_heading_that_is_not_known_makes_the_whole_to_be_compared() -> None:
    found = _table("""\
        Size Weight, kg Zork bulk (A), cm Waist (B), cm
        104 14-17 54-56 51-53
        116 17-20 57-59 53-55
        """)
    assert found is not None
    assert found.inferred


def test_a_row_that_is_too_long_ends_the_table() -> None:
    found = _table("""\
        Size Height Age Chest, cm
        98 98 3 years 54-56
        104 104 4 years 55-57
        110 110 5 years 56-58 59
        """)
    assert found is not None
    assert [row[0].text for row in found.rows] == ["Size", "98", "104"]


def test_words_for_whose_sizes_they_are_may_stand_between() -> None:
    reading = _read("""\
        Size Age Chest in cm Waist in cm
        S 6-7 60-64 54-57
        M 8-9 64-70 57-60
        Ladies
        S 20-30 84-88 66-70
        M 20-30 88-92 70-74
        """)
    assert values(reading)["women M chest"] == (88, 92)


@pytest.mark.parametrize(
    "text",
    [
        "We ship 3 parcels\nS 84-90 68-74\nM 90-96 74-80",
        "Size Chest Waist\nS 84-90 68-74 92-98\nM 90-96 74-80 98-104",
        "Chest Waist Hip Back\nS 84-90 68-74\nM 90-96 74-80",
    ],
)
def test_counts_that_do_not_agree_make_no_table(text: str) -> None:
    assert _table(text) is None


def test_cells_parted_by_commas_and_blanks_are_no_such_rows() -> None:
    text = "Size, Chest, Waist\nS, 84 - 90, 68 - 74\nM, 90 - 96, 74 - 80\n"
    assert _table(text) is None
    assert values(read_bytes(text.encode(), "vests.csv"))["M waist"] == (74, 80)


def test_a_row_with_a_piece_that_is_no_value_is_kept_with_its_question() -> None:
    reading = _read("""\
        Size Chest (cm) Waist (cm) Back length (cm)
        XS 78-84 62-68 36-38
        S 84-90 68-74 38-40
        M 90-96 74~80? 40-42
        L 96-104 80-88 42-44
        """)
    found = values(reading)
    assert found["M chest"] == (90, 96)
    assert found["M waist"] is None
    assert found["L back_length"] == (42, 44)
    assert "text-order" in questions(reading)


def test_a_size_on_the_line_above_its_values_belongs_to_them() -> None:
    reading = _read("""\
        Size
        Chest
        Waist
        Small
        84-90 cm 68-74 cm
        X-Large
        104-112 cm 88-96 cm
        """)
    assert values(reading)["X-Large waist"] == (88, 96)


def test_sizes_in_the_last_column_are_put_in_front() -> None:
    reading = _read("Chest (cm) Waist (cm) Size\n84-90 68-74 S\n90-96 74-80 M\n96-104 80-88 L\n")
    assert values(reading)["M chest"] == (90, 96)
    assert values(reading)["L waist"] == (80, 88)


def test_numbers_in_the_last_column_may_be_figures_as_well() -> None:
    assert _table("Chest (cm) Waist (cm) Size\n84 68 36\n88 72 38\n92 76 40\n") is None


def test_two_heights_by_a_stroke_are_one_piece() -> None:
    reading = _read("Age Chest Height\n2/3 54 cm 92/98 cm\n4/5 57 cm 104/110 cm\n")
    assert values(reading)["2/3 height"] == (92, 98)
    assert values(reading)["4/5 chest"] == 57


def test_heights_in_front_name_the_sizes() -> None:
    reading = _read(
        "Height (cm) Chest (cm) Weight (kg)\n110-116 58-60 18-21\n122-128 61-64 22-26\n"
    )
    assert values(reading)["110-116 chest"] == (58, 60)
    assert values(reading)["122-128 height"] == (122, 128)


@pytest.mark.parametrize("last", ["Size", "Розмір"])
def test_sizes_that_may_stand_behind_their_figures_are_asked_about(last: str) -> None:
    heads = f"Chest girth Waist girth Hip girth {last}"
    reading = read_pasted(f"{heads}\n84 72 88 42\n88 76 92 44\n92 80 96 46\n96 84 100 48\n")
    assert "text-order" in questions(reading)
    assert not reading.charts


def test_letters_in_front_are_names_whatever_the_last_heading_ends_in() -> None:
    reading = read_pasted("Chest girth Waist girth Hip size\nS 84 72 88\nM 88 76 92\nL 92 80 96\n")
    assert values(reading)["S chest"] == 84
