"""Rows with one cell more in front than the headings: who it is for, or the model's name."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import asked_at, questions, ranges, table, values

ROWS = (("S", "82-86", "66-70"), ("M", "87-91", "71-75"), ("L", "92-96", "76-80"))
RIGHT = {
    "S chest": (82, 86),
    "S waist": (66, 70),
    "M chest": (87, 91),
    "M waist": (71, 75),
    "L chest": (92, 96),
    "L waist": (76, 80),
}


def fronted(word: str, head: str = "Size | Chest (cm) | Waist (cm)") -> FileReading:
    return table("\n".join([head, *(" | ".join((word, *row)) for row in ROWS)]))


def spanned(word: str) -> FileReading:
    rows = ["".join(f"<td>{cell}</td>" for cell in row) for row in ROWS]
    rows[0] = f'<td rowspan="3">{word}</td>{rows[0]}'
    head = "<tr><th>Size</th><th>Chest (cm)</th><th>Waist (cm)</th></tr>"
    page = f"<table>{head}{''.join(f'<tr>{row}</tr>' for row in rows)}</table>"
    return read_bytes(page.encode(), "chart.html")


@pytest.mark.parametrize("form", [fronted, spanned])
@pytest.mark.parametrize("word", ["Women", "Fernhollow"])
def test_headings_go_one_column_further_and_are_asked_about_once(form, word: str) -> None:
    reading = form(word)
    found = {key.removeprefix("women "): ends for key, ends in values(reading).items()}
    assert found == RIGHT
    assert questions(reading) == ["columns-shifted"]
    assert len(asked_at(reading, "columns-shifted")) == len(ranges(reading))


def test_a_word_that_names_the_first_cells_stays_over_them() -> None:
    reading = fronted("Women", "Wer | Brustumfang (cm) | Taillenumfang (cm)")
    found = {key.removeprefix("women "): ends for key, ends in values(reading).items()}
    assert found == RIGHT
    assert "columns-shifted" in questions(reading)


def test_numbers_for_sizes_are_told_by_what_the_columns_measure() -> None:
    reading = table(
        "Größe | Brustumfang (cm) | Taillenumfang (cm)\n"
        "Damen | 36 | 84-88 | 66-70\nDamen | 38 | 88-92 | 70-74\nHerren | 48 | 94-98 | 80-84\n"
        "Herren | 50 | 98-102 | 84-88"
    )
    assert values(reading)["women 36 chest"] == (84, 88)
    assert values(reading)["men 50 waist"] == (84, 88)
    assert questions(reading) == ["columns-shifted"]


def test_in_inches_with_three_measures() -> None:
    reading = table(
        "Talla | Pecho (in) | Cintura (in) | Cadera (in)\n"
        "Mujer | S | 32-34 | 26-27 | 35-36\nMujer | M | 35-37 | 28-30 | 37-39"
    )
    assert values(reading)["women S chest"] == (81.28, 86.36)
    assert values(reading)["women M hip"] == (93.98, 99.06)


def test_a_last_column_without_a_heading_moves_nothing() -> None:
    reading = table(
        "Size | Chest (cm) | Waist (cm)\nS | 82-86 | 66-70 | 90-94\nM | 87-91 | 71-75 | 95-99\n"
        "L | 92-96 | 76-80 | 100-104"
    )
    assert values(reading)["S chest"] == (82, 86)
    assert values(reading)["S waist"] == (66, 70)


def test_a_word_under_a_measure_throws_doubt_on_all_where_nothing_tells_the_way() -> None:
    reading = table(
        "Size | Chest (cm) | Waist (cm) | Note\nWomen | S | 82-86 | new | 66-70\n"
        "Women | M | 87-91 | new | 71-75\nWomen | L | 92-96 | new | 76-80"
    )
    assert len(asked_at(reading, "columns-shifted")) == len(ranges(reading)) > 6


def test_lengths_beside_the_sizes_have_no_heading_of_their_own() -> None:
    reading = table(
        "Size | Chest (cm) | Waist (cm)\nS | Short | 82-86 | 66-70\nS | Long | 82-86 | 67-71\n"
        "M | Short | 87-91 | 71-75\nM | Long | 87-91 | 72-76"
    )
    assert values(reading)["S Long waist"] == (67, 71)
    assert values(reading)["M Short chest"] == (87, 91)
    assert questions(reading) == ["columns-shifted"]


def test_a_heading_too_many_in_front_goes_over_the_column_before() -> None:
    for first in ("", "Gender"):
        head = "".join(f"<th>{one}</th>" for one in (first, "Size", "Chest (cm)", "Waist (cm)"))
        rows = "".join(f"<tr>{''.join(f'<td>{cell}</td>' for cell in row)}</tr>" for row in ROWS)
        reading = read_bytes(f"<table><tr>{head}</tr>{rows}</table>".encode(), "chart.html")
        assert values(reading) == RIGHT
        assert questions(reading) == ["columns-shifted"]
        assert len(asked_at(reading, "columns-shifted")) == len(ranges(reading))


def test_an_empty_last_column_moves_nothing_where_the_figures_fit() -> None:
    reading = table(
        "Model | Size | Chest (cm) | Waist (cm)\nZorbo | S | 82-86 |\nZorbo | M | 87-91 |\n"
        "Zorbo | L | 92-96 |"
    )
    assert values(reading)["M chest"] == (87, 91)
    assert "columns-shifted" not in questions(reading)


@pytest.mark.parametrize("numbers", [("34", "36", "38"), ("8", "8", "8"), ("6", "8", "12")])
def test_a_second_number_of_each_size_has_no_heading_of_its_own(
    numbers: tuple[str, str, str],
) -> None:
    rows = [" | ".join((a, n, *b)) for (a, *b), n in zip(ROWS, numbers, strict=True)]
    reading = table("\n".join(["Size | Chest (cm) | Waist (cm) | ", *rows]))
    assert values(reading) == RIGHT
    assert questions(reading) == ["columns-shifted"]
    assert len(asked_at(reading, "columns-shifted")) == len(ranges(reading))


def test_so_has_it_before_single_figures_in_german_inches() -> None:
    reading = table(
        "Größe | Brustumfang (in) | Hüftumfang (in) | \n"
        "S | 8 | 34 | 36\nM | 10 | 36 | 38\nL | 12 | 38 | 40"
    )
    assert values(reading)["S chest"] == 86.36
    assert values(reading)["L hip"] == 101.6


def test_numbers_that_could_be_girths_in_inches_throw_doubt_on_all() -> None:
    reading = table(
        "Size | Chest (in) | Waist (in) | \nS | 34 | 32-34 | 26-28\nM | 36 | 34-36 | 28-30\n"
        "L | 38 | 36-38 | 30-32"
    )
    assert len(asked_at(reading, "columns-shifted")) == len(ranges(reading)) == 9
