"""The window on real files: first start, copies, text, foreign files, and acts that outlive the window."""

import pytest
from PySide6.QtCore import QSettings

from planner.bootstrap_window import Wiring
from planner.desk.given import DeskServices
from planner.desk.window import MainWindow
from tests.desk.helpers import NOW, put_away


@pytest.fixture
def open_window(qtbot, tmp_path, ask):
    standing = []

    def make():
        settings = QSettings(str(tmp_path / "desk.ini"), QSettings.Format.IniFormat)
        services = DeskServices(
            load=Wiring(tmp_path).rooms, settings=settings, now=lambda: NOW, ask=ask, home=tmp_path
        )
        window = MainWindow(services)
        standing.append(window)
        window.show()
        qtbot.waitUntil(lambda: window.conduct.session is not None)
        return window

    yield make
    for window in standing:
        put_away(window)


def test_that_an_act_and_its_undo_outlive_the_window(open_window):
    window = open_window()
    batch = window.workspace.outlook.farm.batches[3]
    window.workspace.choose(batch.id)
    window.menus.actions["change.lock"].trigger()
    window.close()
    again = open_window()
    assert again.conduct.session.farm.batches[3].locked
    assert again.menus.actions["change.undo"].text() == f"Undo: Lock {batch.code}"
    again.menus.actions["change.undo"].trigger()
    assert again.conduct.session.farm.batches[3] == batch


def test_that_a_copy_and_a_text_open_as_the_same_farm(open_window, tmp_path):
    window = open_window()
    farm = window.conduct.session.farm
    window.files._on_copy(str(tmp_path / "copy.raftweek"))
    assert "copy.raftweek" in window.messages.words
    window.files._on_text(str(tmp_path / "text.toml"))
    assert window.files.open(tmp_path / "copy.raftweek")
    assert window.conduct.session.farm == farm
    assert window.files.open(tmp_path / "text.toml")
    assert len(window.conduct.session.farm.batches) == len(farm.batches)


def test_that_a_foreign_file_is_refused_in_a_sentence_and_the_farm_stays_open(open_window, tmp_path):
    window = open_window()
    before = window.conduct.session
    (tmp_path / "letter.raftweek").write_text("Dear all", encoding="utf-8")
    assert not window.files.open(tmp_path / "letter.raftweek")
    assert "letter.raftweek is not a farm file" in window.messages.words
    assert window.conduct.session is before


def test_that_a_copy_into_a_folder_that_is_not_there_is_told(open_window, tmp_path):
    window = open_window()
    window.files._on_copy(str(tmp_path / "nowhere" / "copy.raftweek"))
    assert "could not be written" in window.messages.words
