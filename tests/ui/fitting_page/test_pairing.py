"""A foam and an inflatable vest as a pair: chosen by one key, stated once, also in the reply."""

from __future__ import annotations

from decimal import Decimal

import pytest
from PySide6.QtGui import QGuiApplication

from charts.model_facts import ModelFacts, VestKind
from charts.schema import FileReading
from harmonizer.fit import fit
from harmonizer.offers import offers
from harmonizer.range_table import RangeTable
from harmonizer.rider import Rider
from tests.ui.hard_pages import pair_up
from tests.ui.shop import model_chart, rider_of, shop_table
from ui.desk import Desk
from ui.fitting_page.draft import Draft
from ui.fitting_page.page import FittingPage
from ui.fitting_page.pair_strip import thickness_in_mm
from ui.fitting_page.print_sheet import fits_page
from ui.fitting_page.rows import ModelRow


@pytest.fixture
def page(desk: Desk) -> FittingPage:
    """A shop of one foam and one inflatable model with equal charts, and a rider."""
    return shop_of(desk)


def shop_of(desk: Desk, thickness: str | None = None, source: str | None = None) -> FittingPage:
    """The shop, with what is noted of its foam."""
    noted = Decimal(thickness) if thickness else None
    readings = [
        FileReading(f"{name}.csv", (model_chart("Alderway", name),))
        for name in ("Harrier", "Lapwing")
    ]
    foam = ModelFacts(
        model="Harrier", file="Harrier.csv", kind=VestKind.FOAM,
        foam_thickness=noted, foam_thickness_source=source,
    )  # fmt: skip
    facts = [foam, ModelFacts(model="Lapwing", file="Lapwing.csv", kind=VestKind.INFLATABLE)]
    table = RangeTable.compiled(offers(readings, facts))

    def compare(rider: Rider) -> object:
        return fit(rider, table)

    page = desk.window.fitting
    page.show_shop(table, compare)  # type: ignore[arg-type]  # the fit's own type, seen as object here
    page.show_draft(Draft(rider_of(chest=93, waist=79, hip=99, back_length=44)))
    return page


def choose(page: FittingPage, model: str) -> None:
    sheet = page.sheet
    assert sheet is not None
    rows = [sheet.row(at) for at in range(len(sheet))]
    page.table.choose(
        next(row.key for row in rows if isinstance(row, ModelRow) and row.model == model)
    )


def paired(desk: Desk, page: FittingPage) -> str:
    for model in ("Harrier", "Lapwing"):
        choose(page, model)
        desk.window.actions_["pair"].trigger()
    return page.pairing.strip.says.text()


def typed(page: FittingPage, line: str, text: str) -> str:
    edit = getattr(page.pairing.strip, line).edit
    edit.setText(text)
    edit.editingFinished.emit()
    return page.pairing.strip.says.text()


def test_one_key_takes_the_foam_and_then_the_inflatable(desk: Desk, page: FittingPage) -> None:
    choose(page, "Harrier")
    desk.window.actions_["pair"].trigger()
    assert "F8" in page.pairing.strip.says.text()
    said = paired(desk, page)
    assert "Harrier" in said
    assert not page.pairing.strip.isHidden()


def test_without_a_word_about_the_foam_the_inflatable_has_no_size(
    desk: Desk, page: FittingPage
) -> None:
    said = paired(desk, page)
    assert "no size yet" in said
    assert "Lapwing" not in said


def test_the_chest_over_the_foam_gives_the_inflatable_another_size(
    desk: Desk, page: FittingPage
) -> None:
    """Chest 93 is M (90 to 98) bare; 101 over the foam is L, by the chart's steps of 6."""
    paired(desk, page)
    said = typed(page, "over", "101 cm")
    assert "Harrier, size M" in said
    assert "Lapwing, size L" in said
    assert "8 cm more" in said
    assert "outermost" in said


def test_a_thickness_counts_by_steiner(desk: Desk, page: FittingPage) -> None:
    """2 pi times 12 mm is 7.54 cm (Steiner's formula)."""
    paired(desk, page)
    said = typed(page, "thick", "12")
    assert "7.5 cm more" in said
    assert "Measure over the foam" in said


def test_a_tape_goes_before_a_thickness(desk: Desk, page: FittingPage) -> None:
    paired(desk, page)
    typed(page, "thick", "12")
    assert "Chest measured over the foam: 6 cm" in typed(page, "over", "99")


def test_a_noted_thickness_counts_until_another_is_typed(desk: Desk) -> None:
    """2 pi times 18 mm is 11.3 cm, times 12 mm 7.5 cm (Steiner's formula)."""
    page = shop_of(desk, "1.8", "instructions p. 3")
    said = paired(desk, page)
    assert "18 mm (instructions p. 3): 11.3 cm more" in said
    thick = page.pairing.strip.thick
    assert thick.edit.placeholderText() == "18 mm"
    assert thick.echo.text() == "of foam, as noted"
    assert "Counted from the foam's thickness: 7.5 cm more" in typed(page, "thick", "12")
    assert "11.3 cm more" in typed(page, "thick", "")
    assert "Chest measured over the foam: 6 cm" in typed(page, "over", "99")


def test_a_noted_thickness_without_a_source_says_so_much(desk: Desk) -> None:
    page = shop_of(desk, "1.8")
    assert "18 mm as noted for the model" in paired(desk, page)


def test_where_nothing_is_noted_the_line_says_that_it_is_not_known(
    desk: Desk, page: FittingPage
) -> None:
    paired(desk, page)
    assert page.pairing.strip.thick.edit.placeholderText() == "not known"


@pytest.mark.parametrize(
    ("text", "mm"), [("12", 12.0), ("1,5 cm", 15.0), ("0", None), ("90", None), ("thick", None)]
)
def test_a_thickness_is_one_value_that_foam_can_have(text: str, mm: float | None) -> None:
    assert thickness_in_mm(text) == mm


def test_what_is_no_thickness_is_refused_in_place(desk: Desk, page: FittingPage) -> None:
    paired(desk, page)
    typed(page, "thick", "a lot")
    assert page.pairing.strip.thick.wanting
    assert page.readings.draft.pair is not None
    assert page.readings.draft.pair.thickness_mm is None


def test_an_inflatable_first_is_refused_and_told_why(desk: Desk, page: FittingPage) -> None:
    choose(page, "Lapwing")
    desk.window.actions_["pair"].trigger()
    assert "foam vest first" in desk.window.notice.says.text()
    assert page.pairing.strip.isHidden()


def test_the_pair_is_parted_and_belongs_to_its_rider(desk: Desk, page: FittingPage) -> None:
    paired(desk, page)
    page.new_rider()
    assert page.pairing.strip.isHidden()
    page.go_rider(0)
    assert not page.pairing.strip.isHidden()
    page.pairing.strip.part.click()
    assert page.pairing.strip.isHidden()


@pytest.mark.parametrize(("language", "size"), [("en", "size L"), ("de", "Größe L")])
def test_the_reply_states_the_pair_once(
    desk: Desk, page: FittingPage, language: str, size: str
) -> None:
    paired(desk, page)
    typed(page, "over", "101 cm")
    desk.window.actions_[f"copy-reply-{language}"].trigger()
    text = QGuiApplication.clipboard().text()
    assert text.count(f"Lapwing, {size}") >= 1
    assert text.count(desk.window.words.wording.__class__(language).say("pair", "title")) == 1


def test_the_kind_filter_leaves_the_pair_alone(desk: Desk, page: FittingPage) -> None:
    paired(desk, page)
    typed(page, "over", "101 cm")
    before = page.pairing.strip.says.text()
    page.ask_kind(VestKind.INFLATABLE)
    assert page.pairing.strip.says.text() == before


def test_on_paper_the_pair_leaves_room_for_every_caution(desk: Desk, page: FittingPage) -> None:
    table = shop_table(40)

    def compare(rider: Rider) -> object:
        return fit(rider, table)

    page.show_shop(table, compare)  # type: ignore[arg-type]  # the fit's own type, seen as object here
    pair_up(desk)
    printed = desk.sheet.printed()
    assert printed is not None
    assert any("outermost" in line for line in printed.pair)
    assert 2 <= len(printed.rows) < 5
    assert fits_page(printed, desk.window.words)
