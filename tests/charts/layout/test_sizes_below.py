"""Numbers below sizes that span several columns name the sizes; a heading of them ends that."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from charts.size_labels import read_label
from tests.charts.read_text import asked_at, questions, values

BODY = (
    "<tr><td>{0}<td>80-84<td>85-87<td>88-91<td>92-95</tr>"
    "<tr><td>{1}<td>62-64<td>65-67<td>68-71<td>72-74</tr></table>"
)


def page(
    head: str, numbers: str, names: tuple[str, str] = ("Bust (cm)", "Waist (cm)")
) -> FileReading:
    cells = "".join(f"<td>{one}" for one in numbers.split())
    body = f"<table><tr><th>{head}</tr><tr><td>{cells}</tr>" + BODY.format(*names)
    return read_bytes(body.encode(), "a.html")


@pytest.mark.parametrize(
    "head",
    [
        "<th colspan=2>S<th colspan=2>M",
        "<th colspan=2>S<br>Small<th colspan=2>M<br>Medium",
        "<th colspan=2>S Pequeña<th colspan=2>M Mediana",
    ],
)
def test_each_number_is_a_size_under_the_letters_it_stands_below(head: str) -> None:
    reading = page(head, "34 36 38 40")
    assert values(reading)["36 chest"] == (85, 87)
    assert values(reading)["38 waist"] == (68, 71)
    assert [size.also[0].label[0] for size in reading.charts[0].sizes] == ["S", "S", "M", "M"]
    assert questions(reading) == []


def test_sizes_in_the_first_columns_of_rows_are_told_the_same_way() -> None:
    rows = (
        "<table><tr><th><th><th>Brust (cm)<th>Taille (cm)</tr>"
        "<tr><td rowspan=2>S<td>34<td>80-84<td>62-64</tr><tr><td>36<td>85-87<td>65-67</tr>"
        "<tr><td rowspan=2>M<td>38<td>88-91<td>68-71</tr><tr><td>40<td>92-95<td>72-74</tr></table>"
    )
    reading = read_bytes(rows.encode(), "a.html")
    assert values(reading)["36 chest"] == (85, 87)
    assert values(reading)["40 waist"] == (72, 74)


def test_numbers_that_fall_or_repeat_below_one_size_are_asked_about() -> None:
    for numbers in ("36 34 38 40", "34 34 38 38", "34-36 36-38 38-40 40-42"):
        assert "heading-unknown" in questions(page("<th colspan=2>S<th colspan=2>M", numbers))


def test_sizes_that_repeat_in_every_column_are_named_by_what_repeats_least() -> None:
    reading = page("<th colspan=2>S<th colspan=2>M", "34 36 36 40")
    assert [size.label for size in reading.charts[0].sizes] == ["34", "36", "36", "40"]
    assert "label-repeated" in questions(reading)


@pytest.mark.parametrize(
    ("text", "normal"),
    [("S Small", "S"), ("XL Extra Large", "XL"), ("M\nMittel", "M"), ("2XL XX-Large", "2XL")],
)
def test_letters_and_the_words_they_stand_for_are_one_size(text: str, normal: str) -> None:
    label = read_label(text)
    assert label is not None
    assert label.normal == normal


@pytest.mark.parametrize("text", ["S Large", "L Small", "Small S", "S Slim"])
def test_letters_beside_other_words_are_none(text: str) -> None:
    assert read_label(text) is None


def test_a_number_beside_one_that_stands_under_two_letters_is_asked_about_as_well() -> None:
    reading = page("<th colspan=2>S<th colspan=2>M", "34 36 36 40")
    places = {one.place for size in reading.charts[0].sizes for one in size.ranges}
    assert places == set(asked_at(reading, "label-repeated"))
