"""A word for size that is a measure in another sense: told by the measures beside it."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import asked_at, questions, table, values


def named(reading_of: str) -> list[list[str | None]]:
    """The labels of the sizes, a list for each chart."""
    return [[size.label for size in chart.sizes] for chart in table(reading_of).charts]


@pytest.mark.parametrize(
    "text",
    [
        "Taille | Poitrine | Taille | Hanches\n36 | 84 | 66 | 92\n38 | 88 | 70 | 96\ncm",
        "Taille | Hanches | Poitrine | Taille\n36 | 92 | 84 | 66\n38 | 96 | 88 | 70\ncm",
        "Taille FR | Poitrine | Taille | Hanches\n36 | 84 | 66 | 92\n38 | 88 | 70 | 96\ncm",
        "Taille | 36 | 38\nPoitrine | 84 | 88\nTaille | 66 | 70\nHanches | 92 | 96\ncm",
        " | 36 | 38\nPoitrine | 84 | 88\nTaille | 66 | 70\nHanches | 92 | 96\ncm",
    ],
)
def test_a_second_taille_over_single_figures_is_a_waist(text: str) -> None:
    found = values(table(text))
    assert (found["36 waist"], found["38 waist"]) == (66, 70)
    assert (found["36 hip"], found["38 chest"]) == (92, 88)
    assert questions(table(text)) == []
    assert named(text) == [["36", "38"]]


def test_a_taille_beside_ages_is_a_waist_and_no_second_name() -> None:
    found = values(table("Âge | Poitrine | Taille\n4 ans | 56 | 53\n6 ans | 60 | 55\ncm"))
    assert (found["4 ans waist"], found["6 ans chest"]) == (53, 60)


def test_a_taille_before_another_system_is_a_waist() -> None:
    found = values(table("Poitrine | Taille | Taille US\n84 | 66 | 4\n88 | 70 | 6\ncm"))
    assert found == {"4 chest": 84, "6 chest": 88, "4 waist": 66, "6 waist": 70}


@pytest.mark.parametrize(
    "text",
    [
        "Taille | Poitrine | Taille\n36 | 84 | 46\n38 | 88 | 48\n40 | 92 | 50\ncm",
        "Taille | Taille US | Poitrine\n36 | 26 | 84\n38 | 27 | 88\n40 | 28 | 92\ncm",
        "Größe | US | Brust\n104 | 4 | 56\n110 | 5 | 58\n116 | 6 | 60\ncm",
    ],
)
def test_figures_out_of_proportion_stay_sizes(text: str) -> None:
    found = values(table(text))
    assert {key.split()[-1] for key in found} == {"chest"}
    assert questions(table(text)) == []


def test_where_nothing_beside_it_tells_it_is_asked_once() -> None:
    reading = table("Taille | Taille | Longueur dos\n36 | 46 | 60\n38 | 48 | 61\n40 | 50 | 62\ncm")
    assert values(reading)["36 waist"] == 46
    assert questions(reading) == ["heading-two-readings"]
    assert len(asked_at(reading, "heading-two-readings")) == 3


def test_small_figures_beside_letters_are_asked_about_and_large_ones_are_not() -> None:
    small = table("Taille | Taille | Longueur dos\nS | 46 | 60\nM | 48 | 61\ncm")
    large = table("Taille | Taille | Longueur dos\nS | 66 | 60\nM | 70 | 61\ncm")
    assert questions(small) == ["heading-two-readings"]
    assert (questions(large), values(large)["S waist"]) == ([], 66)


def test_parts_that_measure_the_same_are_two_tables() -> None:
    two = "Taille | Poitrine | Taille | Poitrine\n36 | 84 | 46 | 104\n38 | 88 | 48 | 108\ncm"
    assert named(two) == [["36", "38"], ["46", "48"]]


@pytest.mark.parametrize("corner", ["Taille", ""])
@pytest.mark.parametrize("below", ["", "\nVêtement (cm)\nLongueur dos | 60 | 61"])
def test_a_row_of_waists_below_a_section_does_not_name_the_sizes(corner: str, below: str) -> None:
    above = f"{corner} | XS | S\nMensurations (cm)\nPoitrine | 80-84 | 84-88\n"
    text = f"{above}Taille | 62-66 | 66-70{below}"
    assert values(table(text))["XS waist"] == (62, 66)
    assert all(labels == ["XS", "S"] for labels in named(text))


def test_a_second_section_has_the_sizes_of_the_first() -> None:
    text = (
        " | S | M\nDamen\nBrust | 84-88 | 88-92\nGröße | 160-166 | 166-172\n"
        "Herren\nBrust | 92-98 | 98-104\nGröße | 172-178 | 178-184\ncm"
    )
    found = values(table(text))
    assert (found["women S height"], found["men M height"]) == ((160, 166), (178, 184))


@pytest.mark.parametrize(("size", "chest"), [("Größe", "Brust"), ("Taille", "Poitrine")])
@pytest.mark.parametrize("gap", ["", "\n"])
def test_a_row_of_heights_before_the_others_names_its_own_table(
    size: str, chest: str, gap: str
) -> None:
    above = f"Damen\n{size} | S | M\n{chest} | 84-88 | 88-92\n{gap}"
    below = f"Kinder\n{size} | 98-104 | 110-116\n{chest} | 54-56 | 58-60\ncm"
    assert named(above + below) == [["S", "M"], ["98-104", "110-116"]]


def test_heights_of_children_name_their_sizes_below_ages_too() -> None:
    above = "Damen\nGröße | S | M\nBrust | 84-88 | 88-92\n\n"
    below = "Kinder\nAlter | 3-4 | 5-6\nGröße | 98-104 | 110-116\nBrust | 54-56 | 58-60\ncm"
    assert named(above + below)[1] == ["98-104", "110-116"]


def test_a_taille_over_two_ends_keeps_its_own_measure() -> None:
    found = values(
        table("Größe | Brust | | Taille | \n | von | bis | von | bis\nS | 86 | 91 | 71 | 76\ncm")
    )
    assert found == {"S chest": (86, 91), "S waist": (71, 76)}


def test_a_waist_headed_like_the_sizes_stays_one_where_further_tables_follow() -> None:
    rows = [
        "Femme (en cm);;;",
        "Taille;Poitrine;Taille;Hanches",
        "S;84-88;64-68;92-96",
        "M;88-92;68-72;96-100",
        ";;;",
        "Homme (en cm);;;",
        "Taille;Poitrine;Taille;Longueur bras",
        "S;88-92;76-80;60-62",
        "M;92-96;80-84;62-64",
    ]
    reading = read_bytes("\n".join(rows).encode(), "a.csv")
    assert [chart.band for chart in reading.charts] == ["women", "men"]
    assert values(reading)["women M waist"] == (68, 72)
    assert values(reading)["men S waist"] == (76, 80)
    assert questions(reading) == []
