"""What may be said of a whole column without being asked."""

from __future__ import annotations

from charts.answers import Answer, Meaning
from charts.importer import read_bytes
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension
from charts.wording import Wording
from ui.questions_page.column_words import ColumnWord, column_words

EN = Wording("en")
CHART = b"Size,Chest (cm),Hip (cm)\nS,84-92,90-98\nM,92-98,98-104\nL,98-104,104-110\n"
NAME = "alder/harrier.csv"


def offered(place: str) -> dict[str, ColumnWord]:
    reading = read_bytes(CHART, NAME)
    return {word.text: word for word in column_words(reading.charts, place, EN)}


def said(word: ColumnWord) -> Meaning:
    assert isinstance(word.act, Meaning)
    return word.act


def test_the_finished_measures_of_the_vest_are_offered_and_read_at_once() -> None:
    act = said(offered("B3")["Finished measures of the vest"])
    reading = read_bytes(CHART, NAME, "", [Answer(act, "Ada")])
    bases = {one.dimension: one.basis for size in reading.charts[0].sizes for one in size.ranges}
    assert bases[Dimension.CHEST] is Basis.FINISHED
    assert bases[Dimension.HIP] is not Basis.FINISHED


def test_the_hip_at_the_seat_is_offered_and_read_at_once() -> None:
    act = said(offered("C3")["Hip: at the seat"])
    reading = read_bytes(CHART, NAME, "", [Answer(act, "Ada")])
    (hip, *_) = [one for one in reading.charts[0].sizes[0].ranges if one.dimension == "hip"]
    assert hip.definition is Definition.HIP_SEAT


def test_the_unit_is_offered_for_the_column_but_not_the_one_it_has() -> None:
    words = offered("B3")
    assert "Its figures are in centimetres" not in words
    assert said(words["Its figures are in inches"]).unit is Unit.IN


def test_nothing_is_offered_where_no_value_was_read() -> None:
    assert not offered("A1")


def test_a_line_of_several_values_is_told_by_what_is_printed() -> None:
    mail = (
        b"Size S: chest 84-92 cm | hip 90-98 cm\nSize M: chest 92-98 cm | hip 98-104 cm\n"
        b"Size L: chest 98-104 cm | hip 104-110 cm\n"
    )
    charts = read_bytes(mail, "alder/mail.txt").charts
    hip = next(one for one in charts[0].sizes[0].ranges if one.dimension is Dimension.HIP)
    words = column_words(charts, hip.place, EN, hip.published)
    assert "Hip: at the seat" in {word.text for word in words}
