"""The buyer's season, counted: what a person must do until every chart of a folder can be used.

An act is one thing done: a folder dropped, a question answered, a chart approved. The shop's own
price: a clean file two acts, the demo folder at most sixty, the second season by itself.
"""

from __future__ import annotations

import re
import shutil
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest

from charts.answers import Answer, Corrected
from charts.choices import alike, answers, choices, same_choice
from charts.findings import Finding
from charts.importer import read_bytes
from charts.resource_files import resources
from charts.schema import FileReading
from harmonizer.shop.season import State, open_questions
from harmonizer.shop.shop_folder import ShopFolder
from harmonizer.workspace import Workspace

DEMO = Path(str(resources())) / "demo" / "charts"
DAY = date(2027, 2, 11)
CLEAN = "Size;Chest (cm);Waist (cm)\nS;84-88;68-72\nM;89-93;73-77\nL;94-98;78-82\n"
REPAIRED: dict[str, tuple[tuple[str, str], ...]] = {
    # What the makers put right after last season's letters; everything else is as it was.
    "cobblestrake_hedgetarrow.csv": (("33 - 40 in (91-102 cm)", "33 - 40 in (84-102 cm)"),),
    "karstrieden_groessen_2027.csv": (("505", "50,5"),),
    "correo_airebruna.txt": (("12,5 cm", "102-111 cm"),),
}


class Buyer:
    """Somebody at the questions page, who counts what she does."""

    def __init__(self) -> None:
        self.workspace = Workspace()
        self.acts = 0

    def drop(self, path: Path) -> None:
        self.workspace.take(self.workspace.load([path], known=self.workspace.known()))
        self.acts += 1

    def reading(self, file: str) -> FileReading:
        return next(one for one in self.workspace.charts() if one.file == file)

    def answer_first(self, file: str, finding: Finding) -> None:
        """The first choice that is offered, for all equal questions at once."""
        reading = self.reading(file)
        chosen = choices(finding, reading)[0]
        given: list[Answer] = []
        for one in alike(finding, reading):
            same = chosen if one is finding else same_choice(chosen, one, reading)
            given += answers(same, one, "Ann", DAY) if same is not None else ()
        self.workspace.answer(file, given)
        self.acts += 1

    def approve(self, file: str) -> None:
        self.workspace.approve(file, "Ann", DAY)
        self.acts += 1

    def work_through(self) -> None:
        """Answer everything that is asked, then approve every file."""
        for file in [reading.file for reading in self.workspace.charts()]:
            for _ in range(40):
                asked = open_questions(self.reading(file))
                if not asked:
                    break
                self.answer_first(file, asked[0])
            assert open_questions(self.reading(file)) == []
            self.approve(file)

    def states(self) -> dict[str, State]:
        return {state.file: state.state for state in self.workspace.states()}


def test_a_clean_file_is_approved_in_two_acts(tmp_path: Path) -> None:
    (tmp_path / "chart.csv").write_text(CLEAN, encoding="utf-8")
    buyer = Buyer()
    buyer.drop(tmp_path / "chart.csv")
    assert buyer.states() == {"chart.csv": State.READY}
    buyer.approve("chart.csv")
    assert buyer.states() == {"chart.csv": State.APPROVED}
    assert buyer.acts == 2


def test_the_demo_folder_is_approved_in_at_most_sixty_acts() -> None:
    buyer = Buyer()
    buyer.drop(DEMO)
    buyer.work_through()
    assert set(buyer.states().values()) == {State.APPROVED}
    assert all(offer.open_questions == () for offer in buyer.workspace.offers)
    assert buyer.acts <= 60


def next_season(to: Path, repair: Callable[[Path], None]) -> Path:
    """The demo's files under next year's names, those without a year in next year's folder."""
    shutil.copytree(DEMO, to)
    for path in sorted(to.rglob("*")):
        if path.is_file() and path.suffix != ".toml":
            repair(path)
            named = path.name.replace("2027", "2028").replace("SS27", "SS28")
            folder = path.parent if named != path.name else path.parent / "2028"
            folder.mkdir(exist_ok=True)
            path.rename(folder / named)
    return to


def shift(text: str) -> str:
    """Every figure of a text table a little larger: a new cut, the same way of writing."""
    return re.sub(r"(?<=[;\t])(\d{2,4})(?=[;\t\r\n])", lambda m: str(int(m[1]) + 1), text)


def as_the_makers_repaired(path: Path) -> None:
    for old, new in REPAIRED.get(path.name, ()):
        data = path.read_bytes()
        assert old.encode() in data
        path.write_bytes(data.replace(old.encode(), new.encode()))
    if path.name == "guide_des_tailles.html":
        label_row_of_size_l(path)
    if path.name == "maattabel.md":
        turn_the_block_back(path)
    if path.name.startswith("Tarnwhistle"):
        exchange_unit_headings(path)
    if path.name.startswith("pinderlow"):
        another_waist(path)
    if path.suffix == ".tsv":
        path.write_text(shift(path.read_text(encoding="utf-8")), encoding="utf-8")


def label_row_of_size_l(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    labels = [match.start(1) for match in re.finditer(r"<t[hd][^>]*>\s*(M)\s*</t[hd]>", text)]
    assert len(labels) >= 2
    second = labels[1]
    path.write_text(text[:second] + "L" + text[second + 1 :], encoding="utf-8")


def turn_the_block_back(path: Path) -> None:
    reading = read_bytes(path.read_bytes(), path.name, path.parent.name)
    (asked,) = open_questions(reading)
    (cells,) = choices(asked, reading)[0].acts
    assert isinstance(cells, Corrected)
    lines = path.read_text(encoding="utf-8").split("\n")
    for cell in cells.cells:
        row, column = int(cell.place[-1]), ord(cell.place[-2]) - ord("A")
        table = [number for number, line in enumerate(lines) if line.startswith("|")]
        number = table[0] if row == 1 else table[row]
        parts = lines[number].split("|")
        assert parts[column + 1].strip() == cell.printed.replace("–", "-") or parts[column + 1]
        parts[column + 1] = f" {cell.text} "
        lines[number] = "|".join(parts)
    path.write_text("\n".join(lines), encoding="utf-8")


def exchange_unit_headings(path: Path) -> None:
    from openpyxl import load_workbook

    book = load_workbook(path)
    sheet = book["Gents"]
    sheet["D4"], sheet["E4"] = sheet["E4"].value, sheet["D4"].value
    book.save(path)


def another_waist(path: Path) -> None:
    from openpyxl import load_workbook

    book = load_workbook(path)
    assert book["Youth (in)"]["D4"].value == "22-25"
    book["Youth (in)"]["D4"] = "22-25 1/2"
    book.save(path)


@pytest.fixture
def experienced(tmp_path: Path) -> Buyer:
    """A shop after one season, its folder written and opened again by the next day's program."""
    first = Buyer()
    first.drop(DEMO)
    first.work_through()
    first.workspace.save_shop(ShopFolder(tmp_path / "shop"))
    second = Buyer()
    shop = second.workspace.open_shop(ShopFolder(tmp_path / "shop"))
    assert shop.refused == ()
    return second


def test_the_second_season_runs_by_itself(experienced: Buyer, tmp_path: Path) -> None:
    experienced.drop(next_season(tmp_path / "next", as_the_makers_repaired))
    departing = {
        reading.file
        for reading in experienced.workspace.charts()
        for finding in reading.findings
        if finding.code == "habit-departure"
    }
    assert departing == {"tarnwhistle/Tarnwhistle size guide SS28.xlsx"}  # headings exchanged
    assert len(experienced.states()) == 9
    for file, state in experienced.states().items():
        assert state is (State.READY if file in departing else State.APPROVED)
    assert all(offer.open_questions == () for offer in experienced.workspace.offers)
    assert experienced.acts == 1
    closed = [
        finding
        for reading in experienced.workspace.charts()
        for finding in reading.findings
        if finding.settled is not None
    ]
    assert {finding.code for finding in closed} == {"unit-missing", "label-mistyped", "was-a-date"}
    assert all(finding.settled and finding.settled.habit for finding in closed)


# A figure of the doubtful column, or of its neighbour, moved a little: another edition.
NUDGED = {
    "cobblestrake_hedgetarrow.csv": ("33 - 40 in (91-102 cm)", "33 - 40 in (92-102 cm)"),
    "karstrieden_groessen_2027.csv": ("505", "510"),
    "guide_des_tailles.html": ("86", "87"),
    "maattabel.md": ("84-90", "85-90"),
    "correo_airebruna.txt": ("12,5 cm", "12,6 cm"),
    "ljungvass_barn.tsv": ("60", "34"),
}


def nudged(path: Path) -> None:
    if path.name in NUDGED:
        old, new = NUDGED[path.name]
        data = path.read_bytes()
        assert old.encode() in data
        path.write_bytes(data.replace(old.encode(), new.encode(), 1))
    if path.suffix == ".xlsx":
        from openpyxl import load_workbook

        load_workbook(path).save(path)


def test_what_the_values_raise_is_asked_again_in_the_second_season(
    experienced: Buyer, tmp_path: Path
) -> None:
    experienced.drop(next_season(tmp_path / "next", nudged))
    asked = {
        (reading.file.partition("/")[0], finding.code)
        for reading in experienced.workspace.charts()
        for finding in open_questions(reading)
    }
    assert asked >= {
        ("cobblestrake", "units-disagree"),
        ("heidezwaan", "rotated"),
        ("karstrieden", "impossible"),
        ("tarnwhistle", "units-swapped"),
        ("vauclorne", "label-repeated"),
        ("ventarroya", "impossible"),
    }
    assert ("ljungvass", "impossible") in asked
    assert not {code for _, code in asked} & {"label-mistyped", "was-a-date"}


def test_last_years_files_dropped_again_need_nothing(experienced: Buyer) -> None:
    experienced.drop(DEMO)
    assert set(experienced.states().values()) == {State.APPROVED}
    assert experienced.acts == 1
