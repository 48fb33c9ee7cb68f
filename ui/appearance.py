"""Fonts, palette and sizes of the whole program, made from one theme and one line of text."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QByteArray, QRectF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontDatabase,
    QFontMetricsF,
    QIcon,
    QPainter,
    QPalette,
    QPixmap,
)
from PySide6.QtWidgets import QApplication

from charts.resource_files import resources
from ui.theme import Ink, Scheme, Theme

FAMILY: Final = "Inter"
_FACES: Final = ("Inter-Regular.otf", "Inter-Medium.otf", "Inter-SemiBold.otf")
BASE_POINTS: Final = 9.5
# Three sizes on a tape and the rider's line through them, in a square of 64.
_ICON: Final = (
    ("#22384f", (0.0, 0.0, 64.0, 64.0), 12.0),
    ("#8fa3b6", (8.0, 13.0, 19.0, 8.0), 2.0),
    ("#8fa3b6", (38.0, 43.0, 18.0, 8.0), 2.0),
    ("#6cc9c4", (16.0, 28.0, 34.0, 9.0), 2.0),
    ("#22384f", (29.5, 6.0, 5.0, 52.0), 0.0),
    ("#ffffff", (31.0, 6.0, 2.0, 52.0), 0.0),
)
_ROLES: Final = {
    QPalette.ColorRole.Window: Ink.WINDOW,
    QPalette.ColorRole.WindowText: Ink.TEXT,
    QPalette.ColorRole.Base: Ink.GROUND,
    QPalette.ColorRole.AlternateBase: Ink.BAND,
    QPalette.ColorRole.Text: Ink.TEXT,
    QPalette.ColorRole.Button: Ink.PANEL,
    QPalette.ColorRole.ButtonText: Ink.TEXT,
    QPalette.ColorRole.BrightText: Ink.ON_ACCENT,
    QPalette.ColorRole.PlaceholderText: Ink.QUIET,
    QPalette.ColorRole.ToolTipBase: Ink.GROUND,
    QPalette.ColorRole.ToolTipText: Ink.TEXT,
    QPalette.ColorRole.Highlight: Ink.ACCENT,
    QPalette.ColorRole.HighlightedText: Ink.ON_ACCENT,
    QPalette.ColorRole.Link: Ink.FOCUS,
    QPalette.ColorRole.LinkVisited: Ink.NEAR,
    QPalette.ColorRole.Mid: Ink.EDGE,
    QPalette.ColorRole.Dark: Ink.EDGE,
    QPalette.ColorRole.Midlight: Ink.RULE,
    QPalette.ColorRole.Light: Ink.GROUND,
}


@dataclass(frozen=True, slots=True)
class Type:
    """The fonts of the program; all share one family with figures of equal width.

    ``line`` is the height of a line of plain text in pixels: every other measure comes from it.
    """

    plain: QFont
    strong: QFont
    small: QFont
    small_strong: QFont
    title: QFont
    large: QFont

    @property
    def line(self) -> float:
        """Height of a line of plain text in pixels."""
        return QFontMetricsF(self.plain).height()

    def px(self, measure: float) -> int:
        """``measure`` (pixels at a line of 16) for the present font, in whole pixels."""
        return round(measure * self.line / 16.0)


def load_fonts() -> None:
    """Give Qt the fonts that come with the product; calling twice does no harm."""
    if FAMILY in QFontDatabase.families():
        return
    for face in _FACES:
        data = (resources() / "fonts" / face).read_bytes()
        QFontDatabase.addApplicationFontFromData(QByteArray(data))


def window_icon() -> QIcon:
    """The sign of the program in the bar of tasks."""
    picture = QPixmap(256, 256)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    painter.scale(4.0, 4.0)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
    painter.setPen(Qt.PenStyle.NoPen)
    for colour, box, corner in _ICON:
        painter.setBrush(QColor(colour))
        painter.drawRoundedRect(QRectF(*box), corner, corner)
    painter.end()
    return QIcon(picture)


def fonts(points: float = BASE_POINTS) -> Type:
    """The fonts at a base size of ``points``."""
    return Type(
        plain=_font(points, QFont.Weight.Normal),
        strong=_font(points, QFont.Weight.DemiBold),
        small=_font(points * 0.88, QFont.Weight.Normal),
        small_strong=_font(points * 0.88, QFont.Weight.DemiBold),
        title=_font(points * 1.16, QFont.Weight.DemiBold),
        large=_font(points * 1.5, QFont.Weight.DemiBold),
    )


def paper_fonts() -> Type:
    """The same fonts for paper, where a painter is scaled to 96 dots an inch."""
    type_ = fonts()
    for font in (
        type_.plain,
        type_.strong,
        type_.small,
        type_.small_strong,
        type_.title,
        type_.large,
    ):
        font.setPixelSize(round(font.pointSizeF() * 96 / 72))
        # A figure in another shape than the font's plain one could not be found or copied in a PDF.
        for feature in ("tnum", "calt", "case"):
            font.setFeature(QFont.Tag.fromString(feature), 0)
    return type_


def _font(points: float, weight: QFont.Weight) -> QFont:
    font = QFont(FAMILY)
    font.setPointSizeF(points)
    font.setWeight(weight)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    font.setFeature(QFont.Tag.fromString("tnum"), 1)
    return font


def palette(theme: Theme) -> QPalette:
    """The palette for the standard controls."""
    made = QPalette()
    for role, ink in _ROLES.items():
        made.setColor(role, QColor(theme.colour(ink)))
    for role in (
        QPalette.ColorRole.Text,
        QPalette.ColorRole.ButtonText,
        QPalette.ColorRole.WindowText,
    ):
        made.setColor(QPalette.ColorGroup.Disabled, role, QColor(theme.colour(Ink.EDGE)))
    return made


def scheme_of(application: QApplication) -> Scheme:
    """The scheme the desktop asks for; light where it says nothing."""
    dark = application.styleHints().colorScheme() is Qt.ColorScheme.Dark
    return Scheme.DARK if dark else Scheme.LIGHT


def apply(application: QApplication, theme: Theme, type_: Type) -> None:
    """Dress the whole program."""
    application.setStyle("Fusion")
    application.setPalette(palette(theme))
    application.setFont(type_.plain)
