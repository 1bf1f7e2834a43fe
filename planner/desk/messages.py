"""Says expected trouble and small news in one bar of the window, and asks questions in one place.

The only presenter of the desk: nothing else opens a message box. Tests hand in their own way to ask.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum
from typing import Protocol

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, Signal
from PySide6.QtGui import QAccessible, QAccessibleEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QMessageBox, QPushButton, QToolButton, QWidget

from planner.desk.say import tr
from planner.desk.theme import Theme, icon


class Tone(Enum):
    """How a message is meant."""

    NEWS = "news"
    TROUBLE = "trouble"


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """Something that cannot go on without an answer: what is asked, and the words of the way ahead."""

    title: str
    text: str
    go_on: str


class Ask(Protocol):
    """Puts a question and calls `answered` with True to go on; returns at once."""

    def __call__(self, question: Question, answered: Callable[[bool], None], parent: QWidget) -> None:
        """Put the question."""


class _Asked(QMessageBox):
    """A question on the screen that tells its answer once."""

    def __init__(self, question: Question, answered: Callable[[bool], None], parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(question.title)
        self.setText(question.text)
        self._go_on = self.addButton(question.go_on, QMessageBox.ButtonRole.AcceptRole)
        self.addButton(tr("Cancel"), QMessageBox.ButtonRole.RejectRole)
        self._answered = answered
        self.finished.connect(self._tell)

    def _tell(self, _result: int) -> None:
        self._answered(self.clickedButton() is self._go_on)
        self.deleteLater()


def ask_on_screen(question: Question, answered: Callable[[bool], None], parent: QWidget) -> None:
    """Put a question in a box over the window."""
    _Asked(question, answered, parent).open()


_LAID_ANEW = (QEvent.Type.Resize, QEvent.Type.Move)


class MessageBar(QFrame):
    """One line above the status bar; stays until it is closed or something else is said.

    It lies along the foot of its parent, where `room` is kept free for it. Where things are moved by hand it
    lies over the foot of those instead, or they would move under the pointer when it comes and goes.
    """

    undo_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.room = QWidget(parent)
        self.room.hide()
        self._over = parent
        self._laid_on: QWidget | None = None
        parent.installEventFilter(self)
        self.setAutoFillBackground(True)
        self._theme = theme
        self._tone = Tone.NEWS
        self._label = QLabel(self)
        self._label.setWordWrap(True)
        self._undo = QPushButton(tr("Undo"), self)
        self._undo.setAccessibleName(tr("Undo"))
        self._close = QToolButton(self)
        self._close.setText("✕")
        self._close.setAutoRaise(True)
        self._close.setAccessibleName(tr("Close the message"))
        self._close.setToolTip(tr("Close the message (Esc)"))
        row = QHBoxLayout(self)
        row.setContentsMargins(
            theme.metrics.margin, theme.metrics.tight, theme.metrics.gap, theme.metrics.tight
        )
        row.addWidget(self._label, 1)
        row.addWidget(self._undo)
        row.addWidget(self._close)
        self._undo.clicked.connect(self._on_undo)
        self._close.clicked.connect(self.clear)
        self.hide()

    @property
    def words(self) -> str:
        """What is said at present; empty when nothing is."""
        return "" if self.isHidden() else self._label.text()

    @property
    def tone(self) -> Tone:
        """How the present message is meant."""
        return self._tone

    def say(self, words: str, *, tone: Tone, undo: bool = False) -> None:
        """Show a message; with `undo` it carries a button that takes the last act back."""
        self._tone = tone
        self._label.setText(f"⚠ {words}" if tone is Tone.TROUBLE else words)
        self._undo.setVisible(undo)
        self.setAccessibleName(words)
        self.paint_in(self._theme)
        self.show()
        self._settle()
        QAccessible.updateAccessibility(QAccessibleEvent(self, QAccessible.Event.Alert))

    def tell(self, words: str, *, undo: bool = False) -> None:
        """Show small news."""
        self.say(words, tone=Tone.NEWS, undo=undo)

    def warn(self, words: str) -> None:
        """Show expected trouble."""
        self.say(words, tone=Tone.TROUBLE)

    def clear(self) -> None:
        """Take the message away."""
        self._label.clear()
        self.hide()
        self._settle()

    def lie_on(self, page: QWidget | None) -> None:
        """Lie over the foot of a page below the parent, or keep room along the parent's own."""
        if page is not None and page is not self._laid_on:
            page.installEventFilter(self)
        self._laid_on = page
        self._settle()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in _LAID_ANEW and watched in (self._over, self._laid_on):
            self._settle()
        return super().eventFilter(watched, event)

    def _settle(self) -> None:
        """Lie along the foot, as high as the words ask for."""
        self.room.setHidden(self.isHidden() or self._laid_on is not None)
        if self.isHidden():
            return
        foot = self._over.rect()
        if self._laid_on is not None:
            foot = QRect(self._laid_on.mapTo(self._over, QPoint(0, 0)), self._laid_on.size())
        high = self.heightForWidth(foot.width())
        self.room.setFixedHeight(high)
        self.setGeometry(foot.left(), foot.bottom() + 1 - high, foot.width(), high)
        self.raise_()

    def paint_in(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self._theme = theme
        trouble = self._tone is Tone.TROUBLE
        palette = self.palette()
        palette.setColor(self.backgroundRole(), theme.wrong_ground if trouble else theme.notice_ground)
        palette.setColor(self.foregroundRole(), theme.wrong if trouble else theme.notice)
        self.setPalette(palette)
        self._undo.setIcon(icon("undo", theme))

    def _on_undo(self, _checked: bool) -> None:
        self.clear()
        self.undo_wanted.emit()
