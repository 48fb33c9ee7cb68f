"""An advice that is kept can be explained a year later."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import date

import pytest

from harmonizer.advice import advice_document, settings_of
from harmonizer.fit import fit
from harmonizer.settings import DEFAULTS
from tests.harmonizer.by_hand import CHART_A, RIDER_R, rows_chart, table


def test_the_settings_in_force_are_kept_with_the_advice() -> None:
    stricter = replace(DEFAULTS, hand_width=8.0, edge_band=1.5)
    sheet = fit(RIDER_R, table(rows_chart(CHART_A)), stricter)
    kept = json.loads(json.dumps(advice_document(sheet, date(2027, 2, 11))))
    assert settings_of(kept) == stricter
    assert kept["on"] == "2027-02-11"
    assert kept["fit"]["rows"][0]["verdict"] == sheet.rows[0].verdict


def test_a_newer_advice_is_refused() -> None:
    with pytest.raises(ValueError, match="newer"):
        settings_of({"format": 2, "settings": {}})
