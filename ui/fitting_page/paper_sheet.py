"""What the fitting sheet says besides its table: certainty, estimates, seasons, a pair. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from charts.reason import Reason
from charts.schema import Dimension
from harmonizer.explain import sentence
from harmonizer.fit_row import FitRow
from harmonizer.repeats import tape
from harmonizer.row_reasons import chance_reasons
from harmonizer.seasons import SideBySide, side_by_side
from harmonizer.verdict_words import girth_words, length_words
from ui.fitting_page.advice_lines import all_reasons, seasons_of
from ui.fitting_page.against_lines import with_other
from ui.fitting_page.chosen import ChosenReasons
from ui.fitting_page.draft import ASKED, Draft
from ui.fitting_page.estimated import estimated
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.rows import TAPES, ModelRow
from ui.fitting_page.said import held_beside
from ui.words import Words


@dataclass(frozen=True, slots=True)
class SeasonLine:
    """One size in both seasons; ``serves`` tells summer, then winter."""

    size: str
    summer: str
    winter: str
    serves: tuple[bool, bool]


def certainty_words(row: FitRow, words: Words) -> str:
    """How sure the size is as a frequency and a word; over how many dimensions if not all four."""
    chance = next((one for one in chance_reasons(row) if one.code == "chance-sure"), None)
    if chance is None:
        return ""
    values = {"of_ten": chance.values["of_ten"], "count": row.checked}
    known = chance.values["word"]
    said = sentence(known, words.wording) if isinstance(known, Reason) else ""
    code = "sure" if row.checked == len(TAPES) else "sure-of-some"
    return words.wording.say("paper", code, word=said, **values)


def estimate_line(draft: Draft, sheet: FittingSheet, words: Words) -> str:
    """What was not measured and is estimated, with its spread; "" where nothing is."""
    wording = words.wording
    found = estimated(draft, wording, sheet.fit.settings)
    named = [
        wording.say("paper", "one-estimate", name=words(f"field-{one.value}"), estimate=found[one])
        for one in ASKED
        if one in found
    ]
    if not named:
        return ""
    mark = wording.say("settings", "list-mark")
    return wording.say("paper", "estimates", estimates=mark.join(named))


def tape_lines(sheet: FittingSheet, words: Words) -> tuple[str, ...]:
    """How far the readings may be out, once for the girths and once for the back."""
    wording, found = words.wording, dict[str, str]()
    for one in sheet.fit.body.settled:
        dimension = one.measure.dimension
        known = tape(one) if dimension in TAPES else None
        if known is not None:
            code = "tape-back" if dimension is Dimension.BACK_LENGTH else "tape-girths"
            found.setdefault(code, sentence(known, wording))
    return tuple(wording.say("paper", code, tape=said) for code, said in found.items())


def legend(sheet: FittingSheet, rows: Sequence[ModelRow], words: Words) -> tuple[str, ...]:
    """What dashes and hatching mean, as far as they are drawn."""
    spans = [
        span for row in rows for cell in row.cells.values() for span in cell.spans if span.best
    ]
    codes = {
        "legend-assumed": any(span.assumed for span in spans),
        "legend-questioned": any(span.questioned for span in spans),
        "legend-layers": sheet.fit.body.allowance > 0,
        "legend-estimated": any(head.guess is not None for head in sheet.heads.values()),
    }
    return tuple(words.wording.say("paper", code) for code, drawn in codes.items() if drawn)


def season_lines(
    sheet: FittingSheet, rows: Sequence[ModelRow], words: Words
) -> tuple[SeasonLine, ...]:
    """Both verdicts of the printed models' sizes side by side; none where no layers are worn."""
    if sheet.fit.body.allowance <= 0:
        return ()
    found = side_by_side(seasons_of(sheet.fit), [sheet.members(row) for row in rows])
    return tuple(_season_line(one, sheet, words) for one in found)


def _season_line(one: SideBySide, sheet: FittingSheet, words: Words) -> SeasonLine:
    offer = sheet.fit.table.offers[one.at]
    size = words.wording.say("paper", "size", model=offer.model, size=sheet.size_of(one.at))
    summer, winter = (_both_words(row, words) for row in (one.summer, one.winter))
    return SeasonLine(size, summer, winter, one.serves)


def _both_words(row: FitRow, words: Words) -> str:
    girths, length = (sentence(one(row), words.wording) for one in (girth_words, length_words))
    return words.wording.say("paper", "verdict", girths=girths, length=length)


def reasons_on_paper(
    sheet: FittingSheet, row: ModelRow, held: str | None, words: Words
) -> tuple[ChosenReasons, ...]:
    """Why the row that is chosen; and, where another is held, why the one and not the other."""
    whole = all_reasons(sheet, row, words, on_paper=True)
    beside = held_beside(sheet, row, held)
    if beside is None:
        return (whole,)
    return whole, with_other(whole, sheet, row, beside, words)
