"""What a hand does at the mouse, as a plain value.

Qt's own events live only while they are handled; a value may be passed on and kept.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QContextMenuEvent, QMouseEvent, QWheelEvent

_NO_BUTTON = Qt.MouseButton.NoButton


@dataclass(frozen=True, slots=True, kw_only=True)
class Hand:
    """Where the pointer is, on the lane and on the screen, with which buttons and keys held.

    `turned` is how far the wheel has been turned, in eighths of a degree.
    """

    at: QPointF
    on_screen: QPoint
    modifiers: Qt.KeyboardModifier
    button: Qt.MouseButton = _NO_BUTTON
    buttons: Qt.MouseButton = _NO_BUTTON
    turned: QPoint = field(default_factory=QPoint)

    @property
    def left(self) -> bool:
        """Tell whether the left button has just gone down or up."""
        return self.button == Qt.MouseButton.LeftButton

    @property
    def left_held(self) -> bool:
        """Tell whether the left button is held."""
        return bool(self.buttons & Qt.MouseButton.LeftButton)

    @property
    def shift(self) -> bool:
        """Tell whether Shift is held."""
        return bool(self.modifiers & Qt.KeyboardModifier.ShiftModifier)

    @property
    def control(self) -> bool:
        """Tell whether Control is held."""
        return bool(self.modifiers & Qt.KeyboardModifier.ControlModifier)


def hand_of(event: QMouseEvent) -> Hand:
    """Return what a mouse event says."""
    return Hand(
        at=QPointF(event.position()),
        on_screen=event.globalPosition().toPoint(),
        modifiers=event.modifiers(),
        button=event.button(),
        buttons=event.buttons(),
    )


def turn_of(event: QWheelEvent) -> Hand:
    """Return what a wheel event says."""
    return Hand(
        at=QPointF(event.position()),
        on_screen=event.globalPosition().toPoint(),
        modifiers=event.modifiers(),
        turned=QPoint(event.angleDelta()),
    )


def ask_of(event: QContextMenuEvent) -> Hand:
    """Return where a context menu is asked for."""
    return Hand(at=QPointF(event.pos()), on_screen=QPoint(event.globalPos()), modifiers=event.modifiers())
