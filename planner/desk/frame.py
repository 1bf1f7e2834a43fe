"""How the panes of the window stand beside each other, for the workspace and for what is shown before it."""

from __future__ import annotations

from PySide6.QtWidgets import QSplitter, QTabWidget, QWidget

from planner.desk.say import tr
from planner.desk.theme import Theme


def dressed_tabs(weeks: QWidget, batches: QWidget, water: QWidget, parent: QWidget) -> QTabWidget:
    """Return the tabs of the middle pane."""
    tabs = QTabWidget(parent)
    tabs.setDocumentMode(True)
    tabs.addTab(weeks, tr("Weeks"))
    tabs.addTab(batches, tr("Batches"))
    tabs.addTab(water, tr("Water"))
    tabs.setAccessibleName(tr("Weeks, batches or water"))
    tabs.tabBar().setAccessibleName(tr("Weeks, batches or water"))
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
