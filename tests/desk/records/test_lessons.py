"""What the log taught is taken up by a press of the button for batches still to be sown, and undone."""

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
