"""Names of products that hold a word for whose measures follow: "Body warmer", "Flat front"."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Basis


@pytest.mark.parametrize("title", ["Body warmer", "Body armour - adult", "Full body wetsuit"])
def test_the_name_of_a_product_says_nothing_of_the_body(title: str) -> None:
    reading = read_bytes(f"{title}\nSize,Chest\nS,102\nM,108\ncm".encode(), "chart.csv")
    assert reading.charts[0].sizes[0].ranges[0].basis is Basis.UNKNOWN


@pytest.mark.parametrize("title", ["Women's body sizing chart", "Body", "Fits chest"])
def test_the_name_of_a_chart_of_bodies_says_it(title: str) -> None:
    reading = read_bytes(f"{title}\nSize,Chest\nS,88-92\nM,92-96\ncm".encode(), "chart.csv")
    assert reading.charts[0].sizes[0].ranges[0].basis is Basis.BODY


def test_a_cut_is_no_lining_laid_flat() -> None:
    text = 'Size,Inseam\nS,76\nM,77\n"Flat front breeches. cm"'
    reading = read_bytes(text.encode(), "chart.csv")
    assert reading.charts[0].sizes[0].ranges[0].basis is Basis.UNKNOWN


def test_a_sentence_without_its_stop_speaks_of_every_measure() -> None:
    text = "Storlek;Bröst;Rygg\nS;104;62\nM;110;64\nMåtten gäller plagget, inte kroppen (cm)"
    reading = read_bytes(text.encode(), "chart.csv")
    assert {one.basis for one in reading.charts[0].sizes[0].ranges} == {Basis.FINISHED}
