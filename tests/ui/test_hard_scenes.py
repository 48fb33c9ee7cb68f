"""Each hard case among the pictures shows what its name says: the engine says it of that row."""

from __future__ import annotations

import pytest

from charts.wording import Wording
from harmonizer.rider import Measure
from harmonizer.shop.rider_book import KEPT
from tests.ui.conftest import MakeDesk
from ui.desk import Desk
from ui.fitting_page.columns import Column
from ui.fitting_page.rows import ModelRow
from ui.hard_scenes import HARD_SCENES, ON_PAPER
from ui.loading import Arrived, arrive, demo_paths

SHOWS = {
    "20-the-length-stops-what-the-girths-allow": "the vest is too long, do not offer it.",
    "21-the-makers-rule-against-the-length": "the length stop wins.",
    "22-winter-changes-the-size": "In summer M Long serves, over the winter layers L Long.",
    "23-nothing-fits-in-german": "nach Maßanfertigung fragen.",
    "24-two-definitions-of-a-back": "Back cannot be compared: the chart means C7 to the natural",
    "25-the-adjuster-all-but-used": "the adjuster takes it in, 2.5 of its 3 cm used",
    "26-measured-alone-a-coin-toss": "lie in 50: even.",
    "27-two-rows-side-by-side": "; Moorflanke 40: ",
    "28-two-rows-side-by-side-dark": "; Moorflanke 38: ",
    "29-winter-on-paper": "Over the winter layers",
    "30-estimates-on-paper": "Rücken wurde nicht angegeben",
    "31-twice-the-size": "1.3 hands of 9 cm",
    "32-here-last-summer": "Back 40 cm is ",
    "33-comes-out-smaller-than-its-chart": "came out 1.5 cm smaller than its chart, 12 fittings.",
}
SCENES = {scene.name: scene for scene in HARD_SCENES}


@pytest.fixture(scope="module")
def demo() -> Arrived:
    return arrive(demo_paths(), Wording("en"), lambda _message, _fraction: None)


def shown(make: MakeDesk, demo: Arrived, name: str) -> Desk:
    desk = make(SCENES[name].preferences, SCENES[name].size)
    desk.commands.take_in(demo)
    SCENES[name].act(desk)
    desk.window.fitting.reasons.say_more()
    desk.window.fitting.readings.again.say_now()
    return desk


def test_every_hard_scene_is_held_to_what_it_shows() -> None:
    assert set(SHOWS) == set(SCENES)
    assert set(ON_PAPER) <= set(SCENES)


@pytest.mark.parametrize("name", SHOWS)
def test_a_hard_scene_shows_its_case(make: MakeDesk, demo: Arrived, name: str) -> None:
    desk = shown(make, demo, name)
    assert SHOWS[name] in desk.window.fitting.reasons.sentences.accessibleDescription()


def test_the_adjuster_in_use_is_noted_beside_its_row(make: MakeDesk, demo: Arrived) -> None:
    row = shown(make, demo, "25-the-adjuster-all-but-used").window.fitting.table.chosen_row()
    assert row is not None
    assert row.note == "Hip: adjuster 2.5 of 3 cm"


def test_own_experience_is_noted_beside_its_model_alone(make: MakeDesk, demo: Arrived) -> None:
    """By hand: 8 times right, 4 times the next size, 6 cm up: mean 2.0, n 12 -> 1.50."""
    desk = shown(make, demo, "33-comes-out-smaller-than-its-chart")
    sheet = desk.window.fitting.sheet
    assert sheet is not None
    rows = [row for at in range(len(sheet)) if isinstance(row := sheet.row(at), ModelRow)]
    told = {row.model: row.note for row in rows if "came out" in row.note}
    assert told == {"Fellgarrow W": "came out 1.5 smaller than its chart, 12 fittings"}
    assert not desk.window.fitting.table.isColumnHidden(Column.NOTE)


def test_girths_fit_where_the_length_stops(make: MakeDesk, demo: Arrived) -> None:
    row = shown(make, demo, "20-the-length-stops-what-the-girths-allow").window.fitting.table
    chosen = row.chosen_row()
    assert chosen is not None
    assert (chosen.girths.text, chosen.length.text) == ("girths fit", "vest too long")


def test_a_coin_toss_names_the_reading_to_take_again(make: MakeDesk, demo: Arrived) -> None:
    again = shown(make, demo, "26-measured-alone-a-coin-toss").window.fitting.readings.again
    assert "a fitter's tape would most likely settle" in again.says.text()


def test_last_summers_reading_stands_below_each_and_a_leap_is_asked_about(
    make: MakeDesk, demo: Arrived
) -> None:
    fields = shown(make, demo, "32-here-last-summer").window.fitting.readings.fields
    for measure in KEPT:
        assert " 2026" in fields[measure].last.text()
    assert fields[Measure.BACK_LENGTH].doubt.isVisible()
    assert not fields[Measure.CHEST].doubt.isVisible()


def test_where_nothing_fits_three_are_named(make: MakeDesk, demo: Arrived) -> None:
    banner = shown(make, demo, "23-nothing-fits-in-german").window.fitting.banner.text()
    assert banner.startswith("So lässt sich nichts anprobieren. Am nächsten: ")
    for name in ("Fellgarrow M XXL", "Granvisp 2XL", "Hedgetarrow XL Long"):
        assert name in banner


def test_a_stop_that_wins_over_the_makers_rule_is_said_first(make: MakeDesk, demo: Arrived) -> None:
    page = shown(make, demo, "21-the-makers-rule-against-the-length").window.fitting
    first = page.reasons.sentences.accessibleDescription().split("\n")[0]
    assert first.endswith("the length stop wins.")
