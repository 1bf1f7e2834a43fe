"""Two small questions: how much later copied batches are sown again, and how a batch is split.

They read numbers and say what would come of them. Must know nothing of how a farm changes.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from typing import Final

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QFormLayout, QLabel, QPushButton, QSpinBox, QWidget

from planner.desk.say import tr
from planner.desk.words import day_words as _day
from planner.farm.crops import Batch

MOST_WEEKS: Final = 260
MOST_DAYS: Final = 365
_WIDTH: Final = 34


class _Asked(QDialog):
    """Numbers one below the other, a sentence on what they lead to, and two buttons."""

    def __init__(self, title: str, go_on: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(title)
        self.rows = QFormLayout(self)
        self.words = QLabel(self)
        self.words.setWordWrap(True)
        self.words.setMinimumWidth(_WIDTH * self.fontMetrics().averageCharWidth())
        self.box = QDialogButtonBox(self)
        self.ok = QPushButton(go_on, self.box)
        self.no = QPushButton(tr("Cancel"), self.box)
        for button, role in (
            (self.ok, QDialogButtonBox.ButtonRole.AcceptRole),
            (self.no, QDialogButtonBox.ButtonRole.RejectRole),
        ):
            button.setAccessibleName(button.text())
            self.box.addButton(button, role)
        self.ok.setDefault(True)
        self.box.accepted.connect(self.offer)
        self.box.rejected.connect(self.reject)

    def number(self, label: str, least: int, most: int, value: int) -> QSpinBox:
        """Add a whole number between two limits."""
        spin = QSpinBox(self)
        spin.setRange(least, most)
        spin.setValue(value)
        spin.setAccessibleName(label)
        spin.setToolTip(tr("{least} to {most}", least=least, most=most))
        spin.valueChanged.connect(self.describe)
        self.rows.addRow(label, spin)
        return spin

    def finish(self) -> None:
        """Put the sentence and the buttons below."""
        self.rows.addRow(self.words)
        self.rows.addRow(self.box)
        self.describe()

    def describe(self, _value: int = 0) -> None:
        """Say what the numbers lead to."""
        raise NotImplementedError

    def offer(self) -> None:
        """Hand the numbers on."""
        raise NotImplementedError

    def say_trouble(self, words: str) -> None:
        """Say why it cannot be; the numbers stay as they are."""
        self.words.setText("⚠ " + words)
        self.words.setAccessibleName(words)


class PasteDialog(_Asked):
    """How many weeks later copied batches are sown again."""

    offered = Signal(int)

    def __init__(self, batches: Sequence[Batch], weeks: int, parent: QWidget) -> None:
        super().__init__(tr("Paste"), tr("Sow again"), parent)
        self._days = sorted(batch.sow_on for batch in batches)
        self.weeks = self.number(tr("Weeks later"), 0, MOST_WEEKS, min(weeks, MOST_WEEKS))
        self.finish()

    def describe(self, _value: int = 0) -> None:
        later = timedelta(weeks=self.weeks.value())
        first, last = (_day(day + later) for day in (self._days[0], self._days[-1]))
        many = len(self._days)
        if first == last:
            words = tr("Batches to sow: {many}, on {first}.", many=many, first=first)
        else:
            words = tr("Batches to sow: {many}, from {first} to {last}.", many=many, first=first, last=last)
        self.words.setText(words)

    def offer(self) -> None:
        self.offered.emit(self.weeks.value())


class PartDialog(_Asked):
    """How many plants of a batch become a batch of their own, and how many days later that is sown."""

    offered = Signal(int, int)

    def __init__(self, batch: Batch, parent: QWidget) -> None:
        super().__init__(tr("Split {code}", code=batch.code), tr("Split"), parent)
        self._batch = batch
        self.plants = self.number(tr("Plants of the new batch"), 1, batch.plants - 1, batch.plants // 2)
        self.days = self.number(tr("Days later"), 0, MOST_DAYS, 0)
        self.finish()

    def describe(self, _value: int = 0) -> None:
        day = _day(self._batch.sow_on + timedelta(days=self.days.value()))
        self.words.setText(
            tr(
                "{code} keeps {kept} plants; the new batch has {plants}, sown {day}.",
                code=self._batch.code,
                kept=self._batch.plants - self.plants.value(),
                plants=self.plants.value(),
                day=day,
            )
        )

    def offer(self) -> None:
        self.offered.emit(self.plants.value(), self.days.value())
