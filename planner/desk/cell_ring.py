"""Shows which cell of a table the keyboard is on by a line around it; its text stays as clear as any other.

The toolkit's style lays a veil over the text instead, which is hard to see and hard to read through. Must
know nothing of what stands in the cells.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QModelIndex, QPersistentModelIndex
from PySide6.QtGui import QPainter, QPalette, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem

_WIDE_PX: Final = 2
_FOCUS: Final = QStyle.StateFlag.State_HasFocus
_SELECTED: Final = QStyle.StateFlag.State_Selected


class CellRing(QStyledItemDelegate):
    """Draws every cell as usual, and a line around the one that has the keyboard."""

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        state = option.state
        if not state & _FOCUS:
            super().paint(painter, option, index)
            return
        option.state = state & ~_FOCUS
        super().paint(painter, option, index)
        role = QPalette.ColorRole.HighlightedText if state & _SELECTED else QPalette.ColorRole.Highlight
        pen = QPen(option.palette.color(role), _WIDE_PX)
        half = _WIDE_PX // 2
        painter.save()
        painter.setPen(pen)
        painter.drawRect(option.rect.adjusted(half, half, -half, -half))
        painter.restore()
