"""The wall sheet as a PDF: what can be read in it is what was set, at the size it was set."""

from __future__ import annotations

import io
import re
from pathlib import Path
from typing import Any

import pytest

from charts.in_house import InHouseChart
from charts.source_files import find
from charts.wording import LANGUAGES, Wording
from charts.writers.own_files import is_ours
from tests.ui.wall_sheet.conftest import Draw
from ui.wall_sheet.ink import Page
from ui.wall_sheet.paper import A3, A4, Paper
from ui.wall_sheet.pdf import pdf_bytes

_SAME_GLYPH = str.maketrans("∆", "Δ")
"""One drawing of the font serves the increment and the Greek letter."""


def opened(pages: tuple[Page, ...]) -> Any:
    import pdfplumber

    return pdfplumber.open(io.BytesIO(pdf_bytes(pages, "Sizes on one scale")))


def letters(text: str) -> str:
    return re.sub(r"\s", "", text).translate(_SAME_GLYPH)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_figure_and_word_can_be_found_and_copied(
    printed: Draw, demo: InHouseChart, language: str
) -> None:
    pages = printed(demo, A3, Wording(language))
    shown = (*pages[:3], pages[-1])
    with opened(shown) as pdf:
        assert len(pdf.pages) == len(shown)
        for page, leaf in zip(shown, pdf.pages, strict=True):
            read = letters("".join(char["text"] for char in leaf.chars))
            assert read == letters("".join(page.texts))
            assert min(char["size"] for char in leaf.chars) > 8.999


@pytest.mark.parametrize(("paper", "size"), [(A3, (1191, 842)), (A4, (842, 595))])
def test_the_paper_is_on_its_side_in_its_iso_size(
    printed: Draw, chart: InHouseChart, paper: Paper, size: tuple[int, int]
) -> None:
    """ISO 216: A3 is 297 x 420 mm, A4 is 210 x 297 mm."""
    with opened(printed(chart, paper)) as pdf:
        assert pdf.pages
        for leaf in pdf.pages:
            assert (round(leaf.width), round(leaf.height)) == size


def test_it_carries_its_own_fonts(printed: Draw, chart: InHouseChart) -> None:
    with opened(printed(chart)) as pdf:
        names = {char["fontname"].split("+")[-1] for leaf in pdf.pages for char in leaf.chars}
    assert names == {"Inter-Regular", "Inter-SemiBold"}


def test_nothing_in_it_is_coloured(printed: Draw, chart: InHouseChart) -> None:
    """Whatever is drawn has equal parts of red, green and blue."""
    with opened(printed(chart)) as pdf:
        tones = {
            tone
            for leaf in pdf.pages
            for kind in ("chars", "rects", "lines", "curves")
            for each in getattr(leaf, kind)
            for tone in (each.get("stroking_color"), each.get("non_stroking_color"))
            if isinstance(tone, tuple) and len(tone) == 3
        }
    assert tones
    assert all(max(tone) - min(tone) < 1e-6 for tone in tones)


def test_saved_among_suppliers_files_it_is_passed_over(
    printed: Draw, chart: InHouseChart, tmp_path: Path
) -> None:
    path = tmp_path / "wall sheet.pdf"
    path.write_bytes(pdf_bytes(printed(chart), "Sizes on one scale"))
    assert is_ours(path)
    assert find([tmp_path])[0] == ()
