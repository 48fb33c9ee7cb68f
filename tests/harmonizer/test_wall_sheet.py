"""The wall sheet: a line a model and cut, a block a cut, held to the demo scenario."""

from __future__ import annotations

from datetime import date

import pytest

from charts.in_house import InHouseChart, InHouseRow
from charts.schema import Definition, Dimension
from harmonizer.combined import combined
from harmonizer.wall_sheet import DRAWN, Cut, WallSheet, wall_sheet
from tests.demo_scenario import CHART_FILES, all_offers, figures_meant, reading_of

DAY = date(2027, 2, 11)


@pytest.fixture(scope="module")
def demo() -> WallSheet:
    readings = [reading_of(file) for file in CHART_FILES]
    return wall_sheet(combined(readings, all_offers(), {}, DAY))


def plain(model: str, band: str | None, file: str = "a.csv", size: str = "M") -> InHouseRow:
    return InHouseRow("Tarnwhistle", model, band, size, None, {}, file, "A1:B2", DAY)


def test_each_cut_has_its_block_in_a_fixed_order() -> None:
    bands = ("kids", None, "men", "unisex", "women", "girls")
    rows = tuple(plain(f"Model {band}", band) for band in bands)
    blocks = wall_sheet(InHouseChart(rows, DAY)).blocks
    assert [block.cut for block in blocks] == list(Cut)
    children = next(block for block in blocks if block.cut is Cut.CHILDREN)
    assert [line.band for line in children.lines] == ["kids", "girls"]


def test_a_model_cut_for_women_and_for_men_is_two_lines() -> None:
    rows = (plain("Fellrunner", "women"), plain("Fellrunner", "men"))
    blocks = wall_sheet(InHouseChart(rows, DAY)).blocks
    assert [(block.cut, len(block.lines)) for block in blocks] == [(Cut.WOMEN, 1), (Cut.MEN, 1)]


def test_one_name_in_two_files_is_two_lines_and_never_mixed() -> None:
    rows = (plain("Fellrunner", "women"), plain("Fellrunner", "women", file="b.csv"))
    (block,) = wall_sheet(InHouseChart(rows, DAY)).blocks
    assert [line.first.file for line in block.lines] == ["a.csv", "b.csv"]


def test_the_demo_has_one_line_for_each_of_its_models(demo: WallSheet) -> None:
    lines = [line.first.model for block in demo.blocks for line in block.lines]
    assert sorted(filter(None, lines)) == sorted({row.model or "" for row in demo.chart.rows})
    assert len(lines) == 14


def test_every_bar_of_the_demo_ends_where_its_maker_meant(demo: WallSheet) -> None:
    """Against the figures typed in by hand from the story, not from the files."""
    meant = figures_meant()
    drawn = 0
    for block in demo.blocks:
        for line in block.lines:
            for dimension in DRAWN:
                for run in line.cells[dimension].runs:
                    for span in run.spans:
                        if span.derived or span.questioned:
                            continue
                        ends = {
                            (low and float(low), high and float(high))
                            for (model, _, _, measure), (low, high) in meant.items()
                            if (model, measure) == (line.first.model, dimension.value)
                        }
                        assert (span.low_cm, span.high_cm) in ends
                        drawn += 1
    assert drawn > 200


def test_the_finished_back_of_the_demo_is_not_on_the_axis(demo: WallSheet) -> None:
    line = next(
        each for block in demo.blocks for each in block.lines if each.first.model == "Steinflanke"
    )
    cell = line.cells[Dimension.BACK_LENGTH]
    assert all(span.low_cm != 48.0 or span.high_cm != 48.0 for span in cell.runs[0].spans)
    assert next(remark.why.value for remark in cell.remarks) == "finished"
    assert len(cell.runs) == 1


def test_the_definitions_are_listed_once_in_the_order_of_the_dimensions(demo: WallSheet) -> None:
    assert demo.definitions == (
        Definition.CHEST_WIDEST,
        Definition.WAIST_NATURAL,
        Definition.HIP_BELOW_BELT,
        Definition.HIP_SEAT,
        Definition.BACK_C7_SI,
        Definition.BACK_C7_WAIST,
    )


def test_a_sheet_without_rows_has_no_blocks() -> None:
    assert wall_sheet(InHouseChart((), DAY)).blocks == ()
