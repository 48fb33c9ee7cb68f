"""The pasted stock list: what a line says, which size it is about, and what is not guessed."""

from __future__ import annotations

import pytest

from harmonizer.fit import fit
from harmonizer.gates import Gate
from harmonizer.offers import Offer
from harmonizer.rider import Needs
from harmonizer.states import Verdict
from harmonizer.stock import Stock, matched, read_stock, stocked
from tests.harmonizer.by_hand import CHART_A, model, rider, rows_chart, table

A = rows_chart(CHART_A)


def offer(model_name: str = "Elm", size: str = "M", **more: str | None) -> Offer:
    return Offer("a.csv", 0, 0, "A1", model_name, size, (), **more)  # type: ignore[arg-type]  # names of text fields only


def standing(text: str, *offers: Offer) -> list[Stock | None]:
    return list(matched(read_stock(text), offers or (offer(),)).standing)


@pytest.mark.parametrize(
    ("line", "stock"),
    [
        ("Elm; M; in the house", Stock.IN_HOUSE),
        ("Elm\tM\tin stock", Stock.IN_HOUSE),
        ("elm M auf Lager", Stock.IN_HOUSE),
        ("Elm | M | im Haus", Stock.IN_HOUSE),
        ("Elm, M, to order", Stock.TO_ORDER),
        ("Elm Größe M: bestellbar", Stock.TO_ORDER),
        ("Elm size M - not this season", Stock.NOT_THIS_SEASON),
        ("Elm M diese Saison nicht", Stock.NOT_THIS_SEASON),
    ],
)
def test_a_line_is_read_in_english_and_german(line: str, stock: Stock) -> None:
    assert standing(line) == [stock]


@pytest.mark.parametrize(
    "line", ["Elm M", "Elm M 2", "Oak M in stock", "Elm in stock", "Elm ML in stock", "in stock"]
)
def test_a_line_that_is_not_whole_is_unclear_and_says_nothing(line: str) -> None:
    match = matched(read_stock(line), (offer(),))
    assert match.standing == (None,)
    assert [one.text for one in match.unclear] == [line]


def test_a_line_that_could_be_two_models_is_not_used() -> None:
    women, men = offer(band="women"), offer(band="men")
    assert standing("Elm M in stock", women, men) == [None, None]
    assert standing("Elm women M in stock", women, men) == [Stock.IN_HOUSE, None]


def test_a_size_in_two_lengths_wants_the_length_named() -> None:
    short, long = offer(length="short"), offer(length="long")
    assert standing("Elm M in stock", short, long) == [None, None]
    assert standing("Elm M long in stock", short, long) == [None, Stock.IN_HOUSE]


def test_two_lines_that_differ_on_one_size_cancel_each_other() -> None:
    match = matched(read_stock("Elm M in stock\nElm M to order"), (offer(),))
    assert match.standing == (None,)
    assert len(match.unclear) == 2


def gates_of(text: str, needs: Needs, **facts: object) -> dict[str, tuple[Gate, ...]]:
    body = {"chest": 94, "waist": 78, "hip": 100, "back_length": 44}
    compiled = table(model("Elm", A, **facts))
    sheet = fit(rider(**body, needs=needs), stocked(compiled, read_stock(text)))
    return {row.offer.size: row.gates for row in sheet.rows}


def test_only_what_is_in_the_house_passes_where_that_is_asked_for() -> None:
    gates = gates_of("Elm S in stock\nElm M to order", Needs(in_stock=True))
    assert gates["S"] == ()
    assert gates["M"] == (Gate.OUT_OF_STOCK,)


def test_a_size_that_is_not_on_the_list_is_named_and_not_refused() -> None:
    gates = gates_of("Elm S in stock", Needs(in_stock=True))
    assert gates["L"] == (Gate.STOCK_NOT_KNOWN,)


def test_unasked_the_list_refuses_nothing() -> None:
    assert set(gates_of("Elm S in stock\nElm M to order", Needs()).values()) == {()}


def test_the_list_goes_before_what_stands_in_the_facts() -> None:
    gates = gates_of("Elm M in stock", Needs(in_stock=True), out_of_stock=("M", "L"))
    assert gates["M"] == ()
    assert gates["L"] == (Gate.OUT_OF_STOCK,)


def test_a_size_to_order_is_not_offered_from_the_house() -> None:
    compiled = stocked(table(model("Elm", A)), read_stock("Elm M to order"))
    sheet = fit(rider(chest=94, needs=Needs(in_stock=True)), compiled)
    verdicts = {row.offer.size: row.verdict for row in sheet.rows}
    assert verdicts["M"] is Verdict.NOT_OFFERED
