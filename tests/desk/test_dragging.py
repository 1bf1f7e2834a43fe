"""Batches are dragged in time and place in the real window, by mouse and keys, each as one undoable act."""

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from planner.desk.gathering_dialogs import PasteDialog
from planner.desk.lanes.scene_index import SceneIndex
from planner.farm.crops import Phase

ALT, CTRL = Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ControlModifier
LEFT, NONE = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier


@pytest.fixture
def lanes(window):
    window.resize(1280, 800)
    window.workspace.lanes.fit()
    QApplication.processEvents()
    return window.workspace.lanes


def in_sight(lanes):
    """Return the spots of bars that can be pressed in the lane, with a point on each."""
    index, beds = SceneIndex(lanes.scene), lanes.beds
    room = beds.rect_f().adjusted(beds.frame_state.kit.names_px, 0, 0, 0)
    for bar in lanes.scene.bars():
        for spot in index.spots(bar.batch):
            box = beds.rect_of(spot)
            middle = box.center() if box is not None else None
            if middle is not None and room.contains(box) and beds.spot_at(middle) == spot:
                yield spot, QPoint(int(middle.x()), int(middle.y()))


def move(lanes, at):
    lane = lanes.beds.viewport()
    where = QPointF(at), QPointF(lane.mapToGlobal(at))
    event = QMouseEvent(QEvent.Type.MouseMove, *where, Qt.MouseButton.NoButton, LEFT, NONE)
    QApplication.sendEvent(lane, event)


def take(lanes, at, to):
    """Press at a point and drag to another."""
    QTest.mousePress(lanes.beds.viewport(), LEFT, NONE, at)
    move(lanes, at + (to - at) / 2)
    move(lanes, to)


def let_go(lanes, at):
    QTest.mouseRelease(lanes.beds.viewport(), LEFT, NONE, at)


def one_that_may_go(window, lanes, allowed):
    """Return a spot that may go so many days later, or may not, and the points of the drag."""
    px = lanes.beds.frame_state.scale.px_per_day
    for spot, at in in_sight(lanes):
        if spot.bar.locked:
            continue
        for days in (7, 14, -7, 28):
            to = at + QPoint(round(px * days), 0)
            take(lanes, at, to)
            held, text = lanes.beds._held, lanes.label.text
            if held is not None and held.allowed is allowed:
                return spot, held, text, to
            QTest.keyClick(lanes, Qt.Key.Key_Escape)
            let_go(lanes, to)
    raise AssertionError("no such bar")


def test_that_a_drag_leaves_a_ghost_at_the_old_place_and_is_one_act(window, lanes):
    spot, held, text, to = one_that_may_go(window, lanes, allowed=True)
    assert spot in held.ghosts
    assert spot.bar.code in text
    assert lanes.balance.shown is not lanes.scene.balances[0]
    acts = len(window.conduct.session.history)
    let_go(lanes, to)
    assert len(window.conduct.session.history) == acts + 1
    assert window.conduct.undo_title.startswith(f"Move {spot.bar.code}")
    QTest.keyClick(window, Qt.Key.Key_Z, CTRL)
    assert SceneIndex(lanes.scene).again(spot.bar).bar.start == spot.bar.start


def test_that_a_drag_that_cannot_be_says_why_beside_the_pointer_and_changes_nothing(window, lanes):
    spot, held, text, to = one_that_may_go(window, lanes, allowed=False)
    assert spot in held.ghosts
    assert "No room for" in text
    assert lanes.label.isVisible()
    assert lanes.balance.shown is lanes.scene.balances[0]
    let_go(lanes, to)
    assert not lanes.label.isVisible()
    assert not window.conduct.undo_title


def test_that_a_bar_over_a_bed_that_does_not_suit_says_so(window, lanes):
    spot, at = next(found for found in in_sight(lanes) if found[0].bar.phase is Phase.NURSERY)
    beds = lanes.beds
    other = next(strip for strip in beds.layout_now.strips if strip.row and strip.row.bed != spot.bar.bed)
    to = QPoint(at.x() + 8, round(other.top + other.height / 2) - beds.down_px)
    take(lanes, at, to)
    assert not beds._held.allowed
    assert "cannot stand in" in lanes.label.text
    let_go(lanes, to)
    assert not window.conduct.undo_title


def test_that_a_locked_batch_stays_by_mouse_and_by_keys_and_says_why(window, lanes):
    spot, at = next(in_sight(lanes))
    QTest.mouseClick(lanes.beds.viewport(), LEFT, NONE, at)
    QTest.keyClick(window, Qt.Key.Key_L, CTRL)
    spot, at = next(found for found in in_sight(lanes) if found[0].bar.batch == spot.bar.batch)
    take(lanes, at, at + QPoint(40, 0))
    assert "locked" in lanes.label.text
    let_go(lanes, at + QPoint(40, 0))
    lanes.label.hide()
    QTest.keyClick(lanes, Qt.Key.Key_Right, ALT)
    assert "locked" in lanes.label.text
    assert window.conduct.undo_title == f"Lock {spot.bar.code}"


def test_that_a_succession_chosen_by_a_band_is_copied_and_pasted_as_one_act(window, lanes):
    workspace, beds = window.workspace, lanes.beds
    room = beds.rect_f().adjusted(beds.frame_state.kit.names_px + 3, 0, -3, 0)
    ground = next(
        QPoint(int(room.left()), y)
        for y in range(4, int(room.height()), 2)
        if beds.spot_at(QPointF(room.left(), y)) is None and beds.layout_now.strip_at(y + beds.down_px).row
    )
    corner = QPoint(int(room.right()), ground.y() + 60)
    take(lanes, ground, corner)
    let_go(lanes, corner)
    chosen = workspace.chosen_batches()
    assert len(chosen) > 1
    QTest.keyClick(window, Qt.Key.Key_C, CTRL)
    QTest.keyClick(window, Qt.Key.Key_V, CTRL)
    dialog = window.findChild(PasteDialog)
    QTest.keyClick(dialog, Qt.Key.Key_Return)
    assert len(window.conduct.session.history) == 1
    assert len(window.conduct.session.farm.batches) == len(workspace.outlook.farm.batches)
    codes = {batch.code for batch in chosen}
    assert {batch.crop for batch in chosen} <= {
        batch.crop for batch in window.conduct.session.farm.batches if batch.code not in codes
    }
    QTest.keyClick(window, Qt.Key.Key_Z, CTRL)
    assert not window.conduct.undo_title


def test_that_a_bar_that_is_pressed_stays_under_the_hand(window, lanes):
    lanes.time.set_zoom(14.0)
    QApplication.processEvents()
    lanes.beds.sharpen()
    beds, shown = lanes.beds, lanes.span
    index = SceneIndex(lanes.scene)
    left = beds.frame_state.kit.names_px
    spot, box = next(
        (spot, box)
        for bar in lanes.scene.bars()
        for spot in index.spots(bar.batch)
        if (box := beds.rect_of(spot))
        and box.left() < left < box.right() - 60
        and box.bottom() < beds.height()
    )
    QTest.mouseClick(beds.viewport(), LEFT, NONE, QPoint(int(left) + 20, int(box.center().y())))
    assert window.workspace.chosen_thing().id == spot.bar.batch
    assert lanes.span == shown
