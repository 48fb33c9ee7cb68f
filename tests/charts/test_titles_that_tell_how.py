"""Words that tell how to measure stand above a table and name neither it nor a model."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import questions

TOPS = ("Size", "Chest (cm)", "Waist (cm)"), ("S", "82-87", "67-72"), ("M", "87-92", "72-77")
BOTTOMS = ("Size", "Waist (cm)", "Hip (cm)"), ("S", "72-75", "87-90"), ("M", "77-80", "92-95")


def page(told: str) -> FileReading:
    parts = []
    for title, rows in (("Tops", TOPS), ("Bottoms", BOTTOMS)):
        cells = "".join(
            "<tr>" + "".join(f"<td>{one}</td>" for one in row) + "</tr>" for row in rows
        )
        parts.append(f"<h2>{title}</h2><h3>{told}</h3><p>Keep it level.</p><table>{cells}</table>")
    return read_bytes(f"<h1>Size guide</h1>{''.join(parts)}".encode(), "chart.html")


@pytest.mark.parametrize(
    "told",
    [
        "How to Measure",
        "So messen Sie richtig",
        "Comment se mesurer",
        "Cómo medirte",
        "Jak mierzyć",
    ],
)
def test_the_title_above_them_tells_the_tables_apart(told: str) -> None:
    reading = page(told)
    assert [chart.title for chart in reading.charts] == ["Tops", "Bottoms"]
    assert questions(reading) == []
    assert {chart.model and chart.model.text for chart in reading.charts} == {None}


def test_without_another_title_the_same_sizes_are_asked_about() -> None:
    rows = "".join(f"<tr><td>{a}<td>{b}<td>{c}" for a, b, c in TOPS)
    other = rows.replace("67-72", "72-75").replace("72-77", "77-80")
    text = (
        f"<h3>How to measure</h3><table>{rows}</table><h3>How to measure</h3><table>{other}</table>"
    )
    assert questions(read_bytes(text.encode(), "chart.html")) == ["label-repeated"]
