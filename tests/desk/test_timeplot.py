"""The days under a small chart stand beside each other, never over each other."""

from datetime import date

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QFont, QImage, QPainter

from planner.desk.plotted import Plot, Strand
from planner.desk.theme import LIGHT
from planner.desk.timeplot import Drawing

FIRST, LAST = date(2026, 3, 1).toordinal(), date(2026, 8, 29).toordinal()
LINE = Strand(points=((FIRST, 1.0), (LAST, 9.0)))
PLOT = Plot(title="Feed", unit="g/d", spoken="", empty="", strands=(LINE,))


@pytest.fixture
def painter(qapp):
    image = QImage(600, 200, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    painter.setFont(QFont(qapp.font()))
    yield painter
    painter.end()


@pytest.mark.parametrize("wide", range(120, 600, 40))
def test_that_the_days_at_both_ends_never_lie_over_each_other(painter, wide):
    drawing = Drawing(painter, PLOT, LIGHT, QRectF(0, 0, wide, 100))
    first, last = drawing.ends()
    measured = painter.fontMetrics()
    assert measured.horizontalAdvance(first) + measured.horizontalAdvance(last) < wide - 40
    assert first != last


def test_that_the_years_are_told_where_there_is_room(painter):
    ends = Drawing(painter, PLOT, LIGHT, QRectF(0, 0, 500, 100)).ends()
    assert all(words.endswith("2026") for words in ends)
