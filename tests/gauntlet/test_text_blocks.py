"""The measuring tool edits what it means to edit: cells stand where it says they stand."""

from __future__ import annotations

import pytest
from text_blocks import blocks_of, edited

ROWS = [["Size", "Chest", "Waist"], ["S", "84-88", "68-72"], ["M", "89-93", "73-77"]]


def _barred(row: list[str]) -> str:
    return f"| {' | '.join(row)} |"


TEXTS = {
    ".csv": "Title;;\n" + "".join(";".join(row) + "\n" for row in ROWS),
    ".tsv": "".join("\t".join(row) + "\n" for row in ROWS),
    ".txt": "Some words.\n\n" + "".join("   ".join(row) + "\n" for row in ROWS),
    ".md": "\n".join(["| Size | Chest | Waist |", "|---|---|---|", *map(_barred, ROWS[1:])]),
    ".html": "<table>"
    + "".join("<tr>" + "".join(f"<td><b>{cell}</b></td>" for cell in row) + "</tr>" for row in ROWS)
    + "</table>",
}


@pytest.mark.parametrize("suffix", TEXTS)
def test_the_cells_of_a_table_are_found(suffix: str) -> None:
    (block,) = blocks_of(TEXTS[suffix], suffix)
    assert [[cell.text for cell in row] for row in (block.head, *block.body)] == ROWS


@pytest.mark.parametrize("suffix", TEXTS)
def test_a_cell_goes_and_all_else_stays(suffix: str) -> None:
    text = TEXTS[suffix]
    (block,) = blocks_of(text, suffix)
    cell = block.body[0][1]
    left = edited(text, [(*cell.outer, "")])
    assert len(left) == len(text) - (cell.outer[1] - cell.outer[0])
    assert "84-88" in text
    assert "84-88" not in left
    assert left.replace("68-72", "") != left


def test_a_table_with_joined_cells_is_left_alone() -> None:
    text = TEXTS[".html"].replace("<td>", "<td colspan=2>", 1)
    assert blocks_of(text, ".html") == ()
