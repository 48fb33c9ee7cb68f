"""The rider on the line was here before: last time's reading beside each field, and its acts."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from charts.quantities import Unit
from charts.schema import Definition
from charts.wording import LANGUAGES, Wording
from harmonizer.cautions import cautions_for
from harmonizer.rider import BodyFigure, Measure, Reading, Rider, TakenBy
from tests.ui.shop import rider_of
from ui.desk import Desk, make_desk
from ui.fitting_page.doubts import doubts_on
from ui.fitting_page.draft import Draft
from ui.fitting_page.past import Past
from ui.fitting_page.readings_panel import ReadingsPanel
from ui.frame import Frame
from ui.preferences import Preferences
from ui.theme import Scheme, Theme

SUMMER, TODAY = date(2026, 8, 3), date(2027, 2, 11)
WORDING = Wording()
BACK = Measure.BACK_LENGTH


def summer(measure: Measure, text: str, cm: str, unit: Unit = Unit.CM) -> Reading:
    return Reading(measure, Decimal(cm), text, unit, taken_by=TakenBy.FITTER, on=SUMMER)


def finn(back: float = 40.0, figure: BodyFigure = BodyFigure.CHILD) -> Rider:
    """A child with two readings of last summer in the file."""
    earlier = (
        summer(BACK, "37,5 cm", "37.5"),
        summer(Measure.CHEST, "29 1/2 in", "74.93", Unit.IN),
    )
    who = rider_of(figure=figure, chest=77.5, back_length=back)
    dated = tuple(replace(one, on=TODAY) for one in who.readings)
    return replace(who, name="Finn Harquell", readings=dated, earlier=earlier)


def panel_of(desk: Desk, rider: Rider) -> ReadingsPanel:
    desk.window.fitting.show_draft(Draft(rider))
    return desk.window.fitting.readings


def at_shop(qapp: QApplication, qtbot: QtBot, folder: Path) -> Desk:
    frame = Frame(Theme(Scheme.LIGHT))
    qtbot.addWidget(frame)
    desk = make_desk(qapp, frame, Preferences("en", Scheme.LIGHT), folder / "screen.json")
    desk.window.riders.day = lambda: TODAY
    desk.window.riders.show()
    frame.show()
    return desk


def kept_files(folder: Path) -> list[Path]:
    return sorted((folder / "season" / "riders").glob("*.toml"))


def test_each_field_shows_what_was_read_last_time_and_its_day(desk: Desk) -> None:
    panel = panel_of(desk, finn(back=39.0))
    back, chest, hip = (panel.fields[one] for one in (BACK, Measure.CHEST, Measure.HIP))
    assert back.last.text() == "37,5 cm on 3 Aug 2026"
    assert chest.last.text() == "29 1/2 in on 3 Aug 2026"
    assert back.last.isVisible()
    assert not hip.last.isVisible()
    heard = "Last time, on 3 Aug 2026, it was 37,5 cm."
    assert back.last.accessibleName() == back.last.toolTip() == heard
    assert heard in back.line.edit.accessibleDescription()
    assert back.hint.text() in back.line.edit.accessibleDescription()
    assert panel.book.says.text() == "Measured before, last on 3 Aug 2026"
    panel_of(desk, rider_of(chest=92.0))
    assert not back.last.isVisible()
    assert "Last time" not in back.line.edit.accessibleDescription()


def test_growth_is_asked_about_with_both_readings_and_two_acts(desk: Desk) -> None:
    field = panel_of(desk, finn()).fields[BACK]
    assert field.doubt.asks.text().endswith("has the child grown that much?")
    assert field.doubt.other.text() == "37,5 cm as then"
    assert field.doubt.keep.text() == "40.0 cm is right"
    assert not field.doubt.other.urgent
    QTest.keyClick(field.doubt.keep, Qt.Key.Key_Return)
    assert not field.doubt.isVisible()
    assert field.last.isVisible()
    slip = panel_of(desk, finn(figure=BodyFigure.WOMAN)).fields[BACK]
    assert slip.doubt.asks.text().endswith("is that right?")


def test_the_earlier_reading_taken_again_keeps_its_day_and_who_took_it(desk: Desk) -> None:
    panel = panel_of(desk, finn())
    field = panel.fields[BACK]
    QTest.keyClick(field.doubt.other, Qt.Key.Key_Return)
    reading = panel.draft.reading(BACK)
    assert reading is not None
    assert (reading.value, reading.on, reading.taken_by) == (
        Decimal("37.5"),
        SUMMER,
        TakenBy.FITTER,
    )
    assert field.line.edit.text() == "37,5 cm"
    assert not field.doubt.isVisible()
    assert QApplication.focusWidget() is field.line.edit
    assert "3 Aug 2026" in cautions_for(panel.draft.rider(), WORDING)[1]


def test_a_reading_typed_anew_goes_before_the_one_taken_again() -> None:
    draft = Draft(finn())
    again = draft.taking_again([draft.given.earlier[0]])
    assert [one.value for one in again.rider().of(BACK)] == [Decimal("37.5")]
    assert len(again.rider().readings) == len(draft.rider().readings)


def test_a_question_answered_with_yes_is_asked_again_of_another_reading() -> None:
    draft = Draft(finn())
    kept = draft.confirming(doubts_on(draft, WORDING, past=Past())[BACK].key)
    assert BACK not in doubts_on(kept, WORDING, past=Past())
    other = replace(kept, given=finn(back=40.5))
    assert BACK in doubts_on(other, WORDING, past=Past())
    shorter = (summer(BACK, "36 cm", "36"), draft.given.earlier[1])
    against = replace(kept, given=replace(draft.given, earlier=shorter))
    assert BACK in doubts_on(against, WORDING, past=Past())


def test_the_other_reading_of_a_doubt_stays_where_it_was_measured(desk: Desk) -> None:
    """Swapped digits at the navel: the right figure was read at the navel too."""
    rider = rider_of(height=168.0, weight=62.0)
    waist = Reading(Measure.WAIST, Decimal(97), "97", Unit.CM, definition=Definition.WAIST_NAVEL)
    panel = panel_of(desk, replace(rider, readings=(*rider.readings, waist)))
    QTest.keyClick(panel.fields[Measure.WAIST].doubt.other, Qt.Key.Key_Return)
    reading = panel.draft.reading(Measure.WAIST)
    assert reading is not None
    assert (reading.value, reading.definition) == (Decimal(79), Definition.WAIST_NAVEL)


def test_without_a_shops_folder_nothing_can_be_kept(desk: Desk) -> None:
    panel = panel_of(desk, replace(rider_of(chest=92.0), name="Wrenna Oskelby"))
    assert not panel.book.isVisible()
    assert desk.window.workspace.book == ()


def test_a_rider_kept_today_is_known_when_the_name_is_typed_on_another_day(
    qapp: QApplication, qtbot: QtBot, tmp_path: Path
) -> None:
    first = at_shop(qapp, qtbot, tmp_path)
    first.window.riders.day = lambda: SUMMER
    first.window.riders.show()
    panel = panel_of(first, replace(rider_of(chest=92.0, weight=62.0), name="Wrenna Oskelby"))
    assert panel.book.keeps.isVisible()
    assert not panel.book.forgets.isVisible()
    QTest.keyClick(panel.book.keeps, Qt.Key.Key_Return)
    assert panel.book.says.text() == "Kept for next time"
    assert not panel.book.keeps.isVisible()
    first.shop.keep()
    (path,) = kept_files(tmp_path)
    text = path.read_text(encoding="utf-8")
    assert "on = 2026-08-03" in text
    assert "weight" not in text

    panel = at_shop(qapp, qtbot, tmp_path).window.fitting.readings
    QTest.keyClicks(panel.name.edit, "wrenna oskelby")
    chest = panel.fields[Measure.CHEST]
    assert chest.last.text() == "92.0 cm on 3 Aug 2026"
    chest.line.edit.setFocus()
    QTest.keyClicks(chest.line.edit, "99 cm")
    QTest.keyClick(chest.line.edit, Qt.Key.Key_Return)
    assert (
        chest.doubt.asks.text() == "Chest was 92 cm on 3 Aug 2026 and is 99 cm now: is that right?"
    )
    assert not panel.book.keeps.isVisible()
    assert panel.book.first.isVisible()
    QTest.keyClick(chest.doubt.keep, Qt.Key.Key_Return)
    assert panel.book.keeps.isVisible()
    assert not panel.book.first.isVisible()


def test_forgetting_is_one_act_takes_the_file_away_and_can_be_undone(
    qapp: QApplication, qtbot: QtBot, tmp_path: Path
) -> None:
    desk = at_shop(qapp, qtbot, tmp_path)
    panel = panel_of(desk, replace(rider_of(chest=92.0), name="Wrenna Oskelby"))
    QTest.keyClick(panel.book.keeps, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: len(kept_files(tmp_path)) == 1)
    QTest.keyClick(panel.book.forgets, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: kept_files(tmp_path) == [])
    assert "Wrenna Oskelby" in desk.window.notice.says.text()
    assert not panel.book.forgets.isVisible()
    desk.window.actions_["undo"].trigger()
    qtbot.waitUntil(lambda: len(kept_files(tmp_path)) == 1)
    assert panel.book.forgets.isVisible()


def test_another_dress_goes_on_with_what_is_kept(
    qapp: QApplication, qtbot: QtBot, tmp_path: Path
) -> None:
    desk = at_shop(qapp, qtbot, tmp_path)
    panel_of(desk, replace(rider_of(chest=92.0), name="Wrenna Oskelby"))
    desk.window.wear(desk.window.dress)
    panel = desk.window.fitting.readings
    qtbot.waitUntil(panel.book.keeps.isVisible)
    QTest.keyClick(panel.book.keeps, Qt.Key.Key_Return)
    assert len(desk.window.workspace.book) == 1


@pytest.mark.parametrize("language", LANGUAGES)
def test_everything_is_worded(language: str) -> None:
    wording = Wording(language)
    for code in ("beside", "beside-sentence", "take-earlier", "take-earlier-sentence"):
        said = wording.say("rider_book", code, text="37,5 cm", day="3 Aug 2026", name="Back")
        assert "37,5 cm" in said
    for code in ("measured-before", "kept-now", "keep", "keep-sentence", "keep-asked", "forget"):
        assert wording.say("rider_book", code, day="3 Aug 2026")
