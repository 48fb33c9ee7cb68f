"""Rows after a remark belong to the lettered sizes above it, whatever their first one is called."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import questions, values

REMARK = ",measured 3 cm below the arm.,,"
BABIES = "Kinder,,,"


def _read(between: str, height: str, figures: str) -> FileReading:
    rows = ["Größe,S,M,L", "Brustumfang (cm),92,97,102", between, f"{height},{figures}"]
    return read_bytes("\n".join([*rows, "Ärmellänge (cm),58,60,62"]).encode(), "a.csv")


def _labels(reading: FileReading) -> list[str | None]:
    return [size.label for chart in reading.charts for size in chart.sizes]


@pytest.mark.parametrize("remark", [REMARK, ",2 cm unterhalb der Naht,,"])
def test_a_length_after_a_remark_names_no_sizes(remark: str) -> None:
    reading = _read(remark, "Körperlänge / Body length (cm)", "61,63,65")
    assert set(_labels(reading)) == {"S", "M", "L"}
    assert values(reading)["M arm_length"] == 60
    assert questions(reading) == []


@pytest.mark.parametrize(
    ("between", "height", "figures"),
    [
        (REMARK, "Körperlänge / Body length", "104,116,128"),
        (REMARK, "Körpergröße (cm)", "62,68,74"),
        (BABIES, "Körperlänge / Body length", "62,68,74"),
        (REMARK, "Körperlänge / Body length", "62,68"),
    ],
)
def test_what_may_be_the_heights_of_others_is_not_put_under_the_letters(
    between: str, height: str, figures: str
) -> None:
    assert _labels(_read(between, height, figures))[3:4] == [figures.split(",", maxsplit=1)[0]]
