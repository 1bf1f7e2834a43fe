"""A window of picking is stretched by the right edge of its bar, or by keys, and is one act."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from planner.desk.lanes.interaction import Preview
from planner.desk.lanes.scene_index import SceneIndex
from planner.desk.lanes.stretching import stretchable
from tests.desk.lanes.hands import LEFT, NONE, NotingMover, drag, move, shown_view

ALT, CTRL = Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ControlModifier


def edge_of(view, *, with_window=True):
    """Return a bar wholly in sight, and the point at its right edge."""
    room = view.beds.rect_f().adjusted(view.beds.frame_state.kit.names_px, 0, -60, 0)
    index = SceneIndex(view.scene)
    for bar in view.scene.bars():
        for spot in index.spots(bar.batch):
            box = view.beds.rect_of(spot)
            if stretchable(spot.bar) is with_window and room.contains(box) and box.width() > 60:
                return spot.bar, QPoint(int(box.right()) - 3, int(box.center().y()))
    raise AssertionError("no such bar in sight")


def days_px(view, days):
    return QPoint(round(view.beds.frame_state.scale.px_per_day * days), 0)


def test_that_the_edge_of_a_window_is_dragged_as_one_request(qtbot):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    bar, edge = edge_of(view)
    drag(view, edge, edge + days_px(view, 2), edge + days_px(view, 5))
    assert mover.named("begin") == [("begin", bar.batch)]
    assert mover.named("stretch")[-1] == ("stretch", bar.batch, 5)
    assert not mover.named("preview")
    assert mover.named("commit") == [("commit",)]


def test_that_escape_leaves_the_window_as_it_was(qtbot):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    _, edge = edge_of(view)
    drag(view, edge, edge + days_px(view, 4), release=False)
    assert view.hands.dragging
    QTest.keyClick(view, Qt.Key.Key_Escape)
    QTest.mouseRelease(view.beds.viewport(), LEFT, NONE, edge)
    assert not view.hands.dragging
    assert mover.named("cancel")
    assert not mover.named("commit")


def test_that_a_window_that_cannot_go_so_far_says_why_and_stays(qtbot):
    mover = NotingMover(lambda *_: Preview(allowed=False, reason="BAS-1 is due there"))
    view = shown_view(qtbot, mover)
    _, edge = edge_of(view)
    drag(view, edge, edge + days_px(view, 4), release=False)
    assert view.label.text == "BAS-1 is due there"
    QTest.mouseRelease(view.beds.viewport(), LEFT, NONE, edge + days_px(view, 4))
    assert not mover.named("commit")


def test_that_the_label_says_until_when_it_is_picked(qtbot):
    view = shown_view(qtbot)
    _, edge = edge_of(view)
    drag(view, edge, edge + days_px(view, 4), release=False)
    assert view.label.text.startswith("Picked until ")
    assert "4 days later" in view.label.text
    QTest.keyClick(view, Qt.Key.Key_Escape)


def test_that_the_pointer_tells_where_a_window_can_be_taken(qtbot):
    view = shown_view(qtbot)
    lane = view.beds.viewport()
    _, edge = edge_of(view)
    QTest.mouseMove(lane, edge)
    QApplication.processEvents()
    view.beds.moved.emit(_hovering(edge))
    assert lane.cursor().shape() is Qt.CursorShape.SizeHorCursor
    view.beds.moved.emit(_hovering(edge - QPoint(30, 0)))
    assert lane.cursor().shape() is Qt.CursorShape.ArrowCursor
    _, edge = edge_of(view, with_window=False)
    view.beds.moved.emit(_hovering(edge))
    assert lane.cursor().shape() is Qt.CursorShape.ArrowCursor


def _hovering(at):
    from PySide6.QtCore import QPointF

    from planner.desk.lanes.hand import Hand

    return Hand(at=QPointF(at), on_screen=at, modifiers=NONE)


@pytest.mark.parametrize(
    ("key", "held", "days"),
    [
        (Qt.Key.Key_Plus, ALT, 7),
        (Qt.Key.Key_Minus, ALT, -7),
        (Qt.Key.Key_Plus, ALT | CTRL, 1),
        (Qt.Key.Key_Minus, ALT | CTRL, -1),
    ],
)
def test_that_alt_with_plus_and_minus_stretch_by_a_week_or_a_day(qtbot, key, held, days):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    bar, edge = edge_of(view)
    QTest.mouseClick(view.beds.viewport(), LEFT, NONE, edge - QPoint(30, 0))
    zoom = view.time.scale.px_per_day
    QTest.keyClick(view, key, held)
    assert mover.named("stretch") == [("stretch", bar.batch, days)]
    assert mover.named("commit") == [("commit",)]
    assert view.time.scale.px_per_day == zoom


def test_that_a_bar_without_a_window_says_so(qtbot):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    bar, edge = edge_of(view, with_window=False)
    QTest.mouseClick(view.beds.viewport(), LEFT, NONE, edge - QPoint(30, 0))
    QTest.keyClick(view, Qt.Key.Key_Plus, ALT)
    assert not mover.named("stretch")
    assert bar.code in view.label.text
    move(view, edge)
