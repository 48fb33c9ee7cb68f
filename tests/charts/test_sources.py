"""Which files a source holds, under which names, and what becomes of those that cannot be used."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

import pytest

from charts.findings import Level
from charts.source_files import find
from charts.sources import Cancelled, Loaded, load

CHART = "Size;Chest (cm);Waist (cm)\nS;84-88;68-72\nM;89-93;73-77\nL;94-98;78-82\n"
NOTES = 'format = 1\n[[model]]\nmodel = "Fellrunner"\nfile = "a.csv"\nlevel = "3"\n'


@pytest.fixture
def shelf(tmp_path: Path) -> Callable[..., Path]:
    """Writes a file below the test's folder and returns the folder."""

    def put(name: str, content: str | bytes = CHART) -> Path:
        path = tmp_path / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return tmp_path

    return put


def names(*sources: Path) -> list[str]:
    return [file.name for file in find(sources)[0]]


def codes(loaded: Loaded, file: str) -> list[str]:
    (reading,) = [each.reading for each in loaded.files if each.reading.file == file]
    return [finding.code for finding in reading.findings if finding.level is Level.ERROR]


def test_a_folder_is_taken_with_all_folders_in_it_by_name(shelf: Callable[..., Path]) -> None:
    for name in ("b/z.csv", "b/a.csv", "a.csv", "B/c.csv"):
        folder = shelf(name)
    assert names(folder) == ["B/c.csv", "a.csv", "b/a.csv", "b/z.csv"]


def test_a_file_taken_by_itself_has_its_own_name(shelf: Callable[..., Path]) -> None:
    folder = shelf("makers/north/a.csv")
    assert names(folder / "makers" / "north" / "a.csv") == ["a.csv"]


def test_the_order_of_the_sources_changes_nothing(shelf: Callable[..., Path]) -> None:
    folder = shelf("b.csv")
    shelf("a.csv")
    assert names(folder / "b.csv", folder / "a.csv") == names(folder / "a.csv", folder / "b.csv")


def test_a_file_named_twice_is_read_once(shelf: Callable[..., Path]) -> None:
    folder = shelf("north/a.csv")
    assert names(folder, folder / "north" / "a.csv", folder / "north") == ["north/a.csv"]


def test_two_files_of_one_name_are_told_apart_by_their_folders(
    shelf: Callable[..., Path],
) -> None:
    folder = shelf("north/2027/a.csv")
    shelf("south/2027/a.csv")
    shelf("south/2027/b.csv")
    taken = names(folder / "north" / "2027", folder / "south" / "2027")
    assert taken == ["b.csv", "north/2027/a.csv", "south/2027/a.csv"]


@pytest.mark.parametrize(
    "name",
    [
        "~$a.xlsx",
        ".~lock.a.ods#",
        ".hidden.csv",
        ".git/a.csv",
        "__MACOSX/a.csv",
        "Thumbs.db",
        "desktop.ini",
        "a.csv.crdownload",
        "a.tmp",
        "models.toml",
        "rider-01.toml",
    ],
)
def test_what_is_no_suppliers_file_is_passed_over_in_a_folder(
    shelf: Callable[..., Path], name: str
) -> None:
    shelf(name)
    assert names(shelf("a.csv")) == ["a.csv"]


def test_notes_beside_a_file_are_found_for_a_folder_and_for_the_file_alone(
    shelf: Callable[..., Path],
) -> None:
    folder = shelf("north/a.csv")
    shelf("north/models.toml", NOTES)
    for source, beside in ((folder, "north"), (folder / "north" / "a.csv", "")):
        (file,) = load([source]).files
        assert [(facts.model, facts.folder) for facts in file.facts] == [("Fellrunner", beside)]


def test_notes_stay_beside_files_whose_names_were_told_apart(shelf: Callable[..., Path]) -> None:
    shelf("north/a.csv")
    for name in ("a.csv", "b.csv"):
        folder = shelf(f"south/{name}")
    shelf("south/models.toml", NOTES)
    loaded = load([folder / "north", folder / "south"])
    beside = {file.reading.file: [each.folder for each in file.facts] for file in loaded.files}
    assert beside == {"b.csv": [""], "north/a.csv": [], "south/a.csv": ["south"]}


def test_notes_that_cannot_be_used_are_one_error_and_the_charts_still_load(
    shelf: Callable[..., Path],
) -> None:
    folder = shelf("a.csv")
    shelf("models.toml", NOTES.replace('level = "3"', "level = 3"))
    loaded = load([folder])
    assert codes(loaded, "models.toml") == ["facts-file"]
    (faulty,) = [each for each in loaded.files if each.reading.file == "models.toml"]
    assert faulty.reading.findings[0].values["line"] == "5"
    assert codes(loaded, "a.csv") == []


def test_a_source_that_is_not_there_is_an_error_of_its_own(tmp_path: Path) -> None:
    assert codes(load([tmp_path / "gone.csv"]), "gone.csv") == ["not-there"]


@pytest.mark.skipif(os.name == "nt" or os.geteuid() == 0, reason="root opens every folder")
def test_a_folder_that_may_not_be_opened_is_named(shelf: Callable[..., Path]) -> None:
    folder = shelf("closed/a.csv")
    (folder / "closed").chmod(0)
    try:
        (file,) = load([folder]).files
    finally:
        (folder / "closed").chmod(0o700)
    assert [finding.code for finding in file.reading.findings] == ["folder-closed"]


def test_progress_names_each_file_and_ends_at_one(shelf: Callable[..., Path]) -> None:
    shelf("a.csv")
    told: list[tuple[str, float]] = []
    load([shelf("b.csv")], lambda message, fraction: told.append((message, fraction)))
    assert told == [("a.csv", 0.0), ("b.csv", 0.5), ("", 1.0)]


def test_a_cancel_ends_the_work_at_the_next_file(shelf: Callable[..., Path]) -> None:
    def stop(message: str, fraction: float) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        load([shelf("a.csv")], stop)


def test_pasted_text_is_a_file_named_by_a_dash() -> None:
    (file,) = load([], pasted=CHART.replace(";", "\t").encode()).files
    assert (file.reading.file, file.path) == ("-", None)
    assert [size.label for size in file.reading.charts[0].sizes] == ["S", "M", "L"]


def test_pasted_text_of_an_old_code_page_is_read_too() -> None:
    text = "Größe\tBrustumfang (cm)\nS\t84\N{EN DASH}88\nM\t89\N{EN DASH}93\nL\t94\N{EN DASH}98\n"
    (file,) = load([], pasted=text.encode("cp1252")).files
    assert [size.label for size in file.reading.charts[0].sizes] == ["S", "M", "L"]
