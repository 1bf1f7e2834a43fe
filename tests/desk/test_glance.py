"""A glance is a picture of the window as it will be, is only shown when it holds, and breaks nothing."""

import os
from datetime import timedelta

import pytest
from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QColor, QPixmap
from PySide6.QtWidgets import QApplication, QWidget

from planner.bootstrap_glance import GlanceShelf
from planner.desk import settings
from planner.desk.first_look import Cover, looks_of
from planner.desk.grounds import DARK_GROUNDS, LIGHT_GROUNDS
from planner.desk.rehearsal import DAYS
from planner.desk.shade import ShadeChoice
from planner.desk.skeleton import SOFTLY
from planner.desk.theme import DARK, LEAST_CONTRAST, contrast, mixed
from planner.desk.window import MainWindow
from tests.desk.helpers import NOW, TODAY, put_away, services

LOOKS = "light 1.0 96 &Change"


@pytest.fixture
def picture(qapp):
    found = QPixmap(40, 30)
    found.fill(QColor("#00604A"))
    return found


@pytest.fixture
def shelf(tmp_path):
    return GlanceShelf(tmp_path / "kept", "1.2.3")


@pytest.fixture
def file(tmp_path):
    path = tmp_path / "mine.raftweek"
    path.write_bytes(b"a farm, for all the shelf knows")
    return path


def kept_file(shelf, file, picture):
    shelf.keep(file, TODAY, LOOKS, picture)
    (kept,) = shelf._folder.iterdir()
    return kept


def test_that_a_picture_comes_back_as_it_was(shelf, file, picture):
    shelf.keep(file, TODAY, LOOKS, picture)
    assert shelf.find(file, TODAY, LOOKS).toImage() == picture.toImage()


@pytest.mark.parametrize("change", ["content", "time", "journal", "gone"])
def test_that_a_picture_is_not_found_once_the_farm_has_changed(shelf, file, picture, change):
    shelf.keep(file, TODAY, LOOKS, picture)
    if change == "content":
        file.write_bytes(b"another farm")
    elif change == "time":
        os.utime(file, ns=(1, 1))
    elif change == "journal":
        file.with_name(f"{file.name}-wal").write_bytes(b"something is yet to be written")
    else:
        file.unlink()
    assert shelf.find(file, TODAY, LOOKS) is None


@pytest.mark.parametrize("days", [-1, 1, 7])
def test_that_a_picture_is_only_of_its_own_day(shelf, file, picture, days):
    shelf.keep(file, TODAY, LOOKS, picture)
    assert shelf.find(file, TODAY + timedelta(days=days), LOOKS) is None


def test_that_a_picture_in_other_looks_is_not_found(shelf, file, picture):
    shelf.keep(file, TODAY, LOOKS, picture)
    assert shelf.find(file, TODAY, LOOKS.replace("light", "dark")) is None


def test_that_a_picture_in_another_language_of_the_system_is_not_found(shelf, file, picture, monkeypatch):
    monkeypatch.setenv("LC_ALL", "C.UTF-8")
    shelf.keep(file, TODAY, LOOKS, picture)
    monkeypatch.setenv("LC_ALL", "es_ES.UTF-8")
    assert shelf.find(file, TODAY, LOOKS) is None


def test_that_a_picture_by_other_figures_is_not_found(shelf, file, picture, monkeypatch, tmp_path):
    figures = tmp_path / "crops"
    figures.mkdir()
    (figures / "lettuce.toml").write_text("days = 30")
    monkeypatch.setattr("planner.bootstrap_glance.shipped_path", lambda *parts: figures)
    shelf.keep(file, TODAY, LOOKS, picture)
    assert shelf.find(file, TODAY, LOOKS) is not None
    (figures / "lettuce.toml").write_text("days = 31")
    os.utime(figures / "lettuce.toml", ns=(1, 2**62))
    assert shelf.find(file, TODAY, LOOKS) is None


def test_that_a_picture_by_another_version_of_the_program_is_not_found(shelf, file, picture):
    shelf.keep(file, TODAY, LOOKS, picture)
    assert GlanceShelf(shelf._folder, "1.2.4").find(file, TODAY, LOOKS) is None


def test_that_a_picture_of_another_farm_is_not_found(shelf, file, picture, tmp_path):
    shelf.keep(file, TODAY, LOOKS, picture)
    other = tmp_path / "other.raftweek"
    other.write_bytes(file.read_bytes())
    os.utime(other, ns=(file.stat().st_atime_ns, file.stat().st_mtime_ns))
    assert shelf.find(other, TODAY, LOOKS) is None


@pytest.mark.parametrize("share", [0.0, 0.01, 0.3, 0.999])
def test_that_a_picture_that_was_cut_off_is_left_alone(shelf, file, picture, share):
    kept = kept_file(shelf, file, picture)
    whole = kept.read_bytes()
    kept.write_bytes(whole[: int(len(whole) * share)])
    assert shelf.find(file, TODAY, LOOKS) is None


def test_that_anything_else_in_place_of_a_picture_is_left_alone(shelf, file, picture):
    kept = kept_file(shelf, file, picture)
    for content in (b"\xff\xfe\x00", b"null", b"<svg xmlns='http://www.w3.org/2000/svg'/>"):
        kept.write_bytes(content)
        assert shelf.find(file, TODAY, LOOKS) is None


def test_that_a_picture_too_large_to_be_one_is_not_even_read(shelf, file, picture):
    kept = kept_file(shelf, file, picture)
    with kept.open("ab") as end:
        end.truncate(31_000_000)
    assert shelf.find(file, TODAY, LOOKS) is None


def test_that_a_picture_that_would_not_be_read_is_not_kept(shelf, file, picture, monkeypatch):
    monkeypatch.setattr("planner.bootstrap_glance._MOST_BYTES", 3_000)  # one is 3,600 and its head
    shelf.keep(file, TODAY, LOOKS, picture)
    assert not list(shelf._folder.iterdir())


def test_that_only_the_latest_pictures_are_kept_and_older_kinds_go(shelf, picture, tmp_path):
    shelf._folder.mkdir()
    (shelf._folder / "before.glance").write_text("[]")
    (shelf._folder / "before.png").write_text("")
    for number in range(40):
        path = tmp_path / f"{number}.raftweek"
        path.write_bytes(b"x")
        shelf.keep(path, TODAY, LOOKS, picture)
    assert len(list(shelf._folder.iterdir())) == 16
    assert shelf.find(path, TODAY, LOOKS) is not None


def test_that_pictures_that_are_too_large_together_are_thinned_out(shelf, picture, tmp_path, monkeypatch):
    monkeypatch.setattr("planner.bootstrap_glance._MOST_BYTES_KEPT", 8_000)  # one is 3,600 and its head
    for number in range(4):
        path = tmp_path / f"{number}.raftweek"
        path.write_bytes(b"x")
        shelf.keep(path, TODAY, LOOKS, picture)
    assert len(list(shelf._folder.iterdir())) == 2
    assert shelf.find(path, TODAY, LOOKS) is not None


def test_that_a_folder_that_cannot_be_written_does_no_harm(tmp_path, file, picture):
    (tmp_path / "kept").write_text("a file where the folder should be")
    shelf = GlanceShelf(tmp_path / "kept", "1.2.3")
    shelf.keep(file, TODAY, LOOKS, picture)
    assert shelf.find(file, TODAY, LOOKS) is None


# ---- in the window


class Kept(dict):
    """Pictures by day, as a shelf would keep them for one farm."""

    def find(self, path, day, looks):
        return self.get(day)

    def keep(self, path, day, looks, picture):
        self[day] = picture


@pytest.fixture
def kept():
    return Kept()


@pytest.fixture
def shelved(rooms, ask, tmp_path, file, kept, monkeypatch):
    """Services that keep pictures of the latest farm."""
    monkeypatch.setattr(rooms, "where", lambda session: file)
    given = services(rooms, tmp_path, ask)._replace(find_glance=kept.find, keep_glance=kept.keep)
    given.settings.setValue(settings.RECENT.key, [str(file)])
    return given


def opened(qtbot, given):
    window = MainWindow(given)
    window.resize(1200, 700)
    with qtbot.waitSignal(window.ready):
        window.show()
    return window


def other_pixels(one, other):
    """Return the share of pixels that differ; all of them when the sizes do."""
    if one.size() != other.size():
        return 1.0
    ours, theirs = (memoryview(each.constBits()).cast("I") for each in (one, other))
    return sum(a != b for a, b in zip(ours, theirs, strict=True)) / len(ours)


def seen(window):
    QApplication.sendPostedEvents()
    return window.grab().toImage()


def test_that_the_picture_is_what_the_next_start_shows(qtbot, shelved, kept):
    window = opened(qtbot, shelved)
    window.workspace.choose(window.workspace.outlook.farm.batches[0].id)
    window.workspace.run("view.batches")
    window.workspace.lanes.zoom_in()
    put_away(window)
    again = opened(qtbot, shelved)
    again.foot.saved.setText("Opening…")
    assert again.cover is None
    share = other_pixels(kept[TODAY].toImage(), seen(again))
    put_away(again)
    assert share == 0


def test_that_the_strip_over_the_sample_is_not_in_the_picture(qtbot, shelved, kept):
    window = opened(qtbot, shelved)
    window.doors.show_strip()
    put_away(window)
    again = opened(qtbot, shelved)
    again.foot.saved.setText("Opening…")
    share = other_pixels(kept[TODAY].toImage(), seen(again))
    put_away(again)
    assert share == 0


@pytest.fixture
def in_no_hurry(monkeypatch):
    """A slow machine takes as many pictures as a quick one."""
    monkeypatch.setattr("planner.desk.rehearsal._ENOUGH_S", 600.0)


def test_that_there_are_pictures_of_the_days_to_come_too(qtbot, shelved, kept, in_no_hurry):
    put_away(opened(qtbot, shelved))
    assert list(kept) == [TODAY + timedelta(days=days) for days in range(DAYS)]
    tomorrow = shelved._replace(now=lambda: NOW + timedelta(days=1))
    taken = kept[TODAY + timedelta(days=1)].toImage()
    window = opened(qtbot, tomorrow)
    window.foot.saved.setText("Opening…")
    share = other_pixels(taken, seen(window))
    put_away(window)
    assert share == 0


def test_that_closing_waits_for_one_picture_when_pictures_take_long(qtbot, shelved, kept, monkeypatch):
    monkeypatch.setattr("planner.desk.rehearsal._ENOUGH_S", 0.0)
    put_away(opened(qtbot, shelved))
    assert list(kept) == [TODAY]


def test_that_closing_a_large_farm_waits_for_no_picture(qtbot, shelved, kept, monkeypatch):
    monkeypatch.setattr("planner.desk.rehearsal.MOST_BATCHES", 0)
    put_away(opened(qtbot, shelved))
    assert not kept


def test_that_the_picture_is_all_that_is_painted_until_the_farm_is_there(qtbot, shelved, kept):
    put_away(opened(qtbot, shelved))
    before = kept[TODAY].toImage()
    window = MainWindow(shelved)
    window._load_behind = lambda: None
    window.resize(1200, 700)
    window.show()
    qtbot.waitUntil(lambda: window._painted)
    assert window.cover.isVisible()
    assert not window._furnished
    assert window.grab().toImage() == before
    del window._load_behind
    with qtbot.waitSignal(window.ready):
        window._load_behind()
    assert window.cover is None
    assert window.updatesEnabled()
    assert window.foot.saved.text() != "Opening…"
    put_away(window)


def test_that_a_picture_of_another_size_is_not_shown(qtbot, shelved, kept, picture):
    kept[TODAY] = picture
    window = MainWindow(shelved)
    assert window.cover.picture is picture
    before = window.cover.grab().toImage()
    window.cover.picture = None
    assert window.cover.grab().toImage() == before
    window.show()
    qtbot.waitUntil(lambda: window.conduct.session is not None and window.cover is None)
    put_away(window)
    assert kept[TODAY] is not picture


def test_that_pictures_are_taken_anew_only_when_something_has_changed(qtbot, shelved, kept):
    put_away(opened(qtbot, shelved))
    first = kept[TODAY]
    put_away(opened(qtbot, shelved))
    assert kept[TODAY] is first
    window = opened(qtbot, shelved)
    window.workspace.choose(window.workspace.outlook.farm.batches[0].id)
    window.menus.actions["change.lock"].trigger()
    put_away(window)
    assert kept[TODAY] is not first


def test_that_panes_of_another_width_are_another_picture(qtbot, shelved, kept):
    put_away(opened(qtbot, shelved))
    first = kept[TODAY]
    window = opened(qtbot, shelved)
    window.workspace.split.setSizes([350, 600, 250])
    put_away(window)
    assert kept[TODAY] is not first
    again = opened(qtbot, shelved)
    again.foot.saved.setText("Opening…")
    share = other_pixels(kept[TODAY].toImage(), seen(again))
    put_away(again)
    assert share == 0


def test_that_a_window_of_another_size_is_another_picture(qtbot, shelved, kept):
    put_away(opened(qtbot, shelved))
    window = opened(qtbot, shelved)
    window.resize(1100, 650)
    put_away(window)
    assert kept[TODAY].size() == QSize(1100, 650)


def test_that_another_look_is_another_picture(qtbot, shelved):
    window = opened(qtbot, shelved)
    before = looks_of(window, window.memory)
    window.menus.actions["shade.dark"].trigger()
    assert looks_of(window, window.memory) != before
    window.menus.actions["shade.light"].trigger()
    put_away(window)


def test_that_the_look_of_the_system_is_another_picture_once_the_system_turns_dark(
    qtbot, shelved, monkeypatch
):
    shelved.settings.setValue(settings.SHADE.key, ShadeChoice.SYSTEM.value)
    window = opened(qtbot, shelved)
    light = looks_of(window, window.memory)
    monkeypatch.setattr("planner.desk.theme.theme_of", lambda choice: DARK)
    window._on_system_shade(Qt.ColorScheme.Dark)
    assert looks_of(window, window.memory) != light
    monkeypatch.undo()
    window.menus.actions["shade.light"].trigger()
    put_away(window)


def test_that_a_window_asks_for_the_picture_in_the_colours_it_is_about_to_have(qtbot, shelved):
    asked = []
    shelved.settings.setValue(settings.SHADE.key, ShadeChoice.SYSTEM.value)
    given = shelved._replace(find_glance=lambda path, day, looks: asked.append(looks))
    window = opened(qtbot, given)
    assert asked == [looks_of(window, window.memory)]
    put_away(window)


def test_that_trouble_while_opening_takes_the_picture_away(qtbot, shelved, kept, rooms, monkeypatch):
    put_away(opened(qtbot, shelved))
    with qtbot.captureExceptions() as caught:
        window = MainWindow(shelved)
        window.resize(1200, 700)
        monkeypatch.setattr(window, "load", lambda: 1 / 0)
        with qtbot.waitSignal(window.ready):
            window.show()
    assert [kind for kind, *_ in caught] == [ZeroDivisionError]
    assert window.cover is None
    assert window.updatesEnabled()
    put_away(window)


# ---- the bones of a window that has no picture


@pytest.fixture
def bones(qtbot):
    """A way to make the cover of a window of some size on a farm of some name."""
    windows = []

    def made(name="Mine", *, dark=False, size=(1280, 720)):
        window = QWidget()
        windows.append(window)
        qtbot.addWidget(window)
        window.resize(*size)
        return Cover(window, name, dark=dark)

    return made


def test_that_without_a_picture_the_window_says_which_farm_it_opens(qtbot, bare_window, file):
    bare_window.memory.remember(file)
    bare_window.load = lambda: None
    again = MainWindow(bare_window._services)
    assert again.cover.accessibleName() == "Opening the farm…"
    assert again.cover.name == file.stem
    again.load = lambda: None
    with qtbot.waitSignal(again.ready):
        again.show()
    assert again.cover is None
    again.close()
    again.deleteLater()
    del bare_window.load


@pytest.mark.parametrize(("dark", "grounds"), [(False, LIGHT_GROUNDS), (True, DARK_GROUNDS)])
def test_that_bones_are_drawn_in_the_look_that_comes(bones, dark, grounds):
    picture = bones(dark=dark).grab().toImage()
    assert picture.pixelColor(640, 3).name().upper() == grounds.ground
    assert picture.pixelColor(150, 715 - 40).name().upper() == grounds.field
    assert picture.pixelColor(1270, 400).name().upper() == grounds.panel
    inks = {picture.pixelColor(x, y).name().upper() for x in range(560, 720) for y in range(320, 360)}
    assert grounds.text in inks


def test_that_the_name_of_the_farm_is_written_whole_where_it_fits_and_never_beyond_its_card(bones):
    one, other = (bones(name).grab().toImage() for name in ("Mine", "Yours"))
    assert one != other
    long = bones("An endless name of a farm " * 9).grab().toImage()
    card = QRect(440, 306, 400, 108)
    beside = [
        QRect(0, 0, 1280, 305),
        QRect(0, 415, 1280, 305),
        QRect(0, 0, 439, 720),
        QRect(841, 0, 439, 720),
    ]
    assert all(long.copy(part) == one.copy(part) for part in beside)
    assert long.copy(card) != one.copy(card)


@pytest.mark.parametrize("size", [(1, 1), (60, 40), (320, 240), (700, 480), (5000, 3000)])
def test_that_bones_fit_a_window_of_any_size(bones, size):
    picture = bones("An endless name of a farm " * 9, size=size).grab()
    assert picture.size() == QSize(*size)


def test_that_the_soft_words_on_bones_can_be_read():
    for grounds in (LIGHT_GROUNDS, DARK_GROUNDS):
        panel = QColor(grounds.panel)
        soft = mixed(QColor(grounds.text), panel, SOFTLY)
        assert contrast(soft, panel) >= LEAST_CONTRAST
