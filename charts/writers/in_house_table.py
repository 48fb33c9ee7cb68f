"""The combined chart laid out as a table of words, ready for a workbook or a web page.

Everything a person reads is made here, once; the writers only place and style it.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from charts import cautions
from charts.day_words import day_words
from charts.finding_sentences import reason_of, sentence_of
from charts.findings import Candidate
from charts.in_house import AskedOf, InHouseChart, InHouseRow, WithheldModel
from charts.wording import Wording
from charts.writers.in_house_columns import Block, blocks
from charts.writers.marks import Marks
from charts.writers.printed_table import (
    InHouseTable,
    Margins,
    QuestionList,
    Role,
    TableCell,
    TableRow,
)

_QUESTION_COLUMNS: Final = {"file": 30.0, "where": 20.0, "asked": 70.0, "readings": 50.0}


def laid_out(chart: InHouseChart, wording: Wording) -> InHouseTable:
    """``chart`` as a table in the language of ``wording``."""
    marks = Marks.of_chart(chart, wording)
    shown = blocks(chart, marks, wording)
    above = (None, *chart.rows)
    rows = tuple(_row(row, before, shown) for row, before in zip(chart.rows, above, strict=False))
    return InHouseTable(
        sheet=wording.say("combined", "sheet-name"),
        title=wording.say("combined", "title"),
        subtitle=_subtitle(chart, wording),
        key=wording.say("combined", "key"),
        columns=tuple(column for block in shown for column in block.columns),
        frozen=len(shown[0].columns),
        rows=rows,
        footnotes=(*marks.footnotes(), *_foot(chart, wording)),
        cautions=tuple(wording.say(cautions.TOPIC, code) for code in cautions.GENERAL),
        margins=_margins(chart, wording),
        questions=_questions(chart, wording),
    )


def _margins(chart: InHouseChart, wording: Wording) -> Margins:
    version = wording.say("combined", "version", version=chart.version, day="{today}")
    page = wording.say("combined", "page", number="{number}", pages="{pages}")
    return Margins(
        head=(wording.say("combined", "title"), _season(chart, wording), version),
        foot=(wording.say(cautions.TOPIC, "precedence"), page),
    )


def _season(chart: InHouseChart, wording: Wording) -> str:
    """The season where every chart that names one names the same; the rows say the rest."""
    seasons = chart.seasons
    if not seasons:
        return wording.say("combined", "season-not-given")
    if len(seasons) > 1:
        return wording.say("combined", "seasons-differ")
    return wording.say("combined", "season-one", season=seasons[0])


def _subtitle(chart: InHouseChart, wording: Wording) -> str:
    return wording.say(
        "combined",
        "subtitle",
        season=_season(chart, wording),
        version=chart.version,
        day=day_words(chart.made_on, wording),
        makers=len({row.supplier for row in chart.rows}),
        models=len({(row.supplier, row.model) for row in chart.rows}),
        count=len(chart.rows),
    )


def _row(row: InHouseRow, above: InHouseRow | None, shown: Sequence[Block]) -> TableRow:
    cells = [cell for block in shown for cell in block.cells(row)]
    starts = above is None or (above.supplier, above.model) != (row.supplier, row.model)
    if not starts:
        cells[:2] = [
            TableCell(cell.text, Role.REPEATED) if cell.role is Role.NAME else cell
            for cell in cells[:2]
        ]
    return TableRow(tuple(cells), starts)


def _foot(chart: InHouseChart, wording: Wording) -> list[str]:
    said = [wording.say("combined", "no-mark"), wording.say("combined", "conversion")]
    if chart.questions:
        said.append(wording.say("combined", "open-questions", count=len(chart.questions)))
    if chart.not_read:
        said.append(wording.say("combined", "files-not-read", count=len(chart.not_read)))
    if chart.withheld:
        names = ", ".join(_withheld(each, wording) for each in chart.withheld)
        said.append(wording.say("combined", "withheld", count=len(chart.withheld), names=names))
    return said


def _withheld(model: WithheldModel, wording: Wording) -> str:
    code = f"withheld-{model.why.value}"
    said = wording.say("combined", code, supplier=model.supplier or "", model=model.model)
    return said.strip()


def _questions(chart: InHouseChart, wording: Wording) -> QuestionList | None:
    asked = (*chart.questions, *chart.not_read)
    if not asked:
        return None
    return QuestionList(
        title=wording.say("combined", "questions-title"),
        heads=tuple(wording.say("combined", code) for code in _QUESTION_COLUMNS),
        widths=tuple(_QUESTION_COLUMNS.values()),
        rows=tuple(_question(each, wording) for each in asked),
    )


def _question(asked: AskedOf, wording: Wording) -> tuple[str, ...]:
    readings = "\n".join(_reading(each, wording) for each in asked.finding.candidates)
    return (asked.file, asked.finding.place, sentence_of(asked.finding, wording), readings)


def _reading(candidate: Candidate, wording: Wording) -> str:
    why = reason_of(candidate, wording)
    if not why:
        return candidate.text
    return wording.say("combined", "reading", text=candidate.text, why=why)
