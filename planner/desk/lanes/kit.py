"""What every painter of the lanes draws with: typefaces, fills, hatches, measured and shortened text.

Made from a theme and a font, and thrown away when either changes. Must know nothing of scenes' contents.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontMetricsF,
    QPainter,
    QStaticText,
)

from planner.desk.lanes import words
from planner.desk.lanes.scene import BandMark, Bar
from planner.desk.theme import Theme, mixed
from planner.farm.crops import Stage

_SMALL: Final = 0.84
_LINE: Final = 1.42
_HEAD: Final = 1.75
_NAMES_EMS: Final = 23.0
_HATCH_INK: Final = 0.2
_CACHED_TEXTS: Final = 6000
_ANY_ROOM: Final = 1e9
_PLATE_PAD: Final = 3.0

_SHADE: Final = {
    Stage.GERMINATION: 0.12,
    Stage.NURSERY: 0.24,
    Stage.SPACING: 0.34,
    Stage.BED: 0.46,
    Stage.PICKING: 0.72,
    Stage.CLEARING: 0.05,
}
_BAND_SHADE: Final = {
    BandMark.SHORT: 0.66,
    BandMark.THIN: 0.36,
    BandMark.MET: 0.16,
    BandMark.AMPLE: 0.24,
    BandMark.NO_DEMAND: 0.0,
}


BAND_PATTERN: Final = {
    BandMark.SHORT: "picking",
    BandMark.THIN: "bed",
    BandMark.MET: "germination",
    BandMark.AMPLE: "spacing",
}
"""Hatch of each band of supply, by the stage that has the same; no demand has none."""

_STAGE_ORDER: Final = tuple(Stage)
STAGES: Final = len(_STAGE_ORDER)
"""Number of stages; a stage of a crop is looked up by colour × this + its order."""


class Face:
    """Which typeface a text is set in; plain numbers, since they are looked up for every text."""

    PLAIN: Final = 0
    SMALL: Final = 1
    BOLD: Final = 2
    SMALL_BOLD: Final = 3


FACES: Final = (Face.PLAIN, Face.SMALL, Face.BOLD, Face.SMALL_BOLD)


@dataclass(frozen=True, slots=True)
class Ink:
    """A fill with the ink that is read on it, and the quieter ink of its hatch."""

    fill: QColor
    text: QColor
    hatch: QColor


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """Shade, hatch and letter of a stage or a band."""

    ink: Ink
    hatch: QBrush | None
    letter: str


class Kit:
    """Fonts, colours and shortened text for one theme and font; looks every answer up the second time."""

    def __init__(self, theme: Theme, font: QFont) -> None:
        self.theme = theme
        self._fonts = _faces(font)
        self._metrics = [QFontMetricsF(each) for each in self._fonts]
        self.heights = [each.height() for each in self._metrics]
        self._texts: dict[tuple[str, int, int], QStaticText] = {}
        self._widths: dict[tuple[str, int], float] = {}
        self._brushes: dict[tuple[str, int], QBrush] = {}
        self._looks: dict[int, Look] = {}
        self._titles: dict[tuple[str, str, int, int, int], tuple[QStaticText, float, int] | None] = {}
        self._band_looks = {band: self._band_look(band) for band in BandMark}
        height = self._metrics[0].height()
        self.line_px = float(round(height * _LINE))
        self.head_px = float(round(height * _HEAD))
        self.names_px = float(round(self._metrics[0].averageCharWidth() * _NAMES_EMS + height))
        self.text_px = height
        self.small_px = self._metrics[Face.SMALL].height()

    def font(self, face: int) -> QFont:
        """Return the font of a face."""
        return self._fonts[face]

    def width(self, text: str, face: int) -> float:
        """Return how wide a text is [px]."""
        key = (text, face)
        found = self._widths.get(key)
        if found is None:
            if len(self._widths) > _CACHED_TEXTS:
                self._widths.clear()
            found = self._widths[key] = self._metrics[face].horizontalAdvance(text)
        return found

    def height(self, face: int) -> float:
        """Return how high a line of text is [px]."""
        return self.heights[face]

    def shortened(self, text: str, face: int, room: float) -> str:
        """Return the text, with an ellipsis when it is wider than `room`."""
        if self.width(text, face) <= room:
            return text
        return self._metrics[face].elidedText(text, Qt.TextElideMode.ElideRight, room)

    def write(
        self,
        painter: QPainter,
        box: QRectF,
        text: str,
        *,
        face: int = Face.PLAIN,
        centred: bool = False,
    ) -> float:
        """Write one line at the left of a box or in its middle, shortened to fit; return its width."""
        room = box.width()
        if room < 2 or not text:
            return 0.0
        static, width = self._static(text, face, room)
        x = box.x() + (room - width) / 2 if centred else box.x()
        y = box.y() + (box.height() - self.heights[face]) / 2
        painter.setFont(self._fonts[face])
        painter.drawStaticText(QPointF(x, y), static)
        return width

    def _static(self, text: str, face: int, room: float) -> tuple[QStaticText, float]:
        whole = self.width(text, face)
        key = (text, face, -1 if whole <= room else int(room))
        static = self._texts.get(key)
        if static is None:
            if len(self._texts) > _CACHED_TEXTS:
                self._texts.clear()
            static = QStaticText(text if whole <= room else self.shortened(text, face, room))
            static.setTextFormat(Qt.TextFormat.PlainText)
            static.prepare(font=self._fonts[face])
            self._texts[key] = static
        return static, min(whole, room)

    def crop_colour(self, position: int) -> QColor:
        """Return the colour of a crop by its place in the list of crops."""
        return self.theme.data_colour(position)

    def stage_look(self, key: int) -> Look:
        """Return all that a stage of a crop is painted with, by its number."""
        found = self._looks.get(key)
        if found is None:
            colour, order = divmod(key, STAGES)
            stage = _STAGE_ORDER[order]
            ink = _ink(self.theme, mixed(self.crop_colour(colour), self.theme.field, _SHADE[stage]))
            found = self._looks[key] = Look(
                ink=ink, hatch=self.hatch(stage.value, ink.hatch), letter=words.stage_letter(stage)
            )
        return found

    def title(self, bar: Bar, face: int, room: int) -> tuple[QStaticText, float, int] | None:
        """Return the longest name of a bar that fits, its width and its face.

        Where the plain face is too wide, the small one is tried before a shorter name. None when nothing
        fits whole: part of a code could be mistaken for another.
        """
        key = (bar.crop, bar.code, bar.plants, face, room)
        if key not in self._titles:
            if len(self._titles) > _CACHED_TEXTS:
                self._titles.clear()
            self._titles[key] = self._title(bar, face, room)
        return self._titles[key]

    def _title(self, bar: Bar, face: int, room: int) -> tuple[QStaticText, float, int] | None:
        for way in words.bar_titles(bar):
            for each in (face, Face.SMALL):
                if self.width(way, each) <= room:
                    return (*self._static(way, each, room), each)
        return None

    def static(self, text: str, face: int) -> tuple[QStaticText, float]:
        """Return a text laid out ready, whole, and its width."""
        return self._static(text, face, _ANY_ROOM)

    def plain_stage_ink(self, stage: Stage) -> Ink:
        """Return fill and inks of a stage of no particular crop."""
        return _ink(self.theme, mixed(self.theme.muted, self.theme.field, _SHADE[stage]))

    def band_look(self, band: BandMark) -> Look:
        """Return all that a band of supply is painted with."""
        return self._band_looks[band]

    def _band_look(self, band: BandMark) -> Look:
        ink = _ink(self.theme, mixed(self.theme.band_colour(band.value), self.theme.field, _BAND_SHADE[band]))
        pattern = BAND_PATTERN.get(band)
        hatch = self.hatch(pattern, ink.hatch) if pattern else None
        return Look(ink=ink, hatch=hatch, letter=words.band_letter(band))

    def hatch(self, pattern: str, ink: QColor) -> QBrush:
        """Return the hatch called by a stage's word, made once."""
        key = (pattern, ink.rgba())
        if key not in self._brushes:
            self._brushes[key] = self.theme.stage_pattern(pattern, ink)
        return self._brushes[key]

    def plate(self, painter: QPainter, box: QRectF, fill: QColor, width: float, height: float) -> None:
        """Lay plain ground under a text that begins at the left of a box."""
        top = box.y() + (box.height() - height) / 2
        painter.fillRect(QRectF(box.x() - _PLATE_PAD, top, width + 2 * _PLATE_PAD, height), fill)


def _faces(font: QFont) -> list[QFont]:
    faces = [QFont(font) for _ in FACES]
    for face in (Face.SMALL, Face.SMALL_BOLD):
        _scale(faces[face], _SMALL)
    for face in (Face.BOLD, Face.SMALL_BOLD):
        faces[face].setWeight(QFont.Weight.Bold)
    return faces


def _scale(font: QFont, by: float) -> None:
    if font.pointSizeF() > 0:
        font.setPointSizeF(font.pointSizeF() * by)
    else:
        font.setPixelSize(round(font.pixelSize() * by))


def _ink(theme: Theme, fill: QColor) -> Ink:
    text = theme.on(fill)
    return Ink(fill=fill, text=text, hatch=mixed(text, fill, _HATCH_INK))
