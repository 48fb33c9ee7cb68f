"""Lines below sizes that run across: the name of a measure and a figure for each size."""

from __future__ import annotations

from collections.abc import Sequence

from charts.readers.captured.lines import Line, LineCell
from charts.readers.captured.value_runs import counted_values


def measure_rows(lines: Sequence[Line], count: int) -> list[list[LineCell]]:
    """The measures with a figure for each of ``count`` sizes, up to a line that has not as many."""
    found: list[list[LineCell]] = []
    for line in lines:
        named = counted_values(line.text, count)
        if named is None or not named.name:
            break
        found.append([LineCell(text, line.number) for text in (named.name, *named.parts)])
    return found
