"""A band drawn over empty ground chooses every batch it touches; Shift adds, Escape goes back."""

import pytest
from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtTest import QTest

from planner.desk.lanes.banding import Area, Band, BandState, Corner, touched
from planner.desk.lanes.scene_index import SceneIndex
from tests.desk.lanes.hands import LEFT, drag, move, point_of, shown_view, spot_of

SHIFT, CTRL = Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.ControlModifier


def empty_point(view):
    """Return a point of the lane right of all names on which no bar lies, nor a heading."""
    beds = view.beds
    for x in range(int(beds.frame_state.kit.names_px) + 4, beds.viewport().width() - 200, 6):
        for y in range(6, beds.viewport().height() // 2, 3):
            strip = beds.layout_now.strip_at(y + beds.down_px)
            free = strip is not None and strip.row is not None and beds.spot_at(QPointF(x, y)) is None
            if free:
                return QPoint(x, y)
    raise AssertionError("no empty ground in sight")


def corner_of(view):
    return QPoint(view.beds.viewport().width() - 40, view.beds.viewport().height() - 40)


def in_band(view, one, other, *, by=0):
    """Return the batches whose bars meet the rectangle of two points, made larger on all sides."""
    band = QRectF(QPointF(one), QPointF(other)).adjusted(-by, -by, by, by)
    index, strips = SceneIndex(view.scene), view.beds.layout_now.strips
    bars = (bar for strip in strips if strip.row for bar in strip.row.bars)
    spots = (spot for batch in {bar.batch for bar in bars} for spot in index.spots(batch))
    return {spot.bar.batch for spot in spots if view.beds.rect_of(spot).intersects(band)}


def assert_is_in_band(view, one, other):
    """Check what is chosen, let what is cut by less than two points of the screen be either."""
    chosen = set(view.hands.chosen)
    assert in_band(view, one, other, by=-2) <= chosen <= in_band(view, one, other, by=2)


def test_that_a_band_over_empty_ground_chooses_every_batch_it_touches(qtbot):
    view = shown_view(qtbot)
    told = []
    view.selected.connect(told.append)
    start, end = empty_point(view), corner_of(view)
    drag(view, start, start + QPoint(30, 20), end)
    assert_is_in_band(view, start, end)
    assert len(view.hands.chosen) > 3
    assert told == [sorted(view.hands.chosen)]


def test_that_the_count_is_said_beside_the_pointer_and_when_it_is_let_go(qtbot):
    view = shown_view(qtbot)
    said = []
    view.hands.said.connect(said.append)
    start, end = empty_point(view), corner_of(view)
    drag(view, start, start + QPoint(30, 20), end, release=False)
    count = len(view.hands.chosen)
    assert view.label.isVisible()
    assert view.label.text == f"{count} batches chosen"
    QTest.mouseRelease(view.beds.viewport(), LEFT, Qt.KeyboardModifier.NoModifier, end)
    assert not view.label.isVisible()
    assert said == [f"{count} batches chosen"]


def test_that_shift_adds_to_what_is_chosen_and_escape_goes_back_to_it(qtbot):
    view = shown_view(qtbot)
    start, end = empty_point(view), corner_of(view)
    code = next(each for each in view.scene.bars() if each.batch not in in_band(view, start, end)).batch
    view.set_selected([code])
    drag(view, start, start + QPoint(30, 20), end, modifiers=SHIFT, release=False)
    assert code in view.hands.chosen
    assert len(view.hands.chosen) > 1
    QTest.keyClick(view, Qt.Key.Key_Escape)
    assert set(view.hands.chosen) == {code}
    QTest.mouseRelease(view.beds.viewport(), LEFT, SHIFT, end)
    assert set(view.hands.chosen) == {code}
    drag(view, start, start + QPoint(30, 20), end)
    assert code not in view.hands.chosen


def test_that_a_band_keeps_to_its_days_while_the_lane_is_scrolled(qtbot):
    view = shown_view(qtbot)
    start, end = empty_point(view), corner_of(view)
    drag(view, start, start + QPoint(30, 20), end, release=False)
    few = set(view.hands.chosen)
    view.time.scroll_px(120)
    view.hands.follow_again()
    assert few < set(view.hands.chosen)
    QTest.keyClick(view, Qt.Key.Key_Escape)


def test_that_control_and_a_choose_all_that_is_in_sight(qtbot):
    view = shown_view(qtbot)
    told = []
    view.selected.connect(told.append)
    QTest.keyClick(view, Qt.Key.Key_A, CTRL)
    beds = view.beds
    whole = beds.rect_f().adjusted(beds.frame_state.kit.names_px, 0, 0, 0)
    assert_is_in_band(view, whole.topLeft(), whole.bottomRight())
    assert told == [sorted(view.hands.chosen)]


def test_that_a_click_on_empty_ground_still_chooses_nothing(qtbot):
    view = shown_view(qtbot)
    QTest.mouseClick(
        view.beds.viewport(), LEFT, Qt.KeyboardModifier.NoModifier, point_of(view, "LET-2603-N1")
    )
    assert view.hands.chosen
    QTest.mouseClick(view.beds.viewport(), LEFT, Qt.KeyboardModifier.NoModifier, empty_point(view))
    assert not view.hands.chosen


def test_that_the_band_is_painted_and_gone_afterwards(qtbot):
    view = shown_view(qtbot)
    before = view.beds.grab().toImage()
    start, end = empty_point(view), corner_of(view)
    drag(view, start, start + QPoint(30, 20), end, release=False)
    assert view.beds.grab().toImage() != before
    QTest.keyClick(view, Qt.Key.Key_Escape)
    view.hands.set_chosen(())
    assert view.beds.grab().toImage() == before
    move(view, end)


def test_that_a_band_that_is_not_drawn_far_is_none():
    band = Band()
    band.press(Corner(day=10, y=5), x=50, y=50, chosen=frozenset(), adding=False)
    assert not band.move(Corner(day=10.1, y=6), x=52, y=51)
    assert band.end() is BandState.PRESSED


@pytest.mark.parametrize(
    "area", [Area(start=0, end=1, top=0, bottom=1e6), Area(start=0, end=1e6, top=-9, bottom=-1)]
)
def test_that_nothing_is_touched_beside_all_bars(qtbot, area):
    view = shown_view(qtbot)
    assert touched(view.beds.layout_now, area) == frozenset()
    assert spot_of(view, "LET-2603-N1").bar.batch not in touched(view.beds.layout_now, area)
