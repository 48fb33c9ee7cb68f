"""A thing to be said, as a code and its values. Sentences are made from it where people read."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from charts.wording import Wording


@dataclass(frozen=True, slots=True)
class Reason:
    """``code`` names a sentence of a topic; ``values`` fill its places."""

    code: str
    values: Mapping[str, object] = field(default_factory=dict)

    def say(self, wording: Wording, topic: str) -> str:
        """The sentence in the reader's language."""
        return wording.say(topic, self.code, **self.values)
