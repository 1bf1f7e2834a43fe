"""The words of the trade are explained on hover and by a key, out of one table."""

import pytest
from PySide6.QtCore import QEvent, QPoint, Qt
from PySide6.QtGui import QHelpEvent
from PySide6.QtWidgets import QApplication, QLabel, QToolTip

from planner.desk.help import GlossaryDialog
from planner.desk.rows import Column, RowsModel
from planner.desk.term_tips import text_of
from planner.desk.terms import meaning_of, terms, terms_in
from tests.desk.helpers import put_away


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("Feed-rate ratio", ["Feed-rate ratio"]),
        ("Total ammonia nitrogen", ["Ammonia (TAN)"]),
        ("un-ionised ammonia", ["Un-ionised ammonia"]),
        ("Batches by bed", ["Batch", "Bed"]),
        ("EC and pH", ["Conductivity (EC)", "pH"]),
        ("second specimen, catches, bedroom", []),
        ("", []),
    ],
)
def test_that_whole_words_are_found_the_longest_first_and_capitals_only_as_such(text, words):
    assert [term.word for term in terms_in(text)] == words


def test_that_every_word_is_there_once_with_a_meaning():
    words = [term.word.casefold() for term in terms()]
    assert len(set(words)) == len(words) > 50
    assert all(term.meaning.endswith(".") for term in terms())


def test_that_a_heading_of_a_table_shows_and_speaks_what_it_means(qtmodeltester):
    model = RowsModel((Column(title="Feed-rate ratio [g/m²/d]"), Column(title="Note")))
    across = Qt.Orientation.Horizontal
    for role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleDescriptionRole):
        assert "square metre" in model.headerData(0, across, role)
        assert model.headerData(1, across, role) is None


def test_that_resting_on_a_label_shows_what_its_words_mean(window, qtbot):
    qtbot.waitUntil(lambda: "tips" in vars(window))  # a moment after the farm is there
    label = QLabel("Limiting element", window)
    label.setGeometry(300, 300, 200, 30)
    label.show()
    label.raise_()
    middle = label.mapToGlobal(QPoint(10, 10))
    if QApplication.widgetAt(middle) is not label:
        pytest.fail("the label is not where it was put")
    QApplication.sendEvent(label, QHelpEvent(QEvent.Type.ToolTip, QPoint(10, 10), middle))
    qtbot.waitUntil(lambda: "least is supplied" in QToolTip.text())
    QToolTip.hideText()


def test_that_a_key_tells_the_words_of_what_has_the_keyboard(window, qtbot):
    window.menus.actions["view.water"].trigger()
    table = window.workspace.shelf.place("water").tab.doses.table
    table.setFocus()
    assert "Dose: " in window.tips.tell()
    QToolTip.hideText()
    assert window.menus.actions["help.meaning"].shortcut().toString() == "Shift+F1"


def test_that_a_table_tells_of_the_row_it_stands_on(window):
    window.menus.actions["view.book"].trigger()
    page = window.workspace.shelf.place("book")
    page.figures.choose("bed_density_per_m2")
    assert meaning_of(text_of(page.figures))


def test_that_the_glossary_of_the_window_is_the_same_table(window):
    window.menus.actions["help.glossary"].trigger()
    (dialog,) = window.findChildren(GlossaryDialog)
    assert [row.texts for row in dialog.model.rows] == [(term.word, term.meaning) for term in terms()]
    put_away(dialog)
