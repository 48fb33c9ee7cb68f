"""What every sheet says besides its figures: keys of the topic "cautions", in their order."""

from __future__ import annotations

from typing import Final

TOPIC: Final = "cautions"

GENERAL: Final = (
    "precedence",
    "too-long",
    "in-person",
    "inflatable",
    "inspect",
    "unaltered",
    "limits",
)
"""The statements that depend on no rider."""
