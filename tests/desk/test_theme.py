"""What the desk looks like can be read by everyone, in light and in dark."""

from itertools import combinations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPalette

from planner.desk import theme as themes
from planner.desk.hatches import hatch
from planner.desk.shade import ShadeChoice
from planner.desk.theme import DARK, LEAST_CONTRAST, LIGHT, OKABE_ITO, contrast
from planner.farm.crops import Stage
from planner.farm.species import ELEMENTS

BOTH = pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
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
