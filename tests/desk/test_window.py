"""The window: paints first, opens a farm, passes wishes on, and shows what came of them."""

import dataclasses
import subprocess
import sys

import pytest
from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import QApplication, QFileDialog, QWidget

from planner.desk import settings
from planner.desk.crash import CrashDialog
from planner.desk.help import AboutDialog, GlossaryDialog
from planner.desk.later import Later
from planner.desk.messages import Tone
from planner.desk.theme import DARK, LIGHT
from planner.store.errors import StoreError
from tests.desk.helpers import TODAY, nameless_controls

FIRST_PAINT = """
import os, sys
os.environ["QT_QPA_PLATFORM"] = "offscreen"
from datetime import datetime
from pathlib import Path
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication
from planner.desk.window import MainWindow
from planner.desk.given import DeskServices
application = QApplication([])
def load():
    names = ("numpy", "sqlalchemy", "planner.catalogue", "planner.forecast", "planner.store", "planner.farm",
        "planner.desk.theme", "planner.desk.menus", "PySide6.QtSvg", "tomllib", "sqlite3",
        "dataclasses", "hashlib")
    heavy = [name for name in names if name in sys.modules]
    print("painted" if window._painted else "not painted", "heavy:", *heavy)
    application.exit()
    raise SystemExit
window = MainWindow(DeskServices(load=None, settings=QSettings(sys.argv[1], QSettings.Format.IniFormat),
    now=datetime.now, ask=None, home=Path(".")))
window.load = load
window.show()
application.exec()
"""


def test_that_nothing_heavy_is_there_at_the_first_paint_of_a_fresh_process(root, tmp_path):
    command = [sys.executable, "-c", FIRST_PAINT, str(tmp_path / "desk.ini")]
    done = subprocess.run(command, cwd=root, capture_output=True, text=True, check=False, timeout=60)
    assert done.stdout.strip() == "painted heavy:", done.stderr


def test_that_a_first_start_opens_the_sample_farm(window, rooms, farm):
    assert rooms.calls == [("first",)]
    assert farm.settings.name in window.windowTitle()
    assert window.doors.strip.isVisible()
    assert window.menus.actions["new.batch"].isEnabled()


def test_that_a_farm_that_cannot_be_opened_at_the_start_is_told_and_the_sample_shown(
    qtbot, bare_window, rooms, tmp_path
):
    lost = tmp_path / "lost.raftweek"
    lost.write_bytes(b"")
    bare_window.memory.remember(lost)
    rooms.trouble = StoreError("lost.raftweek is damaged.")
    bare_window.show()
    qtbot.waitUntil(lambda: bare_window.conduct.session is not None)
    assert rooms.calls == [("open", lost), ("first",)]
    assert "lost.raftweek is damaged. The sample farm is shown instead." in bare_window.messages.words
    assert lost not in bare_window.memory.recent


def test_that_before_a_farm_is_open_its_entries_cannot_be_chosen(bare_window):
    bare_window.see_furnished()
    assert not bare_window.menus.actions["new.batch"].isEnabled()
    bare_window.see_furnished()
    assert not bare_window.menus.actions["farm.print"].isEnabled()
    assert bare_window.menus.actions["farm.open"].isEnabled()


def test_that_the_loader_is_called_once_however_often_the_window_paints(qtbot, window, rooms):
    window.repaint()
    window.load()
    assert rooms.loads == 1


def test_that_undo_and_redo_by_keys_take_an_act_back_and_do_it_again(qtbot, window):
    batch = window.workspace.outlook.farm.batches[0]
    window.workspace.choose(batch.id)
    qtbot.keyClick(window, Qt.Key.Key_L, Qt.KeyboardModifier.ControlModifier)
    assert window.conduct.session.farm.batches[0].locked
    assert window.menus.actions["change.undo"].text() == f"Undo: Lock {batch.code}"
    assert batch.code in window.menus.actions["change.undo"].toolTip()
    keys = Qt.KeyboardModifier.ControlModifier
    qtbot.keyClick(window, Qt.Key.Key_Z, keys)
    assert not window.conduct.session.farm.batches[0].locked
    assert not window.menus.actions["change.undo"].isEnabled()
    assert window.menus.actions["change.redo"].text() == f"Redo: Lock {batch.code}"
    qtbot.keyClick(window, Qt.Key.Key_Z, keys | Qt.KeyboardModifier.ShiftModifier)
    assert window.conduct.session.farm.batches[0].locked


def test_that_an_act_shows_another_plan_mark(window):
    before = window.foot.mark.text()
    window.workspace.choose(window.workspace.outlook.farm.batches[0].id)
    window.menus.actions["change.lock"].trigger()
    assert window.foot.mark.text() != before


def test_that_removing_the_chosen_batch_asks_nothing_and_can_be_undone(window, ask, farm):
    window.workspace.choose(farm.batches[3].id)
    window.menus.actions["change.remove"].trigger()
    assert farm.batches[3] not in window.conduct.session.farm.batches
    assert ask.asked == []
    assert window.workspace.chosen_thing() is None
    window.menus.actions["change.undo"].trigger()
    assert window.conduct.session.farm.batches == farm.batches


def test_that_removing_a_tank_says_what_goes_along_and_does_nothing_on_cancel(window, ask, farm):
    ask.go_on = False
    window.workspace.choose(farm.tanks[0].id)
    window.menus.actions["change.remove"].trigger()
    assert farm.fish_groups[0].name in ask.asked[0].text
    assert window.conduct.session.farm.tanks == farm.tanks
    ask.go_on = True
    window.menus.actions["change.remove"].trigger()
    assert window.conduct.session.farm.tanks == ()
    assert window.conduct.session.farm.fish_groups == ()


def test_that_expected_trouble_stands_in_the_message_bar_until_escape(qtbot, window, rooms, tmp_path):
    rooms.trouble = StoreError("That is no farm file.")
    assert not window.files.open(tmp_path / "x.raftweek")
    assert "That is no farm file." in window.messages.words
    assert window.messages.tone is Tone.TROUBLE
    assert window.conduct.session is not None
    qtbot.keyClick(window, Qt.Key.Key_Escape)
    assert window.messages.words == ""


def test_that_a_farm_with_a_crop_nobody_knows_is_not_opened_and_the_crop_is_named(
    window, rooms, farm, tmp_path
):
    before = window.conduct.session
    strange = dataclasses.replace(farm.batches[0], crop="moon-lettuce")
    rooms.farm = dataclasses.replace(farm, batches=(strange,), placements=())
    rooms.unchecked = True
    assert not window.files.open(tmp_path / "y.raftweek")
    assert 'crop "moon-lettuce"' in window.messages.words
    assert window.conduct.session is before
    assert rooms.calls[-1] == ("close",)


def test_that_the_tab_key_walks_from_the_due_list_over_the_weeks_to_the_side_panel(qtbot, window):
    with qtbot.waitActive(window):
        window.activateWindow()
    workspace = window.workspace
    workspace.due.list.setFocus()
    seen = []
    for _ in range(30):
        focus = QApplication.focusWidget()
        seen.append(
            next((pane for pane in ("due", "tabs", "side") if _holds(getattr(workspace, pane), focus)), "")
        )
        if seen[-1] == "side":
            break
        qtbot.keyClick(focus, Qt.Key.Key_Tab)
    walked = [pane for at, pane in enumerate(seen) if pane and (at == 0 or seen[at - 1] != pane)]
    assert walked == ["due", "tabs", "side"]


def _holds(pane, widget):
    return widget is pane or pane.isAncestorOf(widget)


def test_that_opening_another_farm_closes_the_one_before(window, rooms, tmp_path):
    assert window.files.open(tmp_path / "y.raftweek")
    assert rooms.calls[-2:] == [("open", tmp_path / "y.raftweek"), ("close",)]


def test_that_closing_the_window_closes_the_farm_and_remembers_its_place(window, rooms):
    window.resize(1000, 600)
    window.close()
    assert rooms.calls[-1] == ("close",)
    assert not window.memory.get(settings.GEOMETRY).isEmpty()


@pytest.mark.parametrize(
    ("entry", "call", "title"),
    [("farm.copy", "copy", "copy"), ("farm.text", "text", "text"), ("farm.open", "open", "Open")],
)
def test_that_the_file_entries_ask_for_a_name_and_pass_it_on(window, rooms, tmp_path, entry, call, title):
    window.menus.actions[entry].trigger()
    (dialog,) = window.findChildren(QFileDialog)
    assert title in dialog.windowTitle()
    dialog.fileSelected.emit(str(tmp_path / "z"))
    assert (call, tmp_path / "z") in rooms.calls
    dialog.reject()


def test_that_a_full_disk_is_told_with_what_to_do(window, rooms, tmp_path):
    rooms.trouble = OSError("no room left")
    window.files._on_copy(str(tmp_path / "z"))
    assert "no room left" in window.messages.words
    assert "Choose another folder" in window.messages.words


def test_that_recent_farms_are_listed_and_can_be_forgotten(window, rooms, ask, tmp_path):
    window.memory.remember(tmp_path / "a.raftweek")
    menu = window.menus.submenus["farm.recent"]
    menu.aboutToShow.emit()
    assert menu.actions()[0].text() == "a.raftweek"
    menu.triggered.emit(menu.actions()[0])
    assert ("open", tmp_path / "a.raftweek") in rooms.calls
    menu.triggered.emit(menu.actions()[-1])
    assert "Empty the list" in ask.asked[0].text
    assert window.memory.recent == ()


def test_that_light_and_dark_can_be_chosen_and_are_remembered(qtbot, window):
    assert window.theme is LIGHT
    window.menus.actions["shade.dark"].trigger()
    assert window.theme is DARK
    qtbot.waitUntil(lambda: window.palette().window().color() == DARK.ground)
    assert window.memory.get(settings.SHADE) == "dark"
    window.menus.actions["shade.light"].trigger()


def test_that_help_says_the_caution_and_the_words(qtbot, window):
    window.menus.actions["help.about"].trigger()
    (about,) = window.findChildren(AboutDialog)
    text = " ".join(label.text() for label in about.findChildren(QWidget) if hasattr(label, "text"))
    assert "Test the water, look at the fish" in text
    about.reject()
    window.menus.actions["help.glossary"].trigger()
    (words,) = window.findChildren(GlossaryDialog)
    qtbot.keyClicks(words.search, "raft")
    assert 0 < words.table.model().rowCount() < words.model.rowCount()
    words.reject()


def test_that_a_fault_of_the_program_shows_a_report_to_copy(qtbot, window, monkeypatch):
    monkeypatch.setattr(window.crash, "_before", lambda *anything: None)
    window.crash._on_error(ZeroDivisionError, ZeroDivisionError("nothing to share"), None)
    qtbot.waitUntil(lambda: window.findChildren(CrashDialog) != [])
    (dialog,) = window.findChildren(CrashDialog)
    dialog.copy.click()
    assert "nothing to share" in QApplication.clipboard().text()
    dialog.close_button.click()


def test_that_the_hook_for_faults_is_given_back(window):
    assert sys.excepthook == window.crash._on_error
    window.close()
    assert sys.excepthook != window.crash._on_error


def test_that_every_control_that_takes_the_keyboard_has_a_spoken_name(window):
    assert nameless_controls(window) == []


def test_that_the_window_fits_a_small_screen(window):
    assert window.minimumSizeHint().width() <= 1280
    assert window.minimumSizeHint().height() <= 720


def test_that_panes_can_be_hidden_and_their_entries_follow(window):
    due = window.menus.actions["view.due"]
    assert due.isChecked()
    due.trigger()
    assert window.workspace.due.isHidden()
    assert not due.isChecked()


def test_that_no_connection_keeps_a_closed_window_alive(qtbot, rooms, ask, tmp_path):
    from planner.desk.window import MainWindow
    from tests.desk.helpers import put_away, services

    gone = []

    class Watch(QObject):
        def note(self):
            gone.append(True)

    watch = Watch()
    window = MainWindow(services(rooms, tmp_path, ask))
    window.destroyed.connect(watch.note)
    window.show()
    qtbot.waitUntil(lambda: window.conduct.session is not None)
    put_away(window)
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    assert gone == [True]


def test_that_today_can_be_gone_to_by_keys(qtbot, window):
    window.workspace.due.go_after()
    window.workspace.due.go_after()
    qtbot.keyClick(window, Qt.Key.Key_T, Qt.KeyboardModifier.ControlModifier)
    assert window.workspace.due.monday <= TODAY


@pytest.mark.x11
def test_that_the_window_opens_and_acts_on_a_real_screen(qtbot, window):
    qtbot.waitExposed(window)
    window.workspace.choose(window.workspace.outlook.farm.batches[0].id)
    window.menus.actions["change.lock"].trigger()
    assert window.workspace.chosen_thing().locked
    assert window.grab().toImage().height() > 0


def test_that_what_is_wanted_later_is_done_step_by_step_and_then_no_more(qtbot):
    taken, owner = [], QObject()

    def steps():
        for number in range(3):
            taken.append(number)
            yield number

    later = Later(steps(), owner)
    later.begin()
    assert taken == []
    with qtbot.waitSignal(later.destroyed):
        pass
    assert taken == [0, 1, 2]


def test_that_steps_end_with_the_window_they_are_for(qtbot):
    taken, owner = [], QObject()
    later = Later(iter(taken.append, None), owner)
    later.begin()
    with qtbot.waitSignal(later.destroyed):
        owner.deleteLater()
    assert taken == []
