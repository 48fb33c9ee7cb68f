"""Every page of the demo scenario as pictures, drawn without a screen."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path
from typing import Final

from PySide6.QtCore import QSizeF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication

from charts.schema import Dimension
from charts.wording import Wording
from ui import appearance
from ui.desk import Desk, make_desk
from ui.drawing.row_shape import Density
from ui.dress import Dress
from ui.fitting_page.paper_page import PaperPage
from ui.frame import Frame
from ui.hard_scenes import HARD_SCENES, ON_PAPER
from ui.loading import Arrived, arrive, demo_paths
from ui.preferences import Preferences
from ui.scene import Scene, in_winter, rider, then
from ui.theme import Scheme, Theme
from ui.wall_sheet.making import made
from ui.wall_sheet.paper import A3
from ui.wall_sheet.preview import PageView

_SHEET: Final = (1032, 703)  # A4 on its side without its margins, at 96 to the inch
_MARGIN: Final = 36
_WALL: Final = 1640  # wide enough to read the smallest type of an A3 page


def draw_all(folder: Path) -> list[Path]:
    """Draw every page into ``folder``; the paths of the pictures, in order."""
    folder.mkdir(parents=True, exist_ok=True)
    application = an_application()
    arrived = arrive(demo_paths(), Wording("en"), _silent)
    return [draw(application, scene, arrived, folder) for scene in SCENES]


def an_application() -> QApplication:
    """The application there is, or a new one that needs no screen."""
    present = QApplication.instance()
    if isinstance(present, QApplication):
        return present
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    return QApplication(["harmonizer"])


def draw(application: QApplication, scene: Scene, arrived: Arrived, folder: Path) -> Path:
    """Set one scene up, and take its picture as a PNG in ``folder``.

    Raises OSError when it cannot be written.
    """
    frame = Frame(Theme(scene.preferences.scheme or Scheme.LIGHT))
    desk = make_desk(application, frame, scene.preferences)
    frame.resize(*scene.size)
    frame.show()
    if scene.loaded:
        desk.commands.take_in(arrived)
        desk.window.notice.hide()
    application.processEvents()
    scene.act(desk)
    desk.window.fitting.reasons.say_more()
    desk.window.fitting.readings.again.say_now()
    application.processEvents()
    application.processEvents()  # a panel that grew takes its height in a second round
    path = folder / f"{scene.name}.png"
    on_paper = _ON_PAPER.get(scene.name)
    picture = on_paper(desk) if on_paper is not None else frame.grab().toImage()
    if not picture.save(str(path)):
        raise OSError(None, "the picture could not be written", str(path))
    frame.close()
    frame.deleteLater()
    return path


def sheet_picture(desk: Desk) -> QImage:
    """The printed sheet of the rider on the line as a picture."""
    wide, high = (edge + 2 * _MARGIN for edge in _SHEET)
    image = QImage(wide * 2, high * 2, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(2.0)
    image.fill(Qt.GlobalColor.white)
    printed = desk.sheet.printed()
    if printed is None:
        return image
    dress = Dress.of(Theme(Scheme.PAPER), appearance.paper_fonts(), Density.TALL)
    painter = QPainter(image)
    painter.translate(_MARGIN, _MARGIN)
    page = PaperPage(painter, dress, desk.window.words)
    page.paint(QSizeF(*_SHEET), printed)
    painter.end()
    return image


def wall_picture(desk: Desk) -> QImage:
    """The first page of the wall sheet of all that is loaded."""
    chart = desk.window.workspace.in_house_chart()
    page = PageView(made(chart, None, A3, desk.window.words.wording)[0])
    page.resize(_WALL, page.heightForWidth(_WALL))
    return page.grab().toImage()


_ON_PAPER: Final = {
    "15-on-paper": sheet_picture,
    "19-wall-sheet": wall_picture,
    **dict.fromkeys(ON_PAPER, sheet_picture),
}


def _silent(message: str, fraction: float) -> None:
    del message, fraction


def _nothing(desk: Desk) -> None:
    del desk


def _new_rider(desk: Desk) -> None:
    desk.window.fitting.new_rider()


def _trying(desk: Desk) -> None:
    rider("Wrenna Oskelby")(desk)
    fitting = desk.window.fitting
    fitting.table.setFocus()
    fitting.table.go_to_tape(Dimension.CHEST)
    fitting.try_value(Dimension.CHEST, 96.0)


def _charts(desk: Desk) -> None:
    """The charts page: every file with its state."""
    desk.window.show_page("charts")


def _questions(file: str) -> Callable[[Desk], None]:
    """The questions page on a file of the demo."""

    def act(desk: Desk) -> None:
        desk.window.show_page("charts")
        desk.window.charts.questions.head.signed.emit("Ylva Marrick")
        desk.window.charts.open_file(file)

    return act


def _answered(desk: Desk) -> None:
    """A file whose question has been answered: ready to be approved."""
    _questions("cobblestrake/cobblestrake_hedgetarrow.csv")(desk)
    desk.window.charts.questions.panel.take(0)


def _shown_place(desk: Desk) -> None:
    rider("Wrenna Oskelby")(desk)
    desk.window.fitting.reasons.ask_place()


SCENES: Final = (
    Scene("01-fitting", rider("Wrenna Oskelby")),
    Scene("02-helper-on-the-telephone", rider("Maren Ullthwick")),
    Scene("03-winter-layers", then(rider("Wrenna Oskelby"), in_winter("6"))),
    Scene("04-trying-a-value", _trying),
    Scene("05-under-the-weight-floor", rider("Lotta Oskelby")),
    Scene("06-nothing-fits", rider("Holm Vastrigg")),
    Scene("07-charts-and-their-questions", _charts),
    Scene("08-where-a-figure-stands", _shown_place),
    Scene("09-nothing-loaded-yet", _nothing, loaded=False),
    Scene("10-ready-for-a-reading", _new_rider),
    Scene("11-dark", rider("Wrenna Oskelby"), Preferences("en", Scheme.DARK)),
    Scene("12-high-contrast", rider("Wrenna Oskelby"), Preferences("en", Scheme.FORCED)),
    Scene("13-german", rider("Maren Ullthwick"), Preferences("de", Scheme.LIGHT)),
    Scene(
        "14-tall-rows",
        rider("Wrenna Oskelby"),
        Preferences("en", Scheme.LIGHT, Density.TALL),
        size=(1600, 1000),
    ),
    Scene("15-on-paper", rider("Wrenna Oskelby")),
    Scene("16-questions-answered", _answered),
    Scene("17-questions-of-a-turned-block", _questions("heidezwaan/maattabel.md")),
    Scene(
        "18-questions-of-swapped-units",
        _questions("tarnwhistle/Tarnwhistle size guide SS27.xlsx"),
    ),
    Scene("19-wall-sheet", _nothing),
    *HARD_SCENES,
)
