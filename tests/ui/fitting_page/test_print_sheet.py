"""The printed sheet says under which of the shop's figures it was made."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from harmonizer.fit import fit
from harmonizer.offers import model_key
from harmonizer.outcomes import choice_of, with_experience
from harmonizer.range_table import RangeTable
from harmonizer.settings import DEFAULTS, Settings
from tests.ui.shop import rider_of, shop_table
from ui.desk import Desk
from ui.fitting_page.draft import Draft
from ui.fitting_page.print_sheet import rows_to_print, write_pdf
from ui.fitting_page.printed import Printed
from ui.words import Words


def printed_words(
    desk: Desk, path: Path, settings: Settings, language: str, table: RangeTable | None = None
) -> str:
    """What can be found and copied on the sheet."""
    import pdfplumber

    page, table = desk.window.fitting, table or shop_table(6)
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


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "came out 3.3 cm smaller than its chart, 5 fittings."),
        ("de", "fiel das Modell 3,3 cm kleiner aus als seine Tabelle, 5 Anproben."),
    ],
)
def test_own_experience_stands_on_the_sheet(
    desk: Desk, tmp_path: Path, language: str, said: str
) -> None:
    """By hand: five times one size up, 6 cm: 5*2.25/(5*2.25+9)*6 = 3.33."""
    table = shop_table(6)
    rider = rider_of(chest=92.7, waist=76.0, hip=99.0, back_length=43.0)
    best = fit(rider, table).rows[0].offer
    choice = choice_of(fit(rider, table), model_key(best))
    labels = [offer.size for offer in choice.offers]
    outcome = choice.outcome(labels[labels.index(best.size) + 1], date(2027, 3, 2))
    assert outcome is not None
    noted = with_experience(table, [outcome] * 5)
    assert said in printed_words(desk, tmp_path / "sheet.pdf", DEFAULTS, language, noted)
    assert said not in printed_words(desk, tmp_path / "plain.pdf", DEFAULTS, language)


def test_figures_on_the_sheet_can_be_found_and_copied(desk: Desk, tmp_path: Path) -> None:
    said = printed_words(desk, tmp_path / "sheet.pdf", DEFAULTS, "en")
    assert "92.5" in said
    assert "(cid:" not in said
