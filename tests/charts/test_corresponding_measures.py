"""Sentences by which the figures correspond to measures of the body, or of the garment."""

from __future__ import annotations

import pytest

from charts.headings.whose import whose


@pytest.mark.parametrize(
    ("text", "basis"),
    [
        ("Wymiary podane w tabeli odpowiadają wymiarom ciała, nie ubrania.", "body"),
        ("Wartości odpowiadają wymiarom sylwetki.", "body"),
        ("Wartości odpowiadają wymiarom ubrania, nie ciała.", "finished"),
        ("Wymiary podane w tabeli odpowiadają wymiarom produktu.", "finished"),
    ],
)
def test_figures_that_correspond_to_a_side_are_of_that_side(text: str, basis: str) -> None:
    said = whose(text)
    assert (said.basis, said.open) == (basis, False)
