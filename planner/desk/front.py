"""The window before anything is in it: its place on the screen, its cover, and what comes after the paint.

Read in before the first paint: nothing that takes time may be read in here. Must know nothing of what the
window holds once it is furnished.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, QTimer, Signal
from PySide6.QtWidgets import QMainWindow

from planner.desk import settings
from planner.desk.first_look import first_look, looks_of

if TYPE_CHECKING:
    from datetime import date

    from PySide6.QtCore import QByteArray
    from PySide6.QtGui import QPaintEvent, QPixmap, QResizeEvent

    from planner.desk.first_look import Cover
    from planner.desk.given import DeskServices

_WIDTH, _HEIGHT = 1280, 720
_TITLE_BAR = 32
"""So much of the height of a screen is left for the bar that the system puts over a window [px]."""


class FrontWindow(QMainWindow):
    """A window under a cover: a picture of what will be in it, or else the bones of it."""

    ready = Signal()

    def __init__(self, services: DeskServices) -> None:
        super().__init__()
        self._services = services
        self.memory = settings.Memory(services.settings)
        self.cover: Cover | None = None  # for what is told of the size before there is one
        self._painted = self._furnished = False
        self.setWindowTitle("Raftweek")
        self.setObjectName("raftweek")
        free = self.screen().availableSize() - QSize(0, _TITLE_BAR)
        self.resize(QSize(_WIDTH, _HEIGHT).boundedTo(free))
        self.restoreGeometry(self.memory.get(settings.GEOMETRY))
        self.cover = first_look(services, self.memory, self)
        self._look_holds, self._size_shown = self.cover.fits, self.size()

    def see_furnished(self) -> None:
        """Put in menus and bars, unless they are in."""
        if not self._furnished:
            self._furnished = True
            self._furnish()
            if self.cover is not None:
                self.cover.raise_()

    def _furnish(self) -> None:
        """Put in menus and bars."""

    def load(self) -> None:
        """Read in what is heavy, and open a farm."""

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if not self._painted:
            self._painted = True
            QTimer.singleShot(0, self, self._load_behind)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self.cover is not None:
            self.cover.fit()

    def _load_behind(self) -> None:
        """Read everything in behind the cover, and take it away when all is there."""
        if self.cover is not None:
            self._look_holds, self._size_shown = self.cover.fits, self.size()
            self.setUpdatesEnabled(False)
        try:
            self.load()
        finally:
            # A moment later than the timers that let the pages tell everything.
            QTimer.singleShot(1, self, self._uncover)

    def open_unseen(self) -> None:
        """Open the farm without coming on the screen, for a picture; the window is only to be closed then."""
        from PySide6.QtCore import Qt

        self.setAttribute(Qt.WidgetAttribute.WA_DontShowOnScreen)
        self._painted = True
        self.show()
        self.load()
        self._uncover()

    def _uncover(self) -> None:
        if self.cover is not None:
            self.cover.hide()
            self.cover.deleteLater()
            self.cover = None
            self.setUpdatesEnabled(True)
        self.ready.emit()

    @property
    def _wants_pictures(self) -> bool:
        """Tell whether there is a place for pictures, and what is there holds no longer."""
        holds = self._look_holds and self.size() == self._size_shown
        return self._services.keep_glance is not None and not holds

    def _put_by(self, setting: settings.Setting, value: QByteArray) -> None:
        """Remember how something lies for the next start, which then needs another picture."""
        if value != self.memory.get(setting):
            self._look_holds = False
            self.memory.put(setting, value)

    def _keep(self, path: Path, pictures: dict[date, QPixmap]) -> None:
        """Keep pictures by day of a farm file that has been closed."""
        if self._services.keep_glance is not None:
            for day, picture in pictures.items():
                self._services.keep_glance(path, day, looks_of(self, self.memory), picture)
