"""Words for whom the sizes are, centred beside their rows: each for its sizes, and one question."""

from __future__ import annotations

import pytest

from tests.charts.read_text import asked_at, questions, ranges, table, values

HEAD = " | Size | Chest (cm)\n"
FIGURES = ("82-86", "87-91", "92-96", "97-101", "102-106", "107-111", "112-116", "117-121")


def rows(words: dict[int, str], names: str, head: str = HEAD) -> str:
    sizes = names.split()
    return head + "".join(
        f"{words.get(number, '')} | {name} | {FIGURES[number]}\n"
        for number, name in enumerate(sizes)
    )


@pytest.mark.parametrize(
    ("words", "names"),
    [
        ({1: "Women", 4: "Men"}, "S M L S M L"),
        ({2: "Women", 5: "Men"}, "S M L S M L"),
        ({1: "Damen", 5: "Herren"}, "XS S M S M L XL"),
        ({1: "Women", 4: "Men"}, "M L XL S M L"),
        ({1: "Women", 4: "Kids"}, "S M L 4 6 8"),
    ],
)
def test_a_centred_word_holds_from_where_the_sizes_begin_anew(
    words: dict[int, str], names: str
) -> None:
    reading = table(rows(words, names))
    found = [[size.label for size in chart.sizes] for chart in reading.charts]
    assert found == [names.split()[:3], names.split()[3:]]
    assert next(chart.band for chart in reading.charts) == "women"
    assert set(questions(reading)) == {"columns-shifted"}
    assert len(set(asked_at(reading, "columns-shifted"))) == len(ranges(reading))


def test_sizes_that_fall_begin_anew_with_a_larger_one() -> None:
    reading = table(
        HEAD + " | L | 92-96\nWomen | M | 87-91\n | S | 82-86\n"
        " | XL | 107-111\nMen | L | 102-106\n | M | 97-101\n"
    )
    assert values(reading)["women L chest"] == (92, 96)
    assert values(reading)["men XL chest"] == (107, 111)
    assert questions(reading) == ["columns-shifted"]


def test_where_nothing_begins_anew_every_row_is_asked() -> None:
    reading = table(rows({1: "Women", 4: "Men"}, "36 38 40 46 48 50"))
    assert "columns-shifted" in questions(reading)
    assert len(asked_at(reading, "columns-shifted")) == len(ranges(reading)) == 6


def test_rows_of_nobody_above_a_group_with_its_word_at_its_head_are_as_printed() -> None:
    reading = table(rows({3: "Men"}, "S M L XS S M"))
    assert values(reading)["men XS chest"] == (97, 101)
    assert [chart.band for chart in reading.charts] == [None, "men"]
    assert "columns-shifted" not in questions(reading)


def test_words_at_the_head_of_their_groups_are_not_asked() -> None:
    reading = table(rows({0: "Women", 3: "Men"}, "S M L S M L"))
    assert [chart.band for chart in reading.charts] == ["women", "men"]
    assert questions(reading) == []
