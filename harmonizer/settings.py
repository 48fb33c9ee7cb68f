"""The shop's own figures: every limit the engine uses, with its default, unit and origin.

Defaults, units and origins stand in ``resources/reference/settings.toml``; what a figure does is
a sentence of the topic ``settings``.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from functools import cache
from types import MappingProxyType
from typing import Any, Final

from charts.resource_files import resources
from charts.schema import Definition, Dimension


@dataclass(frozen=True, slots=True)
class SettingFact:
    """What is known of one figure: its default, its unit and where it comes from.

    ``group`` is the heading it stands under; what lies below ``least`` or above ``most`` is no
    choice of a shop but a slip of the keys. Both are None for a definition.
    """

    key: str
    default: float | str
    unit: str
    origin: str
    group: str
    least: float | None = None
    most: float | None = None


@dataclass(frozen=True, slots=True)
class Settings:
    """The figures in force. Lengths in cm, masses in kg.

    ``clear_factor``, the share of a range and the chances are plain numbers. A changed figure is
    a new value: ``dataclasses.replace(DEFAULTS, hand_width=8.0)``.
    """

    edge_band: float
    chest_tolerance: float
    waist_tolerance: float
    hip_tolerance: float
    inflatable_tolerance: float
    tolerance_share: float
    open_end_limit: float
    reserve: float
    likely_long_limit: float
    short_limit: float
    clear_factor: float
    weigh_first_band: float
    hand_width: float
    saddle_rise: float
    hands_stop: float
    hands_check: float
    hands_right: float
    hands_short: float
    u_girth_fitter: float
    u_girth_fitter_once: float
    u_girth_helper: float
    u_girth_self: float
    u_waist_self: float
    u_back_fitter: float
    u_back_fitter_once: float
    u_back_helper_felt: float
    u_back_helper: float
    sure_from: float
    likely_from: float
    even_from: float
    repeat_limit_girth: float
    repeat_limit_back: float
    cut_limit: float
    fitting_sd: float
    model_sd: float
    default_chest: Definition
    default_waist: Definition
    default_hip: Definition
    default_back_length: Definition

    def default_definition(self, dimension: Dimension) -> Definition:
        """What a side that names no definition is taken to mean; UNKNOWN where none is needed."""
        return {
            Dimension.CHEST: self.default_chest,
            Dimension.WAIST: self.default_waist,
            Dimension.HIP: self.default_hip,
            Dimension.BACK_LENGTH: self.default_back_length,
        }.get(dimension, Definition.UNKNOWN)

    def as_saved(self) -> dict[str, float | str]:
        """Every figure by its key, as it is stored with an advice."""
        return {key: _plain(value) for key, value in asdict(self).items()}


def _plain(value: float | Definition) -> float | str:
    return value.value if isinstance(value, Definition) else value


@cache
def setting_facts() -> Mapping[str, SettingFact]:
    """Every figure by its key, in the order in which it is shown."""
    source = resources() / "reference" / "settings.toml"
    table = tomllib.loads(source.read_text(encoding="utf-8"))
    del table["format"]
    return MappingProxyType({key: SettingFact(key, **entry) for key, entry in table.items()})


def settings_from(saved: Mapping[str, float | str]) -> Settings:
    """Settings from what was saved; a figure that is not there takes its default.

    Raises KeyError for a key that is no setting, ValueError for a definition that is none or a
    figure below zero.
    """
    facts = setting_facts()
    unknown = set(saved) - set(facts)
    if unknown:
        raise KeyError(", ".join(sorted(unknown)))
    merged = {key: saved.get(key, fact.default) for key, fact in facts.items()}
    for key, value in merged.items():
        if not key.startswith("default_") and float(value) < 0:
            raise ValueError(f"{key} cannot be below zero")
    typed: dict[str, Any] = {key: _typed(key, value) for key, value in merged.items()}
    return Settings(**typed)


def _typed(key: str, value: float | str) -> float | Definition:
    return Definition(str(value)) if key.startswith("default_") else float(value)


DEFAULTS: Final = settings_from({})
