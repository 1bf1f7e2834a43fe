"""How the panes of the window stand beside each other, for the workspace and for what is shown before it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QSplitter, QTabWidget, QWidget

from planner.desk.places.listed import LISTED
from planner.desk.say import tr
from planner.desk.tabs import Tabs
from planner.desk.theme import Theme


class Pages(Tabs):
    """Tabs that ask for no more room than the page in front, however wide the others are."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.currentChanged.connect(self._on_current)

    def _on_current(self, _at: int) -> None:
        self.updateGeometry()

    def minimumSizeHint(self) -> QSize:
        if not self.count():
            return super().minimumSizeHint()
        page = self.currentWidget()
        bar, least = self.tabBar().minimumSizeHint(), page.minimumSizeHint()
        width = max(bar.width(), least.width(), page.minimumWidth())
        return QSize(width, bar.height() + max(least.height(), page.minimumHeight()))


def dressed_tabs(pages: Sequence[QWidget], parent: QWidget) -> QTabWidget:
    """Return the tabs of the middle pane; `pages` are in the order of the table of pages."""
    tabs = Pages(parent)
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
