"""Text in columns whose heads say more or less than the rows: bands, sections, a lost size."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.findings import Level
from charts.importer import read_bytes
from charts.readers.captured.heads import holds_two_measures
from charts.schema import FileReading
from tests.charts.read_text import questions, ranges, values


def _read(text: str) -> FileReading:
    return read_bytes(dedent(text).encode(), "chart.txt")


def _asked(reading: FileReading) -> list[bool]:
    """Of every range, whether a question bears on it."""
    codes = {one.id for one in reading.findings if one.level is Level.QUESTION}
    return [bool(codes & set(one.findings)) for one in ranges(reading)]


@pytest.mark.parametrize(
    ("word", "sizes"),
    [
        ("Size", "S   M   XL"),
        ("Größe", "36   38   42"),
        ("EU", "36   38   42"),
        ("Taille", "S  M  L"),
    ],
)
def test_a_word_for_sizes_is_no_size_where_one_of_them_is_lost(word: str, sizes: str) -> None:
    reading = _read(
        f"{word}   {sizes}\n"
        "Chest (cm)   82-86   87-91   92-96   97-101\n"
        "Waist (cm)   66-70   71-75   76-80   81-85\n"
    )
    labels = [size.label for chart in reading.charts for size in chart.sizes]
    assert word not in labels
    assert labels[:3] == sizes.split()
    assert len(_asked(reading)) == 8
    assert all(_asked(reading))


def test_sizes_that_are_all_there_are_asked_nothing() -> None:
    reading = _read(
        """\
        Size   S   M   L   XL
        Chest (cm)   82-86   87-91   92-96   97-101
        Waist (cm)   66-70   71-75   76-80   81-85
        """
    )
    assert values(reading)["XL chest"] == (97, 101)
    assert questions(reading) == []


@pytest.mark.parametrize(
    "heads",
    [
        "Size Chest Waist Hips (cm)",
        "Größe Brust Taille Hüfte (cm)",
        "Taille Poitrine Taille Hanches (cm)",
    ],
)
def test_one_figure_less_than_measures_is_asked_on_every_column(heads: str) -> None:
    reading = _read(f"{heads}\nS 82-86 66-70\nM 87-91 71-75\nL 92-96 76-80\n")
    assert len(_asked(reading)) == 6
    assert all(_asked(reading))


@pytest.mark.parametrize(
    ("head", "two"),
    [
        ("Chest Waist", True),
        ("Size Chest Waist", True),
        ("Poitrine Taille", True),
        ("Chest / Waist", False),
        ("Waist or Hip", False),
        ("Tour de taille", False),
        ("Inside Leg", False),
        ("Waist to Hip", False),
        ("Height in cm", False),
    ],
)
def test_two_measures_side_by_side_are_told_from_one_of_two_words(head: str, two: bool) -> None:
    assert holds_two_measures(head) is two


@pytest.mark.parametrize(
    "text",
    [
        """\
        Women                Men
        Size    Chest (cm)   Size   Chest (cm)
        S       82-86        M      97-101
        M       87-91        L      102-106
        L       92-96
        """,
        """\
                Damen                     Herren
        Größe   Brust (cm)   Größe   Brust (cm)
        S       82-86        M       97-101
        M       87-91        L       102-106
        L       92-96
        """,
    ],
)
def test_two_tables_side_by_side_have_each_the_band_above_it(text: str) -> None:
    reading = _read(text)
    assert values(reading) == {
        "women S chest": (82, 86),
        "women M chest": (87, 91),
        "women L chest": (92, 96),
        "men M chest": (97, 101),
        "men L chest": (102, 106),
    }
    assert questions(reading) == []


@pytest.mark.parametrize(
    "text",
    [
        """\
        Women S M L XL
        Chest (cm) 82-86 87-91 92-96 97-101
        Men S M L XL
        Chest (cm) 97-101 102-106 107-111 112-116
        """,
        """\
        Damen    S     M    L    XL
        Brust (cm)   82-86   87-91  92-96   97-101
        Herren    S     M    L    XL
        Brust (cm)   97-101   102-106   107-111   112-116
        """,
    ],
)
def test_sizes_over_one_measure_in_each_section_are_no_size_of_several_letters(text: str) -> None:
    reading = _read(text)
    assert values(reading)["women S chest"] == (82, 86)
    assert values(reading)["women XL chest"] == (97, 101)
    assert values(reading)["men M chest"] == (102, 106)
    assert len(values(reading)) == 8
    assert questions(reading) == []


def test_two_such_sections_without_a_word_for_whose_they_are_are_asked_about() -> None:
    reading = _read(
        """\
        Size    S     M    L
        Chest (cm)   82-86   87-91  92-96
        Size    S     M    L
        Chest (cm)   97-101   102-106   107-111
        """
    )
    assert questions(reading) == ["label-repeated"]
    assert [(one.low, one.high) for one in ranges(reading)][:2] == [(82, 86), (87, 91)]
    assert all(_asked(reading))


def test_a_figure_in_two_units_is_still_one_in_records() -> None:
    reading = _read(
        """\
        Small
        Chest 82-86 cm 32-34 in
        Waist 66-70 cm 26-28 in
        Medium
        Chest 87-91 cm 34-36 in
        Waist 71-75 cm 28-30 in
        """
    )
    assert values(reading)["Small chest"] == (82, 86)
    assert values(reading)["Medium waist"] == (71, 75)
