"""Sheets are typed in without a mouse: one act, doubts asked, refusals in words, nothing typed lost."""

from datetime import date, timedelta

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit

from planner.desk.records.sheets import Sheet
from planner.farm.changes import Change, ChangeSet
from planner.farm.fish import FishEventKind
from planner.farm.ids import id_from
from planner.farm.log import Happening, Unit
from planner.farm.meters import Meter, MeterKind
from planner.farm.water import Quantity

PEN = Meter(id=id_from("pen"), name="Pen", kind=MeterKind.PH_EC, factor=0.5)


@pytest.fixture
def page(window, farm):
    window.conduct.act(ChangeSet(title="meter", changes=(Change(after=PEN),)))
    window.menus.actions["view.records"].trigger()
    found = window.workspace.shelf.place("records")
    found.tabs.setCurrentWidget(found.catch_up)
    return found.catch_up


@pytest.fixture
def session(window):
    return window.conduct.session


def begin(page, sheet, days=4, every=1):
    page.sheet.setCurrentIndex(page.sheet.findData(sheet))
    last = page._behind.today
    first = last - timedelta(days=days - 1)
    page.last.setDate(QDate(last.year, last.month, last.day))
    page.first.setDate(QDate(first.year, first.month, first.day))
    page.every.setValue(every)
    page.begin.click()


def type_in(page, *texts):
    """Type texts into the boxes from the current one on, each confirmed by Enter; an empty one is passed."""
    for text in texts:
        if text:
            QTest.keyClicks(page.grid, text[:1])
            box = page.grid.viewport().findChildren(QLineEdit)[-1]
            QTest.keyClicks(box, text[1:])
            QTest.keyClick(box, Qt.Key.Key_Return)
        else:
            QTest.keyClick(page.grid, Qt.Key.Key_Return)


def logged(session, what):
    return [entry for entry in session.farm.log_entries if entry.what is what]


PH_LINE = ("710", "6.9", "24.5", "1.2", "", "0.5", "", "40", "", "", "120", "", "", "clear", "AB")


def test_that_a_month_of_water_tests_is_typed_by_keys_alone_and_kept_as_one_act(page, session):
    begin(page, Sheet.WATER, days=30)
    had, acts = len(session.farm.readings), len(session.history)
    assert page.grid.rowCount() == 30
    for _ in range(30):
        type_in(page, *PH_LINE)
    QTest.keyClick(page.grid, Qt.Key.Key_S, Qt.KeyboardModifier.ControlModifier)
    page.keep.click()
    assert len(session.history) == acts + 1
    assert len(session.farm.readings) == had + 30 * 6
    first = logged(session, Happening.MEASURED)[0]
    assert (first.at, first.who, first.notes, first.meter) == ("07:10", "AB", "clear", PEN.id)
    assert first.on == page._behind.today - timedelta(days=29)
    assert first.noted_at.endswith("Z")
    session.undo()
    assert session.farm.log_entries == ()
    assert len(session.farm.readings) == had


def test_that_enter_goes_from_box_to_box_and_on_to_the_next_line(page):
    begin(page, Sheet.WATER)
    grid = page.grid
    assert (grid.currentRow(), grid.currentColumn()) == (0, 1)
    type_in(page, *PH_LINE)
    assert (grid.currentRow(), grid.currentColumn()) == (1, 1)
    QTest.keyClick(grid, Qt.Key.Key_Backtab)
    assert (grid.currentRow(), grid.currentColumn()) == (1, 0)
    QTest.keyClick(grid, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert (grid.currentRow(), grid.currentColumn()) == (2, 1)


@pytest.mark.parametrize(
    ("boxes", "words"),
    [
        (("710", "6,x9"), "is no number"),
        (("25:10",), "is no time of day"),
        (("710", "69"), "69"),
        (("", "", "", "", "640"), "ppm need a meter"),
        (("", "", "", "", "", "", "", "", "", "", "", "40 X"), "grams and K or Ca"),
        (("", "", "", "", "", "", "", "", "", "", "", "", "9"), "Choose above which product"),
    ],
)
def test_that_a_wrong_box_is_named_and_nothing_is_lost(page, session, boxes, words):
    begin(page, Sheet.WATER)
    page.products["fe"].setCurrentIndex(0)
    page.meters[Quantity.TDS_MG_PER_L].setCurrentIndex(0)
    type_in(page, *boxes)
    before = page.grid.lines()
    page.keep.click()
    assert words in page.asks.text()
    assert "Line 1" in page.asks.text()
    assert page.grid.lines() == before
    assert session.farm.log_entries == ()


def test_that_a_doubtful_value_is_asked_about_once_and_then_kept(page, session):
    begin(page, Sheet.WATER, days=6)
    for value in ("6.9", "6.9", "6.8", "9.6", "6.9", "6.8"):
        type_in(page, "700", value)
        QTest.keyClick(page.grid, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    page.keep.click()
    assert "9.6" in page.asks.text()
    assert "stands alone" in page.asks.text()
    assert session.farm.log_entries == ()
    page.keep.click()
    assert [entry.amount for entry in logged(session, Happening.MEASURED)] == [6.9, 6.9, 6.8, 9.6, 6.9, 6.8]


def test_that_ions_are_turned_into_their_nitrogen(page, session):
    begin(page, Sheet.WATER)
    page.ions.setChecked(True)
    type_in(page, "", "", "", "", "", "", "", "44.3")
    page.keep.click()
    page.keep.click()
    (entry,) = logged(session, Happening.MEASURED)
    assert entry.quantity is Quantity.NITRATE_N_MG_PER_L
    assert entry.amount == pytest.approx(10.0, abs=0.02)


def test_that_a_feed_sheet_is_typed_with_scoops_left_overs_and_deaths(page, session):
    begin(page, Sheet.FEED)
    page.scoop.setValue(25.0)
    type_in(page, "4", "", "y", "2", "26", "1730", "windy")
    page.keep.click()
    page.keep.click()
    (fed,) = logged(session, Happening.FEED_GIVEN)
    assert (fed.amount, fed.unit, fed.at, fed.notes) == (100.0, Unit.G, "17:30", "windy")
    assert len(logged(session, Happening.LEFT_OVER)) == 1
    assert [event.count for event in session.farm.fish_events if event.kind is FishEventKind.DEATHS][-1] == 2
    assert logged(session, Happening.MEASURED)[0].quantity is Quantity.WATER_C


def test_that_a_task_sheet_has_the_tasks_that_were_printed(page, session):
    begin(page, Sheet.TASKS, days=30)
    lines = page.grid.lines()
    assert lines
    assert lines[0].text("task").split()[0] in ("Sow", "Move", "Pick", "Clear")
    type_in(page, "n")
    QTest.keyClick(page.grid, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    page.keep.click()
    (entry,) = logged(session, Happening.NOT_DONE)
    assert entry.batch == lines[0].task.batch


def test_that_a_harvest_record_takes_heads_or_kilograms(page, session, farm):
    begin(page, Sheet.HARVEST)
    grid, code = page.grid, farm.batches[0].code
    grid.item(0, 2).setText(code)
    grid.item(0, 3).setText("1.5 kg")
    grid.item(0, 6).setText("4")
    grid.item(0, 7).setText("y")
    found = page._read()
    assert [(e.what, e.amount, e.unit) for _row, e in found] == [(Happening.PICKED, 1.5, Unit.KG)]
    assert found[0][1].notes == "cold store 4 °C; hands and tools clean"
    grid.item(0, 2).setText("NOBODY")
    assert page._read() is None
    assert "NOBODY" in page.asks.text()


def test_that_nothing_typed_keeps_nothing(page, session):
    begin(page, Sheet.FEED)
    page.keep.click()
    assert "Nothing was typed" in page.asks.text()
    assert session.farm.log_entries == ()


def test_that_a_day_still_to_come_is_refused(page):
    begin(page, Sheet.FEED)
    tomorrow: date = page._behind.today + timedelta(days=1)
    page.grid.item(0, 0).setText(tomorrow.isoformat())
    page.grid.item(0, 2).setText("50")
    page.keep.click()
    assert "still to come" in page.asks.text()


def test_that_meters_and_products_are_folded_away_in_a_low_window_and_shown_by_a_button(qtbot, page):
    assert page.sheet.currentData() is Sheet.WATER
    boxes = (*page.meters.values(), *page.products.values())
    for shown in (False, True):
        page.more.setChecked(shown)
        assert {box.isVisibleTo(page) for box in boxes} == {shown}
    begin(page, Sheet.FEED)
    assert not page.more.isVisibleTo(page)
    assert not any(box.isVisibleTo(page) for box in boxes)
