"""Ages that name sizes: with the word in each cell, beside a grown-up's size, turned to dates."""

from __future__ import annotations

from io import BytesIO

from charts.importer import read_bytes
from tests.charts.read_text import questions, table, values


def test_the_word_age_in_every_label_is_no_column_of_names() -> None:
    found = values(
        table(
            """
            Size | Chest (in) | Height (in) | Waist (in)
            Age 5-6 | 23-24 | 43-46 | N/A
            Age 7-8 | 25-26 | 48-51 | 22-23
            Age 9-10 | 27-29 | 53-56 | 23-24
            Age 14+ | 32-34 | 62+ | 26-28
            """
        )
    )
    assert found["Age 7-8 waist"] == (55.88, 58.42)
    assert found["Age 14+ height"] == (157.48, None)
    assert len(found) == 11


def test_the_same_ages_across() -> None:
    found = values(
        table(
            """
            Size | Age 5-6 | Age 7-8 | Age 9-10
            Chest (in) | 23-24 | 25-26 | 27-29
            Height (in) | 43-46 | 48-51 | 53-56
            """
        )
    )
    assert found["Age 9-10 height"] == (134.62, 142.24)


def test_a_size_of_grown_ups_below_the_ages_hides_none_of_them() -> None:
    found = values(
        table(
            """
            Age | Chest (cm) | Height (cm)
            9-10 | 70 | 140
            11-12 | 76 | 152
            Adult S | 91 | 164
            """
        )
    )
    assert found["9-10 chest"] == 70
    assert found["Adult S height"] == 164


def _dated() -> bytes:
    from datetime import date

    from openpyxl import Workbook

    book = Workbook()
    sheet = book.active
    assert sheet is not None
    sheet.append(["Age", "Chest (cm)", "Height (cm)", "Price (£)"])
    for month, day in ((7, 5), (8, 7), (10, 9)):
        sheet.append([date(2026, month, day), 50 + 2 * month, 100 + 4 * month, 9.5])
        sheet.cell(sheet.max_row, 1).number_format = "d-mmm"
    sheet.append(["Adult S", 91, 170, 12])
    out = BytesIO()
    book.save(out)
    return out.getvalue()


def test_labels_turned_to_dates_are_asked_about_and_their_rows_are_read() -> None:
    reading = read_bytes(_dated(), "kit.xlsx")
    assert questions(reading) == ["was-a-date"]
    assert values(reading)["9-10 chest"] == 70
    asked = [one.id for one in reading.findings if one.code == "was-a-date"]
    (chart,) = reading.charts
    first = [value.findings for value in chart.sizes[0].ranges]
    assert all(asked[0] in ids for ids in first)


def test_a_thing_counted_below_the_measures_is_no_figure_in_their_names() -> None:
    reading = table(
        """
        Size | 1 | 2 | 3
        To fit bust (cm) | 81 | 86 | 91
        Actual bust (cm) | 93 | 98 | 103
        100 g balls | 5 | 5 | 6
        """
    )
    assert [(one.label) for one in reading.charts[0].sizes] == ["1", "2", "3"]
    bases = [one.basis.value for one in reading.charts[0].sizes[0].ranges[:2]]
    assert bases == ["body", "finished"]
    assert questions(reading) == ["heading-unknown"]


def test_an_order_form_with_prices_under_their_sign_is_no_chart() -> None:
    from openpyxl import Workbook

    book = Workbook()
    first = book.active
    assert first is not None
    for row in (["Size", "Chest (cm)"], ["S", "84-88"], ["M", "88-92"], ["L", "92-96"]):
        first.append(row)
    form = book.create_sheet("Order form")
    for line in (["Name", "Item", "Size", "Qty", "£"], [None, "Jersey", None, None, 52]):
        form.append(line)
    form.append([None, "Shorts", None, None, 78])
    form.append([None, "Gilet", None, None, 44])
    out = BytesIO()
    book.save(out)
    assert questions(read_bytes(out.getvalue(), "order.xlsx")) == []
