"""The print dialog shows the pages that are printed, and sends them to a file or a printer."""

import dataclasses
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtPrintSupport import QPrinter
from PySide6.QtWidgets import QFileDialog

from planner.desk import settings
from planner.desk.printing import PrintDialog, PrintNeeds, PrintWish
from planner.desk.theme import LIGHT
from planner.paper.errors import PaperError
from tests.desk.helpers import TODAY, nameless_controls, put_away


@dataclasses.dataclass
class FakeSheets:
    """Two pages of one colour; remembers what was written."""

    wish: PrintWish
    trouble: Exception | None = None
    written: list = dataclasses.field(default_factory=list)

    def pictures(self, *, dpi):
        picture = QImage(120, 80, QImage.Format.Format_RGB32)
        picture.fill(QColor("white"))
        return (picture,) * (2 if self.wish.weeks > 4 else 1)

    def write_pdf(self, path: Path):
        if self.trouble is not None:
            raise self.trouble
        self.written.append(path)
        return 2

    def paint(self, device):
        if self.trouble is not None:
            raise self.trouble
        self.written.append(device)
        return 2


@pytest.fixture
def made():
    return []


@pytest.fixture
def dialog(qtbot, made, tmp_path):
    def make(wish):
        made.append(FakeSheets(wish))
        return made[-1]

    needs = PrintNeeds(
        make=make,
        papers=("A4", "Letter", "A3"),
        wish=PrintWish(paper="A4", from_on=TODAY, weeks=8),
        most_weeks=520,
        troubles=(PaperError, OSError),
        today=TODAY,
        folder=tmp_path,
        file_name="calendar.pdf",
    )
    dialog = PrintDialog(needs, LIGHT)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, on=False)
    dialog.show()
    yield dialog
    put_away(dialog)


def test_that_the_pages_of_the_wish_are_shown_at_once(dialog, made):
    assert made[-1].wish == PrintWish(paper="A4", from_on=TODAY, weeks=8)
    assert len(dialog.pages) == 2
    assert dialog.count.text().startswith("2 pages")


def test_that_fewer_weeks_show_fewer_pages(qtbot, dialog, made):
    line = dialog.weeks.editor.line
    line.selectAll()
    qtbot.keyClicks(line, "3")
    assert made[-1].wish.weeks == 3
    assert len(dialog.pages) == 1


@pytest.mark.parametrize(
    ("text", "said"), [("0", "1 to 520"), ("521", "1 to 520"), ("some", "some"), ("", "given")]
)
def test_that_wrong_weeks_are_named_and_nothing_can_be_printed(qtbot, dialog, made, text, said):
    before = len(made)
    dialog.weeks.editor.line.setText(text)
    dialog.show_pages()
    assert said in dialog.weeks.words
    assert not dialog.pdf.isEnabled()
    assert len(made) == before


def test_that_another_paper_and_week_are_asked_for(qtbot, dialog, made):
    dialog.paper.setCurrentText("A3")
    dialog.paper.activated.emit(2)
    assert made[-1].wish.paper == "A3"
    dialog.from_on.editor.show_value(date(2027, 4, 5))
    dialog.from_on.editor.touched.emit()
    assert made[-1].wish.from_on == date(2027, 4, 5)


def test_that_a_file_is_written_and_told(qtbot, dialog, made, tmp_path):
    qtbot.mouseClick(dialog.pdf, Qt.MouseButton.LeftButton)
    (chooser,) = dialog.findChildren(QFileDialog)
    with qtbot.waitSignal(dialog.printed) as told:
        chooser.fileSelected.emit(str(tmp_path / "c.pdf"))
    assert made[-1].written == [tmp_path / "c.pdf"]
    assert "c.pdf" in told.args[1]
    chooser.reject()


def test_that_a_file_that_cannot_be_written_is_told_and_the_dialog_stays(dialog, made, tmp_path):
    made[-1].trouble = PaperError("The folder is read-only.")
    dialog.write_pdf(str(tmp_path / "c.pdf"))
    assert "read-only" in dialog.count.text()
    assert dialog.isVisible()


def test_that_pages_are_sent_to_the_printer_that_was_chosen(qtbot, dialog, made):
    dialog._printer = QPrinter()
    with qtbot.waitSignal(dialog.printed) as told:
        dialog.print_pages()
    assert made[-1].written == [dialog._printer]
    assert "sent to the printer" in told.args[1]


def test_that_a_printer_that_takes_no_page_is_told_with_what_to_do(dialog, made):
    made[-1].trouble = PaperError("Page 2 was not taken.")
    dialog._printer = QPrinter()
    dialog.print_pages()
    assert "Page 2 was not taken." in dialog.count.text()
    assert "save as PDF" in dialog.count.text()
    assert dialog.isVisible()


def test_that_every_control_has_a_spoken_name(dialog):
    assert nameless_controls(dialog) == []


def test_that_the_real_calendar_becomes_a_pdf_from_the_menu(qtbot, window, tmp_path):
    window.menus.actions["farm.print"].trigger()
    (dialog,) = window.findChildren(PrintDialog)
    assert len(dialog.pages) >= 1
    target = tmp_path / "calendar.pdf"
    dialog.write_pdf(str(target))
    assert target.read_bytes().startswith(b"%PDF")
    assert "calendar.pdf" in window.messages.words
    assert window.memory.get(settings.CALENDAR_WEEKS) == 8
