"""Bands before sizes in single blanks or above their headings, and two names of a row."""

from __future__ import annotations

from textwrap import dedent

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.rows import row_table
from charts.readers.captured.shared_out.named_bands import with_bands
from tests.charts.read_text import questions, values


def test_a_band_before_every_size_stands_above_its_rows() -> None:
    reading = read_pasted(
        dedent("""\
        For Size Chest (in) Hip (in)
        Ladies S 33-35 36-38
        Ladies M 35-37 38-40
        Gents S 36-38 36-38
        Gents M 38-40 38-40
        """)
    )
    found = values(reading)
    assert found["women S chest"] == (83.82, 88.9)
    assert found["men M hip"] == (96.52, 101.6)
    assert questions(reading) == []


def test_a_band_before_the_first_of_its_sizes_holds_for_the_others() -> None:
    reading = read_pasted(
        dedent("""\
        Size Chest (cm) Waist (cm)
        Women S 83-88 65-70
        M 89-94 71-76
        Men S 91-96 77-82
        M 97-102 83-88
        """)
    )
    found = values(reading)
    assert found["women M chest"] == (89, 94)
    assert found["men S waist"] == (77, 82)


def test_a_band_in_the_names_of_sizes_that_follow_each_other_stays_there() -> None:
    table = row_table(
        numbered(
            "Size Chest Waist\nYouth S 60-64 54-57\nYouth M 65-69 58-61\nAdult S 82-86 66-70\n"
        )
    )
    assert table is not None
    assert with_bands(table) == table


def test_bands_above_the_headings_share_the_measures() -> None:
    reading = read_pasted(
        dedent("""\
        All figures in centimetres
        Size Women Men
        Chest Waist Hip Chest Waist Hip
        S 83-89 67-73 91-97 89-95 77-83 91-97
        M 89-95 73-79 97-103 95-101 83-89 97-103
        """)
    )
    found = values(reading)
    assert found["women S hip"] == (91, 97)
    assert found["men M waist"] == (83, 89)
    assert questions(reading) == []


def test_bands_whose_measures_differ_are_compared() -> None:
    reading = read_pasted(
        dedent("""\
        Size Ladies' Gents'
        Bust (in) Hip (in) Chest (in) Waist (in)
        S 32-34 35-37 36-38 30-32
        M 34-36 37-39 38-40 32-34
        """)
    )
    assert values(reading)["women S hip"] == (88.9, 93.98)
    assert questions(reading) == ["text-order"]


def test_bands_stand_each_over_its_own_word_for_sizes() -> None:
    reading = read_pasted(
        dedent("""\
        Children Adults
        Size Chest (cm) Height (cm) Size Chest (cm) Height (cm)
        XS 57-61 105-117 S 85-91 161-169
        S 61-66 117-129 M 91-97 169-176
        """)
    )
    found = values(reading)
    assert found["kids S chest"] == (61, 66)
    assert found["M height"] == (169, 176)


def test_a_line_of_bands_at_the_end_heads_nothing() -> None:
    assert values(read_pasted("Women Men\n")) == {}


def test_two_names_under_two_words_for_sizes_are_a_column_each() -> None:
    reading = read_pasted(
        dedent("""\
        Size EU size Underbust (cm) Bust (cm)
        32B 70B 68-72 83-85
        34B 75B 73-77 88-90
        """)
    )
    assert values(reading)["32B underbust"] == (68, 72)


def test_a_size_of_two_words_stays_one_name() -> None:
    reading = read_pasted(
        dedent("""\
        Jersey size Chest (cm) Waist (cm) Wearer
        Extra Small 78-82 62-66 riders of the club
        Extra Large 98-104 82-88 trainers
        """)
    )
    assert values(reading)["Extra Small chest"] == (78, 82)


def test_a_model_and_a_size_behind_an_article_are_parted() -> None:
    reading = read_pasted(
        dedent("""\
        Art. Bezeichnung Gr. VK EK Brust Gewicht
        8811 Weste Pappel S 88 51 85-91 cm 51-61 kg
        8812 Weste Pappel M 88 51 91-97 cm 61-73 kg
        """)
    )
    assert values(reading)["M chest"] == (91, 97)


def test_one_heading_over_two_columns_is_compared() -> None:
    reading = read_pasted(
        dedent("""\
        Size Zork Plim Quon
        girth girth length (cm)
        S 85-91 69-75 41-43
        M 91-97 75-81 43-45
        """)
    )
    assert "text-order" in questions(reading)
