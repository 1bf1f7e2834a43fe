"""The page of records: logged by keyboard, corrected without erasing, refused with nothing lost."""

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtTest import QTest

from planner.farm.log import Happening, standing


@pytest.fixture
def page(window, farm):
    window.menus.actions["view.records"].trigger()
    found = window.workspace.shelf.place("records")
    sown = farm.batches[0].sow_on
    found.line.on.setDate(QDate(sown.year, sown.month, sown.day))
    return found


def log_of(window):
    return window.conduct.session.farm.log_entries


def choose(box, data):
    box.setCurrentIndex(next(at for at in range(box.count()) if box.itemData(at) == data))


def typed(page, amount):
    page.line.amount.setValue(page.line.amount.minimum() if amount is None else amount)
    page.line.notes.setFocus()
    QTest.keyClicks(page.line.notes, "as seen")
    QTest.keyClick(page.line.notes, Qt.Key.Key_Return)


def test_that_what_is_typed_is_logged_and_listed(window, page):
    choose(page.line.what, Happening.SOWN)
    typed(page, 40)
    (entry,) = log_of(window)
    assert (entry.what, entry.amount, entry.notes) == (Happening.SOWN, 40, "as seen")
    assert entry.batch == page.line.about.currentData()[1]
    assert len(page.entries.model_of_rows.rows) == 1
    assert page.line.notes.text() == ""


def test_that_a_refused_entry_keeps_what_was_typed(window, page):
    told = []
    page.troubled.connect(told.append)
    choose(page.line.what, Happening.PICKED)
    typed(page, None)
    assert log_of(window) == ()
    assert told
    assert page.line.notes.text() == "as seen"


def test_that_the_last_entry_is_repeated(window, page):
    choose(page.line.what, Happening.SOWN)
    typed(page, 40)
    page.line.again.click()
    assert page.line.amount.value() == 40
    assert page.line.notes.text() == "as seen"
    page.line.save.click()
    assert [entry.amount for entry in log_of(window)] == [40, 40]


def test_that_a_correction_is_listed_beside_what_it_replaces(window, page):
    choose(page.line.what, Happening.SOWN)
    typed(page, 40)
    wrong = log_of(window)[0]
    page.entries.choose(wrong.id)
    page.correct.click()
    page.line.amount.setValue(44)
    page.line.save.click()
    assert [entry.amount for entry in standing(log_of(window))] == [44]
    states = {row.id: row.texts[-1] for row in page.entries.model_of_rows.rows}
    assert states[wrong.id] == f"replaced by {log_of(window)[1].code}"
    page.entries.choose(log_of(window)[1].id)
    page.withdraw.click()
    assert standing(log_of(window)) == ()
    assert len(log_of(window)) == 3
