"""Web pages give a sheet for every table, with the words around it."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.sheet import Addressing
from tests.charts.readers.reading import read, rows_of

CHART = "<tr><th>Size<th>Chest</tr><tr><td>S<td>86-91</tr>"


def page(body: str) -> bytes:
    return f"<!DOCTYPE html><html><head><title>Shop</title></head><body>{body}</body>".encode()


def cells_of(*cells: str) -> list[str]:
    """The texts of one row of a page's table."""
    row = "".join(f"<td>{cell}</td>" for cell in cells)
    return read(page(f"<table><tr>{row}<td>end</td></tr></table>"), "a.html").rows()[0][:-1]


@pytest.mark.parametrize(
    ("cell", "seen"),
    [
        ('34<sup>1</sup>/<sub>2</sub>"', '34 1/2"'),
        ("34<sup>1</sup>&frasl;<sub>2</sub>", "34 1⁄2"),
        ("34<sup>1</sup><sub>2</sub>", "34 1/2"),
        ("34<sup>1/2</sup>", "34 1/2"),
        ("35&frac12;", "35½"),
        ("Chest<sup>1</sup>", "Chest¹"),
        ("m<sup>2</sup>", "m²"),
        ("1<sup>st</sup>", "1st"),
        ('34-36"<br>86-91cm', '34-36"\n86-91cm'),
        ("<p>34-36 in</p><p>86-91 cm</p>", "34-36 in\n86-91 cm"),
        ("<span>34</span><span>36</span>", "34\n36"),
        ("<b>8</b>6-<i>91</i>", "86-91"),
        ("38&nbsp;&ndash;&nbsp;40", "38\xa0–\xa040"),
        ("< 79 cm", "< 79 cm"),
        ("<79 cm", "<79 cm"),
        ("&lt; 79 cm", "< 79 cm"),
        ("Brust&shy;umfang", "Brustumfang"),
        ("Brust<wbr>umfang", "Brustumfang"),
        ("Chest<!-- old -->weite", "Chestweite"),
        ("  86 \n  -\t91 ", "86 - 91"),
        ('<span style="display: none">in</span>cm', "cm"),
        ("<script>var x = 1;</script>86", "86"),
        ('<img src="http://x.invalid/a.png" alt="yes">', "yes"),
        ("Gr&ouml;&szlig;e", "Größe"),
    ],
)
def test_a_cell_is_read_as_a_person_sees_it(cell: str, seen: str) -> None:
    assert cells_of(cell) == [seen]


def test_spans_repeat_their_text_and_remember_where_it_stands() -> None:
    body = (
        "<table><tr><th rowspan=2>Size<th colspan=2>Chest</tr><tr><th>in<th>cm</tr>"
        "<tr><td>S<td>34<td>86</tr></table>"
    )
    found = read(page(body), "a.html").sheet
    assert rows_of(found) == [["Size", "Chest", "Chest"], ["Size", "in", "cm"], ["S", "34", "86"]]
    assert found.cells[0, 2].shared_from == (0, 1)
    assert found.cells[1, 0].shared_from == (0, 0)
    assert found.cells[0, 1].shared_from is None
    assert (found.cells[0, 0].heading, found.cells[2, 0].heading) == (True, False)


@pytest.mark.parametrize("head", ["<thead><th>Size<th>Chest</thead>", "<th>Size<th>Chest"])
def test_a_head_whose_cells_stand_in_no_row_is_one(head: str) -> None:
    table = f"<table>{head}<tbody><tr><td>S<td>86</tr></table>"
    found = read(page(table), "a.html").sheet
    assert rows_of(found) == [["Size", "Chest"], ["S", "86"]]
    assert found.cells[0, 1].heading
    nested = read(page(f"<table><tr><td>{table}</td></tr></table>"), "a.html").sheet
    assert rows_of(nested) == [["Size", "Chest"], ["S", "86"]]


@pytest.mark.parametrize("two", ["2&quot;", " 2", "+2", "2px", "2.5", "02"])
def test_a_span_is_counted_like_a_browser_counts_it(two: str) -> None:
    body = f'<table><tr><th rowspan="{two}">Size<th>Chest</tr><tr><th>cm</tr></table>'
    assert rows_of(read(page(body), "a.html").sheet) == [["Size", "Chest"], ["Size", "cm"]]


@pytest.mark.parametrize("none", ["", "x", "-2", "&quot;2", "two"])
def test_a_span_without_a_count_is_one(none: str) -> None:
    body = f'<table><tr><td>S<td colspan="{none}">86<td>92</tr></table>'
    assert rows_of(read(page(body), "a.html").sheet) == [["S", "86", "92"]]


def test_a_span_never_reaches_over_the_end_of_the_table() -> None:
    body = "<table><tr><td rowspan=0>S<td colspan=x>86</tr><tr><td>92</tr></table>"
    assert read(page(body), "a.html").rows() == [["S", "86"], ["S", "92"]]


def test_tables_are_numbered_in_the_order_of_the_page_also_a_single_one() -> None:
    one = read(page(f"<table>{CHART}</table>"), "a.html").sheet
    assert (one.addressing, one.place(1, 1)) == (Addressing.TABLE, "table 1!B2")
    two = read(page(f"<table>{CHART}</table><table>{CHART}</table>"), "a.html").sheets
    assert [sheet.name for sheet in two] == ["table 1", "table 2"]


def test_headings_hold_down_to_the_next_of_their_level() -> None:
    body = (
        f"<h1>Vests</h1><p>All figures in cm.</p><h2>Women</h2><table>{CHART}</table>"
        f"<h2>Men</h2><p>New cut</p><table>{CHART}</table>"
    )
    women, men = read(page(body), "a.html").sheets
    assert women.context == ("Shop", "Vests", "All figures in cm.", "Women")
    assert men.context == ("Shop", "Vests", "All figures in cm.", "Men", "New cut")


def test_headings_of_one_level_that_follow_each_other_name_the_same_part() -> None:
    body = (
        f"<h3>Girls</h3><h3>All sizes in inches</h3><table>{CHART}</table>"
        f"<h3>Boys</h3><p>See below.</p><h3>Vests</h3><table>{CHART}</table>"
    )
    girls, other = read(page(body), "a.html").sheets
    assert girls.context == ("Shop", "Girls", "All sizes in inches")
    assert other.context == ("Shop", "Vests")


def test_a_sentence_in_a_part_of_the_page_holds_for_the_tables_of_that_part_only() -> None:
    body = (
        f"<h1>Vests</h1><section><p>Body</p><h2>Sizes</h2><table>{CHART}</table><p>in cm</p>"
        f"</section><section><p>Finished</p><h2>Jacket</h2><table>{CHART}</table></section>"
    )
    first, second = read(page(body), "a.html").sheets
    assert (first.context, first.notes) == (("Shop", "Vests", "Body", "Sizes"), ("in cm",))
    assert (second.context, second.notes) == (("Shop", "Vests", "Finished", "Jacket"), ())


def test_a_comment_in_the_source_can_be_all_that_names_the_band() -> None:
    body = f"<!-- Women --><table>{CHART}</table><!-- Men --><table>{CHART}</table><!-- /end -->"
    women, men = read(page(body), "a.html").sheets
    assert women.context[-1] == "Women"
    assert women.notes == ()
    assert men.context[-1] == "Men"
    assert men.notes == ()


def test_captions_labels_and_the_names_of_tabs_are_context() -> None:
    body = (
        "<a id=tab>Kids</a><div aria-labelledby=tab>"
        f"<table aria-label='Vests'><caption>in inches</caption>{CHART}</table></div>"
    )
    assert read(page(body), "a.html").sheet.context == ("Shop", "Kids", "Vests", "in inches")


def test_sentences_after_a_table_are_its_notes_and_a_title_belongs_to_the_next() -> None:
    body = (
        f"<table>{CHART}</table><p>* measured flat</p><p>Men</p><table>{CHART}</table>"
        "<p>Between two sizes take the smaller one.</p>"
    )
    first, second = read(page(body), "a.html").sheets
    assert first.notes == ("* measured flat",)
    assert second.context == ("Shop", "Men")
    assert second.notes == ("Between two sizes take the smaller one.",)


def test_menus_and_links_are_no_context() -> None:
    body = (
        f"<nav>Women</nav><ul><li><a href=x>Men</a></ul><button>in</button><table>{CHART}</table>"
    )
    assert read(page(body), "a.html").sheet.context == ("Shop",)


def test_a_table_that_only_lays_out_the_page_is_not_counted() -> None:
    body = f"<table><tr><td><h4>Women</h4><table>{CHART}</table></td><td>cart</td></tr></table>"
    found = read(page(body), "a.html").sheet
    assert found.place(1, 1) == "table 1!B2"
    assert found.context == ("Shop", "Women")


def test_a_nested_table_is_a_table_of_its_own() -> None:
    inner = "<table><tr><td>in<td>34</tr><tr><td>cm<td>86</tr></table>"
    body = f"<table><tr><td>Size<td>Chest</tr><tr><td>S<td>86-91 {inner}</tr></table>"
    outer, nested = read(page(body), "a.html").sheets
    assert rows_of(outer) == [["Size", "Chest"], ["S", "86-91"]]
    assert rows_of(nested) == [["in", "34"], ["cm", "86"]]


def test_hidden_rows_and_columns_are_left_out_and_said() -> None:
    body = (
        "<table><tr><td>Size<td style='display:none'>Old<td>Chest</tr>"
        "<tr hidden><td>XS<td>1<td>80</tr>"
        "<tr><td>S<td style='display:none'>2<td>86</tr></table>"
    )
    found = read(page(body), "a.html")
    assert found.rows() == [["Size", "", "Chest"], ["S", "", "86"]]
    assert found.sheet.place(2, 2) == "table 1!C3"
    assert found.findings[0].values["places"] == "table 1!2:2, table 1!B:B"


def test_a_table_behind_a_switch_is_given_and_marked() -> None:
    body = (
        f"<div><table>{CHART}</table></div>"
        f"<div style='display:none'><h3>Inches</h3><table>{CHART}</table></div>"
    )
    shown, behind = read(page(body), "a.html").sheets
    assert (shown.hidden, behind.hidden) == (False, True)
    assert behind.context == ("Shop", "Inches")


def test_struck_out_text_is_marked() -> None:
    body = "<table><tr><td><s>86</s><td><del>34-36</del> 35-37</tr></table>"
    cells = read(page(body), "a.html").sheet.cells
    assert (cells[0, 0].text, cells[0, 0].struck) == ("86", True)
    assert (cells[0, 1].text, cells[0, 1].struck) == ("35-37", True)


ROWS = [["Size", "Chest"], ["S", "86-91"], ["M", "92-97"]]


BLOCKS = {
    "boxes in rows": "<div><div><p>Size</p><p>Chest</p></div><div><p>S</p><p>86-91</p></div>"
    "<div><p>M</p><p>92-97</p></div></div>",
    "boxes in columns": "<div><div class=col><b>Size</b><i>S</i><i>M</i></div>"
    "<div class=col><b>Chest</b><i>86-91</i><i>92-97</i></div></div>",
    "roles": "<div role=table><div role=row><b role=columnheader>Size</b>"
    "<b role=columnheader>Chest</b></div><div role=row><i role=cell>S</i>"
    "<i role=cell>86-91</i></div><div role=row><i role=cell>M</i>"
    "<i role=cell>92-97</i></div></div>",
    "spans in bullets": "<ul><li><span>Size</span> <span>Chest</span>"
    "<li><span>S</span> <span>86-91</span><li><span>M</span> <span>92-97</span></ul>",
    "one box a cell": "<div><div>Size</div><div>Chest</div><div>S</div><div>86-91</div>"
    "<div>M</div><div>92-97</div></div>",
}


@pytest.mark.parametrize("body", BLOCKS.values(), ids=BLOCKS.keys())
def test_blocks_that_only_look_like_a_table_are_one(body: str) -> None:
    assert read(page(body), "a.html").rows() == ROWS


FLAT = {
    "width in the style": "<div style='display:grid;grid-template-columns:repeat(3,1fr)'>"
    "<i>Size</i><i>34</i><i>36</i><i>Chest</i><i>84-90</i><i>90-96</i></div>",
    "tracks in the style": "<div style='grid-template-columns: 2fr 1fr 1fr'>"
    "<i>Size</i><i>34</i><i>36</i><i>Chest</i><i>84-90</i><i>90-96</i></div>",
    "width in the class": "<div class='grid grid-cols-3'>"
    "<i>Size</i><i>34</i><i>36</i><i>Chest</i><i>84-90</i><i>90-96</i></div>",
    "comes out even": "<div><span>Size</span><span>34</span><span>36</span></div>"
    "<div><span>Chest</span><span>84-90</span><span>90-96</span></div>",
    "a break behind each row": "<p><span>Size</span> <span>34</span> <span>36</span><br>"
    "<span>Chest</span> <span>84-90</span> <span>90-96</span></p>",
    "head and body apart": "<div><div><p><b>Size</b> <b>34</b> <b>36</b></p></div>"
    "<div><p><i>Chest</i> <i>84-90</i> <i>90-96</i></p></div></div>",
}


@pytest.mark.parametrize("body", FLAT.values(), ids=FLAT.keys())
def test_cells_laid_out_by_style_are_a_table(body: str) -> None:
    assert read(page(body), "a.html").rows() == [["Size", "34", "36"], ["Chest", "84-90", "90-96"]]


def test_numbered_sizes_one_box_a_cell_are_told_by_the_heading_of_labels() -> None:
    cells = "Size Chest Waist 34 80-84 64-68 36 84-88 68-72 38 88-92 72-76".split()  # noqa: SIM905 - one cell a word
    found = read(page("<div>" + "".join(f"<b>{cell}</b>" for cell in cells) + "</div>"), "a.html")
    assert found.rows()[:2] == [["Size", "Chest", "Waist"], ["34", "80-84", "64-68"]]


def test_cards_of_goods_and_prices_are_no_table() -> None:
    card = "<div><p>Vest {}</p><p>€ {}.00</p></div>"
    body = "<div>" + card.format("A", 189) + card.format("B", 199) + "</div>"
    assert read(page(body), "a.html").codes == ["no-table"]


def test_terms_that_name_their_values_are_columns() -> None:
    body = (
        "<dl><dt>S<dd>Chest: 84-90 cm<dd>Waist: 70-76 cm"
        "<dt>M<dd>Chest: 90-96 cm<dd>Waist: 76-82 cm</dl>"
    )
    assert read(page(body), "a.html").rows() == [
        ["", "Chest", "Waist"],
        ["S", "84-90 cm", "70-76 cm"],
        ["M", "90-96 cm", "76-82 cm"],
    ]


def test_tabs_name_as_many_panels_in_their_order() -> None:
    panel = f"<div><table>{CHART}</table></div>"
    body = f"<ul class='nav tabs'><li>Women<li>Men</ul><div>{panel}{panel}</div>"
    women, men = read(page(body), "a.html").sheets
    assert (women.context, men.context) == (("Shop", "Women"), ("Shop", "Men"))


@pytest.mark.parametrize(
    ("second", "named"), [(CHART, True), (f"{CHART}<tr><td>M<td>92-97</tr>", False)]
)
def test_a_switch_of_units_names_panels_that_show_the_same(second: str, named: bool) -> None:
    tables = f"<div><table>{CHART}</table></div><div><table>{second}</table></div>"
    body = f"<div class='unit-switch'><b>Inches</b><b>Centimeters</b></div><div>{tables}</div>"
    names = [sheet.context[-1] for sheet in read(page(body), "a.html").sheets]
    assert (names == ["Inches", "Centimeters"]) is named


def test_the_id_of_a_box_tells_for_whom_its_table_is_and_nothing_else() -> None:
    body = (
        f"<div id='sizes-women'><table>{CHART}</table></div>"
        f"<div class='panelMen in'><table>{CHART}</table></div>"
    )
    women, men = read(page(body), "a.html").sheets
    assert (women.context, men.context) == (("Shop", "women"), ("Shop", "Men"))


def test_a_hidden_part_of_a_cell_is_left_out_and_said() -> None:
    both = "<span style='display:none'>34-36 in</span><span>86-91 cm</span>"
    body = (
        f"<table><tr><td>Size<td>Chest</tr><tr><td>S<td>{both}</tr><tr><td>M<td>{both}</tr></table>"
    )
    found = read(page(body), "a.html")
    assert found.rows()[1] == ["S", "86-91 cm"]
    assert found.findings[0].values["places"] == "table 1!B2:B3"


def test_definition_lists_and_bullets_are_rows() -> None:
    terms = "<dl><dt>Small</dt><dd>34-36 in</dd><dt>Medium</dt><dd>38-40 in</dd></dl>"
    assert read(page(terms), "a.html").rows() == [["Small", "34-36 in"], ["Medium", "38-40 in"]]
    bullets = "<ul><li>Small - 36”-38”<li>Medium - 38”-40”</ul>"
    assert read(page(bullets), "a.html").rows() == [["Small", "36”-38”"], ["Medium", "38”-40”"]]


def test_cards_with_the_same_terms_are_rows_named_by_their_titles() -> None:
    card = "<div><h4>Size {}</h4><dl><dt>Chest<dd>{} cm<dt>Waist<dd>{} cm</dl></div>"
    body = card.format("S", "86-91", "71-76") + card.format("M", "92-97", "77-82")
    assert read(page(body), "a.html").rows() == [
        ["Size", "Chest", "Waist"],
        ["S", "86-91 cm", "71-76 cm"],
        ["M", "92-97 cm", "77-82 cm"],
    ]


def test_a_page_without_any_table_asks() -> None:
    found = read(page("<h1>Vests</h1><p>Ask us for the chart.</p>"), "a.html")
    assert (found.sheets, found.codes) == ((), ["no-table"])


def test_a_page_that_breaks_off_inside_a_table_loses_its_last_row_and_says_so() -> None:
    found = read(page(f"<table>{CHART}<tr><td>M<td>92-9")[:-7], "a.html")
    assert found.rows() == [["Size", "Chest"], ["S", "86-91"]]
    assert found.codes == ["truncated"]


def test_a_table_in_a_script_does_not_look_like_a_break() -> None:
    found = read(page(f"<script>x = '<table>';</script><table>{CHART}</table>"), "a.html")
    assert found.codes == []


def test_rows_pasted_without_their_table_are_a_table() -> None:
    assert read(CHART, "a.html").rows() == [["Size", "Chest"], ["S", "86-91"]]


def test_the_page_s_own_charset_is_believed_where_the_bytes_are_old() -> None:
    text = f"<html><meta charset=iso-8859-2><body>obwód <table>{CHART}</table>długość"
    found = read(text.encode("iso-8859-2"), "a.html").sheet
    assert found.context == ("obwód",)
    assert found.notes == ("długość",)


def test_an_xhtml_page_with_entities_of_its_own_is_read_without_them() -> None:
    text = (
        '<?xml version="1.0" encoding="utf-8"?><!DOCTYPE html [<!ENTITY x SYSTEM "file:///etc/x">]>'
        f"<html><body><table><tr><td>&x;</td><td>1</td></tr>{CHART}</table></body></html>"
    )
    assert read(text, "a.html").rows()[1:] == [["Size", "Chest"], ["S", "86-91"]]


@given(
    st.lists(
        st.lists(st.tuples(st.integers(1, 3), st.integers(1, 3)), min_size=1, max_size=4),
        min_size=1,
        max_size=5,
    )
)
def test_every_cell_of_any_spans_lies_in_the_area_of_its_origin(
    spans: list[list[tuple[int, int]]],
) -> None:
    body = "".join(
        "<tr>" + "".join(f"<td rowspan={h} colspan={w}>{h}x{w}</td>" for h, w in row) + "</tr>"
        for row in spans
    )
    found = read(page(f"<table>{body}<tr><td>a<td>b</tr></table>"), "a.html").sheets[0]
    for (row, column), cell in found.cells.items():
        if cell.shared_from is not None:
            first = cell.shared_from
            height, _, width = cell.text.partition("x")
            assert first[0] <= row < first[0] + int(height)
            assert first[1] <= column < first[1] + int(width)


def test_titles_with_a_year_are_no_sentences_of_sizes() -> None:
    titles = "<h1>Varn - guide des tailles 2027</h1><h2>Guide des tailles 2027</h2>"
    seen = read(page(f"{titles}<table>{CHART}</table>"), "a.html")
    assert [sheet.text(0, 0) for sheet in seen.sheets] == ["Size"]


def test_a_comment_between_a_table_and_a_heading_names_what_is_below_the_heading() -> None:
    body = (
        f"<h2>Zolmar</h2><table>{CHART}</table><p>in cm</p>"
        f"<!-- Men --><h2>Tarn</h2><table>{CHART}</table><!-- Women -->"
    )
    first, second = read(page(body), "a.html").sheets
    assert (first.context[1:], first.notes) == (("Zolmar",), ("in cm",))
    assert (second.context[1:], second.notes) == (("Men", "Tarn"), ("Women",))
