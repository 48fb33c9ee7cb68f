"""Every figure that the rules leave to the shop is a setting, and its default is the agreed one.

The list was typed by hand when the rules were agreed, so a default that slips is seen here.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

import pytest

from charts.schema import Definition
from harmonizer.certainty import Word, word
from harmonizer.fit import fit
from harmonizer.row_reasons import chance_reasons
from harmonizer.settings import DEFAULTS, setting_facts, settings_from
from tests.harmonizer.by_hand import CHART_A, RIDER_R, rows_chart, table

MODEL: Final[dict[str, dict[str, float | Definition]]] = {
    "2, a silent side": {
        "default_chest": Definition.CHEST_WIDEST,
        "default_waist": Definition.WAIST_NATURAL,
        "default_hip": Definition.HIP_BELOW_BELT,
        "default_back_length": Definition.BACK_C7_SI,
    },
    "3, inside": {"edge_band": 1.0},
    "3, tolerance": {
        "chest_tolerance": 1.0,
        "waist_tolerance": 4.0,
        "hip_tolerance": 4.0,
        "inflatable_tolerance": 2.0,
        "tolerance_share": 0.5,
    },
    "3, likely long": {"likely_long_limit": 0.84},
    "3, short": {"short_limit": 1.5},
    "3, weigh first": {"weigh_first_band": 2.0},
    "4, one reading": {
        "u_girth_fitter": 0.8,
        "u_back_fitter": 1.0,
        "u_girth_fitter_once": 1.1,
        "u_back_fitter_once": 1.4,
        "u_girth_helper": 1.5,
        "u_back_helper_felt": 2.0,
        "u_back_helper": 2.7,
        "u_girth_self": 3.0,
        "u_waist_self": 5.0,
    },
    "4, words": {"sure_from": 0.9, "likely_from": 0.6, "even_from": 0.4},
    "5, the saddle": {"saddle_rise": 5.0, "hand_width": 9.0},
    "5, bands": {"hands_stop": 0.35, "hands_check": 0.7, "hands_right": 1.4, "hands_short": 1.8},
    "6, reserve": {"reserve": 4.0},
    "8, shape": {"cut_limit": 4.0},
    "9, experience": {"fitting_sd": 3.0, "model_sd": 1.5},
}
BEYOND: Final = {
    "open_end_limit",
    "clear_factor",
    "repeat_limit_girth",
    "repeat_limit_back",
}
"""Figures without the mark that a shop may set as well."""


@pytest.mark.parametrize("place", MODEL)
def test_a_figure_left_to_the_shop_is_a_setting_with_the_models_default(place: str) -> None:
    facts = setting_facts()
    for key, default in MODEL[place].items():
        assert facts[key].default == default
        assert getattr(DEFAULTS, key) == default
        assert key in DEFAULTS.as_saved()


def test_no_setting_is_without_a_place_in_the_model() -> None:
    listed = {key for figures in MODEL.values() for key in figures}
    assert listed | BEYOND == set(setting_facts())


def test_a_chance_is_called_what_the_shop_says() -> None:
    bold = replace(DEFAULTS, sure_from=0.8, likely_from=0.5, even_from=0.3)
    assert [word(chance) for chance in (0.85, 0.55, 0.35)] == [
        Word.LIKELY,
        Word.EVEN,
        Word.UNLIKELY,
    ]
    assert [word(chance, bold) for chance in (0.85, 0.55, 0.35, 0.29)] == [*Word]


def test_a_rows_reason_speaks_by_the_settings_in_force() -> None:
    for settings in (
        DEFAULTS,
        replace(DEFAULTS, sure_from=0.999, likely_from=0.99, even_from=0.01),
    ):
        row = fit(RIDER_R, table(rows_chart(CHART_A)), settings).rows[0]
        assert row.probability is not None
        said = next(one for one in chance_reasons(row) if one.code == "chance-sure")
        assert said.values["word"].code == f"word-{word(row.probability, settings)}"  # type: ignore[attr-defined]  # a Reason


def test_the_most_a_tolerance_may_be_is_a_share_of_the_range() -> None:
    """Waist in M is 8 wide: half of it leaves the tolerance at 4, a tenth brings it to 0.8."""
    narrow = replace(DEFAULTS, tolerance_share=0.1)
    states = {}
    for settings in (DEFAULTS, narrow):
        rows = fit(RIDER_R, table(rows_chart(CHART_A)), settings).rows
        states[settings] = next(one for one in rows if one.offer.size == "M").girth_verdict
    assert (states[DEFAULTS], states[narrow]) == ("near", "miss")


def test_bounds_that_were_saved_come_back() -> None:
    assert settings_from({"sure_from": 0.95}).sure_from == 0.95
