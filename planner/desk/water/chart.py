"""Shows one quantity of the water over time; its days can be walked by keys, and asked why."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QPoint, QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from planner.desk.daycursor import WalkedChart
from planner.desk.pages import Fact
from planner.desk.theme import Theme
from planner.desk.water.drawing import Drawing, Frame
from planner.desk.water.rows import Course, course_words
from planner.farm.water import Quantity


class WaterChart(WalkedChart):
    """A line with dots; a reading that stands alone is drawn hollow.

    Keys step through its days; what was read or is foreseen on the day stood on can be asked why.
    """

    def __init__(self, quantity: Quantity, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.theme = theme
        self.course = Course(quantity=quantity, points=(), low=None, high=None)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
        self.setMinimumSize(theme.metrics.row * 5, theme.metrics.row * 4)
        self.speak()

    def sizeHint(self) -> QSize:
        metrics = self.theme.metrics
        return QSize(metrics.side_width, metrics.row * 5)

    def show_course(self, course: Course) -> None:
        """Show other readings; the same again change nothing."""
        if course != self.course:
            self.course = course
            days = sorted({each.toordinal() for each in course.own_days})
            today = course.today.toordinal() if course.today is not None else None
            self.cursor_day.show_days(days, today=today)
            self.speak()
            self.update()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self.theme = theme
        self.update()

    def speak(self) -> None:
        """Say all readings, and what is on the day stood on."""
        self.setAccessibleName(course_words(self.course))
        self.setToolTip(course_words(self.course))
        stood = (f"{fact.label}: {fact.value}" for fact in self.facts_at(None))
        self.setAccessibleDescription("; ".join(stood))

    def facts_at(self, point: QPoint | None) -> tuple[Fact, ...]:
        """Return what can be asked of the day nearest to a point; with None, of that stood on."""
        if point is not None:
            self.go_to(point.x())
        day = self.cursor_day.day
        return () if day is None else self.course.facts_on(date.fromordinal(day))

    def _frame(self) -> Frame:
        return Frame(self.course, self.theme, QRectF(self.rect()), self.font())

    def day_at(self, x: float) -> int | None:
        """Return the day that is drawn at a distance from the left, None when there is none."""
        return self._frame().day_at(x)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), self.theme.panel)
        Drawing(painter, self.course, self.theme, self._frame()).draw(self.day_stood_on)
        painter.end()
