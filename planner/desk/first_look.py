"""Shows the window as it will look once the farm is read in: a picture taken when it was closed last.

The picture covers the whole window until everything behind it is there. It is only shown when it is of
this very farm file in this very state, of this day, and of a window as large as this one; so it is never
of something else. Read in before the first paint: nothing that takes time may be read in here.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from PySide6.QtWidgets import QApplication, QLabel

from planner.desk.say import tr
from planner.desk.shade import ShadeChoice

if TYPE_CHECKING:
    from PySide6.QtGui import QPixmap
    from PySide6.QtWidgets import QWidget

    from planner.desk.services import DeskServices
    from planner.desk.settings import Memory


class Cover(QLabel):
    """A picture over the whole window; hidden while the window is of another size."""

    def __init__(self, picture: QPixmap, window: QWidget) -> None:
        super().__init__(window)
        self.setPixmap(picture)
        self.setAccessibleName(tr("Opening the farm…"))
        self.fit()

    def fit(self) -> None:
        """Lie over the window again after its size has changed."""
        window = self.window()
        self.setGeometry(window.rect())
        self.setVisible(self.fits)

    @property
    def fits(self) -> bool:
        """Tell whether picture and window are of the same size."""
        window = self.window()
        return self.pixmap().size() == window.size() * window.devicePixelRatioF()


_MIDDLE_LIGHTNESS: Final = 128
"""Half of what Qt counts lightness up to; a light look is far above it, a dark one far below."""


def looks_of(window: QWidget, memory: Memory) -> str:
    """Return in a line how the window looks, apart from its size and what is in it."""
    shade = memory.shade.value
    if memory.shade is ShadeChoice.SYSTEM:
        # It begins with the colours of the system. Asking the system for its scheme would read in every enum.
        lightness = QApplication.palette().window().color().lightness()
        shade += " light" if lightness > _MIDDLE_LIGHTNESS else " dark"
    # The language shows in the words of any entry; asking for the language itself would take longer.
    return f"{shade} {window.devicePixelRatioF()} {window.logicalDpiX()} {tr('&Change')}"


def first_look(services: DeskServices, memory: Memory, window: QWidget) -> Cover | None:
    """Return a cover with the picture of the farm that will be opened; None when there is none that holds."""
    path = services.start_with or memory.latest
    if services.find_glance is None or path is None:
        return None
    picture = services.find_glance(path, services.now().date(), looks_of(window, memory))
    return Cover(picture, window) if picture is not None else None
