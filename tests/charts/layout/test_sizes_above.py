"""A row of sizes above the sections of a chart names the sizes of each of them."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Basis, Dimension
from tests.charts.read_text import questions, ranges, table, values

SECTIONS = {
    "de": """Maßtabelle Damen
Größe | 34 | 36 | 38
Körpermaße in cm
Körpergröße | 168 | 168 | 168
Oberweite | 80 | 84 | 88
Fertigmaße in cm
Oberweite | 92 | 96 | 100
Rückenlänge | 41 | 41 | 41""",
    "fr": """Femme
Taille | 34 | 36 | 38
Mesures du corps (cm)
Stature | 168 | 168 | 168
Tour de poitrine | 80 | 84 | 88
Mesures du vêtement fini (cm)
Tour de poitrine | 92 | 96 | 100
Longueur dos | 41 | 41 | 41""",
    "en": """Ladies' jacket pattern
Size | 34 | 36 | 38
Body measurements in cm
Height | 168 | 168 | 168
Bust | 80 | 84 | 88
Finished garment measurements in cm
Bust | 92 | 96 | 100
Back length | 41 | 41 | 41""",
    "pl": """Damskie
Rozmiar | 34 | 36 | 38
Wymiary ciała w cm
Wzrost | 168 | 168 | 168
Obwód klatki piersiowej | 80 | 84 | 88
Wymiary gotowego wyrobu w cm
Obwód klatki piersiowej | 92 | 96 | 100
Długość pleców | 41 | 41 | 41""",
}


@pytest.mark.parametrize("language", SECTIONS)
def test_a_measure_that_is_the_same_in_all_sizes_names_none(language: str) -> None:
    reading = table(SECTIONS[language])
    assert [[size.label for size in chart.sizes] for chart in reading.charts] == [
        ["34", "36", "38"],
        ["34", "36", "38"],
    ]
    assert [chart.band for chart in reading.charts] == ["women", "women"]
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert [one.basis for one in chests] == [Basis.BODY] * 3 + [Basis.FINISHED] * 3
    assert questions(reading) == []


@pytest.mark.parametrize("sizes", ["S | M | L", "8 | 10 | 12"])
def test_three_sections_share_the_sizes_above_the_first(sizes: str) -> None:
    text = f"""Size | {sizes}
Body (cm)
Height | 168 | 168 | 168
Chest | 84 | 88 | 92
Garment finished (cm)
Chest | 96 | 100 | 104
Back length | 60 | 60 | 60
Garment laid flat (cm)
Half chest | 48 | 50 | 52"""
    reading = table(text)
    labels = sizes.split(" | ")
    assert [[size.label for size in chart.sizes] for chart in reading.charts] == [labels] * 3
    assert questions(reading) == []


def test_a_word_for_size_that_is_a_waist_names_no_size_below_the_sizes() -> None:
    reading = table("""Größe | 34 | 36 | 38
Körpermaße in cm
Oberweite | 80 | 84 | 88
Taille | 63 | 66 | 70""")
    assert values(reading) == {
        "34 chest": 80,
        "36 chest": 84,
        "38 chest": 88,
        "34 waist": 63,
        "36 waist": 66,
        "38 waist": 70,
    }


def test_another_table_may_be_looked_up_by_its_own_heights() -> None:
    reading = table("""Women
Size | S | M | L
Bust (cm) | 80 | 84 | 88
Kids
Height (cm) | 104 | 110 | 116
Chest (cm) | 56 | 58 | 60""")
    labels = [[size.label for size in chart.sizes] for chart in reading.charts]
    assert labels == [["S", "M", "L"], ["104", "110", "116"]]
    assert [chart.band for chart in reading.charts] == ["women", "kids"]


def test_kinds_of_clothing_under_one_row_of_sizes_are_for_the_same_people() -> None:
    reading = table("""Herren
Größe | 46 | 48 | 50
Jacken
Brustumfang (cm) | 92 | 96 | 100
Hosen
Bundumfang (cm) | 80 | 84 | 88""")
    assert [chart.band for chart in reading.charts] == ["men", "men"]
    assert [[size.label for size in chart.sizes] for chart in reading.charts] == [
        ["46", "48", "50"]
    ] * 2


@pytest.mark.parametrize(
    ("size", "women", "men", "height", "chest"),
    [
        ("Size", "Women", "Men", "Height", "Chest"),
        ("Größe", "Damen", "Herren", "Körpergröße", "Brustumfang"),
        ("Taille", "Femme", "Homme", "Stature", "Tour de poitrine"),
    ],
)
def test_heights_that_come_first_in_every_section_name_no_sizes(
    size: str, women: str, men: str, height: str, chest: str
) -> None:
    rows = [
        f"{size},S,M,L",
        women,
        f"{height} (cm),158-164,164-170,170-176",
        f"{chest} (cm),82-86,87-91,92-96",
        men,
        f"{height} (cm),170-176,176-182,182-188",
        f"{chest} (cm),92-96,97-101,102-106",
    ]
    reading = read_bytes("\n".join(rows).encode(), "a.csv")
    assert [chart.band for chart in reading.charts] == ["women", "men"]
    assert [one.label for one in reading.charts[1].sizes] == ["S", "M", "L"]
    assert questions(reading) == []


@pytest.mark.parametrize("corner", ["age", "Alter", "Size"])
def test_ages_above_the_sections_name_the_sizes_of_both_units(corner: str) -> None:
    reading = table(f"""{corner} | 1-2 years | 3-4 years | 5-6 years
in cm
height | 92 | 104 | 116
chest | 56.5 | 59.5 | 63.5
in inches
height | 36 | 41 | 46
chest | 22 | 23 | 25""")
    assert values(reading)["1-2 years height"] == 92
    assert values(reading)["5-6 years chest"] == 63.5
    assert {size.label for chart in reading.charts for size in chart.sizes} == {
        "1-2 years",
        "3-4 years",
        "5-6 years",
    }


@pytest.mark.parametrize("sizes", ["S | M | L", "2XL | 3XL | 4XL", "2-3 yrs | 4-5 yrs | 6-7 yrs"])
@pytest.mark.parametrize("height", ["164-170 | 170-176 | 176-182", "164 | 170 | 176"])
def test_a_blank_row_below_the_sizes_does_not_make_the_heights_names(
    sizes: str, height: str
) -> None:
    reading = table(f" | {sizes}\n\nHeight (cm) | {height}\nChest (cm) | 84-92 | 92-100 | 100-108")
    labels = sizes.split(" | ")
    assert [one.label for one in reading.charts[0].sizes] == labels
    assert values(reading)[f"{labels[0]} chest"] == (84, 92)


def test_two_names_that_a_blank_row_parts_are_names_of_the_same_sizes() -> None:
    rows = "INT size | S | M | L\nChest (cm) | 84-92 | 92-100 | 100-108"
    parted, close = (table(f"EU size | 44 | 48 | 52\n{gap}{rows}") for gap in ("\n", ""))
    assert values(parted) == values(close)
    assert [size.also for size in parted.charts[0].sizes] == [
        size.also for size in close.charts[0].sizes
    ]


def test_a_row_of_words_over_each_column_leaves_no_room_for_other_headings() -> None:
    gloves = "Gloves\nSize | Hand girth (mm) | Hand length (mm)\n8 | 203 | 182\n9 | 229 | 192\n"
    reading = table(f"{gloves}\nFootwear\nUK | EU | US\n\n7 | 41 | 8\n8 | 42 | 9\n9 | 43 | 10")
    unasked = {value.published for value in ranges(reading) if not value.findings}
    assert unasked == {"203", "182", "229", "192"}


@pytest.mark.parametrize("people", [("Kids", "Adults"), ("Kinder", "Damen"), ("Junior", "Men")])
def test_people_over_the_sizes_wait_with_them_for_the_section_below(
    people: tuple[str, str],
) -> None:
    young, grown = people
    reading = table(f""" | {young} | | | {grown} | |
Size | 140 | 152 | 164 | S | M | L
All in cm
Chest | 68 | 74 | 80 | 88 | 94 | 100
Waist | 60 | 64 | 68 | 76 | 82 | 88""")
    found = {
        name.split(" ", 1)[-1] if name.count(" ") > 1 else name: one
        for name, one in values(reading).items()
    }
    assert found["140 chest"] == 68
    assert found["L waist"] == 88
    assert len(found) == 12
    assert questions(reading) == []
