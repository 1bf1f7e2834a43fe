"""A window that speaks a language, for those who go round by the table of stops."""

import pytest
from PySide6.QtCore import QCoreApplication, QLocale
from PySide6.QtWidgets import QApplication

from planner.desk.languages import Words
from planner.desk.window import MainWindow
from tests.desk.helpers import put_away, services


@pytest.fixture
def speak(qapp):
    """Say everything in a language until the test has ended."""
    spoken = []

    def install(language):
        if language == "en":
            return
        words = Words(language, qapp)
        qapp.installTranslator(words)
        spoken.append(words)
        QLocale.setDefault(QLocale(language))

    yield install
    for words in spoken:
        QCoreApplication.removeTranslator(words)
        words.deleteLater()
    QLocale.setDefault(QLocale.c())


@pytest.fixture
def desk_in(qtbot, speak, rooms, ask, tmp_path):
    """Open a window on the sample farm in a language and a look."""
    palette, font = QApplication.palette(), QApplication.font()
    made = []

    def open_window(language="en", *, shade="light", size=(1280, 720)):
        speak(language)
        given = services(rooms, tmp_path, ask)
        given.settings.setValue("look/shade", shade)
        window = MainWindow(given)
        made.append(window)
        window.resize(*size)
        window.show()
        qtbot.waitUntil(lambda: window.conduct.session is not None, timeout=20_000)
        window.workspace.settle()
        window.activateWindow()
        QApplication.processEvents()  # what was put off until after the farm is there
        return window

    yield open_window
    for window in made:
        put_away(window)
    QApplication.setPalette(palette)
    QApplication.setFont(font)
