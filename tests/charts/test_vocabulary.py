"""The vocabulary is sound: every file loads, every word is known, and means what its file says."""

from __future__ import annotations

from typing import Any

import pytest

from charts.dimensions import HeadingReading, Role, find_units, read_band, read_heading
from charts.headings.words import entries
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension
from charts.size_labels import read_length
from charts.vocabulary import LANGUAGES, normal, vocabulary

BANDS = {"women", "men", "girls", "boys", "kids", "baby", "unisex", "adult", "nobody"}
CELL_LISTS = {"to", "from", "between", "and", "circa", "at_most", "below", "at_least", "above",
              "or_less", "or_more", "filler", "blank"}  # fmt: skip
PARTS = {"filler", "body", "finished", "flat", "garment", "low_end", "high_end", "tolerance",
         "step", "location", "thing", "refuse", "position",
         "bare_back", "back_measure"}  # fmt: skip


@pytest.mark.parametrize("name", LANGUAGES)
def test_a_file_holds_only_what_is_read(name: str) -> None:
    file = vocabulary(name)
    assert file["format"] == 1
    known = {"format", "language", "cell", "bands", "lengths", "labels", "column", "part",
             "definition", "false_friend", "label_letters", "label_slips", "compounds",
             "basis", "units"}  # fmt: skip
    assert set(file) <= known
    assert set(file.get("cell", {})) <= CELL_LISTS
    assert set(file.get("bands", {})) <= BANDS
    assert set(file.get("part", {})) <= PARTS


def columns() -> list[tuple[str, str, dict[str, Any]]]:
    return [
        (name, word, row)
        for name in LANGUAGES
        for row in vocabulary(name).get("column", ())
        for word in row["words"]
    ]


def readings_of(heading: HeadingReading) -> set[tuple[Role, Dimension | None]]:
    return set(heading.candidates) or {(heading.role, heading.dimension)}


@pytest.mark.parametrize("name", LANGUAGES)
def test_every_word_of_a_column_is_read_as_its_file_says(name: str) -> None:
    language = vocabulary(name)["language"]
    for _, word, row in (one for one in columns() if one[0] == name):
        due = (Role(row["role"]), Dimension(row["dimension"]) if "dimension" in row else None)
        heading = read_heading(word, language)
        found = readings_of(heading) | readings_of(read_heading(word))
        found |= readings_of(read_heading(word.upper()))
        assert due in found, (name, word, heading)


@pytest.mark.parametrize("name", LANGUAGES)
def test_a_measure_with_its_unit_in_capitals_and_without_accents_stays_the_same(name: str) -> None:
    for _, word, row in (one for one in columns() if one[0] == name):
        if row["role"] != "measure" or row["dimension"] == "other":
            continue
        bare = read_heading(word)
        texts = [f"{word} (cm)", word.upper(), f"A {word}"]
        if not entries()[normal(word)].accented:  # only its accents tell "șold" from "sold"
            texts.append(normal(word))
        if not word[-1].isdigit():  # "1 in" behind a word is an inch
            texts.append(f"{word} in cm")
        for text in texts:
            assert bare.dimension in {one for _, one in readings_of(read_heading(text))} | {
                read_heading(text).dimension
            }, (word, text)
        assert read_heading(f"{word} (cm)").unit is (bare.unit or Unit.CM)


@pytest.mark.parametrize("name", LANGUAGES)
def test_a_definition_and_a_basis_are_given_where_the_word_says_them(name: str) -> None:
    language = vocabulary(name)["language"]
    for _, word, row in (one for one in columns() if one[0] == name):
        heading = read_heading(word, language)
        if heading.candidates or row["role"] != "measure":
            continue
        if "definition" in row:
            assert heading.definition is Definition(row["definition"]), (name, word)
        if "basis" in row and row["dimension"] != "other":
            assert heading.basis is Basis(row["basis"]), (name, word)


def test_every_band_word_names_its_band() -> None:
    for name in LANGUAGES:
        for band, words in vocabulary(name).get("bands", {}).items():
            for word in words:
                if band == "nobody":
                    assert read_band(word) is None, (name, word)
                elif band != "adult":
                    assert read_band(word) in {band, "kids", "unisex"}, (name, word)


@pytest.mark.parametrize("heading", ["CZ", "UA (Наш)", "RUS", "РФ", "Міжнародний", "GB", "MX"])
def test_a_country_over_a_column_names_sizes(heading: str) -> None:
    assert read_heading(heading).role is Role.LABEL


@pytest.mark.parametrize("heading", ["Size Number", "Gown Size Number", "Size No."])
def test_the_number_of_a_size_names_it(heading: str) -> None:
    assert read_heading(heading).role is Role.LABEL


def test_every_length_word_names_its_length() -> None:
    for name in LANGUAGES:
        for length, words in vocabulary(name).get("lengths", {}).items():
            for word in words:
                assert read_length(word) == length, (name, word)


def test_every_unit_word_is_found_in_brackets_and_behind_a_figure() -> None:
    for unit, table in vocabulary("units").items():
        if unit in {"format", "months"}:
            continue
        for word in (*table.get("words", ()), *table.get("bracket", ())):
            assert find_units(f"Chest ({word})") == (Unit(unit),), word
