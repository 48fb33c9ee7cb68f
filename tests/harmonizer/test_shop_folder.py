"""The shop's folder: readable, whole or not at all, and never written over what is newer."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.answers import Answer, LeftOut, Part, Question
from charts.answers_toml import AnswersFileError
from charts.habits.kept import Habits
from charts.wording import LANGUAGES, Wording
from charts.writers.whole_file import NotWrittenError
from harmonizer.shop.record_toml import read_record, write_record
from harmonizer.shop.season import Asked, FileRecord, Mark
from harmonizer.shop.shop_folder import ShopFolder, file_name

DAY = date(2027, 2, 11)
TEXTS = st.text(st.characters(exclude_categories=["Cs"]), max_size=12)
MARKS = st.lists(
    st.builds(Mark, TEXTS, st.dates(), TEXTS, TEXTS, st.integers(0, 9)), max_size=2
).map(tuple)
QUESTIONS = st.builds(Question, TEXTS, TEXTS, TEXTS, TEXTS)
RECORDS = st.builds(
    FileRecord,
    TEXTS.filter(bool),
    TEXTS,
    TEXTS,
    st.lists(
        st.builds(Answer, st.builds(LeftOut, st.sampled_from(Part), TEXTS, TEXTS), TEXTS),
        max_size=2,
    ).map(tuple),
    MARKS,
    MARKS,
    st.lists(
        st.builds(Asked, QUESTIONS, st.none() | st.dates(), TEXTS, TEXTS, st.none() | st.dates()),
        max_size=2,
    ).map(tuple),
)
RECORD = FileRecord("north/Größen 2027.csv", "abc", approved=(Mark("Ann", DAY),))
HABITS = Habits("north", 1, "Ann", DAY)


@given(RECORDS)
def test_what_was_said_of_a_file_comes_back_from_its_text(record: FileRecord) -> None:
    assert read_record(write_record(record)) == record


@given(st.lists(TEXTS, unique=True, max_size=20))
def test_every_name_has_a_legal_file_name_of_its_own(names: list[str]) -> None:
    files = [file_name(name) for name in names]
    assert len(set(files)) == len(names)
    assert all(len(file) < 90 and not set(file) & set('\\/:*?"<>|\0') for file in files)


def test_the_folder_gives_back_what_was_written(tmp_path: Path) -> None:
    folder = ShopFolder(tmp_path / "shop")
    assert folder.read().records == ()
    written = folder.write([RECORD], [HABITS])
    assert [path.parent.name for path in written] == ["files", "habits"]
    shop = ShopFolder(tmp_path / "shop").read()
    assert (shop.records, shop.habits, shop.refused) == ((RECORD,), (HABITS,), ())


def test_only_what_changed_is_written(tmp_path: Path) -> None:
    folder = ShopFolder(tmp_path)
    folder.write([RECORD], [HABITS])
    assert folder.write([RECORD], [HABITS]) == ()
    other = FileRecord("south/a.csv", aside=(Mark("Bob", DAY),))
    assert len(folder.write([RECORD, other], [HABITS])) == 1


def test_what_is_no_longer_said_is_taken_away(tmp_path: Path) -> None:
    folder = ShopFolder(tmp_path)
    folder.write([RECORD], [])
    assert len(folder.write([], [])) == 1
    assert list(tmp_path.rglob("*.toml")) == []


def test_what_a_newer_version_wrote_is_refused_and_left_alone(tmp_path: Path) -> None:
    folder = ShopFolder(tmp_path)
    (path,) = folder.write([RECORD], [])
    newer = path.read_text(encoding="utf-8").replace("format = 1", "format = 2")
    path.write_text(newer, encoding="utf-8")
    shop = folder.read()
    assert shop.records == ()
    (refused,) = shop.refused
    for language in LANGUAGES:
        assert path.name in refused.say(Wording(language))
    with pytest.raises(NotWrittenError) as raised:
        folder.write([RECORD], [])
    assert raised.value.code == "shop-newer"
    assert Wording().say("faces", "shop-newer", path=path.name, reason="")
    folder.write([], [])
    assert path.read_text(encoding="utf-8") == newer


def test_one_damaged_file_leaves_the_others_usable(tmp_path: Path) -> None:
    folder = ShopFolder(tmp_path)
    folder.write([RECORD], [HABITS])
    (tmp_path / "files" / "broken.toml").write_bytes(b"format = 1\nname = \xff")
    (tmp_path / "files" / "odd.toml").write_text("format = 1\nname = 'a'\nnmae = 'b'\n")
    shop = folder.read()
    assert shop.records == (RECORD,)
    assert sorted(one.path.name for one in shop.refused) == ["broken.toml", "odd.toml"]
    assert all(one.say(Wording(language)) for one in shop.refused for language in LANGUAGES)


def test_a_folder_that_cannot_be_made_is_said(tmp_path: Path) -> None:
    (tmp_path / "shop").write_text("a file in the way", encoding="utf-8")
    with pytest.raises(NotWrittenError):
        ShopFolder(tmp_path / "shop").write([RECORD], [])


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("format = 1\n", "value-missing"),
        ("format = 1\nname = 'a'\n[[approved]]\nby = 'Ann'\n", "value-missing"),
        ("format = 1\nname = 'a'\n[[approved]]\non = 2027-02-11\nhabit = 0.5\n", "not-a-number"),
        ("format = 1\nname = 'a'\n[[approved]]\non = 'today'\n", "not-a-day"),
        ("format = 9\nname = 'a'\n", "format-newer"),
    ],
)
def test_a_record_that_cannot_be_used_says_why(text: str, code: str) -> None:
    with pytest.raises(AnswersFileError) as raised:
        read_record(text)
    assert raised.value.reason.code == code
