"""The dialog that brings a table in: guesses, units that are asked for, faults listed, one step."""

from threading import Event

import pytest
from PySide6.QtCore import Qt
from shiboken6 import isValid

from planner.bootstrap_csv import TableIn
from planner.desk.csv_in import dialog as table_dialog
from planner.desk.csv_in.dialog import TableDialog
from planner.desk.csv_in.values import TableLook
from planner.desk.theme import LIGHT, ShadeChoice, theme_of
from planner.farm.changes import ChangeSet
from planner.store.csv_in.sheet import read_sheet
from tests.desk.helpers import put_away

GOOD = "Date,pH,Temp (°C)\n2027-01-05,6.8,24.5\n2027-01-06,6.9,24\n"
BAD = GOOD + "2027-01-07,19,24\nsoon,7,24\n"


@pytest.fixture(autouse=True)
def in_no_hurry(monkeypatch):
    """Let what is set beside the window be waited for, however busy the machine is."""
    monkeypatch.setattr(table_dialog, "_AT_ONCE_MS", 60_000)


@pytest.fixture
def shown(qtbot, means, session):
    made = []

    def show(text):
        table = TableIn(means, lambda: session.farm, read_sheet(text.encode()))
        acts = []

        def act(change_set):
            acts.append(change_set)
            session.act(change_set)
            return True

        dialog = TableDialog(table, act, theme_of(ShadeChoice.LIGHT))
        made.append(dialog)
        dialog.show()
        return dialog, acts

    yield show
    for dialog in made:
        if isValid(dialog):
            put_away(dialog)


def test_that_a_clear_table_comes_in_as_one_step(shown, session):
    before = session.farm
    dialog, acts = shown(GOOD)
    assert "4 would come in" in dialog.said.text()
    assert dialog.go.isEnabled()
    dialog.go.click()
    assert len(acts) == 1
    assert len(session.farm.readings) == len(before.readings) + 4
    session.undo()
    assert session.farm == before


def test_that_faults_are_listed_and_hold_everything_back_until_left_out(shown, session):
    dialog, acts = shown(BAD)
    assert [row.texts[:2] for row in dialog.model.rows] == [("4", "pH"), ("5", "Date")]
    assert not dialog.go.isEnabled()
    dialog.only_good.setChecked(True)
    assert dialog.go.isEnabled()
    dialog.go.click()
    assert len(acts[0].changes) == 4


def test_that_a_unit_in_doubt_is_asked_for(shown):
    dialog, _ = shown("Date,Temp\n2027-01-05,68.0\n")
    assert "has no unit" in dialog.said.text()
    assert not dialog.go.isEnabled()
    unit = dialog.columns[1].unit
    unit.setCurrentIndex(unit.findData("°F"))
    assert dialog.go.isEnabled()
    assert dialog.found.change_set.changes[0].after.value == pytest.approx(20)


def test_that_a_table_of_batches_is_known_as_one(shown, session):
    dialog, _ = shown("Crop,Sow on,Plants,Variety\nbasil,2027-05-03,4,=evil\n")
    assert dialog.what.currentData() == "batches"
    dialog.go.click()
    assert session.farm.batches[-1].variety == "=evil"


def test_that_every_control_has_a_spoken_name(shown):
    dialog, _ = shown(GOOD)
    assert all(column.role.accessibleName() and column.unit.accessibleName() for column in dialog.columns)
    assert dialog.faults.accessibleName()


class SlowTable:
    """A table whose rows are looked at only as far as the test lets them be."""

    headings = ("Date", "pH")
    rows = 1000
    loops = ("Loop",)

    def __init__(self):
        self.go_on, self.ended = Event(), Event()

    def choices(self, what):
        return ()

    def guessed(self, what):
        return {}

    def units_of(self, role):
        return ()

    def unit_said(self, heading, role):
        return ""

    def look_steps(self, wish):
        try:
            yield 500
            while not self.go_on.wait(0.01):
                yield 500
            yield TableLook(change_set=ChangeSet(title="Bring in", changes=()), count=7)
        finally:
            self.ended.set()


@pytest.fixture
def slow(qtbot, monkeypatch):
    monkeypatch.setattr(table_dialog, "_AT_ONCE_MS", 0)
    table, acts = SlowTable(), []
    dialog = TableDialog(table, lambda change_set: acts.append(change_set) or True, LIGHT)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, on=False)
    dialog.show()
    yield dialog, table, acts
    put_away(dialog)


def test_that_a_large_table_shows_how_far_it_is_and_can_be_brought_in_at_the_end(qtbot, slow):
    dialog, table, acts = slow
    assert dialog.working.isVisible()
    qtbot.waitUntil(lambda: dialog.working.bar.value() == 500)
    assert dialog.working.bar.maximum() == 1000
    assert not dialog.go.isEnabled()
    table.go_on.set()
    qtbot.waitUntil(dialog.go.isEnabled)
    assert not dialog.working.isVisible()
    dialog.go.click()
    assert len(acts) == 1


def test_that_looking_at_a_large_table_can_be_stopped_and_begun_again(qtbot, slow):
    dialog, table, acts = slow
    dialog.working.stop.click()
    qtbot.waitUntil(table.ended.is_set)
    assert "not looked at to the end" in dialog.said.text()
    assert not dialog.go.isEnabled()
    table.go_on.set()
    dialog.decimal.setCurrentIndex(1)
    qtbot.waitUntil(dialog.go.isEnabled)
    assert acts == []


def test_that_closing_the_dialog_stops_looking(qtbot, slow):
    dialog, table, acts = slow
    dialog.reject()
    qtbot.waitUntil(table.ended.is_set)
    assert acts == []
