"""Labels and traces are looked at in the window by keys and hand, and what is shown is what is written."""

import re
import subprocess

import pytest
from icalendar import Calendar
from PySide6.QtCore import QDate, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest

from planner.desk import printing, settings
from planner.desk.labels.wish import grid_of, grid_words
from planner.desk.phone import PhoneDialog
from planner.desk.printing import PreviewDialog
from planner.paper.ical_events import Role
from planner.paper.labels import LabelKind
from planner.paper.labels_grid import LabelGrid
from tests.desk.helpers import nameless_controls

GRID = LabelGrid(columns=2, rows=5, width_mm=85, height_mm=50, left_mm=20, top_mm=20, gap_x_mm=0, gap_y_mm=0)


@pytest.fixture(autouse=True)
def in_no_hurry(monkeypatch):
    """Let what is set beside the window be waited for, however busy the machine is."""
    monkeypatch.setattr(printing, "_AT_ONCE_MS", 60_000)


def opened(window, key):
    window.menus.actions[key].trigger()
    (dialog,) = window.findChildren(PreviewDialog)
    return dialog


def choose(combo, key):
    combo.setCurrentIndex(combo.findData(key))
    combo.activated.emit(combo.currentIndex())


def typed(box, text):
    box.setFocus()
    box.selectAll()
    QTest.keyClicks(box, text)
    QTest.keyClick(box, Qt.Key.Key_Tab)


def texts_of(path):
    return subprocess.run(
        ["pdftotext", "-layout", path, "-"], capture_output=True, text=True, check=True
    ).stdout


def test_that_keys_open_the_labels_of_the_coming_weeks(qtbot, window):
    dialog = opened(window, "paper.labels")
    assert window.menus.actions["paper.labels"].shortcut().toString() == "Ctrl+Shift+L"
    assert dialog.pages
    assert nameless_controls(dialog) == []


def test_that_a_chosen_batch_gets_its_own_labels(qtbot, window, tmp_path):
    batch = window.workspace.outlook.farm.batches[0]
    window.workspace.choose(batch.id)
    dialog = opened(window, "paper.labels")
    assert dialog.wishes.wish().codes == (batch.code,)
    with qtbot.waitSignal(dialog.printed):
        dialog.write_pdf(str(tmp_path / "one.pdf"))
    found = set(re.findall(r"[A-Z]{3}-\d\dW\d\d-[A-Z]+", texts_of(tmp_path / "one.pdf")))
    assert found == {batch.code}


def test_that_a_sheet_of_labels_is_typed_and_remembered(qtbot, window, tmp_path):
    form = opened(window, "paper.labels").wishes
    choose(form.what, LabelKind.RAFT)
    choose(form.sheet, "grid")
    for box, text in ((form.columns, "2"), (form.rows, "5"), (form.start, "4"), (form.right, "0.5")):
        typed(box, text)
    values = ("85", "50", "20", "20", "0", "0")
    for box, text in zip(form.lengths.values(), values, strict=True):
        typed(box, text)
    wish = form.wish()
    assert (wish.grid, wish.start, wish.shift_mm) == (GRID, 4, (0.5, 0.0))
    (dialog,) = window.findChildren(PreviewDialog)
    with qtbot.waitSignal(dialog.printed):
        dialog.write_pdf(str(tmp_path / "tags.pdf"))
    assert window.memory.get(settings.RAFT_SHEET) == "2x5 85x50 20x20 0x0"
    assert window.memory.get(settings.LABEL_SHIFT) == "0.5x0"
    assert window.memory.get(settings.TRAY_SHEET) == ""


def test_that_labels_beyond_the_paper_are_told_and_cannot_be_printed(qtbot, window):
    dialog = opened(window, "paper.labels")
    choose(dialog.wishes.sheet, "grid")
    typed(dialog.wishes.columns, "9")
    assert "columns" in dialog.count.text()
    assert "A4 ends at 210 mm" in dialog.count.text()
    assert not dialog.pdf.isEnabled()
    assert not dialog.print.isEnabled()
    typed(dialog.wishes.columns, "3")
    assert dialog.pdf.isEnabled()


def test_that_a_start_beyond_the_sheet_is_told(qtbot, window):
    dialog = opened(window, "paper.labels")
    typed(dialog.wishes.start, "999")
    assert "start: 999" in dialog.count.text()
    assert not dialog.pdf.isEnabled()


def test_that_the_calibration_page_is_shown_for_the_same_sheet(qtbot, window, tmp_path):
    dialog = opened(window, "paper.labels")
    choose(dialog.wishes.what, "calibration")
    assert len(dialog.pages) == 2
    with qtbot.waitSignal(dialog.printed):
        dialog.write_pdf(str(tmp_path / "set.pdf"))
    assert "100 mm" in texts_of(tmp_path / "set.pdf")


def test_that_weeks_without_sowing_are_told(qtbot, window):
    dialog = opened(window, "paper.labels")
    dialog.wishes.from_on.setDate(QDate(2035, 1, 1))
    assert "no label to print" in dialog.count.text()


def test_that_a_trace_begins_with_the_chosen_batch_and_leads_to_any_other(qtbot, window, tmp_path):
    first, second = window.workspace.outlook.farm.batches[:2]
    window.workspace.choose(first.id)
    dialog = opened(window, "paper.trace")
    assert dialog.wishes.wish().code == first.code
    assert nameless_controls(dialog) == []
    line = dialog.wishes.code.lineEdit()
    line.setFocus()
    line.selectAll()
    QTest.keyClicks(line, second.code.lower())
    QTest.keyClick(line, Qt.Key.Key_Return)
    with qtbot.waitSignal(dialog.printed):
        dialog.write_pdf(str(tmp_path / "trace.pdf"))
    assert second.code in texts_of(tmp_path / "trace.pdf")


def test_that_an_unknown_code_is_told(qtbot, window):
    dialog = opened(window, "paper.trace")
    line = dialog.wishes.code.lineEdit()
    line.selectAll()
    QTest.keyClicks(line, "ZZZ-99")
    line.editingFinished.emit()
    assert "ZZZ-99" in dialog.count.text()
    assert not dialog.pdf.isEnabled()


@pytest.mark.parametrize(
    "words", ["", "3x8", "3x8 60x30 0x0", "a b c d", "3x8 60x30 0x0 0x999", "0x1 1x1 1x1 1x1"]
)
def test_that_nonsense_in_the_settings_is_plain_paper(words):
    assert grid_of(words) is None


def phone(window):
    window.menus.actions["paper.phone"].trigger()
    return window.findChildren(PhoneDialog)[-1]


def test_that_a_calendar_is_written_for_a_role_and_a_second_writing_doubles_nothing(qtbot, window, tmp_path):
    target = tmp_path / "grower.ics"
    for at in range(2):
        dialog = phone(window)
        assert nameless_controls(dialog) == []
        choose(dialog.role, Role.GROWER)
        if at:
            QTest.keyClick(dialog.before, Qt.Key.Key_Up)
        dialog.write(str(target))
    events = Calendar.from_ical(target.read_bytes()).walk("VEVENT")
    assert len({event["uid"] for event in events}) == len(events) > 10
    assert {event["categories"].cats[0] for event in events} <= {"sow", "space", "move", "pick", "clear"}
    assert all(event["dtstart"].params["VALUE"] == "DATE" for event in events)
    assert all(event.walk("VALARM")[0]["trigger"].dt.days == -1 for event in events)
    assert "0 new" in window.messages.words
    assert "changed" in window.messages.words


def test_that_a_calendar_of_somebody_else_is_not_written_over(qtbot, window, tmp_path):
    target = tmp_path / "other.ics"
    target.write_text("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//X//Y\r\nEND:VCALENDAR\r\n")
    before = target.read_bytes()
    dialog = phone(window)
    dialog.write(str(target))
    assert "Choose another name" in dialog.said.text()
    assert target.read_bytes() == before
    dialog.write(str(tmp_path / "nowhere" / "a.ics"))
    assert "Choose another folder" in dialog.said.text()
    dialog.reject()


def test_that_the_week_is_copied_as_one_message(qtbot, window):
    window.menus.actions["paper.message"].trigger()
    text = QGuiApplication.clipboard().text()
    assert 0 < len(text) <= 160
    assert text in window.messages.words


def test_that_a_sheet_comes_back_from_its_text():
    assert grid_of(grid_words(GRID)) == GRID
