"""The reasons for the chosen row, and the reply made from them."""

from __future__ import annotations

from decimal import Decimal

from charts.model_facts import ModelFacts, VestKind
from charts.schema import FileReading
from harmonizer.choice_reasons import why_not
from harmonizer.explain import sentence
from harmonizer.fit import fit
from harmonizer.offers import offers
from harmonizer.range_table import RangeTable
from tests.ui.fitting_page.test_fit_rows import laid_out, model_rows
from tests.ui.shop import model_chart, rider_of, usual_fit
from ui.fitting_page.advice_lines import all_reasons
from ui.fitting_page.chosen import QUIET, ReasonLine, reasons_for
from ui.fitting_page.draft import Draft
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.print_sheet import MOST_MODELS, rows_to_print
from ui.fitting_page.reply import CANDIDATES, candidates, reply
from ui.fitting_page.rows import Band
from ui.theme import GATE_LOOK
from ui.words import Words


def floored(kind: VestKind = VestKind.INFLATABLE) -> RangeTable:
    """One model that needs 40 kg."""
    facts = ModelFacts(model="Merle", file="m.csv", kind=kind, weight_floor=Decimal(40))
    charts = (model_chart("Alderway", "Merle"),)
    return RangeTable.compiled(offers([FileReading("m.csv", charts)], (facts,)))


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
    said = [line.text for line in all_reasons(sheet, row, Words("en")).lines]
    assert any(text.startswith(("Not S:", "S would", "S may")) for text in said)
    assert any(text.startswith(("Not L:", "L would", "L may")) for text in said)


def test_the_page_explains_a_neighbour_in_the_engines_own_words() -> None:
    sheet = laid_out(usual_fit(8))
    row = next(one for one in model_rows(sheet) if one.size == "M")
    said = [line.text for line in all_reasons(sheet, row, Words("en")).lines]
    for at in sheet.neighbours(row):
        why = why_not(sheet.fit_row(row), sheet.fit.row_of(at))
        assert sentence(why, Words("en").wording) in said
    assert len(sheet.neighbours(row)) == 2


def test_a_gate_is_said_with_its_figure() -> None:
    found = fit(rider_of(chest=92.7, weight=30.0), floored())
    sheet = laid_out(found)
    said = reasons_for(sheet, model_rows(sheet)[0], Words("en")).lines
    assert said[0] == ReasonLine("Not offered: under the weight floor by 10 kg.", GATE_LOOK)


def test_a_gate_that_cannot_be_decided_does_not_look_like_a_stop() -> None:
    found = fit(rider_of(chest=92.7), floored(VestKind.FOAM))
    sheet = laid_out(found)
    said = reasons_for(sheet, model_rows(sheet)[0], Words("en")).lines
    assert said[0] == ReasonLine(
        "The maker states weight limits, and the weight is not known.", QUIET
    )


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
