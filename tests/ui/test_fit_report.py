"""The answer about one rider at a terminal: short, nothing dangerous left out, whole when asked."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from charts.resource_files import resources
from harmonizer.fit_sheet import FitSheet
from harmonizer.rider import Needs
from harmonizer.rider_file import read_rider
from harmonizer.workspace import Workspace
from ui.fit_report import fit_report
from ui.words import Words

DEMO = resources() / "demo"


@pytest.fixture(scope="module")
def shop() -> Workspace:
    workspace = Workspace()
    workspace.take(workspace.load([DEMO / "charts"]))
    return workspace


def sheet_of(shop: Workspace, number: int) -> FitSheet:
    path = Path(DEMO / "riders" / f"rider-{number:02}.toml")
    return shop.fit(read_rider(path.read_text(encoding="utf-8"), path.stem))


def rows_told(lines: list[str]) -> list[str]:
    """Lines of rows: two spaces in, columns two spaces apart."""
    return [line for line in lines if line.startswith("  ") and line[2] != " " and "  " in line[2:]]


def test_every_model_is_told_whatever_becomes_of_it(shop: Workspace) -> None:
    for number in range(1, 13):
        sheet = sheet_of(shop, number)
        told = "\n".join(rows_told(fit_report(sheet, Words("en"), 100)))
        for row in sheet.rows:
            assert row.offer.model in told


def test_a_model_without_a_size_that_serves_has_one_line(shop: Workspace) -> None:
    lines = rows_told(fit_report(sheet_of(shop, 1), Words("en"), 100))
    (small,) = [line for line in lines if "Pipwhirr" in line]
    assert "Hip tight 1.5" in small  # XL, the nearest of its sizes


def test_what_is_folded_is_counted(shop: Workspace) -> None:
    sheet = sheet_of(shop, 1)
    lines = fit_report(sheet, Words("en"), 100)
    folded = sum(int(line.split()[0].replace("One", "1")) for line in lines if "--all" in line)
    assert len(rows_told(lines)) + folded == len(sheet.rows)


def test_every_size_stands_in_a_line_when_asked(shop: Workspace) -> None:
    sheet = sheet_of(shop, 1)
    lines = fit_report(sheet, Words("en"), 100, every_size=True)
    assert len(rows_told(lines)) == len(sheet.rows)
    assert "--all" not in "\n".join(lines)


def test_no_band_is_told_twice(shop: Workspace) -> None:
    heads = [line for line in fit_report(sheet_of(shop, 1), Words("en"), 100) if " · " in line]
    bands = [line.split(" · ")[0] for line in heads if not line.startswith(" ")]
    assert len(bands) == len(set(bands))


def test_a_stop_is_told_for_a_model_whose_other_sizes_serve(tmp_path: Path) -> None:
    (tmp_path / "a.csv").write_text(
        "Size;Chest (cm);Waist (cm);Hip (cm);Back length (cm)\n"
        "M;90-98;74-82;96-104;42-45\nL;96-104;80-90;102-110;44-47\n"
    )
    (tmp_path / "models.toml").write_text(
        'format = 1\n[[model]]\nsupplier = "Hollinbeck"\nmodel = "Quern"\nfile = "a.csv"\n'
        'out_of_stock = ["L"]\n'
    )
    workspace = Workspace()
    workspace.take(workspace.load([tmp_path]))
    text = 'format = 1\nname = "R"\n[readings]\nchest = "93 cm"\nwaist = "78 cm"\n'
    rider = replace(read_rider(text, "r"), needs=Needs(in_stock=True))
    told = rows_told(fit_report(workspace.fit(rider), Words("en"), 100))
    assert [("not in stock" in line, " L " in line) for line in told] == [
        (False, False),
        (True, True),
    ]


def test_a_model_that_serves_is_not_told_again_below(shop: Workspace) -> None:
    lines = rows_told(fit_report(sheet_of(shop, 1), Words("en"), 100))
    assert sum("Fellgarrow W" in line for line in lines) == 1


def test_a_rider_without_readings_is_told_so(shop: Workspace) -> None:
    sheet = shop.fit(read_rider('format = 1\nname = "R"\n', "r"))
    assert "no readings yet" in fit_report(sheet, Words("en"), 100)[1]


def test_a_missing_back_length_is_told_once(shop: Workspace) -> None:
    said = "\n".join(fit_report(sheet_of(shop, 11), Words("en"), 100))
    assert said.count("Back was not given") == 1


def test_what_could_not_be_compared_has_a_heading_of_its_own_and_a_reason(shop: Workspace) -> None:
    rider = sheet_of(shop, 1).rider
    bare = replace(rider, readings=tuple(one for one in rider.readings if one.measure == "hip"))
    lines = fit_report(shop.fit(bare), Words("en"), 200)
    heading = next(at for at, line in enumerate(lines) if line.startswith("Not compared"))
    assert "measure chest or waist" in lines[heading + 1]
    for line in lines[lines.index(next(one for one in lines if one.startswith("Do not fit"))) :]:
        assert "measure chest or waist" not in line
