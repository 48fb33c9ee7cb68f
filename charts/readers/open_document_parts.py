"""The parts of an open document: which kind it is, its content and its styles."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from charts.readers.source import MEGABYTE, UnusableSourceError, too_many
from charts.readers.xml_parts import parsed
from charts.readers.zip_package import ZIP_MARK, Package, package_of

if TYPE_CHECKING:
    from lxml.etree import _Element

OFFICE: Final = "{urn:oasis:names:tc:opendocument:xmlns:office:1.0}"
TABLE: Final = "{urn:oasis:names:tc:opendocument:xmlns:table:1.0}"
TEXT: Final = "{urn:oasis:names:tc:opendocument:xmlns:text:1.0}"
STYLE: Final = "{urn:oasis:names:tc:opendocument:xmlns:style:1.0}"
NUMBER: Final = "{urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0}"
_LARGEST_CONTENT: Final = 24 * MEGABYTE
_MOST_TAGS: Final = 800_000
_MIME: Final = "application/vnd.oasis.opendocument."
_MIME_LENGTH: Final = 200


def open_document_kind(data: bytes) -> str:
    """The kind of open document: spreadsheet, text, ...; empty for what is none."""
    if not data.startswith(ZIP_MARK):
        return ""
    try:
        said = package_of(data).read("mimetype", _MIME_LENGTH).decode("ascii", "replace")
    except UnusableSourceError:
        return ""
    return said.strip().removeprefix(_MIME).partition("-")[0] if said.startswith(_MIME) else ""


def content_of(package: Package) -> _Element:
    """The root of the document itself. Raises UnusableSourceError where it cannot be read."""
    data = _bounded(package, "content.xml")
    if not data:
        raise UnusableSourceError("truncated")
    if "meta-inf/manifest.xml" in package:
        said = package.read("META-INF/manifest.xml", MEGABYTE)
        if b":encryption-data" in said:
            raise UnusableSourceError("locked")
    return parsed(data)


def styles_of(package: Package) -> _Element | None:
    """The root of the styles that several documents share; None where there are none."""
    data = _bounded(package, "styles.xml")
    return parsed(data) if data else None


def repeated(element: _Element, name: str, most: int) -> int:
    """How often ``element`` stands there, at least once and at most ``most`` times."""
    text = element.get(f"{TABLE}{name}", "1")
    count = int(text) if text.isascii() and text.isdigit() and len(text) < 10 else 1
    return max(1, min(count, most))


def _bounded(package: Package, part: str) -> bytes:
    data = package.read(part, _LARGEST_CONTENT)
    if (count := data.count(b"<")) > _MOST_TAGS:
        raise too_many(count)
    return data
