"""Sentences of one pattern that end in the size."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from tests.charts.read_text import questions, values
from tests.charts.readers.reading import paste

_FRENCH = (
    "• Pour un tour de poitrine compris entre {} cm, vous faites un {} : votre taille sera {} ;"
)


def test_the_size_that_rises_is_the_label_and_the_whole_is_asked() -> None:
    rows = [("87 et 90", "S", "44"), ("91 et 94", "S", "46"), ("95 et 98", "M", "48")]
    text = "\n".join(["Guide pour homme ?", *(_FRENCH.format(*row) for row in rows)])
    reading = read_pasted(text)
    assert questions(reading) == ["text-order"]
    named = {key.removeprefix("men "): ends for key, ends in values(reading).items()}
    assert named == {"44 chest": (87, 90), "46 chest": (91, 94), "48 chest": (95, 98)}
    (basis,) = {one.basis.value for size in reading.charts[0].sizes for one in size.ranges}
    assert basis == "body"


def test_two_measures_and_limits_are_kept() -> None:
    one = "If your chest is under {} in and your waist {}-{} in, choose size {}."
    rows = [(36, 28, 30, "S"), (38, 30, 32, "M")]
    reading = read_pasted("\n".join(one.format(*row) for row in rows))
    assert values(reading) == {
        "S chest": (None, 91.44),
        "S waist": (71.12, 76.2),
        "M chest": (None, 96.52),
        "M waist": (76.2, 81.28),
    }


@pytest.mark.parametrize(
    "sentence",
    [
        "With a waist of {0} cm or less take size {1}",
        "Our model has a chest of {0} cm and wears size {1}",
        "With a chest of {0} cm and 70 kg take size {1}",
        "With a seam of {0} cm take size {1}",
        "With a chest of {0} take size {1}",
    ],
)
def test_open_ends_behind_models_and_unnamed_figures_make_no_table(sentence: str) -> None:
    text = "\n".join(sentence.format(*row) for row in ((90, "S"), (95, "M")))
    assert not read_pasted(text).charts


def test_sizes_that_do_not_rise_make_no_table() -> None:
    one = "With a chest of {} cm take size {}"
    text = "\n".join(one.format(*row) for row in ((90, "M"), (95, "S")))
    assert paste(text).codes == ["no-table"]
