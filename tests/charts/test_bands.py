"""Who a chart is for: words and compounds of eleven languages, and where they are printed.

The words are common words of the languages, from memory, unchecked by native speakers.
"""

from __future__ import annotations

import pytest

from charts.dimensions import read_band, read_heading
from charts.headings.bands import bands_named
from charts.importer import read_bytes
from tests.charts.read_text import table

WORDS = {
    "women": """Women's; ladies; lady's; females; womenswear; Damen-; Damengrößen; Damenkonfektion;
        Damen-Airbagweste; Damensicherheitsweste; dames:; damesmaten; dameskleding; vrouwelijk;
        modèle féminin; femmes; da donna; femminile; signora; señora; femenino; de mulher; feminina;
        damstorlekar; damskyddsväst; kvinnlig; damestørrelser; dametøj; dame-sikkerhedsvest;
        dameklær; damska; damskich; dla kobiet; dla pań; dámská vesta; dámských;
        ženské; pro ženy; for her; WMNS; pour elle; voor haar; per lei; para ella; para ela;
        för henne; til hende; dla niej; pro ni""",
    "men": """Men's; males; menswear; Herrengrößen; Herrenmodell; herenmaten; herenkleding;
        mannelijk; messieurs; homme; maschile; da uomo; caballeros; masculina; cavalheiro;
        herrstorlekar; man;
        herrkläder; herrestørrelser; herretøj; męskich; dla mężczyzn; dla panów; pánských;
        pro muže; for him; für ihn; pour lui; voor hem; per lui; para ele; för honom; til ham;
        dla niego; pro něj""",
    "kids": """kids'; teenagers; childrenswear; Jnr; Kindergrößen; Kinderschutzweste; Kinder-Weste;
        Jugendgrößen; Kindersicherheitsweste; Gilet-enfant; adolescents; jeunes; kindermaten; jeugd;
        jeugdvest; tieners; ragazzi; bambini; bimbi; per bambini e bambine; infantil; jóvenes;
        niños;
        niño/a; niños y niñas; crianças; jovens; barnstorlekar; ungdomsstorlekar; barnsäkerhetsväst;
        børnestørrelser; barnevest; børnesikkerhedsvest; dziecięca; dziecięcych; młodzieżowa;
        dla młodzieży; dětských; juniorské; pro děti; mládežnické; boys and girls""",
    "girls": """Mädchengrößen; fillettes; meisjesmaten; bambine; niñas; flickstorlekar;
        pigestørrelser; dziewczęce; dla dziewczynek; dívčí""",
    "boys": """Jungengrößen; garçonnet; jongensmaten; meninos; pojkstorlekar; drengestørrelser;
        chłopięce; dla chłopców; chlapecké; pro chlapce""",
    "baby": "Baby girl; bébé garçon; Babys; bébés; niemowlęce; dla niemowląt; kojenecké; spædbarn",
    "unisex": """Damen-/Herrenweste;
        women/men; ladies & gents; Unisexgrößen; homme/femme; dames en heren; uomo/donna;
        hombre y mujer; dam/herr; dame/herre; damskie i męskie; dámské a pánské; uniseks;
        for him & her; his & hers; für sie und ihn; elle & lui; voor hem en haar; per lui e lei;
        para él y ella; para ela e ele; för henne och honom; til hende og ham; dla niej i niego;
        pro ni a něj""",
}
NO_BAND = """adult; Erwachsene; adults and children; Damast; Kindness; Herrenberg; Barnsley;
    damage;
    für Sie; para el pecho; Elle; Barn jacket; Baby blue; Baby tee; Man-made; one of a kind;
    mandatory; manual; mankiet; Manchette; Mantel; segment; girth; Dampf"""
CHILDREN = (
    "Size | 4 | 6 | 8\nHeight (cm) | 98-104 | 110-116 | 122-128\nChest (cm) | 56-58 | 60-62 | 64-67"
)


@pytest.mark.parametrize(
    ("band", "text"),
    [(band, word.strip()) for band, words in WORDS.items() for word in words.split(";")],
)
def test_a_word_names_its_band(band: str, text: str) -> None:
    assert read_band(text) == band


@pytest.mark.parametrize("text", NO_BAND.split(";"))
def test_a_word_that_only_begins_like_a_band_names_none(text: str) -> None:
    assert read_band(text.strip()) is None


@pytest.mark.parametrize(
    ("name", "band"),
    [
        ("DamenWesten2024.xlsx", "women"),
        ("groessentabelle_damen.csv", "women"),
        ("sizechartKids.csv", "kids"),
        ("kids104-152", "kids"),
        ("tabelaDamska", "women"),
        ("[Women] vest", "women"),
        ("KIDS&TEENS", "kids"),
        ("Herren2024", "men"),
    ],
)
def test_a_band_is_found_inside_the_name_of_a_file_or_a_sheet(name: str, band: str) -> None:
    assert read_band(name) == band


def test_a_compound_in_a_heading_names_its_band() -> None:
    assert read_heading("Brustumfang Kinderweste (cm)").band == "kids"


@pytest.mark.parametrize(
    "caption",
    [
        "Chaleco protector niños. Medidas en cm.",
        "Kamizelka ochronna dziecięca - tabela rozmiarów. Wymiary w cm.",
        "Barnväst. Alla mått i cm.",
        "Kids' vest. Also available for women.",
        "Gilet airbag enfant, mesures prises sur le corps, en centimètres, collection printemps",
    ],
)
def test_a_band_before_a_sentence_of_one_caption_holds_for_the_table(caption: str) -> None:
    assert table(f"{caption}\n\n{CHILDREN}").charts[0].band == "kids"


@pytest.mark.parametrize(
    "caption",
    [
        "Not for children",
        "Also available for women.",
        "For children: measure over the riding shirt.",
        "Sizes for adults and children",
        "Women should choose one size less.",
    ],
)
def test_a_sentence_that_happens_to_name_a_band_names_none(caption: str) -> None:
    assert table(f"{caption}\n\n{CHILDREN}").charts[0].band is None


def test_girls_above_a_tab_for_children_are_the_narrower_band() -> None:
    page = (
        "<ul><li id='kids'><h2>Vests for girls</h2><table><tr><th>Size</th><th>Chest (cm)</th></tr>"
        "<tr><td>S</td><td>60-64</td></tr><tr><td>M</td><td>64-68</td></tr></table></li></ul>"
        "<nav><a href='#kids'>Children</a></nav>"
    )
    assert [chart.band for chart in read_bytes(page.encode(), "page.html").charts] == ["girls"]


def test_the_name_of_a_table_comes_before_a_sentence_that_names_everybody() -> None:
    text = (
        "Size chart: women 34-52\n"
        "Patterns for women and for men follow the German system.\n"
        "Size\tBust (cm)\n34\t81\n36\t85\n38\t89\n"
    )
    (chart,) = read_bytes(text.encode(), "sizes.tsv").charts
    assert chart.band == "women"


def test_a_file_for_children_and_grown_ups_names_nobody_for_the_table_of_the_grown_ups() -> None:
    page = (
        "<h4>Kindergrössen</h4><table><tr><th>Grösse</th><th>Körpergrösse (cm)</th></tr>"
        "<tr><td>104</td><td>99-104</td></tr><tr><td>116</td><td>110-116</td></tr></table>"
        "<h4>Erwachsenengrössen</h4><table><tr><th>Grösse</th><th>Körpergrösse (cm)</th></tr>"
        "<tr><td>S</td><td>168-174</td></tr><tr><td>M</td><td>174-180</td></tr></table>"
    )
    reading = read_bytes(page.encode(), "kindergroessen_erwachsene.html")
    assert [chart.band for chart in reading.charts] == ["kids", None]


@pytest.mark.parametrize("rows", ["S,165-173,50-60\nM,170-178,60-70", "S,,50-60\nM,,60-70"])
def test_a_file_named_for_children_too_names_nobody_for_a_table_of_tall_riders(rows: str) -> None:
    text = f"Size,Height (cm),Weight (kg)\n{rows}\n"
    (chart,) = read_bytes(text.encode(), "supporter_vests_kids.csv").charts
    assert chart.band is None


def test_a_title_for_children_is_believed_whatever_they_weigh() -> None:
    text = "Kids\nSize,Height (cm),Weight (kg)\nS,165-173,50-60\nM,170-178,60-70\n"
    (chart,) = read_bytes(text.encode(), "vests.csv").charts
    assert chart.band == "kids"


def test_a_file_named_for_children_holds_for_their_heights() -> None:
    text = "Size,Height (cm),Weight (kg)\nS,104-116,18-22\nM,116-128,22-28\n"
    (chart,) = read_bytes(text.encode(), "vests_kids.csv").charts
    assert chart.band == "kids"


@pytest.mark.parametrize(
    "text", ["Boy ve kiloya göre seçin, kısa iseniz küçük alın", "Boy kilo tablosu", "Boy ve Kilo"]
)
def test_a_height_in_turkish_is_no_boy(text: str) -> None:
    assert read_band(text) is None
    assert bands_named(text) == frozenset()


@pytest.mark.parametrize(
    ("titles", "band"),
    [
        ("KIDS\nADULTS", None),
        ("Kinder\nErwachsene", None),
        ("ADULTS\nKIDS", "kids"),
        ("KIDS\nUnlike those for adults, these vests have a zip.", "kids"),
        ("WOMEN\nADULTS", "women"),
    ],
)
def test_a_title_for_children_ends_at_the_next_one_for_grown_ups(
    titles: str, band: str | None
) -> None:
    text = f"{titles}\nSize,128,140,S,M\nHalf chest (cm),40,43,55,58\nBack (cm),50,54,68,70\n"
    (chart,) = read_bytes(text.encode(), "vests.csv").charts
    assert chart.band == band
