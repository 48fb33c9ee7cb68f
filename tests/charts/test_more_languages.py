"""Tables in languages beside the main eleven: their headings, one whole table each, their cells.

The words and the tables are from general knowledge, no source; the figures are invented.
"""

from __future__ import annotations

import json
import subprocess
import sys
import tomllib
from pathlib import Path
from typing import Any

import pytest

from charts.dimensions import HeadingReading, Role, find_units, read_band, read_heading
from charts.headings.whose import Whose, whose
from charts.quantities import Unit
from charts.schema import Basis, Dimension
from charts.size_labels import read_label
from charts.vocabulary import FURTHER, vocabulary
from tests.charts.read_text import questions, table, values
from tests.charts.told import told

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[1]


def example(name: str) -> dict[str, Any]:
    text = (HERE / "more_languages" / f"{name}.toml").read_text(encoding="utf-8")
    return tomllib.loads(text)


def told_heading(heading: HeadingReading) -> str:
    """Dimension or role, several of them joined by "or", then basis, unit and band if known."""
    several = heading.candidates or ((heading.role, heading.dimension),)
    what = " or ".join(str(dimension or role) for role, dimension in several)
    basis = "" if heading.basis is Basis.UNKNOWN else heading.basis
    sign = "garment" if heading.garment_sign and not basis else ""
    told_parts = (what, basis, sign, heading.unit, heading.band)
    return " ".join(str(part) for part in told_parts if part)


HEADINGS = [(name, *pair) for name in FURTHER for pair in example(name)["headings"].items()]


@pytest.mark.parametrize(("name", "text", "due"), HEADINGS)
def test_a_heading_is_read(name: str, text: str, due: str) -> None:
    assert told_heading(read_heading(text, name)) == due


@pytest.mark.parametrize("name", FURTHER)
def test_every_language_has_a_dozen_headings(name: str) -> None:
    assert len(example(name)["headings"]) >= 12


def due_values(lines: list[str]) -> dict[str, tuple[float | None, float | None]]:
    found = {}
    for line in lines:
        *words, low, high = line.split()
        found[" ".join(words)] = tuple(None if end == ".." else float(end) for end in (low, high))
    return {key: (ends[0], ends[1]) for key, ends in found.items()}


@pytest.mark.parametrize("name", FURTHER)
def test_a_whole_table_is_read_without_a_question(name: str) -> None:
    chart = example(name)["chart"]
    reading = table(chart["table"])
    assert values(reading) == due_values(chart["values"])
    assert questions(reading) == []


@pytest.mark.parametrize(
    ("text", "due"),
    [
        ("８６～９１ｃｍ", "[86, 91] cm"),
        ("８６〜９１", "[86, 91]"),
        ("86ー91㎝", "[86, 91] cm"),
        ("約８６cm", "~86 cm"),
        ("〜90cm", "[.., 90] cm"),
        ("90cm〜", "[90, ..] cm"),
        ("90～", "[90, ..]"),
        ("~90cm", "~90 cm"),
        ("90cm以下", "[.., 90] cm"),
        ("90cm以上", "[90, ..] cm"),
        ("90cm未満", "[.., 90) cm"),
        ("60kgまで", "[.., 60] kg"),
        ("60から70まで", "[60, 70]"),
        ("60センチ", "60 cm"),
        ("150至158厘米", "[150, 158] cm"),
        ("不超过60公斤", "[.., 60] kg"),
        ("60kg 초과", "(60, ..] kg"),
        ("60kg미만", "[.., 60) kg"),
        ("50부터 60까지", "[50, 60]"),
        ("60 kg alatt", "[.., 60) kg"),
        ("60 kg felett", "(60, ..] kg"),
        ("70 kg ve üzeri", "[70, ..] kg"),
        ("60 kg altı", "[.., 60) kg"),
        ("alle 60 kg", "[.., 60) kg"),
        ("yli 72 kg", "(72, ..] kg"),
        ("noin 60 kg", "~60 kg"),
        ("de la 60 la 70", "[60, 70]"),
        ("peste 70 kg", "(70, ..] kg"),
        ("nuo 93 iki 98", "[93, 98]"),
        ("80 līdz 90", "[80, 90]"),
        ("kuni 70 kg", "[.., 70] kg"),
        ("fins a 60 kg", "[.., 60] kg"),
        ("έως 60 κιλά", "[.., 60] kg"),
        ("від 88 до 92 см", "[88, 92] cm"),
        ("не более 60 кг", "[.., 60] kg"),
        ("око 60 кг", "~60 kg"),
        ("45-50 กก.", "[45, 50] kg"),
        ("80 ถึง 90 นิ้ว", "[80, 90] in"),
    ],
)
def test_a_cell_is_read(text: str, due: str) -> None:
    assert told(text) == due


def test_a_cell_with_an_unknown_word_of_a_script_without_spaces_stays_unread() -> None:
    assert told("約90cm位前後") == "unread unreadable"
    assert told("90斤") == "unread unreadable"


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        ("Kaikki mitat senttimetreinä", Unit.CM),
        ("Všetky rozmery sú v centimetroch", Unit.CM),
        ("A méretek centiméterben értendők", Unit.CM),
        ("Toate dimensiunile sunt în centimetri", Unit.CM),
        ("Všechny rozměry v cm", Unit.CM),
        ("Visi izmēri centimetros", Unit.CM),
        ("Visi matmenys nurodyti centimetrais", Unit.CM),
        ("Kõik mõõdud sentimeetrites", Unit.CM),
        ("Все размеры указаны в сантиметрах", Unit.CM),
        ("Sve mjere su u centimetrima", Unit.CM),
        ("Όλες οι διαστάσεις σε εκατοστά", Unit.CM),
        ("Tüm ölçüler santimetre cinsindendir", Unit.CM),
        ("単位：ｃｍ", Unit.CM),
        ("単位はセンチです", Unit.CM),
        ("单位：厘米", Unit.CM),
        ("단위: 센티미터", Unit.CM),
        ("หน่วย: นิ้ว", Unit.IN),
        ("Totes les mides en centímetres", Unit.CM),
        ("Öll mál í sentimetrum", Unit.CM),
    ],
)
def test_a_note_names_the_unit_of_all_figures(text: str, unit: Unit) -> None:
    assert find_units(text) == (unit,)


@pytest.mark.parametrize(
    ("text", "due"),
    [
        ("Размеры изделия", Whose(Basis.FINISHED)),
        ("Указаны не размеры изделия", Whose(Basis.BODY)),
        ("Мерки на тялото", Whose(Basis.BODY)),
        ("Dimensiunile produsului", Whose(Basis.FINISHED)),
        ("仕上がり寸法（cm）", Whose(Basis.FINISHED)),
        ("ヌード寸法です", Whose(Basis.BODY)),
        ("仕上がり寸法ではありません", Whose(Basis.BODY)),
        ("商品サイズ：平置き採寸", Whose(Basis.FLAT)),
        ("净体尺寸", Whose(Basis.BODY)),
        ("平铺测量", Whose(Basis.FLAT)),
        ("ürün ölçüleri değildir", Whose(Basis.BODY)),
        ("실측 사이즈", Whose(Basis.FINISHED)),
        ("Размеры одежды", Whose()),
    ],
)
def test_a_title_says_whose_measures_follow(text: str, due: Whose) -> None:
    assert whose(text) == due


@pytest.mark.parametrize(
    ("text", "normal"),
    [("10 vuotta", "10 years"), ("6-8 éves", "6-8 years"), ("３〜４歳", "3-4 years"),
     ("12个月", "12 months"), ("5세", "5 years"), ("6 lat", "6 years"),
     ("8-10 godina", "8-10 years"), ("3 года", "3 years"), ("4 roky", "4 years"),
     ("10 ani", "10 years"), ("8 metų", "8 years")],
)  # fmt: skip
def test_an_age_is_a_size_label(text: str, normal: str) -> None:
    label = read_label(text)
    assert label is not None
    assert label.normal == normal


@pytest.mark.parametrize(
    "title",
    ["0-3 mies.", "Con noi", "Modele noi", "Nu i lager", "Pris NOK", "Viet Nam",
     "Lapsed stock", "Karla", "Fête", "Barna", "Homes", "Home"],
)  # fmt: skip
def test_a_word_of_a_main_language_is_no_band_of_a_further_one(title: str) -> None:
    assert read_band(title) is None


@pytest.mark.parametrize("heading", ["Hat size", "Cap", "Bak", "Sold", "ISO 13688", "Boy"])
def test_a_word_of_a_main_language_is_no_measure_of_a_further_one(heading: str) -> None:
    assert read_heading(heading).dimension in {None, Dimension.OTHER}


ABOUT_MAIN_WORDS = """
import json
import sys
sys.path[:0] = [{root!r}, {here!r}]
from charts import vocabulary
vocabulary.FURTHER = {further!r}
vocabulary.LANGUAGES = vocabulary.MAIN + vocabulary.FURTHER
from charts import dimensions
# A slip of a measure is only offered, and slow to find.
dimensions.mistyped = lambda *_, **__: ()
from main_words import everything_about_main_words
print(json.dumps(everything_about_main_words()))
"""


def about_main_words(further: tuple[str, ...]) -> dict[str, dict[str, Any]]:
    """What the main languages' words are read as beside those of ``further`` languages."""
    script = ABOUT_MAIN_WORDS.format(root=str(ROOT), here=str(HERE), further=further)
    done = subprocess.run([sys.executable, "-c", script], capture_output=True, check=True)
    found: dict[str, dict[str, Any]] = json.loads(done.stdout)
    return found


def test_no_word_of_a_main_language_changes_by_the_further_ones() -> None:
    without, beside = about_main_words(()), about_main_words(FURTHER)
    for kind, read in beside.items():
        assert len(read) > 100
        assert {word: one for word, one in read.items() if one != without[kind][word]} == {}


def test_a_further_language_has_no_other_meaning_for_a_word_of_a_main_one() -> None:
    """It would never be read: such a word is left out of its file, and its head says so."""
    lost = {
        (word, name)
        for name in FURTHER
        for row in vocabulary(name).get("column", ())
        for word in row["words"]
        if (Role(row["role"]), dimension_of(row)) not in all_readings(read_heading(word))
    }
    assert lost == set()


def dimension_of(row: dict[str, Any]) -> Dimension | None:
    return Dimension(row["dimension"]) if "dimension" in row else None


def all_readings(heading: HeadingReading) -> set[tuple[Role, Dimension | None]]:
    return set(heading.candidates) or {(heading.role, heading.dimension)}
