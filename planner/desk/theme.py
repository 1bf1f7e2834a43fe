"""Every colour, distance, hatch and picture of the desk, as one value that is handed down.

Painters ask the theme and nobody else, so that light and dark, and paper beside screen, stay in step.
Must know nothing of farms or forecasts: stages, elements and bands come in as their own words.

Data colours are the eight of Okabe and Ito, told apart by people with any of the common colour-vision
deficiencies: Wong, B. (2011) Points of view: Color blindness. Nature Methods 8, 441,
doi:10.1038/nmeth.1618. Contrast is reckoned as in the Web Content Accessibility Guidelines 2.2,
success criterion 1.4.3, which asks for 4.5 to 1 between text and ground.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum
from pathlib import Path
from typing import Final

from PySide6.QtCore import QByteArray, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QGuiApplication,
    QIcon,
    QPainter,
    QPalette,
    QPixmap,
)
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QApplication

from planner.desk.grounds import (
    DARK_GROUNDS,
    DUE_WIDTH,
    FAMILY,
    FONT_POINTS,
    LIGHT_GROUNDS,
    SIDE_WIDTH,
    load_font,
)
from planner.desk.shade import ShadeChoice
from planner.shipped import shipped_path

LEAST_CONTRAST: Final = 4.5
STRONG_CONTRAST: Final = 7.0
"""Asked for by success criterion 1.4.6 of the same guidelines; kept where the system wants high contrast."""
_BOLD_FILE: Final = "DejaVuSans-Bold.ttf"

OKABE_ITO: Final = {
    "black": "#000000",
    "orange": "#E69F00",
    "sky blue": "#56B4E9",
    "bluish green": "#009E73",
    "yellow": "#F0E442",
    "blue": "#0072B2",
    "vermilion": "#D55E00",
    "reddish purple": "#CC79A7",
}
"""The eight data colours of Okabe and Ito, as printed by Wong (2011)."""

_DATA_ORDER: Final = (
    "bluish green",
    "sky blue",
    "orange",
    "reddish purple",
    "yellow",
    "blue",
    "vermilion",
)
_ELEMENTS: Final = {
    "n": "blue",
    "p": "orange",
    "k": "reddish purple",
    "ca": "sky blue",
    "mg": "bluish green",
    "fe": "vermilion",
}
_BANDS: Final = {"short": "vermilion", "thin": "orange", "met": "bluish green", "ample": "blue"}
_SHARE_OF_STAGE: Final = {
    "germination": 0.25,
    "nursery": 0.4,
    "spacing": 0.6,
    "bed": 0.8,
    "picking": 1.0,
    "clearing": 0.12,
}
"""How much of a crop's colour each stage shows; the rest is ground."""

ICON_SIZES: Final = (16, 20, 40)
_DRAWN_IN: Final = b'"#000"'
"""The one colour of the shipped pictures, put in the theme's own when they are drawn."""

_HIGH_CONTRAST: Final = Qt.ContrastPreference.HighContrast
_KNEE: Final = 0.04045
_LINEAR: Final = 12.92
_OFFSET: Final = 0.055
_GAMMA: Final = 2.4
_LUMINANCE_WEIGHTS: Final = (0.2126, 0.7152, 0.0722)
_FLARE: Final = 0.05


class Shade(Enum):
    """Which of the two looks is drawn."""

    LIGHT = "light"
    DARK = "dark"


@dataclass(frozen=True, slots=True, kw_only=True)
class Metrics:
    """Distances in device-independent pixels."""

    hair: int = 1
    tight: int = 4
    gap: int = 8
    margin: int = 12
    wide: int = 20
    row: int = 28
    icon: int = 20
    radius: int = 4
    side_width: int = SIDE_WIDTH
    due_width: int = DUE_WIDTH
    field_width: int = 190


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Theme:
    """The look in use: colours for grounds, text, lines and states, and the distances."""

    shade: Shade
    ground: QColor
    panel: QColor
    field: QColor
    stripe: QColor
    line: QColor
    faint_line: QColor
    text: QColor
    muted: QColor
    accent: QColor
    on_accent: QColor
    link: QColor
    wrong: QColor
    wrong_ground: QColor
    good: QColor
    notice: QColor
    notice_ground: QColor
    today: QColor
    metrics: Metrics = Metrics()

    @property
    def dark(self) -> bool:
        """Tell whether this is the dark look."""
        return self.shade is Shade.DARK

    def data_colour(self, position: int) -> QColor:
        """Return a data colour by position; after seven the row begins again."""
        return QColor(OKABE_ITO[_DATA_ORDER[position % len(_DATA_ORDER)]])

    def element_colour(self, element: str) -> QColor:
        """Return the colour of an element by its symbol, in any letter case."""
        return QColor(OKABE_ITO[_ELEMENTS[element.lower()]])

    def band_colour(self, band: str) -> QColor:
        """Return the colour of a supply band by its word; muted for no demand."""
        return QColor(OKABE_ITO[_BANDS[band]]) if band in _BANDS else QColor(self.muted)

    def stage_colour(self, stage: str, colour: QColor) -> QColor:
        """Return the shade of a crop's colour that a stage, by its word, is filled with."""
        return mixed(colour, self.field, _SHARE_OF_STAGE[stage])

    def stage_pattern(self, stage: str, ink: QColor) -> QBrush:
        """Return the hatch of a stage, by its word, drawn in `ink`; to be laid over the fill."""
        from planner.desk.hatches import hatch

        return hatch(stage, ink)

    def on(self, colour: QColor) -> QColor:
        """Return black or white, whichever can be read better on `colour`."""
        black, white = QColor("#000000"), QColor("#FFFFFF")
        return black if contrast(black, colour) >= contrast(white, colour) else white


LIGHT: Final = Theme(
    shade=Shade.LIGHT,
    ground=QColor(LIGHT_GROUNDS.ground),
    panel=QColor(LIGHT_GROUNDS.panel),
    field=QColor(LIGHT_GROUNDS.field),
    stripe=QColor("#F3F7F5"),
    line=QColor(LIGHT_GROUNDS.line),
    faint_line=QColor(LIGHT_GROUNDS.faint_line),
    text=QColor(LIGHT_GROUNDS.text),
    muted=QColor("#4C5A54"),
    accent=QColor("#005F94"),
    on_accent=QColor("#FFFFFF"),
    link=QColor("#005F94"),
    wrong=QColor("#9A3A00"),
    wrong_ground=QColor("#FDEDE2"),
    good=QColor("#00604A"),
    notice=QColor("#17211D"),
    notice_ground=QColor("#FFF3C4"),
    today=QColor("#D55E00"),
)

DARK: Final = Theme(
    shade=Shade.DARK,
    ground=QColor(DARK_GROUNDS.ground),
    panel=QColor(DARK_GROUNDS.panel),
    field=QColor(DARK_GROUNDS.field),
    stripe=QColor("#242E33"),
    line=QColor(DARK_GROUNDS.line),
    faint_line=QColor(DARK_GROUNDS.faint_line),
    text=QColor(DARK_GROUNDS.text),
    muted=QColor("#AAB7B1"),
    accent=QColor("#7CC4EE"),
    on_accent=QColor("#08161E"),
    link=QColor("#7CC4EE"),
    wrong=QColor("#FFA26B"),
    wrong_ground=QColor("#3A2418"),
    good=QColor("#5FD3AE"),
    notice=QColor("#F6EFD2"),
    notice_ground=QColor("#3B3413"),
    today=QColor("#FF8A3D"),
)


LIGHT_STRONG: Final = replace(
    LIGHT,
    ground=QColor("#FFFFFF"),
    panel=QColor("#FFFFFF"),
    field=QColor("#FFFFFF"),
    stripe=QColor("#F0F0F0"),
    line=QColor("#000000"),
    faint_line=QColor("#595959"),
    text=QColor("#000000"),
    muted=QColor("#000000"),
    accent=QColor("#00375A"),
    link=QColor("#00375A"),
    wrong=QColor("#7A2500"),
    wrong_ground=QColor("#FFFFFF"),
    good=QColor("#003D2E"),
    notice=QColor("#000000"),
    today=QColor("#A33A00"),
)
DARK_STRONG: Final = replace(
    DARK,
    ground=QColor("#000000"),
    panel=QColor("#000000"),
    field=QColor("#000000"),
    stripe=QColor("#1A1A1A"),
    line=QColor("#FFFFFF"),
    faint_line=QColor("#A6A6A6"),
    text=QColor("#FFFFFF"),
    muted=QColor("#FFFFFF"),
    accent=QColor("#9AD8FF"),
    on_accent=QColor("#000000"),
    link=QColor("#9AD8FF"),
    wrong=QColor("#FFB68A"),
    wrong_ground=QColor("#000000"),
    good=QColor("#7BEBC6"),
    notice=QColor("#FFFFFF"),
    notice_ground=QColor("#262100"),
)


def theme_of(choice: ShadeChoice) -> Theme:
    """Return the look for a choice; with "system", light unless the system says dark.

    Either look has more contrast where the system asks for that.
    """
    dark = choice is ShadeChoice.DARK
    if choice is ShadeChoice.SYSTEM:
        dark = QGuiApplication.styleHints().colorScheme() is Qt.ColorScheme.Dark
    if wants_contrast():
        return DARK_STRONG if dark else LIGHT_STRONG
    return DARK if dark else LIGHT


def wants_contrast() -> bool:
    """Tell whether the system asks programs for high contrast."""
    hints = QGuiApplication.styleHints()  # held by a name, or what it hands out is gone at once
    return hints.accessibility().contrastPreference() is _HIGH_CONTRAST


def load_bold() -> None:
    """Make the bold cut of the shipped typeface known, which nothing needs before there is a farm to show."""
    load_font(_BOLD_FILE)


def dress(application: QApplication, theme: Theme) -> None:
    """Give the application its palette and typeface; its style is chosen when it is made."""
    application.setFont(QFont(FAMILY, FONT_POINTS))
    application.setPalette(palette_of(theme))


def palette_of(theme: Theme) -> QPalette:
    """Return the Qt palette of a theme."""
    role = QPalette.ColorRole
    found = QPalette()
    for each, colour in (
        (role.Window, theme.ground),
        (role.WindowText, theme.text),
        (role.Base, theme.field),
        (role.AlternateBase, theme.stripe),
        (role.Text, theme.text),
        (role.PlaceholderText, theme.muted),
        (role.Button, theme.panel),
        (role.ButtonText, theme.text),
        (role.BrightText, theme.wrong),
        (role.ToolTipBase, theme.panel),
        (role.ToolTipText, theme.text),
        (role.Highlight, theme.accent),
        (role.HighlightedText, theme.on_accent),
        (role.Accent, theme.accent),
        (role.Link, theme.link),
        (role.LinkVisited, theme.link),
        (role.Light, mixed(theme.panel, theme.field, 0.5)),
        (role.Midlight, theme.faint_line),
        (role.Mid, theme.line),
        (role.Dark, theme.line),
        (role.Shadow, QColor("#000000")),
    ):
        found.setColor(each, colour)
    for each in (role.WindowText, role.Text, role.ButtonText):
        found.setColor(QPalette.ColorGroup.Disabled, each, mixed(theme.muted, theme.ground, 0.7))
    return found


def mixed(colour: QColor, ground: QColor, share: float) -> QColor:
    """Return `share` of a colour and the rest of a ground, laid over each other.

    >>> mixed(QColor("#000000"), QColor("#FFFFFF"), 0.5).name()
    '#808080'
    """
    rest = 1 - share
    return QColor.fromRgbF(
        colour.redF() * share + ground.redF() * rest,
        colour.greenF() * share + ground.greenF() * rest,
        colour.blueF() * share + ground.blueF() * rest,
    )


def contrast(one: QColor, other: QColor) -> float:
    """Return the contrast ratio of two opaque colours, 1 to 21, as WCAG 2.2 defines it.

    >>> round(contrast(QColor("#000000"), QColor("#FFFFFF")), 1)
    21.0
    """
    bright, dim = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (bright + _FLARE) / (dim + _FLARE)


def _luminance(colour: QColor) -> float:
    channels = (colour.redF(), colour.greenF(), colour.blueF())
    return sum(
        weight * _linear(channel) for weight, channel in zip(_LUMINANCE_WEIGHTS, channels, strict=True)
    )


def _linear(channel: float) -> float:
    return channel / _LINEAR if channel <= _KNEE else float(((channel + _OFFSET) / (1 + _OFFSET)) ** _GAMMA)


def icon(name: str, theme: Theme, sizes: tuple[int, ...] = ICON_SIZES) -> QIcon:
    """Return the shipped picture called `name` in the theme's text colour; empty when there is none.

    It is drawn ready in every one of the sizes [px].
    """
    path = shipped_path("resources", "icons", f"{name}.svg")
    if not path.is_file():
        return QIcon()
    found = QIcon()
    for mode, colour in (
        (QIcon.Mode.Normal, theme.text),
        (QIcon.Mode.Disabled, mixed(theme.muted, theme.ground, 0.6)),
    ):
        for pixmap in _pixmaps(path, colour, sizes):
            found.addPixmap(pixmap, mode)
    return found


def _pixmaps(path: Path, colour: QColor, sizes: tuple[int, ...]) -> list[QPixmap]:
    drawing = path.read_bytes().replace(_DRAWN_IN, f'"{colour.name()}"'.encode())
    renderer = QSvgRenderer(QByteArray(drawing))
    if not renderer.isValid():
        return []
    found = []
    for size in sizes:
        pixmap = QPixmap(size, size)
        pixmap.fill(Qt.GlobalColor.transparent)
        painter = QPainter(pixmap)
        renderer.render(painter)
        painter.end()
        found.append(pixmap)
    return found
