"""The page of the balance by mouse and keys: weeks, elements, reasons, repairs, and the same as a table."""

from datetime import date

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from planner.desk import settings
from planner.desk.doors.figures import first_figures
from planner.desk.week_facts import week_page
from planner.farm.species import ELEMENTS
from planner.forecast.values import AreaRule
from planner.forecast.why.values import Subject, SubjectKind
from planner.planning.answers import Answers
from tests.desk.helpers import TODAY, nameless_controls

LEFT, NONE = Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier


@pytest.fixture
def place(window):
    window.resize(1280, 720)
    QTest.keyClick(window, Qt.Key.Key_4, Qt.KeyboardModifier.ControlModifier)
    return window.workspace.shelf.place("balance")


def test_that_it_opens_on_the_week_of_today(place, window):
    assert place.chart.week == window.workspace.outlook.week_of(TODAY)


def test_that_a_click_on_a_week_shows_that_week_beside_the_chart(place, window):
    chart = place.chart
    x = round(chart.x_of(9.5))
    QTest.mouseClick(chart.viewport(), LEFT, NONE, QPoint(x, round(chart.tops_px()[2]) + 5))
    assert chart.week == 9
    assert place.element.currentIndex() == 2
    monday = window.workspace.outlook.forecast.ruler.week_start(9)
    assert f"W{monday.isocalendar().week:02d}" in place.text.toPlainText()


def test_that_keys_go_from_week_to_week_and_from_element_to_element(place):
    chart = place.chart
    QTest.keyClick(chart, Qt.Key.Key_Home)
    QTest.keyClick(chart, Qt.Key.Key_Right)
    QTest.keyClick(chart, Qt.Key.Key_PageDown)
    assert chart.week == 5
    QTest.keyClick(chart, Qt.Key.Key_Down)
    assert place.element.currentIndex() == 1
    assert "Phosphorus" in chart.accessibleDescription()
    QTest.keyClick(chart, Qt.Key.Key_End)
    assert chart.week == len(place._weeks.verdicts) - 1


def test_that_the_table_says_what_the_forecast_says(place, window):
    place.element.setCurrentIndex(ELEMENTS.index("k"))
    place.as_table.click()
    loop = window.workspace.outlook.forecast.loops[0]
    verdicts = window.workspace.outlook.verdicts[loop.loop]
    rows = place.table.model_of_rows.rows
    assert [row.sort[2] for row in rows] == [week.supply_g[2] for week in verdicts]
    assert [row.sort[3] for row in rows] == [week.demand_g[2] for week in verdicts]


def test_that_a_row_of_the_table_chooses_its_week(place):
    place.as_table.click()
    place.table.selectRow(4)
    assert place.chart.week == 4


def test_that_low_and_high_come_after_asking_how_sure(place, qtbot):
    place.sure.click()
    assert place.sure.text() == "Stop"
    qtbot.waitUntil(lambda: place.sure.text() == "How sure?", timeout=60_000)
    course = place._weeks.elements[0]
    assert course.supply.low
    for low, likely, high in zip(course.supply.low, course.supply.likely, course.supply.high, strict=True):
        assert low <= likely + 1e-9
        assert likely <= high + 1e-9


def test_that_a_flagged_week_is_asked_for_repairs(place, qtbot):
    loop = place.loop_id
    from planner.desk.plan.remedy_list import flags_in

    weeks = [w for w in range(len(place._weeks.verdicts)) if flags_in(place._behind, loop, w)]
    place.chart._choose(weeks[0] if weeks else 3)
    qtbot.waitUntil(lambda: not place._later.isActive(), timeout=5_000)
    if weeks:
        assert place.remedies.is_working
    else:
        assert "Nothing" in place.remedies.state.text()


def test_that_every_control_has_a_spoken_name(place):
    assert nameless_controls(place) == []


def test_that_who_says_what_is_told_and_the_pick_rules_every_page(window):
    window.menus.actions["view.balance"].trigger()
    page = window.workspace.shelf.place("balance")
    assert "60 to 100" in page.rule.toolTip()
    assert "40 to 50" in page.rule.toolTip()
    behind = window.workspace._behind
    loop = behind.outlook.forecast.loops[0].loop
    before = first_figures(behind).carried[0].now_m2
    page.rule.setCurrentIndex(page.rule.findData("uvi"))
    page.rule.activated.emit(page.rule.currentIndex())
    assert window.conduct.session.farm.loops[0].area_rule is AreaRule.UVI
    behind = window.workspace._behind
    verdict = behind.outlook.verdicts[loop][behind.outlook.week_of(behind.today)]
    # 100 and 60 g a day for each square metre are the ends of the band of raft systems.
    by_rafts = (verdict.feed_g_per_day / 100, verdict.feed_g_per_day / 60)
    assert first_figures(behind).carried[0].now_m2 == pytest.approx(by_rafts)
    assert before == verdict.area_fed_m2
    assert window.memory.area_rule == "uvi"
    notes = [
        fact.note
        for section in week_page(behind, behind.today).sections
        for fact in section.facts
        if fact.note
    ]
    assert any(note.startswith("planted area this feed carries by UVI") for note in notes)
    window.conduct.undo()
    assert page.rule.currentData() == "fao"
    assert first_figures(window.workspace._behind).carried[0].now_m2 == before


def test_that_a_new_farm_goes_by_the_rule_that_was_picked_last(window, monkeypatch):
    begun = []
    asking = window.workspace.asking
    monkeypatch.setattr(asking, "_begin", begun.append)
    window.memory.put(settings.AREA_RULE, "uvi")
    asking._on_answered(an_answer())
    assert begun[0].area_rule is AreaRule.UVI


def an_answer():
    return Answers(
        name="New",
        place="",
        latitude_deg=None,
        tank_l=1000.0,
        species="tilapia",
        fish_count=1,
        mean_weight_g=20.0,
        beds=(),
        crops=(),
        plan_from=date(2027, 1, 4),
    )


def test_that_the_area_by_either_rule_can_be_asked_why(window):
    behind = window.workspace._behind
    loop = behind.outlook.forecast.loops[0].loop
    week = behind.outlook.week_of(behind.today)
    verdict = behind.outlook.verdicts[loop][week]
    for rule, part in ((AreaRule.FAO, ""), (AreaRule.UVI, "uvi")):
        found = behind.why(Subject(kind=SubjectKind.AREA_FED, about=loop, week=week, part=part))
        assert found.value == pytest.approx(verdict.area_fed_by(rule)[0])
