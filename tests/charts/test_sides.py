"""A word over several columns, or beside the rows, that says whose measures stand there."""

from __future__ import annotations

import pytest

from charts.headings.sides import side_of, told_apart
from charts.importer import read_bytes
from charts.schema import Basis, Dimension
from tests.charts.read_text import asked_at, questions

BODY, FINISHED = Basis.BODY, Basis.FINISHED
SPANNED = (
    "<table><tr><th rowspan=2>{size}</th><th colspan=2>{one}</th><th colspan=2>{other}</th></tr>"
    "<tr><th>{chest}</th><th>{waist}</th><th>{chest}</th><th>{back}</th></tr>"
    "<tr><td>S</td><td>84-90</td><td>70-76</td><td>104</td><td>60</td></tr>"
    "<tr><td>M</td><td>90-96</td><td>76-82</td><td>110</td><td>62</td></tr></table><p>cm</p>"
)
ENGLISH = {"size": "Size", "chest": "Chest", "waist": "Waist", "back": "Back length"}
GERMAN = {"size": "Größe", "chest": "Brustumfang", "waist": "Taille", "back": "Rückenlänge"}
FRENCH = {"size": "Taille", "chest": "Poitrine", "waist": "Ceinture", "back": "Longueur dos"}


def bases(data: str, name: str = "chart.csv") -> list[tuple[Dimension, Basis]]:
    """Each measure of the first size with its basis, and that nothing is asked of it."""
    reading = read_bytes(data.encode(), name)
    ranges = reading.charts[0].sizes[0].ranges
    assert not questions(reading)
    return [(one.dimension, one.basis) for one in ranges]


@pytest.mark.parametrize(
    ("one", "other", "words"),
    [
        ("Body", "Vest", ENGLISH),
        ("Rider", "Jacket", ENGLISH),
        ("To fit", "Garment", ENGLISH),
        ("Body measurements", "Garment measurements", ENGLISH),
        ("Körpermaße", "Fertigmaße", GERMAN),
        ("Reiter", "Weste", GERMAN),
        ("Corps", "Vêtement", FRENCH),
    ],
)
def test_spanning_words_give_each_column_its_side(
    one: str, other: str, words: dict[str, str]
) -> None:
    assert bases(SPANNED.format(one=one, other=other, **words), "chart.html") == [
        (Dimension.CHEST, BODY),
        (Dimension.WAIST, BODY),
        (Dimension.CHEST, FINISHED),
        (Dimension.BACK_LENGTH, FINISHED),
    ]


@pytest.mark.parametrize("first", [",Body,,Garment,\nSize,", "Body,,,Jacket,\nSize,"])
def test_without_merged_cells_a_side_reaches_to_the_next(first: str) -> None:
    assert bases(
        f"{first}Chest,Waist,Chest,Sleeve\nS,84-90,70-76,104,60\nM,90-96,76-82,110,62\ncm"
    ) == [
        (Dimension.CHEST, BODY),
        (Dimension.WAIST, BODY),
        (Dimension.CHEST, FINISHED),
        (Dimension.ARM_LENGTH, FINISHED),
    ]


def test_a_unit_above_several_columns_holds_for_each_of_them() -> None:
    heads = ",Body (in),,Garment (cm),\nSize,Chest,Waist,Chest,Sleeve"
    text = f"{heads}\nS,34-36,28-30,104,60\nM,36-38,30-32,110,62"
    reading = read_bytes(text.encode(), "chart.csv")
    assert not questions(reading)
    assert [str(one.low or one.value) for one in reading.charts[0].sizes[0].ranges] == [
        "86.36", "71.12", "104", "60",
    ]  # fmt: skip


def test_the_words_may_stand_below_the_measures() -> None:
    text = "Size,Chest,Chest\n,body,garment\nS,84-90,104\nM,90-96,110\ncm"
    assert bases(text) == [(Dimension.CHEST, BODY), (Dimension.CHEST, FINISHED)]


@pytest.mark.parametrize("first", ["Type,Size,", "Size,Type,"])
def test_a_column_of_sides_parts_the_rows(first: str) -> None:
    rows = [
        ("Body", "S", "84-90"),
        ("Body", "M", "90-96"),
        ("Garment", "S", "104"),
        ("Garment", "M", "110"),
    ]
    turned = first.startswith("Size")
    lines = [
        f"{size},{side},{text}" if turned else f"{side},{size},{text}" for side, size, text in rows
    ]
    reading = read_bytes("\n".join([f"{first}Chest", *lines, "cm"]).encode(), "chart.csv")
    found = [(chart.model, chart.sizes[0].ranges[0].basis) for chart in reading.charts]
    assert found == [(None, BODY), (None, FINISHED)]
    assert not questions(reading)


def test_sides_before_the_names_of_measures() -> None:
    rows = "Body,Chest,84-90,90-96\nGarment,Chest,104,110\nGarment,Sleeve,60,62"
    text = f"Section,Measure,S,M\n{rows}\ncm"
    assert bases(text) == [
        (Dimension.CHEST, BODY),
        (Dimension.CHEST, FINISHED),
        (Dimension.ARM_LENGTH, FINISHED),
    ]


def test_a_word_nobody_knows_beside_a_side_is_asked_about() -> None:
    reading = read_bytes(
        SPANNED.format(one="Body measurements", other="Zorbo", **ENGLISH).encode(), "chart.html"
    )
    asked = asked_at(reading, "basis-doubtful")
    assert len(asked) == 4
    assert questions(reading) == ["basis-doubtful"]


def test_a_product_beside_a_product_tells_nothing() -> None:
    assert not told_apart(["Vest", "Jacket"])
    assert side_of("Body length") is None
    assert side_of("Body warmer") is None
    assert told_apart(["Rider", "Vest"])


def test_measures_of_the_clothes_are_the_other_side_beside_those_of_the_body() -> None:
    rows = "Maat,Borst,Taille,Borst,Lengte\nS,84-90,70-76,104,66\nM,90-96,76-82,110,68"
    reading = read_bytes(f",Lichaamsmaten,,Kledingmaten,\n{rows}\ncm".encode(), "chart.csv")
    found = [one.basis for one in reading.charts[0].sizes[0].ranges]
    assert found == [BODY, BODY, FINISHED, FINISHED]


def test_a_bodysuit_beside_trousers_is_no_body() -> None:
    assert not told_apart(["Body", "Hose"])
    assert told_apart(["Body", "Jacke"])
    assert told_apart(["Rider", "Breeches"])
