"""A window opens on a real window system, in the shipped typeface. Run by `run.py test` under xvfb."""

import pytest
from PySide6.QtGui import QFontInfo
from PySide6.QtWidgets import QApplication, QLabel


@pytest.mark.x11
def test_that_a_window_shows_on_a_real_window_system(qtbot):
    label = QLabel("Lettuce, raft 2")
    qtbot.addWidget(label)
    with qtbot.waitExposed(label):
        label.show()
    assert QApplication.platformName() == "xcb"
    assert QFontInfo(label.font()).family() == "DejaVu Sans"
    assert not label.grab().isNull()
