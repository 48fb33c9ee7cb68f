"""What a shop may set: a figure within its limits, and figures that agree with each other."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict, replace
from itertools import pairwise
from typing import Any, Final

from charts.reason import Reason
from charts.schema import Definition, Dimension
from harmonizer.settings import Settings, setting_facts

TOPIC: Final = "settings"

RISING: Final = (
    ("hands_stop", "hands_check", "hands_right", "hands_short"),
    ("even_from", "likely_from", "sure_from"),
    ("u_girth_fitter", "u_girth_fitter_once", "u_girth_helper", "u_girth_self", "u_waist_self"),
    ("u_back_fitter", "u_back_fitter_once", "u_back_helper_felt", "u_back_helper"),
)
"""Figures of which none may lie above the next: bands in their order, a tape and a surer one."""

_STRICT: Final = frozenset((*RISING[0], *RISING[1]))

CHOICES: Final = {
    "default_chest": (Definition.CHEST_WIDEST, Definition.CHEST_UNDER_ARM),
    "default_waist": (
        Definition.WAIST_NATURAL,
        Definition.WAIST_MID,
        Definition.WAIST_NAVEL,
        Definition.WAIST_TROUSER,
    ),
    "default_hip": (Definition.HIP_BELOW_BELT, Definition.HIP_SEAT),
    "default_back_length": (
        Definition.BACK_C7_SI,
        Definition.BACK_C7_WAIST,
        Definition.BACK_C7_SEAT,
        Definition.BACK_SHOULDER_WAIST,
        Definition.BACK_WAIST_SHOULDER_WAIST,
    ),
}
"""The definitions that a dimension can have, by the setting's key."""

DIMENSION_OF: Final = {
    "default_chest": Dimension.CHEST,
    "default_waist": Dimension.WAIST,
    "default_hip": Dimension.HIP,
    "default_back_length": Dimension.BACK_LENGTH,
}


def changed_figure(settings: Settings, key: str, value: float | Definition) -> Settings:
    """``settings`` with another figure; whether it can be so is for ``refusal`` to say."""
    change: dict[str, Any] = {key: value}
    return replace(settings, **change)


def refusal(settings: Settings, key: str) -> Reason | None:
    """Why the figure of ``key`` cannot stand in ``settings``, None where it can."""
    value = asdict(settings)[key]
    if key in CHOICES:
        return None if value in CHOICES[key] else Reason("refused-definition")
    fact = setting_facts()[key]
    if fact.least is not None and value < fact.least:
        return Reason("refused-below", {"least": float(fact.least), "unit": fact.unit})
    if fact.most is not None and value > fact.most:
        return Reason("refused-above", {"most": float(fact.most), "unit": fact.unit})
    return next(_out_of_order(settings, key), None)


def _out_of_order(settings: Settings, key: str) -> Iterator[Reason]:
    """The neighbour that ``key`` has overtaken."""
    values = asdict(settings)
    for chain in RISING:
        for lower, upper in pairwise(chain):
            if key not in (lower, upper) or _rises(values[lower], values[upper], lower in _STRICT):
                continue
            other = upper if key == lower else lower
            code = "refused-over" if key == lower else "refused-under"
            yield Reason(
                code,
                {
                    "other": Reason(f"{other}-name"),
                    "limit": float(values[other]),
                    "unit": setting_facts()[other].unit,
                },
            )


def _rises(lower: float, upper: float, strict: bool) -> bool:
    return lower < upper if strict else lower <= upper


def changed_keys(settings: Settings, defaults: Settings) -> tuple[str, ...]:
    """The figures that are not at their defaults, in the order in which they are shown."""
    return tuple(key for key in setting_facts() if getattr(settings, key) != getattr(defaults, key))
