"""A fit as rows: one model, its best size, its band, and what a screen reader says."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from charts.model_facts import Adjuster, ModelFacts, VestKind
from charts.schema import Basis, Chart, Dimension, FileReading, Range, Said, Size
from harmonizer.fit import fit
from harmonizer.fit_sheet import FitSheet
from harmonizer.offers import offers
from harmonizer.range_table import RangeTable
from tests.ui.shop import length_range, model_chart, rider_of, shop_table, usual_fit
from ui.drawing.tape import Crossing, Side
from ui.fitting_page.fit_rows import FOLDED_AT_FIRST, FittingSheet
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.rows import BANDS, Band, BandRow, ModelRow
from ui.words import Words


def laid_out(sheet: FitSheet, folded: frozenset[Band] = frozenset()) -> FittingSheet:
    return FittingSheet(sheet, ModelGroups.of(sheet.table), Words("en"), folded)


def model_rows(sheet: FittingSheet) -> list[ModelRow]:
    rows = [sheet.row(at) for at in range(len(sheet))]
    return [row for row in rows if isinstance(row, ModelRow)]


def one_model(*sizes: Size, kind: VestKind | None = None, **readings: float) -> ModelRow:
    """The only row of a shop with one model."""
    chart = Chart("A1:E9", None, sizes, Said("Maker", ""), Said("Model", ""), band="women")
    facts = (ModelFacts(model="Model", file="one.csv", kind=kind),)
    table = RangeTable.compiled(offers((FileReading("one.csv", (chart,)),), facts))
    winter = readings.pop("winter_mm", 0.0)
    sheet = laid_out(fit(rider_of(winter_mm=winter, **readings), table))
    return model_rows(sheet)[0]


def chest_size(label: str, low: float | None, high: float | None) -> Size:
    return Size(label, (length_range(Dimension.CHEST, low, high),))


def test_there_is_one_row_a_model_whatever_its_sizes() -> None:
    sheet = laid_out(usual_fit(12))
    assert len(model_rows(sheet)) == sheet.models == 12
    assert len({row.key for row in model_rows(sheet)}) == 12


def test_the_best_size_is_the_one_the_engine_puts_first() -> None:
    found = usual_fit(9)
    first = {}
    for row in found.rows:
        first.setdefault(row.offer.model, row.offer.size)
    assert {row.model: row.size for row in model_rows(laid_out(found))} == first


def test_bands_stand_in_their_order_with_their_counts() -> None:
    sheet = laid_out(usual_fit(20))
    bands = [row for at in sheet.band_rows if isinstance(row := sheet.row(at), BandRow)]
    assert [band.band for band in bands] == [band for band in BANDS if sheet.counts[band]]
    assert all(str(band.count) in band.text for band in bands)
    assert sum(band.count for band in bands) == sheet.models


def test_a_folded_band_shows_its_heading_only() -> None:
    found = usual_fit(20)
    folded = laid_out(found, FOLDED_AT_FIRST)
    assert not [row for row in model_rows(folded) if row.band is Band.NO]
    assert folded.counts[Band.NO] == laid_out(found).counts[Band.NO] > 0


def test_what_could_not_be_compared_stands_apart_and_says_what_it_needs() -> None:
    sheet = laid_out(usual_fit(6, chest=200.0))
    assert sheet.counts[Band.NOT_COMPARED] == 0
    bare = laid_out(fit(rider_of(hip=99.0, back_length=44.0), shop_table(6)), FOLDED_AT_FIRST)
    rows = [row for row in model_rows(bare) if row.band is Band.NOT_COMPARED]
    assert len(rows) == bare.counts[Band.NOT_COMPARED] > 0
    assert {row.note for row in rows} == {"measure chest or waist"}
    assert {row.girths.text for row in rows} == {"girths not compared"}
    assert bare.has_notes
    assert not [row for row in model_rows(bare) if row.band is Band.NO]
    headings = [row.text for at in bare.band_rows if isinstance(row := bare.row(at), BandRow)]
    assert f"Not compared · {len(rows)}" in headings


def test_every_row_can_be_found_by_its_key() -> None:
    sheet = laid_out(usual_fit(12))
    for at in range(len(sheet)):
        row = sheet.row(at)
        if isinstance(row, ModelRow):
            assert sheet.find(row.key) == at
    assert sheet.find("no such model") is None


def test_one_number_a_cell_the_tightest_with_its_word() -> None:
    """Chest 93 in 90 to 98 has 3 and 5 to spare; the smaller is told."""
    row = one_model(chest_size("S", 84, 92), chest_size("M", 90, 98), chest=93)
    assert row.cells[Dimension.CHEST].number == "3 left"
    assert row.cells[Dimension.CHEST].crossing is Crossing.INSIDE


@pytest.mark.parametrize(
    ("chest", "number", "crossing"),
    [
        (97.5, "0.5 left", Crossing.EDGE),
        (98.7, "tight 0.7", Crossing.OUTSIDE),
        (88.6, "loose 1.4", Crossing.OUTSIDE),
        (98.05, "tight, just over", Crossing.OUTSIDE),
    ],
)
def test_the_crossing_tells_the_state(chest: float, number: str, crossing: Crossing) -> None:
    cell = one_model(chest_size("M", 90, 98), chest=chest).cells[Dimension.CHEST]
    assert (cell.number, cell.crossing) == (number, crossing)


def test_winter_layers_show_where_they_go_underneath() -> None:
    """Worked example: 6 mm adds 3.77; chest 91 in 90 to 98 has then 3.23 above and 1 below."""
    sizes = (chest_size("M", 90, 98),)
    inflatable = one_model(*sizes, kind=VestKind.INFLATABLE, chest=94, winter_mm=6)
    foam = one_model(*sizes, kind=VestKind.FOAM, chest=94, winter_mm=6)
    assert inflatable.cells[Dimension.CHEST].layers_cm == pytest.approx(3.77, abs=0.005)
    assert inflatable.cells[Dimension.CHEST].number == "0.2 left, winter"
    assert inflatable.cells[Dimension.CHEST].brief == "0.2 left"
    assert foam.cells[Dimension.CHEST].layers_cm == 0
    assert foam.cells[Dimension.CHEST].number == "4 left"


def test_a_vest_too_long_is_notched_and_says_by_how_much() -> None:
    size = Size("L", (length_range(Dimension.BACK_LENGTH, 46, 49),))
    cell = one_model(size, back_length=43, chest=93).cells[Dimension.BACK_LENGTH]
    assert cell.crossing is Crossing.TOO_LONG
    assert (cell.number, cell.brief) == ("too long 3", "long 3")


def test_a_back_to_check_has_its_cap_at_the_low_end() -> None:
    size = Size("M", (length_range(Dimension.BACK_LENGTH, 42, 45),))
    cell = one_model(size, back_length=43).cells[Dimension.BACK_LENGTH]
    assert cell.cap is Side.LEFT
    assert cell.number == "1 left, check"


def test_a_chart_that_gives_no_waist_says_so_and_draws_nothing() -> None:
    cell = one_model(chest_size("M", 90, 98), chest=93, waist=76).cells[Dimension.WAIST]
    assert cell.number == "not given"
    assert cell.spans == ()


def test_a_finished_measure_is_never_drawn_on_the_riders_tape() -> None:
    size = Size("M", (length_range(Dimension.CHEST, 100, 108, Basis.FINISHED),))
    cell = one_model(size, chest=93).cells[Dimension.CHEST]
    assert cell.spans == ()
    assert cell.number == "finished vest only"


def test_an_open_end_is_open_on_the_tape() -> None:
    row = one_model(chest_size("L", 90, 98), chest_size("XL", 98, None), chest=101)
    best = next(span for span in row.cells[Dimension.CHEST].spans if span.best)
    assert best.high_cm is None


def test_a_second_size_that_can_be_tried_stands_below_the_first() -> None:
    row = one_model(chest_size("M", 90, 98), chest_size("L", 92, 102), chest=95)
    assert row.also.startswith("also ")


def test_the_verdict_is_always_two_words() -> None:
    for row in model_rows(laid_out(usual_fit(20))):
        assert row.girths.text
        assert row.length.text


def test_every_painted_cell_has_a_sentence() -> None:
    sheet = laid_out(usual_fit(10))
    for row in model_rows(sheet):
        assert row.model in sheet.sentence(row)
        for dimension in row.cells:
            assert sheet.sentence(row, dimension).endswith(".")


def test_the_focused_cell_names_both_sides() -> None:
    row = one_model(chest_size("M", 90, 98), chest=93)
    sheet = laid_out(usual_fit(4))
    said = sheet.both_sides(model_rows(sheet)[0], Dimension.CHEST)
    assert "below" in said
    assert "above" in said
    assert row.cells[Dimension.CHEST].number


def test_a_rider_under_the_weight_floor_is_not_offered_and_told_why() -> None:

    chart = model_chart("Maker", "Model")
    facts = ModelFacts(model="Model", kind=VestKind.INFLATABLE, weight_floor=Decimal("31.75"))
    table = RangeTable.compiled(offers((FileReading("one.csv", (chart,)),), (facts,)))
    sheet = laid_out(fit(rider_of(chest=93, weight=30.0), table))
    row = model_rows(sheet)[0]
    assert row.band is Band.NOT_OFFERED
    assert row.stopped
    assert "weight floor" in row.note


def test_the_adjuster_a_row_serves_by_is_noted_and_a_missed_one_is_not() -> None:
    ways = {Dimension.CHEST: Adjuster(Decimal(4), Decimal(4))}
    facts = ModelFacts(model="Model", adjusters=ways)
    ranges = (length_range(Dimension.CHEST, 88, 96), length_range(Dimension.WAIST, 74, 82))
    chart = Chart("A1:E9", None, (Size("M", ranges),), Said("Maker", ""), Said("Model", ""))
    table = RangeTable.compiled(offers((FileReading("one.csv", (chart,)),), (facts,)))

    def noted(**readings: float) -> tuple[bool, str]:
        sheet = laid_out(fit(rider_of(**readings), table))
        return sheet.has_notes, model_rows(sheet)[0].note

    assert noted(chest=98.5, waist=78.0) == (True, "Chest: adjuster 2.5 of 4 cm")
    assert noted(chest=92.0, waist=78.0) == (False, "")
    assert noted(chest=101.0, waist=78.0) == (False, "")


def back_told(item: Range, language: str) -> tuple[str, str]:
    """The back's cell of one size where only the chest was measured, and its tip."""
    ranges = (length_range(Dimension.CHEST, 88, 96), item)
    chart = Chart("A1:E9", None, (Size("M", ranges),), Said("Maker", ""), Said("Model", ""))
    table = RangeTable.compiled(offers((FileReading("one.csv", (chart,)),)))
    found = fit(rider_of(chest=92.0), table)
    sheet = FittingSheet(found, ModelGroups.of(table), Words(language), frozenset())
    row = model_rows(sheet)[0]
    return row.cells[Dimension.BACK_LENGTH].number, sheet.sentence(row, Dimension.BACK_LENGTH)


@pytest.mark.parametrize(
    ("low", "high", "printed", "english", "german"),
    [
        (43, 46.5, "430 | 465", "for 43–46.5", "für 43–46,5"),
        (None, 46.5, "bis 46,5", "up to 46.5", "bis 46,5"),
        (43, None, "17 in +", "from 43", "ab 43"),
    ],
)
def test_a_back_nobody_measured_is_told_in_the_shops_unit_and_as_printed_in_the_tip(
    low: float | None, high: float | None, printed: str, english: str, german: str
) -> None:
    item = replace(length_range(Dimension.BACK_LENGTH, low, high), published=printed)
    assert back_told(item, "en")[0] == english
    assert back_told(item, "de")[0] == german
    assert back_told(item, "en")[1].endswith(f"The chart prints: {printed}")
    assert back_told(item, "de")[1].endswith(f"In der Tabelle steht: {printed}")


def test_what_was_measured_has_no_printed_text_in_its_tip() -> None:
    sheet = laid_out(usual_fit(1))
    assert "prints" not in sheet.sentence(model_rows(sheet)[0], Dimension.BACK_LENGTH)


def test_five_thousand_sizes_make_rows_only_when_they_are_painted() -> None:
    table = shop_table(200, sizes=25)
    sheet = laid_out(fit(rider_of(chest=93, waist=76, hip=99, back_length=43), table))
    assert len(table.offers) == 5000
    assert sheet.models == 200
    assert len(sheet._rows) == 0


def test_beside_a_size_stand_the_next_each_way_in_its_length_and_its_other_lengths() -> None:
    def size(label: str, length: str, chest: float, back: float) -> Size:
        chests = length_range(Dimension.CHEST, chest, chest + 8)
        backs = length_range(Dimension.BACK_LENGTH, back, back + 4)
        return Size(label, (chests, backs), length=length)

    sizes = tuple(
        size(label, length, chest, back)
        for label, chest in (("S", 82.0), ("M", 90.0), ("L", 98.0))
        for length, back in (("Short", 38.0), ("Regular", 41.0), ("Long", 44.0))
    )
    chart = Chart("A1:E9", None, sizes, Said("Maker", ""), Said("Model", ""), band="women")
    table = RangeTable.compiled(offers((FileReading("one.csv", (chart,)),), ()))
    sheet = laid_out(fit(rider_of(chest=94.0, back_length=43.5), table))
    (row,) = model_rows(sheet)
    assert (row.size, row.length_option) == ("M", "Regular")
    beside = [(table.offers[at].size, table.offers[at].length) for at in sheet.neighbours(row)]
    assert sorted(beside) == [("L", "Regular"), ("M", "Long"), ("M", "Short"), ("S", "Regular")]


def test_the_best_size_of_a_model_is_found_though_its_band_is_folded() -> None:
    open_ = laid_out(usual_fit(12))
    last = model_rows(open_)[-1]
    folded = laid_out(usual_fit(12), frozenset({last.band}))
    assert folded.find(last.key) is None
    assert folded.best_of(last.key) == last.at
    assert folded.best_of("nobody's") is None
