"""The ending of the name decides the kind, and our own files are known again."""

from __future__ import annotations

from pathlib import Path

import pytest

from charts.in_house import InHouseChart
from charts.source_files import find
from charts.wording import Wording
from charts.writers.own_files import is_ours
from charts.writers.registry import WRITERS, write_chart
from charts.writers.whole_file import NotWrittenError

ENGLISH = Wording("en")


@pytest.mark.parametrize("ending", ["", ".pdf", ".xls", ".docx"])
def test_an_unknown_ending_is_refused_before_anything_is_made(
    tmp_path: Path, chart: InHouseChart, ending: str
) -> None:
    with pytest.raises(NotWrittenError) as caught:
        write_chart(chart, tmp_path / f"chart{ending}", ENGLISH)
    assert caught.value.code == "target-kind-unknown"
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize("ending", [*WRITERS, ".XLSX", ".Csv"])
def test_what_we_write_is_known_as_ours_and_passed_over_among_suppliers_files(
    tmp_path: Path, chart: InHouseChart, ending: str
) -> None:
    path = tmp_path / f"chart{ending}"
    write_chart(chart, path, ENGLISH)
    assert is_ours(path)
    assert find([tmp_path])[0] == ()


def test_a_face_may_bring_a_kind_of_its_own(tmp_path: Path, chart: InHouseChart) -> None:
    writers = {**WRITERS, ".pdf": lambda chart, _wording: chart.version.encode()}
    write_chart(chart, tmp_path / "wall.PDF", ENGLISH, writers)
    assert (tmp_path / "wall.PDF").read_bytes() == chart.version.encode()
    with pytest.raises(NotWrittenError) as caught:
        write_chart(chart, tmp_path / "wall.doc", ENGLISH, writers)
    assert caught.value.reason.endswith(".html, .pdf")


@pytest.mark.parametrize(
    ("name", "data"),
    [
        ("a.csv", b"supplier,model,size,chest\n"),
        ("a.xlsx", b"PK\x03\x04 half a workbook"),
        ("a.xlsx", b""),
        ("a.html", b"<html><table></table></html>"),
    ],
)
def test_a_suppliers_file_is_not_ours(tmp_path: Path, name: str, data: bytes) -> None:
    path = tmp_path / name
    path.write_bytes(data)
    assert not is_ours(path)
