"""``harmonizer combine --out FILE.pdf``: the wall sheet without a screen."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from charts.writers.own_files import is_ours
from ui.__main__ import main
from ui.wall_sheet import headless
from ui.wall_sheet.editions_file import BOOK_NAME

CLEAN = "Size;Chest (cm);Waist (cm)\nS;84-92;68-76\nM;90-98;74-82\nL;96-104;80-90\n"
CHECKOUT = Path(__file__).resolve().parents[3]


@pytest.fixture
def book(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    path = tmp_path / "shop" / BOOK_NAME
    monkeypatch.setattr(headless, "book_file", lambda: path)
    return path


def combine(folder: Path, content: str = CLEAN, *more: str) -> int:
    source = folder / "vest.csv"
    source.write_text(content, encoding="utf-8")
    return main(["combine", str(source), "--out", str(folder / "wall.pdf"), *more])


@pytest.mark.usefixtures("application")
class TestTheWallSheet:
    def test_is_written_for_a_name_that_ends_in_pdf_and_counted(
        self, tmp_path: Path, book: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        assert combine(tmp_path) == 0
        assert is_ours(tmp_path / "wall.pdf")
        assert "no. 1" in capsys.readouterr().out
        assert "number = 1" in book.read_text(encoding="utf-8")

    def test_keeps_its_number_while_nothing_changes(
        self, tmp_path: Path, book: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        combine(tmp_path)
        combine(tmp_path, CLEAN, "--language", "de")
        assert "Nr. 1" in capsys.readouterr().out
        combine(tmp_path, CLEAN.replace("84-92", "83-92"))
        assert "no. 2" in capsys.readouterr().out
        assert book.read_text(encoding="utf-8").count("[[edition]]") == 2

    def test_is_refused_in_one_line_when_the_book_cannot_be_read(
        self, tmp_path: Path, book: Path, capsys: pytest.CaptureFixture[str]
    ) -> None:
        book.parent.mkdir()
        book.write_text("format = 7\n", encoding="utf-8")
        assert combine(tmp_path) == 2
        said = capsys.readouterr()
        assert said.out == ""
        assert said.err.count("\n") == 1
        assert BOOK_NAME in said.err
        assert not (tmp_path / "wall.pdf").exists()


def test_it_needs_no_screen_and_nothing_but_the_program(tmp_path: Path) -> None:
    """A run of its own, without a display and with the user's folders elsewhere."""
    (tmp_path / "vest.csv").write_text(CLEAN, encoding="utf-8")
    kept = {k: v for k, v in os.environ.items() if k not in {"DISPLAY", "QT_QPA_PLATFORM"}}
    home = str(tmp_path / "home")
    done = subprocess.run(
        [sys.executable, "-m", "ui", "combine", "vest.csv", "--out", "wall.pdf"],
        cwd=tmp_path,
        env=kept | {"PYTHONPATH": str(CHECKOUT), "HOME": home, "XDG_CONFIG_HOME": home},
        capture_output=True,
        text=True,
        check=False,
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert (tmp_path / "wall.pdf").read_bytes().startswith(b"%PDF")
    assert len(list(Path(home).rglob(BOOK_NAME))) == 1


def test_the_other_kinds_still_need_no_qt(tmp_path: Path) -> None:
    (tmp_path / "vest.csv").write_text(CLEAN, encoding="utf-8")
    code = (
        "import sys; from ui.__main__ import main;"
        "main(['combine', 'vest.csv', '--out', 'table.xlsx']);"
        "sys.exit(any(name.startswith('PySide6') for name in sys.modules))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code],
        cwd=tmp_path,
        env=os.environ | {"PYTHONPATH": str(CHECKOUT)},
        capture_output=True,
        check=False,
    )
    assert done.returncode == 0
