"""Several batches are chosen in the lanes and sown again, pasted, moved or parted, each in one act."""

from datetime import timedelta

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from planner.desk.lanes.scene_index import SceneIndex

CTRL = Qt.KeyboardModifier.ControlModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier
LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def workspace(window):
    return window.workspace


def batches_of(window):
    return window.conduct.session.farm.batches


def seen(workspace, count):
    """Return points of bars of so many batches that can be clicked in the lane, latest first."""
    beds, found = workspace.lanes.beds, {}
    workspace.lanes.fit()
    QApplication.processEvents()
    index = SceneIndex(workspace.lanes.scene)
    room = beds.rect_f().adjusted(beds.frame_state.kit.names_px, 0, 0, 0)
    for batch in reversed(workspace.outlook.farm.batches):
        for spot in () if batch.locked else index.spots(batch.id):
            box = beds.rect_of(spot)
            middle = box.center() if box is not None else None
            if middle is not None and room.contains(middle) and beds.spot_at(middle) == spot:
                found.setdefault(batch.id, QPoint(int(middle.x()), int(middle.y())))
    assert len(found) >= count
    return dict(list(found.items())[:count])


def click_all(workspace, points):
    for at, point in enumerate(points.values()):
        modifiers = CTRL if at else Qt.KeyboardModifier.NoModifier
        QTest.mouseClick(workspace.lanes.beds.viewport(), LEFT, modifiers, point)


def test_that_ctrl_clicks_choose_several_and_the_window_keeps_them(window, workspace):
    points = seen(workspace, 3)
    click_all(workspace, points)
    assert {batch.id for batch in workspace.chosen_batches()} == set(points)
    assert workspace.lanes.hands.chosen == set(points)


def test_that_copied_batches_are_pasted_weeks_later_in_one_act(qtbot, window, workspace, farm):
    points = seen(workspace, 2)
    click_all(workspace, points)
    qtbot.keyClick(window, Qt.Key.Key_C, CTRL)
    qtbot.keyClick(window, Qt.Key.Key_V, CTRL)
    dialog = workspace.gathering.dialog
    dialog.weeks.setValue(30)
    qtbot.keyClick(dialog, Qt.Key.Key_Return)
    new = batches_of(window)[len(farm.batches) :]
    old = [batch.sow_on for batch in farm.batches if batch.id in points]
    assert sorted(each.sow_on for each in new) == sorted(day + timedelta(weeks=30) for day in old)
    assert {each.id for each in workspace.chosen_batches()} == {each.id for each in new}
    assert len(window.conduct.session.history) == 1
    window.menus.actions["change.undo"].trigger()
    assert window.conduct.session.farm == farm


def test_that_the_same_again_next_week_is_one_act_with_its_new_code_told(qtbot, window, workspace, farm):
    workspace.choose(farm.batches[-1].id)
    qtbot.keyClick(window, Qt.Key.Key_D, CTRL)
    new = batches_of(window)[-1]
    assert new.sow_on == farm.batches[-1].sow_on + timedelta(weeks=1)
    assert new.code in window.messages.words
    assert window.conduct.session.undo_title == f"Sow {farm.batches[-1].code} again"


def test_that_pasting_nothing_is_refused_in_words(qtbot, window, farm):
    qtbot.keyClick(window, Qt.Key.Key_V, CTRL)
    assert "copied" in window.messages.words
    window.menus.actions["change.copy"].trigger()
    assert "Choose a batch" in window.messages.words
    assert window.conduct.session.farm == farm


def test_that_a_split_makes_two_batches_and_undo_makes_them_one(qtbot, window, workspace, farm):
    batch = next(each for each in reversed(farm.batches) if each.plants > 3)
    workspace.choose(batch.id)
    qtbot.keyClick(window, Qt.Key.Key_D, CTRL | SHIFT)
    dialog = workspace.gathering.dialog
    assert (dialog.plants.minimum(), dialog.plants.maximum()) == (1, batch.plants - 1)
    dialog.plants.setValue(2)
    dialog.days.setValue(7)
    qtbot.mouseClick(dialog.ok, LEFT)
    rest = next(each for each in batches_of(window) if each.id == batch.id)
    part = batches_of(window)[-1]
    assert (rest.plants, part.plants) == (batch.plants - 2, 2)
    assert part.sow_on == batch.sow_on + timedelta(days=7)
    assert len(window.conduct.session.history) == 1
    window.menus.actions["change.undo"].trigger()
    assert window.conduct.session.farm == farm


def test_that_several_batches_are_not_split(window, workspace, farm):
    click_all(workspace, seen(workspace, 2))
    window.menus.actions["change.split"].trigger()
    assert "one batch" in window.messages.words
    assert workspace.gathering.dialog is None
    assert window.conduct.session.farm == farm


def test_that_a_locked_batch_is_not_split_into_a_later_one_and_the_dialog_says_why(window, workspace, farm):
    workspace.choose(farm.batches[-1].id)
    window.menus.actions["change.lock"].trigger()
    window.menus.actions["change.split"].trigger()
    before = window.conduct.session.farm
    dialog = workspace.gathering.dialog
    dialog.days.setValue(7)
    dialog.ok.click()
    assert dialog.isVisible()
    assert dialog.words.text().startswith("⚠")
    assert window.conduct.session.farm == before
    dialog.reject()


def moved_days(window, farm, ids):
    now = {batch.id: batch.sow_on for batch in batches_of(window)}
    return {batch.id: (now[batch.id] - batch.sow_on).days for batch in farm.batches if batch.id in ids}


def test_that_alt_and_an_arrow_move_all_chosen_batches_in_one_act(qtbot, window, workspace, farm):
    points = seen(workspace, 3)
    click_all(workspace, points)
    qtbot.keyClick(workspace.lanes, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    assert moved_days(window, farm, points) == dict.fromkeys(points, 1)
    assert window.conduct.session.undo_title == "Move 3 batches 1 day later"
    assert {batch.id for batch in workspace.chosen_batches()} == set(points)
    window.menus.actions["change.undo"].trigger()
    assert window.conduct.session.farm == farm


def drag_by(workspace, point, pixels):
    lane = workspace.lanes.beds.viewport()
    QTest.mousePress(lane, LEFT, Qt.KeyboardModifier.NoModifier, point)
    for step in (pixels // 2, pixels):
        at = point + QPoint(step, 0)
        there = lane.mapToGlobal(at)
        none = Qt.KeyboardModifier.NoModifier
        move = QMouseEvent(QEvent.Type.MouseMove, QPointF(at), QPointF(there), LEFT, LEFT, none)
        QApplication.sendEvent(lane, move)
    QTest.mouseRelease(lane, LEFT, Qt.KeyboardModifier.NoModifier, point + QPoint(pixels, 0))


def test_that_a_drag_of_one_of_several_moves_them_all_by_the_same_days(window, workspace, farm):
    points = seen(workspace, 2)
    click_all(workspace, points)
    drag_by(workspace, next(iter(points.values())), 20)
    days = moved_days(window, farm, points)
    assert len(set(days.values())) == 1
    assert min(days.values()) > 0
    assert len(window.conduct.session.history) == 1


def test_that_one_locked_batch_keeps_all_from_moving_and_is_named(window, workspace, farm):
    points = seen(workspace, 2)
    first, second = points
    workspace.choose(first)
    window.menus.actions["change.lock"].trigger()
    before = window.conduct.session.farm
    code = next(batch.code for batch in before.batches if batch.id == first)
    workspace.choose_many([first, second])
    workspace.mover.begin(second)
    found = workspace.mover.preview(second, "", 1, "", 0)
    assert not found.allowed
    assert code in found.reason
    workspace.mover.commit()
    assert window.conduct.session.farm == before


def test_that_a_click_on_one_of_several_chooses_it_alone(window, workspace):
    points = seen(workspace, 2)
    click_all(workspace, points)
    first, point = next(iter(points.items()))
    QTest.mouseClick(workspace.lanes.beds.viewport(), LEFT, Qt.KeyboardModifier.NoModifier, point)
    assert [batch.id for batch in workspace.chosen_batches()] == [first]


def test_that_shift_and_an_arrow_choose_the_next_batch_as_well(qtbot, window, workspace):
    (first,) = seen(workspace, 1)
    workspace.choose(first)
    for key in (Qt.Key.Key_Left, Qt.Key.Key_Left, Qt.Key.Key_Up, Qt.Key.Key_Up):
        qtbot.keyClick(workspace.lanes, key, SHIFT)
    chosen = {batch.id for batch in workspace.chosen_batches()}
    assert first in chosen
    assert len(chosen) > 1
    assert workspace.lanes.hands.chosen == chosen


def test_that_the_side_panel_tells_the_sums_of_what_is_chosen_and_the_status_their_number(window, workspace):
    points = seen(workspace, 3)
    click_all(workspace, points)
    page, chosen = workspace.side.page, workspace.chosen_batches()
    assert page.title == "3 batches"
    sums = {fact.label: fact.value for fact in page.sections[0].facts}
    assert sums["Plants in the bed"] == str(sum(batch.plants for batch in chosen))
    assert sums["Seeds to sow"] == str(sum(workspace.outlook.seeds(batch) for batch in chosen))
    assert {fact.label for fact in page.sections[-1].facts} == {batch.code for batch in chosen}
    assert window.foot.saved.text() == "3 batches chosen"
    workspace.choose(chosen[0].id)
    assert window.foot.saved.text() == "All saved"


def test_that_all_chosen_batches_are_locked_in_one_act_and_unlocked_again(window, workspace):
    points = seen(workspace, 2)
    click_all(workspace, points)
    acts = len(window.conduct.session.history)
    workspace.run("change.lock")
    locked = {batch.id for batch in batches_of(window) if batch.locked}
    assert set(points) <= locked
    assert len(window.conduct.session.history) == acts + 1
    assert window.conduct.undo_title == "Lock 2 batches"
    workspace.run("change.lock")
    assert not set(points) & {batch.id for batch in batches_of(window) if batch.locked}
