"""The words of margins and verdicts as machines know them, each family from best to worst.

A state is stored in arrays as its place in its family: ``GIRTHS[code]`` is the word again.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Final

SLACK: Final = 0.0001
"""Two figures within this many cm (or kg) of each other touch, and touching is never outside."""


class GirthState(StrEnum):
    """How a girth lies in its range."""

    INSIDE = "inside"
    EDGE = "edge"
    NEAR = "near"
    MISS = "miss"
    NOT_CHECKED = "not_checked"


class LengthState(StrEnum):
    """How the back length lies, the vest being what is long or short."""

    CLEAR = "clear"
    CHECK = "check"
    NOT_KNOWN = "not_known"
    SHORT = "short"
    LIKELY_LONG = "likely_long"
    TOO_SHORT = "too_short"
    TOO_LONG = "too_long"


class Verdict(StrEnum):
    """What is said of one size, girths and length taken together."""

    FITS = "fits"
    EDGE = "edge"
    CHECK_LENGTH = "check_length"
    LENGTH_UNKNOWN = "length_unknown"
    NEAR = "near"
    LIKELY_LONG = "likely_long"
    NO = "no"
    TOO_LONG = "too_long"
    NOT_OFFERED = "not_offered"


GIRTHS: Final = tuple(GirthState)
LENGTHS: Final = tuple(LengthState)
VERDICTS: Final = tuple(Verdict)

INSIDE, EDGE, NEAR, MISS, NOT_CHECKED = range(5)
CLEAR, CHECK, NOT_KNOWN, SHORT, LIKELY_LONG, TOO_SHORT, TOO_LONG = range(7)
