"""A printed text that a person says is wrong: what is printed stays, with who said so and when."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date


@dataclass(frozen=True, slots=True)
class Correction:
    """``printed`` is shown struck through, ``text`` is what was read instead of it.

    ``by`` is whoever said so; ``on`` the day, None where it is not known.
    """

    place: str
    printed: str
    text: str
    by: str
    on: date | None = None
