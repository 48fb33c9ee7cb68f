"""The reasons for the chosen row, and the reply made from them."""

from __future__ import annotations

from tests.ui.fitting_page.test_fit_rows import laid_out, model_rows
from tests.ui.shop import rider_of, usual_fit
from ui.fitting_page.chosen import reasons_for
from ui.fitting_page.draft import Draft
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.print_sheet import MOST_MODELS, rows_to_print
from ui.fitting_page.reply import CANDIDATES, candidates, reply
from ui.fitting_page.rows import Band
from ui.words import Words


def test_reasons_are_whole_sentences_for_every_dimension() -> None:
    sheet = laid_out(usual_fit(8))
    row = model_rows(sheet)[0]
    reasons = reasons_for(sheet, row, Words("en"))
    said = " ".join(line.text for line in reasons.lines)
    for name in ("Chest", "Waist", "Hip", "Back"):
        assert name in said
    assert all(line.text.endswith(".") for line in reasons.lines)


def test_the_neighbour_sizes_are_explained() -> None:
    sheet = laid_out(usual_fit(8))
    row = next(one for one in model_rows(sheet) if one.size == "M")
    said = [line.text for line in reasons_for(sheet, row, Words("en")).lines]
    assert any(text.startswith(("Not S", "Size S")) for text in said)
    assert any(text.startswith(("Not L", "Size L")) for text in said)


def test_how_sure_the_size_is_stands_as_a_frequency_and_a_word() -> None:
    sheet = laid_out(usual_fit(8))
    said = [line.text for line in reasons_for(sheet, model_rows(sheet)[0], Words("en")).lines]
    (chance,) = (text for text in said if text.startswith("Of 10 such readings"))
    assert chance.endswith((": sure.", ": likely.", ": even.", ": unlikely."))


def test_the_suppliers_file_and_place_are_named() -> None:
    sheet = laid_out(usual_fit(8))
    reasons = reasons_for(sheet, model_rows(sheet)[0], Words("en"))
    assert reasons.file in reasons.source
    assert reasons.place in reasons.source


def test_a_reply_names_two_candidates_at_most() -> None:
    sheet = laid_out(usual_fit(20))
    assert sheet.counts[Band.TRY] > CANDIDATES
    assert len(candidates(sheet)) == CANDIDATES


def test_a_reply_echoes_the_readings_and_carries_every_caution() -> None:
    found = usual_fit(12)
    rider = rider_of(chest=92.7, waist=76.0, hip=99.0, back_length=43.0)
    text = reply(laid_out(found), ModelGroups.of(found.table), Draft(rider), "en")
    assert "92.7 cm (36 1/2 in)" in text
    for caution in ("take precedence", "Too long is dangerous", "not medical", "do not alter"):
        assert caution in text


def test_a_reply_where_nothing_fits_says_what_else_to_do() -> None:
    found = usual_fit(6, chest=150.0, waist=150.0, hip=160.0, back_length=70.0)
    rider = rider_of(chest=150.0)
    text = reply(laid_out(found), ModelGroups.of(found.table), Draft(rider), "en")
    assert "made to measure" in text


def test_five_models_at_most_go_on_paper_and_the_chosen_one_is_among_them() -> None:
    sheet = laid_out(usual_fit(20))
    last = model_rows(sheet)[-1]
    rows = rows_to_print(sheet, last)
    assert len(rows) == MOST_MODELS
    assert last.key in {row.key for row in rows}
