"""How the panes of the window stand beside each other, for the workspace and for what is shown before it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QSplitter, QTabWidget, QWidget

from planner.desk.places.listed import LISTED
from planner.desk.say import tr
from planner.desk.theme import Theme


def dressed_tabs(pages: Sequence[QWidget], parent: QWidget) -> QTabWidget:
    """Return the tabs of the middle pane; `pages` are in the order of the table of pages."""
    tabs = QTabWidget(parent)
    tabs.setDocumentMode(True)
    for listed, page in zip(LISTED, pages, strict=True):
        at = tabs.addTab(page, tr(listed.title))
        tabs.setTabToolTip(at, f"{tr(listed.tip)} ({listed.keys})")
    tabs.setAccessibleName(tr("Pages"))
    tabs.tabBar().setAccessibleName(tr("Pages"))
    return tabs


def arrange(split: QSplitter, panes: tuple[QWidget, QWidget, QWidget], theme: Theme) -> None:
    """Put the due list, the middle and the side panel beside each other, as wide as they are at first."""
    metrics = theme.metrics
    due, middle, side = panes
    split.setHandleWidth(1)
    split.setChildrenCollapsible(False)
    for part in (due, middle, side):
        split.addWidget(part)
    split.setStretchFactor(1, 1)
    due.setMinimumWidth(metrics.due_width * 2 // 3)
    side.setMinimumWidth(metrics.side_width * 2 // 3)
    split.setSizes([metrics.due_width, metrics.due_width * 3, metrics.side_width])
