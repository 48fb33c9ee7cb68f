"""Bytes become the text that was meant, and latin-1 is never believed."""

from __future__ import annotations

import codecs

import pytest
from hypothesis import given
from hypothesis import strategies as st

from charts.readers.mojibake import repaired
from charts.readers.text_encoding import decoded
from tests.charts.readers.reading import read

WORDS = {
    "cp1252": [
        "Größe;Brustumfang;Rücken\nS;34½–36;44\n",
        "Taille;Tour de poitrine;âge\nS;88–92;é\n",
        "Talla;Pecho;Años\n4;“60–64”;4\n",
        "Storlek;Bröstvidd;Höft\nS;86–91;90–94\n",
        "Size;Chest\nS;34½\nM;36½–38\n",
    ],
    "cp1250": [
        "Rozmiar;Obwód klatki;Długość pleców\nS;86–91;44\n",
        "Velikost;Obvod hrudníku;Délka zad;Šířka\nS;86–91;44;40\n",
    ],
    "cp1251": ["Размер;Обхват груди;Рост\nS;86–91;164\n", "размер;рост\n1;2\n"],
    "mac_roman": [
        "Größe;Hüftumfang;Rückenlänge\nS;34–36\n",
        "Maße für Kinder\n",
        "Talla;Pecho;Niños\n4;60–64;4\n",
    ],
}


@pytest.mark.parametrize(
    ("page", "text"), [(page, text) for page, texts in WORDS.items() for text in texts]
)
def test_an_old_code_page_is_found_by_the_words_of_size_charts(page: str, text: str) -> None:
    found = decoded(text.encode(page))
    assert found is not None
    assert (found.encoding, found.text) == (page, text)


@pytest.mark.parametrize("mark", [codecs.BOM_UTF8, codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE])
def test_a_byte_order_mark_decides(mark: bytes) -> None:
    encoding = {codecs.BOM_UTF8: "utf-8", codecs.BOM_UTF16_LE: "utf-16-le"}.get(mark, "utf-16-be")
    found = decoded(mark + "Größe;Brust".encode(encoding))
    assert found is not None
    assert found.text == "Größe;Brust"


@pytest.mark.parametrize("encoding", ["utf-16-le", "utf-16-be"])
def test_sixteen_bits_without_a_mark_are_seen_by_their_zeros(encoding: str) -> None:
    found = decoded("Größe;Brust\nS;86\n".encode(encoding))
    assert found is not None
    assert found.text == "Größe;Brust\nS;86\n"


def test_the_dash_of_an_old_code_page_is_never_hidden_in_a_control_sign() -> None:
    assert read("Size;Chest\nS;34–36\nM;36–38\n".encode("cp1252")).rows()[1] == ["S", "34–36"]


def test_a_text_cut_inside_a_letter_is_utf8_and_its_last_line_is_left_out() -> None:
    data = "Größe;Brust\nS;86–91\nM;92–97".encode()
    found = read(data[: data.rindex("–".encode()) + 1])
    assert found.rows() == [["Größe", "Brust"], ["S", "86–91"]]
    assert found.codes == ["truncated"]


def test_zeros_behind_the_text_of_a_half_written_file_are_said() -> None:
    found = read(b"Size;Chest\nS;86-91\nM;92-9" + bytes(4000))
    assert found.rows() == [["Size", "Chest"], ["S", "86-91"]]
    assert found.codes == ["truncated"]


def test_one_damaged_byte_does_not_turn_a_text_into_another_code_page() -> None:
    data = "Größe;Brust\nS;86–91\nM;92–97\nfür Kinder – Höhe\n".encode()
    found = decoded(data.replace(b"M;92", b"M;\xff92"))
    assert found is not None
    assert found.text.startswith("Größe;Brust\nS;86–91\nM;\N{REPLACEMENT CHARACTER}92–97")


def test_bytes_that_are_no_text_are_no_text() -> None:
    assert decoded(bytes(range(256)) * 10) is None


@pytest.mark.parametrize(
    ("broken", "meant"),
    [
        ("GrÃ¶ÃŸe;34â€“36", "Größe;34–36"),
        ("34Â½", "34½"),
        ("5â\x80\x9d", "5”"),
        ("Gr√∂√üe", "Größe"),
        ("RÃƒÂ¼ckenlÃƒÂ¤nge", "Rückenlänge"),
        ("dÅ‚ugoÅ›Ä‡", "długość"),
    ],
)
def test_broken_letters_are_put_right(broken: str, meant: str) -> None:
    assert repaired(broken)[0] == meant


@pytest.mark.parametrize("text", ["NÃO", "Größe 34–36", "34”–36”", "Modell „BÄ“", "Ü½", "São Â"])
def test_whole_letters_are_left_alone(text: str) -> None:
    assert repaired(text) == (text, None)


def test_a_repair_is_noted_with_an_example() -> None:
    found = read("GrÃ¶ÃŸe;Brust\nS;86â€“91\nM;92â€“97\n")
    assert found.rows()[:2] == [["Größe", "Brust"], ["S", "86–91"]]
    assert found.codes == ["text-repaired"]
    assert found.findings[0].values["before"] == "GrÃ¶ÃŸe;Brust"
    assert found.findings[0].values["after"] == "Größe;Brust"


@given(st.text(alphabet="äöüßéèêàçñó–—½¼¾’“”° 0123456789abcXYZ", min_size=1, max_size=40))
def test_breaking_a_text_in_the_commonest_way_and_repairing_it_gives_the_text(text: str) -> None:
    if text.isascii():
        return
    broken = "".join(
        chr(byte) if byte in {0x81, 0x8D, 0x8F, 0x90, 0x9D} else bytes([byte]).decode("cp1252")
        for byte in text.encode()
    )
    assert repaired(broken)[0] == text
