"""One rider in a shop's own terms: its figures, and what it keeps of the rider from last time."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from charts.wording import LANGUAGES
from harmonizer.offers import model_key
from harmonizer.outcomes import choice_of
from harmonizer.rider_file import read_rider
from harmonizer.settings import DEFAULTS
from harmonizer.settings_file import write_settings
from harmonizer.shop.shop_folder import ShopFolder
from harmonizer.workspace import Workspace
from tests.ui.command_desk import RIDER, Desk, one_line

SUMMER = date(2026, 8, 3)
EARLIER = RIDER.replace("93 cm", "86 cm").replace("45 cm", "44.5 cm")


@pytest.fixture
def desk(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Desk:
    return Desk(tmp_path, capsys)


def shop_of(desk: Desk, settings: str = "", earlier: str = "") -> str:
    """A shop's folder with figures of its own and a rider measured last summer."""
    folder = desk.folder / "shop"
    folder.mkdir()
    if settings:
        (folder / "settings.toml").write_text(settings, encoding="utf-8")
    if earlier:
        workspace = Workspace()
        workspace.keep_rider(read_rider(earlier, "rider"), SUMMER)
        workspace.save_shop(ShopFolder(folder))
    return str(folder)


def test_the_shops_figures_decide_and_are_named(desk: Desk) -> None:
    own = replace(DEFAULTS, edge_band=0.5, clear_factor=0.5)
    shop = shop_of(desk, write_settings(own))
    rider = desk.file("rider.toml", RIDER.replace("45 cm", "43 cm"))
    chart = desk.file("chart.csv")
    plain = desk.run("fit", "--rider", rider, chart, "--json").document
    ours = desk.run("fit", "--rider", rider, chart, "--shop", shop, "--json").document
    assert "settings" not in plain
    assert ours["settings"] == {
        "edge_band": {"value": 0.5, "default": 1.0, "unit": "cm"},
        "clear_factor": {"value": 0.5, "default": 1.645, "unit": "standard deviations"},
    }
    lengths = [document["rows"][0]["length_verdict"] for document in (plain, ours)]
    backs = [document["rows"][0]["dimensions"]["back_length"] for document in (plain, ours)]
    assert [back["lower_margin"] for back in backs] == [1.0, 1.0]
    assert lengths == ["check", "clear"]  # 1.0 over the end: under 1.645 and over 0.5 of u 1.0


def test_a_person_reads_which_figures_are_the_shops_own(desk: Desk) -> None:
    shop = shop_of(desk, write_settings(replace(DEFAULTS, edge_band=0.5)))
    rider, chart = desk.file("rider.toml", RIDER), desk.file("chart.csv")
    said = "The shop's own figures in force: Edge band 0.5 cm."
    assert said in desk.run("fit", "--rider", rider, chart, "--shop", shop).out
    assert said not in desk.run("fit", "--rider", rider, chart).out


@pytest.mark.parametrize(
    ("settings", "parts"),
    [("format = 1\nedge_band = -1\n", ("line 2",)), ("format =", ("line 1",))],
)
def test_figures_that_cannot_be_used_stop_the_comparison(
    desk: Desk, settings: str, parts: tuple[str, ...]
) -> None:
    shop = shop_of(desk, settings)
    rider, chart = desk.file("rider.toml", RIDER), desk.file("chart.csv")
    for language in LANGUAGES:
        ran = desk.run("fit", "--rider", rider, chart, "--shop", shop, "--language", language)
        assert ran.status == 2
        one_line(ran, "settings.toml", *(parts if language == "en" else ()))
    assert desk.run("read", chart, "--shop", shop).status == 0


def test_figures_in_another_encoding_stop_it_too(desk: Desk) -> None:
    shop = shop_of(desk)
    (Path(shop) / "settings.toml").write_bytes(b"format = 1 # \xff\n")
    rider, chart = desk.file("rider.toml", RIDER), desk.file("chart.csv")
    one_line(desk.run("fit", "--rider", rider, chart, "--shop", shop), "settings.toml")


def test_a_change_since_last_time_is_asked_about(desk: Desk) -> None:
    shop = shop_of(desk, earlier=EARLIER)
    rider, chart = desk.file("rider.toml", RIDER), desk.file("chart.csv")
    ran = desk.run("fit", "--rider", rider, chart, "--shop", shop, "--json")
    (asked,) = ran.document["rider"]["questions"]
    assert (asked["dimensions"], asked["code"], asked["level"], asked["other"]) == (
        ["chest"],
        "changed-since",
        "ask",
        86.0,
    )
    assert asked["text"] == "Chest was 86 cm on 3 Aug 2026 and is 93 cm now: is that right?"
    assert asked["text"] in ran.err
    spoken = " ".join(desk.run("fit", "--rider", rider, chart, "--shop", shop).out.split())
    assert asked["text"] in spoken
    plain = desk.run("fit", "--rider", rider, chart, "--json")
    assert plain.document["rider"]["questions"] == []
    assert plain.err == ""


def test_another_riders_past_is_not_asked_about(desk: Desk) -> None:
    shop = shop_of(desk, earlier=EARLIER.replace("Rider 7", "Rider 8"))
    rider, chart = desk.file("rider.toml", RIDER), desk.file("chart.csv")
    ran = desk.run("fit", "--rider", rider, chart, "--shop", shop, "--json")
    assert ran.document["rider"]["questions"] == []


def test_an_earlier_visit_in_the_riders_own_file_needs_no_shop(desk: Desk) -> None:
    file = "format = 1\nname = 'R'\ntaken_by = 'fitter'\n"
    for back, on in (("40 cm", "2026-08-03"), ("45 cm", "2027-02-11")):
        file += f"[[reading]]\ndimension = 'back_length'\ntext = '{back}'\non = {on}\n"
    rider, chart = desk.file("rider.toml", file), desk.file("chart.csv")
    document = desk.run("fit", "--rider", rider, chart, "--json").document
    assert [one["value"] for one in document["rider"]["readings"]] == [45.0]
    assert [(one["value"], one["on"]) for one in document["rider"]["earlier"]] == [
        (40.0, "2026-08-03")
    ]
    assert [one["code"] for one in document["rider"]["questions"]] == ["changed-since"]


def test_comparing_writes_nothing_into_the_shop(desk: Desk) -> None:
    shop = shop_of(desk, write_settings(DEFAULTS), EARLIER)
    before = {path: path.read_bytes() for path in Path(shop).rglob("*") if path.is_file()}
    desk.run(
        "fit", "--rider", desk.file("rider.toml", RIDER), desk.file("chart.csv"), "--shop", shop
    )
    after = {path: path.read_bytes() for path in Path(shop).rglob("*") if path.is_file()}
    assert after == before


def test_the_shops_own_experience_is_said_in_text_and_alters_no_row(desk: Desk) -> None:
    """By hand: 4 of 12 one size up, 6 cm: mean 2.0 -> 1.50."""
    rider, chart = desk.file("rider.toml", RIDER), desk.file("chart.csv")
    plain = desk.run("fit", "--rider", rider, chart)
    shop = desk.folder / "shop"
    workspace = Workspace()
    workspace.take(Workspace.load([Path(chart)]))
    sheet = workspace.fit(read_rider(RIDER, "rider"))
    choice = choice_of(sheet, model_key(sheet.rows[0].offer))
    first = sheet.rows[0].offer.size
    up = {"S": "M", "M": "L"}[first]
    for size in [first] * 8 + [up] * 4:
        outcome = choice.outcome(size, SUMMER)
        assert outcome is not None
        workspace.keep_fitting(outcome)
    workspace.save_shop(ShopFolder(shop))
    ours = desk.run("fit", "--rider", rider, chart, "--shop", str(shop))
    note = "came out 1.5 smaller than its chart, 12 fittings"
    assert note in ours.out
    assert note not in plain.out
    assert ours.out.replace(note, "").split() == plain.out.split()
    both = [
        desk.run("fit", "--rider", rider, chart, "--json", *more).document
        for more in ((), ("--shop", str(shop)))
    ]
    assert both[0] == both[1]
