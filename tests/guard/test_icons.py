"""Every shipped icon can be drawn at the sizes the desk uses, and can be tinted."""

import re

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

from planner.shipped import shipped_path

APPLICATION_ICON = "raftweek"
ICONS = sorted(shipped_path("resources", "icons").glob("*.svg"))
TINTABLE = [path for path in ICONS if path.stem != APPLICATION_ICON]
# fmt: off
NEEDED = {
    "raftweek", "open", "new", "save-copy", "print", "undo", "redo", "zoom-in", "zoom-out", "today",
    "fish", "raft", "gravel", "nursery", "water", "calendar", "warning", "info", "search", "add",
    "remove", "lock", "pick", "move", "sow",
}
# fmt: on


def drawn(path, side):
    image = QImage(side, side, QImage.Format.Format_ARGB32)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    QSvgRenderer(str(path)).render(painter, QRectF(0, 0, side, side))
    painter.end()
    return image


def ink(image):
    side = image.width()
    return sum(image.pixelColor(x, y).alpha() > 127 for x in range(side) for y in range(side))


def test_that_every_icon_the_desk_needs_is_there():
    assert {path.stem for path in ICONS} >= NEEDED


@pytest.mark.parametrize("path", ICONS, ids=lambda path: path.stem)
@pytest.mark.parametrize("side", [16, 24, 48])
def test_that_an_icon_draws_something_and_leaves_its_rim_free(qapp, path, side):
    image = drawn(path, side)
    assert ink(image) > side
    assert all(image.pixelColor(corner, corner).alpha() < 127 for corner in (0, side - 1))


@pytest.mark.parametrize("path", TINTABLE, ids=lambda path: path.stem)
def test_that_an_icon_has_the_one_colour_that_the_desk_tints(path):
    text = path.read_text(encoding="utf-8")
    assert set(re.findall(r'(?:fill|stroke)="([^"]+)"', text)) <= {"none", "#000"}
    assert 'viewBox="0 0 24 24"' in text
