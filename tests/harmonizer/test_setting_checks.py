"""What a shop may set, and the sentence that refuses what cannot be."""

from __future__ import annotations

import pytest

from charts.schema import Definition
from charts.wording import LANGUAGES, Wording
from harmonizer.setting_checks import CHOICES, RISING, changed_figure, changed_keys, refusal
from harmonizer.setting_words import (
    default_of,
    differing,
    figures_in_force,
    hand_in_force,
    origin,
    refused,
    unit,
)
from harmonizer.settings import DEFAULTS, setting_facts


def test_every_default_can_stand() -> None:
    assert [key for key in setting_facts() if refusal(DEFAULTS, key)] == []


def test_a_figure_has_its_limits_unless_it_is_a_definition() -> None:
    without = {key for key, fact in setting_facts().items() if fact.least is None}
    assert without == set(CHOICES)
    for fact in setting_facts().values():
        if fact.least is not None and fact.most is not None:
            assert fact.least <= float(fact.default) <= fact.most


@pytest.mark.parametrize(
    ("key", "value", "said"),
    [
        ("hand_width", 0.0, "At least 6 cm: less is a slip of the keys."),
        ("hand_width", 90.0, "At most 14 cm: more is a slip of the keys."),
        ("hands_check", 1.4, "This cannot lie above “Clearance: short”, 1.4 hands."),
        ("hands_check", 0.2, "This cannot lie below “Clearance: stop”, 0.35 hands."),
        ("likely_from", 0.9, "This cannot lie above “Sure from”, 0.9 of 1."),
        ("likely_from", 0.3, "This cannot lie below “Even from”, 0.4 of 1."),
        ("sure_from", 1.0, "At most 0.999 of 1: more is a slip of the keys."),
        ("u_back_fitter", 1.5, "This cannot lie above “Back, fitter once”, 1.4 cm."),
    ],
)
def test_an_impossible_figure_is_refused_with_a_sentence(key: str, value: float, said: str) -> None:
    wrong = refusal(changed_figure(DEFAULTS, key, value), key)
    assert wrong is not None
    assert refused(wrong, Wording()) == said


def test_one_uncertainty_may_equal_the_next_but_no_band_may_be_empty() -> None:
    assert refusal(changed_figure(DEFAULTS, "u_back_fitter", 1.4), "u_back_fitter") is None
    assert refusal(changed_figure(DEFAULTS, "hands_stop", 0.7), "hands_stop") is not None


def test_a_definition_of_another_dimension_is_refused() -> None:
    wrong = changed_figure(DEFAULTS, "default_waist", Definition.HIP_SEAT)
    assert refusal(wrong, "default_waist") is not None


def test_every_chain_holds_known_figures() -> None:
    assert {key for chain in RISING for key in chain} <= set(setting_facts())


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_figure_says_its_unit_its_origin_and_its_heading(language: str) -> None:
    wording = Wording(language)
    for key, fact in setting_facts().items():
        assert origin(key, wording)
        assert unit(key, wording) or key in CHOICES
        assert wording.say("settings", f"group-{fact.group}")


def test_what_is_changed_is_known_by_key_and_in_words() -> None:
    settings = changed_figure(DEFAULTS, "hand_width", 8.25)
    assert changed_keys(settings, DEFAULTS) == ("hand_width",)
    assert differing(settings, DEFAULTS, Wording("de")) == ("Handbreite 8,25 cm",)
    assert default_of("hand_width") == DEFAULTS.hand_width


def test_a_sheet_says_how_wide_a_hand_is_and_which_figures_are_the_shops_own() -> None:
    settings = changed_figure(DEFAULTS, "hand_width", 8.5)
    said = hand_in_force(settings, Wording())
    assert said == "One hand counts as 8.5 cm in this shop; it is no standard."
    assert figures_in_force(DEFAULTS, Wording()) == ()
    assert figures_in_force(changed_figure(settings, "edge_band", 1.5), Wording()) == (
        "The shop's own figures in force: Edge band 1.5 cm, Hand width 8.5 cm.",
    )
