"""A PDF file opened: a clean copy, the text of its pages, and how much work each of them is.

PDFium, which draws pages too, opens the file first: it is at home with damaged files, takes
away what only forbids printing and copying, and reads text a hundred times faster than what
follows. It must never run twice at a time: hold ``PDFIUM`` around every use of it.
"""

from __future__ import annotations

import io
import threading
from collections.abc import Sequence
from importlib import import_module
from itertools import islice
from typing import Any, Final

from charts.patience import Patience
from charts.readers.pdf_bounds import refuse_if_swollen
from charts.readers.pdf_work import Work
from charts.readers.source import UnusableSourceError, too_many

PDFIUM: Final = threading.RLock()
"""Held around every use of PDFium, by whoever uses it."""
MOST_PAGES: Final = 1_000
MOST_WORK: Final = 3_000_000
"""Bytes of commands of one page; a page full of drawings reaches about one million."""
BROKEN: Final = (
    ArithmeticError,
    AssertionError,
    AttributeError,
    LookupError,
    NotImplementedError,
    RecursionError,
    TypeError,
    ValueError,
)
"""What pdfminer raises on damaged pages besides its own errors."""


def load_libraries() -> None:
    """Load what reads PDF files: a second or two on a machine that never did."""
    for name in ("pdfminer", "pdfplumber", "pypdfium2"):
        import_module(name)


def clean_copy(data: bytes) -> bytes:
    """``data`` written anew by PDFium, without protection.

    Raises UnusableSourceError where the file is damaged, locked or swollen.
    """
    import pypdfium2

    refuse_if_swollen(data)
    with PDFIUM:
        try:
            document = pypdfium2.PdfDocument(data)
        except pypdfium2.PdfiumError as problem:
            locked = "password" in str(problem).lower() or "security" in str(problem).lower()
            raise UnusableSourceError("locked" if locked else "truncated") from problem
        try:
            if len(document) > MOST_PAGES:
                raise too_many(len(document))
            copy = pypdfium2.PdfDocument.new()
            copy.import_pages(document)
            written = io.BytesIO()
            copy.save(written)
            copy.close()
        except pypdfium2.PdfiumError as problem:
            raise UnusableSourceError("truncated") from problem
        finally:
            document.close()
    refuse_if_swollen(written.getvalue())
    return written.getvalue()


def works_of(clean: bytes) -> list[int | None]:
    """The work of each page, None where a page is damaged.

    Raises UnusableSourceError when the list of pages cannot be read.
    """
    from pdfminer.pdfdocument import PDFDocument
    from pdfminer.pdfpage import PDFPage
    from pdfminer.pdfparser import PDFParser
    from pdfminer.psexceptions import PSException

    work = Work()
    try:
        document = PDFDocument(PDFParser(io.BytesIO(clean)))
        pages = list(islice(PDFPage.create_pages(document), MOST_PAGES))
    except (PSException, *BROKEN) as problem:
        raise UnusableSourceError("truncated") from problem
    found: list[int | None] = []
    for page in pages:
        try:
            found.append(work.of(page))
        except (PSException, *BROKEN):
            found.append(None)
    return found


def texts_of(clean: bytes, pages: Sequence[int], patience: Patience) -> dict[int, str]:
    """The plain text of some pages, counted from 0, of as many as there is patience for.

    The first is always read.
    """
    import pypdfium2

    found: dict[int, str] = {}
    with PDFIUM:
        document = pypdfium2.PdfDocument(clean)
        try:
            for number in pages:
                if found and patience.is_over:
                    break
                found[number] = _text_of(document, number)
        finally:
            document.close()
    return found


def _text_of(document: Any, number: int) -> str:
    """The text of one page, "" where it is damaged. What is opened here is closed here."""
    import pypdfium2

    try:
        page = document[number]
    except pypdfium2.PdfiumError:
        return ""
    try:
        text = page.get_textpage()
        said = str(text.get_text_bounded())
        text.close()
    except pypdfium2.PdfiumError:
        return ""
    finally:
        page.close()
    return said
