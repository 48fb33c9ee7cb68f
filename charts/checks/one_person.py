"""What the person in a picture measures and wears, beside a chart: no chart of one size.

``Our model: size M, height 178 cm, weight 70 kg``. Where the words say so it is left out; where
only the form does, it is asked about.
"""

from __future__ import annotations

import re
from collections.abc import Sequence, Set
from typing import Final

from charts.asked_values import chart_asking
from charts.findings import FindingLog
from charts.schema import Chart, Dimension, Kind
from charts.vocabulary import unaccented

_PERSON: Final = re.compile(
    r"\b(?:(?:our|the|unser|notre|le|ons|onze|il nostro|la nostra|nuestr[ao]|noss[ao]|var|vores"
    r"|nasz[ae]?) (?:foto)?model\w*|model(?:'?s)? (?:facts?|info\w*|is|wears?|wearing|height|weight"
    r"|size|stats|measure\w*|details|tragt|draagt|porte|indossa|lleva|viste|veste|bar|baerer|nosi)"
    r"|models?:|mannequin|fotomodel\w*|modella|wears|wearing|worn by|tragt|draagt"
    r"|(?:the|this|our) (?:picture|photo)"
    r"|(?:manken\w*|modelin|modelk[aio]|modelce|modell(?:en|ens))\b"
    r"|model (?:olculeri|bilgileri)|medidas d[aoe]l? model[oa]\b)"
    r"|模特|モデル|모델|рост модели|параметры модели|на модели|модель носит|модель одета"
)
"""Words for the person in a picture (common words, from general knowledge)."""
_OF_A_PERSON: Final = frozenset(Dimension) - {Dimension.OTHER, Dimension.BACK_LENGTH}
_WHOLE: Final = frozenset({Dimension.HEIGHT, Dimension.WEIGHT})
"""What a person has and no garment."""


def people_left_out(charts: Sequence[Chart], log: FindingLog) -> list[Chart]:
    """The charts without those of one person, and with a question on what may be one."""
    lone = [chart for chart in charts if _of_one_size(chart)]
    others = {size.label for chart in charts if chart not in lone for size in chart.sizes}
    found = [chart for chart in lone if _of_one(chart, others)]
    labels = {chart.sizes[0].label for chart in found}
    sizes = [size.label for chart in charts if chart not in found for size in chart.sizes]
    asked = len(sizes) > 1 and (len(labels) == 1 or labels <= others)
    kept: list[Chart] = []
    for chart in charts:
        if chart not in found:
            kept.append(chart)
        elif _named(chart):
            _drop(chart, charts, log)
        else:
            kept.append(_asked(chart, log) if asked else chart)
    return kept


def _of_one_size(chart: Chart) -> bool:
    ranges = [one for size in chart.sizes for one in size.ranges]
    single = all(one.kind is Kind.SINGLE for one in ranges)
    return len(chart.sizes) == 1 and single and len(ranges) > 1


def _of_one(chart: Chart, others: Set[str | None]) -> bool:
    """One size, and one figure for the whole of a person, with others.

    Beside charts that have the size among others, a weight tells as well, and girths alone do.
    """
    measured = {one.dimension for one in chart.sizes[0].ranges}
    if Dimension.HEIGHT in measured and measured <= _OF_A_PERSON:
        return True
    if chart.sizes[0].label not in others:
        return False
    return bool(measured & _WHOLE) or (len(measured) > 1 and measured <= _OF_A_PERSON)


def _named(chart: Chart) -> bool:
    headings = [one.heading for one in chart.sizes[0].ranges]
    said = [chart.title or "", *chart.notes, *headings]
    return any(_PERSON.search(unaccented(text)) for text in said)


def _drop(chart: Chart, charts: Sequence[Chart], log: FindingLog) -> None:
    others = {ident for one in charts if one is not chart for ident in _ids(one)}
    for ident in set(_ids(chart)) - others:
        log.withdraw(ident)
    log.add("not-a-chart", chart.place, key=chart.place, case="person")


def _ids(chart: Chart) -> list[str]:
    return [ident for size in chart.sizes for one in size.ranges for ident in one.findings]


def _asked(chart: Chart, log: FindingLog) -> Chart:
    text = chart.sizes[0].label or ""
    ident = log.add("label-repeated", chart.place, key=chart.place, case="person", text=text)
    return chart_asking(chart, ident)
