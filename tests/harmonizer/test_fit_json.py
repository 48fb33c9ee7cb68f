"""The fit document of the command line: exactly the agreed form."""

from __future__ import annotations

import json
import math
from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from charts.model_facts import ModelFacts, VestKind
from charts.schema import FileReading
from harmonizer.fit import fit
from harmonizer.fit_json import fit_document
from harmonizer.rider import Rider
from harmonizer.states import GirthState, LengthState, Verdict
from tests.harmonizer.by_hand import CHART_A, RIDER_R, model, rows_chart, table
from tests.harmonizer.random_charts import models, riders

ROW = [
    "file",
    "supplier",
    "model",
    "kind",
    "band",
    "size",
    "length",
    "verdict",
    "girth_verdict",
    "length_verdict",
    "checked",
    "penalty",
    "probability",
    "too_long_probability",
    "between_sizes",
    "open_questions",
    "gates",
    "dimensions",
]
DIMENSION = [
    "state",
    "lower_margin",
    "upper_margin",
    "margin",
    "position",
    "probability",
    "assumed",
    "reason",
]


def document(who: Rider, *made: tuple[FileReading, ModelFacts]) -> dict:
    sheet = fit(who, table(*made))
    return json.loads(json.dumps(fit_document(sheet), allow_nan=False))


def test_rider_r_in_m_reads_as_in_the_agreed_example() -> None:
    air = model("Alder 2", rows_chart(CHART_A), kind=VestKind.INFLATABLE)
    found = document(RIDER_R, air)
    assert found["format"] == 1
    first = found["rows"][0]
    assert list(first) == ROW
    assert (first["model"], first["size"], first["length"]) == ("Alder 2", "M", None)
    assert (first["kind"], first["verdict"], first["girth_verdict"]) == (
        "inflatable",
        "near",
        "near",
    )
    assert (first["length_verdict"], first["checked"]) == ("check", 4)
    assert round(first["penalty"], 4) == 0.2591
    assert round(first["too_long_probability"], 3) == 0.159
    chest = first["dimensions"]["chest"]
    assert list(chest) == DIMENSION
    assert (chest["state"], chest["lower_margin"], chest["upper_margin"]) == ("inside", 3.0, 5.0)
    assert (chest["margin"], chest["position"]) == (3.0, 0.375)
    assert chest["reason"].startswith("Chest 93 cm")


@given(who=riders(), made=st.tuples(models("Elm"), models("Oak")))
def test_every_word_is_one_of_the_agreed_words(
    who: Rider, made: tuple[tuple[FileReading, ModelFacts], ...]
) -> None:
    rows = document(who, *made)["rows"]
    assert rows
    for row in rows:
        assert row["verdict"] in set(Verdict)
        assert row["girth_verdict"] in set(GirthState)
        assert row["length_verdict"] in set(LengthState)
        assert {"chest", "waist", "hip", "back_length"} <= set(row["dimensions"])
        for name, one in row["dimensions"].items():
            assert one["state"] in set(LengthState if name == "back_length" else GirthState)
            for figure in ("lower_margin", "upper_margin", "margin", "position", "probability"):
                assert one[figure] is None or math.isfinite(one[figure])


def test_an_open_side_has_no_margin() -> None:
    open_below = model("Elm", rows_chart({"XS": ((None, 84),)}))
    who = Rider("Rider", RIDER_R.readings)
    chest = document(who, open_below)["rows"][0]["dimensions"]["chest"]
    assert chest["lower_margin"] is None
    assert chest["upper_margin"] == -9.0
    assert chest["position"] is None


def test_the_rider_keeps_what_was_typed_beside_the_value() -> None:
    (entry,) = document(
        Rider("Rider", (RIDER_R.readings[0],), age=Decimal(34)), model("Elm", rows_chart(CHART_A))
    )["rider"]["readings"]
    assert entry["dimension"] == "chest"
    assert entry["value"] == 93.0
