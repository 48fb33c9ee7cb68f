"""``Women | S | M`` lends its sizes to the section ``Men`` below it, and not its own word."""

from __future__ import annotations

import pytest

from charts.schema import Basis, FileReading
from tests.charts.read_text import table

ACROSS = "{} | S | M | L\nChest (cm) | 82-86 | 87-91 | 92-96\nWaist (cm) | 66-70 | 71-75 | 76-80\n"
BELOW = "{} | | |\nChest (cm) | 97-101 | 102-106 | 107-111\nWaist (cm) | 83-87 | 88-92 | 93-97\n"
DOWN = "{} | Chest (cm) | Waist (cm)\nS | 82-86 | 66-70\nM | 87-91 | 71-75\n"
DOWN_BELOW = "{} | |\nS | 97-101 | 83-87\nM | 102-106 | 88-92\n"


def bands(reading: FileReading) -> list[str | None]:
    return [chart.band for chart in reading.charts]


def bases(reading: FileReading) -> list[set[Basis]]:
    return [{one.basis for size in chart.sizes for one in size.ranges} for chart in reading.charts]


@pytest.mark.parametrize(
    ("corner", "title", "found"),
    [
        ("Women", "Men", ["women", "men"]),
        ("Damen", "Herren", ["women", "men"]),
        ("Women", "Kids", ["women", "kids"]),
        ("Size (women)", "Size (men)", ["women", "men"]),
        ("Women", "Zorbos", ["women", None]),
        ("Women", "Trousers", ["women", "women"]),
    ],
)
def test_a_title_below_the_corner_says_for_whom_its_section_is(
    corner: str, title: str, found: list[str | None]
) -> None:
    assert bands(table(ACROSS.format(corner) + BELOW.format(title))) == found
    assert bands(table(DOWN.format(corner) + DOWN_BELOW.format(title))) == found


def test_each_title_in_turn_holds_below_the_corner() -> None:
    text = ACROSS.format("Women") + BELOW.format("Men") + BELOW.format("Kids")
    assert bands(table(text)) == ["women", "men", "kids"]


def test_a_corner_beats_the_title_above_it() -> None:
    assert bands(table("Sizes for men\n" + ACROSS.format("Women"))) == ["women"]


@pytest.mark.parametrize(
    ("corner", "title", "found"),
    [
        ("Body", "Vest", [Basis.BODY, Basis.UNKNOWN]),
        ("Body", "Men's jacket", [Basis.BODY, Basis.UNKNOWN]),
        ("Körper", "Weste", [Basis.BODY, Basis.UNKNOWN]),
        ("Body", "Men", [Basis.BODY, Basis.BODY]),
        ("Finished garment", "Body", [Basis.FINISHED, Basis.BODY]),
        ("Garment measurements", "Trousers", [Basis.FINISHED, Basis.FINISHED]),
    ],
)
def test_a_corner_says_nothing_of_a_thing_named_below_it(
    corner: str, title: str, found: list[Basis]
) -> None:
    reading = table(ACROSS.format(corner) + BELOW.format(title))
    assert bases(reading) == [{basis} for basis in found]
