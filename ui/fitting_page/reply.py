"""The reply to a remote client as plain text: two candidates at most, checks, cautions. No Qt."""

from __future__ import annotations

from typing import Final

from charts.wording import Wording
from harmonizer.cautions import cautions_for
from ui.fitting_page.advice_lines import all_reasons
from ui.fitting_page.draft import ASKED, Draft, other_system, text_of
from ui.fitting_page.echo import figure_in
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.pair import Pair, pair_lines
from ui.fitting_page.rows import Band, ModelRow
from ui.words import Words

CANDIDATES: Final = 2
_ON_ARRIVAL: Final = ("saddle", "flush", "layers", "movements", "unworn")


def reply(
    sheet: FittingSheet,
    groups: ModelGroups,
    draft: Draft,
    language: str,
    pair: Pair | None = None,
) -> str:
    """What to send to the client of ``draft``, in ``language``; a ``pair`` as one statement."""
    words = Words(language)
    said = FittingSheet(sheet.fit, groups, words, frozenset())
    rows = candidates(said)
    lines = [words("reply-opening"), "", words("reply-readings")]
    lines += _readings(draft, words)
    lines += ["", words("reply-candidates" if rows else "reply-none")]
    for number, row in enumerate(rows, start=1):
        lines += _candidate(said, row, number, words)
    if pair is not None and pair.choice.inflatable:
        lines += ["", words.wording.say("pair", "title")]
        lines += [words("reply-point", text=text) for text in pair_lines(pair, groups, words)]
    lines += ["", words("reply-arrival")]
    lines += [words("reply-point", text=words(f"arrival-{code}")) for code in _ON_ARRIVAL]
    lines += ["", words("reply-cautions")]
    lines += _cautions(draft, words.wording, words)
    return "\n".join(lines) + "\n"


def candidates(sheet: FittingSheet) -> list[ModelRow]:
    """The first rows that can be tried; where there are none, those just outside."""
    for band in (Band.TRY, Band.JUST_OUTSIDE):
        rows = []
        for number in range(len(sheet)):
            row = sheet.row(number)
            if isinstance(row, ModelRow) and row.band is band:
                rows.append(row)
                if len(rows) == CANDIDATES:
                    break
        if rows:
            return rows
    return []


def _readings(draft: Draft, words: Words) -> list[str]:
    """Every reading as it was given and as it was understood."""
    lines = []
    for measure in ASKED:
        reading = draft.reading(measure)
        if reading is not None:
            understood = figure_in(reading, other_system(reading), words)
            lines.append(
                words(
                    "reply-reading",
                    name=words(f"field-{measure.value}"),
                    text=text_of(reading),
                    other=understood,
                )
            )
    return lines


def _candidate(sheet: FittingSheet, row: ModelRow, number: int, words: Words) -> list[str]:
    title = words(
        "reply-candidate",
        number=number,
        model=row.model,
        maker=row.maker,
        size=sheet.size_of(row.at),
        girths=row.girths.text,
        length=row.length.text,
    )
    reasons = all_reasons(sheet, row, words, for_shop=False)
    return [title, *(words("reply-point", text=line.text) for line in reasons.lines)]


def _cautions(draft: Draft, wording: Wording, words: Words) -> list[str]:
    return [words("reply-point", text=text) for text in cautions_for(draft.rider(), wording)]
