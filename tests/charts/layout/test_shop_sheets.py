"""What stands beside the sizes in shops' own sheets, and heads that contradict their figures."""

from __future__ import annotations

from datetime import date

from charts.choices import answers, choices
from charts.findings import Level
from charts.importer import read_bytes
from tests.charts.read_text import asked_at, notes, questions, table, values


def test_an_article_number_is_no_size_beside_a_column_of_sizes() -> None:
    reading = table(
        """
        Art.-Nr. | Größe | Brustumfang (cm) | Taillenumfang (cm)
        WL-3301 | XS | 80-84 | 64-68
        WL-3302 | S | 84-88 | 68-72
        WL-3303 | M | 88-92 | 72-76
        """
    )
    assert list(values(reading)) == [
        f"{size} {what}" for size in ("XS", "S", "M") for what in ("chest", "waist")
    ]
    assert questions(reading) == []


def test_letters_under_a_word_for_articles_name_the_sizes_where_nothing_else_does() -> None:
    reading = table(
        """
        Style | Chest (cm) | Waist (cm)
        S | 84-88 | 68-72
        M | 88-92 | 72-76
        """
    )
    assert values(reading)["M waist"] == (72, 76)


HERREN = """
<table>
<tr><th></th><th>XS</th><th colspan=2>S</th><th colspan=2>M</th></tr>
<tr><td>Größe</td><td>42</td><td>44</td><td>46</td><td>48</td><td>50</td></tr>
<tr><td>Brust (cm)</td><td>84</td><td>88</td><td>92</td><td>96</td><td>100</td></tr>
<tr><td>Taille (cm)</td><td>72</td><td>76</td><td>80</td><td>84</td><td>88</td></tr>
</table>
"""


def test_numbers_below_letters_that_repeat_are_the_sizes_and_no_heights() -> None:
    reading = read_bytes(HERREN.encode(), "a.html")
    assert values(reading)["42 chest"] == 84
    assert values(reading)["50 waist"] == 88
    assert questions(reading) == []
    assert "label-key-chosen" in notes(reading)


def test_a_unit_that_cannot_measure_the_dimension_is_asked_about() -> None:
    reading = table(
        """
        Taille | Tour de poitrine (cm) | Stature (kg) | Poids (kg)
        S | 82-87 | 155-162 | 47-54
        M | 87-92 | 162-169 | 54-61
        L | 92-97 | 169-176 | 61-68
        """
    )
    assert values(reading)["M height"] == (162, 169)
    assert asked_at(reading, "units-swapped") == ["C2", "C3", "C4"]
    assert questions(reading) == ["units-swapped"]


def test_the_unit_in_the_cells_needs_no_question_about_the_heading() -> None:
    reading = table(
        """
        Size | Chest (cm) | Weight (inches)
        S | 84-88 | 110-130 lbs
        M | 88-92 | 130-150 lbs
        L | 92-96 | 150-170 lbs
        """
    )
    assert "units-swapped" not in questions(reading)


ROWS = """
Size | Chest (cm) | Waist (cm)
XS | 84-88 | 68-72
S | 88-92 | 72-76
M | 92-96 | 76-80
L | 96-100 | 80-84
{label} | {chest} | {waist}
"""


def test_a_size_out_of_order_whose_figures_keep_the_order_is_asked_about() -> None:
    reading = table(ROWS.format(label="XXS", chest="100-104", waist="84-88"))
    assert asked_at(reading, "order-broken") == ["B6", "C6"]
    assert questions(reading) == ["order-broken"]


def test_a_size_out_of_order_with_its_own_figures_is_no_doubt_of_the_label() -> None:
    reading = table(ROWS.format(label="XXS", chest="80-84", waist="64-68"))
    texts = [one.values.get("case") for one in reading.findings if one.level is Level.QUESTION]
    assert "label" not in texts


def test_sizes_in_order_are_not_doubted() -> None:
    assert questions(table(ROWS.format(label="XL", chest="100-104", waist="84-88"))) == []


def test_one_act_settles_a_unit_of_another_family() -> None:
    text = (
        b"Taille\tTour de poitrine (cm)\tStature (kg)\tPoids (kg)\n"
        b"S\t82-87\t155-162\t47-54\nM\t87-92\t162-169\t54-61\nL\t92-97\t169-176\t61-68\n"
    )
    reading = read_bytes(text, "a.tsv")
    (finding,) = [one for one in reading.findings if one.level is Level.QUESTION]
    (chosen,) = choices(finding, reading)
    again = read_bytes(text, "a.tsv", answers=answers(chosen, finding, "Ylva", date(2026, 11, 30)))
    assert questions(again) == []
    assert values(again)["M height"] == (162, 169)


def test_lists_of_sizes_in_a_printed_unit_are_no_second_name_and_are_not_lost() -> None:
    reading = table(
        """
        | XS | Small | Medium | Large
        Metric Sizes (cm) | 80 84 88 | 92 96 | 100 104 | 108 112
        Imperial Sizes (inches) | 32 33 34 | 36 38 | 40 42 | 43 44
        """
    )
    sizes = {size.label for chart in reading.charts for size in chart.sizes if size.ranges}
    assert sizes == {"XS", "Small", "Medium", "Large"}
    assert all(value.findings for chart in reading.charts for value in chart.sizes[0].ranges)


def test_halves_of_many_sizes_are_asked_about_though_the_largest_are_a_childs_girth() -> None:
    reading = table(
        """
        Talla | Pecho (cm) | Cintura (cm)
        XS | 49 | 47
        S | 53 | 51
        M | 57 | 55
        L | 61 | 59
        XL | 65 | 63
        2XL | 69 | 67
        3XL | 73 | 71
        """
    )
    assert "laid-flat" in questions(reading)
