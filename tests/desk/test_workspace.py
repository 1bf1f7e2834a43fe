"""Due list, lanes, table, side panel and forms work on one farm and one choice."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QLabel, QMenu

from planner.actions.changing import addition
from planner.desk.forms.form import FormDialog
from planner.farm.crops import Target, TargetUnit
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import new_id
from planner.farm.water import Quantity, Reading
from tests.desk.helpers import TODAY


@pytest.fixture
def workspace(window):
    return window.workspace


def open_form(window, key):
    window.menus.actions[key].trigger()
    dialog = window.workspace.editing.dialog
    assert isinstance(dialog, FormDialog)
    return dialog


def test_that_a_batch_sown_in_the_form_is_one_act_and_is_chosen(qtbot, window, workspace, farm):
    dialog = open_form(window, "new.batch")
    dialog.rows["crop"].editor.show_value("basil")
    dialog.rows["crop"].editor.touched.emit()
    assert dialog.rows["code"].editor.line.text().startswith("BAS-27W10-")
    dialog.rows["plants"].editor.line.setText("4")
    qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    session = window.conduct.session
    assert len(session.farm.batches) == len(farm.batches) + 1
    assert len(session.history) == 1
    chosen = workspace.chosen_thing()
    assert chosen.plants == 4
    window.menus.actions["view.batches"].trigger()
    assert workspace.table.model.row_of(chosen.id) >= 0
    assert len(workspace.table.model.rows) == len(farm.batches) + 1
    assert workspace.table.view.currentIndex().data() == chosen.code
    assert workspace.side.page.title == chosen.code


def test_that_a_code_typed_by_hand_is_not_overwritten(qtbot, window):
    dialog = open_form(window, "new.batch")
    line = dialog.rows["code"].editor.line
    line.clear()
    qtbot.keyClicks(line, "MINE")
    dialog.rows["crop"].editor.show_value("basil")
    dialog.rows["crop"].editor.touched.emit()
    assert line.text() == "MINE"
    dialog.reject()


def test_that_a_code_in_use_is_refused_beside_its_field_and_nothing_is_lost(qtbot, window, farm):
    dialog = open_form(window, "new.batch")
    dialog.rows["code"].editor.line.setText(farm.batches[0].code)
    dialog.rows["plants"].editor.line.setText("4")
    qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    assert dialog.isVisible()
    assert farm.batches[0].code in dialog.rows["code"].words
    assert dialog.rows["plants"].editor.line.text() == "4"
    assert window.conduct.session.farm == farm
    dialog.reject()


def test_that_a_batch_without_room_is_kept_and_the_message_bar_says_why(qtbot, window, farm):
    dialog = open_form(window, "new.batch")
    raft = next(bed for bed in farm.beds if bed.kind.value == "raft")
    dialog.rows["crop"].editor.show_value("lettuce-leaf")
    dialog.rows["code"].editor.line.setText("BIG-1")
    dialog.rows["plants"].editor.line.setText("4000")
    dialog.rows["bed"].editor.show_value(raft.id)
    qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    assert "BIG-1" in {batch.code for batch in window.conduct.session.farm.batches}
    assert "4,000" in window.messages.words or "4000" in window.messages.words
    assert raft.name in window.messages.words


def test_that_altering_the_chosen_batch_by_keys_changes_it(qtbot, window, workspace, farm):
    workspace.choose(farm.batches[2].id)
    qtbot.keyClick(window, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    dialog = workspace.editing.dialog
    dialog.rows["variety"].editor.line.setText("red")
    qtbot.keyClick(dialog, Qt.Key.Key_Return)
    assert workspace.chosen_thing().variety == "red"
    assert "red" in workspace.side.page.subtitle


def test_that_a_form_of_each_kind_in_the_menus_opens(window, workspace):
    kinds = ("fish group", "fish event", "target", "dose", "reading", "solids batch")
    for key in (*(f"new.{word}" for word in kinds), "setup.farm"):
        open_form(window, key).reject()
        window.workspace.editing._on_gone()


def test_that_the_dose_form_carries_the_caution_about_bases(window):
    dialog = open_form(window, "new.dose")
    assert any("goggles" in label.text() for label in dialog.findChildren(QLabel))
    dialog.reject()


def test_that_things_without_a_name_are_listed_by_what_they_are(window, farm):
    loop, group = farm.loops[0].id, farm.fish_groups[0]
    things = {
        "target": Target(id=new_id(), crop="basil", amount_per_week=3, unit=TargetUnit.KG, from_on=TODAY),
        "reading": Reading(id=new_id(), loop=loop, on=TODAY, quantity=Quantity.PH, value=6.8),
        "fish event": FishEvent(id=new_id(), group=group.id, on=TODAY, kind=FishEventKind.DEATHS, count=2),
    }
    window.conduct.act(addition("Add all", *things.values()))
    expected = {
        "target": "Sweet basil, 3 kg a week…",
        "reading": "pH 6.8, Wed 10 Mar 2027…",
        "fish event": f"Deaths, {group.name}, Wed 10 Mar 2027…",
    }
    for word, said in expected.items():
        menu = window.menus.submenus[f"setup.{word}"]
        menu.aboutToShow.emit()
        assert said in [action.text() for action in menu.actions()]


def test_that_a_removal_can_be_taken_back_in_the_message_bar(qtbot, window, workspace, farm):
    workspace.choose(farm.batches[0].id)
    window.menus.actions["change.remove"].trigger()
    assert farm.batches[0].code in window.messages.words
    qtbot.mouseClick(window.messages._undo, Qt.MouseButton.LeftButton)
    assert window.conduct.session.farm == farm
    assert window.messages.words == ""


def test_that_the_setup_menu_lists_what_is_there_and_opens_it(window, workspace, farm):
    menu = window.menus.submenus["setup.bed"]
    menu.aboutToShow.emit()
    names = [action.text() for action in menu.actions() if not action.isSeparator()]
    assert names == [*(f"{bed.name}…" for bed in farm.beds), "New…"]
    menu.triggered.emit(menu.actions()[0])
    assert workspace.editing.dialog.rows["name"].editor.line.text() == farm.beds[0].name
    workspace.editing.dialog.reject()


def test_that_a_choice_in_the_table_is_shown_by_all(qtbot, window, workspace, farm):
    window.menus.actions["view.batches"].trigger()
    assert workspace.tabs.currentWidget() is workspace.table
    workspace.table.view.selectRow(4)
    chosen = workspace.chosen_thing()
    assert workspace.side.page.title == chosen.code
    window.menus.actions["view.weeks"].trigger()
    assert workspace.tabs.currentWidget() is workspace.lanes
    assert chosen.code in workspace.lanes.current_summary


def test_that_a_click_on_a_due_task_chooses_its_batch(qtbot, workspace):
    model = workspace.due.model
    at = next(at for at, row in enumerate(model.rows) if row.payload.verb == "Sow")
    workspace.due.list.activated.emit(model.index(at, 0))
    assert workspace.chosen_thing().id == model.rows[at].id


def test_that_choosing_nothing_shows_the_week(qtbot, workspace, farm):
    workspace.choose(farm.batches[0].id)
    qtbot.mouseClick(workspace.side.week, Qt.MouseButton.LeftButton)
    assert workspace.chosen_thing() is None
    assert workspace.side.page.title.startswith("Week W10")
    assert workspace.side.alter.isHidden()


def test_that_another_week_in_the_due_list_moves_lanes_and_side_panel(workspace):
    workspace.due.go_after()
    assert workspace.side.page.title == "Week W11 2027"


@pytest.mark.qt_log_ignore("^This plugin does not support grabbing the (keyboard|mouse)")
def test_that_the_menu_of_a_bar_offers_what_can_be_done_with_it(qtbot, workspace, farm):
    workspace.lanes.menu_asked.emit([farm.batches[1].id], QPoint(10, 10))
    (menu,) = [menu for menu in workspace.findChildren(QMenu) if menu.isVisible()]
    assert [action.text() for action in menu.actions()] == [
        "Alter…",
        "Lock",
        "Copy",
        "Paste some weeks later…",
        "Same again next week",
        "Split…",
        "Labels and tags…",
        "Trace…",
        "Remove",
        "Why these figures…",
        "Sow a batch…",
    ]
    menu.actions()[1].trigger()
    assert workspace.chosen_thing().locked
    menu.close()


def test_that_a_bar_is_moved_by_keys_in_the_lanes_as_one_act(qtbot, window, workspace, farm):
    batch = farm.batches[-1]
    with qtbot.waitActive(window):
        window.activateWindow()
    workspace.choose(batch.id)
    workspace.lanes.setFocus()
    qtbot.keyClick(workspace.lanes, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    moved = workspace.chosen_thing()
    assert (moved.sow_on - batch.sow_on).days == 1
    assert len(window.conduct.session.history) == 1


def test_that_removing_the_last_batch_of_a_farm_leaves_a_window_that_works(window, workspace, farm):
    for batch in farm.batches:
        workspace.choose(batch.id)
        window.menus.actions["change.remove"].trigger()
    assert window.conduct.session.farm.batches == ()
    window.grab()


def test_that_a_new_farm_is_asked_for_and_made(qtbot, window, workspace, rooms, tmp_path):
    from PySide6.QtWidgets import QFileDialog

    from planner.desk.newfarm.dialog import NewFarmDialog

    window.menus.actions["farm.new"].trigger()
    (dialog,) = workspace.findChildren(NewFarmDialog)
    for field, text in (("farm_name", "G"), ("tank_l", "900"), ("fish_count", "9"), ("fish_weight_g", "80")):
        dialog.rows[field].editor.line.setText(text)
    dialog.beds.lines[0]["holes"].line.setText("40")
    dialog.crops.lines[0]["amount_per_week"].line.setText("3")
    qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    (chooser,) = window.findChildren(QFileDialog)
    chooser.fileSelected.emit(str(tmp_path / "g.raftweek"))
    _, path, answers = next(call for call in rooms.calls if call[0] == "new")
    assert path == tmp_path / "g.raftweek"
    assert answers.name == "G"
    chooser.reject()


def test_that_answers_for_a_new_farm_outlive_escape_and_a_file_that_was_not_chosen(qtbot, window, workspace):
    from PySide6.QtWidgets import QFileDialog

    from planner.desk.newfarm.dialog import NewFarmDialog

    window.menus.actions["farm.new"].trigger()
    (dialog,) = workspace.findChildren(NewFarmDialog)
    for field, text in (("farm_name", "G"), ("tank_l", "900"), ("fish_count", "9"), ("fish_weight_g", "80")):
        dialog.rows[field].editor.line.setText(text)
    qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    assert not dialog.isVisible()
    window.menus.actions["farm.new"].trigger()
    (again,) = workspace.findChildren(NewFarmDialog)
    assert again.isVisible()
    assert again.rows["farm_name"].editor.read() == "G"
    again.beds.lines[0]["holes"].line.setText("40")
    again.crops.lines[0]["amount_per_week"].line.setText("3")
    qtbot.mouseClick(again.ok, Qt.MouseButton.LeftButton)
    assert not again.isVisible()
    (chooser,) = window.findChildren(QFileDialog)
    chooser.reject()
    assert again.isVisible()
    assert again.beds.lines[0]["holes"].read() == 40
    again.reject()
