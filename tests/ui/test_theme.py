"""Every pair that meets on the page can be told apart, and no meaning hangs on a colour."""

from __future__ import annotations

import pytest

from ui.theme import (
    COLOURS,
    GIRTH_LOOKS,
    LENGTH_LOOKS,
    Ink,
    Look,
    Scheme,
    Theme,
    contrast,
    luminance,
)

TEXT_INKS = (Ink.TEXT, Ink.QUIET, Ink.GOOD, Ink.CHECK, Ink.NEAR, Ink.STOP, Ink.UNKNOWN)
TEXT_GROUNDS = (Ink.WINDOW, Ink.PANEL, Ink.GROUND, Ink.BAND, Ink.CHOSEN)
MARK_INKS = (Ink.GOOD, Ink.CHECK, Ink.NEAR, Ink.STOP, Ink.UNKNOWN, Ink.OTHER, Ink.RIDER)
MARK_GROUNDS = (Ink.GROUND, Ink.CHOSEN, Ink.BAND)


def test_black_on_white_is_twenty_one_to_one() -> None:
    """Source: WCAG 2.2, the ratio's stated range is 1 to 21."""
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#ffffff", "#ffffff") == pytest.approx(1.0)


def test_the_known_grey_that_just_passes_for_text() -> None:
    """Source: #767676 on white is the lightest grey that reaches 4.5:1 (WCAG technique G18)."""
    assert contrast("#767676", "#ffffff") >= 4.5 > contrast("#777777", "#ffffff")


def test_luminance_weighs_green_most() -> None:
    assert luminance("#00ff00") > luminance("#ff0000") > luminance("#0000ff")


@pytest.mark.parametrize("scheme", Scheme)
@pytest.mark.parametrize("ink", TEXT_INKS)
def test_text_stands_four_and_a_half_to_one_on_every_ground(scheme: Scheme, ink: Ink) -> None:
    theme = Theme(scheme)
    weak = [
        ground for ground in TEXT_GROUNDS if contrast(theme.colour(ink), theme.colour(ground)) < 4.5
    ]
    assert not weak


@pytest.mark.parametrize("scheme", Scheme)
@pytest.mark.parametrize("ink", MARK_INKS)
def test_marks_stand_three_to_one_on_every_row(scheme: Scheme, ink: Ink) -> None:
    theme = Theme(scheme)
    weak = [
        ground for ground in MARK_GROUNDS if contrast(theme.colour(ink), theme.colour(ground)) < 3.0
    ]
    assert not weak


@pytest.mark.parametrize("scheme", Scheme)
def test_controls_show_their_frames_and_the_focus(scheme: Scheme) -> None:
    theme = Theme(scheme)
    for ground in (Ink.PANEL, Ink.GROUND, Ink.WINDOW):
        assert contrast(theme.colour(Ink.FOCUS), theme.colour(ground)) >= 3.0
        assert contrast(theme.colour(Ink.ACCENT), theme.colour(ground)) >= 3.0
    assert contrast(theme.colour(Ink.EDGE), theme.colour(Ink.GROUND)) >= 3.0
    assert contrast(theme.colour(Ink.ON_ACCENT), theme.colour(Ink.ACCENT)) >= 4.5
    assert contrast(theme.colour(Ink.TEXT), theme.colour(Ink.TRYING)) >= 4.5
    assert contrast(theme.colour(Ink.RIDER), theme.colour(Ink.HALO)) >= 7.0


@pytest.mark.parametrize("looks", [GIRTH_LOOKS, LENGTH_LOOKS])
def test_no_two_states_of_one_column_share_a_mark(looks: dict[str, Look]) -> None:
    marks = [look.mark for look in looks.values()]
    assert len(set(marks)) == len(marks)


def test_every_scheme_knows_every_ink() -> None:
    assert all(set(COLOURS[scheme]) == set(Ink) for scheme in Scheme)
