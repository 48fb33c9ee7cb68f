"""Text for terminals of any width and any code page."""

from __future__ import annotations

import io

from hypothesis import given
from hypothesis import strategies as st

from ui.terminal_text import aligned, make_printable, wrapped


def test_columns_are_aligned_and_nothing_trails() -> None:
    rows = [["Size", "Chest cm", "Hip"], ["M", "89–93", ""], ["XXL", "99–103", "x"]]
    assert aligned(rows, indent=2) == [
        "  Size  Chest cm  Hip",
        "  M     89–93",
        "  XXL   99–103    x",
    ]


def test_wide_and_combined_letters_take_their_true_width() -> None:
    assert aligned([["胸围", "x"], ["abcd", "x"], ["e\N{COMBINING ACUTE ACCENT}bcd", "x"]]) == [
        "胸围  x",
        "abcd  x",
        "e\N{COMBINING ACUTE ACCENT}bcd  x",
    ]


def test_nothing_to_align_is_no_line() -> None:
    assert aligned([]) == []


@given(st.text(alphabet="abc xyz", min_size=1, max_size=300))
def test_a_wrapped_sentence_loses_no_word(text: str) -> None:
    lines = wrapped(text, 4, 40)
    assert " ".join(lines).split() == text.split()
    assert all(line.startswith("    ") for line in lines)


def test_what_a_code_page_lacks_is_written_plainly() -> None:
    raw = io.BytesIO()
    stream = io.TextIOWrapper(raw, encoding="ascii", newline="\n")
    make_printable(stream)
    stream.write("86–91 · −2.5 ± 1 “M” 胸, Größe Sëkå")
    stream.flush()
    assert raw.getvalue() == b'86-91 - -2.5 +/- 1 "M" ?, Groesse Seka'
