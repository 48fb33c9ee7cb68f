"""The product without a screen: what it prints where, its exit status, and never a traceback."""

from __future__ import annotations

import io
import json
import sys
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from ui import command_line
from ui.__main__ import main

CLEAN = (
    "Size;Chest (cm);Waist (cm);Hip (cm);Back length (cm)\n"
    "S;84-92;68-76;90-98;40-43\nM;90-98;74-82;96-104;42-45\nL;96-104;80-90;102-110;44-47\n"
)
DOUBTFUL = CLEAN.replace("Waist (cm)", "Wombat (cm)")
RIDER = (
    'format = 1\nname = "Rider 7"\ntaken_by = "fitter"\n[readings]\nchest = "93 cm"\n'
    'waist = "80 cm"\nhip = "101 cm"\nback_length = "45 cm"\n'
)


@dataclass(frozen=True)
class Ran:
    """One run: its exit status and what it printed."""

    status: int
    out: str
    err: str

    @property
    def document(self) -> dict[str, Any]:
        return json.loads(self.out)


class Desk:
    """A folder of files and a way to give commands on them."""

    def __init__(self, folder: Path, capture: pytest.CaptureFixture[str]) -> None:
        self.folder = folder
        self.capture = capture

    def file(self, name: str, content: str | bytes = CLEAN) -> str:
        path = self.folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return str(path)

    def run(self, *words: str) -> Ran:
        status = main(words)
        printed = self.capture.readouterr()
        assert "Traceback" not in printed.out + printed.err
        return Ran(status, printed.out, printed.err)


@pytest.fixture
def desk(tmp_path: Path, capfd: pytest.CaptureFixture[str]) -> Desk:
    return Desk(tmp_path, capfd)


def one_line(ran: Ran, *parts: str) -> None:
    """Standard output is empty, standard error is one line that names all ``parts``."""
    assert ran.out == ""
    assert ran.err.count("\n") == 1
    for part in parts:
        assert part in ran.err


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


# fit


def test_a_rider_is_compared_with_every_size_best_first(desk: Desk) -> None:
    rider = desk.file("r.toml", RIDER)
    ran = desk.run("fit", "--rider", rider, desk.file("a.csv"), "--json")
    assert (ran.status, ran.err) == (0, "")
    assert [row["size"] for row in ran.document["rows"]] == ["M", "S", "L"]
    assert ran.document["rider"]["name"] == "Rider 7"


def test_the_report_gives_words_margin_reasons_and_cautions(desk: Desk) -> None:
    ran = desk.run("fit", "--rider", desk.file("r.toml", RIDER), desk.file("a.csv"))
    assert "girths fit" in ran.out
    assert "Back length 0 left" in ran.out
    assert "Chest 93 cm lies in 90 to 98" in ran.out
    assert "No vest prevents all injuries" in ran.out


def test_nothing_that_fits_makes_status_1(desk: Desk) -> None:
    far = RIDER.replace("93 cm", "140 cm")
    ran = desk.run("fit", "--rider", desk.file("r.toml", far), desk.file("a.csv"), "--json")
    assert ran.status == 1
    assert len(ran.document["rows"]) == 3


def test_an_open_question_in_the_charts_makes_status_1_and_is_told(desk: Desk) -> None:
    ran = desk.run("fit", "--rider", desk.file("r.toml", RIDER), desk.file("a.csv", DOUBTFUL))
    assert ran.status == 1
    assert "One question is open" in ran.err


@pytest.mark.parametrize(
    ("old", "new", "line", "reason"),
    [
        ('waist = "80 cm"', 'waist = "eighty"', "line 6", "eighty"),
        ('waist = "80 cm"', 'waist = "80"', "line 6", "unit"),
        ('waist = "80 cm"', 'waist = "80 kg"', "line 6", "kg"),
        ('waist = "80 cm"', 'wiast = "80 cm"', "line 6", "wiast"),
        ('waist = "80 cm"', 'waist = "80 cm', "line 6", ""),
        ("format = 1", "format = 2", "line 1", ""),
    ],
)
def test_an_impossible_rider_file_is_one_line_with_its_line_and_reason(
    desk: Desk, old: str, new: str, line: str, reason: str
) -> None:
    rider = desk.file("r.toml", RIDER.replace(old, new))
    ran = desk.run("fit", "--rider", rider, desk.file("a.csv"))
    assert ran.status == 2
    one_line(ran, "r.toml", line, reason)


@pytest.mark.parametrize("content", [b"\x89PNG\r\n\x1a\n\xff", b"\xff\xfe\x00\x01"])
def test_a_rider_file_that_is_no_text_is_one_line(desk: Desk, content: bytes) -> None:
    ran = desk.run("fit", "--rider", desk.file("r.toml", content), desk.file("a.csv"))
    assert ran.status == 2
    one_line(ran, "r.toml")


def test_a_rider_file_that_is_not_there_is_one_line(desk: Desk) -> None:
    ran = desk.run("fit", "--rider", str(desk.folder / "no.toml"), desk.file("a.csv"))
    assert ran.status == 2
    one_line(ran, "no.toml")


def test_files_that_could_not_be_read_are_told_beside_the_result(desk: Desk) -> None:
    rider = desk.file("out/r.toml", RIDER)
    desk.file("in/a.csv")
    desk.file("in/b.xlsx", b"PK\x03\x04 half a workbook")
    ran = desk.run("fit", "--rider", rider, str(desk.folder / "in"), "--json")
    assert ran.status == 1
    assert len(ran.document["rows"]) == 3
    assert "b.xlsx" in ran.err


def test_sizes_that_do_not_fit_are_folded_unless_all_are_asked_for(desk: Desk) -> None:
    words = "fit", "--rider", desk.file("r.toml", RIDER.replace("93", "140")), desk.file("a.csv")
    assert "2 more sizes are not listed" in desk.run(*words).out
    assert "not listed" not in desk.run(*words, "--all").out


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


# everything


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
