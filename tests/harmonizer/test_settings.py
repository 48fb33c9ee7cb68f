"""The shop's own figures, each with its origin and its effect said in both languages."""

from __future__ import annotations

from dataclasses import fields, replace

import pytest

from charts.wording import LANGUAGES, Wording
from harmonizer.layers import layer_thickness_mm
from harmonizer.settings import DEFAULTS, Settings, setting_facts, settings_from


def test_every_setting_has_its_facts_and_no_fact_is_without_a_setting() -> None:
    assert set(setting_facts()) == {field.name for field in fields(Settings)}


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_setting_says_what_it_is_and_what_it_does(language: str) -> None:
    wording = Wording(language)
    for key, fact in setting_facts().items():
        assert wording.say("settings", f"{key}-name")
        assert wording.say("settings", f"{key}-effect").endswith(".")
        assert fact.origin
        assert fact.unit


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_named_layer_has_a_name(language: str) -> None:
    for name in layer_thickness_mm():
        assert Wording(language).say("settings", f"layer-{name}")


def test_settings_come_back_as_they_were_saved() -> None:
    changed = replace(DEFAULTS, hand_width=8.0)
    assert settings_from(changed.as_saved()) == changed


def test_settings_saved_before_a_figure_existed_take_its_default() -> None:
    old = DEFAULTS.as_saved()
    del old["hand_width"]
    assert settings_from(old) == DEFAULTS


def test_a_figure_below_zero_is_refused() -> None:
    with pytest.raises(ValueError, match="edge_band"):
        settings_from({"edge_band": -1.0})


def test_an_unknown_figure_is_refused() -> None:
    with pytest.raises(KeyError):
        settings_from({"edge": 1.0})
