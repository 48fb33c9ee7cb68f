"""A typed chart as files: read like any supplier's, its places kept beside it."""

from __future__ import annotations

from pathlib import Path

from charts.importer import read_bytes
from ui.typed_picture.typed_file import TypedChart, open_typed, places_path, save_typed

TEXTS = {(0, 0): "Size", (0, 1): "Chest (cm)", (1, 0): "S", (1, 1): "84-92", (2, 0): "M"}
SPOTS = {(1, 1): (40, 60, 90, 22)}


def test_what_is_saved_opens_as_it_was(tmp_path: Path) -> None:
    chart = TypedChart(TEXTS, SPOTS, str(tmp_path / "photo.png"), 90)
    save_typed(tmp_path / "typed.tsv", chart)
    assert open_typed(tmp_path / "typed.tsv") == chart


def test_the_picture_is_named_alone_where_it_lies_beside(tmp_path: Path) -> None:
    save_typed(tmp_path / "typed.tsv", TypedChart(TEXTS, SPOTS, str(tmp_path / "photo.png")))
    assert '"photo.png"' in places_path(tmp_path / "typed.tsv").read_text("utf-8")


def test_a_text_with_tabs_and_quotes_stays_one_cell(tmp_path: Path) -> None:
    chart = TypedChart({(0, 0): 'a\t"b"'}, {}, str(tmp_path / "photo.png"))
    save_typed(tmp_path / "typed.tsv", chart)
    again = open_typed(tmp_path / "typed.tsv")
    assert again is not None
    assert again.texts == chart.texts


def test_a_file_that_was_not_typed_here_is_none(tmp_path: Path) -> None:
    (tmp_path / "maker.tsv").write_text("Size\tChest\n", encoding="utf-8")
    assert open_typed(tmp_path / "maker.tsv") is None


def test_damaged_places_cost_the_places_and_no_more(tmp_path: Path) -> None:
    (tmp_path / "typed.tsv").write_text("Size\tChest\n", encoding="utf-8")
    places_path(tmp_path / "typed.tsv").write_text(
        'format = 1\npicture = "p.png"\nturned = 7\n[places]\nB2 = "1 x 3 4"\nC1 = 5\n',
        encoding="utf-8",
    )
    chart = open_typed(tmp_path / "typed.tsv")
    assert chart is not None
    assert (chart.spots, chart.turned) == ({}, 0)


def test_it_is_read_by_the_grammar_that_reads_files() -> None:
    reading = read_bytes(TypedChart(TEXTS).text().encode(), "typed.tsv")
    assert reading.charts[0].sizes[0].ranges[0].published == "84-92"
