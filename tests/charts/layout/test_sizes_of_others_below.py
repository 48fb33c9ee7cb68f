"""A second row of sizes, for others, below figures begins a table of its own."""

from __future__ import annotations

from tests.charts.read_text import questions, table, values


def test_a_word_for_size_and_for_whom_begins_anew() -> None:
    reading = table("""Größe Herren | 46 | 48 | 50
Brust (cm) | 90-93 | 94-97 | 98-101
Größe Damen | 36 | 38 | 40
Brust (cm) | 82-85 | 86-89 | 90-93""")
    found = values(reading)
    assert (found["men 48 chest"], found["women 38 chest"]) == ((94, 97), (86, 89))
    assert questions(reading) == []


def test_heights_for_others_below_their_sizes_do_not() -> None:
    reading = table("""Size | S | M | L
Größe Herren | 170 | 176 | 182
Brust (cm) | 90-93 | 94-97 | 98-101
Größe Damen | 160 | 166 | 172""")
    assert [size.label for size in reading.charts[0].sizes] == ["S", "M", "L"]
