"""The due list says in words what the forecast says is due, week by week."""

import dataclasses
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt

from planner.actions.records import new_entry
from planner.desk.behind import Behind
from planner.desk.due import DueModel, DuePanel
from planner.desk.due_rows import due_rows, late_rows
from planner.desk.late import MOST_WEEKS, LateWorker
from planner.desk.outlook import look_out
from planner.desk.theme import LIGHT
from planner.desk.why.entered import answer_to
from planner.farm.log import Happening
from planner.forecast.week import due_in_week
from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.formulas import Formula
from tests.desk.helpers import TODAY, put_away


@pytest.fixture(scope="session")
def outlook(means, farm):
    return look_out(farm, means.forecaster)


@pytest.fixture
def panel(qtbot, outlook):
    panel = DuePanel(LIGHT, TODAY)
    panel.show_outlook(outlook)
    panel.show()
    yield panel
    put_away(panel)


def test_that_every_task_of_the_week_has_a_row_with_date_verb_and_place(outlook, farm):
    monday = outlook.forecast.ruler.week_start(6)
    tasks = due_in_week(farm, outlook.forecast, 6)
    rows = due_rows(outlook, monday)
    assert len(rows) == len(tasks) > 2
    assert [row.id for row in rows] == [task.about for task in tasks]
    sowing = next(row for row, task in zip(rows, tasks, strict=True) if task.kind.value == "sow")
    assert "12 Apr 2027" in sowing.spoken
    assert "Sow" in sowing.spoken
    assert "seeds" in sowing.spoken


def test_that_a_day_stands_over_its_first_task_only(outlook):
    rows = due_rows(outlook, outlook.forecast.ruler.week_start(6))
    days = [row.payload.day for row in rows if row.payload.day]
    assert len(days) == len(set(days))
    assert rows[0].payload.day


def test_that_a_week_outside_the_plan_is_said_to_be_so(panel, outlook):
    panel.show_week(outlook.forecast.ruler.start_on - timedelta(days=70))
    assert panel.list.isHidden()
    assert "outside the plan" in panel.nothing.text()


def test_that_the_buttons_walk_through_the_weeks(qtbot, panel):
    monday = panel.monday
    assert panel.heading.text() == "Due this week"
    qtbot.mouseClick(panel.after, Qt.MouseButton.LeftButton)
    assert panel.monday == monday + timedelta(days=7)
    assert panel.heading.text() == "Due in the week"
    assert panel.week.text().startswith("W11")
    qtbot.mouseClick(panel.before, Qt.MouseButton.LeftButton)
    assert panel.monday == monday


def test_that_a_click_on_a_task_chooses_what_it_is_about(qtbot, panel):
    chosen = []
    panel.chosen.connect(chosen.append)
    index = panel.model.index(0, 0)
    spot = panel.list.visualRect(index).center()
    qtbot.mouseClick(panel.list.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    assert chosen[-1] == panel.model.rows[0].id


def test_that_return_on_a_task_chooses_it_too(qtbot, panel):
    chosen = []
    panel.chosen.connect(chosen.append)
    panel.list.setCurrentIndex(panel.model.index(1, 0))
    qtbot.keyClick(panel.list, Qt.Key.Key_Return)
    assert chosen == [panel.model.rows[1].id]


def test_that_the_model_behaves(qtmodeltester, qtbot, outlook):
    model = DueModel()
    model.set_rows(due_rows(outlook, outlook.forecast.ruler.week_start(6)))
    qtmodeltester.check(model)


def test_that_the_panel_paints_in_both_looks(qtbot, panel):
    from planner.desk.theme import DARK

    light = panel.grab().toImage()
    panel.wear(DARK)
    assert panel.grab().toImage() != light


@pytest.fixture
def neglected(means, farm):
    """The sample farm of somebody who noted one thing and then did nothing."""
    first = min(batch.sow_on for batch in farm.batches)
    note = new_entry(what=Happening.NOTE, on=first)
    return look_out(dataclasses.replace(farm, log_entries=(note,)), means.forecaster)


def test_that_what_was_not_done_stands_above_the_running_week(qtbot, means, panel, neglected):
    panel.show_outlook(neglected)
    due = len(panel.model.rows)
    worker = LateWorker(panel)
    worker.told.connect(panel.show_late)
    with qtbot.waitSignal(worker.told, timeout=20_000):
        worker.start(neglected, means.forecaster, TODAY)
    late = panel.model.rows[: len(panel.model.rows) - due]
    assert late
    assert late[0].payload.day == "Carried over"
    assert all(" d late" in row.payload.main for row in late)
    assert all(" d late: " in row.spoken for row in late)
    assert any("short" in row.payload.where for row in late)
    panel.go_after()
    assert not any(" d late" in row.payload.main for row in panel.model.rows)


def test_that_a_farm_without_a_log_has_nothing_late(means, outlook, panel):
    told = []
    worker = LateWorker(panel)
    worker.told.connect(told.append)
    worker.start(outlook, means.forecaster, TODAY)
    assert told == [()]


def test_that_a_late_task_tells_what_falls_short(qtbot, means, panel, neglected):
    worker, told = LateWorker(panel), []
    worker.told.connect(told.append)
    with qtbot.waitSignal(worker.told, timeout=20_000):
        worker.start(neglected, means.forecaster, TODAY)
    behind = Behind(neglected, means.forecaster, TODAY)
    late = [one for one in told[0] if one.short]
    for one, row in zip(told[0], late_rows(neglected, told[0]), strict=True):
        found = answer_to(behind, row.asks[0])
        assert found.value == recomputed(found) == one.late_days
        shown = [child for child in found.children if child.formula is Formula.DIFFERENCE]
        assert [round(child.value) for child in shown] == [
            round(shift.plants) for shift in one.short[:MOST_WEEKS]
        ]
        for child in shown:
            assert recomputed(child) == pytest.approx(child.value)
            assert child.input("after").value > -1e-6
    assert late
