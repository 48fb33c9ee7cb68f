"""What a person chose for the screen comes back; what was damaged costs the choice only."""

from __future__ import annotations

from pathlib import Path

import pytest

from charts.writers.whole_file import NotWrittenError
from ui.desk import Desk
from ui.drawing.row_shape import Density
from ui.preferences import MOST_POINTS, Preferences, read_preferences, write_preferences
from ui.theme import Scheme

CHOSEN = Preferences("de", Scheme.DARK, Density.TALL, 11.5)


def test_a_choice_comes_back_whole(tmp_path: Path) -> None:
    write_preferences(tmp_path / "deep" / "screen.json", CHOSEN)
    assert read_preferences(tmp_path / "deep" / "screen.json") == CHOSEN


def test_without_a_file_the_usual_look_is_shown(tmp_path: Path) -> None:
    assert read_preferences(tmp_path / "none.json") == Preferences()


@pytest.mark.parametrize("text", ["", "{", "[]", '{"format": 99}', "null"])
def test_a_damaged_or_newer_file_gives_the_usual_look(tmp_path: Path, text: str) -> None:
    path = tmp_path / "screen.json"
    path.write_text(text, encoding="utf-8")
    assert read_preferences(path) == Preferences()


def test_single_values_that_make_no_sense_are_left_out(tmp_path: Path) -> None:
    path = tmp_path / "screen.json"
    path.write_text(
        '{"format": 1, "language": "xx", "scheme": "dark", "density": 3, "points": 900}',
        encoding="utf-8",
    )
    assert read_preferences(path) == Preferences(None, Scheme.DARK, Density.LOW, MOST_POINTS)


def test_a_place_that_cannot_be_written_is_said_and_leaves_what_stands_there(
    tmp_path: Path,
) -> None:
    (tmp_path / "file").write_text("mine", encoding="utf-8")
    with pytest.raises(NotWrittenError):
        write_preferences(tmp_path / "file" / "screen.json", CHOSEN)
    assert (tmp_path / "file").read_text(encoding="utf-8") == "mine"


def test_a_screen_that_cannot_keep_a_choice_says_so_and_wears_it_all_the_same(
    desk: Desk, tmp_path: Path
) -> None:
    (tmp_path / "file").write_text("", encoding="utf-8")
    desk.view._file = tmp_path / "file" / "screen.json"
    desk.view.larger()
    assert not desk.window.notice.isHidden()
    assert desk.view.preferences.points > Preferences().points
