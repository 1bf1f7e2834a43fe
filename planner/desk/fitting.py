"""How large a dialog opens: as it likes to be, and never larger than the screen it comes on.

On a screen of 1280×720 at 200 % there are 640×360 units; a dialog that opened larger would have its buttons
where nobody can press them. Must know nothing of what a dialog shows.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QBoxLayout, QWidget

_SHARE_OF_SCREEN: Final = 0.92
"""What is left over is for the frame that a window manager puts around it."""


def open_sized(dialog: QWidget, wanted: QSize) -> None:
    """Give a dialog the size it likes to have, as far as the screen has it."""
    dialog.resize(fitted(wanted, dialog.screen().availableGeometry().size()))


def fitted(wanted: QSize, screen: QSize) -> QSize:
    """Return as much of a size as a screen has room for.

    >>> fitted(QSize(1000, 200), QSize(640, 360)).toTuple()
    (589, 200)
    """
    return wanted.boundedTo(screen * _SHARE_OF_SCREEN)


def stand(parts: QBoxLayout, room: int) -> bool:
    """Put parts side by side where a width [px] has room for all of them, else one above the other.

    Returns whether they stand side by side.
    """
    found = [part for at in range(parts.count()) if (part := parts.itemAt(at)) is not None]
    margins = parts.contentsMargins()
    least = sum(part.minimumSize().width() for part in found) + parts.spacing() * (len(found) - 1)
    beside = room >= least + margins.left() + margins.right()
    direction = QBoxLayout.Direction
    parts.setDirection(direction.LeftToRight if beside else direction.TopToBottom)
    return beside
