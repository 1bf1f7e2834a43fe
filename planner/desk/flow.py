"""A row of controls that goes on in the next line where the window is too narrow for it.

Must know nothing of what stands in it.
"""

from __future__ import annotations

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget


class Flow(QLayout):
    """Parts one beside the other, each as wide as it asks to be; they wrap as words do.

    A part whose size policy says that it expands takes what is left of its line.
    """

    def __init__(self, gap: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self.setContentsMargins(0, 0, 0, 0)
        self.setSpacing(gap)

    def add(self, *parts: QWidget) -> None:
        """Put parts at the end."""
        for part in parts:
            self.addWidget(part)

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def heightForWidth(self, width: int) -> int:
        rim = self._rim()
        lines = self._lines(width - rim.width())
        return sum(_height(line) for line in lines) + self.spacing() * max(len(lines) - 1, 0) + rim.height()

    def sizeHint(self) -> QSize:
        seen = self._seen()
        width = sum(item.sizeHint().width() for item in seen) + self.spacing() * max(len(seen) - 1, 0)
        return QSize(width, _height(seen)) + self._rim()

    def minimumSize(self) -> QSize:
        seen = self._seen()
        width = max((item.minimumSize().width() for item in seen), default=0)
        return QSize(width, _height(seen)) + self._rim()

    def setGeometry(self, rect: QRect) -> None:
        super().setGeometry(rect)
        room = rect.marginsRemoved(self.contentsMargins())
        top = room.top()
        for line in self._lines(room.width()):
            self._lay(line, QRect(room.left(), top, room.width(), _height(line)))
            top += _height(line) + self.spacing()

    def _rim(self) -> QSize:
        margins = self.contentsMargins()
        return QSize(margins.left() + margins.right(), margins.top() + margins.bottom())

    def _seen(self) -> list[QLayoutItem]:
        return [item for item in self._items if not item.isEmpty()]

    def _lines(self, width: int) -> list[list[QLayoutItem]]:
        """Return the parts by the line they come to stand in."""
        lines: list[list[QLayoutItem]] = []
        left = 0
        for item in self._seen():
            wanted = item.sizeHint().width()
            if not lines or left < wanted:
                lines.append([])
                left = width
            lines[-1].append(item)
            left -= wanted + self.spacing()
        return lines

    def _lay(self, line: list[QLayoutItem], room: QRect) -> None:
        spare = room.width() - sum(item.sizeHint().width() for item in line)
        spare -= self.spacing() * (len(line) - 1)
        eager = [item for item in line if item.expandingDirections() & Qt.Orientation.Horizontal]
        share = max(spare, 0) // len(eager) if eager else 0
        at = room.left()
        for item in line:
            wanted = item.sizeHint()
            width = min(wanted.width() + (share if item in eager else 0), room.width())
            height = min(wanted.height(), room.height())
            item.setGeometry(QRect(at, room.top() + (room.height() - height) // 2, width, height))
            at += width + self.spacing()


def _height(line: list[QLayoutItem]) -> int:
    return max((item.sizeHint().height() for item in line), default=0)
