"""What the log taught is taken up by a press of the button for batches still to be sown, and undone."""

import dataclasses
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from planner.actions import records
from planner.farm.log import Happening, Reason, Unit
from planner.planning.dating import Dater
from planner.planning.learning import learned, outcomes, reason_totals


@pytest.fixture
def session(window):
    return window.conduct.session


@pytest.fixture
def page(window, means, session):
    """The page, after four early batches of one crop came up two days late, one of them for the cold."""
    window.menus.actions["view.records"].trigger()
    found = window.workspace.shelf.place("records")
    crop = max({b.crop for b in session.farm.batches}, key=lambda key: _many(session.farm, key))
    for number, batch in enumerate([b for b in session.farm.batches if b.crop == crop][:4]):
        dater = Dater(means.forecaster, session.farm)
        on = batch.sow_on + timedelta(days=dater.lengths(batch)[0] + 2)
        entry = records.new_entry(
            what=Happening.GERMINATED,
            on=on,
            batch=batch.id,
            amount=4.0,
            unit=Unit.PLANTS,
            reason=Reason.COLD if number else Reason.LIGHT,
        )
        window.conduct.act(records.log(session.farm, entry, dater))
    return found


def _many(farm, crop):
    return sum(batch.crop == crop for batch in farm.batches)


def germination_row(page):
    return next(row for row in page.lessons.model_of_rows.rows if row.payload.field == "germination_days")


def test_that_the_button_takes_a_lesson_up_and_undo_takes_it_back(qtbot, window, page, session):
    page.tabs.setCurrentIndex(page.tabs.indexOf(page.accept.parentWidget()))
    row = germination_row(page)
    assert row.payload.estimate.n == 4
    page.lessons.choose(row.id)
    before = session.farm
    qtbot.mouseClick(page.accept, Qt.MouseButton.LeftButton)
    changed = [new for old, new in zip(before.batches, session.farm.batches, strict=True) if old != new]
    assert changed
    assert {batch.germination_days for batch in changed} == {float(round(row.payload.estimate.value))}
    assert all(batch.sow_on > page._behind.today for batch in changed)
    assert session.undo_title.startswith("Take up germination_days")
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert session.farm == before


def test_that_a_lesson_full_beds_have_no_room_for_is_told_by_name(qtbot, window, page, session):
    lesson = dataclasses.replace(germination_row(page).payload, field="bed_days")
    estimate = dataclasses.replace(lesson.estimate, value=300.0)
    told = []
    page.told.connect(told.append)
    page.troubled.connect(told.append)
    germination = germination_row(page)
    row = dataclasses.replace(germination, payload=dataclasses.replace(lesson, estimate=estimate))
    page.lessons.show_rows((row,))
    page.lessons.choose(row.id)
    before = session.farm
    qtbot.mouseClick(page.accept, Qt.MouseButton.LeftButton)
    taken = [new for old, new in zip(before.batches, session.farm.batches, strict=True) if old != new]
    assert all(batch.bed_days == 300 for batch in taken)
    (said,) = told
    assert said.startswith(f"Taken up by {len(taken)} of " if taken else "Nothing was taken up.")
    left = [batch.code for batch in session.farm.batches if batch.crop == lesson.crop and batch not in taken]
    assert any(f"would share places with others: {code}" in said for code in left)


def test_that_a_press_without_a_chosen_lesson_says_so(qtbot, page, session):
    told = []
    page.troubled.connect(told.append)
    page.lessons.clearSelection()
    page.lessons.setCurrentIndex(page.lessons.model().index(-1, -1))
    before = session.farm
    qtbot.mouseClick(page.accept, Qt.MouseButton.LeftButton)
    assert told
    assert session.farm is before


def test_that_totals_by_reason_stand_below_planned_against_actual(means, page, session):
    assert "cold: 3 stages, +6 d" in page.totals.text()
    assert "too little light: 1 stages, +2 d" in page.totals.text()
    found = outcomes(session.farm, Dater(means.forecaster, session.farm).lengths, page._behind.today)
    totals = reason_totals(found)
    assert [(one.reason, one.stages, one.days) for one in totals] == [
        (Reason.COLD, 3, 6),
        (Reason.LIGHT, 1, 2),
    ]


def test_that_stages_that_last_are_counted_as_unfinished(means, page, session):
    today = page._behind.today
    found = outcomes(session.farm, Dater(means.forecaster, session.farm).lengths, today)
    lessons = learned(session.farm, found, page._behind.outlook.catalogue)
    assert {one.field for one in lessons} >= {"germination_days"}
    assert all(one.estimate.n for one in lessons)
    waiting = [one for one in found if one.actual_days is None]
    assert len(waiting) == 4
    assert all(one.stage.value == "nursery" for one in waiting)
