"""The wall sheet as one web page: its pages as pictures of lines and words, nothing is fetched."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterator, Sequence
from html import escape
from typing import Final

from charts.resource_files import resources
from charts.wording import Wording
from charts.writers.own_files import MARK
from ui.appearance import FAMILY
from ui.wall_sheet.ink import Page
from ui.wall_sheet.svg import svg_text

_STYLE: Final = """
html {{ background: #707070 }} body {{ margin: 0 }}
svg {{ display: block; background: #fff; width: 100%; height: auto; margin: 0 0 1.5em }}
text {{ font-feature-settings: "calt" 0, "tnum" 0; white-space: pre }}
@page {{ size: {width:.1f}pt {height:.1f}pt; margin: 0 }}
@media print {{
  html {{ background: none }}
  svg {{ width: {width:.1f}pt; height: {height:.1f}pt; margin: 0; break-after: page }}
  svg:last-child {{ break-after: auto }}
}}
"""
_FACES: Final = (("Inter-Regular.otf", 400), ("Inter-SemiBold.otf", 600))


def web_page_bytes(pages: Sequence[Page], wording: Wording) -> bytes:
    """``pages`` one below the other in one HTML file that carries its own fonts."""
    title = wording.say("wall_sheet", "title")
    paper = pages[0].paper
    parts = [
        "<!doctype html>",
        f'<html lang="{wording.language}"><head><meta charset="utf-8">',
        f'<meta name="generator" content="{MARK}">',
        f"<title>{escape(title)}</title>",
        f"<style>{_STYLE.format(width=paper.width, height=paper.height)}",
        *_fonts(),
        "</style></head><body>",
        *_pictures(pages, title, wording),
        "</body></html>",
    ]
    return "\n".join(parts).encode("utf-8", "replace")


def _fonts() -> Iterator[str]:
    for file, weight in _FACES:
        data = b64encode((resources() / "fonts" / file).read_bytes()).decode()
        yield (
            f"@font-face {{ font-family: {FAMILY}; font-weight: {weight}; "
            f"src: url(data:font/otf;base64,{data}) format('opentype') }}"
        )


def _pictures(pages: Sequence[Page], title: str, wording: Wording) -> Iterator[str]:
    for number, page in enumerate(pages, 1):
        place = wording.say("combined", "page", number=number, pages=len(pages))
        said = wording.say("wall_sheet", "page-title", title=title, page=place)
        yield svg_text(page, f"page{number}", said)
