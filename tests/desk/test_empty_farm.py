"""Each page of an empty farm says why it is empty and has one button that leads on."""

from datetime import date

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QApplication

from planner.desk.forms.form import FormDialog
from planner.desk.places.lacking import lack_of
from planner.desk.places.listed import LISTED
from planner.desk.theme import DARK
from planner.farm.farm import Farm, Settings
from planner.farm.ids import new_id
from tests.desk.helpers import nameless_controls

EMPTY = Farm(settings=Settings(id=new_id(), name="Empty", plan_from=date(2027, 3, 8)))
COVERED = [listed.key for listed in LISTED if listed.key != "book"]


@pytest.fixture
def farm():
    return EMPTY


@pytest.fixture
def rooms(rooms, farm):
    rooms.farm = farm
    return rooms


def note_of(window, key):
    window.workspace.run(f"view.{key}")
    return window.workspace.shelf.notes[key]


@pytest.mark.parametrize("key", COVERED)
def test_that_a_page_says_why_it_is_empty_and_its_button_opens_a_form(window, qtbot, key):
    note = note_of(window, key)
    assert note.isVisible()
    assert note.title.text()
    assert note.words.text()
    assert nameless_controls(note) == []
    qtbot.mouseClick(note.begin, Qt.MouseButton.LeftButton)
    (form,) = window.findChildren(FormDialog)
    form.reject()


@pytest.mark.parametrize("key", [key for key in COVERED if key not in {"weeks", "batches"}])
def test_that_the_button_has_the_keyboard_and_nothing_below_the_note_can_be_reached(window, key):
    note = note_of(window, key)
    assert note.begin.hasFocus()
    page = window.workspace.shelf.place(key)
    assert not page.isEnabled()


def test_that_the_steps_lead_from_nothing_to_a_bed(window, qtbot):
    steps = []
    while (lack := lack_of("beds", window.workspace.outlook.farm)) is not None:
        steps.append(lack.run)
        qtbot.mouseClick(note_of(window, "beds").begin, Qt.MouseButton.LeftButton)
        (form,) = (each for each in window.findChildren(FormDialog) if each.isVisible())
        form.rows["name"].editor.show_value(lack.run)
        if lack.run == "new.loop":
            form.rows["water_l"].editor.show_value(1000)
        if lack.run == "new.bed":
            form.rows["rows"].editor.show_value(2)
            form.rows["columns"].editor.show_value(3)
            form.rows["area_m2"].editor.show_value(1.0)
        form.ok.click()
        assert not form.isVisible()
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        assert len(steps) < 5
    assert steps == ["new.site", "new.loop", "new.bed"]
    assert not window.workspace.shelf.notes["beds"].isVisible()
    assert window.workspace.shelf.place("beds").isEnabled()


def test_that_the_note_wears_the_dark(window):
    note = note_of(window, "water")
    window.workspace.wear(DARK)
    ink = note.title.palette().color(note.title.foregroundRole())
    assert ink == QColor(DARK.text)
