"""A drop of files in one look: how many are in which state, and which charts came twice."""

from __future__ import annotations

from pathlib import Path

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from charts.wording import LANGUAGES, Wording
from harmonizer.shop.drop_summary import same_charts, summary_of
from harmonizer.shop.season import State
from harmonizer.workspace import Workspace

CM = "Size;Chest (cm);Waist (cm)\nS;84-88;68-72\nM;89-93;73-77\nL;94-98;78-82\n"
INCHES = "Size;Chest (in);Waist (in)\nS;33-34½;27-28½\nM;35-36½;28½-30½\nL;37-38½;30½-32½\n"


def reading(text: str, name: str, folder: str = "north") -> FileReading:
    return read_bytes(text.encode(), f"{folder}/{name}", folder)


def test_a_chart_that_came_twice_with_the_same_figures_is_said() -> None:
    (same,) = same_charts([reading(CM, "a.csv"), reading(CM, "b.csv")])
    assert (same.first.file, same.second.file, same.differing) == ("north/a.csv", "north/b.csv", 0)


def test_two_editions_that_differ_name_the_places() -> None:
    (same,) = same_charts([reading(CM, "a.csv"), reading(CM.replace("89-93", "89-94"), "b.csv")])
    assert (same.differing, same.places) == (1, ("B3",))


def test_the_same_chart_in_the_other_unit_is_the_same_chart() -> None:
    (same,) = same_charts([reading(CM, "a.csv"), reading(INCHES, "b.csv")])
    assert same.differing == 0


@pytest.mark.parametrize(
    "other",
    [
        CM.replace("L;", "XL;"),
        CM.replace("Waist", "Hip"),
        CM.replace("84-88", "64-68").replace("89-93", "69-73").replace("94-98", "74-78")
        .replace("68-72", "58-62").replace("73-77", "63-67"),
    ],
)  # fmt: skip
def test_another_chart_is_not_the_same(other: str) -> None:
    assert same_charts([reading(CM, "a.csv"), reading(other, "b.csv")]) == ()


def test_charts_for_women_and_for_men_are_two() -> None:
    women, men = (reading(f"{who}\n\n{CM}", f"{who}.csv") for who in ("Women", "Men"))
    assert same_charts([women, men]) == ()


def test_charts_of_two_suppliers_are_two() -> None:
    assert same_charts([reading(CM, "a.csv"), reading(CM, "a.csv", "south")]) == ()


def test_a_folder_is_summed_up_by_state(tmp_path: Path) -> None:
    texts = {
        "ready.csv": CM,
        "asked.csv": CM.replace("(cm)", "").replace("S;84", "S;60"),
        "letter.txt": "Dear buyer, thank you for your order.",
        "broken.xlsx": "no workbook at all",
    }
    for name, text in texts.items():
        (tmp_path / name).write_text(text, encoding="utf-8")
    workspace = Workspace()
    loaded = workspace.load([tmp_path])
    summary = summary_of(loaded)
    assert (summary.files, summary.unchanged) == (4, 0)
    assert summary.states[State.READY] == 1
    assert summary.states[State.QUESTIONS] >= 1
    assert sum(summary.states.values()) == 4
    for language in LANGUAGES:
        assert len(summary.say(Wording(language))) == len(summary.states) + len(summary.twice)


def test_what_did_not_change_is_not_read_again(tmp_path: Path) -> None:
    path = tmp_path / "a.csv"
    path.write_text(CM, encoding="utf-8")
    (tmp_path / "b.csv").write_text(INCHES, encoding="utf-8")
    workspace = Workspace()
    workspace.take(workspace.load([tmp_path]))
    path.write_text(CM.replace("89-93", "90-94"), encoding="utf-8")
    again = workspace.load([tmp_path], known=workspace.known())
    assert again.unchanged == {"b.csv"}
    held = {file.reading.file: file.reading for file in workspace.files}
    fresh = {file.reading.file: file.reading for file in again.files}
    assert fresh["b.csv"] is held["b.csv"]
    assert fresh["a.csv"] != held["a.csv"]
    assert summary_of(again).unchanged == 1
