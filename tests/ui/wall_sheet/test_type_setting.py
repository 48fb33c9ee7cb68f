"""Words in lines and columns."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as some

from tests.ui.wall_sheet.conftest import by_rule
from ui.wall_sheet.ink import Words
from ui.wall_sheet.paper import BLOCK, SMALL, Face
from ui.wall_sheet.type_setting import Setter, in_columns, run_on, stacked

SETTER = Setter(by_rule)
FACE = Face(10.0)  # 5.5 points a letter by the plain rule
WORDS = some.lists(some.text("abcde", min_size=1, max_size=12), min_size=1, max_size=30)


def test_lines_are_broken_between_words() -> None:
    assert SETTER.lines("one two three", FACE, 8 * 5.5) == ["one two", "three"]


def test_a_new_line_stays_one() -> None:
    assert SETTER.lines("one\ntwo", FACE, 100.0) == ["one", "two"]


def test_only_a_word_too_wide_for_the_room_is_broken_inside() -> None:
    assert SETTER.lines("abcdefgh", FACE, 4 * 5.5) == ["abcd", "efgh"]


@given(WORDS, some.floats(20, 300))
def test_no_line_is_wider_than_its_room_and_no_letter_is_lost(
    words: list[str], room: float
) -> None:
    lines = SETTER.lines(" ".join(words), FACE, room)
    assert all(by_rule(line, FACE) <= room for line in lines)
    assert "".join(lines).replace(" ", "") == "".join(words)


def test_a_list_is_broken_at_its_dots_and_leaves_none_behind() -> None:
    said = ["foam", "level 3", "file of 3 Nov 2026"]
    assert SETTER.listed(said, FACE, 20 * 5.5) == ["foam · level 3", "file of 3 Nov 2026"]


def test_the_largest_face_that_fits_is_taken() -> None:
    assert SETTER.fitting("Women", (BLOCK, SMALL), 100.0) is BLOCK
    assert SETTER.fitting("Women", (BLOCK, SMALL), 30.0) is SMALL


@given(WORDS, some.integers(1, 4))
def test_columns_hold_every_paragraph_inside_their_edges(words: list[str], count: int) -> None:
    setting = in_columns(SETTER, words, FACE, (50.0, 650.0), count)
    marks = [mark for mark in setting.marks if isinstance(mark, Words)]
    assert [mark.text for mark in marks] == words
    assert all(mark.x >= 50.0 and mark.x + mark.width <= 650.0 for mark in marks)
    assert all(mark.y <= setting.height for mark in marks)
    assert len({mark.x for mark in marks}) <= count


def test_columns_differ_as_little_as_may_be() -> None:
    setting = in_columns(SETTER, list("abcdefg"), FACE, (0.0, 300.0), 3)
    assert setting.height == pytest.approx(3 * FACE.line)


def test_sentences_run_on_over_the_columns_and_a_sign_stays_with_its_word() -> None:
    setting = run_on(SETTER, ["† One two.", "‡ Three four."], FACE, (0.0, 118.0), 2)
    said = [mark.text for mark in setting.marks if isinstance(mark, Words)]
    assert "".join(said).replace(" ", "").replace("\N{NO-BREAK SPACE}", "") == "†Onetwo.‡Threefour."
    assert not any(line.endswith(("†", "‡")) for line in said)


def test_what_is_stacked_stands_below_what_came_before() -> None:
    one = in_columns(SETTER, ["a"], FACE, (0.0, 100.0), 1)
    both = stacked(one, one)
    first, second = (mark for mark in both.marks if isinstance(mark, Words))
    assert second.y - first.y == pytest.approx(one.height)
