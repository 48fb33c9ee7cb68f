"""A stored date is shown as its workbook shows it."""

from __future__ import annotations

from datetime import date, datetime, time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.readers.date_format import shown_date

OCTOBER = datetime(2024, 10, 12)  # noqa: DTZ001 - a workbook's dates have no zone


@pytest.mark.parametrize(
    ("stored", "code", "shown"),
    [
        (OCTOBER, "d-mmm", "12-Oct"),
        (OCTOBER, "mm-dd-yy", "10-12-24"),
        (OCTOBER, "dd.mm.yyyy", "12.10.2024"),
        (OCTOBER, "[$-407]d\\. mmmm yyyy;@", "12. October 2024"),
        (date(2014, 12, 1), "mmm-yy", "Dec-14"),
        (time(12, 14), "h:mm", "12:14"),
        (time(17, 5, 9), "h:mm:ss AM/PM", "5:05:09 PM"),
        (OCTOBER, "ddd d", "Sat 12"),
    ],
)
def test_a_date_is_shown_by_its_format(stored: date | time, code: str, shown: str) -> None:
    assert shown_date(stored, code) == shown


@given(st.text(max_size=30), st.datetimes())
def test_no_format_can_break_it(code: str, moment: datetime) -> None:
    assert isinstance(shown_date(moment, code), str)
