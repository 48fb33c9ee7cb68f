"""The product without a screen: what it prints where, its exit status, and never a traceback."""

from __future__ import annotations

import io
import json
import sys
from collections.abc import Callable, Sequence
from pathlib import Path

import pytest

from tests.ui.command_desk import CLEAN, DOUBTFUL, Desk, Ran, one_line
from ui import command_line
from ui.__main__ import main


@pytest.fixture
def desk(tmp_path: Path, capfd: pytest.CaptureFixture[str]) -> Desk:
    return Desk(tmp_path, capfd)


# read


def test_a_clean_chart_is_read_with_status_0(desk: Desk) -> None:
    ran = desk.run("read", desk.file("a.csv"), "--json")
    assert (ran.status, ran.err) == (0, "")
    (file,) = ran.document["files"]
    assert (ran.document["format"], file["file"]) == (1, "a.csv")
    assert [size["label"] for size in file["charts"][0]["sizes"]] == ["S", "M", "L"]


def test_an_open_question_makes_status_1(desk: Desk) -> None:
    assert desk.run("read", desk.file("a.csv", DOUBTFUL)).status == 1


def test_the_report_shows_the_chart_the_question_and_what_to_do(desk: Desk) -> None:
    ran = desk.run("read", desk.file("a.csv", DOUBTFUL))
    assert "84–92" in ran.out
    assert "Wombat" in ran.out
    assert "Ask the maker what this column measures." in ran.out
    assert "questions 1" in ran.out


def test_the_report_speaks_german_when_asked(desk: Desk) -> None:
    ran = desk.run("read", desk.file("a.csv", DOUBTFUL), "--language", "de")
    assert "Den Hersteller fragen" in ran.out


def test_one_broken_file_in_a_folder_is_listed_and_the_rest_is_read(desk: Desk) -> None:
    desk.file("a.csv")
    desk.file("b.xlsx", b"PK\x03\x04 half a workbook")
    ran = desk.run("read", str(desk.folder), "--json")
    assert ran.status == 1
    whole, broken = ran.document["files"]
    assert len(whole["charts"][0]["sizes"]) == 3
    assert [finding["level"] for finding in broken["findings"]] == ["error"]


def test_a_single_broken_file_makes_status_2_and_one_line(desk: Desk) -> None:
    ran = desk.run("read", desk.file("b.xlsx", b"PK\x03\x04 half a workbook"))
    assert ran.status == 2
    one_line(ran, "b.xlsx")


def test_a_folder_with_nothing_but_a_broken_file_makes_status_1(desk: Desk) -> None:
    desk.file("b.xlsx", b"")
    ran = desk.run("read", str(desk.folder))
    assert ran.status == 1
    assert "b.xlsx" in ran.out


def test_a_broken_file_named_beside_a_good_one_does_not_stop_it(desk: Desk) -> None:
    ran = desk.run("read", desk.file("b.xlsx", b""), desk.file("a.csv"))
    assert ran.status == 1
    assert "84–92" in ran.out


def test_a_source_that_is_not_there_makes_status_2_and_one_line(desk: Desk) -> None:
    ran = desk.run("read", str(desk.folder / "gone.csv"), "--json")
    assert ran.status == 2
    one_line(ran, "gone.csv")


def test_a_folder_without_a_file_makes_status_2_and_one_line(desk: Desk) -> None:
    ran = desk.run("read", str(desk.folder))
    assert ran.status == 2
    one_line(ran, str(desk.folder))


def test_the_one_line_about_a_file_names_it_once(desk: Desk) -> None:
    ran = desk.run("read", desk.file("photo.xlsx", b"\x89PNG\r\n\x1a\n" + bytes(100)))
    assert ran.err.count("photo.xlsx") == 1


def test_pasted_text_comes_from_standard_input(desk: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
    typed = io.TextIOWrapper(io.BytesIO(CLEAN.replace(";", "\t").encode()))
    monkeypatch.setattr(sys, "stdin", typed)
    ran = desk.run("read", "-", "--json")
    assert [file["file"] for file in ran.document["files"]] == ["-"]
    assert len(ran.document["files"][0]["charts"][0]["sizes"]) == 3


# combine


@pytest.mark.parametrize("ending", ["xlsx", "csv", "tsv", "html"])
def test_the_ending_of_the_target_decides_the_kind(desk: Desk, ending: str) -> None:
    out = desk.folder / f"chart.{ending}"
    ran = desk.run("combine", desk.file("a.csv"), "--out", str(out))
    assert ran.status == 0
    assert out.stat().st_size > 500


@pytest.mark.parametrize(
    ("target", "said"),
    [
        ("chart.doc", ".pdf"),
        ("chart", ".xlsx"),
        ("no/chart.xlsx", "folder"),
    ],
)
def test_a_target_that_cannot_be_written_is_one_line(desk: Desk, target: str, said: str) -> None:
    ran = desk.run("combine", desk.file("a.csv"), "--out", str(desk.folder / target))
    assert ran.status == 2
    one_line(ran, target, said)


def test_a_suppliers_file_is_not_written_over(desk: Desk) -> None:
    source = desk.file("a.csv")
    ran = desk.run("combine", source, "--out", source)
    assert ran.status == 2
    one_line(ran, "a.csv")
    assert Path(source).read_text(encoding="utf-8") == CLEAN


def test_combining_twice_in_the_suppliers_folder_does_not_read_its_own_chart(
    desk: Desk,
) -> None:
    desk.file("a.csv")
    out = desk.folder / "chart.csv"
    desk.run("combine", str(desk.folder), "--out", str(out))
    first = out.read_bytes()
    ran = desk.run("combine", str(desk.folder), "--out", str(out))
    assert ran.status == 0
    assert out.read_bytes() == first


# letter


def test_letters_are_not_written_over_a_file(desk: Desk) -> None:
    ran = desk.run("letter", desk.file("a.csv", DOUBTFUL), "--out", desk.file("b.csv"))
    assert ran.status == 2
    one_line(ran, "b.csv is a file; name a folder.")
    assert (desk.folder / "b.csv").read_text() == CLEAN


# everything


def test_a_closed_standard_output_is_no_fault_of_ours(
    desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys, "stdout", None)
    ran = desk.run("read", desk.file("a.csv"))
    sys.stdout.close()  # the nothing that was opened in its place
    assert ran == Ran(0, "", "")


@pytest.mark.parametrize("words", [("--help",), ("fit", "--help"), ("-h", "--language", "de")])
def test_help_names_every_verb(desk: Desk, words: Sequence[str]) -> None:
    ran = desk.run(*words)
    assert ran.status == 0
    for verb in ("read", "fit", "combine", "demo"):
        assert f"harmonizer {verb}" in ran.out


def test_a_command_nobody_understands_is_one_line(desk: Desk) -> None:
    ran = desk.run("raed", "a.csv")
    assert ran.status == 2
    one_line(ran, "raed")


def test_json_is_utf_8_on_any_code_page(desk: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
    raw = io.BytesIO()
    monkeypatch.setattr(sys, "stdout", io.TextIOWrapper(raw, encoding="cp1252"))
    main(["read", desk.file("Größen 胸围.csv"), "--json"])
    sys.stdout.flush()
    document = json.loads(raw.getvalue().decode("utf-8"))
    assert [file["file"] for file in document["files"]] == ["Größen 胸围.csv"]


def test_the_report_can_be_printed_on_any_code_page(
    desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    raw = io.BytesIO()
    monkeypatch.setattr(sys, "stdout", io.TextIOWrapper(raw, encoding="ascii"))
    main(["read", desk.file("Größen 胸围.csv")])
    sys.stdout.flush()
    assert b"84-92" in raw.getvalue()


def failing(kind: type[BaseException]) -> Callable[..., int]:
    def fails(*_: object) -> int:
        raise kind("planted")

    return fails


def test_a_fault_of_our_own_is_one_line_and_is_written_down(
    desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("TMPDIR", str(desk.folder))
    monkeypatch.setattr("tempfile.tempdir", None)
    monkeypatch.setattr(command_line, "run", failing(ZeroDivisionError))
    ran = desk.run("read", desk.file("a.csv"))
    assert ran.status == 2
    one_line(ran, "harmonizer-fault-")
    (written,) = desk.folder.glob("harmonizer-fault-*.txt")
    assert "ZeroDivisionError: planted" in written.read_text(encoding="utf-8")


def test_a_system_that_refuses_is_one_line(desk: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(command_line, "run", failing(OSError))
    ran = desk.run("read", desk.file("a.csv"))
    assert ran.status == 2
    one_line(ran, "planted")


def test_whoever_stops_listening_is_no_fault(desk: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(command_line, "run", failing(BrokenPipeError))
    monkeypatch.setattr("os.dup2", lambda *_: None)
    assert desk.run("read", desk.file("a.csv")) == Ran(0, "", "")


def test_stopping_by_hand_is_one_line(desk: Desk, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(command_line, "run", failing(KeyboardInterrupt))
    ran = desk.run("read", desk.file("a.csv"))
    assert ran.status == 130
    one_line(ran, "Stopped.")
