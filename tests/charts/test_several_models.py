"""One chart for several models: plain lists of names are taken, everything else is one name."""

from __future__ import annotations

import pytest

from charts.identity import own_words
from charts.importer import read_bytes
from charts.several_models import models_in

TABLE = "Size;Chest (cm)\nS;84-88\nM;89-93\nL;94-98\n"


@pytest.mark.parametrize(
    ("title", "names"),
    [
        ("Models: Alizane, Brisouar and Fellgarrow W", ["Alizane", "Brisouar", "Fellgarrow W"]),
        ("Modelle: Moorflanke und Steinflanke", ["Moorflanke", "Steinflanke"]),
        ("Fellgarrow W / Fellgarrow M size chart", ["Fellgarrow W", "Fellgarrow M"]),
        ("Size guide - Alizane/Brisouar 2027", ["Alizane", "Brisouar"]),
        ("Alizane + Brisouar", ["Alizane", "Brisouar"]),
    ],
)
def test_a_list_of_names_is_several_models(title: str, names: list[str]) -> None:
    assert [one.text for one in models_in([title], "chart.csv", own_words)] == names


@pytest.mark.parametrize(
    "title",
    [
        "Ladies / Gents",
        "Chest / Waist / Hip (cm)",
        "cm / in",
        "XS / S / M / L",
        "Tarnwhistle & Sons",
        "Women/Men Fellgarrow",
        "Größe / Taille",
        "Level 3 / EN 13158",
        "Alizane / Alizane",
        "Fellgarrow",
        "",
    ],
)
def test_anything_else_is_one_name_or_none(title: str) -> None:
    assert models_in([title], "chart.csv", own_words) == ()


def test_a_file_can_name_them_too() -> None:
    found = models_in([], "north/Alizane + Brisouar.xlsx", own_words)
    assert [(one.text, one.source) for one in found] == [("Alizane", "file"), ("Brisouar", "file")]


def test_the_chart_says_so_in_a_note() -> None:
    reading = read_bytes(f"Alizane / Brisouar\n\n{TABLE}".encode(), "chart.csv")
    assert reading.charts[0].models == ("Alizane", "Brisouar")
    (note,) = [one for one in reading.findings if one.code == "several-models"]
    assert note.values["text"] == "Alizane, Brisouar"
