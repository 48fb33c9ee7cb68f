"""Which words of a title name a model, and which every chart may have."""

from __future__ import annotations

import pytest

from charts.identity import own_words
from charts.importer import read_bytes


@pytest.mark.parametrize(
    ("title", "name"),
    [
        ("Size chart: Ravka", "Ravka"),
        ("Tabulka velikostí: Cyklistické dresy", "Cyklistické dresy"),
        ("Fellgarrow M, gents: to fit body measurements", "Fellgarrow M"),
        ("Gustwhirr adult: back length (in), C7 to sacral dimples", "Gustwhirr"),
        ("Brisouar : homme", "Brisouar"),
        ("Heidevlok, bodyprotector volwassenen (unisex)", "Heidevlok"),
        ("Størrelsesskema", ""),
        ("Guide des tailles", ""),
        ("Guía de tallas para mujer", ""),
        ("Maattabel voor heren", ""),
        ("Tailles femme", ""),
        ("Please measure over light clothing and choose the larger one", ""),
        ("Measure the chest at its widest.", ""),
    ],
)
def test_what_is_left_of_a_title_is_the_model(title: str, name: str) -> None:
    assert own_words(title) == name


TABLE = "<table><tr><th>Size</th><th>Chest (cm)</th></tr><tr><td>S</td><td>{}</td></tr></table>"


def test_a_band_alone_is_a_title_together_with_the_one_above_it() -> None:
    page = "".join(
        f"<h2>{garment}</h2><h3>Men</h3>" + TABLE.format(chest)
        for garment, chest in (("Cross jerseys", "84-88"), ("Cross shorts", "90-94"))
    )
    reading = read_bytes(page.encode(), "a.html")
    assert [chart.title for chart in reading.charts] == [
        "Cross jerseys · Men",
        "Cross shorts · Men",
    ]
    assert {one.code for one in reading.findings} == set()


def test_the_same_sizes_under_one_title_are_asked_about() -> None:
    page = "".join(f"<h3>Men</h3>{TABLE.format(chest)}" for chest in ("84-88", "90-94"))
    reading = read_bytes(page.encode(), "a.html")
    assert "label-repeated" in {one.code for one in reading.findings}


def test_a_title_comes_before_a_sentence_and_without_the_makers_name() -> None:
    text = (
        "Pinderlow Pipwhirr youth inflatable vest, spring 2027, body measurements\n"
        "Back length is taken from the nape to the dimples of the sacrum.\n"
        "Size\tChest (cm)\tWaist (cm)\nS\t70-74\t60-64\nM\t74-78\t64-68\n"
    )
    (chart,) = read_bytes(text.encode(), "pinderlow/sizes.tsv", "pinderlow").charts
    assert chart.title is not None
    assert chart.title.startswith("Pinderlow Pipwhirr")
    assert chart.model is not None
    assert (chart.model.text, chart.model.source) == ("Pipwhirr", "title")
