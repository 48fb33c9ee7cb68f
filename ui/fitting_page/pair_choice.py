"""Which foam and which inflatable vest are tried together. No Qt."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class PairChoice:
    """Which models are tried together, by key, and what is known of the foam.

    ``inflatable`` is "" while only the foam is chosen. ``over_foam_cm`` is the chest measured over
    the foam, ``thickness_mm`` the foam's own thickness.
    """

    foam: str
    inflatable: str = ""
    over_foam_cm: float | None = None
    thickness_mm: float | None = None
