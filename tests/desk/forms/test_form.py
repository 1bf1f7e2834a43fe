"""Forms ask for what the values declare, say what is wrong beside the field, and lose nothing."""

from datetime import date

import pytest
from PySide6.QtCore import Qt

from planner.desk.book import BookShelf
from planner.desk.forms.editors import DayEditor, ListEditor
from planner.desk.forms.form import FormDialog
from planner.desk.forms.plans import FORM_WORDS, form_plan, start_new, start_of
from planner.desk.theme import LIGHT
from planner.farm.farm import kind_named
from planner.farm.fields import specs_of
from tests.desk.helpers import TODAY, nameless_controls, put_away


@pytest.fixture
def shelf(means):
    return BookShelf(means.catalogue)


@pytest.fixture
def form(qtbot, farm, shelf):
    made = []

    def make(word, thing=None):
        plan = form_plan(word, new=thing is None)
        start = start_of(thing, farm, shelf, TODAY) if thing else start_new(word, farm, shelf, TODAY)
        dialog = FormDialog(plan, start, LIGHT)
        made.append(dialog)
        with qtbot.waitActive(dialog):
            dialog.show()
            dialog.activateWindow()
        return dialog

    yield make
    for dialog in made:
        put_away(dialog)


@pytest.mark.parametrize("word", FORM_WORDS)
def test_that_a_form_asks_for_every_field_a_kind_declares_but_its_id(form, word):
    dialog = form(word)
    assert set(dialog.rows) == set(specs_of(kind_named(word).owner)) - {"id"}


@pytest.mark.parametrize("word", FORM_WORDS)
def test_that_every_field_has_a_spoken_name_and_a_buddy(form, word):
    dialog = form(word)
    assert nameless_controls(dialog) == []
    for row in dialog.rows.values():
        assert row._label.buddy() is row.editor.focusProxy()


def test_that_limits_and_units_stand_at_the_field(form):
    row = form("batch").rows["bed_days"]
    assert row._label.text() == "Days in the bed until the first pick [d]"
    assert row.words == "1 to 400 d"


def test_that_a_wrong_number_is_named_with_value_and_limit_and_stays_in_its_field(qtbot, form):
    dialog = form("batch")
    offered = []
    dialog.offered.connect(offered.append)
    line = dialog.rows["bed_days"].editor.line
    qtbot.keyClicks(line, "9999")
    dialog.rows["plants"].editor.line.setText("12")
    dialog.rows["code"].editor.line.setText("NEW-1")
    qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    assert offered == []
    assert "9999" in dialog.rows["bed_days"].words
    assert "1 to 400 d" in dialog.rows["bed_days"].words
    assert line.text() == "9999"
    assert dialog.rows["plants"].editor.line.text() == "12"
    assert line.hasFocus()


def test_that_several_faults_are_shown_at_once_each_beside_its_field(qtbot, form):
    dialog = form("fish group")
    dialog.rows["name"].editor.line.clear()
    dialog.rows["count"].editor.line.setText("many")
    dialog.rows["mean_weight_g"].editor.line.setText("")
    qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    assert "many" in dialog.rows["count"].words
    assert "must be given" in dialog.rows["mean_weight_g"].words
    assert dialog.isVisible()


def test_that_an_error_goes_away_once_the_field_is_touched(qtbot, form):
    dialog = form("tank")
    qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    row = dialog.rows["volume_l"]
    assert row.words.startswith("⚠")
    qtbot.keyClicks(row.editor.line, "5")
    assert not row.words.startswith("⚠")


def test_that_a_finished_form_offers_the_value(qtbot, form, farm):
    dialog = form("tank")
    offered = []
    dialog.offered.connect(offered.append)
    qtbot.keyClicks(dialog.rows["name"].editor.line, "Second tank")
    qtbot.keyClicks(dialog.rows["volume_l"].editor.line, "800")
    qtbot.keyClick(dialog, Qt.Key.Key_Return)
    (tank,) = offered
    assert (tank.name, tank.volume_l, tank.loop) == ("Second tank", 800, farm.loops[0].id)


def test_that_a_thing_offered_untouched_is_the_same_thing(qtbot, form, farm):
    for word, thing in (
        ("batch", farm.batches[0]),
        ("fish group", farm.fish_groups[0]),
        ("bed", farm.beds[0]),
        ("loop", farm.loops[0]),
        ("site", farm.sites[0]),
        ("settings", farm.settings),
    ):
        dialog = form(word, thing)
        offered = []
        dialog.offered.connect(offered.append)
        qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
        assert offered == [thing]


def test_that_a_crop_is_chosen_by_name_with_source_and_confidence_shown(form, means):
    row = form("batch").rows["crop"]
    assert isinstance(row.editor, ListEditor)
    assert row.editor.box.count() == len(means.catalogue.crops)
    assert "read in the source" in row.words or "common practice" in row.words or "memory" in row.words


def test_that_a_date_shows_its_weekday_and_week(qtbot, form):
    editor = form("batch").rows["sow_on"].editor
    assert isinstance(editor, DayEditor)
    assert editor.line.text() == "Wed 10 Mar 2027"
    assert editor.note() == "W10 2027"
    editor.setFocus()
    editor.line.clear()
    qtbot.keyClicks(editor.line, "w14")
    qtbot.keyClick(editor.line, Qt.Key.Key_Tab)
    assert editor.line.text() == "Mon 5 Apr 2027"


@pytest.mark.qt_log_ignore("^This plugin does not support grabbing the keyboard")
def test_that_a_day_can_be_chosen_from_the_month(qtbot, form):
    editor = form("batch").rows["sow_on"].editor
    qtbot.mouseClick(editor.button, Qt.MouseButton.LeftButton)
    assert editor.months.isVisible()
    editor.months.clicked.emit(editor.months.selectedDate().addDays(2))
    assert not editor.months.isVisible()
    assert editor.read() == date(2027, 3, 12)


def test_that_the_wheel_over_a_list_changes_nothing_unless_it_has_the_keyboard(form):
    dialog = form("batch")
    box = dialog.rows["crop"].editor.box
    dialog.rows["notes"].editor.setFocus()
    before = box.currentIndex()
    _turn_wheel(box)
    assert box.currentIndex() == before


def _turn_wheel(widget):
    from PySide6.QtCore import QPoint, QPointF
    from PySide6.QtGui import QWheelEvent
    from PySide6.QtWidgets import QApplication

    middle = QPointF(widget.rect().center())
    event = QWheelEvent(
        middle,
        widget.mapToGlobal(middle),
        QPoint(0, 0),
        QPoint(0, -120),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(widget, event)


def test_that_the_form_for_a_batch_fits_a_small_screen_by_scrolling(form):
    dialog = form("batch")
    assert dialog.minimumSizeHint().height() <= 720
    assert dialog.minimumSizeHint().width() <= 1280
