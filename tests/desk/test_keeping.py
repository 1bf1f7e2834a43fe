"""Backups to go back to, and copies that went their own way, in the real window on real files."""

import dataclasses
import shutil

import pytest
from PySide6.QtWidgets import QApplication

from planner.actions.batches import change_batch
from planner.bootstrap_window import Wiring
from planner.desk.keeping.backup_dialog import BackupDialog
from planner.desk.window import MainWindow
from planner.store.backups import backups_of
from planner.store.store import FarmStore
from tests.desk.helpers import Answering, nameless_controls, put_away, services


class RealRooms:
    """The rooms of the program itself."""

    def __init__(self, home):
        self.wiring = Wiring(home)

    def load(self):
        return self.wiring.rooms()


@pytest.fixture
def path(means, farm, tmp_path):
    path = tmp_path / "My farm.raftweek"
    FarmStore.create(path, farm, means.holds(farm)).close()
    return path


@pytest.fixture
def desk(qtbot, tmp_path, path):
    palette, font = QApplication.palette(), QApplication.font()
    window = MainWindow(services(RealRooms(tmp_path), tmp_path, Answering()))
    window.show()
    qtbot.waitUntil(lambda: window.conduct.session is not None, timeout=20_000)
    assert window.files.open(path)
    yield window
    put_away(window)
    QApplication.setPalette(palette)
    QApplication.setFont(font)


def note(desk, notes):
    farm = desk.conduct.session.farm
    desk.conduct.act(change_batch(farm, dataclasses.replace(farm.batches[0], notes=notes)))


def noted(desk):
    return desk.conduct.session.farm.batches[0].notes


def backup_dialog(desk):
    desk.menus.actions["farm.backups"].trigger()
    return desk.findChildren(BackupDialog)[-1]


def test_that_a_farm_is_backed_up_when_it_is_opened_and_when_it_is_closed(desk, path):
    assert len(backups_of(path)) == 1
    note(desk, "new")
    desk.files.open(path)
    assert len(backups_of(path)) == 2
    desk.files.open(path)
    assert len(backups_of(path)) == 2


def test_that_the_window_goes_back_to_a_backup_and_forward_again(qtbot, desk, path):
    note(desk, "late")
    dialog = backup_dialog(desk)
    assert dialog.list.count() == 1
    assert nameless_controls(dialog) == []
    dialog.go.click()
    assert noted(desk) == ""
    assert "as it was" in desk.messages.words
    again = backup_dialog(desk)
    again.list.setCurrentRow(0)
    again.go.click()
    assert noted(desk) == "late"


def test_that_a_copy_worked_on_later_is_named(desk, path, tmp_path):
    copy = tmp_path / "stick.raftweek"
    note(desk, "both")
    desk.files.open(path)
    desk.files._on_copy(str(copy))
    note(desk, "only here")
    desk.messages.clear()
    assert desk.files.open(copy)
    assert "Another copy of this farm was worked on later" in desk.messages.words
    assert path.name in desk.messages.words


def test_that_an_older_file_in_the_same_place_is_told(desk, path, tmp_path):
    note(desk, "first")
    desk.files.open(path)
    older = tmp_path / "older.raftweek"
    desk.files._on_copy(str(older))
    note(desk, "second")
    desk.files.open(tmp_path / "Sample farm.raftweek")
    shutil.copy(older, path)
    desk.messages.clear()
    assert desk.files.open(path)
    assert "older than when it was last worked on" in desk.messages.words


def test_that_working_on_a_copy_says_nothing_where_none_went_further(desk, path, tmp_path):
    note(desk, "both")
    desk.files.open(path)
    copy = tmp_path / "copy.raftweek"
    desk.files._on_copy(str(copy))
    desk.messages.clear()
    assert desk.files.open(copy)
    assert desk.messages.words == ""
