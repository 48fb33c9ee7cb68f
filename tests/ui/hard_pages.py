"""The fitting page in the cases that strain it, as pictures; also as some eyes see them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from pathlib import Path
from typing import Final

import numpy as np
import numpy.typing as npt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from charts.model_facts import ModelFacts, VestKind
from charts.schema import Chart, Dimension, FileReading, Said, Size
from harmonizer.fit import fit
from harmonizer.offers import offers
from harmonizer.range_table import RangeTable
from harmonizer.rider import BodyFigure, Rider
from tests.ui.shop import LABELS, MAKERS, length_range, model_chart, rider_of, shop_table
from ui.desk import Desk, make_desk
from ui.fitting_page.draft import Draft
from ui.fitting_page.pair_choice import PairChoice
from ui.fitting_page.rows import ModelRow
from ui.frame import Frame
from ui.preferences import Preferences
from ui.theme import Scheme, Theme

Filter = npt.NDArray[np.float64]

# Machado, Oliveira & Fernandes 2009, "A physiologically-based model for simulation of color vision
# deficiency", IEEE Transactions on Visualization and Computer Graphics 15(6), table 1: severity
# 1.0, for linear RGB.
PROTAN: Final[Filter] = np.array(
    [
        [0.152286, 1.052583, -0.204868],
        [0.114503, 0.786281, 0.099216],
        [-0.003882, -0.048116, 1.051998],
    ]
)
DEUTAN: Final[Filter] = np.array(
    [
        [0.367322, 0.860646, -0.227968],
        [0.280085, 0.672501, 0.047413],
        [-0.011820, 0.042940, 0.968881],
    ]
)
# Relative luminance of linear RGB: IEC 61966-2-1, as WCAG 2.2 has it.
GREY: Final[Filter] = np.tile(np.array([0.2126, 0.7152, 0.0722]), (3, 1))

USUAL: Final = {"chest": 92.7, "waist": 76.0, "hip": 99.0, "back_length": 43.0}
LONG_NAME: Final = "Whinchat Long Distance Cross Count"
TEN: Final = (
    Dimension.CHEST,
    Dimension.WAIST,
    Dimension.HIP,
    Dimension.BACK_LENGTH,
    Dimension.HEIGHT,
    Dimension.WEIGHT,
    Dimension.NECK,
    Dimension.SHOULDER_BREADTH,
    Dimension.UNDERBUST,
    Dimension.ARM_LENGTH,
)


USUAL_LOOK: Final = Preferences("en", Scheme.LIGHT)


@dataclass(frozen=True, slots=True)
class HardPage:
    """One picture: a shop, a rider, how the screen looks, and through which eyes."""

    name: str
    table: Callable[[], RangeTable] | None = lambda: shop_table(40)
    rider: Rider | None = None
    preferences: Preferences = USUAL_LOOK
    eyes: Filter | None = None
    act: Callable[[Desk], None] | None = None


def draw(application: QApplication, page: HardPage, folder: Path) -> Path:
    """The picture of one page in ``folder``, 1366 x 768."""
    frame = Frame(Theme(page.preferences.scheme or Scheme.LIGHT))
    desk = make_desk(application, frame, page.preferences)
    frame.resize(1366, 768)
    frame.show()
    table = page.table() if page.table else None
    if table is not None:
        desk.window.fitting.show_shop(table, lambda rider: fit(rider, table))
    if page.rider is not None:
        desk.window.fitting.show_draft(Draft(page.rider))
    if page.act is not None:
        page.act(desk)
    application.processEvents()
    image = frame.grab().toImage()
    path = folder / f"{page.name}.png"
    (image if page.eyes is None else seen_by(image, page.eyes)).save(str(path))
    desk.window.operations.close()
    frame.close()
    frame.deleteLater()
    return path


def seen_by(image: QImage, eyes: Filter) -> QImage:
    """``image`` with ``eyes`` applied to its linear RGB (sRGB: IEC 61966-2-1)."""
    plain = image.convertToFormat(QImage.Format.Format_RGB888)
    wide, high = plain.width(), plain.height()
    raw = np.frombuffer(plain.constBits(), np.uint8).reshape(high, plain.bytesPerLine())
    shown = raw[:, : 3 * wide].reshape(high, wide, 3) / 255.0
    linear = np.where(shown <= 0.04045, shown / 12.92, ((shown + 0.055) / 1.055) ** 2.4)
    changed = np.clip(linear @ eyes.T, 0.0, 1.0)
    back = np.where(changed <= 0.0031308, changed * 12.92, 1.055 * changed ** (1 / 2.4) - 0.055)
    pixels = np.ascontiguousarray((back * 255).round().astype(np.uint8))
    return QImage(pixels.tobytes(), wide, high, 3 * wide, QImage.Format.Format_RGB888).copy()


def long_names() -> RangeTable:
    """Thirty models whose names have 34 letters."""
    charts = [
        model_chart(MAKERS[n % 7], f"{LONG_NAME[:32]} {n % 10}", shift=n % 9 - 4.0, band="unisex")
        for n in range(30)
    ]
    return _of_charts(charts)


def ten_dimensions() -> RangeTable:
    """Models that list ten dimensions, some of which lie beside the rider."""
    steps = {Dimension.HEIGHT: (150, 5, 12), Dimension.WEIGHT: (45, 8, 14)}
    charts = []
    for number in range(20):
        plain = model_chart(MAKERS[number % 7], f"Linnet {number}", shift=number % 9 - 4.0)
        sizes = []
        for place, size in enumerate(plain.sizes):
            more = []
            for at, dimension in enumerate(TEN[4:]):
                first, step, wide = steps.get(dimension, (30 + 4 * at, 2, 4))
                low = first + step * place + number % 5
                more.append(length_range(dimension, low, low + wide))
            sizes.append(Size(size.label, size.ranges + tuple(more)))
        charts.append(_with_sizes(plain, sizes))
    return _of_charts(charts)


def child_beside_3xl() -> RangeTable:
    """Children's charts and adults' up to 3XL in one table."""
    labels = (*LABELS, "3XL")
    charts = []
    for number in range(6):
        maker = MAKERS[number]
        charts.append(model_chart(maker, f"Merle {number}", sizes=labels, shift=number % 3 - 1.0))
        kids = model_chart(
            maker, f"Merle Kids {number}", band="kids", shift=-22.0 - number, back_shift=-11.0
        )
        charts.append(kids)
    return _of_charts(charts)


def _with_sizes(chart: Chart, sizes: list[Size]) -> Chart:
    return Chart(
        place=chart.place, title=chart.title, sizes=tuple(sizes), supplier=chart.supplier,
        model=chart.model, season=chart.season, band=chart.band,
    )  # fmt: skip


def _of_charts(charts: list[Chart]) -> RangeTable:
    readings = [FileReading(f"{n}.csv", (chart,)) for n, chart in enumerate(charts)]
    facts = [
        ModelFacts(
            model=chart.model.text if isinstance(chart.model, Said) else "",
            file=f"{n}.csv",
            kind=VestKind.INFLATABLE if n % 3 == 1 else VestKind.FOAM,
            weight_floor=Decimal(32) if n % 6 == 1 else None,
        )
        for n, chart in enumerate(charts)
    ]
    return RangeTable.compiled(offers(readings, facts))


def pair_up(desk: Desk) -> None:
    """The first foam and the first inflatable model, 12 mm of foam."""
    page = desk.window.fitting
    sheet = page.sheet
    if sheet is None:
        return
    rows = [row for at in range(len(sheet)) if isinstance(row := sheet.row(at), ModelRow)]
    keys = {}
    for row in rows:
        facts = sheet.fit.table.offers[row.at].facts
        keys.setdefault(facts.kind if facts else None, row.key)
    choice = PairChoice(keys[VestKind.FOAM], keys[VestKind.INFLATABLE], thickness_mm=12.0)
    page.pairing.changed.emit(choice)


_RIDER: Final = rider_of(**USUAL)  # type: ignore[arg-type]  # readings by name, all figures
_CHILD: Final = rider_of(
    figure=BodyFigure.CHILD, chest=66.0, waist=60.0, hip=70.0, back_length=31.0, weight=30.0
)

HARD_PAGES: Final = (
    HardPage("40-models", rider=_RIDER),
    HardPage("200-percent", rider=_RIDER, preferences=Preferences("en", Scheme.LIGHT, points=19.0)),
    HardPage("dark", rider=_RIDER, preferences=Preferences("en", Scheme.DARK)),
    HardPage("grey", child_beside_3xl, _CHILD, eyes=GREY),
    HardPage("protan", child_beside_3xl, _CHILD, eyes=PROTAN),
    HardPage("deutan", child_beside_3xl, _CHILD, eyes=DEUTAN),
    HardPage("german", rider=_RIDER, preferences=Preferences("de", Scheme.LIGHT)),
    HardPage("10-dimensions", ten_dimensions, rider_of(**USUAL, height=168, weight=62, neck=36)),
    HardPage("names-of-34-letters", long_names, _RIDER),
    HardPage("a-child-beside-3xl", child_beside_3xl, _CHILD),
    HardPage("no-back-length", rider=rider_of(chest=92.7, waist=76.0, hip=99.0)),
    HardPage("foam-with-winter", rider=rider_of(winter_mm=12, **USUAL)),
    HardPage("a-pair", rider=_RIDER, act=pair_up),
    HardPage(
        "a-pair-german", rider=_RIDER, preferences=Preferences("de", Scheme.LIGHT), act=pair_up
    ),
    HardPage("nothing-fits", rider=rider_of(chest=152, waist=150, hip=160)),
    HardPage("nothing-loaded-yet", table=None),
)
