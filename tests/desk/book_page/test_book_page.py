"""The catalogue page lays own values over the book, tells first what moves, and goes back to the book."""

import pytest
from PySide6.QtCore import Qt

from planner.catalogue.figure import Confidence
from planner.desk.book import FIGURE_LABELS
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
    figure = window.workspace.outlook.catalogue.figure(f"crop/{farm.batches[0].crop}/bed_days")
    assert (figure.value, figure.confidence) == (book - 2, Confidence.GROWERS_VALUE)
    assert bed_days.figures.current().id == "bed_days"
    qtbot.mouseClick(bed_days.back, Qt.MouseButton.LeftButton)
    assert window.conduct.session.farm == farm
    assert not bed_days.back.isEnabled()


def test_that_a_value_the_places_do_not_allow_is_refused_by_name_and_nothing_is_lost(
    qtbot, window, bed_days, farm
):
    longer = f"{float(bed_days.value.text()) + 6:g}"
    typed(qtbot, bed_days, longer)
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
