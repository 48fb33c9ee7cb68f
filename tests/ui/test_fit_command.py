"""The verb fit at a terminal: what it prints where, its exit status, what it says of bad input."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.ui.command_desk import DOUBTFUL, RIDER, Desk, one_line


@pytest.fixture
def desk(tmp_path: Path, capfd: pytest.CaptureFixture[str]) -> Desk:
    return Desk(tmp_path, capfd)


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


def test_a_reading_that_looks_like_another_unit_is_asked_about(desk: Desk) -> None:
    slipped = RIDER.replace("93 cm", "36 cm")
    ran = desk.run("fit", "--rider", desk.file("r.toml", slipped), desk.file("a.csv"))
    (asked,) = (row for row in ran.out.splitlines() if "Question." in row and "36" in row)
    assert "inches" in asked


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
