"""What a shop keeps of riders: little, readable, one file each, and gone when it is forgotten."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.answers_toml import AnswersFileError
from charts.quantities import Unit
from charts.schema import Definition
from harmonizer.rider import Measure, Observed, Reading, Rider, SeenInSaddle, TakenBy
from harmonizer.shop.rider_book import (
    KEPT,
    MOST_DAYS,
    RiderRecord,
    record_of,
    reference,
    with_visit,
)
from harmonizer.shop.rider_toml import read_kept_rider, write_rider
from harmonizer.shop.shop_folder import ShopFolder
from harmonizer.workspace import Workspace
from tests.harmonizer.by_hand import reading, rider

DAY = date(2027, 2, 11)
TEXTS = st.text(st.characters(exclude_categories=["Cs"]), max_size=12)
READINGS = st.builds(
    Reading,
    st.sampled_from(KEPT),
    st.decimals("0.01", 250, places=4),
    TEXTS,
    st.none() | st.sampled_from([Unit.CM, Unit.IN]),
    st.sampled_from([Definition.UNKNOWN, Definition.CHEST_WIDEST]),
    st.sampled_from(TakenBy),
    c7_felt=st.booleans(),
    on=st.dates(),
)
RECORDS = st.builds(RiderRecord, TEXTS.filter(str.strip), st.lists(READINGS, max_size=4).map(tuple))


def named(name: str = "Rider 7", **more: object) -> Rider:
    return replace(rider(**more), name=name)


@given(RECORDS)
def test_what_is_kept_comes_back_from_its_text(record: RiderRecord) -> None:
    assert read_kept_rider(write_rider(record)) == record


@given(st.lists(st.tuples(st.dates(DAY, DAY + timedelta(days=9)), READINGS), max_size=20))
def test_of_each_measure_a_few_days_are_kept_the_newest(
    visits: list[tuple[date, Reading]],
) -> None:
    record = RiderRecord("R")
    seen: dict[Measure, set[date]] = {}
    for on, one in visits:
        record = with_visit(record, named(readings=(replace(one, on=None),)), on)
        seen.setdefault(one.measure, set()).add(on)
        assert all(each.on is not None and each.taken_by is not None for each in record.readings)
        days = {each.on for each in record.readings if each.measure is one.measure}
        assert len(days) <= MOST_DAYS
        if on >= max(seen[one.measure]):
            assert on in days


def test_only_what_the_next_visit_is_compared_with_is_kept() -> None:
    who = replace(
        named(chest=92, weight=62, height=168, back_length=43, c7_above_seat=62, neck=36),
        age=Decimal(34),
        seen=(SeenInSaddle("Harrier", "M", Observed.RIGHT),),
    )
    text = write_rider(with_visit(RiderRecord("Rider 7"), who, DAY))
    kept = {one.measure for one in read_kept_rider(text).readings}
    assert kept == {Measure.CHEST, Measure.HEIGHT, Measure.BACK_LENGTH}
    for word in ("weight", "62", "age", "34", "Harrier", "neck", "seat", "figure"):
        assert word not in text


def test_the_same_day_again_is_written_over_and_another_day_is_added() -> None:
    first = with_visit(RiderRecord("R"), named(chest=92), DAY)
    assert [one.value for one in with_visit(first, named(chest=93), DAY).readings] == [93]
    later = with_visit(first, named(chest=93), DAY + timedelta(days=1))
    assert [one.value for one in later.readings] == [92, 93]
    assert later.last == DAY + timedelta(days=1)


def test_a_reading_keeps_its_own_day_and_who_took_it() -> None:
    summer = date(2026, 8, 3)
    old = replace(reading("chest", 90), on=summer, taken_by=TakenBy.HELPER)
    kept = with_visit(RiderRecord("R"), named(readings=(old, reading("waist", 76))), DAY).readings
    assert [(one.measure, one.on, one.taken_by) for one in kept] == [
        (Measure.CHEST, summer, TakenBy.HELPER),
        (Measure.WAIST, DAY, rider().taken_by),
    ]


def test_a_rider_is_known_by_the_name_whatever_its_capitals_and_spaces() -> None:
    book = (RiderRecord("Wrenna Oskelby"), RiderRecord("K 214"))
    assert record_of(book, "  wrenna  OSKELBY ") is book[0]
    assert record_of(book, "k 214") is book[1]
    assert record_of(book, "Wrenna") is None
    assert record_of((RiderRecord("x"), RiderRecord(" ")), "  ") is None


def test_keeping_and_forgetting_are_steps_that_can_be_taken_back(tmp_path: Path) -> None:
    workspace, folder = Workspace(), ShopFolder(tmp_path / "shop")
    told: list[frozenset[str]] = []
    workspace.on_change.append(told.append)
    workspace.keep_rider(named(chest=92), DAY)
    workspace.save_shop(folder)
    (path,) = (tmp_path / "shop" / "riders").iterdir()
    text = path.read_text(encoding="utf-8")
    assert 'name = "Rider 7"' in text
    assert "on = 2027-02-11" in text
    workspace.forget_rider("RIDER 7")
    workspace.save_shop(folder)
    assert not path.exists()
    workspace.undo()
    workspace.save_shop(folder)
    assert path.read_text(encoding="utf-8") == text
    workspace.undo()
    assert workspace.book == ()
    workspace.redo()
    assert workspace.kept_of("rider 7")[0].value == 92
    assert told == [frozenset({"book"})] * 5


def test_nobody_is_kept_without_a_name_or_without_a_length() -> None:
    workspace = Workspace()
    workspace.keep_rider(named("  ", chest=92), DAY)
    workspace.keep_rider(named(weight=62), DAY)
    assert workspace.book == ()
    assert not workspace.can_undo


def test_what_was_kept_is_there_on_the_next_day_and_undoing_other_work_leaves_it(
    tmp_path: Path,
) -> None:
    first = Workspace()
    first.keep_rider(named(chest=92), DAY)
    first.save_shop(ShopFolder(tmp_path))
    second = Workspace()
    assert second.open_shop(ShopFolder(tmp_path)).riders == first.book
    second.set_settings(replace(second.settings, hand_width=8.0))
    second.undo()
    assert second.book == first.book


def test_what_another_put_into_the_folder_meanwhile_is_left_alone(tmp_path: Path) -> None:
    here, there = ShopFolder(tmp_path), ShopFolder(tmp_path)
    here.write([], [], [RiderRecord("A", (replace(reading("chest", 92), on=DAY),))])
    there.read()
    there.write([], [], [RiderRecord("A"), RiderRecord("B")])
    here.write([], [], [])
    assert [one.name for one in ShopFolder(tmp_path).read().riders] == ["B"]


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("format = 1\n", "value-missing"),
        ("format = 1\nname = ' '\n", "value-missing"),
        ("format = 1\nname = 'a'\n[[reading]]\ndimension = 'chest'\ncm = 92\n", "value-missing"),
        ("format = 1\nname = 'a'\n[[reading]]\ndimension = 'weight'\non = 2027-02-11\ncm = 62\n",
         "not-a-choice"),
        ("format = 1\nname = 'a'\nborn = 1992-05-01\n", "unknown-key"),
        ("format = 2\nname = 'a'\n", "format-newer"),
    ],
)  # fmt: skip
def test_a_kept_rider_that_cannot_be_used_says_why(text: str, code: str) -> None:
    with pytest.raises(AnswersFileError) as raised:
        read_kept_rider(text)
    assert raised.value.reason.code == code


@given(TEXTS)
def test_a_name_is_found_again_as_it_was_typed(name: str) -> None:
    book = (RiderRecord(name),)
    assert (record_of(book, name) is book[0]) is bool(reference(name))
