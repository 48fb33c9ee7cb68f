"""A table as a crowd meets it: the four dimensions that count, in the crowd's own definitions."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from charts.schema import Definition, Dimension
from harmonizer.bands import is_other_band
from harmonizer.gates import any_refused, standing_gates
from harmonizer.lanes import MAIN, Lane
from harmonizer.layers import largest_girth
from harmonizer.range_table import RangeTable
from harmonizer.rider import NO_NEEDS, BodyFigure

Floats = npt.NDArray[np.float64]
Flags = npt.NDArray[np.bool_]
Places = npt.NDArray[np.int64]

CHEST, WAIST, HIP, BACK = range(4)


@dataclass(frozen=True, slots=True, eq=False)
class CrowdTable:
    """Ranges as 4 x offers (chest, waist, hip, back length), facts as one value an offer.

    NaN where nothing is listed or said. ``refused`` where a gate failed that asks for no weight.
    """

    low: Floats
    high: Floats
    reach_low: Floats
    reach_high: Floats
    tolerance: Floats
    takes_layers: Flags
    stated_warm: Flags
    inflatable: Flags
    floor: Floats
    ceiling: Floats
    relaxed: Floats
    largest: Floats
    least_reserve: Floats
    refused: Flags
    other_band: Flags
    small_first: Places
    open_ended: bool
    has_limits: bool
    has_elastic: bool

    def __len__(self) -> int:
        return len(self.refused)


def crowd_table(
    table: RangeTable, definitions: Mapping[Dimension, Definition], figure: BodyFigure | None
) -> CrowdTable:
    """``table`` for riders of one figure, measured by ``definitions``, else by the shop's."""
    lanes = [
        Lane(one, definitions.get(one, table.settings.default_definition(one))) for one in MAIN
    ]
    facts = table.facts
    low, high = _four(table.low, table, lanes), _four(table.high, table, lanes)
    other = np.array([is_other_band(band, figure) for band in facts.bands], np.bool_)
    stated = facts.least_reserve
    return CrowdTable(
        low=low,
        high=high,
        reach_low=_four(table.reach_low, table, lanes),
        reach_high=_four(table.reach_high, table, lanes),
        tolerance=_four(table.tolerance, table, lanes),
        takes_layers=facts.takes_layers,
        stated_warm=facts.stated_warm,
        inflatable=facts.inflatable,
        floor=facts.weight_floor,
        ceiling=facts.weight_ceiling,
        relaxed=facts.relaxed,
        largest=largest_girth(facts.relaxed, facts.elastic_part, facts.extension),
        least_reserve=np.where(np.isnan(stated), table.settings.reserve, stated),
        refused=any_refused(standing_gates(facts, NO_NEEDS), len(table.offers)),
        other_band=np.asarray(other[facts.band]),
        small_first=facts.small_first,
        open_ended=bool(np.isinf(low[:BACK]).any() or np.isinf(high[:BACK]).any()),
        has_limits=not (np.isnan(facts.weight_floor) & np.isnan(facts.weight_ceiling)).all(),
        has_elastic=not np.isnan(facts.relaxed).all(),
    )


def _four(per_lane: Floats, table: RangeTable, lanes: list[Lane]) -> Floats:
    """The rows of the four lanes; NaN where no chart has one."""
    nothing = np.full(len(table.offers), np.nan)
    return np.stack(
        [per_lane[table.lanes.index(lane)] if lane in table.lanes else nothing for lane in lanes]
    )
