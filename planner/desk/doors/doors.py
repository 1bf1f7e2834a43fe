"""Opens the doors over the window, shows them as a slim strip over the sample, and the first figures after.

Calls what the window hands in; must know nothing of files or farms.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QBoxLayout, QFrame, QHBoxLayout, QToolButton, QWidget

from planner.desk.doors.dialog import DoorsDialog
from planner.desk.plan.kit import Words, button
from planner.desk.say import tr
from planner.desk.theme import Theme


@dataclass(frozen=True, slots=True, kw_only=True)
class DoorActs:
    """What lies behind each door."""

    new: Callable[[], object]
    sample: Callable[[], object]
    kept: Callable[[], object]


class Doors(QObject):
    """The doors of one window."""

    def __init__(self, acts: DoorActs, theme: Theme, middle: QWidget, window: QWidget) -> None:
        """Keep what lies behind the doors; the strip stands on top of the `middle`, which is a column."""
        super().__init__(window)
        self._acts, self._middle, self._window = acts, middle, window
        self.theme = theme
        self.strip: WelcomeStrip | None = None

    def show(self) -> None:
        """Ask by which door to begin."""
        dialog = DoorsDialog(self.theme, self._window)
        dialog.new_wanted.connect(self._acts.new)
        dialog.sample_wanted.connect(self._acts.sample)
        dialog.open_wanted.connect(self._acts.kept)
        dialog.open()

    def show_strip(self) -> None:
        """Show the doors slimly above everything else, until one is taken or the strip is closed."""
        column = self._middle.layout()
        if self.strip is None and isinstance(column, QBoxLayout):
            self.strip = WelcomeStrip(self.theme, self._window)
            self.strip.new.clicked.connect(self._on_new)
            self.strip.kept.clicked.connect(self._on_open)
            self.strip.away.clicked.connect(self.put_away)
            column.insertWidget(0, self.strip)

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme, the strip too while it is shown."""
        self.theme = theme
        if self.strip is not None:
            self.strip.words.wear(theme)

    def put_away(self, *_anything: object) -> None:
        """Take the strip away."""
        strip, self.strip = self.strip, None
        if strip is not None:
            strip.hide()
            strip.deleteLater()

    def _on_new(self, _checked: bool) -> None:
        self._acts.new()

    def _on_open(self, _checked: bool) -> None:
        self._acts.kept()


class WelcomeStrip(QFrame):
    """Says that this is the sample, and offers the other two doors."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAccessibleName(tr("Begin"))
        said = tr("This is the sample farm: look around, and change what you like.")
        self.words = Words(said, theme, self)
        self.new = button(tr("Begin your own farm…"), self)
        self.kept = button(tr("Open a farm…"), self)
        self.away = QToolButton(self)
        self.away.setText("✕")
        self.away.setAutoRaise(True)
        self.away.setAccessibleName(tr("Close this strip"))
        row = QHBoxLayout(self)
        row.setContentsMargins(
            theme.metrics.margin, theme.metrics.tight, theme.metrics.gap, theme.metrics.tight
        )
        row.setSpacing(theme.metrics.gap)
        row.addWidget(self.words, 1)
        for part in (self.new, self.kept, self.away):
            row.addWidget(part)
