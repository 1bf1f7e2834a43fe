"""The catalogue page lays own values over the book, tells first what moves, and goes back to the book."""

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt

from planner.actions.changing import addition
from planner.catalogue.figure import Confidence
from planner.desk.book import FIGURE_LABELS
from planner.desk.services import Library
from planner.desk.words import day_words
from planner.farm.farm import OwnEntry, Shelf
from planner.farm.ids import new_id
from tests.desk.helpers import nameless_controls


@pytest.fixture
def page(window):
    window.menus.actions["view.book"].trigger()
    return window.workspace.shelf.place("book")


@pytest.fixture
def bed_days(page, farm):
    page.entries.choose(farm.batches[0].crop)
    page.figures.choose("bed_days")
    return page


def typed(qtbot, page, text):
    page.value.setFocus()
    page.value.selectAll()
    qtbot.keyClicks(page.value, text)


def test_that_every_figure_shows_where_it_comes_from(page):
    assert page.figures.model_of_rows.rows
    assert all(row.texts[2] for row in page.figures.model_of_rows.rows)


def test_that_every_shelf_has_entries(page):
    for at in range(page.shelf.count()):
        page.shelf.setCurrentIndex(at)
        assert page.entries.model_of_rows.rows


def test_that_no_figure_stands_under_the_bare_name_of_its_field(page):
    for at in range(page.shelf.count()):
        page.shelf.setCurrentIndex(at)
        for entry in page.entries.model_of_rows.rows:
            page.entries.choose(entry.id)
            rows = page.figures.model_of_rows.rows
            assert rows
            for row in rows:
                name = row.id.split("_", 2)[2] if row.id.startswith("stage_") else row.id
                assert name in FIGURE_LABELS, f"{row.id} of {entry.id} has no words of its own"


def test_that_it_is_told_what_would_move_and_nothing_is_kept(qtbot, window, bed_days, farm):
    days = float(bed_days.value.text())
    typed(qtbot, bed_days, f"{days + 6:g}")
    qtbot.keyClick(bed_days.value, Qt.Key.Key_Return)
    assert "later" in bed_days.moves.text()
    assert window.conduct.session.farm == farm


def test_that_an_own_value_is_kept_shown_as_own_and_taken_back(qtbot, window, bed_days, farm):
    book = window.workspace.outlook.catalogue.figure(f"crop/{farm.batches[0].crop}/bed_days").value
    typed(qtbot, bed_days, f"{book - 2:g}")
    qtbot.mouseClick(bed_days.keep, Qt.MouseButton.LeftButton)
    assert window.conduct.session.farm == farm  # first it is told which days move
    assert bed_days.dates.model_of_rows.rows
    qtbot.mouseClick(bed_days.keep, Qt.MouseButton.LeftButton)
    figure = window.workspace.outlook.catalogue.figure(f"crop/{farm.batches[0].crop}/bed_days")
    assert (figure.value, figure.confidence) == (book - 2, Confidence.GROWERS_VALUE)
    assert bed_days.figures.current().id == "bed_days"
    qtbot.mouseClick(bed_days.back, Qt.MouseButton.LeftButton)
    qtbot.mouseClick(bed_days.back, Qt.MouseButton.LeftButton)
    assert window.conduct.session.farm == farm
    assert not bed_days.back.isEnabled()


def test_that_a_value_the_places_do_not_allow_is_refused_by_name_and_nothing_is_lost(
    qtbot, window, bed_days, farm
):
    longer = f"{float(bed_days.value.text()) + 6:g}"
    typed(qtbot, bed_days, longer)
    for _ in range(2):
        qtbot.mouseClick(bed_days.keep, Qt.MouseButton.LeftButton)
    assert any(batch.code in bed_days.trouble.text() for batch in farm.batches)
    assert bed_days.value.text() == longer
    assert window.conduct.session.farm == farm


@pytest.mark.parametrize("text", ["many", "-4", "100000"])
def test_that_a_wrong_value_is_told_by_the_field_and_nothing_is_lost(qtbot, window, bed_days, farm, text):
    typed(qtbot, bed_days, text)
    qtbot.mouseClick(bed_days.keep, Qt.MouseButton.LeftButton)
    assert bed_days.trouble.text()
    assert text.lstrip("-") in bed_days.trouble.text().replace(",", "")
    assert bed_days.value.text() == text
    assert window.conduct.session.farm == farm


def test_that_every_control_has_a_spoken_name(page):
    assert nameless_controls(page) == []


def test_that_the_days_told_are_those_of_the_forecast_with_the_value(qtbot, window, bed_days, farm):
    typed(qtbot, bed_days, f"{float(bed_days.value.text()) - 3:g}")
    qtbot.mouseClick(bed_days.ask, Qt.MouseButton.LeftButton)
    told = {row.texts[0]: row.texts[2] for row in bed_days.dates.model_of_rows.rows}
    for _ in range(2):
        qtbot.mouseClick(bed_days.keep, Qt.MouseButton.LeftButton)
    forecast = window.workspace.outlook.forecast
    codes = {batch.id: batch.code for batch in farm.batches}
    then = {
        codes[batch]: day_words(forecast.ruler.date_of(forecast.batches.ends[row, 3]))
        for row, batch in enumerate(forecast.batches.ids)
    }
    assert told
    assert all(then[code] == day for code, day in told.items())


@pytest.fixture
def new(qtbot, page):
    qtbot.mouseClick(page.new, Qt.MouseButton.LeftButton)
    assert nameless_controls(page.dialog) == []
    return page.dialog


def test_that_a_new_entry_stands_beside_the_book_with_what_was_given(qtbot, window, page, new):
    new.like.setCurrentIndex(new.like.findData("basil"))
    new.name.setText("Kangkóng, dwarf")
    new.rows["bed_days"].line.setText("21")
    qtbot.mouseClick(new.ok, Qt.MouseButton.LeftButton)
    catalogue = window.workspace.outlook.catalogue
    crop = catalogue.crops["kangkong-dwarf"]
    assert (crop.name, crop.bed_days) == ("Kangkóng, dwarf", 21.0)
    assert crop.nursery_days == catalogue.crops["basil"].nursery_days
    assert page.entries.current().id == "kangkong-dwarf"
    window.conduct.undo()
    assert "kangkong-dwarf" not in window.workspace.outlook.catalogue.crops


def test_that_wrong_figures_are_told_beside_their_fields_and_nothing_is_lost(qtbot, window, new):
    new.rows["bed_days"].line.setText("999")
    new.rows["yield_g_per_plant"].line.setText("much")
    qtbot.mouseClick(new.ok, Qt.MouseButton.LeftButton)
    assert "Name is empty" in new.trouble.text()
    new.name.setText("Mine")
    qtbot.mouseClick(new.ok, Qt.MouseButton.LeftButton)
    assert "much" in new.rows["yield_g_per_plant"].trouble.text()
    new.rows["yield_g_per_plant"].line.setText("150")
    qtbot.mouseClick(new.ok, Qt.MouseButton.LeftButton)
    said = new.rows["bed_days"].trouble.text()
    assert "Days in the bed" in said
    assert "999" in said
    assert "400" in said
    assert new.rows["bed_days"].line.text() == "999"
    assert not window.workspace.outlook.farm.own_entries


@pytest.mark.parametrize("shelf", [0, 1, 2, 3])
def test_that_an_entry_like_nothing_needs_every_figure(qtbot, window, page, shelf):
    page.shelf.setCurrentIndex(shelf)
    qtbot.mouseClick(page.new, Qt.MouseButton.LeftButton)
    dialog = page.dialog
    as_like = {name: row.field.like for name, row in dialog.rows.items()}
    dialog.like.setCurrentIndex(0)
    dialog.name.setText("From nothing")
    qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    assert dialog.isVisible()
    assert any("must be given" in row.trouble.text() for row in dialog.rows.values())
    for name, row in dialog.rows.items():
        if row.line is not None:
            row.line.setText("QQQ" if name == "code" else as_like[name].replace(",", ""))
        else:
            row.box.setCurrentIndex(1)
    qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    (own,) = window.workspace.outlook.farm.own_entries
    assert own.name == "From nothing"


def test_that_a_field_typed_stays_when_another_likeness_is_chosen(new):
    new.rows["bed_days"].line.setText("33")
    new.like.setCurrentIndex(new.like.count() - 1)
    assert new.rows["bed_days"].line.text() == "33"


class Shelved:
    """A library in memory."""

    def __init__(self):
        self.kept = {}

    def write(self, path, entries):
        self.kept[path] = entries

    def read(self, path):
        return self.kept[path]


def test_that_entries_go_out_and_come_in_again_after_a_question(window, page, ask, tmp_path):
    shelved = Shelved()
    page.library._needs = replace(page.needs, library=Library(write=shelved.write, read=shelved.read))
    own = OwnEntry(id=new_id(), shelf=Shelf.CROP, key="mine", like="basil", name="Mine")
    window.conduct.act(addition("own", own))
    page.library.write(str(tmp_path / "a.toml"))
    window.conduct.undo()
    assert window.workspace.outlook.farm.own_entries == ()
    page.library.read(str(tmp_path / "a.toml"))
    assert "1 new, 0 replaced" in ask.asked[-1].text
    assert [each.key for each in window.workspace.outlook.farm.own_entries] == ["mine"]


def test_that_a_library_that_cannot_be_read_is_told(page, tmp_path, qtbot):
    def lost(path):
        raise FileNotFoundError(2, "no such file", str(path))

    page.library._needs = replace(page.needs, library=Library(write=lost, read=lost))
    with qtbot.waitSignal(page.troubled) as told:
        page.library.read(str(tmp_path / "gone.toml"))
    assert "gone.toml" in told.args[0]
