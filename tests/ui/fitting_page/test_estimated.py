"""Missing readings in grey: what height and weight let be expected, and it never counts."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtGui import QColor

from charts.schema import Definition, Dimension, FileReading
from charts.wording import Wording
from harmonizer.fit import fit
from harmonizer.offers import offers
from harmonizer.range_table import RangeTable
from harmonizer.rider import BodyFigure, Measure
from harmonizer.states import GirthState
from tests.ui.fitting_page.test_fit_rows import laid_out, model_rows
from tests.ui.fitting_page.test_page import stocked
from tests.ui.shop import model_chart, rider_of, shop_table
from ui.desk import Desk
from ui.drawing.scale import Scale
from ui.drawing.tape import Crossing, estimate_picture, spread_of
from ui.fitting_page.draft import Draft
from ui.fitting_page.estimated import estimated
from ui.fitting_page.tape_heads import tape_heads
from ui.theme import Ink, Scheme, Theme
from ui.words import Words


def known(figure: BodyFigure = BodyFigure.WOMAN, **more: float) -> Draft:
    return Draft(rider_of(figure=figure, height=168.0, weight=62.0, **more))


@pytest.mark.parametrize(
    ("language", "said"), [("en", "about 89 (80–97)"), ("de", "etwa 89 (80–97)")]
)
def test_the_worked_example_is_shown_with_its_range(language: str, said: str) -> None:
    """Woman, 168 cm, 62 kg: chest 88.8 (80.4 to 97.1) (tests/outside/test_estimates.py)."""
    assert estimated(known(), Wording(language))[Measure.CHEST] == said


def test_an_estimate_between_other_points_than_are_asked_for_is_not_shown() -> None:
    """The population's waist is at the navel and its hip at the widest; the fields ask others."""
    assert set(estimated(known(), Wording())) == {
        Measure.CHEST,
        Measure.BACK_LENGTH,
        Measure.C7_ABOVE_SEAT,
    }


def test_what_is_measured_is_not_estimated() -> None:
    assert Measure.CHEST not in estimated(known(chest=92.0), Wording())


@pytest.mark.parametrize("draft", [known(BodyFigure.CHILD), Draft(rider_of(height=168.0))])
def test_children_and_riders_without_a_weight_have_no_estimate(draft: Draft) -> None:
    assert estimated(draft, Wording()) == {}


def test_the_grey_figure_stands_in_the_empty_field_and_is_no_reading(desk: Desk) -> None:
    page = desk.window.fitting
    stocked(page)
    page.show_draft(known())
    edit = page.readings.fields[Measure.CHEST].line.edit
    assert edit.placeholderText() == "about 89 (80–97)"
    assert edit.text() == ""
    assert "Not measured" in edit.accessibleDescription()
    assert page.readings.draft.reading(Measure.CHEST) is None
    assert page.sheet is not None
    chest = page.sheet.fit.rows[0].dimensions[Dimension.CHEST]
    assert chest.reading is None
    assert chest.state is GirthState.NOT_CHECKED


def test_another_rider_takes_the_grey_figure_away(desk: Desk) -> None:
    page = desk.window.fitting
    page.show_draft(known())
    page.new_rider()
    edit = page.readings.fields[Measure.CHEST].line.edit
    assert edit.placeholderText() == ""
    assert "Not measured" not in edit.accessibleDescription()


class TestOnTheTapes:
    """Grey, with its spread, and never a state: no stop, no cap, no gap comes of an estimate."""

    def test_the_worked_example_stands_on_the_chests_tape(self) -> None:
        """The same woman: 88.8, 80.4 to 97.1, to 0.1 cm (tests/outside/test_estimates.py)."""
        heads = tape_heads(fit(known().rider(), shop_table(2)), Words("en"))
        guess = heads[Dimension.CHEST].guess
        assert guess is not None
        ends = (guess.low_cm, guess.mean_cm, guess.high_cm)
        assert ends == pytest.approx((80.4, 88.8, 97.1), abs=0.1)
        assert heads[Dimension.CHEST].centre_cm is None
        assert heads[Dimension.CHEST].rider_cm is None

    def test_waist_and_hip_are_estimated_at_other_points_and_not_drawn(self) -> None:
        heads = tape_heads(fit(known().rider(), shop_table(2)), Words("en"))
        assert heads[Dimension.WAIST].guess is None
        assert heads[Dimension.HIP].guess is None

    def test_a_reading_takes_the_place_of_the_estimate(self) -> None:
        heads = tape_heads(fit(known(chest=92.0).rider(), shop_table(2)), Words("en"))
        assert heads[Dimension.CHEST].guess is None
        assert heads[Dimension.CHEST].centre_cm == 92.0

    def test_no_state_comes_of_it_however_far_the_sizes_lie(self) -> None:
        sheet = laid_out(fit(known().rider(), shop_table(20)))
        for row in model_rows(sheet):
            for dimension in (Dimension.CHEST, Dimension.BACK_LENGTH):
                cell = row.cells[dimension]
                assert cell.estimated
                assert cell.crossing is Crossing.UNCHECKED
                assert not cell.strong
                drawn = estimate_picture(Scale(88.8, 12.0, 0.0, 240.0), cell.spans, 88.8, (80, 97))
                assert drawn.gap is None
                assert drawn.arrow is None
                assert not any(bar.cap or bar.notched for bar in drawn.bars)
            assert row.length.text == "length not known"

    def test_a_chart_of_another_definition_is_not_put_beside_it(self) -> None:
        chart = model_chart("Alderway", "Merle")
        ranges = [
            tuple(
                replace(one, definition=Definition.BACK_C7_WAIST)
                if one.dimension is Dimension.BACK_LENGTH
                else one
                for one in size.ranges
            )
            for size in chart.sizes
        ]
        sizes = tuple(
            replace(size, ranges=own) for size, own in zip(chart.sizes, ranges, strict=True)
        )
        readings = [FileReading("m.csv", (replace(chart, sizes=sizes),))]
        table = RangeTable.compiled(offers(readings, ()))
        (row,) = model_rows(laid_out(fit(known().rider(), table)))
        assert row.cells[Dimension.CHEST].spans
        assert row.cells[Dimension.BACK_LENGTH].spans == ()

    def test_the_spread_is_cut_at_the_tapes_ends(self) -> None:
        scale = Scale(50.0, 6.0, 10.0, 130.0)
        assert spread_of(scale, (46.0, 60.0)) == (pytest.approx(30.0), 130.0)

    def test_it_is_painted_in_grey_and_cannot_be_dragged(self, desk: Desk) -> None:
        page = desk.window.fitting
        stocked(page)
        page.show_draft(known(waist=76.0))
        lines = page.table._lines()
        assert set(lines) == {Dimension.WAIST}
        (left, width) = next(
            (left, width) for head, left, width in page.table.tapes() if head.guess is not None
        )
        image = page.table.viewport().grab().toImage()
        row = page.table.visualRect(page.table.currentIndex())
        colours = {
            image.pixelColor(x, row.bottom() + y).name()
            for x in range(int(left), int(left + width))
            for y in range(2, 28)
        }
        assert {one for one in colours if QColor(one).hsvSaturationF() > 0.25} == set()
        assert Theme(Scheme.LIGHT).colour(Ink.RIDER) not in colours
