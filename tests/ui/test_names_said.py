"""A model's name that no title prints is said to be the file's or the sheet's, everywhere."""

from __future__ import annotations

from pathlib import Path

import pytest

from charts.wording import LANGUAGES, Wording
from harmonizer.workspace import Workspace
from tests.ui.command_desk import CLEAN, Desk
from ui.chart_table import names_of
from ui.charts_page.file_rows import file_rows
from ui.words import Words


@pytest.fixture
def desk(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Desk:
    return Desk(tmp_path, capsys)


def chart(desk: Desk, path: str) -> dict[str, object]:
    found: dict[str, object] = desk.run("read", path, "--json").document["files"][0]["charts"][0]
    return found


def test_a_name_from_the_file_is_a_name_from_the_file(desk: Desk) -> None:
    said = chart(desk, desk.file("Windhauch.csv"))
    assert (said["model"], said["model_from"]) == ("Windhauch", "file")
    assert "Windhauch (the file's name)" in desk.run("read", desk.file("Windhauch.csv")).out


def test_a_printed_name_is_no_guess(desk: Desk) -> None:
    said = chart(desk, desk.file("sizes.csv", f"Windhauch;;;;\n\n{CLEAN}"))
    assert (said["model"], said["model_from"]) == ("Windhauch", "title")
    assert "(the" not in desk.run("read", desk.file("sizes.csv")).out.splitlines()[1]


@pytest.mark.parametrize(
    "name", ["Größentabelle Damen", "Kopie von Größen", "Preisliste Herbst 2027", "Maßtabelle neu",
             "Women sizes", "size chart final v2", "export", "Unbenannt", "Schutzweste Kinder"],
)  # fmt: skip
def test_what_any_file_may_be_called_names_no_model(desk: Desk, name: str) -> None:
    said = chart(desk, desk.file(f"{name}.csv"))
    assert (said["model"], said["model_from"]) == (None, None)


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_list_of_files_says_so_too(tmp_path: Path, language: str) -> None:
    (tmp_path / "Windhauch.csv").write_text(CLEAN, encoding="utf-8")
    workspace = Workspace()
    workspace.take(Workspace.load([tmp_path]))
    said = Wording(language).say("faces", "name-of-file", name="Windhauch")
    assert file_rows(workspace, Words(language))[0].models == said
    assert list(names_of(workspace.charts()[0].charts[0], Wording(language))) == [said]


def test_a_note_of_the_shop_goes_before_a_guess(tmp_path: Path) -> None:
    (tmp_path / "Windhauch.csv").write_text(CLEAN, encoding="utf-8")
    (tmp_path / "models.toml").write_text(
        'format = 1\n[[model]]\nmodel = "Sturmhauch"\nfile = "Windhauch.csv"\n', encoding="utf-8"
    )
    workspace = Workspace()
    workspace.take(Workspace.load([tmp_path]))
    assert file_rows(workspace, Words("en"))[0].models == "Sturmhauch"
