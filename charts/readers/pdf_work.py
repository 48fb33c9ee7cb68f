"""How much there is to do for a page of a PDF file, counted without doing it.

A page is a list of commands; one of them draws a form, which is another such list. Forms in
forms can make an endless page out of a few bytes.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any, Final

_DRAW: Final = re.compile(rb"/([^\s/<>\[\]()%{}]+)\s+Do\b")
_ENDLESS: Final = 10**9
_DEEPEST: Final = 24


class Work:
    """Bytes of commands of a page, those of its forms counted as often as they are drawn."""

    def __init__(self) -> None:
        self._known: dict[int, int] = {}

    def of(self, page: Any) -> int:  # a page of pdfminer
        """The work of one page. Raises what pdfminer raises on a damaged one."""
        from pdfminer.pdftypes import PDFStream, resolve1

        found = resolve1(page.contents)
        streams = [resolve1(one) for one in (found if isinstance(found, list) else [found])]
        data = b"\n".join(_commands(one) for one in streams if isinstance(one, PDFStream))
        return self._of_commands(data, page.resources, 0)

    def _of_commands(self, data: bytes, resources: Any, depth: int) -> int:
        if depth > _DEEPEST:
            return _ENDLESS
        total = len(data)
        forms = dict(_forms(resources))
        for name, count in _drawn(data).items():
            if name in forms:
                total += count * self._of_form(forms[name], depth + 1)
            if total > _ENDLESS:
                return _ENDLESS
        return total

    def _of_form(self, form: Any, depth: int) -> int:
        ident = form.objid if form.objid is not None else id(form)
        if ident not in self._known:
            self._known[ident] = 0  # a form that draws itself is drawn once
            work = self._of_commands(_commands(form), form.attrs.get("Resources"), depth)
            self._known[ident] = work
        return self._known[ident]


def _commands(stream: Any) -> bytes:
    data: bytes = stream.get_data()
    return data


def _drawn(data: bytes) -> dict[str, int]:
    found: dict[str, int] = {}
    for match in _DRAW.finditer(data):
        name = match[1].decode("latin-1")
        found[name] = found.get(name, 0) + 1
    return found


def _forms(resources: Any) -> Iterator[tuple[str, Any]]:
    from pdfminer.pdftypes import PDFStream, resolve1
    from pdfminer.psparser import literal_name

    objects = resolve1((resolve1(resources) or {}).get("XObject")) or {}
    for name, one in objects.items():
        stream = resolve1(one)
        if isinstance(stream, PDFStream) and literal_name(stream.attrs.get("Subtype")) == "Form":
            yield str(name), stream
