"""What comes from a printed page is compared with it once, by a person, before it is relied on.

So is a table whose rows and columns were put together from a text that has none.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from charts.asked_values import chart_asking
from charts.findings import FindingLog
from charts.schema import Chart
from charts.sheet import Addressing, Sheet


def compared_with_page(
    charts: Sequence[Chart], sheets: Iterable[Sheet], name: str, log: FindingLog
) -> list[Chart]:
    """The charts of some sheets, with one question a file at every value if cells were inferred.

    A printed page says where letters stand and nothing of rows and columns.
    """
    sheets = list(sheets)
    printed = any(sheet.addressing is Addressing.PAGE for sheet in sheets)
    if not charts or not (printed or any(sheet.inferred for sheet in sheets)):
        return list(charts)
    case = "" if printed else "lines"
    ident = log.add("text-order", name, key="file", name=name, case=case)
    return [chart_asking(one, ident) for one in charts]
