"""The picture of the very first start: taken unseen, pixel for pixel what comes, and in nobody's way."""

import os
import subprocess
import sys

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from planner.bootstrap_first import take_first_picture
from planner.desk import settings
from planner.desk.window import MainWindow
from tests.desk.helpers import NOW, TODAY, put_away, services


class Kept(dict):
    """Pictures by day and looks, as a shelf would keep them for one farm."""

    def find(self, path, day, looks):
        return self.get((path, day, looks))

    def keep(self, path, day, looks, picture):
        self[path, day, looks] = picture


@pytest.fixture
def kept():
    return Kept()


@pytest.fixture
def unopened(rooms, ask, tmp_path, kept):
    """Services of a program that has never opened a farm."""
    given = services(rooms, tmp_path, ask)
    return given._replace(find_glance=kept.find, keep_glance=kept.keep, sample=tmp_path / "Sample.raftweek")


def taken(given, folder):
    apart = folder / "apart"
    apart.mkdir()
    found = take_first_picture(given, apart)
    QApplication.sendPostedEvents()
    return found


def test_that_the_first_start_shows_its_picture_and_then_just_that(qtbot, unopened, kept, tmp_path):
    assert taken(unopened, tmp_path)
    window = MainWindow(unopened)
    assert window.cover.fits
    before = window.cover.picture.toImage()
    with qtbot.waitSignal(window.ready):
        window.show()
    assert window.doors.strip.isVisible()
    window.foot.saved.setText("Opening…")
    QApplication.sendPostedEvents()
    seen = window.grab().toImage()
    put_away(window)
    assert before.size() == seen.size()
    ours, theirs = (memoryview(each.constBits()).cast("I") for each in (before, seen))
    assert sum(a != b for a, b in zip(ours, theirs, strict=True)) == 0


def test_that_taking_it_remembers_no_farm_and_no_place_of_the_window(unopened, tmp_path):
    before = {key: unopened.settings.value(key) for key in unopened.settings.allKeys()}
    assert taken(unopened, tmp_path)
    assert {key: unopened.settings.value(key) for key in unopened.settings.allKeys()} == before


def test_that_it_is_taken_in_the_look_that_was_chosen(unopened, kept, tmp_path):
    unopened.settings.setValue(settings.SHADE.key, "dark")
    assert taken(unopened, tmp_path)
    picture = kept[next(iter(kept))].toImage()
    assert picture.pixelColor(picture.width() // 2, 2).lightness() < 64
    assert all("dark" in looks for _path, _day, looks in kept)


def test_that_none_is_taken_once_a_farm_has_been_opened(unopened, kept, rooms, tmp_path):
    mine = tmp_path / "mine.raftweek"
    mine.write_bytes(b"a farm")
    unopened.settings.setValue(settings.RECENT.key, [str(mine)])
    assert not taken(unopened, tmp_path)
    assert not kept
    assert rooms.loads == 0


def test_that_a_later_start_is_not_shown_the_picture_of_the_first(qtbot, unopened, kept, tmp_path):
    assert taken(unopened, tmp_path)
    unopened.sample.write_bytes(b"a farm")
    unopened.settings.setValue(settings.RECENT.key, [str(unopened.sample)])
    window = MainWindow(unopened)
    assert window.cover.picture is None
    with qtbot.waitSignal(window.ready):
        window.show()
    put_away(window)


def test_that_a_farm_that_cannot_be_opened_leaves_no_window_behind(
    unopened, rooms, kept, tmp_path, monkeypatch
):
    def fail():
        raise ValueError("no workspace today")

    monkeypatch.setattr(rooms, "make_workspace", lambda needs: fail())
    with pytest.raises(ValueError, match="no workspace"):
        taken(unopened, tmp_path)
    assert not kept
    QApplication.sendPostedEvents()


def test_that_the_days_that_follow_are_taken_too_while_there_is_time(unopened, kept, tmp_path, monkeypatch):
    monkeypatch.setattr("planner.desk.rehearsal._ENOUGH_S", 600.0)
    assert taken(unopened, tmp_path)
    assert [day for _path, day, _looks in kept] == [
        TODAY.fromordinal(TODAY.toordinal() + n) for n in range(4)
    ]
    assert NOW.date() == TODAY


OPENING = """
import sys
from planner.bootstrap_window import application_made, services_for
application = application_made()
from planner.desk.window import MainWindow
window = MainWindow(services_for(None))
def tell():
    late = [name for name in ("sqlalchemy", "numpy.ma", "asyncio") if name in sys.modules]
    print("picture" if had else "bones", "farm" if window.conduct.session else "no farm", "late:", *late)
    window.close()
had = window.cover.fits
window.ready.connect(tell)
window.show()
application.exec()
"""


def test_that_the_set_up_prepares_the_very_first_start_of_the_program(root, tmp_path):
    """In a home that nobody has used: a sample farm, a picture, no settings; then a start that shows them."""
    home = tmp_path / "home"
    home.mkdir()
    names = ("HOME", "USERPROFILE", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME")
    places = {name: str(home) for name in names}
    environment = {**os.environ, **places, "QT_QPA_PLATFORM": "offscreen"}

    def run(*arguments):
        return subprocess.run(
            [sys.executable, *arguments],
            cwd=root,
            env=environment,
            capture_output=True,
            text=True,
            timeout=100,
            check=False,
        )

    done = run("-m", "planner.bootstrap_first")
    assert done.returncode == 0, done.stderr
    assert len(list(home.rglob("Sample farm.raftweek"))) == 1
    assert list(home.rglob("*.ppm"))
    ini = QSettings(str(home / "Raftweek" / "Raftweek.ini"), QSettings.Format.IniFormat)
    assert ini.value(settings.RECENT.key) is None
    shown = run("-c", OPENING)
    # What no farm needs to be shown is not read in before it is.
    assert shown.stdout.strip() == "picture farm late:", shown.stderr
