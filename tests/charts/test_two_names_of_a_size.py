"""A cell that names a size twice, by letters and by a number, or after a word for size."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Size
from charts.size_labels import read_label, without_word_for_size


def sizes(*names: str) -> list[Size]:
    rows = "".join(
        f"<tr><td>{name}<td>{80 + 4 * at}-{84 + 4 * at}<td>{64 + 4 * at}-{68 + 4 * at}"
        for at, name in enumerate(names)
    )
    page = f"<table><tr><th>Size<th>Chest (cm)<th>Waist (cm)</tr>{rows}</table>"
    return list(read_bytes(page.encode(), "chart.html").charts[0].sizes)


@pytest.mark.parametrize(
    ("names", "label", "also"),
    [
        (("S<br>EU 36", "M<br>EU 38"), "S", ["EU 36"]),
        (("S<br><small>36</small>", "M<br><small>38</small>"), "S", ["36"]),
        (("EU 36<br>S", "EU 38<br>M"), "EU 36", ["S"]),
        (("S<br>UK 8-10", "M<br>UK 12-14"), "S", ["UK 8-10"]),
        (("S / EU 36", "M / EU 38"), "S / EU 36", ["S", "EU 36"]),
        (("S, EU 36", "M, EU 38"), "S, EU 36", ["S", "EU 36"]),
        (("10 - M", "12 - L"), "10 - M", ["10", "M"]),
        (("S (EU 36)", "M (EU 38)"), "S", ["EU 36"]),
        (("Size S", "Size M"), "S", []),
        (("Größe: 36", "Größe: 38"), "36", []),
        (("Extra<br>Small", "Small"), "Extra Small", []),
        (("5-6<br>years", "7-8<br>years"), "5-6 years", []),
    ],
)
def test_the_first_name_is_the_label_and_the_other_kept_beside(
    names: tuple[str, ...], label: str, also: list[str]
) -> None:
    first = sizes(*names)[0]
    assert first.label == label
    assert [one.label for one in first.also] == also


def test_a_length_below_a_number_is_no_second_name() -> None:
    found = read_label("36\nS")
    assert found is not None
    assert found.also == ()


@pytest.mark.parametrize("text", ["Size One", "One size", "Size", "Size of the vest"])
def test_a_word_for_size_stays_where_no_size_follows(text: str) -> None:
    assert without_word_for_size(text) == text
