"""The view as hands use it: drags, keys, wheel, choice, and what it tells the window."""

import gc
import weakref
from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from planner.desk.lanes.interaction import Preview
from planner.desk.lanes.lanes_view import LanesView
from planner.desk.theme import DARK, LIGHT
from planner.farm.crops import Phase
from planner.farm.fields import Id
from tests.desk.lanes.demo import START, TODAY, big_scene, demo_balance, demo_scene, empty_scene
from tests.desk.lanes.hands import (
    LEFT,
    NONE,
    NotingMover,
    drag,
    move,
    point_of,
    shown_view,
    spot_of,
    wheel,
)

CODE = "LET-2603-N1"
LOCKED = "PAK-2602-N2"
SHIFT = Qt.KeyboardModifier.ShiftModifier
CONTROL = Qt.KeyboardModifier.ControlModifier
ALT = Qt.KeyboardModifier.AltModifier


def days(view, count: float) -> QPoint:
    return QPoint(round(count * view.time.scale.px_per_day), 0)


def row_below(view, code: str) -> QPoint:
    """Return how far the row below that of a batch is."""
    layout = view.beds.layout_now
    here = layout.strip_of(spot_of(view, code).row)
    return QPoint(0, round(here.height))


def test_that_a_click_selects_the_batch_under_it(qtbot):
    view = shown_view(qtbot)
    with qtbot.waitSignal(view.selected) as told:
        QTest.mouseClick(view.beds.viewport(), LEFT, NONE, point_of(view, CODE))
    assert told.args == [[f"batch {CODE}"]]


def test_that_a_click_beside_all_bars_selects_nothing(qtbot):
    view = shown_view(qtbot)
    QTest.mouseClick(view.beds.viewport(), LEFT, NONE, point_of(view, CODE))
    empty = QPoint(int(view.beds.rect_of(spot_of(view, CODE)).right()) + 3, point_of(view, CODE).y())
    with qtbot.waitSignal(view.selected) as told:
        QTest.mouseClick(view.beds.viewport(), LEFT, NONE, empty)
    assert told.args == [[]]


def test_that_control_and_click_add_and_take_away(qtbot):
    view = shown_view(qtbot)
    lane = view.beds.viewport()
    told = []
    view.selected.connect(told.append)
    QTest.mouseClick(lane, LEFT, NONE, point_of(view, CODE))
    QTest.mouseClick(lane, LEFT, CONTROL, point_of(view, LOCKED))
    QTest.mouseClick(lane, LEFT, CONTROL, point_of(view, CODE))
    assert told == [[f"batch {CODE}"], sorted([f"batch {CODE}", f"batch {LOCKED}"]), [f"batch {LOCKED}"]]


def test_that_the_window_may_select_without_an_echo(qtbot):
    view = shown_view(qtbot)
    with qtbot.assertNotEmitted(view.selected):
        view.set_selected([f"batch {CODE}"])
    assert view.hands.chosen == {f"batch {CODE}"}
    assert CODE in view.current_summary


def test_that_a_drag_of_three_days_is_one_request(qtbot):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    start = point_of(view, CODE)
    drag(view, start, start + days(view, 1), start + days(view, 2), start + days(view, 3))
    assert mover.calls[0] == ("begin", f"batch {CODE}")
    assert mover.calls[-2][3:] == (3, "", 0)
    assert len(mover.named("commit")) == 1
    assert mover.named("cancel") == []


def test_that_a_drag_goes_in_whole_days(qtbot):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    start = point_of(view, CODE)
    drag(view, start, *(start + QPoint(px, 0) for px in range(6, 30)))
    tried = [call[3] for call in mover.named("preview")]
    assert tried == [1, 2, 3, 4]


def test_that_a_drag_to_the_row_below_names_its_bed_and_unit(qtbot):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    start = point_of(view, CODE)
    drag(view, start, start + row_below(view, CODE))
    assert mover.named("preview")[-1][1:] == (f"batch {CODE}", spot_of(view, CODE).bar.run, 0, "north", 2)
    assert len(mover.named("commit")) == 1


def test_that_shift_keeps_the_row(qtbot):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    start = point_of(view, CODE)
    drag(view, start, start + row_below(view, CODE) + days(view, 2), modifiers=SHIFT)
    assert [call[3:] for call in mover.named("preview")] == [(2, "", 0)]


def test_that_the_balance_and_the_bar_follow_the_hand_and_escape_restores_all(qtbot):
    changed = demo_balance(extra=40)
    mover = NotingMover(lambda *_: Preview(allowed=True, balance=changed))
    view = shown_view(qtbot, mover)
    before_beds, before_balance = view.beds.grab().toImage(), view.balance.grab().toImage()
    view.set_selected([f"batch {CODE}"])
    selected_beds = view.beds.grab().toImage()
    start = point_of(view, CODE)
    drag(view, start, start + days(view, 4), release=False)
    assert view.balance.shown is changed
    assert view.balance.grab().toImage() != before_balance
    assert view.beds.grab().toImage() != selected_beds
    QTest.keyClick(view, Qt.Key.Key_Escape)
    assert view.balance.shown is view.scene.balances[0]
    assert view.balance.grab().toImage() == before_balance
    assert view.beds.grab().toImage() == selected_beds
    assert selected_beds != before_beds
    assert not view.label.isVisible()
    QTest.mouseRelease(view.beds.viewport(), LEFT, NONE, start + days(view, 4))
    assert mover.named("commit") == []
    assert len(mover.named("cancel")) == 1


def test_that_the_label_says_the_new_dates_or_why_not(qtbot):
    reason = "Raft 2 of North raft has 6 free holes from 2 Feb to 9 Mar; 18 are needed"
    mover = NotingMover(lambda _b, _r, _d, bed, _u: Preview(allowed=not bed, reason=reason if bed else ""))
    view = shown_view(qtbot, mover)
    start = point_of(view, CODE)
    drag(view, start, start + days(view, 4), release=False)
    assert view.label.isVisible()
    assert CODE in view.label.text
    assert "4 days later" in view.label.text
    move(view, start + row_below(view, CODE))
    assert view.label.text == reason
    QTest.mouseRelease(view.beds.viewport(), LEFT, NONE, start + row_below(view, CODE))
    assert mover.named("commit") == []
    assert not view.label.isVisible()


def test_that_the_label_stays_within_the_view(qtbot):
    view = shown_view(qtbot)
    for corner in (QPoint(0, 0), view.rect().bottomRight(), view.rect().topRight()):
        view.label.show_at("word " * 60, corner, allowed=False)
        assert view.rect().contains(view.label.geometry())


def test_that_a_locked_batch_says_so_and_stays(qtbot):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    start = point_of(view, LOCKED)
    drag(view, start, start + days(view, 5), release=False)
    assert "locked" in view.label.text
    QTest.mouseRelease(view.beds.viewport(), LEFT, NONE, start + days(view, 5))
    view.hands.set_chosen([f"batch {LOCKED}"])
    QTest.keyClick(view, Qt.Key.Key_Right, ALT)
    assert "locked" in view.label.text
    assert mover.calls == []


def test_that_a_new_scene_ends_a_drag(qtbot):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    start = point_of(view, CODE)
    drag(view, start, start + days(view, 4), release=False)
    view.set_scene(demo_scene())
    assert mover.calls[-1] == ("cancel",)
    QTest.mouseRelease(view.beds.viewport(), LEFT, NONE, start + days(view, 4))
    assert mover.named("commit") == []


def test_that_a_drag_near_the_edge_scrolls_on(qtbot):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    before = view.span
    start = point_of(view, CODE)
    edge = QPoint(view.beds.viewport().width() - 4, start.y())
    drag(view, start, start + days(view, 3), edge, release=False)
    qtbot.waitUntil(lambda: view.span.start > before.start)
    tried = len(mover.named("preview"))
    qtbot.waitUntil(lambda: len(mover.named("preview")) > tried)
    QTest.keyClick(view, Qt.Key.Key_Escape)


@pytest.mark.parametrize(
    ("key", "modifiers", "moved"),
    [
        (Qt.Key.Key_Left, ALT, -1),
        (Qt.Key.Key_Right, ALT, 1),
        (Qt.Key.Key_Left, ALT | SHIFT, -7),
        (Qt.Key.Key_Right, ALT | SHIFT, 7),
        (Qt.Key.Key_PageUp, ALT, -7),
        (Qt.Key.Key_PageDown, ALT, 7),
    ],
)
def test_that_alt_and_arrows_move_the_batch_in_time(qtbot, key, modifiers, moved):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    view.set_selected([f"batch {CODE}"])
    QTest.keyClick(view, key, modifiers)
    assert mover.named("preview") == [("preview", f"batch {CODE}", "", moved, "", 0)]
    assert len(mover.named("commit")) == 1


def test_that_alt_and_down_move_the_run_to_the_next_unit_with_room(qtbot):
    mover = NotingMover(lambda _b, _r, _d, _bed, unit: Preview(allowed=unit == 3, reason="full"))
    view = shown_view(qtbot, mover)
    view.hands.go_to_spot(spot_of(view, CODE))
    QTest.keyClick(view, Qt.Key.Key_Down, ALT)
    assert [call[4:] for call in mover.named("preview")] == [("north", 2), ("north", 3)]
    assert len(mover.named("commit")) == 1


def test_that_a_key_move_that_cannot_be_says_why(qtbot):
    mover = NotingMover(lambda *_: Preview(allowed=False, reason="Raft 1 is full"))
    view = shown_view(qtbot, mover)
    view.hands.go_to_spot(spot_of(view, CODE))
    QTest.keyClick(view, Qt.Key.Key_Left, ALT)
    assert view.label.text == "Raft 1 is full"
    assert view.label.isVisible()
    assert mover.calls[-1] == ("cancel",)


def test_that_arrows_go_from_bar_to_bar_and_enter_opens(qtbot):
    view = shown_view(qtbot)
    view.hands.go_to_spot(spot_of(view, CODE))
    with qtbot.waitSignal(view.selected) as told:
        QTest.keyClick(view, Qt.Key.Key_Right)
    assert told.args == [["batch LET-2604-N1"]]
    with qtbot.waitSignal(view.opened) as opened:
        QTest.keyClick(view, Qt.Key.Key_Return)
    assert opened.args == ["batch LET-2604-N1"]


def test_that_the_current_bar_is_scrolled_into_sight(qtbot):
    view = shown_view(qtbot, scene=big_scene(rows=100, batches=2000, beds=5))
    for _ in range(40):
        QTest.keyClick(view, Qt.Key.Key_Down)
    box = view.beds.rect_of(view.hands.cursor)
    assert view.beds.rect_f().contains(box.center())


def test_that_a_double_click_opens(qtbot):
    view = shown_view(qtbot)
    with qtbot.waitSignal(view.opened) as opened:
        QTest.mouseDClick(view.beds.viewport(), LEFT, NONE, point_of(view, CODE))
    assert opened.args == [f"batch {CODE}"]


def test_that_the_cursor_follows_its_batch_to_a_new_scene(qtbot):
    view = shown_view(qtbot)
    spot = spot_of(view, CODE)
    view.hands.go_to_spot(spot)
    scene = view.scene
    row = scene.groups[1].rows[0]
    moved = replace(row, bars=tuple(bar.shifted(3) for bar in row.bars))
    group = replace(scene.groups[1], rows=(moved, *scene.groups[1].rows[1:]))
    view.set_scene(replace(scene, groups=(scene.groups[0], group, *scene.groups[2:])))
    assert view.hands.cursor.bar.start == spot.bar.start + 3


def test_that_control_and_wheel_zoom_around_the_pointer(qtbot):
    view = shown_view(qtbot)
    at = QPoint(700, 40)
    for up in (1, 1, -1, -1, -1):
        before = view.time.scale
        wheel(view.beds, at, up=up, modifiers=CONTROL)
        after = view.time.scale
        assert (after.px_per_day > before.px_per_day) == (up > 0)
        assert after.day_at(at.x()) == pytest.approx(before.day_at(at.x()), abs=1e-6)


def test_that_the_wheel_scrolls_beds_down_and_other_lanes_sideways(qtbot):
    view = shown_view(qtbot)
    before = view.span
    wheel(view.beds, QPoint(500, 40), up=-1)
    assert view.beds.down_px > 0
    assert view.span == before
    wheel(view.balance, QPoint(500, 40), up=-1)
    assert view.span.start > before.start
    wheel(view.beds, QPoint(500, 40), up=1, modifiers=SHIFT)
    assert view.span == before


def test_that_keys_zoom_scroll_and_go_to_the_ends(qtbot):
    view = shown_view(qtbot)
    px = view.time.scale.px_per_day
    QTest.keyClick(view, Qt.Key.Key_Plus)
    assert view.time.scale.px_per_day > px
    QTest.keyClick(view, Qt.Key.Key_Minus)
    assert view.time.scale.px_per_day == px
    QTest.keyClick(view, Qt.Key.Key_End)
    assert view.span.end >= view.scene.end
    QTest.keyClick(view, Qt.Key.Key_Home)
    assert view.span.start <= view.scene.start < view.span.end
    QTest.keyClick(view, Qt.Key.Key_PageDown)
    assert view.beds.down_px > 0
    QTest.keyClick(view, Qt.Key.Key_PageUp)
    assert view.beds.down_px == 0
    QTest.keyClick(view, Qt.Key.Key_0)
    assert view.span.start <= view.scene.start
    assert view.span.end >= view.scene.end


def test_that_a_date_can_be_gone_to_and_the_span_is_told(qtbot):
    view = shown_view(qtbot)
    with qtbot.waitSignal(view.span_changed) as told:
        view.go_to(date(2026, 9, 1))
    span = told.args[0]
    assert span == view.span
    assert span.start < date(2026, 9, 1).toordinal() < span.end


def test_that_the_scroll_bar_shows_other_days(qtbot):
    view = shown_view(qtbot)
    before = view.span
    bar = view.scroll_bar
    bar.setValue(bar.value() + 350)
    assert view.span.start == pytest.approx(before.start + 350 / view.time.scale.px_per_day, abs=1)
    view.go_to(date(2026, 3, 1))
    assert view.span == before


def test_that_no_amount_of_scrolling_loses_the_plan(qtbot):
    view = shown_view(qtbot)
    for pixels in (-10_000_000, 10_000_000):
        view.time.scroll_px(pixels)
        assert view.span.end > view.scene.start
        assert view.span.start < view.scene.end


def test_that_a_heading_folds_its_bed_and_opens_it_again(qtbot):
    view = shown_view(qtbot)
    layout = view.beds.layout_now
    strip = next(strip for strip in layout.strips if strip.row is None and strip.group.bed == "north")
    at = QPoint(30, round(strip.top + strip.height / 2))
    QTest.mouseClick(view.beds.viewport(), LEFT, NONE, at)
    assert view.beds.folded == {"north"}
    assert view.beds.layout_now.height < layout.height
    QTest.mouseClick(view.beds.viewport(), LEFT, NONE, at)
    assert view.beds.folded == frozenset()


def test_that_keys_fold_and_unfold_the_bed_of_the_current_bar(qtbot):
    view = shown_view(qtbot)
    view.hands.go_to_spot(spot_of(view, CODE))
    QTest.keyClick(view, Qt.Key.Key_Up, CONTROL)
    assert view.beds.folded == {"north"}
    QTest.keyClick(view, Qt.Key.Key_Down, CONTROL)
    assert view.beds.folded == frozenset()


def test_that_the_menu_is_asked_for_with_what_is_under_the_pointer(qtbot):
    view = shown_view(qtbot)
    lane, at = view.beds.viewport(), point_of(view, CODE)
    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, lane.mapToGlobal(at))
    with qtbot.waitSignal(view.menu_asked) as told:
        QApplication.sendEvent(lane, event)
    assert told.args == [[f"batch {CODE}"], lane.mapToGlobal(at)]
    with qtbot.waitSignal(view.menu_asked) as told:
        QTest.keyClick(view, Qt.Key.Key_Menu)
    assert told.args[0] == [f"batch {CODE}"]


def test_that_an_element_and_a_loop_can_be_chosen(qtbot):
    view = shown_view(qtbot)
    before = view.balance.grab().toImage()
    view.set_element("k")
    assert view.balance.element == "k"
    assert view.balance.grab().toImage() != before
    other = replace(demo_balance(extra=30), loop=Id("loop 2"), name="Loop 2")
    view.set_scene(replace(view.scene, balances=(*view.scene.balances, other)))
    view.set_loop(Id("loop 2"))
    assert view.balance.shown is other


def test_that_a_theme_and_today_change_the_picture_and_back(qtbot):
    view = shown_view(qtbot)
    light = view.grab().toImage()
    view.set_theme(DARK)
    assert view.grab().toImage() != light
    view.set_theme(LIGHT)
    assert view.grab().toImage() == light
    view.set_today(None)
    assert view.grab().toImage() != light
    view.set_today(TODAY)
    assert view.grab().toImage() == light


def test_that_every_part_has_a_name_and_the_current_bar_is_described(qtbot):
    view = shown_view(qtbot)
    parts = (view, view.ruler, view.fish, view.beds, view.balance)
    assert all(part.accessibleName() for part in parts)
    assert len({part.accessibleName() for part in parts}) == len(parts)
    view.hands.go_to_spot(spot_of(view, CODE))
    said = view.accessibleDescription()
    for word in (CODE, "Lettuce, butterhead", "24", "Raft 1", "North raft", "bed"):
        assert word in said


def test_that_every_control_that_takes_the_focus_has_a_name(qtbot):
    view = shown_view(qtbot)
    focusable = [each for each in view.findChildren(QWidget) if each.focusPolicy() & Qt.FocusPolicy.TabFocus]
    assert len(focusable) >= 7
    assert [each for each in focusable if not each.accessibleName()] == []


def test_that_an_empty_farm_can_be_looked_at_and_pressed(qtbot):
    view = shown_view(qtbot, scene=empty_scene())
    QTest.mouseClick(view.beds.viewport(), LEFT, NONE, QPoint(400, 50))
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Right, Qt.Key.Key_Return, Qt.Key.Key_Plus, Qt.Key.Key_0):
        QTest.keyClick(view, key)
    QTest.keyClick(view, Qt.Key.Key_Right, ALT)
    assert view.current_summary == ""
    assert not view.grab().isNull()


def test_that_an_unplaced_batch_can_be_dragged_to_a_unit(qtbot):
    mover = NotingMover()
    view = shown_view(qtbot, mover)
    start = point_of(view, "LET-2614-2")
    target = view.beds.layout_now.strip_of(spot_of(view, CODE).row)
    drag(view, start, start + QPoint(0, 20), QPoint(start.x(), round(target.top + 8)))
    assert mover.named("preview")[-1][1:] == ("batch LET-2614-2", "", 0, "north", 1)
    assert len(mover.named("commit")) == 1


def test_that_the_phase_of_a_bar_decides_its_row():
    scene = demo_scene()
    for group in scene.groups:
        for row in group.rows:
            assert all(bar.row_key == row.key for bar in row.bars if group.name != "Nursery")
    assert scene.groups[0].rows[0].phase is Phase.BED
    assert scene.start == START


def test_that_a_view_is_gone_as_soon_as_nobody_holds_it(qapp):
    gc.collect()
    gc.disable()
    try:
        view = LanesView(LIGHT, NotingMover(), None)
        view.set_scene(demo_scene())
        view.show()
        QApplication.processEvents()
        view.hands.go_to_spot(spot_of(view, CODE))
        QTest.keyClick(view, Qt.Key.Key_Plus)
        watched = weakref.ref(view)
        del view
        assert watched() is None
    finally:
        gc.enable()


def test_that_what_keys_do_is_said(qtbot):
    mover = NotingMover(lambda _b, _r, days, *_: Preview(allowed=days > 0, reason="Raft 1 is full"))
    view = shown_view(qtbot, mover)
    view.hands.go_to_spot(spot_of(view, CODE))
    said = []
    view.hands.said.connect(said.append)
    QTest.keyClick(view, Qt.Key.Key_Right)
    QTest.keyClick(view, Qt.Key.Key_Right, ALT)
    QTest.keyClick(view, Qt.Key.Key_Left, ALT)
    assert "LET-2604-N1" in said[0]
    assert said[1].startswith("Batch LET-2604-N1 moved.")
    assert said[2] == "Raft 1 is full"


def test_that_a_date_asked_for_before_the_window_is_shown_is_where_it_should_be(qtbot):
    view = LanesView(LIGHT, NotingMover(), None)
    qtbot.addWidget(view)
    view.set_scene(demo_scene())
    view.go_to(date(2026, 9, 1))
    view.resize(1280, 900)
    view.show()
    qtbot.waitExposed(view)
    x = view.time.scale.x_of(date(2026, 9, 1).toordinal())
    left, right = view.time.scale.left, view.beds.viewport().width()
    assert (x - left) / (right - left) == pytest.approx(0.25, abs=0.02)


def test_that_the_bar_under_the_pointer_is_told_as_a_hint(qtbot):
    view = shown_view(qtbot)
    QTest.mouseMove(view.beds.viewport(), point_of(view, CODE))
    assert CODE in view.beds.hint_at(point_of(view, CODE))
    assert view.beds.hint_at(QPoint(2, 2)) == ""


def test_that_lanes_share_the_height_until_a_hand_moves_them(qtbot):
    view = shown_view(qtbot)
    before = view.split.sizes()
    assert min(before) > 60
    view.resize(1280, 700)
    assert view.split.sizes()[1] < before[1]
    view.split.moveSplitter(220, 1)
    own = view.split.sizes()
    view.set_scene(demo_scene())
    assert view.split.sizes() == own


def test_that_the_balance_of_another_loop_is_named_while_its_batch_is_dragged(qtbot):
    other = replace(demo_balance(extra=30), loop=Id("loop 2"), name="Loop 2")
    mover = NotingMover(lambda *_: Preview(allowed=True, balance=other))
    scene = demo_scene()
    view = shown_view(qtbot, mover, replace(scene, balances=(*scene.balances, other)))
    names = [view.balance_bar.loop_name]
    start = point_of(view, CODE)
    drag(view, start, start + days(view, 3), release=False)
    names.append(view.balance_bar.loop_name)
    QTest.keyClick(view, Qt.Key.Key_Escape)
    names.append(view.balance_bar.loop_name)
    assert names == ["Loop 1", "Loop 2", "Loop 1"]
    assert view.balance.shown.name == "Loop 1"
