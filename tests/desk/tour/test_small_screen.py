"""Everything fits a screen of 1280×720 at 200 %, in every language: nothing is cut, all can be scrolled to.

Such a screen is 640×360 units of the program, of which the bar of a window manager takes some; the toolkit
multiplies all sizes by the same factor, so that it is enough to look at the small size.
"""

import pytest
from PySide6.QtCore import QEvent, QSize
from PySide6.QtWidgets import QApplication

from planner.desk.languages import LANGUAGES
from tests.desk.tour.clipped import clipped
from tests.desk.tour.stops import DIALOGS, PAGES

SCREEN = QSize(640, 360)
TITLE_BAR = 24
"""What a window manager takes of the height for the bar over a window."""
ROOM = QSize(SCREEN.width(), SCREEN.height() - TITLE_BAR)
SPOKEN = pytest.mark.parametrize("language", LANGUAGES)


def settle():
    """Let layouts within layouts come to rest."""
    for _ in range(5):
        QApplication.processEvents()


@SPOKEN
def test_that_every_page_fits_and_nothing_is_cut(desk_in, language):
    window = desk_in(language, size=ROOM.toTuple())
    wrong = []
    for stop in PAGES:
        stop.go(window)
        settle()
        least = window.minimumSizeHint()
        if least.expandedTo(ROOM) != ROOM:
            wrong.append(f"{stop.name}: asks for {least.toTuple()}")
        wrong += [f"{stop.name}: {line}" for line in clipped(window)]
    assert not wrong, "\n".join(wrong)


@SPOKEN
def test_that_every_dialog_fits_and_nothing_is_cut(desk_in, language):
    window = desk_in(language, size=ROOM.toTuple())
    wrong = []
    for stop in DIALOGS:
        dialog = stop.go(window)
        settle()
        least = dialog.minimumSizeHint().expandedTo(dialog.minimumSize())
        if least.expandedTo(ROOM) != ROOM:
            wrong.append(f"{stop.name}: asks for {least.toTuple()}")
        dialog.resize(dialog.size().boundedTo(ROOM))
        settle()
        wrong += [f"{stop.name}: {line}" for line in clipped(dialog)]
        dialog.close()
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    assert not wrong, "\n".join(wrong)


@SPOKEN
@pytest.mark.parametrize("size", [(853, 456), (1280, 696)], ids=["150 %", "100 %"])
def test_that_nothing_is_cut_on_that_screen_at_less(desk_in, language, size):
    window = desk_in(language, size=size)
    wrong = []
    for stop in PAGES:
        stop.go(window)
        settle()
        wrong += [f"{stop.name}: {line}" for line in clipped(window)]
    assert not wrong, "\n".join(wrong)


def test_that_a_form_stands_in_columns_where_there_is_room_and_its_cautions_never_come_last(desk_in):
    window = desk_in(size=(1280, 720))
    window.workspace.run("new.fish group")
    form = window.workspace.editing.dialog
    form.resize(1000, 600)
    settle()
    first, last = form.rows["name"], list(form.rows.values())[-1]
    assert last.mapTo(form, last.rect().topLeft()).x() > first.mapTo(form, first.rect().bottomRight()).x()
    form.resize(ROOM)
    settle()
    care = form._care.itemAt(0).widget()
    inside = form._inside
    assert care.mapTo(inside, care.rect().topLeft()).y() < last.mapTo(inside, last.rect().topLeft()).y()
    form.close()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    dialog = next(stop for stop in DIALOGS if stop.name == "new farm").go(window)
    dialog.resize(1000, 640)
    settle()
    assert dialog._across.direction() is dialog._across.Direction.LeftToRight
    dialog.resize(ROOM)
    settle()
    assert dialog._across.direction() is dialog._across.Direction.TopToBottom
    dialog.close()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
