"""Cells taken over from the sheet before are those that would be made anew."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from charts.schema import Basis, Chart, Dimension, FileReading
from harmonizer.fit import fit
from harmonizer.offers import offers
from harmonizer.range_table import RangeTable
from harmonizer.rider import Rider
from tests.ui.shop import length_range, model_chart, rider_of
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.rows import TAPES
from ui.words import Words


def with_open_ends(chart: Chart) -> Chart:
    """The same chart where the smallest size says up to, the largest from."""
    first, *middle, last = chart.sizes
    smallest = tuple(
        length_range(one.dimension, None, float(one.high or 0)) for one in first.ranges
    )
    largest = tuple(length_range(one.dimension, float(one.low or 0), None) for one in last.ranges)
    ends = replace(first, ranges=smallest), replace(last, ranges=largest)
    return replace(chart, sizes=(ends[0], *middle, ends[1]))


def table() -> RangeTable:
    """Three models, one of them with open ends, one of finished measures."""
    charts = (
        model_chart("Alderway", "Harrier"),
        with_open_ends(model_chart("Brackenholt", "Merle", shift=2.0)),
        model_chart("Corvane", "Ostler", basis=Basis.FINISHED),
    )
    return RangeTable.compiled(offers([FileReading("one.csv", charts)], []))


TABLE = table()
GROUPS = ModelGroups.of(TABLE)
WORDS = Words("en")
USUAL = {"chest": 92.0, "waist": 76.0, "hip": 99.0, "back_length": 43.0}
MEASURES = st.sampled_from(sorted(USUAL))


def sheet_of(rider: Rider, shown: FittingSheet | None = None) -> FittingSheet:
    return FittingSheet(fit(rider, TABLE), GROUPS, WORDS, frozenset(), shown=shown)


@given(
    changes=st.lists(st.tuples(MEASURES, st.integers(-30, 30)), max_size=6),
    winter=st.lists(st.sampled_from((0.0, 6.0)), min_size=7, max_size=7),
    without=st.lists(st.sampled_from((*USUAL, "none")), min_size=7, max_size=7),
)
def test_from_reading_to_reading_every_cell_is_what_it_would_be_alone(
    changes: list[tuple[str, int]], winter: list[float], without: list[str]
) -> None:
    readings, shown = dict(USUAL), None
    for step, (measure, halves) in enumerate([("chest", 0), *changes]):
        readings[measure] += halves / 2
        given_ = {name: value for name, value in readings.items() if name != without[step]}
        rider = rider_of(**given_, winter_mm=winter[step])
        shown, alone = sheet_of(rider, shown), sheet_of(rider)
        for at in range(len(TABLE.offers)):
            for tape in TAPES:
                assert shown.cells.cell(tape, at) == alone.cells.cell(tape, at)


def test_a_chest_leaves_the_cells_of_the_other_tapes_the_very_same() -> None:
    before = sheet_of(rider_of(**USUAL))
    row = before.model_row(0)
    after = sheet_of(rider_of(**{**USUAL, "chest": 94.0}), before).model_row(0)
    for tape in (Dimension.WAIST, Dimension.HIP, Dimension.BACK_LENGTH):
        assert after.cells[tape] is row.cells[tape]
    assert after.cells[Dimension.CHEST] is not row.cells[Dimension.CHEST]


def test_cells_of_another_shop_are_not_taken_over() -> None:
    before = sheet_of(rider_of(**USUAL))
    made = before.cells.cell(Dimension.CHEST, 0)
    other = table()
    found = fit(rider_of(**USUAL), other)
    after = FittingSheet(found, ModelGroups.of(other), WORDS, frozenset(), shown=before)
    assert after.cells.cell(Dimension.CHEST, 0) is not made
