"""Which writer makes which kind of file: the ending of the name decides."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path
from types import MappingProxyType
from typing import Final

from charts.in_house import InHouseChart
from charts.wording import Wording
from charts.writers.delimited import delimited_bytes
from charts.writers.web_page import web_page_bytes
from charts.writers.whole_file import NotWrittenError, write_whole
from charts.writers.workbook import workbook_bytes

Writer = Callable[[InHouseChart, Wording], bytes]

WRITERS: Final[Mapping[str, Writer]] = MappingProxyType(
    {
        ".xlsx": workbook_bytes,
        ".csv": lambda chart, _wording: delimited_bytes(chart),
        ".tsv": lambda chart, _wording: delimited_bytes(chart, "\t"),
        ".html": web_page_bytes,
    }
)


Writers = Mapping[str, Writer]
"""By ending; a face may bring writers of its own beside ``WRITERS``."""


def check_ending(path: Path, writers: Writers = WRITERS) -> None:
    """Raises NotWrittenError when no writer makes files that end as ``path`` does."""
    if path.suffix.lower() not in writers:
        raise NotWrittenError("target-kind-unknown", path, ", ".join(writers))


def write_chart(
    chart: InHouseChart, path: Path, wording: Wording, writers: Writers = WRITERS
) -> None:
    """Write ``chart`` to ``path`` whole or not at all; raises NotWrittenError."""
    check_ending(path, writers)
    write_whole(path, writers[path.suffix.lower()](chart, wording))
