"""PDF files that swell, loop or hold more than any page."""

from __future__ import annotations

import zlib
from typing import Final

from tests.charts.hostile.making import MEGABYTE, Files
from tests.charts.readers.paper import Page, packed, paper, table

ROWS: Final = (
    ("Size", "Chest (cm)", "Waist (cm)"),
    ("S", "84-88", "68-72"),
    ("M", "89-93", "73-77"),
    ("L", "94-98", "78-82"),
)
_PATH: Final = b"0 0 m 9 9 l S\n"


def pages(address: str) -> Files:
    """Printed pages of every bad kind; some ask for ``address``."""
    yield from _swelling()
    yield from _looping()
    yield from _crowded()
    yield from broken_pages(address)


def chart_page() -> bytes:
    """A clean chart on a page."""
    return paper(table(Page().text(60, 60, "Vest Fernside"), ROWS))


def _with(number: int, body: bytes, draw: bytes = b"") -> bytes:
    """A page with one more object, drawn by ``draw``."""
    page = Page([draw] if draw else [])
    return paper(
        table(page, ROWS), objects={number: body}, resources=b"/XObject << /X100 100 0 R >>"
    )


def _swelling() -> Files:
    form = b"/Type /XObject /Subtype /Form /BBox [0 0 9 9]"
    yield "content.pdf", paper(Page([_PATH * (40 * MEGABYTE // len(_PATH))]))
    spaces = _spaces(200)
    yield "form.pdf", _with(100, _packed(spaces, form), b"/X100 Do")
    twice = zlib.compress(_spaces(60))
    head = b"<< /Length %d /Filter [/FlateDecode /FlateDecode] >>\nstream\n" % len(twice)
    yield "twice.pdf", _with(100, head + twice + b"\nendstream")
    escaped = b"<< /Length %d /Filter /Fl#61teDecode /Subtype /Im#61ge >>\nstream\n"
    yield "escaped.pdf", _with(100, escaped % len(spaces) + spaces + b"\nendstream")
    objects = b"<< /Type /ObjStm /N 1 /First 4 /Length %d /Filter /FlateDecode >>\nstream\n"
    yield "objects.pdf", _with(100, objects % len(spaces) + spaces + b"\nendstream")
    run = bytes([129, 32]) * MEGABYTE
    old = b"<< /Length %d /Filter /RunLengthDecode >>\nstream\n" % len(run)
    yield "run.pdf", _with(100, old + run + b"\nendstream")


def _spaces(megabytes: int) -> bytes:
    """A great many blanks, packed."""
    packer = zlib.compressobj(1)
    block = b" " * MEGABYTE
    return b"".join([*(packer.compress(block) for _ in range(megabytes)), packer.flush()])


def _packed(small: bytes, head: bytes) -> bytes:
    return b"<< /Length %d /Filter /FlateDecode %s >>\nstream\n%s\nendstream" % (
        len(small),
        head,
        small,
    )


def _looping() -> Files:
    yield "endless.pdf", _forms(9)
    itself = b"/Resources << /XObject << /X100 100 0 R >> >>"
    own = b"/Type /XObject /Subtype /Form /BBox [0 0 9 9] " + itself
    yield "itself.pdf", _with(100, packed(b"/X100 Do", own), b"/X100 Do")
    plain = chart_page()
    yield "kids.pdf", plain.replace(b"/Kids [10 0 R]", b"/Kids [2 0 R] ")
    yield "parent.pdf", plain.replace(b"/Parent 2 0 R", b"/Parent 10 0 R")
    yield "contents.pdf", plain.replace(b"/Contents 11 0 R", b"/Contents 10 0 R")
    start = plain.rfind(b"xref\n0")
    yield "tables.pdf", plain.replace(b"trailer <<", b"trailer << /Prev %d" % start)


def _forms(levels: int) -> bytes:
    """Forms that draw the next one ten times: a thousand million drawings from some bytes."""
    objects = {}
    for level in range(levels):
        here, below = 100 + level, 101 + level
        head = b"/Type /XObject /Subtype /Form /BBox [0 0 9 9]"
        if level < levels - 1:
            head += b" /Resources << /XObject << /X%d %d 0 R >> >>" % (below, below)
        commands = b"/X%d Do " % below * 10 if level < levels - 1 else _PATH
        objects[here] = packed(commands, head)
    return paper(
        table(Page([b"/X100 Do " * 10]), ROWS),
        objects=objects,
        resources=b"/XObject << /X100 100 0 R >>",
    )


def _crowded() -> Files:
    heap = Page()
    for number in range(6_000):
        heap.text(60, 100, f"{number % 90}", 8)
    yield "heap.pdf", paper(heap)
    crowd = Page()
    for number in range(9_000):
        crowd.text(20 + number % 90 * 6, 20 + number // 90 * 8, f"{number % 90}", 4)
    yield "crowd.pdf", paper(crowd)
    ruled = table(Page(), ROWS)
    for number in range(4_000):
        ruled.rule(10, number / 5, 580, number / 5)
        ruled.rule(10 + number / 7, 10, 10 + number / 7, 800)
    yield "ruled.pdf", paper(ruled)
    yield "catalogue.pdf", paper(*(table(Page(), ROWS * 10, pitch=18) for _ in range(150)))
    yield "pages.pdf", paper(*(Page() for _ in range(1_200)))
    yield "cell.pdf", paper(Page().text(60, 60, "84-88 / " * (10 * MEGABYTE // 8)))


def broken_pages(address: str) -> Files:
    """Pages that say what cannot be, or ask for ``address``."""
    plain = chart_page()
    yield "none.pdf", paper()
    yield "length.pdf", plain.replace(b"/Length ", b"/Length -9")
    yield "box.pdf", plain.replace(b"[0 0 595 842]", b"[0 0 1e99 -1]")
    yield "boxless.pdf", plain.replace(b"/MediaBox [0 0 595 842]", b"")
    yield "font.pdf", plain.replace(b"/Font << /F1 3 0 R >>", b"/Font << /F1 2 0 R >>")
    yield "locked.pdf", plain.replace(b"/Root 1 0 R", b"/Root 1 0 R /Encrypt << /Filter /X >>")
    action = b"/OpenAction << /S /URI /URI (%s) >>" % address.encode()
    yield "action.pdf", plain.replace(b"/Type /Catalog", b"/Type /Catalog " + action)
    away = b"<< /Length 0 /F << /FS /URL /F (%s) >> >>\nstream\n\nendstream" % address.encode()
    yield "away.pdf", _with(100, away, b"/X100 Do")
    yield "head.pdf", b"x" * 900 + plain
    yield "only-head.pdf", b"%PDF-1.7\n" + b"\0" * 100_000
    yield "objects-only.pdf", b"%PDF-1.7\n" + b"1 0 obj\n" * 200_000
    yield "arrays.pdf", b"%PDF-1.7\n1 0 obj\n" + b"[" * 200_000
    yield "names.pdf", plain.replace(b"/Resources <<", b"/Resources << " + b"/A " * 50_000)
