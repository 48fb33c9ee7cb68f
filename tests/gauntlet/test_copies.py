"""What a table says does not hang on the kind of file its cells stand in."""

from __future__ import annotations

from collections.abc import Sequence

import pytest
import score
from copied_forms import SAME_CELLS, Drawn
from copies import drawn_tables, source_of

from charts.importer import read_bytes

TABLES = 60
KEPT = 0.9
Value = tuple[object, ...]


def sample() -> Sequence[tuple[str, tuple[Drawn, ...]]]:
    """Some tables with cells from all over the gauntlet."""
    every = score.expectations()
    chosen = every[:: len(every) // (2 * TABLES)]
    drawn = ((one.name, drawn_tables(source_of(one), one.source)) for one in chosen)
    return [(name, tables) for name, tables in drawn if tables][:TABLES]


def values(name: str, data: bytes) -> list[Value]:
    """What is read: of which band, size, dimension, from which text, and how it was taken."""
    return sorted(
        (
            str(chart.band),
            str(size.label),
            one.dimension.value,
            one.published,
            str(one.unit),
            str((one.low, one.high, one.value)),
            bool(one.findings),
        )
        for chart in read_bytes(data, name).charts
        for size in chart.sizes
        for one in size.ranges
    )


@pytest.fixture(scope="module")
def tables() -> Sequence[tuple[str, tuple[Drawn, ...]]]:
    return sample()


def test_the_same_cells_are_read_the_same_in_every_kind_of_file(
    tables: Sequence[tuple[str, tuple[Drawn, ...]]],
) -> None:
    assert len(tables) > TABLES * KEPT
    different = []
    for name, drawn in tables:
        first, *others = [values(*copy) for form in SAME_CELLS.values() if (copy := form(drawn))]
        different += [name] if any(one != first for one in others) else []
    assert different == []
