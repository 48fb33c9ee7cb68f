"""Which size came out right: kept as text, told from five fittings on, and altering nothing."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.answers_toml import AnswersFileError
from charts.schema import Chart, FileReading, Said
from charts.wording import LANGUAGES, Wording
from charts.writers.whole_file import NotWrittenError
from harmonizer.explain import sentence
from harmonizer.fit import fit
from harmonizer.offers import model_key, offers
from harmonizer.outcomes import Choice, Outcome, choice_of, with_experience
from harmonizer.range_table import RangeTable
from harmonizer.row_reasons import reasons
from harmonizer.settings import DEFAULTS
from harmonizer.shop.outcome_toml import read_outcomes, write_outcomes
from harmonizer.shop.shop_folder import ShopFolder
from harmonizer.workspace import Workspace
from tests.harmonizer.by_hand import BACK, CHEST, chart, rider, single, size, span

DAY = date(2027, 2, 11)
TEXTS = st.text(st.characters(exclude_categories=["Cs"]), min_size=1, max_size=12)
CM = st.decimals(-40, 40, places=2)
OUTCOMES = st.builds(
    Outcome, TEXTS | st.just(""), TEXTS, TEXTS, TEXTS, TEXTS, TEXTS, TEXTS, CM, st.dates()
)
SIZES = {"S": (84, 92), "M": (90, 98), "L": (96, 104)}
FIGURES = (
    "verdicts",
    "girths",
    "states",
    "penalty",
    "probability",
    "plen",
    "order",
    "lower",
    "upper",
    "between",
)


def model(name: str = "Harrier", shift: float = 0, season: str = "2027") -> Chart:
    """The chests of chart A, moved by ``shift``."""
    sizes = (
        size(label, span(CHEST, low + shift, high + shift), span(BACK, 40, 46))
        for label, (low, high) in SIZES.items()
    )
    made = chart(*sizes, band="women")
    return replace(
        made,
        supplier=Said("Alderway", "folder"),
        model=Said(name, "title"),
        season=Said(season, "title"),
    )


def table_of(*charts: Chart) -> RangeTable:
    return RangeTable.compiled(offers([FileReading("a.csv", charts)]))


def choice(table: RangeTable, name: str = "Harrier", chest: float = 94) -> Choice:
    key = next(model_key(offer) for offer in table.offers if offer.model == name)
    return choice_of(fit(rider(chest=chest, back_length=44), table), key)


def outcome(table: RangeTable, fitted: str = "L") -> Outcome:
    found = choice(table).outcome(fitted, DAY)
    assert found is not None
    return found


def noted(table: RangeTable, outcomes: list[Outcome]) -> set[str]:
    """The models beside which something is noted."""
    told = with_experience(table, outcomes).facts.experience
    return {
        f"{offer.model} {offer.season}"
        for offer, found in zip(table.offers, told, strict=True)
        if found is not None
    }


def test_the_outcome_is_the_difference_of_the_chest_centres() -> None:
    """By hand: M 90-98 has its centre at 94, L 96-104 at 100, S 84-92 at 88."""
    table = table_of(model())
    assert [outcome(table, fitted).cm for fitted in SIZES] == [-6, 0, 6]
    assert outcome(table).predicted == "M"


def test_the_menu_has_every_size_once_in_the_order_of_the_chart() -> None:
    made = chart(
        *(
            size(label, span(CHEST, low, low + 8), length=length)
            for label, low in (("S", 84), ("M", 90))
            for length in ("Short", "Long")
        ),
        model=Said("Merle", "title"),
    )
    assert [offer.size for offer in choice(table_of(made), "Merle").offers] == ["S", "M"]


def test_an_open_end_gives_no_difference_but_right_first_time_is_zero_all_the_same() -> None:
    sizes = (
        size("M", span(CHEST, 90, 98)),
        size("L", span(CHEST, 98, None)),
        size("XL", single(CHEST, 110)),
    )
    table = table_of(chart(*sizes, model=Said("Merle", "title")))
    advised_m, advised_l = choice(table, "Merle", 94), choice(table, "Merle", 101)
    assert advised_m.outcome("L", DAY) is None
    exact = advised_m.outcome("XL", DAY)
    assert exact is not None
    assert exact.cm == 16  # a single figure is its own centre
    right = advised_l.outcome("L", DAY)
    assert right is not None
    assert (right.predicted, right.cm) == ("L", Decimal(0))


def test_a_name_that_two_sizes_bear_is_never_guessed_at() -> None:
    """A chart with its L mistyped as M: which of the two M fitted cannot be told."""
    sizes = (("S", 84), ("M", 90), ("M", 96), ("XL", 104))
    made = chart(*(size(label, span(CHEST, low, low + 6)) for label, low in sizes))
    table = table_of(replace(made, model=Said("Merle", "title")))
    assert [offer.size for offer in choice(table, "Merle").offers] == ["S", "M", "XL"]
    assert [choice(table, "Merle", 87).outcome(label, DAY) is None for label in SIZES] == [
        False,
        True,
        True,
    ]
    assert choice(table, "Merle", 93).outcome("M", DAY) is None
    assert choice(table, "Merle", 93).outcome("S", DAY) is None


def test_nothing_is_kept_of_a_chart_without_a_chest_or_where_nothing_was_compared() -> None:
    bare = table_of(chart(size("M", span(BACK, 40, 46)), model=Said("Merle", "title")))
    assert choice(bare, "Merle").outcome("M", DAY) is None
    table = table_of(model())
    key = model_key(table.offers[0])
    nothing = choice_of(fit(rider(back_length=44), table), key)
    assert nothing.predicted is None
    assert nothing.outcome("M", DAY) is None


def test_the_worked_example_goes_through_the_stored_file(tmp_path: Path) -> None:
    """By hand: n 3, mean 2.67, silent; n 12, mean 2.0: 1.50, runs small, 12 fittings."""
    table = table_of(model())
    one = outcome(table)
    three = [replace(one, cm=Decimal(cm)) for cm in ("2", "3", "3.01")]
    twelve = [replace(one, cm=Decimal(2))] * 12
    for outcomes, told in ((three, None), (twelve, 1.5)):
        folder = ShopFolder(tmp_path / str(len(outcomes)))
        folder.write((), (), fittings=outcomes)
        kept = folder.read().fittings
        assert kept == tuple(outcomes)
        sheet = fit(rider(chest=94), with_experience(table, kept))
        found = sheet.rows[0].experience
        assert (found is None) == (told is None)
        if found is not None:
            assert found.offset == pytest.approx(told)
            assert found.count == 12
            assert (found.low, found.high) == pytest.approx((0.54, 2.46), abs=0.005)


@pytest.mark.parametrize(
    ("cm", "language", "said"),
    [
        (2, "en", "In this shop it came out 1.5 cm smaller than its chart, 12 fittings."),
        (-2, "en", "In this shop it came out 1.5 cm larger than its chart, 12 fittings."),
        (2, "de", "fiel das Modell 1,5 cm kleiner aus als seine Tabelle, 12 Anproben."),
        (-2, "de", "fiel das Modell 1,5 cm größer aus als seine Tabelle, 12 Anproben."),
    ],
)
def test_a_reason_says_it_and_that_the_advice_leaves_it_out(
    cm: int, language: str, said: str
) -> None:
    table = table_of(model())
    outcomes = [replace(outcome(table), cm=Decimal(cm))] * 12
    row = fit(rider(chest=94), with_experience(table, outcomes)).rows[0]
    codes = [one for one in reasons(row) if one.code.startswith("came-out")]
    (told,) = (sentence(one, Wording(language)) for one in codes)
    assert said in told
    assert ("not take this into account" if language == "en" else "rechnet das nicht ein") in told


def test_right_first_time_counts_against_a_note() -> None:
    """By hand: 5 of 6 cm among 60: mean 0.5 -> 0.47, and half the 80 % interval is 0.48."""
    table = table_of(model())
    small = [outcome(table)] * 5
    assert noted(table, small)
    assert not noted(table, small + [outcome(table, "M")] * 55)


def test_four_fittings_say_nothing_and_the_fifth_does() -> None:
    table = table_of(model())
    assert not noted(table, [outcome(table)] * 4)
    assert noted(table, [outcome(table)] * 5)


def test_a_chart_whose_chest_figures_change_starts_again() -> None:
    old = table_of(model())
    outcomes = [outcome(old)] * 12
    same = table_of(model(season="2028"), model("Lapwing"))
    assert noted(same, outcomes) == {"Harrier 2028"}
    assert noted(table_of(model(shift=0.5, season="2028")), outcomes) == set()


def test_the_settings_decide_how_soon_it_is_told() -> None:
    table = table_of(model())
    outcomes = [outcome(table, "L")] * 5
    calm = RangeTable.compiled(table.offers, replace(DEFAULTS, fitting_sd=9.0))
    assert noted(table, outcomes)
    assert not noted(calm, outcomes)


@given(
    st.lists(st.sampled_from([Decimal(-6), Decimal(0), Decimal(6)]), min_size=5, max_size=40),
    st.floats(80, 108),
)
def test_experience_alters_no_figure_no_verdict_and_no_order(
    outcomes: list[Decimal], chest: float
) -> None:
    table = table_of(model(), model("Lapwing", 1), model("Merle", -1))
    kept = [replace(outcome(table), cm=cm) for cm in outcomes]
    who = rider(chest=chest, back_length=44)
    plain, ours = fit(who, table), fit(who, with_experience(table, kept))
    for name in FIGURES:
        assert np.array_equal(getattr(plain, name), getattr(ours, name), equal_nan=True)
    assert [row.verdict for row in plain.rows] == [row.verdict for row in ours.rows]
    assert plain.table.offers == ours.table.offers


@given(st.lists(OUTCOMES, max_size=4))
def test_outcomes_read_back_as_they_were_written(outcomes: list[Outcome]) -> None:
    assert read_outcomes(write_outcomes(outcomes)) == tuple(outcomes)


def test_the_file_is_read_by_a_person_and_says_nothing_of_the_rider() -> None:
    table = table_of(model())
    text = write_outcomes([outcome(table)])
    chest = outcome(table).chest
    assert text == (
        'format = 1\n\n[[fitting]]\nmaker = "Alderway"\nmodel = "Harrier"\nband = "women"\n'
        f'season = "2027"\nchest = "{chest}"\npredicted = "M"\nfitted = "L"\ncm = 6\n'
        "on = 2027-02-11\n\n"
    )


GOOD = write_outcomes([Outcome("", "Harrier", "", "", "ab", "M", "L", Decimal(6), DAY)])


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("format = 1", "format = 2"),
        ("cm = 6", ""),
        ("cm = 6", "cm = nan"),
        ("cm = 6", 'cm = "6"'),
        ("cm = 6", "cm = true"),
        ("on = 2027-02-11", ""),
        ('model = "Harrier"', ""),
        ('fitted = "L"', ""),
        ('fitted = "L"', 'fitted = "L"\nrider = "x"'),
    ],
)
def test_a_file_that_cannot_be_used_is_refused_in_words_and_left_alone(
    tmp_path: Path, old: str, new: str
) -> None:
    assert old in GOOD
    text = GOOD.replace(old, new)
    with pytest.raises(AnswersFileError) as raised:
        read_outcomes(text)
    assert all(raised.value.say(Wording(language)) for language in LANGUAGES)
    (tmp_path / "fittings.toml").write_text(text, encoding="utf-8")
    folder = ShopFolder(tmp_path)
    assert [one.path.name for one in folder.read().refused] == ["fittings.toml"]
    folder.write((), ())
    with pytest.raises(NotWrittenError):
        folder.write((), (), fittings=read_outcomes(GOOD))
    assert (tmp_path / "fittings.toml").read_text(encoding="utf-8") == text


def test_keeping_is_a_step_that_can_be_taken_back_and_is_there_the_next_day(
    tmp_path: Path,
) -> None:
    one, path = outcome(table_of(model())), tmp_path / "fittings.toml"
    workspace = Workspace()
    told: list[frozenset[str]] = []
    workspace.on_change.append(told.append)
    workspace.keep_fitting(one)
    workspace.save_shop(ShopFolder(tmp_path))
    second = Workspace()
    second.open_shop(ShopFolder(tmp_path))
    assert second.fittings == (one,)
    assert not second.can_undo
    folder = ShopFolder(tmp_path)
    folder.read()
    workspace.undo()
    workspace.save_shop(folder)
    assert list(workspace.fittings) == []
    assert not path.exists()
    workspace.redo()
    assert list(workspace.fittings) == [one]
    assert told == [frozenset({"fittings"})] * 3


def test_what_is_said_anew_of_one_rider_stands_in_the_place_of_what_was_said() -> None:
    table, workspace = table_of(model()), Workspace()
    first, alike, other = outcome(table), outcome(table), outcome(table, "S")
    workspace.keep_fitting(first)
    workspace.keep_fitting(alike)
    workspace.keep_fitting(other, alike)
    assert list(workspace.fittings) == [first, other]
    workspace.keep_fitting(alike, alike)  # it is gone: nothing to stand in the place of
    assert list(workspace.fittings) == [first, other, alike]
