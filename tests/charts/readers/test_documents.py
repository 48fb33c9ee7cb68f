"""Word-processor documents: spans, headings and notes around a table, tracked changes, signs."""

from __future__ import annotations

from tests.charts.hostile.making import WORD, document, paragraph, zipped
from tests.charts.readers.reading import read

HEADINGS = (
    f'<w:styles xmlns:w="{WORD}"><w:style w:styleId="berschrift1"><w:name w:val="heading 1"/>'
    '</w:style><w:style w:styleId="berschrift2"><w:name w:val="heading 2"/></w:style></w:styles>'
)


def cell(text: str, more: str = "") -> str:
    return f"<w:tc><w:tcPr>{more}</w:tcPr>{paragraph(text)}</w:tc>"


def rich(inside: str) -> str:
    return f"<w:tc><w:p>{inside}</w:p></w:tc>"


def line(*cells: str, more: str = "") -> str:
    return f"<w:tr><w:trPr>{more}</w:trPr>{''.join(cells)}</w:tr>"


def grid(*lines: str) -> str:
    return f"<w:tbl>{''.join(lines)}</w:tbl>"


def heading(text: str, level: int) -> str:
    style = f'<w:pPr><w:pStyle w:val="berschrift{level}"/></w:pPr>'
    return f"<w:p>{style}<w:r><w:t>{text}</w:t></w:r></w:p>"


def docx(body: str) -> bytes:
    return zipped({**document(body), "word/styles.xml": HEADINGS})


def only_row(inside: str) -> str:
    """What a cell with ``inside`` shows beside a label."""
    found = read(
        docx(grid(line(cell("Size"), cell("Chest")), line(cell("S"), rich(inside)))), "a.docx"
    )
    return found.sheet.text(1, 1)


def test_spans_repeat_their_text_and_remember_where_it_stands() -> None:
    merge = '<w:vMerge w:val="restart"/>'
    found = read(
        docx(
            grid(
                line(cell("Size", merge), cell("Chest", '<w:gridSpan w:val="2"/>')),
                line(cell("", "<w:vMerge/>"), cell("from"), cell("to")),
                line(cell("S"), cell("84"), cell("88")),
            )
        ),
        "a.docx",
    )
    assert found.rows() == [["Size", "Chest", "Chest"], ["Size", "from", "to"], ["S", "84", "88"]]
    assert found.sheet.cells[0, 2].shared_from == (0, 1)
    assert found.sheet.cells[1, 0].shared_from == (0, 0)


def test_headings_stand_before_a_table_and_sentences_after_it() -> None:
    small = grid(line(cell("Size"), cell("Chest")), line(cell("S"), cell("84")))
    found = read(
        docx(
            heading("Vest", 1)
            + paragraph("All in cm")
            + heading("Women", 2)
            + small
            + paragraph("* over a shirt.")
            + heading("Men", 2)
            + small
        ),
        "a.docx",
    )
    assert [sheet.name for sheet in found.sheets] == ["table 1", "table 2"]
    assert found.sheets[0].context == ("Vest", "All in cm", "Women")
    assert found.sheets[0].notes == ("* over a shirt.",)
    assert found.sheets[1].context == ("Vest", "All in cm", "Men")
    assert found.sheets[1].place(1, 1) == "table 2!B2"


def test_what_a_tracked_change_deleted_is_left_out_and_what_it_inserted_stays() -> None:
    run = "<w:r><w:t>{}</w:t></w:r>"
    gone = "<w:del><w:r><w:delText>80</w:delText></w:r></w:del>"
    moved = f"<w:moveFrom>{run.format('82')}</w:moveFrom>"
    assert only_row(gone + moved + f"<w:ins>{run.format('84')}</w:ins>") == "84"


def test_a_deleted_row_is_left_out() -> None:
    rows = (line(cell("S"), cell("84")), line(cell("M"), cell("88"), more="<w:del/>"))
    found = read(docx(grid(line(cell("Size"), cell("Chest")), *rows)), "a.docx")
    assert found.rows() == [["Size", "Chest"], ["S", "84"]]


def test_raised_struck_and_hidden_runs_are_read_as_a_person_does() -> None:
    def run(text: str, look: str) -> str:
        return f"<w:r><w:rPr>{look}</w:rPr><w:t>{text}</w:t></w:r>"

    raised = '<w:vertAlign w:val="superscript"/>'
    assert only_row(run("34", "") + run("1/2", raised)) == "34 1/2"
    assert only_row(run("84", "") + run("1", raised)) == "84¹"
    assert only_row(run("80", "<w:strike/>") + run("84", "")) == "84"
    assert only_row(run("84", "") + run(" draft", "<w:vanish/>")) == "84"


def test_a_fraction_written_as_a_formula_is_not_lost() -> None:
    space = 'xmlns:m="http://schemas.openxmlformats.org/officeDocument/2006/math"'
    part = "<m:r><m:t>{}</m:t></m:r>"
    formula = (
        f"<m:oMath {space}><m:f><m:num>{part.format(1)}</m:num><m:den>{part.format(2)}</m:den>"
        "</m:f></m:oMath>"
    )
    assert only_row(f"<w:r><w:t>34</w:t></w:r>{formula}") == "34 1/2"


def test_a_sign_of_another_font_never_vanishes_before_a_figure() -> None:
    sign = '<w:r><w:sym w:font="{}" w:char="F0A3"/><w:t>84</w:t></w:r>'
    assert only_row(sign.format("Symbol")) == "≤84"
    assert only_row(sign.format("Wingdings")) == "?84"


def test_a_table_in_a_layout_table_is_read_as_its_own() -> None:
    inner = grid(line(cell("Size"), cell("Chest")), line(cell("S"), cell("84")))
    outer = grid(line(f"<w:tc>{paragraph('Women')}{inner}</w:tc>"))
    found = read(docx(outer), "a.docx")
    assert found.rows() == [["Size", "Chest"], ["S", "84"]]
    assert found.sheet.context == ("Women",)
