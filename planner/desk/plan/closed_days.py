"""Seven boxes to tick: the days of the week on which nothing is sown or moved."""

from __future__ import annotations

from PySide6.QtCore import QLocale, Signal
from PySide6.QtWidgets import QCheckBox, QGridLayout, QLabel, QWidget

from planner.desk.plan.asks import Weekday
from planner.desk.plan.kit import Words
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import choice_words

_IN_A_ROW = 4


class ClosedDays(QWidget):
    """Days without work; `closed` are the numbers of those ticked, Monday 0."""

    touched = Signal()

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.addWidget(QLabel(tr("No work on"), self), 0, 0, 1, _IN_A_ROW)
        self.boxes: list[QCheckBox] = []
        for day in Weekday:
            short = QLocale().dayName(day.value + 1, QLocale.FormatType.ShortFormat)
            box = QCheckBox(short, self)
            box.setAccessibleName(tr("No work on {day}", day=choice_words(day)))
            box.clicked.connect(self._on_clicked)
            grid.addWidget(box, 1 + day.value // _IN_A_ROW, day.value % _IN_A_ROW)
            self.boxes.append(box)
        self.trouble = Words("", theme, self, ink="wrong")
        self.trouble.hide()
        grid.addWidget(self.trouble, 3, 0, 1, _IN_A_ROW)

    @property
    def closed(self) -> frozenset[int]:
        """The days that are ticked, Monday 0."""
        return frozenset(day for day, box in enumerate(self.boxes) if box.isChecked())

    def is_sound(self) -> bool:
        """Tell whether a day of work is left; says so where none is."""
        sound = not all(box.isChecked() for box in self.boxes)
        self.trouble.say("" if sound else tr("⚠ All seven days are ticked; leave at least one for work."))
        return sound

    def _on_clicked(self, _checked: bool) -> None:
        self.touched.emit()
