"""The bed map by mouse and keys: every hole on any day, moved by hand, and the same as a table."""

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from planner.desk.beds.layout import Sizes, laid_out, pitch_m
from planner.desk.beds.scale_bar import bar_length_m
from planner.desk.beds.stays import Stays
from planner.desk.beds.walking import Spot, Way, beside
from planner.desk.why.dialog import WhyDialog
from tests.desk.helpers import TODAY, nameless_controls

LEFT, NONE = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier


@pytest.fixture
def place(window):
    window.resize(1280, 720)
    QTest.keyClick(window, Qt.Key.Key_3, Qt.KeyboardModifier.ControlModifier)
    return window.workspace.shelf.place("beds")


def held_spot(place):
    """Return a hole of a raft in which something stands on the last day of April, shown on the map."""
    stays = place._stays
    day = 60
    place.strip.setValue(day)
    for plot in place.map.layout_now.plots:
        if plot.bed.name == "Raft":
            for span in stays.spans(plot.bed, plot.unit, day):
                if span.now is not None:
                    return Spot(plot.bed.id, plot.unit, span.first), span
    raise AssertionError("nothing stands on the rafts")


def at(place, spot):
    return place.map.point_of(spot).toPoint()


def test_that_every_hole_of_every_bed_is_painted(place, farm):
    place.map.viewport().repaint()
    assert place.map.holes_painted == sum(bed.places for bed in farm.beds)


def test_that_the_map_opens_on_today(place):
    assert place._stays.date_of(place.strip.value()) == TODAY


def test_that_a_chosen_hole_shows_its_batch_beside_the_map(place, window):
    spot, span = held_spot(place)
    QTest.mouseClick(place.map.viewport(), LEFT, NONE, at(place, spot))
    assert window.workspace.chosen_thing().id == span.now.run.batch
    assert window.workspace.chosen_thing().code in place.said.text()
    assert window.workspace.side.page.title == window.workspace.chosen_thing().code


def test_that_a_free_hole_shows_its_bed(place, window, farm):
    bed = next(bed for bed in farm.beds if bed.name == "Raft")
    place.strip.setValue(0)
    spot = Spot(bed.id, 2, bed.places_per_unit)
    QTest.mouseClick(place.map.viewport(), LEFT, NONE, at(place, spot))
    assert window.workspace.chosen_thing().id == bed.id
    assert "Free" in place.said.text()


def test_that_keys_go_by_a_day_and_a_week(place):
    before = place.strip.value()
    QTest.keyClick(place.strip, Qt.Key.Key_Right)
    assert place.strip.value() == before + 1
    QTest.keyClick(place.strip, Qt.Key.Key_PageDown)
    assert place.strip.value() == before + 8
    QTest.keyClick(place.map, Qt.Key.Key_PageUp)
    assert place.strip.value() == before + 1
    QTest.keyClick(place.map, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert place.strip.value() == before


def test_that_a_run_is_dragged_to_other_holes_as_one_act(place, window):
    spot, span = held_spot(place)
    run = span.now.run
    other = spot._replace(unit=2 if spot.unit == 1 else 1)
    plot = place.map.layout_now.plot(other.bed, other.unit)
    free = next(
        each
        for each in place._stays.spans(plot.bed, other.unit, 60)
        if each.now is None and each.next is None and each.count >= run.count
    )
    target = at(place, other._replace(place=free.first))
    view = place.map.viewport()
    QTest.mousePress(view, LEFT, NONE, at(place, spot))
    QTest.mouseMove(view, at(place, spot) + QPoint(8, 8))
    QTest.mouseMove(view, target)
    assert place.map.holding is not None
    assert place.map.holding.allowed, place.map.holding.reason
    assert place.map.label.isVisible()
    QTest.mouseRelease(view, LEFT, NONE, target)
    moved = next(each for each in window.workspace.outlook.farm.placements if each.id == run.id)
    assert (moved.unit, moved.first) == (other.unit, free.first)
    window.menus.actions["change.undo"].trigger()
    back = next(each for each in window.workspace.outlook.farm.placements if each.id == run.id)
    assert back == run


def test_that_plants_are_taken_up_and_left_by_keys(place, window):
    spot, span = held_spot(place)
    QTest.mouseClick(place.map.viewport(), LEFT, NONE, at(place, spot))
    QTest.keyClick(place.map, Qt.Key.Key_Space)
    assert place.map.holding is not None
    QTest.keyClick(place.map, Qt.Key.Key_Right)
    assert place.map.holding.would
    QTest.keyClick(place.map, Qt.Key.Key_Escape)
    assert place.map.holding is None
    assert span.now.run in window.workspace.outlook.farm.placements


def test_that_a_place_where_it_cannot_stand_is_said_and_changes_nothing(place, window, farm):
    spot, span = held_spot(place)
    nursery = next(bed for bed in farm.beds if bed.kind.value == "nursery")
    target = at(place, Spot(nursery.id, 1, 1))
    view = place.map.viewport()
    QTest.mousePress(view, LEFT, NONE, at(place, spot))
    QTest.mouseMove(view, at(place, spot) + QPoint(8, 8))
    QTest.mouseMove(view, target)
    assert not place.map.holding.allowed
    assert place.map.label.text
    QTest.mouseRelease(view, LEFT, NONE, target)
    assert span.now.run in window.workspace.outlook.farm.placements


def test_that_the_table_has_every_place_once(place, farm):
    place.as_table.click()
    rows = place.table.model_of_rows.rows
    counts = {}
    for row in rows:
        first, _, last = row.texts[2].partition("–")
        counts[row.texts[0]] = counts.get(row.texts[0], 0) + int(last or first) - int(first) + 1
    assert counts == {bed.name: bed.places for bed in farm.beds}


def test_that_every_control_has_a_spoken_name(place):
    assert nameless_controls(place) == []


def test_that_the_plan_is_to_scale(farm):
    layout = laid_out(farm.beds, Sizes(width=900, line=20, px_per_m=100))
    for plot in layout.plots:
        assert plot.width * plot.height / 100**2 * plot.bed.units == pytest.approx(plot.bed.area_m2)
        assert plot.pitch == pytest.approx(pitch_m(plot.bed) * 100)


def test_that_a_step_over_an_edge_comes_to_the_next_unit(farm):
    layout = laid_out(farm.beds, Sizes(width=2000, line=20, px_per_m=100))
    bed = next(bed for bed in farm.beds if bed.name == "Raft")
    found = beside(layout, Spot(bed.id, 1, bed.columns), Way(1, 0))
    assert found == Spot(bed.id, 2, 1)


def test_that_what_stands_is_free_since_and_next_agree_with_the_holds(window, means):
    outlook = window.workspace.outlook
    stays = Stays(outlook)
    for hold in means.holds(outlook.farm):
        bed = next(bed for bed in outlook.farm.beds if bed.id == hold.bed)
        ruler = outlook.forecast.ruler
        first, end = ruler.day_of(hold.from_on), ruler.day_of(hold.until_on)
        assert stays.span_at(bed, hold.unit, hold.first, first).now.run.id == hold.placement
        assert stays.span_at(bed, hold.unit, hold.last, end - 1).now.run.id == hold.placement
        before = stays.span_at(bed, hold.unit, hold.first, first - 1)
        assert before.now is None or before.now.run.id != hold.placement
        assert before.next.run.id == hold.placement


def test_that_the_key_asks_why_of_the_hole_under_the_cursor(qtbot, place, window):
    spot, span = held_spot(place)
    place.map.choose(spot)
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    place.map.setFocus()
    qtbot.keyClick(place.map, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
    (dialog,) = window.findChildren(WhyDialog)
    batch = window.workspace.outlook.found[span.now.run.batch]
    assert batch.code in dialog.answer.title
    assert f"day {dialog.answer.value.split()[0]} of" in place.said.text()
    dialog.reject()


@pytest.mark.qt_log_ignore("^This plugin does not support grabbing the (keyboard|mouse)")
def test_that_the_right_button_asks_why_of_the_hole_under_it(qtbot, place, window):
    spot, _ = held_spot(place)
    where = at(place, spot)
    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, where, place.map.viewport().mapToGlobal(where))
    QApplication.sendEvent(place.map.viewport(), event)
    menu = next(menu for menu in place.map.findChildren(QMenu) if menu.actions())
    said = [action.text() for action in menu.actions()]
    assert any(words.startswith("Why Held until: ") for words in said)
    menu.actions()[1].trigger()
    (dialog,) = window.findChildren(WhyDialog)
    assert dialog.figure.currentIndex() == 1
    dialog.reject()
    menu.close()


def test_that_the_bar_beside_the_map_is_true_to_its_scale_at_every_zoom(place):
    for turn in (place.map.fit, place.map.zoom_in, place.map.zoom_in, place.map.zoom_out):
        turn()
        plot = place.map.layout_now.plots[0]
        metres = float(place.scale.words.removesuffix(" m"))
        # A square metre of places is as many pitches wide as the bed's area gives it.
        px_per_m = plot.pitch / pitch_m(plot.bed)
        assert bar_length_m(px_per_m) == metres
        assert metres * px_per_m <= place.scale.width()
        assert place.scale.words in place.scale.toolTip()
