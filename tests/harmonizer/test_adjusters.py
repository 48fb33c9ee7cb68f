"""How much of an adjuster a rider uses: 0 in the printed range, 1 at its reach, and said so."""

from __future__ import annotations

from decimal import Decimal

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.model_facts import Adjuster
from charts.quantities import Unit
from charts.schema import Dimension
from charts.wording import Wording
from harmonizer.explain import sentence
from harmonizer.fit import fit
from tests.harmonizer.by_hand import (
    BACK,
    CHEST,
    HIP,
    MAIN,
    WAIST,
    chart,
    fitted,
    model,
    rider,
    rows_chart,
    size,
    span,
    table,
)

ENGLISH, GERMAN = Wording("en"), Wording("de")
FOUR = {CHEST: Adjuster(Decimal(4), Decimal(4))}
GIRTH = st.sampled_from([CHEST, WAIST, HIP])
ways = st.decimals("0.5", 6, places=1)
readings = st.decimals(70, 120, places=1)


def used_of(dimension: Dimension, reading: Decimal, *, take_in: Decimal, let_out: Decimal) -> float:
    """The share in use by a reading against 88 to 96, a size without neighbours."""
    made = chart(size("M", span(dimension, 88, 96)))
    facts = {dimension: Adjuster(take_in, let_out)}
    found = fitted(
        rider(**{dimension.value: reading}), model("Elm", made, adjusters=facts), label="M"
    )
    share = found.dimensions[dimension].adjuster_used
    assert share is not None
    return share


@given(dimension=GIRTH, reading=st.decimals(88, 96, places=1), take_in=ways, let_out=ways)
def test_nothing_is_used_inside_the_printed_range(
    dimension: Dimension, reading: Decimal, take_in: Decimal, let_out: Decimal
) -> None:
    assert used_of(dimension, reading, take_in=take_in, let_out=let_out) == 0.0


@given(dimension=GIRTH, take_in=ways, let_out=ways, further=st.decimals(0, 20, places=1))
def test_all_is_used_at_the_reach_and_beyond(
    dimension: Dimension, take_in: Decimal, let_out: Decimal, further: Decimal
) -> None:
    for reading in (88 - take_in - further, 96 + let_out + further):
        used = used_of(dimension, reading, take_in=take_in, let_out=let_out)
        assert used == pytest.approx(1.0)


@given(dimension=GIRTH, one=readings, other=readings, take_in=ways, let_out=ways)
def test_the_further_outside_the_more_is_used(
    dimension: Dimension, one: Decimal, other: Decimal, take_in: Decimal, let_out: Decimal
) -> None:
    def off(reading: Decimal) -> Decimal:
        return max(88 - reading, reading - 96, Decimal(0))

    near, far = sorted((one, other), key=off)
    if (near < 92) is (far < 92):
        less = used_of(dimension, near, take_in=take_in, let_out=let_out)
        assert less <= used_of(dimension, far, take_in=take_in, let_out=let_out)


def test_a_dimension_without_an_adjuster_or_a_reading_uses_none() -> None:
    made = model("Elm", rows_chart({"M": ((88, 96), (74, 82))}), adjusters=FOUR)
    found = fitted(rider(waist=73), made, label="M").dimensions
    assert [found[one].adjuster_used for one in MAIN] == [None] * 4


def test_a_way_that_is_not_there_uses_nothing() -> None:
    only_out = {CHEST: Adjuster(Decimal(0), Decimal(4))}
    made = model("Elm", rows_chart({"M": ((88, 96),)}), adjusters=only_out)
    assert fitted(rider(chest=86), made, label="M").dimensions[CHEST].adjuster_used == 0.0


def test_an_open_end_needs_no_adjuster() -> None:
    made = model("Elm", rows_chart({"M": ((None, 96),)}), adjusters=FOUR)
    assert fitted(rider(chest=60), made, label="M").dimensions[CHEST].adjuster_used == 0.0
    assert fitted(rider(chest=97), made, label="M").dimensions[CHEST].adjuster_used == 0.25


def test_it_is_one_array_of_every_size() -> None:
    rows = {"S": ((80, 88),), "M": ((88, 96),), "L": ((96, 104),)}
    sheet = fit(rider(chest=97), table(model("Elm", rows_chart(rows), adjusters=FOUR)))
    assert sheet.adjusters_used.shape == sheet.lower.shape
    assert np.allclose(sheet.adjusters_used[0], [1.0, 0.25, 0.0])


def test_the_back_is_let_out_and_never_taken_in() -> None:
    facts = {BACK: Adjuster(Decimal(2), Decimal(2))}
    rows = {"M": ((88, 96), (74, 82), (96, 104), (42, 45))}
    made = model("Elm", rows_chart(rows), adjusters=facts)
    low = fitted(rider(chest=92, back_length=41), made, label="M").dimensions[BACK]
    high = fitted(rider(chest=92, back_length=46), made, label="M").dimensions[BACK]
    assert (low.adjuster_used, high.adjuster_used) == (0.0, 0.5)
    assert sentence(high.reason, ENGLISH) == (
        "Back 46 cm is 1 cm over 42 to 45: the adjuster lets it out, 1 of its 2 cm used."
    )
    assert sentence(high.reason, GERMAN) == (
        "Rücken 46 cm liegt 1 cm über 42 bis 45: Der Versteller gibt das her, 1 von 2 cm genutzt."
    )


@pytest.mark.parametrize(
    ("reading", "english", "german"),
    [
        (
            85,
            "3 cm under 88 to 96: the adjuster takes it in, 3 of its 4 cm used; it reaches 84.",
            (
                "3 cm unter 88 bis 96: "
                "Der Versteller nimmt das auf, 3 von 4 cm genutzt; er reicht bis 84."
            ),
        ),
        (
            98,
            "2 cm over 88 to 96: the adjuster lets it out, 2 of its 4 cm used; it reaches 100.",
            (
                "2 cm über 88 bis 96: "
                "Der Versteller gibt das her, 2 von 4 cm genutzt; er reicht bis 100."
            ),
        ),
    ],
)
def test_how_much_is_used_is_said_in_both_languages(
    reading: float, english: str, german: str
) -> None:
    made = model("Elm", rows_chart({"M": ((88, 96),)}), adjusters=FOUR)
    reason = fitted(rider(chest=reading), made, label="M").dimensions[CHEST].reason
    assert sentence(reason, ENGLISH) == f"Chest {reading} cm is {english}"
    assert sentence(reason, GERMAN) == f"Brustumfang {reading} cm liegt {german}"


def test_the_winter_layers_are_let_out_too() -> None:
    """2 pi times 5 mm add 3.14 cm: 95 becomes 98.14, of which 2.14 lie over the print."""
    made = model("Elm", rows_chart({"M": ((88, 96),)}), adjusters=FOUR)
    chest = fitted(rider(chest=95, winter_mm=Decimal(5)), made, label="M").dimensions[CHEST]
    assert chest.adjuster_used == pytest.approx(0.535, abs=0.001)
    assert sentence(chest.reason, ENGLISH) == (
        "Chest 95 cm with the winter layers is 2.1 cm over 88 to 96: "
        "the adjuster lets it out, 2.1 of its 4 cm used; it reaches 100."
    )


@pytest.mark.parametrize("ends", [(None, 96), (88, None), (88, 96)])
@pytest.mark.parametrize("reading", [86, 98])
@pytest.mark.parametrize("winter", [0, 2])
@pytest.mark.parametrize("language", ["en", "de"])
def test_every_form_of_the_sentence_is_there(
    ends: tuple[float | None, float | None], reading: float, winter: int, language: str
) -> None:
    made = model("Elm", rows_chart({"M": (ends,)}), adjusters=FOUR)
    chest = fitted(rider(chest=reading, winter_mm=Decimal(winter)), made, label="M")
    assert "{" not in sentence(chest.dimensions[CHEST].reason, Wording(language), Unit.IN)
