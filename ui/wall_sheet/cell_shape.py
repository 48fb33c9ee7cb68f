"""One model in one dimension as bars on the block's axis. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from charts.schema import Basis
from charts.wording import Wording
from charts.writers.marks import Marks
from harmonizer.wall_runs import OFF_THE_BODY, Remark, Run, Span, WallCell
from ui.wall_sheet.axis import Axis
from ui.wall_sheet.ink import Area, Bar, End, Mark, Tone, Words
from ui.wall_sheet.lanes import Stretch, lanes
from ui.wall_sheet.paper import SMALL, SMALL_STRONG
from ui.wall_sheet.type_setting import Setter, Setting

BAR_HEIGHT: Final = 11.5
LANE: Final = 13.0
_RUN_GAP: Final = 5.0
_LABEL_AIR: Final = 2.5
_LEAST_AIR: Final = 1.6
_OPEN: Final = 44.0
_SIGN_GAP: Final = 3.5


@dataclass(frozen=True, slots=True)
class CellShaper:
    """Shapes cells; ``signs`` are the chart's footnote signs."""

    setter: Setter
    wording: Wording
    signs: Marks

    def shape(self, cell: WallCell, axis: Axis | None, box: tuple[float, float]) -> Setting:
        """Bars from the top 0 down, what is not drawn in words below them."""
        marks: list[Mark] = []
        top = 0.0
        for number, run in enumerate(cell.runs):
            if axis is None:
                break
            top += _RUN_GAP if number else 0.0
            run_marks, height = self._run(run, axis, top)
            marks += run_marks
            top += height
        if marks and cell.remarks:
            top += 1.0
        for remark in cell.remarks:
            said = self._said(remark, only=not cell.runs)
            for line in self.setter.lines(said, SMALL, box[1] - box[0]):
                words = self.setter.at(box[0], top + SMALL.rise, line, SMALL, Tone.SOFT)
                marks += (plate(words), words)
                top += SMALL.line
        return Setting(tuple(marks), top)

    def reach(self, run: Run, axis: Axis) -> tuple[float, float]:
        """Where ``run``, all its words included, begins and ends on ``axis``, in points."""
        stretches = self._stretches(run, axis)
        said = self._title_of(run)
        before = self.setter.measure(said, SMALL) + _SIGN_GAP if said else 0.0
        left = min(each.outer_left for each in stretches) - before
        return left, max(each.outer_right for each in stretches)

    def _run(self, run: Run, axis: Axis, top: float) -> tuple[list[Mark], float]:
        stretches = self._stretches(run, axis)
        on_lanes = lanes(stretches)
        marks: list[Mark] = []
        for span, stretch, lane in zip(run.spans, stretches, on_lanes, strict=True):
            upper = top + lane * LANE
            base = upper + (BAR_HEIGHT + SMALL_STRONG.capital) / 2
            label = self.setter.at(stretch.label_left, base, self._label(span), SMALL_STRONG)
            if stretch.label_left > stretch.right:
                marks.append(plate(label))
            marks.append(_bar(span, stretch, upper, hollow=run.otherwise))
            marks.append(label)
        marks += self._title(run, stretches, on_lanes, top)
        return marks, max(on_lanes) * LANE + BAR_HEIGHT

    def _label(self, span: Span) -> str:
        if span.questioned:
            return self.wording.say("wall_sheet", "label-asked", label=span.label)
        return span.label

    def _stretches(self, run: Run, axis: Axis) -> list[Stretch]:
        """The bars on the axis; an open end reaches a fixed way beyond the printed one.

        The labels stand in the bars. Where one bar is too short for its own, all stand behind
        their bars, unless that would take more lanes.
        """
        widths = [self.setter.measure(self._label(span), SMALL_STRONG) for span in run.spans]
        ends = [
            _ends(span, axis, max(_OPEN, wide + _OPEN / 2))
            for span, wide in zip(run.spans, widths, strict=True)
        ]
        fits = [
            wide + 2 * _LEAST_AIR <= right - left
            for wide, (left, right) in zip(widths, ends, strict=True)
        ]
        if all(fits):
            return _labelled(ends, widths, fits)
        behind = _labelled(ends, widths, [False] * len(fits))
        mixed = _labelled(ends, widths, fits)
        return mixed if max(lanes(mixed)) < max(lanes(behind)) else behind

    def _title_of(self, run: Run) -> str:
        """The length's word and the definition's sign."""
        sign = self.signs.of_definition(run.definition)
        return " ".join(part for part in (run.length, sign) if part)

    def _title(
        self, run: Run, stretches: Sequence[Stretch], on_lanes: Sequence[int], top: float
    ) -> list[Mark]:
        said = self._title_of(run)
        if not said:
            return []
        first = min(range(len(stretches)), key=lambda place: stretches[place].outer_left)
        base = top + on_lanes[first] * LANE + (BAR_HEIGHT + SMALL.capital) / 2
        title = self.setter.until(stretches[first].outer_left - _SIGN_GAP, base, said, SMALL)
        return [plate(title), title]

    def _said(self, remark: Remark, *, only: bool) -> str:
        """``only``: nothing is drawn beside it."""
        sign, code = "", f"remark-{remark.why.value}"
        if remark.why.value in OFF_THE_BODY:
            sign = self.signs.of_basis(Basis(remark.why.value))
            code += "-only" if only else ""
        if not remark.sizes:
            return self.wording.say("wall_sheet", code, sign=sign)
        code += "-sizes"
        return self.wording.say("wall_sheet", code, sign=sign, sizes=", ".join(remark.sizes))


def _labelled(
    ends: Sequence[tuple[float, float]], widths: Sequence[float], inside: Sequence[bool]
) -> list[Stretch]:
    """Bars with their labels inside, in the middle, or behind."""
    found = []
    for (left, right), wide, within in zip(ends, widths, inside, strict=True):
        start = (left + right - wide) / 2 if within else right + _LABEL_AIR
        found.append(Stretch(left, right, start, start + wide))
    return found


def plate(words: Words) -> Area:
    """A piece of bare paper behind words that stand on the grid."""
    face = words.face
    return Area(
        words.x - 1.0,
        words.y - face.capital - 1.5,
        words.x + words.width + 1.0,
        words.y + 0.22 * face.size,
        Tone.PAPER,
    )


def _ends(span: Span, axis: Axis, reach: float) -> tuple[float, float]:
    """Where the bar begins and ends on ``axis``, in points."""
    if span.low_cm is not None and span.high_cm is not None:
        return axis.x(span.low_cm), axis.x(span.high_cm)
    if span.low_cm is not None:
        left = axis.x(span.low_cm)
        return left, left + reach
    right = axis.x(span.high_cm or 0.0)
    return right - reach, right


def _bar(span: Span, stretch: Stretch, top: float, *, hollow: bool) -> Bar:
    return Bar(
        left=stretch.left,
        right=stretch.right,
        top=top,
        bottom=top + BAR_HEIGHT,
        left_end=End.FIRM if span.low_cm is not None else End.OPEN,
        right_end=End.FIRM if span.high_cm is not None else End.OPEN,
        hollow=hollow,
        dashed=span.derived,
        hatched=span.questioned,
        clear_left=stretch.label_left - _LABEL_AIR,
        clear_right=stretch.label_right + _LABEL_AIR,
    )
