"""The one door: what is taken, how it is undone, who is told, and what it refuses to overwrite."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from charts.sources import Cancelled
from charts.wording import Wording
from charts.writers.whole_file import NotWrittenError
from harmonizer.rider import Measure, Reading, Rider
from harmonizer.workspace import Workspace

CHART = "Size;Chest (cm);Waist (cm)\nS;84-88;68-72\nM;89-93;73-77\nL;94-98;78-82\n"
NOTES = 'format = 1\n[[model]]\nmodel = "Fellrunner"\nsupplier = "Tarnwhistle"\nfile = "a.csv"\n'
DAY = date(2027, 2, 12)
RIDER = Rider("Rider 7", (Reading(Measure.CHEST, Decimal(91)),))


class Shop:
    """A workspace, a folder of files, and everything that was announced."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.workspace = Workspace()
        self.told: list[frozenset[str]] = []
        self.workspace.on_change.append(self.told.append)

    def file(self, name: str, text: str = CHART) -> Path:
        path = self.folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
        return path

    def take(self, *paths: Path) -> None:
        self.workspace.take(self.workspace.load(paths))

    @property
    def names(self) -> list[str]:
        return [reading.file for reading in self.workspace.charts()]


@pytest.fixture
def shop(tmp_path: Path) -> Shop:
    return Shop(tmp_path)


def test_loading_alone_changes_nothing(shop: Shop) -> None:
    loaded = shop.workspace.load([shop.file("a.csv")])
    assert [file.reading.file for file in loaded.files] == ["a.csv"]
    assert (shop.names, shop.told, shop.workspace.can_undo) == ([], [], False)


def test_taking_adds_to_what_is_there_and_says_so(shop: Shop) -> None:
    shop.take(shop.file("b.csv"))
    shop.take(shop.file("a.csv"))
    assert shop.names == ["a.csv", "b.csv"]
    assert shop.told == [frozenset({"charts"})] * 2


def test_a_file_taken_again_is_replaced_by_its_new_reading(shop: Shop) -> None:
    path = shop.file("a.csv")
    shop.take(path)
    shop.take(shop.file("a.csv", CHART.replace("L;94-98;78-82\n", "")))
    assert shop.names == ["a.csv"]
    assert len(shop.workspace.offers) == 2


def test_a_file_taken_again_unchanged_is_no_change(shop: Shop) -> None:
    path = shop.file("a.csv")
    shop.take(path)
    shop.take(path)
    assert len(shop.told) == 1


def test_a_file_reached_by_another_way_is_the_same_file(shop: Shop) -> None:
    path = shop.file("north/a.csv")
    shop.take(shop.folder)
    shop.take(path)
    assert len(shop.names) == 1


def test_files_of_one_name_from_two_folders_stand_apart_with_their_notes(shop: Shop) -> None:
    for maker in ("north", "south"):
        shop.file(f"{maker}/models.toml", NOTES.replace("Tarnwhistle", maker.title()))
        shop.take(shop.file(f"{maker}/a.csv"))
    assert shop.names == ["a.csv", "south/a.csv"]
    makers = {offer.file: offer.facts and offer.facts.supplier for offer in shop.workspace.offers}
    assert makers == {"a.csv": "North", "south/a.csv": "South"}


def test_pasted_texts_do_not_replace_each_other(shop: Shop) -> None:
    for _ in range(2):
        shop.workspace.take(shop.workspace.load([], pasted=CHART.encode()))
    assert shop.names == ["-", "- 2"]


def test_notes_read_anew_hold_for_every_file_of_their_folder(shop: Shop) -> None:
    shop.file("models.toml", NOTES)
    first = shop.file("a.csv")
    shop.take(first, shop.file("b.csv"))
    shop.file("models.toml", NOTES.replace("Fellrunner", "Fellwalker"))
    shop.take(shop.folder / "b.csv")
    assert [facts.model for facts in shop.workspace.facts] == ["Fellwalker"]


def test_undo_goes_back_and_redo_forth_and_both_are_announced(shop: Shop) -> None:
    shop.take(shop.file("a.csv"))
    shop.take(shop.file("b.csv"))
    shop.workspace.undo()
    assert shop.names == ["a.csv"]
    shop.workspace.redo()
    assert shop.names == ["a.csv", "b.csv"]
    assert shop.told == [frozenset({"charts"})] * 4


def test_a_new_change_ends_what_could_be_made_again(shop: Shop) -> None:
    shop.take(shop.file("a.csv"))
    shop.workspace.undo()
    shop.take(shop.file("b.csv"))
    assert not shop.workspace.can_redo
    assert shop.names == ["b.csv"]


def test_undo_and_redo_at_the_ends_do_nothing(shop: Shop) -> None:
    shop.workspace.undo()
    shop.workspace.redo()
    assert shop.told == []


def test_a_file_can_be_left_out_and_brought_back(shop: Shop) -> None:
    shop.take(shop.file("a.csv"), shop.file("b.csv"))
    shop.workspace.leave_out("a.csv")
    assert shop.names == ["b.csv"]
    shop.workspace.undo()
    assert shop.names == ["a.csv", "b.csv"]


def test_kept_riders_and_settings_are_announced_by_their_own_names(shop: Shop) -> None:
    shop.workspace.keep_rider(RIDER, DAY)
    shop.workspace.set_settings(replace(shop.workspace.settings, edge_band=2.0))
    assert shop.told == [frozenset({"book"}), frozenset({"settings"})]


def test_the_table_is_made_once_and_again_after_a_change(shop: Shop) -> None:
    shop.take(shop.file("a.csv"))
    table = shop.workspace.table
    shop.workspace.keep_rider(RIDER, DAY)
    assert shop.workspace.table is table
    shop.take(shop.file("b.csv"))
    assert shop.workspace.table is not table


def test_a_rider_is_compared_with_every_size_of_every_file(shop: Shop) -> None:
    shop.take(shop.file("a.csv"), shop.file("b.csv"))
    rows = shop.workspace.fit(RIDER).rows
    assert len(rows) == 6
    assert rows[0].offer.size == "M"


def test_a_cancel_leaves_the_workspace_as_it_was(shop: Shop) -> None:
    def stop(message: str, fraction: float) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        shop.workspace.load([shop.file("a.csv")], stop)
    assert shop.names == []


def test_the_combined_chart_is_written_and_returned(shop: Shop, tmp_path: Path) -> None:
    shop.take(shop.file("in/a.csv"))
    chart = shop.workspace.combine(tmp_path / "out.xlsx", Wording("en"))
    assert [row.size for row in chart.rows] == ["S", "M", "L"]
    assert (tmp_path / "out.xlsx").stat().st_size > 1000


def test_a_suppliers_file_is_never_written_over(shop: Shop) -> None:
    path = shop.file("a.csv")
    shop.take(path)
    with pytest.raises(NotWrittenError) as caught:
        shop.workspace.combine(path)
    assert caught.value.code == "target-is-source"
    assert path.read_text(encoding="utf-8") == CHART


def test_the_same_sources_give_the_same_version_and_other_figures_another(shop: Shop) -> None:
    shop.take(shop.file("a.csv"))
    version = shop.workspace.in_house_chart().version
    again = Shop(shop.folder)
    again.take(shop.folder)
    assert again.workspace.in_house_chart().version == version
    again.take(shop.file("a.csv", CHART.replace("84-88", "84-87")))
    assert again.workspace.in_house_chart().version != version
