"""Lines whose parts begin with the same words: those name a column, what follows is its cell."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.shared_words import shared_words_table
from tests.charts.read_text import questions, values
from tests.charts.readers.reading import paste


def rows(text: str) -> list[list[str]]:
    found = shared_words_table(numbered(text))
    return [] if found is None else [[cell.text for cell in row] for row in found.rows]


def test_words_and_prices_among_the_figures_are_cells_of_columns_of_their_own() -> None:
    text = (
        "S: Chest (cm) 81-85, Fit Close, Price £58.00\nM: Chest (cm) 86-91, Fit Loose, Price £61\n"
    )
    assert paste(text).rows() == [
        ["", "Chest (cm)", "Fit", "Price"],
        ["S", "81-85", "Close", "£58.00"],
        ["M", "86-91", "Loose", "£61"],
    ]
    assert values(read_pasted(text)) == {"S chest": (81, 85), "M chest": (86, 91)}


@pytest.mark.parametrize("sizes", [("8", "10", "12"), ("3-4", "5-6", "7-8"), ("XS", "2XL", "3XL")])
def test_sizes_with_a_figure_each_stand_behind_the_measures(sizes: tuple[str, ...]) -> None:
    chest = ", ".join(f"{one} {70 + 4 * at}" for at, one in enumerate(sizes))
    waist = ", ".join(f"{one} {60 + 4 * at}" for at, one in enumerate(sizes))
    reading = read_pasted(f"Chest (cm): {chest}\nWaist (cm): {waist}\n")
    expected = {f"{one} chest": 70 + 4 * at for at, one in enumerate(sizes)}
    assert values(reading) == expected | {
        f"{one} waist": 60 + 4 * at for at, one in enumerate(sizes)
    }
    assert not questions(reading)


@pytest.mark.parametrize("joint", [": ", " = ", " : "])
def test_the_joint_between_a_size_and_its_figure_is_no_part_of_the_name(joint: str) -> None:
    chest = f"Chest (cm): S{joint}86-90; M{joint}91-95; L{joint}96-100"
    assert rows(f"{chest}\nHip (cm): S{joint}90-94; M{joint}95-99; L{joint}100-104\n") == [
        ["", "S", "M", "L"],
        ["Chest (cm)", "86-90", "91-95", "96-100"],
        ["Hip (cm)", "90-94", "95-99", "100-104"],
    ]


def test_ages_with_their_words_are_sizes_too() -> None:
    chest = "Contorno pecho: 2 años 53, 3 años 55, 4 años 57\n"
    text = f"{chest}Estatura: 2 años 91, 3 años 97, 4 años 103\n"
    assert rows(text)[0] == ["", "2 años", "3 años", "4 años"]
    assert paste(f"Niña 2 - 4 años\n{text}").rows()[1] == ["", "2 años", "3 años", "4 años"]


def test_one_measure_alone_needs_three_sizes_and_is_compared_where_they_are_numbers() -> None:
    assert rows("Chest: S 84-88, M 89-93, L 94-98\n")[0] == ["", "S", "M", "L"]
    assert not rows("Chest: S 84-88, M 89-93\n")
    found = shared_words_table(numbered("Chest: 8 84, 10 88, 12 92\n"))
    assert found is not None
    assert found.inferred


@pytest.mark.parametrize(
    ("part", "name", "cell"),
    [
        ("1/2 chest (cm) 4{}", "1/2 chest (cm)", "4{}"),
        ("Chest 2 cm below armhole 9{}", "Chest 2 cm below armhole", "9{}"),
        ("Height 5ft {}", "Height", "5ft {}"),
        ("Weight over 4{}", "Weight", "over 4{}"),
        ("Stature en cm 16{}", "Stature en cm", "16{}"),
        ("Chest, cm 8{}", "Chest, cm", "8{}"),
    ],
)
def test_a_name_ends_where_what_follows_is_a_figure_in_all_lines(
    part: str, name: str, cell: str
) -> None:
    text = "".join(f"{size}: {part.format(at)}, Waist 7{at}\n" for at, size in enumerate("SML", 2))
    table = rows(text)
    assert table[0] == ["", name, "Waist"]
    assert [row[1] for row in table[1:]] == [cell.format(at) for at in (2, 3, 4)]


def test_a_comma_within_a_cell_parts_it_from_nothing() -> None:
    text = "S: Chest 84, Role cook, porter\nM: Chest 88, Role driver\n"
    assert [row[2] for row in rows(text)] == ["Role", "cook, porter", "driver"]


def test_who_wears_it_before_the_colon_stands_beside_a_named_size() -> None:
    said = [("Ladies", "S", 82), ("Ladies", "M", 88), ("Gents", "S", 90), ("Gents", "M", 96)]
    text = "".join(f"{who}: Size {size}, Chest (cm) {low}\n" for who, size, low in said)
    found = values(read_pasted(text))
    assert found == {
        "women S chest": 82,
        "women M chest": 88,
        "men S chest": 90,
        "men M chest": 96,
    }


def test_a_second_name_that_is_a_range_is_no_half_of_a_figure() -> None:
    text = "Chest: XS 38-40 80, S 42-44 84\nWaist: XS 38-40 62, S 42-44 66\n"
    assert rows(text)[0] == ["", "XS 38-40", "S 42-44"]


def test_a_size_that_comes_twice_needs_other_names_that_tell_it_apart() -> None:
    chest = "Brustumfang: S 90-93, M 94-97, M 98-101\n"
    assert not rows(chest * 2)
    assert rows(f"Größe: S 46, M 48, M 50\n{chest}")[1] == ["Größe", "46", "48", "50"]


def test_roughly_names_no_column_and_says_a_figure_again() -> None:
    text = (
        "- Small: torso 37 to 42 centimetres, roughly 15 to 17 inches.\n"
        "- Large: torso 42 to 49 centimetres, roughly 17 to 19 inches.\n"
    )
    assert rows(text) == [
        ["", "torso"],
        ["Small", "37 to 42 centimetres, roughly 15 to 17 inches"],
        ["Large", "42 to 49 centimetres, roughly 17 to 19 inches"],
    ]
    reading = read_pasted(text)
    assert values(reading) == {"Small back_length": (37, 42), "Large back_length": (42, 49)}
    assert not questions(reading)


def test_lines_without_common_words_are_no_table() -> None:
    assert not rows("Care: wash at 30, dry flat\nNote: ask us, call 12\n")


def test_the_word_before_all_sizes_heads_them_and_the_one_before_all_measures_does_not() -> None:
    text = "Talla S: Pecho 82, Cintura 66\nTalla M: Pecho 86, Cintura 70\n"
    assert rows(text)[:2] == [["Talla", "Pecho", "Cintura"], ["S", "82", "66"]]
    text = "Chest (cm): S 82, M 86, L 90\nChest (in): S 32, M 34, L 35\n"
    assert [row[0] for row in rows(text)] == ["", "Chest (cm)", "Chest (in)"]
