"""Rows to compare, from charts and what stands beside them."""

from __future__ import annotations

from charts.findings import Candidate, Finding
from charts.model_facts import ModelFacts, VestKind
from charts.schema import Basis, Definition, Dimension, FileReading
from harmonizer.fit import fit
from harmonizer.offers import Offer, offers
from tests.harmonizer.by_hand import (
    BACK,
    CHEST,
    HIP,
    Said,
    chart,
    rider,
    rows_chart,
    single,
    size,
    span,
    table,
)

WIDTHS = rows_chart({"S": ((84, 90),), "M": ((90, 96),)})
LENGTHS = chart(
    size(None, span(BACK, 40, 43), length="short"), size(None, span(BACK, 43, 46), length="long")
)


def of(*charts, file: str = "elm.csv", facts: tuple[ModelFacts, ...] = ()) -> tuple[Offer, ...]:
    return offers([FileReading(file, charts)], facts)


def test_a_width_and_a_length_table_are_multiplied_out() -> None:
    rows = of(WIDTHS, LENGTHS)
    assert [(row.size, row.length) for row in rows] == [
        ("S", "short"),
        ("S", "long"),
        ("M", "short"),
        ("M", "long"),
    ]
    assert {item.dimension for item in rows[0].ranges} == {CHEST, BACK}


def test_a_length_table_with_labels_is_joined_by_label() -> None:
    labelled = chart(size("S", span(BACK, 40, 43)), size("M", span(BACK, 42, 45)))
    rows = of(WIDTHS, labelled)
    assert [(row.size, float(row.ranges[1].low or 0)) for row in rows] == [("S", 40.0), ("M", 42.0)]


def test_a_length_table_of_another_band_is_left_alone() -> None:
    women = rows_chart({"S": ((84, 90),)}, band="women")
    men = chart(size(None, span(BACK, 48, 52), length="long"), band="men")
    assert [row.size for row in of(women, men)] == ["S", "long"]


def test_tables_that_the_shop_says_are_one_model_are_joined_whatever_their_titles_suggest() -> None:
    widths = rows_chart({"S": ((84, 90),)}, model=Said("Elm vest", "title"))
    backs = chart(size("S", span(BACK, 40, 43), length="short"), model=Said("Elm backs", "title"))
    assert [row.length for row in of(widths, backs)] == [None, "short"]
    (row,) = of(widths, backs, facts=(ModelFacts(model="Elm", file="elm.csv"),))
    assert (row.model, row.size, row.length) == ("Elm", "S", "short")


def test_a_chart_with_its_own_back_lengths_takes_no_other() -> None:
    whole = rows_chart({"S": ((84, 90), (68, 76), (90, 96), (40, 43))})
    assert [row.size for row in of(whole, LENGTHS)] == ["S", "short", "long"]


def test_names_come_from_the_chart_first() -> None:
    named = rows_chart({"S": ((84, 90),)}, model=Said("Elm", "title"))
    facts = ModelFacts(model="elm", supplier="Alderbrook", file="elm.csv", season="spring")
    (row,) = of(named, facts=(facts,))
    assert (row.model, row.supplier, row.season) == ("Elm", "Alderbrook", "spring")


def test_names_come_from_the_facts_next_and_the_file_last() -> None:
    facts = ModelFacts(model="Alder 2", folder="alder", file="two.csv")
    (row,) = of(rows_chart({"S": ((84, 90),)}), file="alder/two.csv", facts=(facts,))
    assert (row.model, row.supplier) == ("Alder 2", "alder")
    (row,) = of(rows_chart({"S": ((84, 90),)}), file="alder/two.csv")
    assert row.model == "two"


def test_what_is_written_of_a_chart_goes_before_what_its_file_and_titles_suggest() -> None:
    suggested = rows_chart(
        {"S": ((84, 90),)},
        supplier=Said("alder", "folder"),
        model=Said("Dear customers", "title"),
        season=Said("2026", "file"),
    )
    facts = ModelFacts(model="Elm", supplier="Alderbrook", file="elm.csv", season="spring 2027")
    (row,) = of(suggested, facts=(facts,))
    assert (row.model, row.supplier, row.season) == ("Elm", "Alderbrook", "spring 2027")


def test_a_season_that_the_chart_prints_stands_against_older_notes() -> None:
    printed = rows_chart({"S": ((84, 90),)}, season=Said("spring 2028", "title"))
    facts = ModelFacts(model="Elm", file="elm.csv", season="spring 2027")
    (row,) = of(printed, facts=(facts,))
    assert row.season == "spring 2028"


def test_notes_that_say_the_same_season_and_more_are_taken() -> None:
    printed = rows_chart({"S": ((84, 90),)}, season=Said("2027", "title"))
    facts = ModelFacts(model="Elm", file="elm.csv", season="spring 2027")
    (row,) = of(printed, facts=(facts,))
    assert row.season == "spring 2027"


def test_sheets_that_tell_charts_apart_name_the_models() -> None:
    women = rows_chart({"S": ((84, 90),)}, place="Women!A1:B3")
    men = rows_chart({"S": ((94, 100),)}, place="Men!A1:B3")
    assert [row.model for row in of(women, men)] == ["Women", "Men"]


def test_facts_that_name_the_chart_go_before_those_of_the_whole_file() -> None:
    women = rows_chart({"S": ((84, 90),)}, place="Women!A1:B3", band="women")
    men = rows_chart({"S": ((94, 100),)}, place="Men!A1:B3", band="men")
    whole = ModelFacts(model="Elm", file="elm.csv", kind=VestKind.FOAM)
    ladies = ModelFacts(model="Elm Ladies", file="elm.csv", chart="Women")
    assert [row.model for row in of(women, men, facts=(whole, ladies))] == ["Elm Ladies", "Elm"]


def test_the_word_men_is_not_found_within_women() -> None:
    women = rows_chart({"S": ((84, 90),)}, place="Women!A1:B3", band="women")
    men = ModelFacts(model="Elm Men", file="elm.csv", chart="Men")
    (row,) = of(women, facts=(men,))
    assert row.facts is None


def test_open_questions_of_a_size_are_counted_once() -> None:
    asked = Finding("f1", "unit-missing", "A1", candidates=(Candidate("34 in"),))
    told = Finding("f2", "gap", "A1")
    ranges = [span(one, 84, 90, findings=("f1", "f2")) for one in (CHEST, HIP)]
    (row,) = offers([FileReading("elm.csv", (chart(size("S", *ranges)),), (asked, told))], ())
    assert row.open_questions == ("f1",)


def test_a_definition_from_the_instructions_is_no_assumption() -> None:
    made = rows_chart({"S": ((84, 90), (68, 76), (90, 98))})
    facts = ModelFacts(model="Elm", file="elm.csv", definitions={HIP: Definition.HIP_SEAT})
    compiled = table((FileReading("elm.csv", (made,)), facts))
    seat = rider(chest=87, hip=94)
    assert fit(seat, compiled).row_of(0).dimensions[HIP].reason.code == "definitions-differ"


def test_a_finished_measure_is_never_compared() -> None:
    made = chart(size("S", span(CHEST, 84, 90), single(BACK, 50, basis=Basis.FINISHED)))
    row = fit(rider(chest=87, back_length=43), table(made)).row_of(0)
    assert row.dimensions[BACK].state == "not_known"
    assert row.dimensions[BACK].reason.code == "finished"
    assert row.arrays.table.finished_back[0] == 50.0


def test_a_single_value_alone_is_a_question() -> None:
    made = chart(size("S", span(CHEST, 84, 90), single(Dimension.WAIST, 70)))
    row = fit(rider(chest=87, waist=70), table(made)).row_of(0)
    assert row.dimensions[Dimension.WAIST].reason.code == "single-alone"
    assert row.open_questions == 1
