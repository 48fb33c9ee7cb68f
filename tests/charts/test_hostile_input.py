"""Whatever a file holds: nothing raises, hangs, writes elsewhere or opens a connection.

Every file goes the whole way: taken apart, its inner files too, read into charts. The limits are
two seconds of work a file and 500 MB for all of them. ``test_how_many_files_are_tried`` counts.
"""

from __future__ import annotations

import os
import random
import shutil
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Final

import pytest
from openpyxl import load_workbook

from charts.findings import Level
from charts.schema import FileReading
from tests.charts.hostile import whole_way
from tests.charts.hostile.bombs import bombs
from tests.charts.hostile.huge import a_million_rows, deep, every_column, one_large_cell
from tests.charts.hostile.making import CHART, Files, letter, zipped
from tests.charts.hostile.pages import broken_pages, chart_page, pages
from tests.charts.hostile.reaching_out import reaching_out
from tests.charts.hostile.strange import nothing_much, strange_figures, strange_signs
from tests.charts.hostile.whole_way import readings

CHECKOUT: Final = Path(__file__).resolve().parents[2]
DATA: Final = CHECKOUT / "tests" / "data"
SECONDS: Final = 2.0
OPENINGS: Final = 500
MEGABYTES: Final = 500
NOWHERE: Final = "http://127.0.0.1:9/x"
TOLD_NOBODY: Final = "the words of another file"
ENDINGS: Final = (
    *("csv", "tsv", "txt", "md", "html", "xlsx", "xlsm", "xls", "ods", "odt", "docx", "pdf"),
    *("eml", "mht", "zip", "png", "jpg", "svg", "rtf", "json", "xml", "doc", "msg", ""),
)
MARKS: Final = (b"", b"PK\x03\x04", b"%PDF-1.4\n", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", b"<html>")
SEEDS: Final = 4
GROUPS: Final = {
    "bombs": bombs,
    "a million rows": a_million_rows,
    "every column": every_column,
    "one large cell": one_large_cell,
    "depth": deep,
    "signs": strange_signs,
    "figures": strange_figures,
    "nothing": nothing_much,
    "pages": lambda: pages(NOWHERE),
    "reaching out": lambda: reaching_out("/no/such/file", NOWHERE),
}
CUT: Final = {
    "book.xlsx": (DATA / "one_chart.xlsx").read_bytes,
    "chart.csv": CHART.encode,
    "page.html": (
        "<!DOCTYPE html><html><body><h2>Vest</h2><table><tr><th>Size<th>Chest (cm)</tr><tr><td>S"
        "<td>84-88</tr><tr><td>M<td>89-93</tr><tr><td>L<td>94-98</tr></table></body></html>"
    ).encode,
    "page.pdf": chart_page,
}
"""One of each kind, cut at every tenth byte."""
_watched: list[str] | None = None


def _watch(event: str, arguments: tuple[object, ...]) -> None:
    """Write down what a reader must never do; hooks of this kind cannot be taken away again."""
    if _watched is None:
        return
    writes = event == "open" and isinstance(arguments[1], str) and set(arguments[1]) & set("wax+")
    named = ("socket.connect", "socket.getaddrinfo", "subprocess.Popen", "os.system", "os.remove")
    if writes or event in (*named, "os.rename", "os.mkdir", "urllib.Request", "webbrowser.open"):
        _watched.append(f"{event} {arguments[:2]}")


sys.addaudithook(_watch)


@contextmanager
def nothing_done() -> Iterator[None]:
    """Nothing is written, started or connected meanwhile."""
    global _watched  # noqa: PLW0603 - a hook sees nothing else
    _watched = []
    try:
        yield
        assert _watched == []
    finally:
        _watched = None


def limit() -> float:
    """As long as openpyxl takes to open a small book 500 times, now: two seconds or less at a desk.

    Asked only for a file that took longer than two, and right after it: a machine that others use
    is slower at one time than at another.
    """
    spent = []
    for _ in range(5):
        before = time.thread_time()
        load_workbook(DATA / "one_chart.xlsx")
        spent.append(time.thread_time() - before)
    return OPENINGS * min(spent)


def held(name: str, data: bytes) -> list[FileReading]:
    """The readings of a file that took two seconds of work at most and did nothing else."""
    with nothing_done():
        before = time.thread_time()
        found = readings(name, data)
        spent = time.thread_time() - before
    assert spent < SECONDS or spent < limit(), f"{name}: {spent:.1f} s"
    assert all(one.charts or one.findings for one in found), name
    return found


def random_bytes() -> Files:
    for ending in ENDINGS:
        for seed in range(SEEDS):
            chance = random.Random(f"{ending} {seed}")  # noqa: S311 - nothing secret
            mark = MARKS[chance.randrange(len(MARKS))]
            yield f"random-{seed}.{ending}", mark + chance.randbytes(chance.randrange(20, 20_000))


def cut_files() -> Files:
    for name, whole in CUT.items():
        data = whole()
        for end in range(0, len(data), 10):
            yield name, data[:end]


def cut_wider() -> Files:
    """The other kinds, cut at forty places each."""
    whole = {name: (DATA / name).read_bytes() for name in ("formats.xls", "formats.ods")}
    whole |= {name: (DATA / name).read_bytes() for name in ("one_chart.docx", "one_chart.pdf")}
    whole["letter.eml"] = letter(("chart.csv", CHART.encode()))
    whole["charts.zip"] = zipped({"a.csv": CHART, "b.csv": CHART})
    for name, data in whole.items():
        for number in range(40):
            yield name, data[: len(data) * number // 40]


@pytest.fixture(scope="module")
def shelf(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Path]:
    """Every hostile file, made once: a folder for each group."""
    folder = tmp_path_factory.mktemp("hostile")
    for group, make in GROUPS.items():
        (folder / group).mkdir()
        for name, data in make():
            (folder / group / name).write_bytes(data)
    yield folder
    shutil.rmtree(folder)


@pytest.mark.parametrize("group", GROUPS)
def test_no_hostile_file_raises_hangs_or_goes_unsaid(shelf: Path, group: str) -> None:
    for path in sorted((shelf / group).iterdir()):
        held(path.name, path.read_bytes())


@pytest.mark.parametrize("make", [random_bytes, cut_files, cut_wider], ids=lambda one: one.__name__)
def test_no_damaged_file_raises_hangs_or_goes_unsaid(make: object) -> None:
    assert callable(make)
    for name, data in make():
        held(name, data)


@pytest.mark.parametrize(
    ("name", "code"),
    [
        ("swollen.zip", "too-large"),
        ("swollen.xlsx", "too-large"),
        ("swollen.docx", "too-large"),
        ("tags.ods", "too-large"),
        ("many.zip", "too-large"),
        ("nested.zip", "unreadable"),
        ("laughs.xlsx", "truncated"),
        ("laughs.docx", "truncated"),
        ("laughs.ods", "truncated"),
    ],
)
def test_a_bomb_is_refused_with_its_reason(shelf: Path, name: str, code: str) -> None:
    data = (shelf / "bombs" / name).read_bytes()
    codes = {finding.code for one in readings(name, data) for finding in one.findings}
    assert code in codes


@pytest.mark.parametrize(
    "name", ["content.pdf", "form.pdf", "twice.pdf", "escaped.pdf", "endless.pdf", "crowd.pdf"]
)
def test_a_page_that_swells_is_refused_with_its_reason(shelf: Path, name: str) -> None:
    (reading,) = readings(name, (shelf / "pages" / name).read_bytes())
    assert [one.code for one in reading.findings if one.level is Level.ERROR] == ["too-large"]


def test_a_swollen_file_in_an_archive_does_not_cost_the_others(shelf: Path) -> None:
    found = readings("swollen.zip", (shelf / "bombs" / "swollen.zip").read_bytes())
    assert {one.file: bool(one.charts) for one in found} == {
        "swollen.zip/big.csv": False,
        "swollen.zip/chart.csv": True,
    }


def test_no_file_is_fetched_and_no_address_is_called(tmp_path: Path) -> None:
    secret = tmp_path / "secret.txt"
    secret.write_text(TOLD_NOBODY, encoding="utf-8")
    with socket.create_server(("127.0.0.1", 0)) as server:
        server.settimeout(0.05)
        address = f"http://127.0.0.1:{server.getsockname()[1]}/x"
        said = [repr(held(*file)) for file in reaching_out(str(secret), address)]
        said += [repr(held(*file)) for file in broken_pages(address)]
        with pytest.raises(TimeoutError):
            server.accept()
    assert not any(TOLD_NOBODY in one for one in said)


def test_nothing_is_written_beside_the_files(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    inside = tmp_path / "a" / "b"
    inside.mkdir(parents=True)
    monkeypatch.chdir(inside)
    for name, data in reaching_out("/no/such/file", NOWHERE):
        held(name, data)
    assert sorted(tmp_path.rglob("*")) == [tmp_path / "a", inside]


def test_names_of_inner_files_never_lead_upwards() -> None:
    files = dict(reaching_out("/no/such/file", NOWHERE))
    for name in ("names.zip", "names.eml"):
        for one in readings(name, files[name]):
            parts = one.file.split("/")
            assert parts[0] == name
            assert ".." not in parts
            assert all(part.isprintable() for part in parts)


def test_formulas_without_values_are_said() -> None:
    for name, data in strange_figures():
        if name.startswith("lost"):
            (reading,) = readings(name, data)
            assert "formula-without-value" in [one.code for one in reading.findings], name


@pytest.mark.skipif(sys.platform == "win32", reason="the system does not tell a process's peak")
def test_memory_stays_below_half_a_gigabyte(shelf: Path) -> None:
    """Measured in a process of its own, in which no file is made."""
    done = subprocess.run(
        [sys.executable, str(Path(whole_way.__file__)), str(shelf)],
        cwd=CHECKOUT,
        env={**os.environ, "PYTHONPATH": str(CHECKOUT)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert float(done.stdout) < MEGABYTES


def test_how_many_files_are_tried(shelf: Path) -> None:
    counts = {group: len(list((shelf / group).iterdir())) for group in GROUPS}
    counts["random"] = sum(1 for _ in random_bytes())
    counts["cut"] = sum(1 for _ in cut_files()) + sum(1 for _ in cut_wider())
    assert sum(counts.values()) > 1_000, counts
