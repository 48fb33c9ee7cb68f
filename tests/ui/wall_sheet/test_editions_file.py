"""The book of wall sheets on disk."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from charts.in_house import InHouseChart
from charts.wording import LANGUAGES, Wording
from charts.writers.whole_file import NotWrittenError
from ui.wall_sheet.editions_file import BOOK_NAME, EditionsFile

ENGLISH = Wording("en")


def changed(chart: InHouseChart) -> InHouseChart:
    return replace(chart, rows=chart.rows[1:])


@pytest.mark.parametrize("kept", [True, False])
def test_a_number_counts_once_it_is_kept(tmp_path: Path, chart: InHouseChart, kept: bool) -> None:
    path = tmp_path / "shop" / BOOK_NAME if kept else None
    book = EditionsFile(path)
    assert book.edition(chart, ENGLISH).number == 1
    assert book.edition(changed(chart), ENGLISH).number == 1
    book.keep(book.edition(chart, ENGLISH), ENGLISH)
    assert book.edition(chart, ENGLISH).number == 1
    assert book.edition(changed(chart), ENGLISH).number == 2


def test_the_next_start_of_the_program_goes_on_counting(
    tmp_path: Path, chart: InHouseChart
) -> None:
    path = tmp_path / BOOK_NAME
    first = EditionsFile(path)
    first.keep(first.edition(chart, ENGLISH), ENGLISH)
    later = EditionsFile(path).edition(changed(chart), ENGLISH)
    assert (later.number, later.replaces) == (2, 1)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("content", [b"format = 9\n", b"\xff\xfe\x00", b"[[edition]]\n"])
def test_a_book_that_cannot_be_read_is_never_written_over(
    tmp_path: Path, chart: InHouseChart, content: bytes, language: str
) -> None:
    path = tmp_path / BOOK_NAME
    path.write_bytes(content)
    book, wording = EditionsFile(path), Wording(language)
    with pytest.raises(NotWrittenError) as caught:
        book.edition(chart, wording)
    fault = caught.value
    said = wording.say("faces", fault.code, path=fault.path.name, reason=fault.reason)
    assert BOOK_NAME in said
    assert path.read_bytes() == content


def test_a_number_that_could_not_be_noted_is_said(tmp_path: Path, chart: InHouseChart) -> None:
    (tmp_path / "shop").write_text("a file where the folder should be", encoding="utf-8")
    book = EditionsFile(tmp_path / "shop" / BOOK_NAME)
    with pytest.raises(NotWrittenError) as caught:
        book.keep(EditionsFile(None).edition(chart, ENGLISH), ENGLISH)
    assert caught.value.code in {"wall-book-not-kept", "wall-book-unreadable"}
