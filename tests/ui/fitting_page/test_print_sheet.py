"""The printed sheet says under which of the shop's figures it was made."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from harmonizer.fit import fit
from harmonizer.settings import DEFAULTS, Settings
from tests.ui.shop import rider_of, shop_table
from ui.desk import Desk
from ui.fitting_page.draft import Draft
from ui.fitting_page.print_sheet import rows_to_print, write_pdf
from ui.fitting_page.printed import Printed
from ui.words import Words


def printed_words(desk: Desk, path: Path, settings: Settings, language: str) -> str:
    """What can be found and copied on the sheet."""
    import pdfplumber

    page, table = desk.window.fitting, shop_table(6)
    page.show_shop(table, lambda rider: fit(rider, table, settings))
    draft = Draft(rider_of(chest=92.7, waist=76.0, hip=99.0, back_length=43.0))
    page.show_draft(draft)
    assert page.sheet is not None
    printed = Printed(draft, page.sheet, rows_to_print(page.sheet, None), date(2027, 3, 2))
    assert write_pdf(str(path), printed, Words(language))
    with pdfplumber.open(path) as document:
        return " ".join(document.pages[0].extract_text().split())


@pytest.mark.parametrize(
    ("language", "hand", "own"),
    [
        ("en", "One hand counts as", "figures in force"),
        ("de", "Eine Handbreit zählt", "die gelten"),
    ],
)
def test_hand_width_and_changed_figures_stand_on_the_sheet(
    desk: Desk, tmp_path: Path, language: str, hand: str, own: str
) -> None:
    settings = replace(DEFAULTS, hand_width=8.5)
    said = printed_words(desk, tmp_path / "sheet.pdf", settings, language)
    assert hand in said
    assert own in said


def test_a_sheet_under_the_defaults_names_the_hand_and_no_figure_more(
    desk: Desk, tmp_path: Path
) -> None:
    said = printed_words(desk, tmp_path / "sheet.pdf", DEFAULTS, "en")
    assert "One hand counts as" in said
    assert "figures in force" not in said


def test_figures_on_the_sheet_can_be_found_and_copied(desk: Desk, tmp_path: Path) -> None:
    said = printed_words(desk, tmp_path / "sheet.pdf", DEFAULTS, "en")
    assert "92.5" in said
    assert "(cid:" not in said
