"""Which size came out right: asked at the row, kept in the shop's folder, told beside the model."""

from __future__ import annotations

from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QAction, QFontMetricsF
from PySide6.QtWidgets import QApplication, QMenu
from pytestqt.qtbot import QtBot

from harmonizer.shop.outcome_toml import read_outcomes
from tests.ui.conftest import MakeDesk
from tests.ui.test_shop_keeping import started
from ui.desk import Desk
from ui.fitting_page.cell_painter import note_in
from ui.fitting_page.columns import Column
from ui.fitting_page.rows import ModelRow
from ui.loading import arrive

DAY = date(2027, 2, 11)
CHART = (
    "Size,Chest (cm),Back length (cm)\nS,84-92,40-46\nM,90-98,40-46\n"
    "L,96-104,40-46\nXL,104+,40-46\n"
)
RIDER = (
    'format = 1\nname = "{name}"\ntaken_by = "fitter"\n[readings]\n'
    'chest = "{chest} cm"\nback_length = "44 cm"\n'
)


@pytest.fixture
def charts(tmp_path: Path) -> Path:
    folder = tmp_path / "charts"
    (folder / "Alderway").mkdir(parents=True)
    (folder / "Alderway" / "harrier_2027.csv").write_text(CHART, encoding="utf-8")
    return folder


@pytest.fixture
def kept(tmp_path: Path) -> Path:
    return tmp_path / "kept" / "screen.json"


@pytest.fixture
def desk(qapp: QApplication, qtbot: QtBot, kept: Path, charts: Path) -> Desk:
    made = started(qapp, qtbot, kept)
    made.frame.resize(1600, 900)
    furnish(made, charts)
    return made


def furnish(desk: Desk, charts: Path, name: str = "Rider 7", text: str = "") -> None:
    """The chart is open and a rider on the line."""
    rider = charts.parent / f"{name}.toml"
    rider.write_text(text or RIDER.format(name=name, chest=94), encoding="utf-8")
    desk.window.fittings.day = lambda: DAY
    arrived = arrive((charts, rider), desk.window.words.wording, lambda _message, _share: None)
    desk.commands.take_in(arrived)


def file_of(kept: Path) -> Path:
    return kept.parent / "season" / "fittings.toml"


def menu_by_key(desk: Desk) -> QMenu:
    opened: list[QMenu] = []
    desk.window.fitting.table.row_hold.opens = lambda menu, _place: opened.append(menu)
    desk.window.actions_["came-out"].trigger()
    (menu,) = opened
    return menu


def entry(menu: QMenu, size: str) -> QAction:
    return next(one for one in menu.actions() if one.text().split(" (")[0] == size)


def say(desk: Desk, size: str) -> None:
    entry(menu_by_key(desk), size).trigger()
    desk.shop.keep()


def chosen(desk: Desk) -> ModelRow:
    row = desk.window.fitting.table.chosen_row()
    assert row is not None
    return row


def test_the_key_offers_the_sizes_with_the_advised_one_first_to_hand(desk: Desk) -> None:
    menu = menu_by_key(desk)
    heading, _line, *sizes = menu.actions()
    assert heading.text() == f"{chosen(desk).model}: which size came out right?"
    assert [one.text() for one in sizes] == [
        "S",
        "M (advised)",
        "L",
        "XL (difference at the chest not known)",
    ]
    assert [one.isEnabled() for one in sizes] == [True, True, True, False]
    active = menu.activeAction()
    assert active is not None
    assert active.text() == "M (advised)"


def test_what_came_out_right_is_kept_and_undo_takes_it_back(desk: Desk, kept: Path) -> None:
    say(desk, "L")
    (one,) = read_outcomes(file_of(kept).read_text(encoding="utf-8"))
    assert (one.maker, one.predicted, one.fitted, one.cm, one.on) == (
        "Alderway",
        "M",
        "L",
        Decimal(6),
        DAY,
    )
    assert "Rider 7" not in file_of(kept).read_text(encoding="utf-8")
    said = desk.window.notice.says.text()
    assert f"{one.model}: L came out right, M was advised. 1 fitting is kept" in said
    desk.window.actions_["undo"].trigger()
    desk.shop.keep()
    assert not file_of(kept).exists()


def test_it_is_written_by_itself_after_each_act(desk: Desk, qtbot: QtBot, kept: Path) -> None:
    entry(menu_by_key(desk), "L").trigger()
    qtbot.waitUntil(file_of(kept).exists)
    desk.window.actions_["undo"].trigger()
    qtbot.waitUntil(lambda: not file_of(kept).exists())


def test_right_first_time_is_kept_as_zero(desk: Desk, kept: Path) -> None:
    say(desk, "M")
    (one,) = read_outcomes(file_of(kept).read_text(encoding="utf-8"))
    assert (one.predicted, one.fitted, one.cm) == ("M", "M", Decimal(0))
    assert "M came out right, as advised." in desk.window.notice.says.text()


def test_the_rows_own_menu_offers_the_same(desk: Desk) -> None:
    menu = QMenu()
    adds = desk.window.fitting.table.row_hold.adds
    assert adds is not None
    adds(menu, chosen(desk))
    (action,) = menu.actions()
    sizes = action.menu()
    assert isinstance(sizes, QMenu)
    entry(sizes, "L").trigger()
    assert [one.fitted for one in desk.window.workspace.fittings] == ["L"]


def test_without_a_shops_folder_it_says_why_not(make: MakeDesk, charts: Path) -> None:
    desk = make()
    furnish(desk, charts)
    desk.window.actions_["came-out"].trigger()
    assert "there is no shop's folder to keep it in" in desk.window.notice.says.text()
    menu = QMenu()
    adds = desk.window.fitting.table.row_hold.adds
    assert adds is not None
    adds(menu, chosen(desk))
    (action,) = menu.actions()
    assert not action.isEnabled()
    assert "there is no shop's folder" in action.text()
    assert desk.window.workspace.fittings == ()


@pytest.mark.parametrize(
    ("chart", "reading", "why"),
    [
        (CHART.replace("Chest", "Waist"), 'waist = "88 cm"', "its chart gives no chest."),
        (CHART, 'waist = "88 cm"', "nothing of it was compared, so no size was advised."),
    ],
)
def test_where_nothing_can_be_kept_of_a_model_it_says_why_not(
    desk: Desk, charts: Path, chart: str, reading: str, why: str
) -> None:
    (charts / "Alderway" / "harrier_2027.csv").write_text(chart, encoding="utf-8")
    rider = f'format = 1\nname = "Rider 7"\n[readings]\n{reading}\n'
    furnish(desk, charts, text=rider)
    desk.window.actions_["came-out"].trigger()
    assert why in desk.window.notice.says.text()


def test_what_was_advised_is_told_from_the_readings_not_from_the_saddle(
    desk: Desk, charts: Path
) -> None:
    """A vest that was seen to sit wrongly was the one advised all the same."""
    model = chosen(desk).model
    seen = f'[[seen]]\nmodel = "{model}"\nsize = "M"\nobserved = "stop"\n'
    furnish(desk, charts, "Rider 8", text=RIDER.format(name="Rider 8", chest=94) + seen)
    assert chosen(desk).size != "M"
    say(desk, "L")
    (one,) = desk.window.workspace.fittings
    assert (one.predicted, one.fitted) == ("M", "L")


def test_one_rider_counts_once_also_after_undo(desk: Desk, charts: Path) -> None:
    workspace = desk.window.workspace
    say(desk, "L")
    say(desk, "S")
    say(desk, "S")
    assert [one.fitted for one in workspace.fittings] == ["S"]
    workspace.undo()
    assert [one.fitted for one in workspace.fittings] == ["L"]
    say(desk, "M")
    assert [one.fitted for one in workspace.fittings] == ["M"]
    furnish(desk, charts, "Rider 8")
    say(desk, "M")
    assert [one.fitted for one in workspace.fittings] == ["M", "M"]


def test_from_five_fittings_on_the_row_and_its_reasons_say_it(desk: Desk, charts: Path) -> None:
    """By hand: five times 6: 5*2.25/(5*2.25+9)*6 = 3.33, clear of 0."""
    fitting = desk.window.fitting
    before = (chosen(desk).size, chosen(desk).girths, chosen(desk).length, chosen(desk).cells)
    for number in range(5):
        assert chosen(desk).note == ""
        assert fitting.table.isColumnHidden(Column.NOTE)
        furnish(desk, charts, f"Rider {number}")
        say(desk, "L")
    assert chosen(desk).note == "came out 3.3 smaller than its chart, 5 fittings"
    assert not fitting.table.isColumnHidden(Column.NOTE)
    after = (chosen(desk).size, chosen(desk).girths, chosen(desk).length, chosen(desk).cells)
    assert after == before
    fitting.reasons.say_more()
    sentences = fitting.reasons.sentences.accessibleDescription()
    assert "it came out 3.3 cm smaller than its chart, 5 fittings." in sentences


def test_where_the_note_has_no_room_its_brief_form_stands_whole(desk: Desk, charts: Path) -> None:
    for number in range(5):
        furnish(desk, charts, f"Rider {number}")
        say(desk, "L")
    row, font = chosen(desk), desk.window.dress.type_.small
    line = QFontMetricsF(font).lineSpacing()
    wide, low = QRectF(0, 0, line * 30, line * 2), QRectF(0, 0, line * 6, line * 2)
    assert note_in(wide, row, font) == row.note
    assert note_in(low, row, font) == "3.3 smaller, 5\N{NO-BREAK SPACE}fittings"


def test_the_next_start_knows_it(
    desk: Desk, qapp: QApplication, qtbot: QtBot, kept: Path, charts: Path
) -> None:
    say(desk, "L")
    again = started(qapp, qtbot, kept)
    assert again.window.workspace.fittings == desk.window.workspace.fittings
    furnish(again, charts, "Rider 9")
    say(again, "M")
    assert len(read_outcomes(file_of(kept).read_text(encoding="utf-8"))) == 2
