"""Letters and the shop's folder on the command line: what is written, and what is then known."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from charts.choices import answers, choices
from charts.wording import Wording
from harmonizer.shop.season import open_questions
from harmonizer.shop.shop_folder import ShopFolder
from harmonizer.workspace import Workspace
from ui.__main__ import main

DAY = date(2027, 2, 11)
CLEAN = "Size;Chest (cm);Waist (cm)\nS;84-88;68-72\nM;89-93;73-77\nL;94-98;78-82\n"
BARE = "Size;Chest;Waist\nS;60;56\nM;65;58\nL;70;62\n"


@pytest.fixture
def charts(tmp_path: Path) -> Path:
    for folder, text in (("north", BARE), ("south", CLEAN)):
        (tmp_path / "charts" / folder).mkdir(parents=True)
        (tmp_path / "charts" / folder / "chart.csv").write_text(text, encoding="utf-8")
    return tmp_path / "charts"


def run(capsys: pytest.CaptureFixture[str], *words: str | Path) -> tuple[int, str, str]:
    status = main([str(word) for word in words])
    printed = capsys.readouterr()
    return status, printed.out, printed.err


def shop_that_answered(charts: Path, folder: Path) -> None:
    workspace = Workspace()
    workspace.take(workspace.load([charts]))
    for reading in workspace.charts():
        for asked in open_questions(reading):
            chosen = choices(asked, reading)[0]
            workspace.answer(reading.file, answers(chosen, asked, "Ann", DAY))
        workspace.approve(reading.file, "Ann", DAY)
    workspace.save_shop(ShopFolder(folder))


@pytest.mark.parametrize("language", ["en", "de"])
def test_only_files_with_questions_get_a_letter(
    charts: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], language: str
) -> None:
    out = tmp_path / "letters"
    status, said, _ = run(capsys, "letter", charts, "--out", out, "--language", language)
    assert status == 1
    names = ["north-chart.csv.letter.html", "north-chart.csv.letter.txt"]
    assert sorted(path.name for path in out.iterdir()) == names
    assert sorted(Path(line).name for line in said.splitlines()) == names
    text = (out / names[1]).read_text(encoding="utf-8")
    assert Wording(language).say("letter", "greeting") in text


def test_letters_among_the_charts_are_not_read_as_charts(
    charts: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    run(capsys, "letter", charts, "--out", charts)
    assert len(list(charts.glob("*.letter.*"))) == 2
    assert len(Workspace.load([charts]).files) == 2


def test_nothing_open_writes_nothing_and_says_so(
    charts: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "letters"
    status, said, _ = run(capsys, "letter", charts / "south", "--out", out)
    assert (status, said) == (0, Wording().say("faces", "no-letters") + "\n")
    assert not out.exists()


def test_a_target_that_cannot_be_is_one_sentence(
    charts: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    status, said, complaint = run(capsys, "letter", charts, "--out", tmp_path / "no" / "folder")
    assert (status, said, len(complaint.splitlines())) == (2, "", 1)


@pytest.mark.parametrize("verb", ["read", "letter"])
def test_what_a_shop_answered_before_is_not_asked_again(
    charts: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str], verb: str
) -> None:
    shop_that_answered(charts, tmp_path / "shop")
    more = ("--out", str(tmp_path / "letters")) if verb == "letter" else ()
    assert run(capsys, verb, charts, *more)[0] == 1
    assert run(capsys, verb, charts, "--shop", tmp_path / "shop", *more)[0] == 0


def test_reading_with_a_shop_changes_nothing_in_it(
    charts: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    shop = tmp_path / "shop"
    shop_that_answered(charts, shop)
    before = {path: path.read_bytes() for path in shop.rglob("*.toml")}
    (charts / "north" / "chart.csv").write_text(BARE.replace("60", "61"), encoding="utf-8")
    run(capsys, "read", charts, "--shop", shop)
    assert {path: path.read_bytes() for path in shop.rglob("*.toml")} == before


def test_a_shop_that_is_not_there_or_newer_is_said(
    charts: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(capsys, "read", charts, "--shop", tmp_path / "none")[0] == 2
    shop = tmp_path / "shop"
    shop_that_answered(charts, shop)
    for path in (shop / "files").iterdir():
        path.write_text(path.read_text(encoding="utf-8").replace("format = 1", "format = 2"))
    status, _, complaint = run(capsys, "read", charts / "south", "--shop", shop)
    assert status == 0
    assert len(complaint.splitlines()) == 2
