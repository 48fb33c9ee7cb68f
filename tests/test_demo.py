"""The demo scenario keeps its own promises: what is planted is asked about, and nothing else."""

from __future__ import annotations

import importlib.util
import tomllib
from dataclasses import replace
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from charts.findings import Level
from charts.schema import Basis, Kind
from charts.wording import Wording
from harmonizer.cautions import cautions_for
from harmonizer.fit import fit
from harmonizer.plausibility import checks
from harmonizer.range_table import RangeTable
from harmonizer.rider import BodyFigure, Measure, Observed
from harmonizer.rider_before import last_time
from harmonizer.settings import DEFAULTS
from tests.demo_scenario import (
    CHART_FILES,
    CHARTS,
    DEMO,
    PLANTED,
    RIDER_FILES,
    Planted,
    all_offers,
    charts_of,
    facts,
    figures_meant,
    overlaps,
    places_of,
    questions,
    reading_of,
    rider,
    rows_of,
    sheet_of,
)

CLEAN_MODELS = ("Fellgarrow W", "Moorflanke", "Brisouar", "Gustwhirr", "Duinvlok")


def test_seven_makers_or_more_offer_twelve_models_or_more() -> None:
    assert len({entry.supplier for entry in facts()}) >= 7
    assert len({entry.model for entry in facts()}) >= 12
    assert {entry.kind.value for entry in facts() if entry.kind} == {"foam", "inflatable"}


def test_one_model_has_a_floor_of_seventy_pounds_and_some_have_a_ceiling() -> None:
    floors = {entry.model: entry.weight_floor for entry in facts()}
    assert floors["Pipwhirr"] is not None
    assert round(floors["Pipwhirr"], 2) == pytest.approx(31.75)
    assert any(entry.weight_ceiling for entry in facts())


def test_files_come_as_six_kinds_of_source() -> None:
    assert {Path(file).suffix for file in CHART_FILES} == {
        ".xlsx",
        ".csv",
        ".tsv",
        ".html",
        ".md",
        ".txt",
    }


def test_every_chart_file_belongs_to_a_model_and_every_model_has_its_file() -> None:
    assert {f"{entry.folder}/{entry.file}" for entry in facts()} == set(CHART_FILES)


@pytest.mark.parametrize("path", sorted(DEMO.rglob("*.toml")), ids=lambda path: path.name)
def test_every_file_of_settings_says_its_format(path: Path) -> None:
    assert tomllib.loads(path.read_text(encoding="utf-8"))["format"] == 1


@pytest.mark.parametrize("file", CHART_FILES)
def test_every_chart_file_is_read_without_an_error(file: str) -> None:
    reading = reading_of(file)
    assert reading.charts
    assert [f.code for f in reading.findings if f.level is Level.ERROR] == []


def test_at_least_six_slips_are_planted_in_at_least_six_ways() -> None:
    assert len(PLANTED) >= 6
    assert len({mistake.codes for mistake in PLANTED}) >= 6


@pytest.mark.parametrize("mistake", PLANTED, ids=lambda mistake: f"{mistake.file}:{mistake.place}")
def test_a_planted_slip_is_asked_about_at_its_place(mistake: Planted) -> None:
    reading = reading_of(mistake.file)
    at_place = [
        finding.code
        for finding in questions(reading)
        if any(overlaps(place, mistake.place) for place in places_of(finding, reading))
    ]
    assert set(at_place) & set(mistake.codes), at_place


@pytest.mark.parametrize("file", CHART_FILES)
def test_nothing_is_asked_that_was_not_planted(file: str) -> None:
    reading = reading_of(file)
    mistakes = [mistake for mistake in PLANTED if mistake.file == file]
    stray = [
        (finding.code, finding.place)
        for finding in questions(reading)
        if not any(
            finding.code in mistake.codes
            and any(overlaps(place, mistake.place) for place in places_of(finding, reading))
            for mistake in mistakes
        )
    ]
    assert stray == []


@pytest.mark.parametrize("model", CLEAN_MODELS)
def test_a_clean_chart_bears_no_question(model: str) -> None:
    found = charts_of(model)
    assert found
    for reading, chart in found:
        asked = {finding.id for finding in questions(reading)}
        values = [value for size in chart.sizes for value in size.ranges]
        assert [value.place for value in values if asked & set(value.findings)] == []


def test_no_figure_that_is_vouched_for_differs_from_the_one_the_maker_meant() -> None:
    meant = figures_meant()
    wrong, vouched_for = [], 0
    for offer in all_offers():
        for value in offer.ranges:
            key = (offer.model, offer.size, offer.length or "", value.dimension.value)
            if value.basis is Basis.FINISHED or set(value.findings) & set(offer.open_questions):
                continue
            given = (value.low, value.high)
            if value.kind is Kind.SINGLE or key not in meant or meant[key] != given:
                wrong.append((*key, value.kind.value, *given, meant.get(key)))
            vouched_for += 1
    assert wrong == []
    assert vouched_for > 350


def test_every_size_of_every_model_is_offered() -> None:
    count = {entry.model: 0 for entry in facts()}
    for offer in all_offers():
        assert offer.facts is not None, (offer.file, offer.place)
        count[offer.facts.model] += 1
    assert count == {
        "Fellgarrow W": 5,
        "Fellgarrow M": 5,
        "Moorflanke": 6,
        "Steinflanke": 6,
        "Alizane": 5,
        "Brisouar": 5,
        "Pipwhirr": 4,
        "Gustwhirr": 18,
        "Heidevlok": 5,
        "Duinvlok": 5,
        "Airebruna": 5,
        "Granvisp": 6,
        "Småvisp": 5,
        "Hedgetarrow": 12,
    }


def test_there_are_twelve_riders_from_eleven_to_sixty_three() -> None:
    assert len(RIDER_FILES) == 12
    ages = [rider(number).age for number in range(1, 13)]
    known = [age for age in ages if age is not None]
    assert len(known) == 12
    assert min(known) == 11
    assert 62 <= max(known) < 65


def test_men_women_and_two_children_ride() -> None:
    figures = [rider(number).figure for number in range(1, 13)]
    assert figures.count(BodyFigure.CHILD) == 2
    assert figures.count(BodyFigure.WOMAN) >= 4
    assert figures.count(BodyFigure.MAN) >= 4


@pytest.mark.parametrize("number", range(1, 13))
def test_every_rider_is_compared_with_every_size(number: int) -> None:
    assert len(sheet_of(number).rows) == 92


@pytest.mark.parametrize("number", [1, 2, 9])
def test_a_rider_of_ordinary_shape_measured_by_the_fitter_finds_a_vest_that_fits(
    number: int,
) -> None:
    assert rows_of(number, "fits")


def test_a_helpers_tape_leaves_mostly_lengths_to_check() -> None:
    assert sheet_of(3).rows[0].verdict in {"fits", "check_length"}
    assert len(rows_of(3, "check_length")) >= 4


def test_a_waist_larger_than_the_chest_fits_nothing_at_once() -> None:
    assert rows_of(4, "fits", "edge") == []
    assert rows_of(4, "near", "check_length")


def test_a_short_torso_gets_short_backs_only() -> None:
    best = rows_of(5, "fits", "edge", "check_length")
    assert best
    assert {row.offer.length for row in best} == {"Short"}
    assert len(rows_of(5, "too_long")) > len(sheet_of(5).rows) / 3


def test_a_rider_on_a_border_is_marked_between_sizes() -> None:
    found = [row for row in sheet_of(6).rows if row.between_sizes and row.offer.model == "Brisouar"]
    assert {row.offer.size for row in found} == {"M", "L"}


def test_the_largest_rider_fits_nothing() -> None:
    assert {row.verdict for row in sheet_of(7).rows} <= {"no", "too_long", "not_offered"}


def test_the_child_under_the_weight_floor_is_offered_no_inflatable_vest() -> None:
    for row in sheet_of(8).rows:
        if row.offer.kind == "inflatable":
            assert row.verdict == "not_offered"
            assert row.gates
    assert sheet_of(8).rows[0].offer.model == "Duinvlok"
    assert sheet_of(8).rows[0].verdict == "check_length"


def test_the_child_above_the_floor_is_offered_the_youth_vest() -> None:
    assert any(row.offer.model == "Pipwhirr" for row in rows_of(9, "fits", "edge"))


def test_one_rider_has_no_back_length() -> None:
    without = [n for n in range(1, 13) if not rider(n).of(Measure.BACK_LENGTH)]
    assert without == [11]


def test_a_chest_in_the_wrong_unit_fits_nothing() -> None:
    assert rows_of(10, "fits", "edge", "check_length", "length_unknown") == []


def test_the_same_rider_with_her_chest_in_inches_finds_vests() -> None:
    who = rider(10)
    in_inches = [
        replace(one, value=one.value * Decimal("2.54")) if one.measure is Measure.CHEST else one
        for one in who.readings
    ]
    sheet = fit(
        replace(who, readings=tuple(in_inches)),
        RangeTable.compiled(all_offers(), DEFAULTS),
        DEFAULTS,
    )
    assert any(row.verdict in {"fits", "edge", "check_length"} for row in sheet.rows)


def test_without_a_back_length_nothing_reads_as_fitting() -> None:
    assert rows_of(11, "fits", "edge", "check_length") == []
    assert rows_of(11, "length_unknown")


def test_only_what_came_by_mail_and_by_telephone_is_on_no_stated_day() -> None:
    without = [n for n in range(1, 13) if "no stated day" in cautions_for(rider(n), Wording())[1]]
    assert without == [10, 11]


def test_one_rider_was_here_before_and_has_grown() -> None:
    visited = [n for n in range(1, 13) if rider(n).earlier]
    assert visited == [9]
    who = rider(9)
    before = last_time(who, (), date(2027, 2, 13))
    assert before is not None
    assert {one.measure for one in before.readings} == {one.measure for one in who.earlier}
    (asked,) = [one for one in checks(who, before) if "since" in one.reason.code]
    assert (asked.reason.code, asked.measures) == ("grown-since", (Measure.BACK_LENGTH,))


def test_a_finished_length_and_a_seat_height_give_the_hand_above_the_saddle() -> None:
    """By hand: 66.5 - 49.5 - 5.0 leaves 12.0 cm, 1.33 hands of 9 cm, between 0.7 and 1.4."""
    seated = [n for n in range(1, 13) if rider(n).of(Measure.C7_ABOVE_SEAT)]
    assert seated == [2, 4]
    (row,) = (
        one
        for one in sheet_of(2).rows
        if one.offer.model == "Steinflanke" and one.offer.size == "52"
    )
    assert row.clearance is not None
    assert row.clearance.cm == pytest.approx(12.0)
    assert row.clearance.band is Observed.RIGHT


def test_winter_layers_leave_no_inflatable_vest_at_ease() -> None:
    wanted = [row for row in rows_of(12, "fits", "edge") if row.offer.kind == "inflatable"]
    assert wanted == []
    assert any(row.offer.kind == "inflatable" for row in rows_of(12, "near"))


def test_the_workbooks_are_what_their_script_writes(tmp_path: Path) -> None:
    from openpyxl import load_workbook

    script = DEMO / "build_workbooks.py"
    spec = importlib.util.spec_from_file_location("build_workbooks", script)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    kept_at = {
        "tarnwhistle": CHARTS / "tarnwhistle" / "Tarnwhistle size guide SS27.xlsx",
        "pinderlow": CHARTS / "pinderlow" / "pinderlow_2027.xlsx",
    }
    for name, path in kept_at.items():
        module.save(getattr(module, name)(), tmp_path / path.name)
        written, kept = load_workbook(tmp_path / path.name), load_workbook(path)
        assert written.sheetnames == kept.sheetnames
        for sheet in kept.sheetnames:
            cells = [[(c.value, c.number_format) for c in row] for row in kept[sheet].rows]
            assert [
                [(c.value, c.number_format) for c in row] for row in written[sheet].rows
            ] == cells
