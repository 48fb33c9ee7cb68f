"""Files inside files: their names, how deep they may lie, and what is kept of the outer one."""

from __future__ import annotations

from pathlib import Path

import pytest

from charts.inner_files import parts_of
from charts.sources import load
from harmonizer.shop.shelf import shelved
from tests.charts.hostile.making import CHART, letter, zipped

NOTES = 'format = 1\n[[model]]\nmodel = "Fellrunner"\nfile = "spring.zip/a.csv"\nlevel = "3"\n'


def names(data: bytes, name: str) -> list[str]:
    return [part.name for part in parts_of(data, name)]


def test_most_files_are_one_part() -> None:
    assert names(CHART.encode(), "north/a.csv") == ["north/a.csv"]


def test_inner_files_are_named_by_the_way_to_them() -> None:
    data = zipped({"women/a.csv": CHART, "b.zip": zipped({"c.csv": CHART})})
    found = names(data, "north/spring.zip")
    assert found[:2] == ["north/spring.zip/b.zip/c.csv", "north/spring.zip/b.zip"]
    assert found[2:] == ["north/spring.zip/women/a.csv", "north/spring.zip"]


def test_an_archive_in_two_others_is_named_and_not_opened() -> None:
    data = zipped({"1.zip": zipped({"2.zip": zipped({"chart.csv": CHART})})})
    (deep, *_) = parts_of(data, "0.zip")
    assert deep.name == "0.zip/1.zip/2.zip/chart.csv"
    assert deep.problem is not None
    assert [one.code for one in deep.problem.findings] == ["unreadable"]


@pytest.mark.parametrize(
    "name", ["__MACOSX/a.csv", ".hidden", "~$a.xlsx", "models.toml", "Thumbs.db"]
)
def test_what_is_no_suppliers_file_is_passed_over_in_an_archive(name: str) -> None:
    assert names(zipped({name: CHART, "a.csv": CHART}), "x.zip") == ["x.zip/a.csv", "x.zip"]


def test_an_archive_is_listed_by_what_it_holds(tmp_path: Path) -> None:
    (tmp_path / "spring.zip").write_bytes(zipped({"a.csv": CHART, "b.csv": CHART}))
    loaded = load([tmp_path])
    assert [(file.reading.file, len(file.reading.charts)) for file in loaded.files] == [
        ("spring.zip/a.csv", 1),
        ("spring.zip/b.csv", 1),
    ]
    assert [file.data for file in loaded.files] == [CHART.encode()] * 2


def test_an_empty_archive_stays_listed_with_a_question(tmp_path: Path) -> None:
    (tmp_path / "spring.zip").write_bytes(zipped({".hidden": ""}))
    (file,) = load([tmp_path]).files
    assert [one.code for one in file.reading.findings] == ["no-table"]


def test_a_covering_letter_is_not_listed_beside_its_charts(tmp_path: Path) -> None:
    (tmp_path / "chart.eml").write_bytes(letter(("a.csv", CHART.encode())))
    assert [file.reading.file for file in load([tmp_path]).files] == ["chart.eml/a.csv"]


def test_the_supplier_is_the_folder_outside_or_inside_and_never_the_archive(
    tmp_path: Path,
) -> None:
    (tmp_path / "Northmoor").mkdir()
    (tmp_path / "Northmoor" / "a.zip").write_bytes(zipped({"a.csv": CHART}))
    (tmp_path / "all.zip").write_bytes(zipped({"Southmoor/a.csv": CHART, "b.csv": CHART}))
    said = {
        file.reading.file: chart.supplier.text if chart.supplier else None
        for file in load([tmp_path]).files
        for chart in file.reading.charts
    }
    assert said == {
        "Northmoor/a.zip/a.csv": "Northmoor",
        "all.zip/Southmoor/a.csv": "Southmoor",
        "all.zip/b.csv": None,
    }


def test_what_is_piped_in_names_no_supplier() -> None:
    files = load([], pasted=zipped({"a.csv": CHART})).files
    assert [file.reading.file for file in files] == ["-/a.csv"]
    assert files[0].reading.charts[0].supplier is None


def test_notes_beside_an_archive_speak_of_the_files_in_it(tmp_path: Path) -> None:
    (tmp_path / "spring.zip").write_bytes(zipped({"a.csv": CHART}))
    (tmp_path / "models.toml").write_text(NOTES, encoding="utf-8")
    (file,) = load([tmp_path]).files
    assert [(facts.folder, facts.file) for facts in file.facts] == [("", "spring.zip/a.csv")]
    moved = file.renamed("shelf/spring.zip/a.csv")
    assert [facts.folder for facts in moved.facts] == ["shelf"]


def test_all_files_of_an_archive_stand_beside_each_other_on_the_shelf(tmp_path: Path) -> None:
    for folder in ("north", "south"):
        (tmp_path / folder).mkdir()
        (tmp_path / folder / "a.zip").write_bytes(zipped({"a.csv": CHART, "b.csv": CHART}))
    first, second = (load([tmp_path / folder]).files for folder in ("north", "south"))
    both = shelved(first, second)
    assert [file.reading.file for file in both.files] == [
        "a.zip/a.csv",
        "a.zip/b.csv",
        "south/a.zip/a.csv",
        "south/a.zip/b.csv",
    ]
