"""Draws supply against demand of every element by week, the limiting element, and the feed-rate ratio.

The week the keys stand on is framed. A plain widget over values; must know nothing of how they came about.
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import Final

from PySide6.QtCore import QPoint, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractScrollArea, QFrame, QWidget

from planner.desk.balance.asked import Row, week_answers
from planner.desk.balance.drawing import Painting
from planner.desk.balance.weeks import LoopWeeks, ranged_words, share_words
from planner.desk.daycursor import stepped
from planner.desk.lanes.kit import Face, Kit
from planner.desk.lanes.words import element_full, element_symbol
from planner.desk.pages import Fact
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.why.drawn import DrawnAsking
from planner.desk.words import choice_words, gram_words, week_span_words
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import ELEMENTS
from planner.forecast.values import AreaRule

_NAMES_SHARE: Final = 0.8
_PLOT_LINES: Final = 2.7
_RATIO_LINES: Final = 3.4
_WEEKS_PAGE: Final = 4
_PAD: Final = 10.0
_GAP: Final = 4.0
_SPAN: Final = 0.25


class BalanceChart(QAbstractScrollArea):
    """All elements of a loop by week; `week_chosen` carries the number of a week."""

    week_chosen = Signal(int)
    element_chosen = Signal(int)

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._kit = Kit(theme, self.font())
        self._weeks: LoopWeeks | None = None
        self.start_on, self.today_week = date(2000, 1, 3), -1
        self.week, self.element = 0, 0
        self.rule = AreaRule.FAO
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        DrawnAsking(self)
        self.setAccessibleName(tr("Supply and demand by week"))

    def show_weeks(self, weeks: LoopWeeks | None, start: date, today: date) -> None:
        """Show a loop; `start` is the first day of its first week."""
        self._weeks, self.start_on = weeks, start
        self.today_week = (today - start).days // DAYS_PER_WEEK
        self.week = min(max(self.week, 0), max(self._count - 1, 0))
        self._measure()
        self._describe()

    @property
    def _count(self) -> int:
        return len(self._weeks.verdicts) if self._weeks is not None else 0

    def go(self, week: int, element: int | None = None) -> None:
        """Stand on another week, or another element."""
        self.week = min(max(week, 0), max(self._count - 1, 0))
        if element is not None and self._weeks is not None:
            self.element = min(max(element, 0), len(self._weeks.elements) - 1)
        self._see_week()
        self._describe()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self._kit = Kit(theme, self.font())
        self.viewport().update()

    def _describe(self) -> None:
        self.setAccessibleDescription(self.words_of(self.week))
        self.viewport().update()

    def words_of(self, week: int) -> str:
        """Return a week in a sentence, for the element that is stood on."""
        if self._weeks is None or not self._count:
            return ""
        course, verdict = self._weeks.elements[self.element], self._weeks.verdicts[week]
        return tr(
            "{week}. {element}: {supply} g supplied, {demand} g wanted, {share} %, {band}; "
            "stock {stock} mg/L.",
            week=week_span_words(self.start_on + timedelta(days=week * DAYS_PER_WEEK)),
            element=element_full(course.element),
            supply=ranged_words(course.supply, week),
            demand=ranged_words(course.demand, week),
            share=share_words(verdict.ratio[self.element]),
            band=choice_words(verdict.band[self.element]),
            stock=gram_words(course.stock.likely[week]),
        )

    def facts_at(self, point: QPoint | None) -> tuple[Fact, ...]:
        """Return what can be asked of a week at a point of the viewport; with None, of that stood on."""
        if self._weeks is None or not self._count:
            return ()
        if point is None:
            return week_answers(self._weeks, self.week, self.element, Row.PLOT)
        row, element = self._row_at(point.y() + self.verticalScrollBar().value())
        return week_answers(self._weeks, self.week_at(point.x()), element, row)

    def _row_at(self, y: float) -> tuple[Row, int]:
        """Return which of the rows lies at a height, and its element; that stood on where it has none."""
        tops = self.tops_px()
        if y < tops[0]:
            return Row.LIMITING, self.element
        if y >= tops[-1]:
            return Row.FEED_RATIO, self.element
        return Row.PLOT, max(at for at in range(len(tops) - 1) if tops[at] <= y)

    # ---- distances

    @property
    def names_px(self) -> float:
        """Width of the names at the left [px]: none of those in bold is cut."""
        named = (tr("Limiting element"), tr("Feed-rate ratio"))
        widest = max(self._kit.width(each, Face.BOLD) for each in named) + 2 * _PAD + 1
        return max(widest, self._kit.names_px * _NAMES_SHARE)

    @property
    def week_px(self) -> float:
        """Width of a week [px]; the symbol of every element finds room in it."""
        room = self.viewport().width() - self.names_px - _PAD
        least = max(self._kit.width(element_symbol(each), Face.SMALL_BOLD) for each in ELEMENTS) + _GAP
        return max(room / max(self._count, 1), least)

    def x_of(self, week: float) -> float:
        """Return where a week begins [px]."""
        return self.names_px + week * self.week_px - self.horizontalScrollBar().value()

    def week_at(self, x: float) -> int:
        """Return the week at a distance from the left [px], kept within the plan."""
        week = int((x - self.names_px + self.horizontalScrollBar().value()) // self.week_px)
        return min(max(week, 0), max(self._count - 1, 0))

    def rows_px(self) -> tuple[float, float, float]:
        """Return the heights of the strip, of one plot, and of the ratio; plots grow into free room."""
        line = self._kit.line_px
        elements = len(self._weeks.elements) if self._weeks is not None else 1
        least = line * (2.4 + _PLOT_LINES * elements + _RATIO_LINES)
        extra = max(self.viewport().height() - least, 0) / (elements + 1)
        return line, line * _PLOT_LINES + extra, line * _RATIO_LINES + extra

    def tops_px(self) -> list[float]:
        """Return the upper edges of the plots of the elements and of the ratio [px]."""
        line, plot, _ = self.rows_px()
        elements = len(self._weeks.elements) if self._weeks is not None else 0
        first = line * 2.4
        return [first + plot * at for at in range(elements + 1)]

    def _measure(self) -> None:
        page, high = self.viewport().width(), self.viewport().height()
        whole = self.names_px + self._count * self.week_px + _PAD
        self.horizontalScrollBar().setPageStep(page)
        self.horizontalScrollBar().setSingleStep(round(self.week_px))
        self.horizontalScrollBar().setRange(0, max(round(whole) - page, 0))
        tall = self.tops_px()[-1] + self.rows_px()[2]
        self.verticalScrollBar().setPageStep(high)
        self.verticalScrollBar().setSingleStep(round(self._kit.line_px))
        self.verticalScrollBar().setRange(0, max(round(tall) - high, 0))

    def _see_week(self) -> None:
        bar, x = self.horizontalScrollBar(), self.x_of(self.week)
        if x < self.names_px:
            bar.setValue(round(bar.value() + x - self.names_px))
        elif x + self.week_px > self.viewport().width():
            bar.setValue(round(bar.value() + x + self.week_px - self.viewport().width()))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._measure()

    # ---- hands

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() != Qt.MouseButton.LeftButton or not self._count:
            return
        y = event.position().y() + self.verticalScrollBar().value()
        tops = self.tops_px()
        found = [at for at in range(len(tops) - 1) if tops[at] <= y < tops[at + 1]]
        if found:
            self._choose_element(found[0])
        self._choose(self.week_at(event.position().x()))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if event.buttons() & Qt.MouseButton.LeftButton and self._count:
            self._choose(self.week_at(event.position().x()))

    def _choose(self, week: int) -> None:
        before = self.week
        self.go(week)
        if self.week != before:
            self.week_chosen.emit(self.week)

    def _choose_element(self, at: int) -> None:
        if at != self.element:
            self.go(self.week, at)
            self.element_chosen.emit(self.element)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        week = stepped(key, self.week, last=self._count - 1, page=_WEEKS_PAGE)
        if key in {Qt.Key.Key_Up, Qt.Key.Key_Down} and self._weeks is not None:
            step = self.element + (1 if key == Qt.Key.Key_Down else -1)
            self._choose_element(min(max(step, 0), len(self._weeks.elements) - 1))
        elif week is not None:
            self._choose(week)
        else:
            super().keyPressEvent(event)

    # ---- painting

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: ARG002
        painter = QPainter(self.viewport())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self.font())
        theme = self._kit.theme
        painter.fillRect(self.viewport().rect(), theme.field)
        if self._weeks is None or not self._count:
            painter.setPen(theme.muted)
            words = tr("No loop of water yet. What its fish supply and its plants want is weighed here.")
            painter.drawText(self.viewport().rect(), Qt.AlignmentFlag.AlignCenter, words)
        else:
            painter.translate(0, -self.verticalScrollBar().value())
            Painting(painter, self._kit, self._weeks, self).paint()
        painter.end()
