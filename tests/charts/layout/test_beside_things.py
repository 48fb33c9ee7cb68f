"""A measure beside the word for a thing or an exactness: the figures say which of them is meant."""

from __future__ import annotations

import pytest

from charts.headings.pointers import without_pointers
from charts.schema import Dimension, FileReading
from tests.charts.read_text import asked_at, questions, ranges, table, values

CHEST = {"S chest": (82, 86), "M chest": (87, 91), "L chest": (92, 96)}


def read(heading: str, name: str = "chart.csv") -> FileReading:
    """Chests of three sizes under ``heading`` beside plain waists."""
    rows = ("S|82-86|66-70", "M|87-91|71-75", "L|92-96|76-80")
    return table("\n".join((f"Size|{heading}|Waist (cm)", *rows)), name)


def chests(reading: FileReading) -> dict[str, object]:
    return {key: ends for key, ends in values(reading).items() if key.endswith("chest")}


@pytest.mark.parametrize(
    "heading",
    [
        "Standard chest (cm)",
        "Net chest (cm)",
        "Chest with straps closed (cm)",
        "Chest over 2 layers (cm)",
        "Brust, verstellbarer Gurt (cm)",
        "Poitrine (image) cm",
        "Chest step (cm)",
        "Chest (order by this) cm",
    ],
)
def test_figures_of_a_body_beside_such_a_word_are_kept_and_asked(heading: str) -> None:
    reading = read(heading)
    assert chests(reading) == CHEST
    assert questions(reading) == ["heading-two-readings"]
    assert len(asked_at(reading, "heading-two-readings")) == 3


def test_so_they_are_where_the_sizes_run_across() -> None:
    reading = table("Size|S|M\nWaist at belt height (cm)|66-70|71-75\nChest (cm)|82-86|87-91")
    assert values(reading)["S waist"] == (66, 70)
    assert questions(reading) == ["heading-two-readings"]


@pytest.mark.parametrize(
    ("heading", "figures"),
    [
        ("Chest strap (cm)", ("10", "12", "14")),
        ("Chest step (cm)", ("4", "4", "4")),
        ("Chest straps", ("2", "2", "3")),
        ("Weight net (kg)", ("0.9", "1.0", "1.1")),
    ],
)
def test_figures_that_no_body_has_are_left_beside_it(
    heading: str, figures: tuple[str, ...]
) -> None:
    rows = zip(("S", "M", "L"), figures, ("66-70", "71-75", "76-80"), strict=True)
    reading = table("\n".join((f"Size|{heading}|Waist (cm)", *map("|".join, rows))))
    assert {value.dimension for value in ranges(reading)} == {Dimension.WAIST}
    assert questions(reading) == []


def test_a_measure_that_stands_there_already_is_given_once() -> None:
    rows = ("S|82-86|84-90", "M|87-91|88-96")
    reading = table("\n".join(("Size|Chest (cm)|Chest strap (cm)", *rows)))
    assert values(reading) == {"S chest": (82, 86), "M chest": (87, 91)}


@pytest.mark.parametrize("heading", ["Chest ± 1 (cm)", "Chest +/- 1 cm (cm)", "Brust ±1 (cm)"])
def test_what_a_heading_is_exact_to_is_no_column_of_tolerances(heading: str) -> None:
    reading = read(heading)
    assert chests(reading) == CHEST
    assert {value.tolerance for value in ranges(reading)} == {1, None}
    assert questions(reading) == []


def test_a_column_of_tolerances_stays_one() -> None:
    reading = table("Size|Chest (cm)|Chest tolerance (cm)\nS|84|1\nM|89|1\nL|94|2")
    assert values(reading) == {"S chest": 84, "M chest": 89, "L chest": 94}
    assert [value.tolerance for value in ranges(reading)] == [1, 1, 2]


@pytest.mark.parametrize(
    "heading",
    [
        "No. 1 chest (cm)",
        "Chest (see fig. 2) (cm)",
        "Chest (see below) (cm)",
        "Brust (siehe Bild B) cm",
        "Brust Nr. 1 (cm)",
        "Poitrine (repère A) cm",
        "Pecho (foto A) cm",
        "Klatka piersiowa (zdjęcie A) cm",
    ],
)
def test_a_drawing_that_a_heading_points_to_says_nothing_of_the_measure(heading: str) -> None:
    reading = read(heading)
    assert chests(reading) == CHEST
    assert questions(reading) == []


@pytest.mark.parametrize("words", ["picture", "no", "code b", "chest picture", "see waist"])
def test_words_that_point_nowhere_are_kept(words: str) -> None:
    assert without_pointers(words) == words
