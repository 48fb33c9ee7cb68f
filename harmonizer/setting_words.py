"""A shop's figure in words: its name, its value with the unit, where it comes from, a refusal."""

from __future__ import annotations

from typing import Final

from charts.reason import Reason
from charts.schema import Definition
from charts.wording import Wording
from harmonizer.explain import TOPIC as NAMES
from harmonizer.setting_checks import DIMENSION_OF, changed_keys
from harmonizer.settings import DEFAULTS, Settings, setting_facts

TOPIC: Final = "settings"
_FINEST: Final = "0.001"


def name(key: str, wording: Wording) -> str:
    """What the figure is called."""
    return wording.say(TOPIC, f"{key}-name")


def effect(key: str, wording: Wording) -> str:
    """What the figure does, in a sentence."""
    return wording.say(TOPIC, f"{key}-effect")


def unit(key: str, wording: Wording) -> str:
    """The unit of the figure, "" for a definition."""
    return wording.say(TOPIC, f"unit-{setting_facts()[key].unit.replace(' ', '-')}")


def origin(key: str, wording: Wording) -> str:
    """Where the default comes from."""
    own = f"{key}-origin"
    return wording.say(TOPIC, own if wording.has(TOPIC, own) else "origin-shop")


def bare(value: float | Definition, wording: Wording) -> str:
    """The figure alone, or the definition's name."""
    if isinstance(value, Definition):
        return wording.say(NAMES, f"definition-{value.value}")
    return wording.number(value, _FINEST)


def whole(key: str, value: float | Definition, wording: Wording) -> str:
    """The figure with its unit."""
    if key in DIMENSION_OF:
        return bare(value, wording)
    return wording.say(TOPIC, "figure", value=bare(value, wording), unit=unit(key, wording))


def default_of(key: str) -> float | Definition:
    """The figure that holds where the shop chose none."""
    value = setting_facts()[key].default
    return Definition(value) if isinstance(value, str) else float(value)


def refused(reason: Reason, wording: Wording) -> str:
    """Why a figure cannot stand, as a sentence."""
    return wording.say(TOPIC, reason.code, **_spoken(reason, wording))


def _spoken(reason: Reason, wording: Wording) -> dict[str, object]:
    return {key: _one(key, value, wording) for key, value in reason.values.items()}


def _one(key: str, value: object, wording: Wording) -> object:
    if isinstance(value, Reason):
        return wording.say(TOPIC, value.code)
    if isinstance(value, float):
        return wording.number(value, _FINEST)
    if key == "unit":
        return wording.say(TOPIC, f"unit-{str(value).replace(' ', '-')}")
    return value


def differing(settings: Settings, defaults: Settings, wording: Wording) -> tuple[str, ...]:
    """The figures a shop has changed, each as name and value: what a sheet says of them."""
    return tuple(
        wording.say(
            TOPIC,
            "changed-figure",
            name=name(key, wording),
            figure=whole(key, getattr(settings, key), wording),
        )
        for key in changed_keys(settings, defaults)
    )


def hand_in_force(settings: Settings, wording: Wording) -> str:
    """How wide this shop takes a hand to be: said wherever hands are counted."""
    return wording.say(TOPIC, "hand-in-force", hand=bare(settings.hand_width, wording))


def figures_in_force(settings: Settings, wording: Wording) -> tuple[str, ...]:
    """One sentence that names every figure a shop has changed; none where nothing is changed."""
    changed = differing(settings, DEFAULTS, wording)
    if not changed:
        return ()
    mark = wording.say(TOPIC, "list-mark")
    return (wording.say(TOPIC, "figures-in-force", figures=mark.join(changed)),)
