"""Why this size and not that one: one reason, the weightiest difference between the two."""

from __future__ import annotations

from collections.abc import Iterator

from charts.model_facts import Rule
from charts.reason import Reason
from harmonizer.dimension_fit import DimensionFit
from harmonizer.fit_row import FitRow
from harmonizer.states import VERDICTS, GirthState, LengthState, Verdict
from harmonizer.verdict_words import BACK, side_of, size_name, worst_girth

_LONG = (LengthState.TOO_LONG, LengthState.LIKELY_LONG)
_SHORT = (LengthState.TOO_SHORT, LengthState.SHORT)


def why_not(this: FitRow, that: FitRow) -> Reason:
    """Why ``this`` and not ``that``, both of one sheet, ``this`` being the better placed."""
    if VERDICTS.index(that.verdict) > VERDICTS.index(this.verdict):
        found = next(_worse_verdict(this, that), None)
        if found is not None:
            return found
    return next(_same_verdict(this, that), Reason("not-equal", _named(this, that)))


def _named(this: FitRow, that: FitRow, **values: object) -> dict[str, object]:
    return {"size": size_name(that, this), **values}


def _worse_verdict(this: FitRow, that: FitRow) -> Iterator[Reason]:
    """What makes the verdict of ``that`` the worse one, weightiest first."""
    if that.verdict is Verdict.NOT_OFFERED:
        yield Reason("not-refused", _named(this, that))
    if that.seen is not None and that.length_verdict is not LengthState.CLEAR:
        yield Reason("not-seen", _named(this, that))
    yield from _length(this, that, _LONG)
    if that.girth_verdict in (GirthState.MISS, GirthState.NEAR):
        yield from _girth(this, that)
    yield from _length(this, that, _SHORT)
    if that.girth_verdict is GirthState.NOT_CHECKED:
        yield Reason("not-less-checked", _named(this, that))
    if that.length_verdict is LengthState.NOT_KNOWN:
        yield Reason("not-length-unknown", _named(this, that))
    if that.length_verdict is LengthState.CHECK:
        yield Reason("not-length-check", _named(this, that))
    if that.girth_verdict is GirthState.EDGE:
        yield Reason("not-edge", _named(this, that))


def _length(this: FitRow, that: FitRow, states: tuple[LengthState, ...]) -> Iterator[Reason]:
    if that.length_verdict not in states:
        return
    back = that.dimensions[BACK]
    long = states is _LONG
    margin = back.lower_margin if long else back.upper_margin
    end = back.reach_low if long else back.reach_high
    if margin is None or end is None or margin >= 0:
        yield Reason("not-seen", _named(this, that))
    elif long:
        yield Reason("not-too-long", _named(this, that, a=end, by=-margin))
    else:
        yield Reason("not-short", _named(this, that, b=end, by=-margin))


def _girth(this: FitRow, that: FitRow) -> Iterator[Reason]:
    worst = worst_girth(that)
    if worst is None or worst.margin is None:
        return
    if worst.margin >= 0:
        elastic = worst.state is GirthState.NEAR
        yield Reason("not-elastic" if elastic else "not-less-checked", _named(this, that))
        return
    yield _outside(this, that, worst)


def _outside(this: FitRow, that: FitRow, worst: DimensionFit) -> Reason:
    tight = side_of(worst) == "tight"
    end = worst.reach_high if tight else worst.reach_low
    values = _named(this, that, dimension=worst.dimension, by=-(worst.margin or 0.0))
    if tight:
        return Reason("not-tight", values | {"b": end})
    return Reason("not-loose", values | {"a": end})


def _same_verdict(this: FitRow, that: FitRow) -> Iterator[Reason]:
    """What orders two sizes of one verdict, in the order in which it counts."""
    named = _named(this, that)
    if that.other_band and not this.other_band:
        yield Reason("not-other-band", named)
    if that.checked < this.checked:
        yield Reason("not-less-checked", named)
    rule = _rule_between(this, that)
    if rule is not None:
        yield Reason(f"not-rule-{rule.value}", named)
    if that.girth_verdict in (GirthState.MISS, GirthState.NEAR):
        yield from _girth(this, that)
    yield from _length(this, that, _LONG)
    yield from _length(this, that, _SHORT)
    mine, other = this.too_long_probability, that.too_long_probability
    if mine is not None and other is not None and other > mine + 0.05:
        yield Reason("not-length-surer", named)
    if that.penalty > this.penalty:
        yield Reason("not-less-middle", named)


def _rule_between(this: FitRow, that: FitRow) -> Rule | None:
    """The maker's rule, where it is what puts ``this`` before ``that``."""
    facts, larger = this.offer.facts, this.arrays.table.facts.larger
    rule = facts.between_sizes if facts else None
    up = this.arrays.between_up
    if rule is Rule.LARGER and larger[that.at] == this.at and up[that.at]:
        return rule
    if rule is Rule.SMALLER and larger[this.at] == that.at and up[this.at]:
        return rule
    return None
