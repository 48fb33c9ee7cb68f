"""Small PDF files written by hand, so that a test knows where every word and rule stands."""

from __future__ import annotations

import zlib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from pdfminer.fontmetrics import FONT_METRICS

WIDTH, HEIGHT = 595, 842
"""A4 in points."""
_METRICS = FONT_METRICS["Helvetica"][1]


def width_of(text: str, size: float) -> float:
    """How wide Helvetica sets ``text``."""
    return sum(_METRICS.get(letter, 556) for letter in text) * size / 1000


@dataclass
class Page:
    """One page; heights are measured from its top."""

    commands: list[bytes] = field(default_factory=list)

    def text(self, x: float, top: float, text: str, size: float = 10) -> Page:
        """A text that begins at ``x``, its letters' base ``size`` below ``top``."""
        return self._placed(f"1 0 0 1 {x:.2f} {HEIGHT - top - size:.2f} Tm", text, size)

    def centred(self, x: float, top: float, text: str, size: float = 10) -> Page:
        """A text with its middle at ``x``."""
        return self.text(x - width_of(text, size) / 2, top, text, size)

    def upwards(self, x: float, bottom: float, text: str, size: float = 10) -> Page:
        """A text that reads from below to above, beginning at ``bottom``."""
        return self._placed(f"0 1 -1 0 {x:.2f} {HEIGHT - bottom:.2f} Tm", text, size)

    def rule(self, x0: float, y0: float, x1: float, y1: float) -> Page:
        """A thin line."""
        self.commands.append(
            f"0.5 w {x0:.2f} {HEIGHT - y0:.2f} m {x1:.2f} {HEIGHT - y1:.2f} l S".encode()
        )
        return self

    def shade(self, x: float, top: float, width: float, height: float) -> Page:
        """A grey band."""
        self.commands.append(
            f"0.9 g {x:.2f} {HEIGHT - top - height:.2f} {width:.2f} {height:.2f} re f 0 g".encode()
        )
        return self

    def _placed(self, matrix: str, text: str, size: float) -> Page:
        escaped = text.replace("\\", r"\\").replace("(", r"\(").replace(")", r"\)")
        self.commands.append(
            f"BT /F1 {size} Tf {matrix} (".encode() + escaped.encode("cp1252") + b") Tj ET"
        )
        return self


def paper(
    *pages: Page, objects: Mapping[int, bytes] | None = None, resources: bytes = b""
) -> bytes:
    """The file of some pages; ``objects`` are further ones, from number 100 on."""
    found = {
        1: b"<< /Type /Catalog /Pages 2 0 R >>",
        3: b"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>",
        **(objects or {}),
    }
    kids = []
    for number, page in enumerate(pages):
        at, content = 10 + 2 * number, 11 + 2 * number
        kids.append(f"{at} 0 R")
        found[at] = (
            b"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 %d %d] /Contents %d 0 R"
            b" /Resources << /Font << /F1 3 0 R >> %s >> >>" % (WIDTH, HEIGHT, content, resources)
        )
        found[content] = packed(b"\n".join(page.commands))
    found[2] = f"<< /Type /Pages /Kids [{' '.join(kids)}] /Count {len(kids)} >>".encode()
    return _written(found)


def packed(data: bytes, head: bytes = b"") -> bytes:
    """A stream packed as usual; ``head`` goes into its dictionary."""
    small = zlib.compress(data)
    return b"<< /Length %d /Filter /FlateDecode %s >>\nstream\n%s\nendstream" % (
        len(small),
        head,
        small,
    )


def table(
    page: Page,
    rows: Sequence[Sequence[str]],
    *,
    left: float = 60,
    top: float = 100,
    columns: Sequence[float] = (90, 90, 90, 90, 90, 90),
    pitch: float = 18,
    size: float = 10,
) -> Page:
    """Rows of texts without any rule, each column begun at its left edge."""
    for number, row in enumerate(rows):
        x = left
        for text, width in zip(row, columns, strict=False):
            page.text(x + 3, top + number * pitch + 3, text, size)
            x += width
    return page


def _written(objects: Mapping[int, bytes]) -> bytes:
    out = bytearray(b"%PDF-1.5\n")
    places = {}
    for number in sorted(objects):
        places[number] = len(out)
        out += b"%d 0 obj\n%s\nendobj\n" % (number, objects[number])
    start, count = len(out), max(objects) + 1
    out += b"xref\n0 %d\n0000000000 65535 f \n" % count
    for number in range(1, count):
        place = places.get(number)
        out += b"%010d 00000 n \n" % place if place else b"0000000000 00000 f \n"
    out += b"trailer << /Size %d /Root 1 0 R >>\nstartxref\n%d\n%%%%EOF\n" % (count, start)
    return bytes(out)
