"""Files that ask for other files, or for an address."""

from __future__ import annotations

from tests.charts.hostile.making import (
    CHART,
    LINKED,
    Files,
    document,
    letter,
    open_cell,
    open_row,
    open_sheet,
    paragraph,
    text_cell,
    workbook,
    zipped,
)


def reaching_out(file: str, address: str) -> Files:
    """Files that ask for ``file`` and for ``address``, and some that would write elsewhere."""
    for kind, where in (("file", f"file://{file}"), ("net", address)):
        head = f'<!DOCTYPE r [<!ENTITY a SYSTEM "{where}">]>'
        yield f"{kind}.xlsx", zipped(workbook(text_cell("A1", "&a;"), head))
        yield f"{kind}.docx", zipped(document(paragraph("&a;"), head))
        yield f"{kind}.ods", zipped(open_sheet(open_row(open_cell("&a;")), head))
        yield f"{kind}.html", f"{head}<html><table><tr><td>&a;</table>".encode()
        outer = f'<!DOCTYPE r SYSTEM "{where}">'
        yield f"{kind}-outer.docx", zipped(document(paragraph("x"), outer))
        yield f"{kind}-outer.html", f"{outer}<html><table><tr><td>Size</table>".encode()
        include = f'<xi:include xmlns:xi="http://www.w3.org/2001/XInclude" href="{where}"/>'
        yield f"{kind}-include.docx", zipped(document(include + paragraph("x")))
        yield f"{kind}-include.ods", zipped(open_sheet(include + open_row(open_cell("x"))))
    yield from _links(file, address)
    yield from _outside()


def _links(file: str, address: str) -> Files:
    away = f'<Relationship Id="r9" Type="{LINKED}/externalLink" TargetMode="External" '
    links = f'{away} Target="{address}"/>'
    out = f'<Relationship Id="r1" Type="{LINKED}/worksheet" Target="../../../..{file}"/>'
    yield "links.xlsx", zipped(workbook(text_cell("A1", "Size"), links=links))
    yield "outside.xlsx", zipped(workbook(text_cell("A1", "Size"), links=out))
    rels = f'<Relationships xmlns="x">{links}</Relationships>'
    yield (
        "template.docx",
        zipped({**document(paragraph("x")), "word/_rels/document.xml.rels": rels}),
    )
    link = f'<text:a xlink:href="{address}">x</text:a>'
    yield "link.ods", zipped(open_sheet(open_row(open_cell(link))))
    yield (
        "page.html",
        f'<html><head><link rel="stylesheet" href="{address}"><base href="{address}">'
        f'<meta http-equiv="refresh" content="0;url={address}"></head><body><img src="{address}">'
        f'<iframe src="{address}"></iframe><script src="{address}"></script>'
        f'<table background="{address}"><tr><td>Size<td>Chest</table>'.encode(),
    )
    yield (
        "calls.csv",
        f'Size;Chest\n=WEBSERVICE("{address}");=HYPERLINK("{address}")\n=cmd|calc;1\n'.encode(),
    )
    yield (
        "body.eml",
        b"From: a@b.example\nTo: c@d.example\nMessage-ID: <1@b>\nContent-Type:"
        b' message/external-body; access-type=URL; URL="%s"\n\n' % address.encode(),
    )


def _outside() -> Files:
    names = ("../../over.csv", "/etc/over.csv", "C:\\over.csv", "a/../../b.csv", "con.csv")
    odd = ("x" * 400 + ".csv", "a\u202egpj.csv", "..", "...csv", "\n.csv")
    yield "names.zip", zipped(dict.fromkeys((*names, *odd), CHART))
    yield "names.eml", letter(*((name, CHART.encode()) for name in names))
