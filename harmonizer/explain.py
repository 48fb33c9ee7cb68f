"""From reasons to sentences: figures in the reader's form, names in the reader's language."""

from __future__ import annotations

from typing import Final

from charts.reason import Reason
from charts.schema import Definition, Dimension
from charts.wording import Wording

TOPIC: Final = "reasons"
_MARGINS: Final = frozenset({"by", "left", "lower", "upper", "over", "g"})


def sentence(reason: Reason, wording: Wording) -> str:
    """``reason`` as one sentence; readings and range ends to 0.5 cm, margins to 0.1."""
    values = {key: _worded(key, value, wording) for key, value in reason.values.items()}
    return wording.say(TOPIC, reason.code, **values)


def _worded(key: str, value: object, wording: Wording) -> object:
    if isinstance(value, Dimension):
        return wording.say(TOPIC, f"name-{value.value}")
    if isinstance(value, Definition):
        return wording.say(TOPIC, f"definition-{value.value}")
    if isinstance(value, float):
        return wording.margin(value) if key in _MARGINS else wording.cm(value)
    return value
