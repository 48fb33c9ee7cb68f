"""The painter: greys that can be told apart, and one way of drawing for every output."""

from __future__ import annotations

from itertools import pairwise

import pytest
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QApplication

from ui.theme import contrast
from ui.wall_sheet.ink import Area, Bar, End, Page, Stroke, Tone, Words
from ui.wall_sheet.painter import TONES, measured, paint
from ui.wall_sheet.paper import A4, PLAIN, SMALL, TITLE, Paper, PaperSize

SMALL_PAGE = Paper(PaperSize.A4, 120.0, 40.0, 5.0)


def painted(*marks: Words | Stroke | Area | Bar, scale: float = 4.0) -> QImage:
    page = Page(SMALL_PAGE, marks)
    image = QImage(int(120 * scale), int(40 * scale), QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    paint(painter, page, scale)
    painter.end()
    return image


def grey(image: QImage, x: float, y: float, scale: float = 4.0) -> int:
    return QColor(image.pixel(int(x * scale), int(y * scale))).lightness()


def test_every_tone_is_a_grey() -> None:
    for colour in TONES.values():
        red, green, blue = (colour[at : at + 2] for at in (1, 3, 5))
        assert red == green == blue


@pytest.mark.parametrize("ground", [Tone.PAPER, Tone.BAR, Tone.WASH])
def test_words_stand_out_from_whatever_they_stand_on(ground: Tone) -> None:
    """WCAG 2.2, 1.4.3: 4.5 to 1 for text."""
    assert contrast(TONES[Tone.INK], TONES[ground]) > 7.0
    assert contrast(TONES[Tone.SOFT], TONES[ground]) > 4.5


def test_the_greys_are_apart_from_each_other() -> None:
    order = (Tone.INK, Tone.SOFT, Tone.EDGE, Tone.GRID, Tone.BAR, Tone.THREAD, Tone.PAPER)
    for darker, lighter in pairwise(order):
        assert contrast(TONES[darker], TONES[lighter]) > 1.1


def test_a_bar_is_framed_and_filled(application: QApplication) -> None:
    image = painted(Bar(20.0, 60.0, 10.0, 22.0))
    assert grey(image, 20.3, 16) < 60
    assert grey(image, 40, 10.3) < 60
    assert 200 < grey(image, 40, 16) < 230
    assert grey(image, 15, 16) == 255


def test_a_hollow_bar_is_paper_inside(application: QApplication) -> None:
    assert grey(painted(Bar(20.0, 60.0, 10.0, 22.0, hollow=True)), 40, 16) == 255


@pytest.mark.parametrize("side", ["left", "right"])
def test_an_open_end_fades_and_its_other_edges_stay(application: QApplication, side: str) -> None:
    ends = {"left_end": End.OPEN} if side == "left" else {"right_end": End.OPEN}
    image = painted(Bar(20.0, 100.0, 10.0, 22.0, **ends))
    near, far = (25.0, 95.0) if side == "left" else (95.0, 25.0)
    assert grey(image, near, 12) > 240
    assert grey(image, far, 14) < 230
    for y in (10.3, 21.7):
        assert grey(image, far, y) < 60
        assert grey(image, near, y) > 100


def test_a_derived_bar_has_gaps_in_its_frame(application: QApplication) -> None:
    image = painted(Bar(20.0, 100.0, 10.0, 22.0, dashed=True))
    edge = [grey(image, 20 + step / 4, 10.4) for step in range(320)]
    assert min(edge) < 60
    assert sum(tone > 180 for tone in edge) > 60


def test_hatching_keeps_clear_of_the_label(application: QApplication) -> None:
    bar = Bar(20.0, 100.0, 10.0, 22.0, hatched=True, clear_left=50.0, clear_right=70.0)
    image = painted(bar)
    inside = [grey(image, 51 + step / 4, 16) for step in range(70)]
    beside = [grey(image, 25 + step / 4, 16) for step in range(80)]
    assert max(inside) - min(inside) < 5
    assert min(beside) < 190


def test_words_are_as_wide_as_they_were_measured(application: QApplication) -> None:
    text = "M 88–96"
    wide = measured(text, TITLE)
    image = painted(Words(10.0, 30.0, text, TITLE, wide))
    dark = [
        x for x in range(image.width()) if any(grey(image, x / 4, y) < 128 for y in range(8, 36))
    ]
    assert dark[0] / 4 == pytest.approx(10.0, abs=2.0)
    assert dark[-1] / 4 == pytest.approx(10.0 + wide, abs=2.0)


def test_type_has_its_size_to_a_tenth_of_a_point(application: QApplication) -> None:
    assert measured("Hip", PLAIN) / measured("Hip", SMALL) == pytest.approx(9.5 / 9.0, rel=0.005)


def test_half_as_large_is_half_as_wide(application: QApplication) -> None:
    stroke = Stroke(10.0, 20.0, 100.0, 20.0, 2.0, Tone.INK)
    for scale in (2.0, 4.0):
        image = painted(stroke, scale=scale)
        dark = [x for x in range(image.width()) if grey(image, x / scale, 20.2, scale) < 100]
        assert (dark[0] / scale, dark[-1] / scale) == pytest.approx((10.0, 100.0), abs=0.6)


def test_a_page_leaves_the_painter_as_it_was(application: QApplication) -> None:
    image = QImage(100, 40, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    paint(painter, Page(A4, ()), 3.0)
    assert painter.transform().isIdentity()
    painter.end()
