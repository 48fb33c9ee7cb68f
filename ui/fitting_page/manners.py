"""How the table behaves as a view, whatever it shows: whole rows, no grid, rows of given height."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractItemView, QFrame, QHeaderView, QTableView


def behave(view: QTableView) -> None:
    """Choose whole rows one at a time, scroll by pixels and never sideways, edit nothing."""
    view.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
    view.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
    view.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
    view.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    # Always there, so that the tapes keep their place when rows come or go.
    view.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
    view.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
    view.setFrameShape(QFrame.Shape.NoFrame)
    view.setShowGrid(False)
    view.setWordWrap(False)
    view.setTabKeyNavigation(False)
    view.viewport().setMouseTracking(True)
    upright = view.verticalHeader()
    upright.hide()
    upright.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
    upright.setMinimumSectionSize(1)
