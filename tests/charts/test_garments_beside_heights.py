"""A garment's measures, or a girth over clothes, in a table that gives the wearer's height too."""

from __future__ import annotations

import pytest

from charts.headings.over_clothes import over_clothes
from charts.importer import read_bytes
from charts.schema import Basis, Dimension, FileReading
from tests.charts.read_text import asked_at, questions, ranges

FEW = ("S", "M", "L")
HEIGHTS = ("158-166", "164-172", "170-178")


def read(*columns: tuple[str, ...], note: str = "cm") -> FileReading:
    """A chart of three sizes from its columns, each a heading and its figures."""
    rows = zip(("Size", *FEW), *columns, strict=True)
    return read_bytes("\n".join([*map(";".join, rows), note]).encode(), "chart.csv")


def asked(reading: FileReading) -> set[str]:
    """The headings whose values are asked whose they are."""
    places = asked_at(reading, "basis-doubtful")
    return {one.heading for one in ranges(reading) if one.place in places}


def bases(reading: FileReading) -> dict[str, Basis]:
    return {one.heading: one.basis for one in ranges(reading)}


HEIGHT = ("Height", *HEIGHTS)
SINGLE_CHEST = ("Chest", "104", "110", "116")
CHEST = ("Chest", "84-90", "90-96", "96-104")


@pytest.mark.parametrize(
    ("heading", "figures"),
    [("Hem width", ("50", "53", "56")), ("Back length", ("66", "68", "70"))],
)
def test_single_figures_beside_a_garments_are_asked_beside_ranges_of_height(
    heading: str, figures: tuple[str, ...]
) -> None:
    reading = read(HEIGHT, SINGLE_CHEST, (heading, *figures), ("Sleeve", "60", "61", "62"))
    assert {"Chest", "Sleeve"} <= asked(reading)
    assert questions(reading) == ["basis-doubtful"]


def test_a_girth_that_sounds_like_a_bodys_is_asked_there_too() -> None:
    chest = ("Chest circumference", "104", "110", "116")
    reading = read(HEIGHT, chest, ("Hem width", "50", "53", "56"))
    assert asked(reading) == {"Chest circumference"}


def test_a_back_longer_than_any_bodys_is_asked_and_the_girth_beside_it_is_not() -> None:
    reading = read(HEIGHT, CHEST, ("Back length", "66", "68", "70"))
    assert asked(reading) == {"Back length"}
    assert bases(reading)["Chest"] is Basis.BODY


@pytest.mark.parametrize(
    "columns",
    [
        (HEIGHT, CHEST, ("Back length", "40", "42", "44")),
        (HEIGHT, ("To fit chest", "88", "92", "96"), ("Hem width", "50", "53", "56")),
        (("Height", "158", "164", "170"), ("Chest", "88", "92", "96"), ("Waist", "70", "74", "78")),
        (HEIGHT, ("Chest", "88", "92", "96"), ("Arm length", "58", "60", "62")),
    ],
)
def test_a_chart_of_bodies_is_asked_nothing(columns: tuple[tuple[str, ...], ...]) -> None:
    reading = read(*columns)
    assert questions(reading) == []
    chest = next(one for one in ranges(reading) if one.dimension is Dimension.CHEST)
    assert chest.basis is Basis.BODY


def test_words_that_say_body_settle_it() -> None:
    reading = read(
        HEIGHT, SINGLE_CHEST, ("Hem width", "50", "53", "56"), note="Body measurements in cm"
    )
    assert bases(reading)["Chest"] is Basis.BODY
    assert questions(reading) == []


@pytest.mark.parametrize(
    ("heading", "said"),
    [
        ("Chest (over clothes)", True),
        ("Brustumfang über Kleidung (cm)", True),
        ("Chest over your riding jacket", True),
        ("Tour de poitrine par-dessus les vêtements", True),
        ("Chest over light clothing", False),
        ("Chest (over the bust)", False),
        ("Brust über alles", False),
        ("Waist over shoulder", False),
    ],
)
def test_what_is_taken_over_clothes(heading: str, said: bool) -> None:
    assert over_clothes(heading) is said


def test_a_girth_over_clothes_is_nobodys_and_asked_about() -> None:
    reading = read(HEIGHT, ("Chest girth (over clothes)", "90-98", "96-104", "104-112"))
    assert asked(reading) == {"Chest girth (over clothes)"}
    assert bases(reading)["Chest girth (over clothes)"] is Basis.UNKNOWN


def test_halves_in_the_unit_that_is_printed_are_no_inches() -> None:
    reading = read(("Waist", "38", "40", "42"), ("Hip", "48", "50", "52"))
    assert questions(reading) == ["laid-flat"]
    assert [str(one.value) for one in ranges(reading)[:2]] == ["38", "48"]


def test_halves_said_to_lie_flat_are_clean() -> None:
    note = "Width measurements taken flat in cm, multiply by 2"
    reading = read(("Waist", "34", "36", "39"), ("Hip", "48", "51", "54"), note=note)
    assert questions(reading) == []
    assert set(bases(reading).values()) == {Basis.FLAT}


@pytest.mark.parametrize(
    "note", ["Inseam in cm", "1 inch is 2.54 cm", "Waist in inches, back in cm"]
)
def test_a_unit_of_something_else_is_not_taken_for_halves(note: str) -> None:
    reading = read(("Waist", "28", "30", "32"), ("Hip", "36", "38", "40"), note=note)
    assert {str(one.value) for one in ranges(reading)[:1]} == {"71.12"}
