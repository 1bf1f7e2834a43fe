"""What the desk looks like can be read by everyone, in light and in dark."""

from itertools import combinations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPalette
from PySide6.QtWidgets import QApplication

from planner.desk import theme as themes
from planner.desk.hatches import hatch
from planner.desk.shade import ShadeChoice
from planner.desk.theme import (
    DARK,
    DARK_STRONG,
    LEAST_CONTRAST,
    LIGHT,
    LIGHT_STRONG,
    OKABE_ITO,
    STRONG_CONTRAST,
    contrast,
)
from planner.farm.crops import Stage
from planner.farm.species import ELEMENTS

BOTH = pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
LEAST_FOR_MARKS = 3.0
GROUNDS = ("ground", "panel", "field", "stripe")


def test_that_contrast_agrees_with_the_guideline():
    """WCAG 2.2: black on white is 21 to 1; #767676 on white is the well-known grey just above 4.5."""
    assert contrast(QColor("#000000"), QColor("#FFFFFF")) == pytest.approx(21)
    assert contrast(QColor("#767676"), QColor("#FFFFFF")) == pytest.approx(4.54, abs=0.005)
    assert contrast(QColor("#0072B2"), QColor("#0072B2")) == 1


@BOTH
@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("ink", ["text", "muted", "link", "wrong", "good"])
def test_that_text_can_be_read_on_every_ground(theme, ink, ground):
    assert contrast(getattr(theme, ink), getattr(theme, ground)) >= LEAST_CONTRAST


@BOTH
@pytest.mark.parametrize(
    ("ink", "ground"),
    [
        ("on_accent", "accent"),
        ("wrong", "wrong_ground"),
        ("text", "wrong_ground"),
        ("notice", "notice_ground"),
    ],
)
def test_that_text_can_be_read_on_marked_grounds(theme, ink, ground):
    assert contrast(getattr(theme, ink), getattr(theme, ground)) >= LEAST_CONTRAST


@BOTH
@pytest.mark.parametrize("name", OKABE_ITO)
def test_that_letters_can_be_read_on_every_data_colour(theme, name):
    colour = QColor(OKABE_ITO[name])
    assert contrast(theme.on(colour), colour) >= LEAST_CONTRAST


@BOTH
def test_that_letters_can_be_read_on_every_stage_of_every_data_colour(theme):
    for position in range(7):
        for stage in Stage:
            fill = theme.stage_colour(stage.value, theme.data_colour(position))
            assert contrast(theme.on(fill), fill) >= LEAST_CONTRAST


@BOTH
def test_that_every_element_has_a_colour_of_its_own(theme):
    assert len({theme.element_colour(element).name() for element in ELEMENTS}) == len(ELEMENTS)


def test_that_no_two_stages_share_a_hatch(qapp):
    pictures = {stage: _painted(hatch(stage.value, QColor("black"))) for stage in Stage}
    for one, other in combinations(Stage, 2):
        assert pictures[one] != pictures[other], (one, other)


def _painted(brush):
    image = QImage(32, 32, QImage.Format.Format_ARGB32_Premultiplied)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.fillRect(image.rect(), brush)
    painter.end()
    return image


@BOTH
def test_that_the_palette_shows_the_theme(qapp, theme):
    palette = themes.palette_of(theme)
    assert palette.color(QPalette.ColorRole.Window) == theme.ground
    assert palette.color(QPalette.ColorRole.HighlightedText) == theme.on_accent


def test_that_a_choice_of_look_is_kept(qapp):
    assert themes.theme_of(ShadeChoice.LIGHT) is LIGHT
    assert themes.theme_of(ShadeChoice.DARK) is DARK
    assert themes.theme_of(ShadeChoice.SYSTEM) in (LIGHT, DARK)


def test_that_a_picture_that_is_not_there_leaves_an_empty_icon(qapp):
    assert themes.icon("no-such-picture", LIGHT).isNull()


STRONG = pytest.mark.parametrize("theme", [LIGHT_STRONG, DARK_STRONG], ids=["light", "dark"])
INKS_ON_GROUNDS = [
    *((ink, ground) for ink in ("text", "muted", "link", "wrong", "good") for ground in GROUNDS),
    ("on_accent", "accent"),
    ("wrong", "wrong_ground"),
    ("text", "wrong_ground"),
    ("notice", "notice_ground"),
]


@STRONG
@pytest.mark.parametrize(("ink", "ground"), INKS_ON_GROUNDS)
def test_that_high_contrast_keeps_the_stronger_limit(theme, ink, ground):
    assert contrast(getattr(theme, ink), getattr(theme, ground)) >= STRONG_CONTRAST


@pytest.mark.parametrize("theme", [LIGHT, DARK, LIGHT_STRONG, DARK_STRONG])
def test_that_what_is_no_text_stands_out_where_it_carries_meaning(theme):
    """WCAG 2.2, success criterion 1.4.11: 3 to 1 for marks and for what has the keyboard."""
    for ground in GROUNDS:
        for mark in ("accent", "today"):
            assert contrast(getattr(theme, mark), getattr(theme, ground)) >= LEAST_FOR_MARKS


@pytest.mark.parametrize("theme", [LIGHT, DARK, LIGHT_STRONG, DARK_STRONG])
def test_that_every_pair_of_the_palette_can_be_read(qapp, theme):
    palette, role = themes.palette_of(theme), QPalette.ColorRole
    pairs = [
        (role.WindowText, role.Window),
        (role.Text, role.Base),
        (role.Text, role.AlternateBase),
        (role.PlaceholderText, role.Base),
        (role.ButtonText, role.Button),
        (role.ToolTipText, role.ToolTipBase),
        (role.HighlightedText, role.Highlight),
        (role.Link, role.Base),
        (role.Link, role.Window),
        (role.BrightText, role.Window),
    ]
    for group in (QPalette.ColorGroup.Active, QPalette.ColorGroup.Inactive):
        for ink, ground in pairs:
            assert contrast(palette.color(group, ink), palette.color(group, ground)) >= LEAST_CONTRAST


@pytest.mark.parametrize(
    ("choice", "theme"), [(ShadeChoice.LIGHT, LIGHT_STRONG), (ShadeChoice.DARK, DARK_STRONG)]
)
def test_that_the_wish_of_the_system_for_contrast_is_granted(qapp, monkeypatch, choice, theme):
    monkeypatch.setattr(themes, "wants_contrast", lambda: True)
    assert themes.theme_of(choice) is theme


def test_that_the_window_follows_when_the_system_begins_to_ask_for_contrast(window, monkeypatch):
    monkeypatch.setattr(themes, "wants_contrast", lambda: True)
    hints = QApplication.styleHints()
    hints.accessibility().contrastPreferenceChanged.emit(Qt.ContrastPreference.HighContrast)
    assert window.theme is LIGHT_STRONG
    assert window.workspace.theme is LIGHT_STRONG
    assert QApplication.palette().color(QPalette.ColorRole.Window) == LIGHT_STRONG.ground


_DEFICIENT = {
    "red-blind": (
        (0.152286, 1.052583, -0.204868),
        (0.114503, 0.786281, 0.099216),
        (-0.003882, -0.048116, 1.051998),
    ),
    "green-blind": (
        (0.367322, 0.860646, -0.227968),
        (0.280085, 0.672501, 0.047413),
        (-0.011820, 0.042940, 0.968881),
    ),
    "blue-blind": (
        (1.255528, -0.076749, -0.178779),
        (-0.078411, 0.930809, 0.147602),
        (0.004733, 0.691367, 0.303900),
    ),
}
"""How light is seen with one kind of cone missing, in linear sRGB: Machado, Oliveira, Fernandes (2009), IEEE
Transactions on Visualization and Computer Graphics 15, 1291, severity 1; from memory. They serve to find
pairs that fall together, and `test_that_the_simulation_leaves_greys_as_they_are` is the check on them."""
_APART = 10.0
"""Distance in CIELAB 1976 that is seen at a glance between areas side by side; about four times the just
noticeable one of 2.3. A rule of thumb: letters and hatches tell the same again."""


@pytest.mark.parametrize("deficiency", _DEFICIENT)
def test_that_the_simulation_leaves_greys_as_they_are(deficiency):
    for row in _DEFICIENT[deficiency]:
        assert sum(row) == pytest.approx(1, abs=2e-6)


@pytest.mark.parametrize("deficiency", [*_DEFICIENT, ""])
def test_that_colours_that_carry_meaning_stay_apart_for_everybody(deficiency):
    bands = [LIGHT.band_colour(band) for band in ("short", "thin", "met", "ample")]
    elements = [LIGHT.element_colour(element) for element in ELEMENTS]
    crops = [LIGHT.data_colour(position) for position in range(7)]
    tones = [[theme.wrong, theme.good, theme.text] for theme in (LIGHT, DARK, LIGHT_STRONG, DARK_STRONG)]
    for colours in (bands, elements, crops, *tones):
        for one, other in combinations(colours, 2):
            assert _distance(one, other, deficiency) >= _APART, (one.name(), other.name())


def _distance(one, other, deficiency):
    return (
        sum((a - b) ** 2 for a, b in zip(_seen(one, deficiency), _seen(other, deficiency), strict=True))
        ** 0.5
    )


def _seen(colour, deficiency):
    """Return a colour in CIELAB as somebody with a deficiency sees it."""
    light = [themes._linear(channel) for channel in (colour.redF(), colour.greenF(), colour.blueF())]
    if deficiency:
        rows = _DEFICIENT[deficiency]
        light = [min(max(sum(a * b for a, b in zip(row, light, strict=True)), 0), 1) for row in rows]
    white = (0.9505, 1.0, 1.089)
    matrix = ((0.4124, 0.3576, 0.1805), (0.2126, 0.7152, 0.0722), (0.0193, 0.1192, 0.9505))
    shares = [
        sum(a * b for a, b in zip(row, light, strict=True)) / w for row, w in zip(matrix, white, strict=True)
    ]
    x, y, z = (_lightness(share) for share in shares)
    return 116 * y - 16, 500 * (x - y), 200 * (y - z)


def _lightness(share):
    return share ** (1 / 3) if share > (6 / 29) ** 3 else share / (3 * (6 / 29) ** 2) + 4 / 29
