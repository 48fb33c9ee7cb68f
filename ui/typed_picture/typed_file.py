"""A typed chart as files: the grid as text, and beside it where each value stands on the picture.

No Qt. The text is read like any supplier's file; the places are for whoever looks it up again.
"""

from __future__ import annotations

import csv
import io
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Final

from charts.places import rectangle_of
from charts.sheet import column_letters
from charts.toml_writing import Plain, table_text
from charts.writers.whole_file import write_whole

ENDING: Final = ".tsv"
PLACES_ENDING: Final = ".places.toml"
"""An ending that is never taken for a supplier's file."""
FORMAT: Final = 1
At = tuple[int, int]
Spot = tuple[int, int, int, int]
"""Left, top, width and height in pixels of the picture."""


@dataclass(frozen=True, slots=True)
class TypedChart:
    """What was typed, by row and column from 0, and where it stands. ``turned`` is in degrees."""

    texts: Mapping[At, str] = field(default_factory=dict)
    spots: Mapping[At, Spot] = field(default_factory=dict)
    picture: str = ""
    turned: int = 0

    def text(self) -> str:
        """The grid as tab-separated text."""
        rows = max((row for row, _ in self.texts), default=-1) + 1
        columns = max((column for _, column in self.texts), default=-1) + 1
        out = io.StringIO()
        writer = csv.writer(out, delimiter="\t", lineterminator="\n")
        for row in range(rows):
            writer.writerow([self.texts.get((row, column), "") for column in range(columns)])
        return out.getvalue()


def places_path(path: Path) -> Path:
    """Where the places of the typed chart at ``path`` are kept."""
    return path.with_name(path.stem + PLACES_ENDING)


def save_typed(path: Path, chart: TypedChart) -> None:
    """Write the text and, where there is a picture, the places. Raises NotWrittenError."""
    write_whole(path, chart.text().encode())
    if not chart.picture:
        return
    picture = Path(chart.picture)
    name = picture.name if picture.parent == path.parent else str(picture)
    places: dict[str, Plain | None] = {
        f"{column_letters(column)}{row + 1}": " ".join(str(part) for part in spot)
        for (row, column), spot in sorted(chart.spots.items())
    }
    head = table_text("", {"format": FORMAT, "picture": name, "turned": chart.turned})
    write_whole(places_path(path), (head + table_text("[places]", places)).encode())


def open_typed(path: Path) -> TypedChart | None:
    """The typed chart at ``path``; None where it is no typed chart or cannot be used."""
    try:
        saved = tomllib.loads(places_path(path).read_text(encoding="utf-8"))
        text = path.read_text(encoding="utf-8")
    except (OSError, ValueError):
        return None
    if saved.get("format") != FORMAT:
        return None
    rows = csv.reader(io.StringIO(text), delimiter="\t")
    texts = {
        (row, column): cell
        for row, cells in enumerate(rows)
        for column, cell in enumerate(cells)
        if cell
    }
    picture, turned = str(saved.get("picture", "")), saved.get("turned", 0)
    whole = str(path.parent / picture) if picture else ""
    return TypedChart(texts, _spots(saved), whole, turned if turned in (90, 180, 270) else 0)


def _spots(saved: dict[str, Any]) -> dict[At, Spot]:
    places = saved.get("places")
    found: dict[At, Spot] = {}
    for place, spot in places.items() if isinstance(places, dict) else ():
        area, parts = rectangle_of(place), str(spot).split()
        if area is not None and len(parts) == 4 and all(part.isdecimal() for part in parts):
            left, top, wide, high = (int(part) for part in parts)
            found[area.top, area.left] = (left, top, wide, high)
    return found
