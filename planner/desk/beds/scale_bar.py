"""A bar beside the bed map that is so many metres long at the scale the map is drawn at.

Must know nothing of beds.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QLineF, QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from planner.desk.lanes.kit import Face, Kit
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import number_words

_LENGTHS_M: Final = (0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0)
_MOST_PX: Final = 120.0
_TICK_PX: Final = 6.0


def bar_length_m(px_per_m: float) -> float:
    """Return the longest of the round lengths that has room; the shortest where none has.

    >>> bar_length_m(100.0), bar_length_m(23.0)
    (1.0, 5.0)
    """
    fitting = [each for each in _LENGTHS_M if each * px_per_m <= _MOST_PX]
    return fitting[-1] if fitting else _LENGTHS_M[0]


class ScaleBar(QWidget):
    """A line with two ends, and how long it is."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.wear(theme)
        self._px_per_m = 0.0
        self.setFixedSize(QSize(round(_MOST_PX + 2 * _TICK_PX), round(self._kit.small_px * 2 + _TICK_PX)))

    @property
    def words(self) -> str:
        """How long the bar is."""
        return tr("{length} m", length=number_words(bar_length_m(self._px_per_m)))

    def show_scale(self, px_per_m: float) -> None:
        """Be true to another scale."""
        self._px_per_m = px_per_m
        self.setVisible(px_per_m > 0)
        self.setToolTip(tr("Beds are drawn to scale: this bar is {length}", length=self.words))
        self.setAccessibleName(self.toolTip())
        self.update()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self._theme, self._kit = theme, Kit(theme, self.font())
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: ARG002
        length = bar_length_m(self._px_per_m) * self._px_per_m
        right, y = self.width() - _TICK_PX, self.height() - _TICK_PX
        painter = QPainter(self)
        painter.setPen(QPen(self._theme.text, 1.5))
        painter.drawLine(QLineF(right - length, y, right, y))
        for x in (right - length, right):
            painter.drawLine(QLineF(x, y - _TICK_PX / 2, x, y + _TICK_PX / 2))
        width = self._kit.width(self.words, Face.SMALL)
        box = QRectF(right - width - 1, 0, width + 2, y - _TICK_PX / 2)
        painter.setPen(self._theme.muted)
        self._kit.write(painter, box, self.words, face=Face.SMALL)
        painter.end()
