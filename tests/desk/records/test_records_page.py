"""The page of records: logged by keyboard, corrected without erasing, refused with nothing lost."""

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtTest import QTest

from planner.farm.changes import Change, ChangeSet
from planner.farm.crops import SeedLot
from planner.farm.ids import new_id
from planner.farm.log import Happening, Reason, standing
from planner.farm.meters import Meter, MeterKind
from planner.farm.water import Quantity


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


def test_that_the_keyboard_goes_through_the_boxes_as_they_stand(page):
    line = page.line
    choose(line.what, Happening.SOWN)
    line.what.setFocus()
    passed = [line.what]
    while passed[-1] is not line.again:
        QTest.keyClick(passed[-1], Qt.Key.Key_Tab)
        passed.append(page.focusWidget())
        assert len(passed) < 20
    seen = (line.what, line.about, line.amount, line.unit, line.reason, line.who, line.notes)
    assert passed == [*seen, line.save, line.again]


def test_that_words_with_a_blank_are_typed_into_a_box(page):
    line = page.line
    line.what.setFocus()
    QTest.keyClicks(line.what, "fish t")
    assert line.what.currentData() is Happening.FISH_TAKEN
    assert not line.what.view().isVisible()


@pytest.mark.parametrize(("key", "goes_to"), [(Qt.Key.Key_Tab, "about"), (Qt.Key.Key_Backtab, "at")])
def test_that_tab_takes_what_is_marked_in_an_open_list_and_goes_on(page, key, goes_to):
    line = page.line
    line.what.setFocus()
    opened = line.what.view()  # as it is; shown, it would warn on a platform without windows
    opened.setCurrentIndex(line.what.model().index(line.what.findData(Happening.GERMINATED), 0))
    QTest.keyClick(opened, key)
    assert line.what.currentData() is Happening.GERMINATED
    assert page.focusWidget() is getattr(line, goes_to)


def test_that_the_sheet_has_the_keyboard_once_it_is_opened(page):
    page.line.what.setFocus()
    page.tabs.setCurrentWidget(page.catch_up)
    assert page.focusWidget() is page.catch_up.grid


def test_that_walking_along_the_tabs_by_keyboard_goes_past_the_sheet(page):
    bar = page.tabs.tabBar()
    bar.setFocus()
    QTest.keyClick(bar, Qt.Key.Key_Right)
    QTest.keyClick(bar, Qt.Key.Key_Right)
    assert page.tabs.tabText(page.tabs.currentIndex()) == "Late"


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


def test_that_columns_widen_for_an_entry_that_is_longer_than_those_before(page):
    choose(page.line.what, Happening.SOWN)
    typed(page, 4)
    model = page.entries.model()
    titles = [model.headerData(at, Qt.Orientation.Horizontal) for at in range(model.columnCount())]
    note = titles.index("Note")
    before = page.entries.columnWidth(note)
    page.line.notes.setText("the tray by the door")
    page.line.save.click()
    assert page.entries.columnWidth(note) > before
    assert page.entries.columnWidth(note) >= page.entries.sizeHintForColumn(note)


def test_that_a_reason_does_not_stay_for_the_next_entry(window, page):
    choose(page.line.what, Happening.CULLED)
    choose(page.line.reason, Reason.PEST)
    typed(page, 1)
    typed(page, 2)
    assert [entry.reason for entry in log_of(window)] == [Reason.PEST, Reason.NONE]


def test_that_with_an_empty_log_the_repeat_says_so(page):
    told = []
    page.troubled.connect(told.append)
    page.line.again.click()
    assert told == ["Nothing is logged yet, so there is nothing to repeat."]


def test_that_a_correction_once_begun_can_be_left(window, page):
    choose(page.line.what, Happening.SOWN)
    typed(page, 40)
    assert page.leave_it.isHidden()
    page.entries.choose(log_of(window)[0].id)
    page.correct.click()
    assert not page.leave_it.isHidden()
    page.leave_it.click()
    assert page.leave_it.isHidden()
    typed(page, 7)
    assert [entry.corrects for entry in log_of(window)] == ["", ""]
    assert [entry.amount for entry in log_of(window)] == [40, 7]


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


@pytest.mark.parametrize(
    ("what", "words"),
    [
        (Happening.TREATED, "separate tank"),
        (Happening.RELEASED, "veterinarian"),
        (Happening.PICKED, "eaten"),
        (Happening.RETURNED, "manure"),
        (Happening.NOTE, ""),
    ],
)
def test_that_a_caution_stands_where_the_thing_is_logged(page, what, words):
    choose(page.line.what, what)
    assert words in page.line.care.text()
    assert bool(page.line.care.text()) is bool(words)


def test_that_only_the_boxes_that_an_entry_needs_are_shown(page):
    boxes = {"supplement": page.line.supplement, "meter": page.line.meter, "out_of": page.line.out_of}
    for what, shown in (
        (Happening.MEASURED, {"meter"}),
        (Happening.DOSED, {"supplement"}),
        (Happening.SEED_TESTED, {"out_of"}),
        (Happening.PICKED, set()),
    ):
        choose(page.line.what, what)
        assert {name for name, box in boxes.items() if not box.isHidden()} == shown


def test_that_a_reading_and_a_time_are_logged(window, page, farm):
    choose(page.line.what, Happening.MEASURED)
    choose(page.line.quantity, Quantity.PH)
    page.line.at.setText("6:50")
    page.line.who.setText("AB")
    typed(page, 6.9)
    (entry,) = log_of(window)
    assert (entry.at, entry.who, entry.quantity, entry.amount) == ("06:50", "AB", Quantity.PH, 6.9)
    assert window.conduct.session.farm.readings[-1].value == 6.9
    page.line.at.setText("noon")
    told = []
    window.conduct.troubled.connect(told.append)
    choose(page.line.what, Happening.NOTE)
    page.line.save.click()
    assert "07:30" in told[0]
    assert len(log_of(window)) == 1


def test_that_lots_and_meters_are_listed_with_what_is_known_of_them(window, page, farm):
    lot = SeedLot(id=new_id(), code="LOT-P", crop=farm.batches[0].crop, primed=True, supplier="Shop")
    pen = Meter(id=new_id(), name="Pen", kind=MeterKind.PH, calibrate_every_days=30)
    window.conduct.act(ChangeSet(title="both", changes=(Change(after=lot), Change(after=pen))))
    (lot_row,) = (row for row in page.lots.model_of_rows.rows if row.id == lot.id)
    (pen_row,) = page.meters.model_of_rows.rows
    assert "Primed seed keeps less long" in lot_row.texts[-1]
    assert pen_row.texts[-1] == "never calibrated: what it reads is doubtful"
    choose(page.line.what, Happening.CALIBRATED)
    choose(page.line.about, ("meter", pen.id))
    today = page._behind.today
    page.line.on.setDate(QDate(today.year, today.month, today.day))
    page.line.save.click()
    (pen_row,) = page.meters.model_of_rows.rows
    assert pen_row.texts[-1] == "due in 30 d"
