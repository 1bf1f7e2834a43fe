"""The print dialog shows the pages that are printed, and sends them to a file or a printer."""

import dataclasses
import re
import subprocess
from datetime import date
from pathlib import Path
from threading import Event

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QFileDialog

from planner.desk import printing, settings
from planner.desk.print_form import DocumentChoice, FormNeeds, PrintWish
from planner.desk.printing import MOST_SHOWN, PrintDialog, PrintNeeds
from planner.desk.theme import LIGHT
from planner.paper.errors import GivenUpError, PaperError
from planner.paper.registry import DOCUMENTS
from tests.desk.helpers import TODAY, nameless_controls, put_away

WISH = PrintWish(document="seeding-calendar", paper="A4", from_on=TODAY, weeks=8)


@dataclasses.dataclass
class FakeSheets:
    """A page for every four weeks; remembers what was written."""

    wish: PrintWish
    trouble: Exception | None = None
    written: list = dataclasses.field(default_factory=list)
    tidied: list = dataclasses.field(default_factory=list)
    endless: bool = False

    @property
    def count(self):
        return self.wish.weeks // 4

    def pictures(self, *, dpi, most):
        picture = QImage(120, 80, QImage.Format.Format_RGB32)
        picture.fill(QColor("white"))
        return (picture,) * min(self.count, most)

    def writing(self, path: Path):
        yield from self._going(path)

    def painting(self, device):
        yield from self._going(device)

    def _going(self, where):
        if self.trouble is not None:
            raise self.trouble
        try:
            yield 1
            while self.endless:
                yield 1
            self.written.append(where)
        finally:
            self.tidied.append(where)


@pytest.fixture(autouse=True)
def in_no_hurry(monkeypatch):
    """Let what is set beside the window be waited for, however busy the machine is."""
    monkeypatch.setattr(printing, "_AT_ONCE_MS", 60_000)


@pytest.fixture
def made():
    return []


@pytest.fixture
def dialog(qtbot, made, tmp_path):
    def make(wish, stopped):
        made.append(FakeSheets(wish))
        return made[-1]

    documents = tuple(
        DocumentChoice(key=key, title=key, says=f"for {key}", paper=paper, from_on=TODAY, weeks=weeks)
        for key, paper, weeks in (("seeding-calendar", "A4", 8), ("season-plan", "A3", 26))
    )
    form = FormNeeds(
        documents=documents,
        papers=("A4", "Letter", "A3"),
        languages=(("spanish", "Spanish"),),
        wish=WISH,
        most_weeks=520,
        today=TODAY,
    )
    needs = PrintNeeds(make=make, form=form, troubles=(PaperError, OSError), folder=tmp_path)
    dialog = PrintDialog(needs, LIGHT)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, on=False)
    dialog.show()
    yield dialog
    put_away(dialog)


def test_that_the_pages_of_the_wish_are_shown_at_once(dialog, made):
    assert made[-1].wish == WISH
    assert len(dialog.pages) == 2
    assert dialog.count.text().startswith("2 pages")


def test_that_fewer_weeks_show_fewer_pages(qtbot, dialog, made):
    line = dialog.form.weeks.editor.line
    line.selectAll()
    qtbot.keyClicks(line, "4")
    assert made[-1].wish.weeks == 4
    assert len(dialog.pages) == 1


@pytest.mark.parametrize(
    ("text", "said"), [("0", "1 to 520"), ("521", "1 to 520"), ("some", "some"), ("", "given")]
)
def test_that_wrong_weeks_are_named_and_nothing_can_be_printed(qtbot, dialog, made, text, said):
    before = len(made)
    dialog.form.weeks.editor.line.setText(text)
    dialog.show_pages()
    assert said in dialog.form.weeks.words
    assert not dialog.pdf.isEnabled()
    assert len(made) == before


def test_that_another_paper_and_week_are_asked_for(qtbot, dialog, made):
    dialog.form.paper.setCurrentText("A3")
    dialog.form.paper.activated.emit(2)
    assert made[-1].wish.paper == "A3"
    dialog.form.from_on.editor.show_value(date(2027, 4, 5))
    dialog.form.from_on.editor.touched.emit()
    assert made[-1].wish.from_on == date(2027, 4, 5)


def test_that_another_document_begins_with_its_own_paper_and_weeks(dialog, made):
    dialog.form.documents.setCurrentRow(1)
    assert made[-1].wish == dataclasses.replace(WISH, document="season-plan", paper="A3", weeks=26)
    assert dialog.form.says.text() == "for season-plan"


@pytest.mark.parametrize("name", ["large_type", "black_and_white", "ink_saving"])
def test_that_the_look_is_asked_for(dialog, made, name):
    getattr(dialog.form, name).setChecked(True)
    assert made[-1].wish == dataclasses.replace(WISH, **{name: True})


def test_that_a_second_language_is_asked_for_and_stays_with_another_document(dialog, made):
    dialog.form.second.setCurrentIndex(1)
    dialog.form.second.activated.emit(1)
    assert made[-1].wish == dataclasses.replace(WISH, second="spanish")
    dialog.form.documents.setCurrentRow(1)
    assert made[-1].wish.second == "spanish"


def test_that_of_very_many_pages_the_first_are_shown_and_all_are_counted(qtbot, dialog):
    dialog.form.weeks.editor.line.selectAll()
    qtbot.keyClicks(dialog.form.weeks.editor.line, "400")
    assert len(dialog.pages) == MOST_SHOWN
    assert "100 pages" in dialog.count.text()
    assert str(MOST_SHOWN) in dialog.count.text()


def test_that_a_file_is_written_and_told(qtbot, dialog, made, tmp_path):
    qtbot.mouseClick(dialog.pdf, Qt.MouseButton.LeftButton)
    (chooser,) = dialog.findChildren(QFileDialog)
    with qtbot.waitSignal(dialog.printed) as told:
        chooser.fileSelected.emit(str(tmp_path / "c.pdf"))
    assert made[-1].written == [tmp_path / "c.pdf"]
    assert "c.pdf" in told.args[1]
    chooser.reject()


def test_that_a_file_that_cannot_be_written_is_told_and_the_dialog_stays(qtbot, dialog, made, tmp_path):
    made[-1].trouble = PaperError("The folder is read-only.")
    dialog.write_pdf(str(tmp_path / "c.pdf"))
    qtbot.waitUntil(lambda: "read-only" in dialog.count.text())
    assert dialog.pdf.isEnabled()
    assert dialog.isVisible()


def test_that_pages_are_sent_to_the_printer_that_was_chosen(qtbot, dialog, made):
    dialog._printer = QPrinter()
    with qtbot.waitSignal(dialog.printed) as told:
        dialog.print_pages()
    assert made[-1].written == [dialog._printer]
    assert "sent to the printer" in told.args[1]


def test_that_a_printer_that_takes_no_page_is_told_with_what_to_do(qtbot, dialog, made):
    made[-1].trouble = PaperError("Page 2 was not taken.")
    dialog._printer = QPrinter()
    dialog.print_pages()
    qtbot.waitUntil(lambda: "Page 2 was not taken." in dialog.count.text())
    assert "save as PDF" in dialog.count.text()
    assert dialog.isVisible()


def test_that_a_file_is_written_page_by_page_and_stopped_without_a_trace(qtbot, dialog, made, tmp_path):
    made[-1].endless = True
    dialog.write_pdf(str(tmp_path / "c.pdf"))
    qtbot.waitUntil(dialog.working.isVisible)
    assert dialog.working.words.text() == "Writing the file…"
    assert (dialog.working.bar.value(), dialog.working.bar.maximum()) == (1, 2)
    assert not dialog.pdf.isEnabled()
    assert not dialog.form.isEnabled()
    qtbot.mouseClick(dialog.working.stop, Qt.MouseButton.LeftButton)
    assert made[-1].tidied == [tmp_path / "c.pdf"]
    assert made[-1].written == []
    assert dialog.count.text() == "Stopped: nothing was kept."
    assert dialog.pdf.isEnabled()
    assert dialog.form.isEnabled()


def test_that_closing_stops_what_is_being_printed(qtbot, dialog, made):
    made[-1].endless = True
    dialog._printer = QPrinter()
    dialog.print_pages()
    qtbot.waitUntil(dialog.working.isVisible)
    dialog.reject()
    assert made[-1].tidied == [dialog._printer]


def test_that_pages_which_take_long_to_set_are_waited_for_and_can_be_given_up(qtbot, dialog, monkeypatch):
    monkeypatch.setattr(printing, "_AT_ONCE_MS", 0)
    go_on, given_up = Event(), Event()

    def make(wish, stopped):
        while not go_on.wait(0.01):
            if stopped.is_set():
                given_up.set()
                raise GivenUpError
        return FakeSheets(wish)

    dialog._needs = dataclasses.replace(dialog._needs, make=make)
    dialog.show_pages()
    assert dialog.working.isVisible()
    assert not dialog.pdf.isEnabled()
    qtbot.mouseClick(dialog.working.stop, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(given_up.is_set)
    assert dialog.count.text().startswith("The pages are not set.")
    dialog.show_pages()
    go_on.set()
    qtbot.waitUntil(lambda: dialog.count.text().startswith("2 pages"))
    assert not dialog.working.isVisible()
    assert dialog.pdf.isEnabled()


def test_that_every_control_has_a_spoken_name(dialog):
    assert nameless_controls(dialog) == []


def test_that_the_real_calendar_becomes_a_pdf_from_the_menu(qtbot, window, tmp_path):
    window.menus.actions["farm.print"].trigger()
    (dialog,) = window.findChildren(PrintDialog)
    assert len(dialog.pages) >= 1
    target = tmp_path / "calendar.pdf"
    with qtbot.waitSignal(dialog.printed):
        dialog.write_pdf(str(target))
    assert target.read_bytes().startswith(b"%PDF")
    assert "calendar.pdf" in window.messages.words
    assert window.memory.get(settings.CALENDAR_WEEKS) == 8


def test_that_every_document_there_is_can_be_looked_at_in_the_window(qtbot, window):
    window.menus.actions["farm.print"].trigger()
    (dialog,) = window.findChildren(PrintDialog)
    listed = dialog.form.documents
    keys = [choice.key for choice in dialog.form._needs.documents]
    assert keys == [*(each.key for each in DOCUMENTS), "tray-labels", "raft-tags"]
    for row in range(listed.count()):
        listed.setCurrentRow(row)
        qtbot.waitUntil(lambda: dialog._sheets is not None)
        assert dialog.pages, listed.item(row).text()
        assert dialog.count.text().startswith(f"{dialog._sheets.count} page")
    dialog.reject()


@pytest.mark.parametrize("key", ["season-plan", "bed-map"])
def test_that_the_pages_shown_are_the_pages_in_the_file(qtbot, window, tmp_path, key):
    window.menus.actions["farm.print"].trigger()
    (dialog,) = window.findChildren(PrintDialog)
    dialog.form.documents.setCurrentRow([each.key for each in DOCUMENTS].index(key))
    qtbot.waitUntil(lambda: dialog._sheets is not None)
    sheets, shown = dialog._sheets, len(dialog.pages)
    with qtbot.waitSignal(dialog.printed):
        dialog.write_pdf(str(tmp_path / "sheet.pdf"))
    written = subprocess.run(
        ["pdfinfo", tmp_path / "sheet.pdf"], capture_output=True, text=True, check=True
    ).stdout
    assert int(re.search(r"Pages:\s+(\d+)", written).group(1)) == sheets.count >= shown
    assert sheets.title in written


def test_that_labels_of_weeks_without_sowing_are_told_and_nothing_is_written(window, tmp_path):
    window.menus.actions["farm.print"].trigger()
    (dialog,) = window.findChildren(PrintDialog)
    dialog.form.documents.setCurrentRow(dialog.form.documents.count() - 2)
    assert dialog.pages
    dialog.form.from_on.editor.show_value(date(2035, 1, 1))
    dialog.form.from_on.editor.touched.emit()
    assert "no label to print" in dialog.count.text()
    assert not dialog.pdf.isEnabled()
    dialog.reject()


@pytest.mark.parametrize(("spoken", "second"), [("es", "spanish"), ("fil", "filipino"), ("en", "")])
def test_that_sheets_begin_with_the_language_of_the_window_beside_the_english(window, spoken, second):
    window.memory.put(settings.LANGUAGE, spoken)
    window.menus.actions["farm.print"].trigger()
    (dialog,) = window.findChildren(PrintDialog)
    assert dialog.form.second.currentData() == second
    dialog.reject()
