"""The count of wall sheets: up by one with every change, the same for the same content."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as some

from charts.wording import LANGUAGES, Wording
from harmonizer.shop.editions import (
    EditionBook,
    EditionsFileError,
    editions_text,
    read_editions,
)

DAY = date(2027, 2, 11)
LATER = DAY + timedelta(days=30)


def counted(*versions: str) -> EditionBook:
    book = EditionBook()
    for version in versions:
        book = book.with_edition(book.edition(version, DAY))
    return book


def test_the_first_sheet_is_no_1_and_replaces_none() -> None:
    edition = EditionBook().edition("AAAA", DAY)
    assert (edition.number, edition.replaces, edition.made_on) == (1, None, DAY)


def test_a_change_makes_the_next_number_and_replaces_the_last() -> None:
    edition = counted("AAAA").edition("BBBB", LATER)
    assert (edition.number, edition.replaces, edition.made_on) == (2, 1, LATER)


def test_the_same_content_printed_later_keeps_its_number_and_its_day() -> None:
    book = counted("AAAA", "BBBB")
    again = book.edition("BBBB", LATER)
    assert (again.number, again.made_on) == (2, DAY)
    assert book.with_edition(again) is book


def test_going_back_to_an_older_content_is_a_new_sheet() -> None:
    assert counted("AAAA", "BBBB").edition("AAAA", LATER).number == 3


def test_what_was_never_printed_is_not_counted() -> None:
    book = counted("AAAA")
    book.edition("BBBB", DAY)
    assert book.edition("CCCC", DAY).number == 2


@given(some.lists(some.sampled_from("ABCD"), max_size=12))
def test_a_book_is_read_as_it_was_written(versions: list[str]) -> None:
    book = counted(*versions)
    assert read_editions(editions_text(book)) == book
    assert [each.number for each in book.editions] == list(range(1, len(book.editions) + 1))


SHEET = '[[edition]]\nnumber = 1\nversion = "A"\nmade_on = 2027-02-11\n'


@pytest.mark.parametrize(
    ("text", "code", "line"),
    [
        ("format = 1\n[[edition\n", "not-toml", 2),
        ("", "format-missing", 1),
        ("format = 2\n", "format-newer", 1),
        ("format = 1\n[[edition]]\nnumber = 1\n", "edition-incomplete", 2),
        (f"format = 1\n{SHEET}{SHEET}", "edition-order", 7),
        (f"format = 1\n{SHEET}pages = 3\n", "unknown-key", 6),
        ('format = 1\n[[edition]]\nnumber = "one"\n', "not-a-number", 3),
    ],
)
def test_a_book_that_cannot_be_used_names_the_line_and_the_reason(
    text: str, code: str, line: int
) -> None:
    with pytest.raises(EditionsFileError) as caught:
        read_editions(text)
    assert (caught.value.reason.code, caught.value.line) == (code, line)
    for language in LANGUAGES:
        assert caught.value.say(Wording(language)).endswith(".")
