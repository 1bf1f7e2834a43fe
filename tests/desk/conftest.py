"""Fixtures of the desk: one catalogue for the run, a farm in memory, and a window that is put away."""

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication

from planner.bootstrap import Means
from planner.desk.languages import Words
from planner.desk.window import MainWindow
from tests.desk.helpers import Answering, FakeRooms, open_session, put_away, sample_farm, services


@pytest.fixture(autouse=True, scope="session")
def plain_words():
    """Write numbers and dates the same on every machine."""
    before = QLocale()
    QLocale.setDefault(QLocale.c())
    yield
    QLocale.setDefault(before)


@pytest.fixture(scope="session")
def means():
    return Means()


@pytest.fixture(scope="session")
def farm(means):
    return sample_farm(means)


@pytest.fixture
def session(means, farm):
    return open_session(means, farm)


@pytest.fixture
def spanish(qapp):
    """The window speaks Spanish for as long as a test lasts."""
    words = Words("es", qapp)
    qapp.installTranslator(words)
    yield words
    qapp.removeTranslator(words)


@pytest.fixture
def ask():
    return Answering()


@pytest.fixture
def rooms(means, farm):
    return FakeRooms(means=means, farm=farm)


@pytest.fixture
def bare_window(qtbot, rooms, ask, tmp_path):
    """A window that has not been shown, so nothing has been read in."""
    palette, font = QApplication.palette(), QApplication.font()
    window = MainWindow(services(rooms, tmp_path, ask))
    yield window
    put_away(window)
    QApplication.setPalette(palette)
    QApplication.setFont(font)


@pytest.fixture
def window(qtbot, bare_window):
    """A window with the sample farm open."""
    bare_window.show()
    qtbot.waitUntil(lambda: bare_window.conduct.session is not None)
    QApplication.processEvents()  # what was put off until after the farm is there
    return bare_window
