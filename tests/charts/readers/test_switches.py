"""A size or people named only on the link or button that opens the box with their table."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import questions, values

ROWS = (
    "<tr><th>Height</th><td>80-86 cm</td></tr><tr><th>Chest</th><td>50-52 cm</td></tr>",
    "<tr><th>Height</th><td>86-92 cm</td></tr><tr><th>Chest</th><td>52-54 cm</td></tr>",
)
CHEST = "<tr><th>Size<th>Chest (cm)</tr><tr><td>S<td>84-88</tr><tr><td>M<td>88-92</tr>"


def opened(switch: str, rows: str) -> str:
    return f"<div class=size>{switch}<div><table>{rows}</table></div></div>"


@pytest.mark.parametrize(
    "switch",
    ["<a href='javascript:void(0)'>{}</a>", "<a href='#'><b>{}</b></a>", "<button>{}</button>"],
)
@pytest.mark.parametrize("sizes", [("12-18<br>months", "18-24<br>months"), ("S", "M")])
def test_a_switch_names_the_size_of_the_table_that_it_opens(
    switch: str, sizes: tuple[str, str]
) -> None:
    boxes = (opened(switch.format(size), rows) for size, rows in zip(sizes, ROWS, strict=True))
    reading = read_bytes(f"<h2>Choose</h2>{''.join(boxes)}".encode(), "page.html")
    first, second = (size.replace("<br>", " ") for size in sizes)
    found = {name.removeprefix("kids "): ends for name, ends in values(reading).items()}
    assert found == {
        f"{first} height": (80, 86),
        f"{first} chest": (50, 52),
        f"{second} height": (86, 92),
        f"{second} chest": (52, 54),
    }
    assert "blank-inside" not in questions(reading)


@pytest.mark.parametrize(
    "switches",
    [
        "<a href='/kids.html'>Kids</a>",
        "<a href='#a'>Kids</a><a href='#b'>Babies</a>",
        "<a href='#'>Close</a>",
    ],
    ids=["leads elsewhere", "several", "no name"],
)
def test_a_link_that_opens_no_box_of_its_own_names_nothing(switches: str) -> None:
    reading = read_bytes(opened(switches, CHEST).encode(), "page.html")
    assert [chart.band for chart in reading.charts] == [None]
    assert [chart.title for chart in reading.charts] == [None]


def test_people_on_a_switch_are_those_of_the_chart() -> None:
    reading = read_bytes(opened("<button>Women</button>", CHEST).encode(), "page.html")
    assert [chart.band for chart in reading.charts] == ["women"]
