"""Every page as it was when somebody last looked at it, pixel by pixel, in light and in dark.

The day stands still, the typeface is the shipped one and is drawn without the hints of the machine, and the
toolkit is held at one release: so not one point may differ. Pictures are kept as WebP without loss, less than
half as large as PNG. One that differs is laid beside the others as `*.new.webp`; who means it to runs
`.ci/renew_pictures.py` and looks at what it changed.
"""

import os
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtGui import QFont, QImage
from PySide6.QtWidgets import QApplication, QHeaderView

from planner.desk.plan.part import Worker
from planner.desk.plan.remedy_list import RemedyList
from tests.desk.tour.stops import PAGES

PICTURES = Path(__file__).parent / "pictures"
SIZE = (760, 460)
"""Small, so that the pictures are; still wide enough for what a page shows side by side."""
RENEW = "RAFTWEEK_RENEW_PICTURES"
WITHOUT_LOSS = 100
MOST_BYTES = 1_300_000


@pytest.fixture
def still(qapp):
    """Nothing that moves or hangs on the machine: no blinking, no hints, one way to write numbers."""
    before, flash = qapp.font(), qapp.cursorFlashTime()
    qapp.setCursorFlashTime(0)
    QLocale.setDefault(QLocale.c())
    yield
    qapp.setCursorFlashTime(flash)
    qapp.setFont(before)


def unhinted(font):
    """Return a typeface as it is drawn the same everywhere."""
    found = QFont(font)
    found.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    found.setStyleStrategy(QFont.StyleStrategy.NoSubpixelAntialias)
    return found


def at_rest(window):
    """Tell whether nothing is being worked out any more."""
    workers = (*window.findChildren(Worker), *window.findChildren(RemedyList))
    return not any(worker.is_working for worker in workers)


def picture_of(window):
    for head in window.findChildren(QHeaderView):
        head.setFont(unhinted(head.font()))  # which does not always follow the font of the application
    for _ in range(5):
        QApplication.processEvents()
    return window.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)


def differing(one, other):
    """Return how many points differ, all of them where the sizes do."""
    if one.size() != other.size():
        return one.width() * one.height()
    if one == other:
        return 0
    places = ((x, y) for y in range(one.height()) for x in range(one.width()))
    return sum(one.pixel(x, y) != other.pixel(x, y) for x, y in places)


@pytest.mark.parametrize("shade", ["light", "dark"])
@pytest.mark.parametrize("stop", PAGES, ids=lambda stop: stop.name)
def test_that_a_page_looks_as_it_did(qtbot, still, desk_in, stop, shade):
    window = desk_in(shade=shade, size=SIZE)
    QApplication.setFont(unhinted(QApplication.font()))
    stop.go(window)
    window.messages.clear()
    qtbot.waitUntil(lambda: at_rest(window), timeout=60_000)
    seen = picture_of(window)
    path = PICTURES / f"{stop.name.replace(' ', '-')}-{shade}.webp"
    if os.environ.get(RENEW):
        PICTURES.mkdir(exist_ok=True)
        assert seen.save(str(path), "WEBP", WITHOUT_LOSS)
        return
    kept = QImage(str(path)).convertToFormat(QImage.Format.Format_RGB32)
    assert not kept.isNull(), f"{path.name} is not there: run .ci/renew_pictures.py and look at it"
    differs = differing(seen, kept)
    if differs:
        seen.save(str(path.with_suffix(".new.webp")), "WEBP", WITHOUT_LOSS)
    assert differs == 0, f"{differs} points differ; what is seen now is {path.stem}.new.webp"


def test_that_the_pictures_are_those_of_the_pages_and_stay_small():
    kept = {path.name: path.stat().st_size for path in PICTURES.glob("*.webp") if ".new." not in path.name}
    names = {f"{stop.name.replace(' ', '-')}-{shade}.webp" for stop in PAGES for shade in ("light", "dark")}
    assert set(kept) == names
    assert sum(kept.values()) <= MOST_BYTES
