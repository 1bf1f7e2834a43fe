"""Search finds things, crops, weeks, entries and words, the best first, and goes there by Enter."""

import pytest
from PySide6.QtCore import Qt

from planner.desk.help import GlossaryDialog
from planner.desk.outlook import look_out
from planner.desk.search.dialog import SearchDialog
from planner.desk.search.index import Find, Index, Target, index_of
from tests.desk.helpers import TODAY, nameless_controls


@pytest.fixture
def index(means, farm):
    return index_of(look_out(farm, means.forecaster), TODAY)


@pytest.fixture
def dialog(qtbot, window):
    window.menus.actions["view.search"].trigger()
    return window.findChild(SearchDialog)


def test_that_a_batch_is_found_by_its_code_first(index, farm):
    found = index.search(farm.batches[3].code)
    assert (found[0].target, found[0].key) == (Target.BATCH, farm.batches[3].id)


def test_that_a_bed_is_found_by_the_beginning_of_one_of_its_words(index, farm):
    bed = farm.beds[0]
    assert bed.id in {find.key for find in index.search(bed.name.split()[-1][:3])}


@pytest.mark.parametrize("typed", ["W19", "w19 2027", "2027-05-12", "12 may 2027"])
def test_that_a_week_is_found_by_number_or_by_a_day_in_it(index, typed):
    assert "2027-05-10" in {find.key for find in index.search(typed) if find.target is Target.WEEK}


def test_that_entries_and_words_are_found(index):
    assert "change.history" in {find.key for find in index.search("histor")}
    assert "Nitrification" in {find.key for find in index.search("nitrif")}


def test_that_nothing_is_found_for_nothing_and_for_nonsense(index):
    assert index.search("  ") == ()
    assert index.search("zzzqqq") == ()


def test_that_many_batches_do_not_make_the_list_long():
    finds = tuple(
        Find(target=Target.BATCH, key=str(at), name=f"LTB-{at}", note="lettuce", near=at)
        for at in range(20_000)
    )
    many = Index(finds=finds, texts=tuple(f"{find.name} lettuce".casefold() for find in finds))
    found = many.search("ltb lettuce")
    assert [find.near for find in found] == list(range(60))


def test_that_enter_goes_to_the_batch_that_was_typed(qtbot, window, dialog, farm):
    batch = farm.batches[3]
    qtbot.keyClicks(dialog.line, batch.code)
    qtbot.keyClick(dialog.line, Qt.Key.Key_Return)
    assert window.workspace.chosen_thing() == batch


def test_that_arrows_choose_while_the_line_keeps_the_keyboard(qtbot, dialog):
    qtbot.keyClicks(dialog.line, "a")
    qtbot.keyClick(dialog.line, Qt.Key.Key_Down)
    assert dialog.view.currentIndex().row() == 1
    qtbot.keyClick(dialog.line, Qt.Key.Key_Up)
    assert dialog.view.currentIndex().row() == 0


def test_that_a_word_is_shown_among_the_words(qtbot, window, dialog):
    qtbot.keyClicks(dialog.line, "nitrification")
    qtbot.keyClick(dialog.line, Qt.Key.Key_Return)
    assert window.findChild(GlossaryDialog).search.text() == "Nitrification"


def test_that_a_search_without_a_find_says_so(qtbot, dialog):
    qtbot.keyClicks(dialog.line, "zzzqqq")
    assert "zzzqqq" in dialog.count.text()
    qtbot.keyClick(dialog.line, Qt.Key.Key_Return)
    assert dialog.isVisible()


def test_that_every_control_has_a_spoken_name(dialog):
    assert nameless_controls(dialog) == []
