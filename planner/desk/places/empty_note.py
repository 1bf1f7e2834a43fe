"""Lies over a page that has nothing to show yet, and says what to do: a heading, a sentence, one button.

What is below cannot be reached as long as the note is there. Must know nothing of farms.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from planner.desk.places.lacking import Lack
from planner.desk.plan.kit import Words, button, heading
from planner.desk.theme import Theme


class EmptyNote(QWidget):
    """Covers a page; `wanted` carries the key of what its button does."""

    wanted = Signal(str)

    def __init__(self, page: QWidget, theme: Theme) -> None:
        super().__init__(page)
        self._page, self._run = page, ""
        self.setAutoFillBackground(True)
        self.title = heading("", theme, self, large=True)
        self.words = Words("", theme, self, ink="muted")
        self.begin = button("", self)
        self.begin.setDefault(True)
        inside = QVBoxLayout()
        inside.setSpacing(theme.metrics.margin)
        inside.addStretch(2)
        for part in (self.title, self.words):
            part.setAlignment(Qt.AlignmentFlag.AlignHCenter)
            inside.addWidget(part)
        inside.addWidget(self.begin, 0, Qt.AlignmentFlag.AlignHCenter)
        inside.addStretch(3)
        across = QHBoxLayout(self)
        across.addStretch(1)
        across.addLayout(inside, 2)
        across.addStretch(1)
        self.setFocusProxy(self.begin)
        self.begin.clicked.connect(self._on_begin)
        self.hide()
        page.installEventFilter(self)

    def show_lack(self, lack: Lack | None) -> None:
        """Cover the page and say what it lacks; None uncovers it."""
        for part in self._page.findChildren(QWidget, options=Qt.FindChildOption.FindDirectChildrenOnly):
            if part is not self and not part.isWindow():
                part.setEnabled(lack is None)
        if lack is None:
            self.hide()
            return
        self._run = lack.run
        self.title.setText(lack.title)
        self.words.setText(lack.words)
        self.begin.setText(lack.button)
        self.begin.setAccessibleName(lack.button.rstrip("…"))
        self.begin.setAccessibleDescription(f"{lack.title}. {lack.words}")
        self.setGeometry(self._page.rect())
        self.show()
        self.raise_()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Stay as large as the page."""
        if event.type() is QEvent.Type.Resize and isinstance(watched, QWidget):
            self.setGeometry(watched.rect())
        return False

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self.title.wear(theme)
        self.words.wear(theme)

    def _on_begin(self, _checked: bool) -> None:
        self.wanted.emit(self._run)
