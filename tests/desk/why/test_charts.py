"""What is drawn on a chart can be asked why: the day or week under the pointer, or where the keys stand."""

from datetime import timedelta

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtWidgets import QApplication, QMenu

from planner.actions.changing import addition
from planner.desk.why.dialog import WhyDialog
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import new_id
from planner.farm.water import Quantity
from planner.forecast.why.values import Origin, Subject, SubjectKind

WHY = (Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)


@pytest.fixture
def place(qtbot, window):
    """Show a page of the window and return it."""

    def shown(key):
        window.activateWindow()
        qtbot.waitUntil(window.isActiveWindow)
        window.menus.actions[f"view.{key}"].trigger()
        return window.workspace.shelf.place(key)

    return shown


def behind_of(window):
    return window.workspace.asking.behind


def answer(window):
    (dialog,) = [each for each in window.findChildren(WhyDialog) if each.isVisible()]
    found = dialog.answer
    dialog.reject()
    return found


def menu_at(widget, at):
    """Press the right button as the platform does, and return the menu that comes."""
    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, widget.mapToGlobal(at))
    QApplication.sendEvent(widget, event)
    return next(menu for menu in widget.window().findChildren(QMenu) if menu.isVisible())


def test_that_the_balance_answers_for_the_week_and_element_that_keys_stand_on(qtbot, window, place):
    chart = place("balance").chart
    chart.setFocus()
    chart.go(5, 2)
    qtbot.keyClick(chart, *WHY)
    said = answer(window)
    verdict = behind_of(window).outlook.verdicts[chart.facts_at(None)[0].ask.about][5]
    ratio = chart.facts_at(None)[0].ask
    assert (ratio.kind, ratio.week, ratio.element) == (SubjectKind.RATIO, 5, 2)
    assert behind_of(window).why(ratio).value == pytest.approx(verdict.ratio[2])
    assert said.title


def test_that_every_row_of_the_balance_answers_for_itself_under_the_pointer(window, place):
    chart = place("balance").chart
    tops, (_, plot, ratio) = chart.tops_px(), chart.rows_px()
    x = round(chart.x_of(3) + chart.week_px / 2)
    assert chart.facts_at(QPoint(x, round(tops[0] / 2)))[0].ask.kind is SubjectKind.LIMITING
    at = chart.facts_at(QPoint(x, round(tops[1] + plot / 2)))[0].ask
    assert (at.kind, at.week, at.element) == (SubjectKind.RATIO, 3, 1)
    assert chart.facts_at(QPoint(x, round(tops[-1] + ratio / 2)))[0].ask.kind is SubjectKind.FEED_RATIO
    for fact in chart.facts_at(QPoint(x, round(tops[1] + plot / 2))):
        assert behind_of(window).why(fact.ask).value is not None


@pytest.mark.qt_log_ignore("^This plugin does not support (grabbing the (keyboard|mouse)|raise)")
def test_that_the_right_button_offers_the_numbers_of_the_week(qtbot, window, place):
    chart = place("balance").chart
    tops = chart.tops_px()
    menu = menu_at(chart.viewport(), QPoint(round(chart.x_of(3) + 2), round(tops[0] + 4)))
    texts = [action.text() for action in menu.actions()]
    assert any("Stock" in text for text in texts)
    menu.actions()[1].trigger()
    menu.close()
    assert answer(window).title.startswith("Supply")


@pytest.mark.parametrize("plot", ["growth", "feed", "density"])
def test_that_a_day_of_a_fish_chart_is_walked_to_by_keys_and_answers(qtbot, window, place, plot):
    chart = getattr(place("fish"), plot)
    chart.setFocus()
    begin = chart.cursor_day.day
    assert begin is not None
    qtbot.keyClick(chart, Qt.Key.Key_Home)
    first = chart.cursor_day.day
    qtbot.keyClick(chart, Qt.Key.Key_PageDown)
    qtbot.keyClick(chart, Qt.Key.Key_Left)
    assert first < chart.cursor_day.day
    fact = chart.facts_at(None)[0]
    ruler = behind_of(window).outlook.forecast.ruler
    assert isinstance(fact.ask, Subject)
    assert ruler.date_of(fact.ask.day).toordinal() == chart.cursor_day.day
    said = dict(chart.plot.strands[0].points)[chart.cursor_day.day]
    assert behind_of(window).why(fact.ask).value == pytest.approx(said, rel=1e-6)
    assert fact.value in chart.accessibleDescription()
    qtbot.keyClick(chart, *WHY)
    assert answer(window).rows or fact.ask.kind is SubjectKind.FEED


def test_that_a_mark_of_the_growth_curve_answers_with_what_was_entered(qtbot, window, place):
    group = behind_of(window).outlook.farm.fish_groups[0]
    on = group.stocked_on + timedelta(days=40)
    sample = FishEvent(
        id=new_id(), group=group.id, on=on, kind=FishEventKind.SAMPLE, count=None, mean_weight_g=77.0
    )
    assert window.conduct.act(addition("Weigh", sample))
    chart = place("fish").growth
    (mark,) = [each for each in chart.plot.marks if each.day == on.toordinal()]
    chart.cursor_day.go_to(mark.day)
    fact = chart.facts_at(None)[-1]
    assert fact.value == mark.words
    assert fact.ask.value == 77.0
    assert fact.ask.inputs[0].origin is Origin.ENTERED


def test_that_readings_and_forecast_lines_of_the_water_answer_by_their_day(qtbot, window, place):
    tab = place("water").tab
    behind = behind_of(window)
    asked = set()
    for chart in tab.charts:
        chart.setFocus()
        qtbot.keyClick(chart, Qt.Key.Key_End)
        for fact in chart.facts_at(None):
            assert chart.course.foreseen
            value = behind.why(fact.ask).value
            on = behind.outlook.forecast.ruler.date_of(fact.ask.day)
            assert value == pytest.approx(dict(chart.course.foreseen)[on], rel=1e-6)
            asked.add(chart.course.quantity)
        qtbot.keyClick(chart, Qt.Key.Key_Home)
        if chart.course.points:
            assert any(hasattr(fact.ask, "field") for fact in chart.facts_at(None))
    assert Quantity.NITRATE_N_MG_PER_L in asked


def test_that_a_click_takes_the_cursor_to_the_day_under_the_pointer(qtbot, window, place):
    tab = place("water").tab
    chart = next(each for each in tab.charts if len(each.course.own_days) > 1)
    qtbot.mouseClick(chart, Qt.MouseButton.LeftButton, pos=QPoint(chart.width() - 3, chart.height() // 2))
    assert chart.cursor_day.day == chart.course.own_days[-1].toordinal()
