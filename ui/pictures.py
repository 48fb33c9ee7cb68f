"""Every page of the demo scenario as pictures, drawn without a screen."""

from __future__ import annotations

from pathlib import Path


def draw_all(folder: Path) -> list[Path]:
    """Draw every page into ``folder``; the paths of the pictures, in order."""
    folder.mkdir(parents=True, exist_ok=True)
    return []
