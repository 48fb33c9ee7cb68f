"""Pages of boxes without a table: headings in a box of their own, boxes around boxes."""

from __future__ import annotations

import pytest

from charts.findings import Level
from charts.importer import read_bytes
from tests.charts.readers.reading import read

_HEADS = "<div id='heads'><h2>bryst</h2><h2>talje</h2></div>"
_SIZES = "".join(f"<div class='o'><div class='i'><h2>{one}</h2></div></div>" for one in (34, 36))
_CHEST = "".join(f"<div class='m'><p>{one}</p></div>" for one in ("80-84 cm", "84-88 cm"))
_WAIST = "".join(f"<div class='m'><p>{one}</p></div>" for one in ("64-68 cm", "68-72 cm"))


def page(heads: str, *boxes: str) -> str:
    inner = "".join(f"<div>{box}</div>" for box in boxes)
    return f"<div><div>{heads}<div>{inner}</div></div></div>"


def test_headings_in_a_box_of_their_own_belong_to_the_boxes_beside_it() -> None:
    found = read(page(_HEADS, _SIZES, _CHEST, _WAIST), "a.html")
    assert found.rows() == [
        ["", "34", "36"],
        ["bryst", "80-84 cm", "84-88 cm"],
        ["talje", "64-68 cm", "68-72 cm"],
    ]


def test_a_heading_too_few_is_given_to_no_box_and_every_value_is_asked_about() -> None:
    reading = read_bytes(page(_HEADS, _SIZES, _CHEST, _WAIST, _CHEST).encode(), "a.html")
    questions = {one.id for one in reading.findings if one.level is Level.QUESTION}
    values = [one for chart in reading.charts for size in chart.sizes for one in size.ranges]
    assert values
    assert all(questions & set(one.findings) for one in values)


def test_a_box_with_two_texts_in_boxes_is_no_cell() -> None:
    odd = _CHEST.replace("<p>80-84 cm</p>", "<p>80-84 cm</p><p>31-33 in</p>")
    assert read(page(_HEADS, _SIZES, odd, _WAIST), "a.html").codes == ["no-table"]


def test_sizes_over_their_figures_in_paragraphs() -> None:
    text = "<div><p>Size S M L</p><p>Chest</p><p>84 - 90 90 - 96 96 - 102 cm</p><p>.</p></div>"
    assert read(text, "a.html").rows() == [
        ["Size", "S", "M", "L"],
        ["Chest", "84 - 90", "90 - 96", "96 - 102 cm"],
    ]


@pytest.mark.parametrize(
    "empty", ["<p></p>", "<div class='clear'></div>", "<p>\N{NO-BREAK SPACE}</p>", "<hr>"]
)
def test_an_empty_box_between_rows_of_boxes_only_keeps_distance(empty: str) -> None:
    rows = [("Size", "Chest (cm)", "Waist (cm)"), ("8", "80-84", "62-66"), ("10", "84-88", "66-70")]
    boxes = ("".join(f"<div class='c'>{one}</div>" for one in row) for row in rows)
    lines = "".join(f"<div class='r'>{cells}</div>" for cells in boxes)
    reading = read_bytes(f"<body><p>Ladies</p>{empty}{lines}{empty}</body>".encode(), "a.html")
    assert [chart.band for chart in reading.charts] == ["women"]
    assert [one.label for one in reading.charts[0].sizes] == ["8", "10"]
    assert not [one for one in reading.findings if one.level is Level.QUESTION]
