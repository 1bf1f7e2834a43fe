"""What is painted: only what is seen, only where it belongs, readable, and the same after scrolling."""

import os
import subprocess
import sys
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QRectF
from PySide6.QtGui import QFont, QImage, QPainter, QPdfWriter

from planner.desk.lanes.balance_lane import BalanceLook, paint_balance
from planner.desk.lanes.beds_lane import BedsLook, paint_beds
from planner.desk.lanes.fish_lane import nice_top, paint_fish
from planner.desk.lanes.grid import Calendar
from planner.desk.lanes.kit import BAND_PATTERN, FACES, Kit
from planner.desk.lanes.lane_bar import band_key, fish_key, paint_key, stage_key
from planner.desk.lanes.rows_layout import laid_out
from planner.desk.lanes.ruler import paint_ruler, ruler_height
from planner.desk.lanes.scene import BandMark
from planner.desk.lanes.time_scale import ZOOM_STEPS, TimeScale
from planner.desk.theme import DARK, LEAST_CONTRAST, LIGHT, contrast
from planner.farm.crops import Stage
from tests.desk.lanes.demo import CROPS, START, TODAY, big_scene, demo_scene
from tests.desk.lanes.hands import shown_view

BLANK = 0xFF123456
WIDTH, HEIGHT = 900, 420
INSIDE = QRectF(50, 40, 760, 320)
CALENDAR = Calendar(today=TODAY.toordinal())


def kit_of(theme=LIGHT) -> Kit:
    return Kit(theme, QFont("DejaVu Sans", 10))


def scale_of(kit: Kit, px: float, day: int = START) -> TimeScale:
    return TimeScale(origin=day, px_per_day=px, left=INSIDE.x() + kit.names_px)


def painted(paint) -> QImage:
    """Return a picture with a border of a colour that no theme has, painted inside of it."""
    image = QImage(WIDTH, HEIGHT, QImage.Format.Format_RGB32)
    image.fill(BLANK)
    painter = QPainter(image)
    painter.setFont(QFont("DejaVu Sans", 10))
    paint(painter)
    painter.end()
    return image


def beds_look(kit: Kit, scene, scroll: float = 0.0) -> BedsLook:
    layout = laid_out(scene.groups, folded=frozenset(), line_px=kit.line_px, head_px=kit.head_px)
    return BedsLook(layout=layout, scroll=scroll)


def lane_painters(kit: Kit, scene, px: float, scale: TimeScale | None = None):
    """Return every lane's painter as a function of a QPainter."""
    scale = scale or scale_of(kit, px)
    look = beds_look(kit, scene, scroll=37)
    times = INSIDE.adjusted(kit.names_px, 0, 0, 0)
    ruler = QRectF(times.x(), times.y(), times.width(), ruler_height(kit, CALENDAR))
    return {
        "ruler": lambda p: paint_ruler(p, ruler, scale, kit, CALENDAR),
        "fish": lambda p: paint_fish(p, INSIDE, scene.feeds, scale, kit, CALENDAR),
        "beds": lambda p: paint_beds(p, INSIDE, look, scale, kit, CALENDAR),
        "all elements": lambda p: paint_balance(
            p, INSIDE, scene.balances[0], scale, kit, CALENDAR, look=BalanceLook()
        ),
        "one element": lambda p: paint_balance(
            p, INSIDE, scene.balances[0], scale, kit, CALENDAR, look=BalanceLook(element="k")
        ),
    }


@pytest.mark.parametrize("px", [ZOOM_STEPS[0], 1.25, 3.5, 7.0, 20.0, ZOOM_STEPS[-1]])
@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
def test_that_no_lane_paints_outside_of_its_place(qapp, theme, px):
    for name, paint in lane_painters(kit_of(theme), demo_scene(), px).items():
        image = painted(paint)
        inside = INSIDE.toRect()
        outside = [
            (x, y)
            for x in range(0, WIDTH, 3)
            for y in range(0, HEIGHT, 3)
            if not inside.contains(QPoint(x, y)) and image.pixel(x, y) != BLANK
        ]
        assert outside == [], name
        middle = inside.center()
        assert image.pixel(inside.right() - 3, inside.top() + 3) != BLANK, name
        assert name == "ruler" or image.pixel(middle.x(), middle.y()) != BLANK, name


def test_that_the_lanes_paint_onto_paper_as_well(qapp, tmp_path):
    kit, scene = kit_of(), demo_scene()
    for name, paint in lane_painters(kit, scene, 7.0).items():
        path = tmp_path / f"{name}.pdf"
        writer = QPdfWriter(str(path))
        writer.setResolution(96)
        painter = QPainter(writer)
        painter.setFont(QFont("DejaVu Sans", 10))
        paint(painter)
        assert painter.end()
        assert path.read_bytes().startswith(b"%PDF")
        assert path.stat().st_size > 4000, name


@pytest.mark.parametrize("day", [START - 9000, START - 60, START + 170, START + 330, START + 40_000])
@pytest.mark.parametrize("px", [0.45, 7.0, 56.0])
def test_that_every_lane_can_be_painted_wherever_it_is_scrolled_to(qapp, day, px):
    kit, scene = kit_of(), demo_scene()
    scale = scale_of(kit, px, day)
    for paint in lane_painters(kit, scene, px, scale).values():
        image = painted(paint)
        assert image.pixel(INSIDE.toRect().right() - 3, INSIDE.toRect().top() + 3) != BLANK


def bars_that_touch(scene, rows, start: int, end: int) -> int:
    return sum(bar.start < end and bar.end > start for row in rows for bar in row.bars)


def test_that_of_a_big_farm_only_the_bars_in_sight_are_painted(qapp):
    kit, scene = kit_of(), big_scene()
    look = beds_look(kit, scene, scroll=4000)
    scale = scale_of(kit, 4.0, START + 600)
    counted = []
    painted(lambda p: counted.append(paint_beds(p, INSIDE, look, scale, kit, CALENDAR)))
    strips = [
        strip for strip in look.layout.strips if strip.bottom > 4000 and strip.top < 4000 + INSIDE.height()
    ]
    days = (INSIDE.width() - kit.names_px) / 4.0
    expected = bars_that_touch(
        scene, [strip.row for strip in strips if strip.row], START + 600, START + 600 + int(days)
    )
    assert 0 < expected <= counted[0] <= expected + 2 * len(strips)
    assert counted[0] < len(scene.bars()) / 50


def test_that_scrolling_a_row_paints_only_what_comes_into_sight(qtbot):
    view = shown_view(qtbot, scene=big_scene())
    view.go_to(date(2027, 6, 1))
    view.beds.refresh()
    view.beds.grab()
    whole = view.beds.bars_painted
    view.beds.verticalScrollBar().setValue(view.beds.verticalScrollBar().value() + 27)
    view.beds.grab()
    assert 0 < view.beds.bars_painted < whole / 3


@pytest.mark.parametrize(("across", "down"), [(33, 0), (-61, 0), (0, 17), (0, -9), (5000, 0), (0, 4000)])
def test_that_a_shifted_picture_is_the_picture_painted_anew(qtbot, across, down):
    view = shown_view(qtbot, scene=big_scene(rows=60, batches=1800, beds=3))
    view.go_to(date(2027, 6, 1))
    view.beds.verticalScrollBar().setValue(300)
    for lane in (view.beds, view.fish, view.balance):
        lane.grab()
    view.time.scroll_px(across)
    view.beds.verticalScrollBar().setValue(300 + down)
    shifted = [lane.grab().toImage() for lane in (view.beds, view.fish, view.balance)]
    for lane in (view.beds, view.fish, view.balance):
        lane.refresh()
    anew = [lane.grab().toImage() for lane in (view.beds, view.fish, view.balance)]
    for one, other in zip(shifted, anew, strict=True):
        assert differing_share(one, other) < 0.002


@pytest.mark.parametrize("zoom", [0.65, 3.5, 20.0])
def test_that_beds_moved_along_many_times_are_to_the_point_as_painted_anew(qtbot, zoom):
    view = shown_view(qtbot, scene=big_scene(rows=60, batches=1800, beds=3))
    view.go_to(date(2027, 6, 1))
    view.time.set_zoom(zoom)
    view.beds.refresh()
    view.beds.grab()
    for across in (33, -61, 240, -7, -190, 85):
        view.time.scroll_px(across)
        view.beds.grab()
    moved = view.beds.grab().toImage()
    view.beds.refresh()
    assert moved == view.beds.grab().toImage()


def test_that_zooming_shows_the_picture_stretched_and_sharp_a_moment_later(qtbot):
    view = shown_view(qtbot, scene=big_scene(rows=60, batches=1800, beds=3))
    view.go_to(date(2027, 6, 1))
    view.beds.grab()
    view.beds.bars_painted = 0
    view.time.zoom(closer=True)
    stretched = view.beds.grab().toImage()
    assert view.beds.bars_painted == 0
    qtbot.waitUntil(lambda: bool(view.beds.grab()) and view.beds.bars_painted > 0)
    sharp = view.beds.grab().toImage()
    assert stretched != sharp
    view.beds.refresh()
    assert sharp == view.beds.grab().toImage()


def test_that_a_jump_to_other_days_is_painted_at_once(qtbot):
    view = shown_view(qtbot, scene=big_scene(rows=60, batches=1800, beds=3))
    view.go_to(date(2027, 6, 1))
    view.beds.grab()
    view.go_to(date(2029, 6, 1))
    jumped = view.beds.grab().toImage()
    view.beds.refresh()
    assert jumped == view.beds.grab().toImage()


def differing_share(one: QImage, other: QImage) -> float:
    """Return the share of points that differ; names cut at an edge may be set anew a little."""
    assert one.size() == other.size()
    points = [(x, y) for x in range(0, one.width(), 2) for y in range(0, one.height(), 2)]
    return sum(one.pixel(x, y) != other.pixel(x, y) for x, y in points) / len(points)


def test_that_bars_too_narrow_to_tell_apart_become_one_block(qapp):
    from planner.desk.lanes.bars import Shapes, gather, view_of

    scene = demo_scene()
    row = scene.groups[1].rows[0]
    shapes = Shapes()
    scale = TimeScale(origin=START - 100, px_per_day=0.05)
    gather(shapes, row.bars, top=0, line_px=24, view=view_of(scale, QRectF(0, 0, 600, 40)))
    assert shapes.bars == len(row.bars)
    assert 1 <= len(shapes.blocks) < len(row.bars)
    assert not shapes.named


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
def test_that_every_letter_can_be_read_on_its_ground(qapp, theme):
    kit = kit_of(theme)
    inks = [kit.stage_look(key).ink for key in range(len(CROPS) * len(Stage))]
    inks += [kit.band_look(band).ink for band in BandMark]
    inks += [kit.plain_stage_ink(stage) for stage in Stage]
    assert min(contrast(ink.text, ink.fill) for ink in inks) >= LEAST_CONTRAST
    for ground in (theme.field, theme.panel, theme.ground):
        for ink in (theme.text, theme.muted):
            assert contrast(ink, ground) >= LEAST_CONTRAST
    assert contrast(theme.text, theme.wrong_ground) >= LEAST_CONTRAST
    assert contrast(theme.wrong, theme.ground) >= LEAST_CONTRAST


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
def test_that_stages_and_bands_differ_in_shade_pattern_and_letter(qapp, theme):
    kit = kit_of(theme)
    for key in (stage_key(kit), band_key(kit)):
        assert len({entry.letter for entry in key}) == len(key)
        assert len({entry.pattern for entry in key}) == len(key)
        assert len({entry.ink.fill.name() for entry in key}) == len(key)
    assert set(BAND_PATTERN) == set(BandMark) - {BandMark.NO_DEMAND}
    assert len({entry.letter for entry in fish_key(kit)}) == len(fish_key(kit))


def test_that_a_key_without_room_is_left_out_whole(qapp):
    kit = kit_of()
    key = stage_key(kit)
    counts = []
    for width in (10, 200, 400, 2000):
        painted(lambda p, w=width: counts.append(paint_key(p, QRectF(0, 0, w, 30), key, kit)))
    assert counts == sorted(counts)
    assert counts[0] == 0
    assert counts[-1] == len(key)


def test_that_text_is_shortened_to_its_room_and_never_wider(qapp):
    kit = kit_of()
    for face in FACES:
        for room in (12.0, 40.0, 90.0, 400.0):
            text = kit.shortened("South raft under the long shade cloth", face, room)
            assert kit.width(text, face) <= room + 1


@pytest.mark.parametrize(
    ("highest", "top"), [(0.0, 1.0), (0.7, 0.8), (1.0, 1.0), (730.0, 800.0), (1001.0, 1500.0), (9.01, 10.0)]
)
def test_that_a_plot_ends_at_a_round_number(highest, top):
    assert nice_top(highest) == pytest.approx(top)


def test_that_a_picture_at_twice_the_scale_has_twice_the_points(root):
    code = (
        "from PySide6.QtWidgets import QApplication\n"
        "app = QApplication([])\n"
        "from tests.desk.lanes.demo import demo_scene\n"
        "from tests.desk.lanes.hands import NotingMover\n"
        "from planner.desk.lanes.lanes_view import LanesView\n"
        "from planner.desk.theme import LIGHT\n"
        "view = LanesView(LIGHT, NotingMover(), None)\n"
        "view.resize(800, 600)\n"
        "view.set_scene(demo_scene())\n"
        "view.show()\n"
        "image = view.beds.viewport().grab().toImage()\n"
        "print(image.devicePixelRatio(), image.width() / view.beds.viewport().width())\n"
        "points = [(x, y) for x in range(0, 1000, 2) for y in range(0, 300, 2)]\n"
        "halves = sum(image.pixel(x, y) != image.pixel(x + 1, y) for x, y in points)\n"
        "print(halves > 0)\n"
    )
    environment = {
        **os.environ,
        "QT_SCALE_FACTOR": "2",
        "PYTHONPATH": str(root),
        "QT_QPA_PLATFORM": "offscreen",
    }
    done = subprocess.run(
        [sys.executable, "-c", code], env=environment, capture_output=True, text=True, check=False
    )
    assert done.stdout.split() == ["2.0", "2.0", "True"], done.stderr


def test_that_nothing_heavy_is_read_in_for_the_first_paint(root):
    code = (
        "import sys\nimport planner.desk.lanes.lanes_view\n"
        "print([name for name in ('numpy', 'scipy', 'sqlalchemy') if name in sys.modules])"
    )
    environment = {**os.environ, "PYTHONPATH": str(root)}
    done = subprocess.run(
        [sys.executable, "-c", code], env=environment, capture_output=True, text=True, check=False
    )
    assert done.stdout.strip() == "[]", done.stderr


def test_that_every_word_of_the_lanes_is_found_for_translation(tmp_path, root):
    tool = Path(sys.executable).with_name("pyside6-lupdate")
    words = root / "planner" / "desk" / "lanes" / "words.py"
    found = tmp_path / "words.ts"
    subprocess.run([str(tool), str(words), "-ts", str(found)], capture_output=True, check=True)
    assert found.read_text().count("<source>") > 60
    assert words.read_text().count("QCoreApplication.translate(") >= found.read_text().count("<source>")
