"""Everything there is to say about one size for one rider, the weightiest first."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from charts.model_facts import Rule, VestKind
from charts.reason import Reason
from charts.schema import Dimension
from harmonizer.certainty import word
from harmonizer.fit_row import FitRow
from harmonizer.gates import Gate
from harmonizer.not_compared import is_not_compared
from harmonizer.rider import Measure
from harmonizer.shape import shape_of
from harmonizer.states import GirthState, LengthState
from harmonizer.verdict_words import size_name

_CHART_SIDE: Final = {"basis": "assumed-basis", "derived": "assumed-derived"}


def reasons(row: FitRow) -> tuple[Reason, ...]:
    """Why a size has its verdict: gates, dimensions, saddle, reserve, borders, marks, source."""
    return (
        *gate_reasons(row),
        *(one.reason for one in row.dimensions.values()),
        *_saddle(row),
        *_reserve(row),
        *_shape(row),
        *_experience(row),
        *between_reasons(row),
        *_marks(row),
        *chance_reasons(row),
        source(row),
    )


def gate_reasons(row: FitRow) -> Iterator[Reason]:
    """The gates that refused the size or could not be decided, with their figures."""
    facts, weight = row.offer.facts, row.arrays.body.weight_kg or 0.0
    floor = float(facts.weight_floor or 0) if facts else 0.0
    ceiling = float(facts.weight_ceiling or 0) if facts else 0.0
    values: dict[Gate, dict[str, object]] = {
        Gate.UNDER_WEIGHT_FLOOR: {"by": floor - weight},
        Gate.WEIGH_FIRST: {"floor": floor},
        Gate.OVER_WEIGHT_CEILING: {"by": weight - ceiling},
        Gate.LEVEL_DIFFERS: {
            "level": facts.level if facts else "",
            "asked": row.arrays.rider.needs.level or "",
        },
    }
    for gate in row.gates:
        yield Reason(f"gate-{gate.value}", values.get(gate, {}))


def _saddle(row: FitRow) -> Iterator[Reason]:
    found = row.clearance
    settings = row.arrays.settings
    if found is not None:
        values: dict[str, object] = {
            "c": found.cm,
            "hands": found.hands,
            "hand": settings.hand_width,
            "band": Reason(f"hands-{found.band.value}"),
        }
        yield Reason("clearance", values)
    elif row.arrays.body.c7_above_seat is not None:
        yield Reason("clearance-not-known")


def _reserve(row: FitRow) -> Iterator[Reason]:
    """What is left for an inflatable vest to expand into."""
    chest = row.dimensions[Dimension.CHEST]
    if row.offer.kind != VestKind.INFLATABLE or chest.state is GirthState.NOT_CHECKED:
        return
    left, used = row.reserve, row.stretch_used
    facts = row.offer.facts
    if left is not None and used is not None:
        stated = facts.elastic.reserve if facts and facts.elastic else None
        least = row.arrays.settings.reserve if stated is None else float(stated)
        share = f"{round(100 * used)} %"
        yield Reason("reserve-left", {"left": left, "used": share, "least": least})
    elif chest.upper_margin is not None and chest.upper_margin >= 0:
        yield Reason("reserve-not-known", {"left": chest.upper_margin})
    if row.arrays.rider.of(Measure.CHEST_OVER_FOAM):
        yield Reason("foam-chest-only")


def _shape(row: FitRow) -> Iterator[Reason]:
    shape, limit = shape_of(row), row.arrays.settings.cut_limit
    if shape.waist is not None and abs(shape.waist) > limit:
        code = "waist-loose-here" if shape.waist > 0 else "waist-tight-here"
        yield Reason(code, {"by": abs(shape.waist)})
    if shape.hip is not None and abs(shape.hip) > limit:
        code = "hip-tight-here" if shape.hip > 0 else "hip-loose-here"
        yield Reason(code, {"by": abs(shape.hip)})


def _experience(row: FitRow) -> Iterator[Reason]:
    """How the model came out in this shop; a note beside the chart, which alters nothing."""
    found = row.experience
    if found is not None:
        code = "came-out-smaller" if found.offset > 0 else "came-out-larger"
        yield Reason(code, {"by": abs(found.offset), "count": found.count})


def between_reasons(row: FitRow) -> Iterator[Reason]:
    """Between two sizes: the maker's own rule, unless the length stop is in its way."""
    if not row.between_sizes:
        return
    facts = row.offer.facts
    rule = facts.between_sizes if facts else None
    if rule is None:
        yield Reason("between-no-rule")
    elif _rule_meets_stop(row, rule):
        yield Reason("between-stop-wins", {"rule": Reason(f"rule-{rule.value}")})
    elif facts is not None and facts.between_sizes_source:
        yield Reason(f"between-{rule.value}-source", {"source": facts.between_sizes_source})
    else:
        yield Reason(f"between-{rule.value}")


def _rule_meets_stop(row: FitRow, rule: Rule) -> bool:
    """Whether the size the maker's rule asks for is too long."""
    arrays, larger = row.arrays, row.arrays.table.facts.larger
    up, asked = bool(arrays.between_up[row.at]), row.at
    if up and rule is Rule.LARGER:
        asked = int(larger[row.at])
    elif not up and rule is Rule.SMALLER:
        asked = next((at for at, above in enumerate(larger) if above == row.at), row.at)
    return FitRow(arrays, asked).length_verdict is LengthState.TOO_LONG


def _marks(row: FitRow) -> Iterator[Reason]:
    """Open questions, another band, and what the chart left unsaid."""
    if row.open_questions:
        yield Reason("questions", {"count": row.open_questions})
    if row.other_band:
        yield Reason("other-band", {"band": Reason(f"band-{row.offer.band}")})
    yield from assumed_reasons(row)


def assumed_reasons(row: FitRow) -> Iterator[Reason]:
    """What was taken as given because the chart does not say it."""
    for one in row.dimensions.values():
        for mark in one.assumed:
            if mark == "chart_definition":
                values = {"dimension": one.dimension, "definition": one.definition}
                yield Reason("assumed-chart", values)
            elif mark in _CHART_SIDE:
                yield Reason(_CHART_SIDE[mark], {"dimension": one.dimension})


def chance_reasons(row: FitRow) -> Iterator[Reason]:
    """The size probability as a natural frequency and a word, and how many dimensions it covers.

    No chance is told of a size of which neither chest nor waist was compared: a hip or a back alone
    may be ever so sure and says nothing of the size.
    """
    chance = row.probability
    if chance is not None and not is_not_compared(row):
        said = word(chance, row.arrays.settings)
        values = {"of_ten": round(10 * chance), "size": size_name(row)}
        yield Reason("chance-sure", values | {"word": Reason(f"word-{said}")})
    yield Reason("chance-checked", {"count": row.checked})


def source(row: FitRow) -> Reason:
    """Where the figures stand."""
    offer = row.offer
    values: dict[str, object] = {"file": offer.file, "place": offer.place}
    if offer.season:
        return Reason("source-season", values | {"season": offer.season})
    return Reason("source", values)
