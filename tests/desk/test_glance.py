"""A glance is what the lanes showed, is thrown away when anything about it is odd, and breaks nothing."""

import copy
import json
import os
import random
from datetime import timedelta

import pytest
from PySide6.QtWidgets import QApplication, QWidget

from planner.bootstrap_glance import GlanceShelf
from planner.desk import settings
from planner.desk.glance import (
    DAYS_AFTER,
    DAYS_BEFORE,
    GOOD_FOR_DAYS,
    GlanceError,
    from_plain,
    glance_of,
    to_plain,
)
from planner.desk.glance_view import GlanceView, StillMover
from planner.desk.lanes.canvases import BedsCanvas
from planner.desk.lanes.lanes_view import LanesView
from planner.desk.outlook import look_out
from planner.desk.scene_of import scene_of
from planner.desk.theme import LIGHT
from planner.desk.window import MainWindow
from tests.desk.helpers import NOW, TODAY, put_away, services
from tests.desk.lanes.demo import big_scene


@pytest.fixture(scope="module")
def scene(means, farm):
    return scene_of(look_out(farm, means.forecaster))


@pytest.fixture(scope="module")
def glance(farm, scene):
    return glance_of(farm.settings.name, scene, TODAY)


@pytest.fixture(scope="module")
def plain(glance):
    return json.loads(json.dumps(to_plain(glance)))


@pytest.fixture
def shelf(tmp_path):
    return GlanceShelf(tmp_path / "kept", "1.2.3")


@pytest.fixture
def file(tmp_path):
    path = tmp_path / "mine.raftweek"
    path.write_bytes(b"a farm, for all the shelf knows")
    return path


def kept_file(shelf, file, glance):
    shelf.keep(file, glance)
    (kept,) = shelf._folder.iterdir()
    return kept


def test_that_a_glance_comes_back_from_text_as_it_was(plain, glance):
    back = from_plain(plain)
    assert to_plain(back) == plain
    assert (back.name, back.taken_on) == (glance.name, glance.taken_on)
    assert back.scene.groups == glance.scene.groups


def test_that_nothing_near_today_is_left_out(glance, scene):
    low, high = TODAY.toordinal() - DAYS_BEFORE, TODAY.toordinal() + DAYS_AFTER
    near = [bar for bar in scene.bars() if bar.end > low and bar.start < high]
    assert near
    assert list(glance.scene.bars()) == near


def test_that_a_glance_of_a_very_large_farm_stays_small():
    whole = big_scene()
    taken = glance_of("large", whole, TODAY)
    assert 0 < len(taken.scene.bars()) < len(whole.bars()) / 2


def test_that_a_kept_glance_is_found_while_the_farm_is_as_it_was(shelf, file, glance, plain):
    shelf.keep(file, glance)
    assert to_plain(shelf.find(file, TODAY)) == plain


@pytest.mark.parametrize("change", ["content", "time", "journal", "gone"])
def test_that_a_glance_is_stale_once_the_farm_has_changed(shelf, file, glance, change):
    shelf.keep(file, glance)
    if change == "content":
        file.write_bytes(b"another farm")
    elif change == "time":
        os.utime(file, ns=(1, 1))
    elif change == "journal":
        file.with_name(f"{file.name}-wal").write_bytes(b"something is yet to be written")
    else:
        file.unlink()
    assert shelf.find(file, TODAY) is None


def test_that_a_glance_is_stale_after_some_weeks_and_when_the_clock_went_back(shelf, file, glance):
    shelf.keep(file, glance)
    assert shelf.find(file, TODAY + timedelta(days=GOOD_FOR_DAYS)) is not None
    assert shelf.find(file, TODAY + timedelta(days=GOOD_FOR_DAYS + 1)) is None
    assert shelf.find(file, TODAY - timedelta(days=1)) is None


def test_that_a_glance_of_another_version_of_the_program_is_left_alone(shelf, file, glance):
    shelf.keep(file, glance)
    assert GlanceShelf(shelf._folder, "1.2.4").find(file, TODAY) is None


def test_that_a_glance_of_another_farm_under_the_same_name_is_left_alone(shelf, file, glance, tmp_path):
    kept = kept_file(shelf, file, glance)
    other = tmp_path / "other.raftweek"
    other.write_bytes(file.read_bytes())
    kept.rename(shelf._place(other))
    assert shelf.find(other, TODAY) is None


@pytest.mark.parametrize("share", [0.0, 0.01, 0.3, 0.7, 0.999])
def test_that_a_glance_that_was_cut_off_is_left_alone(shelf, file, glance, share):
    kept = kept_file(shelf, file, glance)
    whole = kept.read_bytes()
    kept.write_bytes(whole[: int(len(whole) * share)])
    assert shelf.find(file, TODAY) is None


@pytest.mark.parametrize(
    "content",
    [b"\xff\xfe\x00", b"[" * 100_000, b"null", b"[1,2]", b'{"a":1}', b"9" * 5000, b"[NaN]"],
)
def test_that_anything_else_in_place_of_a_glance_is_left_alone(shelf, file, glance, content):
    kept = kept_file(shelf, file, glance)
    kept.write_bytes(content)
    assert shelf.find(file, TODAY) is None


def test_that_a_glance_too_large_to_be_one_is_not_even_read(shelf, file, glance):
    kept = kept_file(shelf, file, glance)
    with kept.open("ab") as end:
        end.write(b" " * 9_000_000)
    assert shelf.find(file, TODAY) is None


ODD = [None, -1, 10**12, 1e308, float("inf"), float("nan"), "", "x" * 600, True, [], [[]], {"a": 1}]


def holders(plain):
    """Yield every list in nested lists."""
    yield plain
    for each in plain:
        if isinstance(each, list):
            yield from holders(each)


def test_that_no_odd_value_anywhere_gets_further_than_the_reading(plain, qtbot):
    """What is let through all the same must be something that can be drawn."""
    lanes = LanesView(LIGHT, StillMover(), None)
    qtbot.addWidget(lanes)
    lanes.resize(900, 600)
    lanes.show()
    dice = random.Random(20270310)
    refused = 0
    for _ in range(400):
        tried = copy.deepcopy(plain)
        holder = dice.choice([each for each in holders(tried) if each])
        holder[dice.randrange(len(holder))] = dice.choice(ODD)
        try:
            found = from_plain(tried)
        except GlanceError:
            refused += 1
            continue
        lanes.set_scene(found.scene)
        lanes.go_to(TODAY)
        lanes.grab()
    assert refused > 250


@pytest.mark.parametrize("odd", [0, "", [], ["a"], [1, 2, 3], {"name": 1}])
def test_that_what_has_not_the_form_of_a_glance_is_refused(odd):
    with pytest.raises(GlanceError):
        from_plain(odd)


def test_that_curves_shorter_than_the_weeks_are_refused(plain):
    tried = copy.deepcopy(plain)
    tried[7][0][6][2].pop()
    with pytest.raises(GlanceError, match="values"):
        from_plain(tried)


def test_that_only_the_latest_glances_are_kept(shelf, glance, tmp_path):
    for number in range(12):
        path = tmp_path / f"{number}.raftweek"
        path.write_bytes(b"x")
        shelf.keep(path, glance)
    assert len(list(shelf._folder.iterdir())) == 8


def test_that_a_folder_that_cannot_be_written_does_no_harm(tmp_path, file, glance):
    (tmp_path / "kept").write_text("a file where the folder should be")
    shelf = GlanceShelf(tmp_path / "kept", "1.2.3")
    shelf.keep(file, glance)
    assert shelf.find(file, TODAY) is None


# ---- in the window


@pytest.fixture
def shelved(rooms, ask, tmp_path, file, glance, request):
    """Services whose latest farm has a glance, and a list of the glances kept."""
    kept = []
    given = services(rooms, tmp_path, ask)
    given = type(given)(
        **{name: getattr(given, name) for name in given.__dataclass_fields__}
        | {
            "find_glance": lambda path: glance if path == file else None,
            "keep_glance": lambda path, taken: kept.append((path, taken)),
        }
    )
    given.settings.setValue(settings.RECENT.key, [str(file)])
    return given, kept


def place_of(lanes, window):
    return lanes.mapTo(window, lanes.rect().topLeft()), lanes.size()


def pictures_of(lanes):
    QApplication.sendPostedEvents()
    return [lane.grab().toImage() for lane in (lanes.ruler, lanes.fish, lanes.beds, lanes.balance)]


def test_that_the_glance_is_the_picture_of_the_living_farm(qtbot, shelved):
    given, _ = shelved
    window = MainWindow(given)
    window.load = lambda: None
    window.resize(1500, 900)  # wide enough for every pane to be as wide as it likes
    window.show()
    qtbot.waitUntil(lambda: window.glance_view is not None)
    before = window.glance_view.lanes
    pictures, place = pictures_of(before), place_of(before, window)
    del window.load
    window.load()
    qtbot.waitUntil(lambda: place_of(window.workspace.lanes, window) == place)
    same = [one == other for one, other in zip(pictures, pictures_of(window.workspace.lanes), strict=True)]
    assert same == [True] * len(pictures)
    assert window.glance_view is None
    put_away(window)


def test_that_a_glance_is_said_to_be_opening_and_takes_no_hand(qtbot, shelved):
    given, _ = shelved
    window = MainWindow(given)
    window.load = lambda: None
    window.show()
    qtbot.waitUntil(lambda: window.glance_view is not None)
    assert window._saved.text() == "Opening…"
    assert not window.menus.actions["new.batch"].isEnabled()
    assert isinstance(window.glance_view, GlanceView)
    at = window.glance_view.lanes.mapTo(window, window.glance_view.lanes.rect().center())
    assert not isinstance(window.childAt(at), type(window.glance_view.lanes.beds))
    del window.load
    window.load()
    assert window._saved.text() != "Opening…"
    put_away(window)


def test_that_a_glance_of_the_farm_is_kept_when_the_window_closes(
    qtbot, shelved, monkeypatch, rooms, farm, file
):
    given, kept = shelved
    monkeypatch.setattr(rooms, "where", lambda session: file)
    window = MainWindow(given)
    window.show()
    qtbot.waitUntil(lambda: window.conduct.session is not None)
    scene = window.workspace.lanes.scene
    put_away(window)
    ((path, taken),) = kept
    assert path == file
    assert to_plain(taken) == to_plain(glance_of(farm.settings.name, scene, NOW.date()))


def test_that_without_a_glance_the_window_says_that_it_opens_the_farm(qtbot, bare_window):
    bare_window.load = lambda: None
    bare_window.show()
    qtbot.waitUntil(lambda: bare_window._painted)
    assert bare_window.glance_view is None
    assert any(
        getattr(each, "text", str)() == "Opening the farm…" for each in bare_window.findChildren(QWidget)
    )
    del bare_window.load


def test_that_the_glance_is_painted_before_anything_heavy_is_read_in(qtbot, shelved, monkeypatch):
    given, _ = shelved
    painted = []
    paint = BedsCanvas.paint_content

    def noted(canvas, *how):
        painted.append(canvas)
        return paint(canvas, *how)

    monkeypatch.setattr(BedsCanvas, "paint_content", noted)
    window = MainWindow(given)
    seen_at_load = []
    window.load = lambda: seen_at_load.append((window.glance_view.lanes.beds, list(painted)))
    window.show()
    qtbot.waitUntil(lambda: seen_at_load != [])
    ((beds, before),) = seen_at_load
    assert beds in before
    del window.load
    put_away(window)
