"""The words on tabs stand whole, also on those in the background."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication, QTabBar, QWidget

from planner.desk.tabs import Tabs

SHARP = 2
"""Points of the picture for one of the window, as on a fine screen."""


def test_that_a_tab_in_the_background_cuts_no_foot_of_its_letters(qtbot):
    tabs = Tabs(None)
    qtbot.addWidget(tabs)
    for _ in range(2):
        tabs.addTab(QWidget(), "gpy")
    tabs.resize(300, 80)
    tabs.show()
    QApplication.processEvents()
    front, behind = (rows_with_ink(tabs.tabBar(), at) for at in (0, 1))
    assert front == behind > 0


def rows_with_ink(bar: QTabBar, at: int) -> int:
    """Return in how many rows a tab has the dark ink of letters."""
    picture = QImage(bar.size() * SHARP, QImage.Format.Format_ARGB32)
    picture.setDevicePixelRatio(SHARP)
    picture.fill(Qt.GlobalColor.white)
    bar.render(picture)
    tab = bar.tabRect(at).adjusted(4, 4, -4, -3)
    across = range(tab.left() * SHARP, tab.right() * SHARP)
    rows = range(tab.top() * SHARP, tab.bottom() * SHARP)
    return sum(any(picture.pixelColor(x, y).lightness() < 100 for x in across) for y in rows)
