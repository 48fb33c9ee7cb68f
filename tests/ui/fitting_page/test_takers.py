"""Who holds the tape for one reading alone: turned by a key on its field."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from harmonizer.rider import Measure, TakenBy
from tests.ui.shop import rider_of
from ui.desk import Desk
from ui.fitting_page.draft import Draft
from ui.fitting_page.reading_field import ReadingField
from ui.fitting_page.typed import interpret


def on_the_line(desk: Desk, draft: Draft) -> ReadingField:
    page = desk.window.fitting
    page.show_draft(draft)
    return page.readings.fields[Measure.BACK_LENGTH]


def press(field: ReadingField) -> None:
    field.line.edit.setFocus()
    QTest.keyClick(field.line.edit, Qt.Key.Key_F9)


def takers(desk: Desk) -> dict[Measure, TakenBy | None]:
    rider = desk.window.fitting.readings.draft.rider()
    return {reading.measure: reading.taken_by for reading in rider.readings}


def test_f9_turns_the_taker_of_this_reading_and_of_no_other(desk: Desk) -> None:
    field = on_the_line(desk, Draft(rider_of(chest=93, back_length=43)))
    press(field)
    assert takers(desk) == {Measure.CHEST: None, Measure.BACK_LENGTH: TakenBy.FITTER_ONCE}


def test_the_line_below_says_who_it_is(desk: Desk) -> None:
    field = on_the_line(desk, Draft(rider_of(chest=93, back_length=43)))
    before = field.hint.text()
    press(field)
    assert field.hint.text() == "Read once by a fitter"
    for _ in range(3):
        press(field)
    assert field.hint.text() == before


def test_who_holds_it_for_all_is_not_offered_twice() -> None:
    draft = Draft(rider_of(chest=93))
    seen = []
    for _ in range(4):
        draft = draft.turning_taker(Measure.CHEST)
        seen.append(draft.own_taker(Measure.CHEST))
    assert seen == [TakenBy.FITTER_ONCE, TakenBy.HELPER, TakenBy.SELF, None]


def test_what_a_file_says_of_one_reading_is_shown_and_can_be_taken_back(desk: Desk) -> None:
    rider = rider_of(chest=93, back_length=43)
    readings = tuple(replace(one, taken_by=TakenBy.SELF) for one in rider.readings)
    field = on_the_line(desk, Draft(replace(rider, readings=readings)))
    assert "alone" in field.hint.text()
    press(field)
    assert takers(desk)[Measure.BACK_LENGTH] is None
    assert takers(desk)[Measure.CHEST] is TakenBy.SELF


def test_a_typed_reading_keeps_its_taker(desk: Desk) -> None:
    field = on_the_line(desk, Draft())
    QTest.keyClicks(field.line.edit, "43 cm")
    press(field)
    assert takers(desk) == {Measure.BACK_LENGTH: TakenBy.FITTER}


def test_a_figure_typed_over_a_files_reading_is_by_who_holds_it_for_all() -> None:
    rider = rider_of(chest=93)
    readings = tuple(replace(one, taken_by=TakenBy.SELF) for one in rider.readings)
    typed = interpret("95 cm", Measure.CHEST)
    draft = Draft(replace(rider, readings=readings)).typing(Measure.CHEST, typed)
    assert draft.own_taker(Measure.CHEST) is None
    assert [one.taken_by for one in draft.rider().readings] == [None]
