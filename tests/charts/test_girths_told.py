"""Three girths under headings that nobody knows: told by their figures, and asked about once."""

from __future__ import annotations

from datetime import date

import pytest

from charts.choices import answers, choices
from charts.importer import read_bytes
from tests.charts.read_text import asked_at, questions, table, values

HEADS = "Saizi | Kifua (cm) | Kiuno (cm) | Makalio (cm)"
ROWS = "S | 84 | 68 | 92\nM | 88 | 72 | 96\nL | 92 | 76 | 100"
TOLD = {"S chest": 84, "S waist": 68, "S hip": 92}


@pytest.mark.parametrize("heads", [HEADS, "Size | A (cm) | B (cm) | C (cm)"])
def test_the_order_and_the_proportions_tell_chest_waist_and_hip(heads: str) -> None:
    reading = table(f"{heads}\n{ROWS}")
    assert values(reading).items() >= TOLD.items()
    assert questions(reading) == ["heading-unknown"]
    assert len(asked_at(reading, "heading-unknown")) == 9


def test_inches_are_told_alike() -> None:
    rows = "S | 33 | 27 | 36\nM | 35 | 29 | 38\nL | 37 | 31 | 40"
    found = values(table(f"{HEADS.replace('cm', 'in')}\n{rows}"))
    assert found["S waist"] == pytest.approx(27 * 2.54)


@pytest.mark.parametrize(
    "text",
    [
        f"{HEADS}\nS | 84 | 92 | 68\nM | 88 | 96 | 72\nL | 92 | 100 | 76",  # in another order
        f"{HEADS}\nS | 84 | 68 | 60\nM | 88 | 72 | 61\nL | 92 | 76 | 62",  # the last is no hip
        f"{HEADS}\nS | 84 | 68 | 92\nM | 88 | 72 | 96",  # two sizes prove nothing
        f"{HEADS.replace(' (cm)', '')}\n{ROWS}",  # no unit
    ],
)
def test_anything_else_stays_unknown(text: str) -> None:
    assert not {key.split()[-1] for key in values_of(text)} & {"chest", "waist", "hip"}


def values_of(text: str) -> list[str]:
    reading = table(text)
    return [one.dimension.value for c in reading.charts for s in c.sizes for one in s.ranges]


def test_beside_a_heading_that_is_known_nothing_is_told() -> None:
    text = f"{HEADS} | Waist (cm)\n" + "\n".join(f"{row} | 70" for row in ROWS.splitlines())
    assert "chest" not in values_of(text)


def test_one_answer_confirms_all_three() -> None:
    source = f"{HEADS}\n{ROWS}".replace(" | ", ";").encode()
    reading = read_bytes(source, "a.csv")
    asked = next(one for one in reading.findings if one.code == "heading-unknown")
    first = choices(asked, reading)[0]
    given = answers(first, asked, "A. Person", date(2027, 3, 1))
    again = read_bytes(source, "a.csv", answers=given)
    assert values(again).items() >= TOLD.items()
    assert questions(again) == []
    assert [one.code for one in again.findings if one.settled] == ["heading-unknown"]
