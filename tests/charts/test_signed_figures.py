"""Single figures behind a plus-minus sign: what they mean is asked, and nothing breaks."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values


@pytest.mark.parametrize(
    ("heading", "figures"),
    [
        ("Ruglengte (cm)", ("± 38", "± 40", "± 42")),
        ("Gewicht (kg)", ("± 25", "± 30", "± 35")),
    ],
)
def test_a_column_of_about_so_much_is_not_passed_over(
    heading: str, figures: tuple[str, str, str]
) -> None:
    sizes = zip("SML", ("82-86", "87-91", "92-96"), figures, strict=True)
    rows = "\n".join(f"{size} | {chest} | {figure}" for size, chest, figure in sizes)
    reading = table(f"Maat | Borst (cm) | {heading}\n{rows}")
    assert values(reading)["M chest"] == (87, 91)
    assert questions(reading) == ["column-unused"]


def test_a_table_of_such_figures_alone_raises_nothing() -> None:
    reading = table("Maat | Ruglengte (cm)\nS | ± 38\nM | ± 40")
    assert questions(reading)
