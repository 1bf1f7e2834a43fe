"""What lies over the window until the farm in it is read in: how it will look, or the bones of it.

A picture taken when the window was closed last covers the whole window until everything behind it is
there. It is only shown when it is of this very farm file in this very state, of this day, and of a window as
large as this one; so it is never of something else. Where there is no such picture, the bones of the window
say what is being opened. Read in before the first paint: nothing that takes time may be read in here.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from PySide6.QtWidgets import QApplication, QWidget

from planner.desk.grounds import DARK_GROUNDS, LIGHT_GROUNDS, load_font
from planner.desk.say import tr
from planner.desk.shade import ShadeChoice

if TYPE_CHECKING:
    from pathlib import Path

    from PySide6.QtGui import QPaintEvent, QPixmap

    from planner.desk.given import DeskServices
    from planner.desk.settings import Memory


class Cover(QWidget):
    """A picture over the whole window, or the bones of it where there is no picture of its size."""

    def __init__(self, window: QWidget, name: str, *, dark: bool, picture: QPixmap | None = None) -> None:
        super().__init__(window)
        self.picture = picture
        self.name, self._grounds = name, DARK_GROUNDS if dark else LIGHT_GROUNDS
        self.setAccessibleName(tr("Opening the farm…"))
        self.fit()
        if not self.fits:
            self._prepare_bones()

    def _prepare_bones(self) -> None:
        from planner.desk.skeleton import in_ink

        load_font()
        self.setPalette(in_ink(self._grounds.text))

    def fit(self) -> None:
        """Lie over the window again after its size has changed."""
        self.setGeometry(self.window().rect())

    @property
    def fits(self) -> bool:
        """Tell whether there is a picture of the size of the window."""
        window = self.window()
        return self.picture is not None and (
            self.picture.size() == window.size() * window.devicePixelRatioF()
        )

    def paintEvent(self, _event: QPaintEvent) -> None:
        from PySide6.QtGui import QPainter

        painter = QPainter(self)
        if self.picture is not None and self.fits:
            painter.drawPixmap(self.rect(), self.picture)
        else:
            from planner.desk.skeleton import Bones

            bones = Bones(painter, (self.width(), self.height()), self._grounds)
            bones.draw(self.name, tr("Opening the farm…"))
        painter.end()


_MIDDLE_LIGHTNESS: Final = 128
"""Half of what Qt counts lightness up to; a light look is far above it, a dark one far below."""


def is_dark(memory: Memory) -> bool:
    """Tell whether the window begins in the dark look."""
    if memory.shade is ShadeChoice.SYSTEM:
        # It begins with the colours of the system. Asking the system for its scheme would read in every enum.
        return QApplication.palette().window().color().lightness() < _MIDDLE_LIGHTNESS
    return memory.shade is ShadeChoice.DARK


def looks_of(window: QWidget, memory: Memory) -> str:
    """Return in a line how the window looks, apart from its size and what is in it."""
    shade = memory.shade.value
    if memory.shade is ShadeChoice.SYSTEM:
        shade += " dark" if is_dark(memory) else " light"
    # The language shows in the words of any entry; asking for the language itself would take longer.
    return f"{shade} {window.devicePixelRatioF()} {window.logicalDpiX()} {tr('&Change')}"


def first_looks_of(window: QWidget, memory: Memory) -> str:
    """Return how the window looks when no farm has been opened yet: the doors stand above the sample farm."""
    return f"{looks_of(window, memory)} first"


def first_look(services: DeskServices, memory: Memory, window: QWidget) -> Cover:
    """Return a cover for the farm that will be opened: with its picture, if there is one that holds."""
    opened = services.start_with or memory.latest
    path = opened or services.sample
    looks = looks_of(window, memory) if opened is not None else first_looks_of(window, memory)
    picture: QPixmap | None = None
    if services.find_glance is not None and path is not None:
        picture = services.find_glance(path, services.now().date(), looks)
    return Cover(window, _name_of(path), dark=is_dark(memory), picture=picture)


def _name_of(path: Path | None) -> str:
    return path.stem if path is not None else "Raftweek"
