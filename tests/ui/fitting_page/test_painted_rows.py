"""Only changed cells are painted, and nothing that changed is left as it was."""

from __future__ import annotations

import random
from collections.abc import Callable
from functools import partial

import numpy as np
import numpy.typing as npt
import pytest
from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QAccessible, QImage, QPainter, QPaintEvent, QRegion
from PySide6.QtWidgets import QApplication, QWidget

from charts.schema import Dimension
from harmonizer.fit import fit
from harmonizer.rider import Measure, Rider
from tests.ui.shop import rider_of, shop_table
from ui.desk import Desk
from ui.fitting_page.draft import Draft
from ui.fitting_page.page import FittingPage
from ui.fitting_page.rows import TAPES

Pixels = npt.NDArray[np.uint32]


class Painted(QObject):
    """Collects where a widget is told to paint."""

    def __init__(self, widget: QWidget) -> None:
        super().__init__(widget)
        self.region = QRegion()
        widget.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's name
        if isinstance(event, QPaintEvent):
            self.region += event.region()
        return super().eventFilter(watched, event)


def settled() -> None:
    for _ in range(3):
        QApplication.processEvents()


def pixels(image: QImage) -> Pixels:
    wide, high = image.width(), image.height()
    return np.frombuffer(image.constBits(), np.uint32).reshape(high, wide).copy()


def drawn(widget: QWidget) -> Pixels:
    """The widget as it looks when all of it is painted."""
    image = QImage(widget.size(), QImage.Format.Format_RGB32)
    widget.render(image)
    return pixels(image)


def inside(region: QRegion, widget: QWidget) -> npt.NDArray[np.bool_]:
    image = QImage(widget.size(), QImage.Format.Format_RGB32)
    image.fill(0)
    painter = QPainter(image)
    for rect in region:
        painter.fillRect(rect, 0xFFFFFFFF)
    painter.end()
    return np.asarray(pixels(image) & 1, np.bool_)


@pytest.fixture
def page(desk: Desk) -> FittingPage:
    table = shop_table(30)

    def compare(rider: Rider) -> object:
        return fit(rider, table)

    page = desk.window.fitting
    page.show_shop(table, compare)  # type: ignore[arg-type]  # the fit's own type, seen as object here
    page.show_draft(Draft(rider_of(chest=92.0, waist=76.0, hip=99.0, back_length=43.0)))
    settled()
    return page


def all_said(page: FittingPage) -> None:
    """What is to follow in a moment is said now, and painted."""
    settled()
    page.reasons.say_more()
    settled()


def painted_by(page: FittingPage, act: Callable[[], None]) -> list[QRegion]:
    """Where rows, heads and reasons were painted because of ``act``, with nothing left stale."""
    places = (
        page.table.viewport(),
        page.table.horizontalHeader().viewport(),
        page.reasons.sentences,
    )
    all_said(page)
    before = [drawn(place) for place in places]
    watchers = [Painted(place) for place in places]
    act()
    all_said(page)
    for place, watcher, old in zip(places, watchers, before, strict=True):
        place.removeEventFilter(watcher)
        new, painted = drawn(place), inside(watcher.region, place)
        painted |= ~inside(place.visibleRegion(), place)
        # The banner comes and goes, the reasons grow and shrink.
        high, wide = np.minimum(old.shape, new.shape)
        changed = old[:high, :wide] != new[:high, :wide]
        assert not np.any(changed & ~painted[:high, :wide])
    return [watcher.region for watcher in watchers]


def test_whatever_is_tried_and_typed_no_changed_pixel_is_left_as_it_was(page: FittingPage) -> None:
    chance = random.Random(5)  # noqa: S311 - no secret
    field = page.readings.fields[Measure.CHEST]

    def tried() -> None:
        page.try_value(chance.choice(TAPES), chance.uniform(40, 100))

    def dragged() -> None:
        page.try_value(Dimension.CHEST, 92 + chance.randint(-20, 20) / 2)

    def typed() -> None:
        field.line.edit.setText(str(chance.randint(80, 110)))
        field.line.edit.textEdited.emit(field.line.edit.text())
        field.count_now()

    for _ in range(40):
        painted_by(page, chance.choice((tried, dragged, dragged, dragged, typed, page.put_back)))


def test_a_dragged_line_paints_its_own_tape_and_head_not_the_others(page: FittingPage) -> None:
    painted_by(page, lambda: page.try_value(Dimension.CHEST, 92.5))
    rows, heads, _ = painted_by(page, lambda: page.try_value(Dimension.CHEST, 93.0))
    seen = {one.dimension: (left, wide) for one, left, wide in page.table.tapes()}
    left, wide = seen[Dimension.CHEST]
    assert heads.boundingRect().left() == int(left)
    assert heads.boundingRect().width() == int(wide)
    other = int(seen[Dimension.HIP][0]) + 20
    below = page.table.rowViewportPosition(3) + 5
    assert not any(rect.contains(other, below) for rect in rows)
    assert any(rect.contains(int(left) + 20, below) for rect in rows)


def test_a_dragged_line_paints_its_own_sentence_not_the_others(page: FittingPage) -> None:
    sentences = page.reasons.sentences
    page.try_value(Dimension.CHEST, 92.5)
    settled()
    before, watcher = drawn(sentences), Painted(sentences)
    page.try_value(Dimension.CHEST, 93.0)
    settled()
    sentences.removeEventFilter(watcher)
    changed = before != drawn(sentences)
    assert changed.any()
    assert not np.any(changed & ~inside(watcher.region, sentences))
    waist = sentences.boxes[1].adjusted(0, 2, 0, 0)
    assert not watcher.region.intersects(waist.toRect())


def test_a_screen_reader_is_told_what_a_dragged_line_changes(page: FittingPage) -> None:
    told: list[str] = []
    rows = page.table.rows
    rows.headerDataChanged.connect(lambda *_: told.append("head"))
    rows.dataChanged.connect(lambda *_: told.append("cells"))
    page.try_value(Dimension.CHEST, 92.5)
    told.clear()
    QAccessible.setActive(True)
    try:
        page.try_value(Dimension.CHEST, 93.0)
    finally:
        QAccessible.setActive(False)
    assert set(told) == {"head", "cells"}


def test_typing_dims_every_row_and_the_next_reading_lights_them_up(page: FittingPage) -> None:
    for dimmed in (True, False):
        rows, *_ = painted_by(page, partial(page.table.set_dimmed, dimmed))
        assert rows.boundingRect().top() == 0
        assert rows.boundingRect().bottom() >= page.table.rowViewportPosition(8)
