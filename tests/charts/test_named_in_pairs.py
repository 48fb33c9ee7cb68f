"""Names that say for whom a chart is only beside each other, or over headings of their language."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading

_VIETNAMESE = "| Size | Chiều cao | Ngực |"
_ENGLISH = "| Size | Height | Chest |"


def read(*names: str, heads: str = _ENGLISH) -> FileReading:
    text = ""
    for number, name in enumerate(names):
        rows = (
            f"| {size} | {150 + 8 * number + step}-{154 + 8 * number + step} cm "
            f"| {80 + 8 * number + step}-{83 + 8 * number + step} cm |\n"
            for size, step in (("S", 0), ("M", 4), ("L", 8))
        )
        text += f"{name}\n{heads}\n|---|---|---|\n{''.join(rows)}\n"
    return read_bytes(text.encode(), "a.md")


def bands(reading: FileReading) -> list[str | None]:
    return [chart.band for chart in reading.charts]


def asked(reading: FileReading) -> list[bool]:
    about = {one.id for one in reading.findings if one.values.get("case") == "people"}
    return [
        all(about & {*value.findings} for size in chart.sizes for value in size.ranges)
        for chart in reading.charts
    ]


@pytest.mark.parametrize(
    ("women", "men"),
    [
        ("NỮ:", "NAM:"),
        ("1. Nu", "2. Nam"),
        ("Lei", "Lui"),
        ("Ella", "Él"),
        ("Her", "Him"),
        ("Nők", "Férfiak"),
        ("נשים:", "גברים:"),
        ("F", "M"),
        ("♀", "♂"),
        ("Zorbo – Nữ", "Zorbo – Nam"),
        ("Áo zorbo dành cho bạn nữ", "Áo zorbo dành cho bạn nam"),
        ("Bảng thông số chọn size áo thun nữ", "Bảng thông số chọn size áo thun nam"),
    ],
)
def test_two_words_of_a_pair_are_women_and_men(women: str, men: str) -> None:
    reading = read(women, men)
    assert bands(reading) == ["women", "men"]
    assert asked(reading) == [False, False]


def test_a_word_alone_is_believed_in_its_own_language_and_else_asked_about() -> None:
    assert bands(read("NAM", heads=_VIETNAMESE)) == ["men"]
    alone = read("NAM")
    assert (bands(alone), asked(alone)) == ([None], [True])
    part = read("Zorbo nam", heads=_VIETNAMESE)
    assert (bands(part), asked(part)) == ([None], [True])


@pytest.mark.parametrize("names", [("Zorbo", "Farlan"), ("Zorbo D", "Zorbo H"), ("D", "F", "H")])
def test_other_names_and_letters_of_a_drawing_are_nobody(names: tuple[str, ...]) -> None:
    reading = read(*names)
    assert bands(reading) == [None] * len(names)
    assert not any(asked(reading))
