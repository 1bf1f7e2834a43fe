"""Draws the bones of the window, before anything in it is read in: its panes, and what farm is being opened.

The very first paint waits for it, so everything but the words is a stretched dot of one colour. Pens,
brushes and filled rectangles are left alone: the first of them makes Python read in every enum of the
toolkit, which takes as long as all the rest. Words are written in the pen that the widget's palette gives.
Must know nothing of farms.
"""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING, Final, NamedTuple

from PySide6.QtGui import QColor, QFont, QPalette, QPixmap

from planner.desk.grounds import DUE_WIDTH, FAMILY, FONT_POINTS, SIDE_WIDTH

if TYPE_CHECKING:
    from PySide6.QtGui import QPainter

    from planner.desk.grounds import Grounds


class Box(NamedTuple):
    """A rectangle in device-independent pixels."""

    left: int
    top: int
    width: int
    height: int


_TOP: Final = 74
"""Height of menu bar and tool bar together."""

_HEAD: Final = 55
_FOOT: Final = 28
_MARGIN: Final = 12
_WEEK: Final = 49
_NAMES: Final = 168
_LEAST_MIDDLE: Final = DUE_WIDTH * 4 // 3
_TITLE_POINTS: Final = 16
_CARD: Final = (400, 108)
_CARD_PAD: Final = 16
SOFTLY: Final = 0.75
"""How much of the colour of text shows in the words under the name."""


_MENUS: Final = (Box(11, 11, 30, 8), Box(58, 11, 46, 8), Box(123, 11, 40, 8), Box(180, 11, 28, 8))
_TOOLS: Final = (Box(12, 50, 46, 16), Box(78, 50, 56, 16), Box(162, 50, 16, 16), Box(192, 50, 16, 16))
_DUE_DAYS: Final = (4, 2, 3, 1)
"""How many lines stand under each of the days in the bones of the due list."""

_SIDE_LINES: Final = (92, 64, 0, 108, 84, 132, 70, 0, 120, 96, 140, 84, 110)
"""Widths of the lines in the bones of the side panel; 0 is a gap."""

_BARS: Final = ((0, 4), (3, 5), (1, 3), (5, 4), (2, 6), (0, 3), (4, 3), (6, 5), (1, 6))
"""First week and number of weeks of each bar in the bones of the beds."""

_LANES: Final = (0.0, 0.2, 0.65, 1.0)
"""Where fish and feed, beds and balance begin and end, as shares of the height they have."""


class Bones:
    """One drawing of the bones; made for one paint."""

    def __init__(self, painter: QPainter, size: tuple[int, int], grounds: Grounds) -> None:
        """Take what to draw with, the size of the window and the look."""
        self._painter, self._size = painter, size
        self._ground, self._panel, self._field, self._line, self._faint = (
            _dot(colour)
            for colour in (grounds.ground, grounds.panel, grounds.field, grounds.line, grounds.faint_line)
        )

    def draw(self, name: str, words: str) -> None:
        """Draw everything: the panes, and on a card the name of the farm with words under it."""
        width, height = self._size
        self._fill(Box(0, 0, width, height), self._ground)
        for box in (*_MENUS, *_TOOLS):
            self._bone(box)
        bottom = height - _FOOT
        self._bone(Box(_MARGIN, bottom + 10, 120, 8))
        due, side = self._beside()
        if due:
            self._due(Box(0, _TOP, due, bottom - _TOP))
        if side:
            self._side(Box(width - side, _TOP, side, bottom - _TOP))
        self._lanes(Box(due, _TOP, width - due - side, bottom - _TOP))
        self._card(name, words)

    def _beside(self) -> tuple[int, int]:
        """Return the widths of due list and side panel; a narrow window has no room for them."""
        room = self._size[0] - _LEAST_MIDDLE
        return (DUE_WIDTH if room >= DUE_WIDTH else 0), (SIDE_WIDTH if room >= DUE_WIDTH + SIDE_WIDTH else 0)

    def _fill(self, box: Box, dot: QPixmap) -> None:
        self._painter.drawPixmap(*box, dot)

    def _bone(self, box: Box) -> None:
        self._painter.drawPixmap(*box, self._faint)

    def _due(self, pane: Box) -> None:
        self._bone(Box(pane.left + _MARGIN, pane.top + 14, 120, 10))
        self._fill(Box(pane.left, pane.top + _HEAD, pane.width, pane.height - _HEAD), self._field)
        top = pane.top + _HEAD + 12
        for lines in _DUE_DAYS:
            self._bone(Box(pane.left + _MARGIN, top, 60, 8))
            top += 22
            for line in range(lines):
                if top + 34 > pane.top + pane.height:
                    return
                self._bone(Box(pane.left + _MARGIN, top, 48, 14))
                self._bone(Box(pane.left + 70, top + 3, 180 - 28 * (line % 3), 8))
                top += 34

    def _side(self, pane: Box) -> None:
        self._fill(pane, self._panel)
        top = pane.top + 16
        for width in _SIDE_LINES:
            if top + 24 > pane.top + pane.height:
                return
            if width:
                self._bone(Box(pane.left + _MARGIN, top, width, 8))
                self._bone(Box(pane.left + 160, top, width * 2 // 3, 8))
            top += 24

    def _lanes(self, pane: Box) -> None:
        for tab in range(min(6, pane.width // 90)):
            self._bone(Box(pane.left + _MARGIN + tab * 80, pane.top + 14, 56, 8))
        left, top = pane.left + _NAMES, pane.top + 108
        right, bottom = pane.left + pane.width, pane.top + pane.height
        for share, after in pairwise(_LANES):
            begin, end = (round(top + each * (bottom - top)) for each in (share, after))
            self._bone(Box(pane.left + _MARGIN, begin + 8, 90, 10))
            self._fill(Box(left, begin + 26, right - left, max(0, end - begin - 26)), self._field)
        for week in range(left + _WEEK, right, _WEEK):
            self._bone(Box(week, pane.top + 60, 1, bottom - pane.top - 60))
        self._beds(Box(left, round(top + _LANES[1] * (bottom - top)) + 34, right - left, bottom))

    def _beds(self, lane: Box) -> None:
        """Draw bars from week to week, as many as the lane holds."""
        last = round(_TOP + _HEAD + (self._size[1] - _TOP - _HEAD) * _LANES[2])
        for row, (first, weeks) in enumerate(_BARS):
            top, left = lane.top + row * 22, lane.left + first * _WEEK
            width = min(weeks * _WEEK - 6, lane.left + lane.width - left)
            if top + 16 > last:
                return
            if width > 0:
                self._bone(Box(left, top, width, 14))

    def _card(self, name: str, words: str) -> None:
        """Write what is being opened in the middle, on a card that stands out from the bones."""
        width, height = self._size
        wide, high = min(_CARD[0], width), _CARD[1]
        left, top = (width - wide) // 2, (height - high) // 2
        self._fill(Box(left - 1, top - 1, wide + 2, high + 2), self._line)
        self._fill(Box(left, top, wide, high), self._panel)
        inside = wide - 2 * _CARD_PAD
        self._write(Box(left + _CARD_PAD, top + 46, inside, high), name, _TITLE_POINTS)
        self._painter.setOpacity(SOFTLY)
        self._write(Box(left + _CARD_PAD, top + 78, inside, high), words, FONT_POINTS)

    def _write(self, box: Box, words: str, points: int) -> None:
        """Write one line in the middle of a box, its base line at the top of the box; cut when too long."""
        painter = self._painter
        painter.setFont(QFont(FAMILY, points))
        metrics = painter.fontMetrics()
        said = words
        while said and metrics.horizontalAdvance(said) > box.width:
            words = words[:-1]
            said = f"{words.rstrip()}…" if words else ""
        painter.drawText(box.left + (box.width - metrics.horizontalAdvance(said)) // 2, box.top, said)


def _dot(colour: str) -> QPixmap:
    dot = QPixmap(1, 1)
    dot.fill(QColor(colour))
    return dot


def in_ink(colour: str) -> QPalette:
    """Return a palette by which a widget's painter begins with a pen of this colour."""
    palette = QPalette()
    palette.setColor(QPalette.ColorRole.WindowText, QColor(colour))
    return palette
