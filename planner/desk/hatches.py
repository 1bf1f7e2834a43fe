"""The hatches that tell stages apart without colour, as brushes. Must know nothing of themes or farms."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QImage, QPainter, QPen

_TILE: Final = 8
_HATCH_WIDTH: Final = 1.1
_ACROSS, _DOWN = 16, 4
"""How often a tile is repeated in the image of a brush."""


def hatch(stage: str, ink: QColor) -> QBrush:
    """Return a hatch that stands for a stage even without colour.

    Germination is sparse dots, nursery close dots, spacing upright strokes, bed rising strokes,
    picking a lattice, clearing falling strokes.
    """
    image = QImage(QSize(_TILE, _TILE), QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(ink, _HATCH_WIDTH))
    painter.setBrush(ink)
    _STROKES[stage](painter)
    painter.end()
    return QBrush(_repeated(image))


def _repeated(tile: QImage) -> QImage:
    """Return a sheet of many equal tiles: Qt lays a brush tile by tile, and large ones are laid quicker."""
    sheet = QImage(tile.width() * _ACROSS, tile.height() * _DOWN, tile.format())
    sheet.fill(Qt.GlobalColor.transparent)
    painter = QPainter(sheet)
    painter.fillRect(sheet.rect(), QBrush(tile))
    painter.end()
    return sheet


def _dot(painter: QPainter, x: float, y: float) -> None:
    painter.drawEllipse(QRectF(x, y, _HATCH_WIDTH, _HATCH_WIDTH))


def _sparse_dots(painter: QPainter) -> None:
    _dot(painter, _TILE / 2, _TILE / 2)


def _close_dots(painter: QPainter) -> None:
    _dot(painter, _TILE / 4, _TILE / 4)
    _dot(painter, _TILE * 3 / 4, _TILE * 3 / 4)


def _upright(painter: QPainter) -> None:
    painter.drawLine(_TILE // 2, 0, _TILE // 2, _TILE)


def _rising(painter: QPainter) -> None:
    for shift in (-_TILE, 0, _TILE):
        painter.drawLine(shift, _TILE, shift + _TILE, 0)


def _falling(painter: QPainter) -> None:
    for shift in (-_TILE, 0, _TILE):
        painter.drawLine(shift, 0, shift + _TILE, _TILE)


def _lattice(painter: QPainter) -> None:
    _rising(painter)
    _falling(painter)


_STROKES: Final = {
    "germination": _sparse_dots,
    "nursery": _close_dots,
    "spacing": _upright,
    "bed": _rising,
    "picking": _lattice,
    "clearing": _falling,
}
