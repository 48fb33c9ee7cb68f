"""What a person chose for the screen, kept in one small file; no client's data is ever in it."""

from __future__ import annotations

import json
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any, Final

from charts.wording import LANGUAGES
from ui.drawing.row_shape import Density
from ui.kept_file import keep
from ui.theme import Scheme

FORMAT: Final = 1
LEAST_POINTS: Final = 7.0
MOST_POINTS: Final = 24.0
LEAST_REASONS: Final = 84.0
MOST_REASONS: Final = 1600.0
_SCHEMES: Final = (Scheme.LIGHT, Scheme.DARK, Scheme.FORCED)


@dataclass(frozen=True, slots=True)
class Preferences:
    """How the screen looks. ``scheme`` and ``language`` None follow the desktop.

    ``reasons`` is how high the reasons were pulled, in pixels at a line of 16; None for as high as
    they need.
    """

    language: str | None = None
    scheme: Scheme | None = None
    density: Density = Density.LOW
    points: float = 9.5
    reasons: float | None = None


def read_preferences(path: Path) -> Preferences:
    """What was chosen last; the defaults where there is no file or it cannot be understood."""
    try:
        saved = json.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return Preferences()
    if not isinstance(saved, dict) or saved.get("format") != FORMAT:
        return Preferences()
    return _checked(saved)


def write_preferences(path: Path, preferences: Preferences) -> None:
    """Keep what was chosen. Raises NotWrittenError where the folder cannot be written to."""
    keep(path, {"format": FORMAT, **asdict(preferences)})


def _checked(saved: dict[str, Any]) -> Preferences:
    usual = Preferences()
    language, scheme = saved.get("language"), saved.get("scheme")
    density, points = saved.get("density"), saved.get("points")
    return Preferences(
        language=language if language in LANGUAGES else None,
        scheme=Scheme(scheme) if scheme in _SCHEMES else None,
        density=Density(density) if density in set(Density) else usual.density,
        points=_points(points, usual.points),
        reasons=_height(saved.get("reasons")),
    )


def _height(value: object) -> float | None:
    if not isinstance(value, int | float) or isinstance(value, bool):
        return None
    return min(max(float(value), LEAST_REASONS), MOST_REASONS)


def _points(value: object, usual: float) -> float:
    if not isinstance(value, int | float) or isinstance(value, bool):
        return usual
    return min(max(float(value), LEAST_POINTS), MOST_POINTS)
