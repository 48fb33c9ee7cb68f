"""Columns behind those of the last band: its own, with one question, or everybody's where said."""

from __future__ import annotations

import pytest

from charts.schema import FileReading
from tests.charts.read_text import asked_at, questions, table

OF_CHILDREN = "S | 82-86 | 66-70 | 58-61 | 54-56 | {}\nM | 87-91 | 71-75 | 62-66 | 57-59 | {}\n"
OF_MEN = "S | 82-86 | 66-70 | 92-96 | 78-82 | {}\nM | 87-91 | 71-75 | 97-101 | 83-87 | {}\n"


def by_band(reading: FileReading) -> dict[str | None, set[str]]:
    return {
        chart.band: {str(one.dimension) for size in chart.sizes for one in size.ranges}
        for chart in reading.charts
    }


@pytest.mark.parametrize(
    ("words", "heads", "last", "figures"),
    [
        (("Women", "Girls"), ("Chest (cm)", "Waist (cm)"), "Height (cm)", ("116-122", "128-134")),
        (("Women", "Men"), ("Chest (cm)", "Waist (cm)"), "Back length (cm)", ("43", "45")),
        (("Women", "Men"), ("Chest (cm)", "Waist (cm)"), "Hips (cm)", ("94-98", "99-103")),
        (
            ("Damen", "Kinder"),
            ("Brust (cm)", "Taille (cm)"),
            "Körpergröße (cm)",
            ("116-122", "128-134"),
        ),
        (
            ("Femmes", "Enfants"),
            ("Tour de poitrine (cm)", "Tour de taille (cm)"),
            "Poids (kg)",
            ("20-25", "25-30"),
        ),
    ],
)
def test_a_column_more_is_the_last_ones_and_asked(
    words: tuple[str, str], heads: tuple[str, str], last: str, figures: tuple[str, str]
) -> None:
    one, other = heads
    girths = OF_MEN if words[1] == "Men" else OF_CHILDREN
    reading = table(
        f" | {words[0]} | | {words[1]} | | \n"
        f"Size | {one} | {other} | {one} | {other} | {last}\n" + girths.format(*figures)
    )
    women, others = by_band(reading).values()
    assert women == {"chest", "waist"}
    assert women < others
    assert len(others) == 3
    assert questions(reading) == ["columns-shifted"]
    assert asked_at(reading, "columns-shifted") == ["F3", "F4"]


def test_sizes_across_are_read_alike() -> None:
    reading = table(
        "Size | | S | M\nWomen | Chest (cm) | 82-86 | 87-91\n | Waist (cm) | 66-70 | 71-75\n"
        "Kids | Chest (cm) | 58-61 | 62-66\n | Waist (cm) | 54-56 | 57-59\n"
        " | Height (cm) | 116-122 | 128-134\n"
    )
    assert by_band(reading) == {
        "women": {"chest", "waist"},
        "kids": {"chest", "waist", "height"},
    }
    assert asked_at(reading, "columns-shifted") == ["C6", "D6"]


def test_a_heading_beside_the_bands_is_everybodys_and_not_asked() -> None:
    reading = table(
        "Size | Women | | Men | | Height (cm)\n"
        " | Chest (cm) | Waist (cm) | Chest (cm) | Waist (cm) |\n"
        "S | 82-86 | 66-70 | 92-96 | 78-82 | 165-170\n"
        "M | 87-91 | 71-75 | 97-101 | 83-87 | 170-175\n"
    )
    assert {"height"} <= by_band(reading)["women"] & by_band(reading)["men"]
    assert questions(reading) == []


def test_the_same_measures_again_belong_to_somebody_whose_word_is_lost() -> None:
    reading = table(
        " | Women | | Men | | | \n"
        "Size | Chest (cm) | Waist (cm) | Chest (cm) | Waist (cm) | Chest (cm) | Waist (cm)\n"
        "S | 82-86 | 66-70 | 92-96 | 78-82 | 102-106 | 88-92\n"
        "M | 87-91 | 71-75 | 97-101 | 83-87 | 107-111 | 93-97\n"
    )
    assert [chart.band for chart in reading.charts] == ["women", "men", None]


@pytest.mark.parametrize(
    ("last", "figures"), [("Weight (kg)", "60-70 kg"), ("Back length (cm)", "44")]
)
def test_what_all_people_have_at_the_end_of_the_last_is_asked_however_short_that_is(
    last: str, figures: str
) -> None:
    reading = table(
        " | Women | | | Men | | \n"
        f"Size | Chest (cm) | Waist (cm) | Hip (cm) | Chest (cm) | Waist (cm) | {last}\n"
        f"M | 87-91 | 71-75 | 95-99 | 97-101 | 83-87 | {figures}\n"
        f"L | 92-96 | 76-80 | 100-104 | 102-106 | 88-92 | {figures}\n"
    )
    assert asked_at(reading, "columns-shifted") == ["G3", "G4"]


def test_a_girth_at_the_end_of_the_last_is_its_own() -> None:
    reading = table(
        " | Women | | | Men | | \n"
        "Size | Chest (cm) | Waist (cm) | Hip (cm) | Chest (cm) | Waist (cm) | Neck (cm)\n"
        "M | 87-91 | 71-75 | 95-99 | 97-101 | 83-87 | 37-38\n"
        "L | 92-96 | 76-80 | 100-104 | 102-106 | 88-92 | 39-40\n"
    )
    assert questions(reading) == []
