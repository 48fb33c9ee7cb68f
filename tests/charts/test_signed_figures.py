"""Single figures behind a plus-minus sign: about so much where no tolerance can be so large."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values


@pytest.mark.parametrize(
    ("heading", "figures", "middle"),
    [
        ("Ruglengte (cm)", ("± 38", "± 40", "± 42"), 40),
        ("Ruglengte (cm)", ("± 38", "40", "42"), 40),
        ("Gewicht (kg)", ("± 25", "+/- 30", "± 35"), 30),
        ("Gewicht", ("24-26 kg", "± 30 kg", "34-36 kg"), 30),
        ("Leeftijd (jaar)", ("± 6", "± 7", "± 8"), 7),
        ("Leeftijd (jaar)", ("6", "± 7", "8"), 7),
    ],
)
def test_a_figure_larger_than_any_tolerance_is_about_so_much(
    heading: str, figures: tuple[str, str, str], middle: int
) -> None:
    sizes = zip("SML", ("82-86", "87-91", "92-96"), figures, strict=True)
    rows = "\n".join(f"{size} | {chest} | {figure}" for size, chest, figure in sizes)
    reading = table(f"Maat | Borst (cm) | {heading}\n{rows}")
    (name,) = (name for name in values(reading) if name.startswith("M ") and "chest" not in name)
    assert values(reading)[name] == middle
    assert questions(reading) == []


def test_a_figure_that_is_always_the_same_is_asked_about() -> None:
    reading = table("Maat | Borst (cm) | Ruglengte (cm)\nS | 82-86 | ± 38\nM | 87-91 | ± 38")
    assert values(reading)["M chest"] == (87, 91)
    assert questions(reading) == ["column-unused"]


def test_a_small_one_is_a_tolerance() -> None:
    reading = table("Maat | Borst (cm) | Ruglengte (cm)\nS | 82-86 | 38 ± 1\nM | 87-91 | 40 ± 2")
    assert values(reading)["M back_length"] == 40


def test_a_table_of_such_figures_alone_raises_nothing() -> None:
    reading = table("Maat | Ruglengte (cm)\nS | ± 38\nM | ± 40")
    assert questions(reading)
