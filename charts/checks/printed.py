"""What comes from a printed page is compared with it once, by a person, before it is relied on."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from charts.findings import FindingLog, listed
from charts.schema import Chart, Size
from charts.sheet import Addressing, Sheet


def compared_with_page(
    charts: Sequence[Chart], sheets: Iterable[Sheet], name: str, log: FindingLog
) -> list[Chart]:
    """The charts of a file, with one question at every value where its cells were inferred.

    A printed page says where letters stand and nothing of rows and columns.
    """
    printed = any(sheet.addressing is Addressing.PAGE for sheet in sheets)
    if not printed or not charts:
        return list(charts)
    ident = log.add("text-order", name, key="file", name=name)
    return [replace(one, sizes=tuple(_asked(size, ident) for size in one.sizes)) for one in charts]


def _asked(size: Size, ident: str) -> Size:
    ranges = (replace(one, findings=listed(*one.findings, ident)) for one in size.ranges)
    return replace(size, ranges=tuple(ranges))
