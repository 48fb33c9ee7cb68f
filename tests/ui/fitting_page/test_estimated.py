"""Missing readings in grey: what height and weight let be expected, and it never counts."""

from __future__ import annotations

import pytest

from charts.schema import Dimension
from charts.wording import Wording
from harmonizer.rider import BodyFigure, Measure
from harmonizer.states import GirthState
from tests.ui.fitting_page.test_page import stocked
from tests.ui.shop import rider_of
from ui.desk import Desk
from ui.fitting_page.draft import Draft
from ui.fitting_page.estimated import estimated


def known(figure: BodyFigure = BodyFigure.WOMAN, **more: float) -> Draft:
    return Draft(rider_of(figure=figure, height=168.0, weight=62.0, **more))


@pytest.mark.parametrize(
    ("language", "said"), [("en", "about 89 (80–97)"), ("de", "etwa 89 (80–97)")]
)
def test_the_worked_example_is_shown_with_its_range(language: str, said: str) -> None:
    """Woman, 168 cm, 62 kg: chest 88.8 (80.4 to 97.1) (fit model, worked examples)."""
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
