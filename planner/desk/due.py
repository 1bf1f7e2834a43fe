"""A panel of what is due in a week, to walk through the weeks by. Nothing is reckoned while painting."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any, Final

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPalette
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHBoxLayout,
    QLabel,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from planner.desk.due_rows import VERBS, DueLine, due_rows, late_rows
from planner.desk.outlook import Outlook
from planner.desk.rows import Column, RowsModel
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.why.cells import CellAsking
from planner.desk.words import week_span_words
from planner.farm.farm import DAYS_PER_WEEK
from planner.planning.late import CarriedOver

PAYLOAD_ROLE: Final = Qt.ItemDataRole.UserRole + 2
_SMALL: Final = 0.88


class DueModel(RowsModel):
    """The rows of a week, with their words for the delegate."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__((Column(title=tr("Due")),), parent)

    def data(
        self, index: QModelIndex | QPersistentModelIndex, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        if role == PAYLOAD_ROLE and index.isValid():
            return self.rows[index.row()].payload
        if role == Qt.ItemDataRole.ToolTipRole and index.isValid():
            hint = super().data(index, role)
            return "\n".join(part for part in (self.rows[index.row()].spoken, hint) if part)
        return super().data(index, role)


class DueDelegate(QStyledItemDelegate):
    """Paints a task: the day over the first, the verb as a tag, what and where on two lines."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.theme = theme

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:
        line = index.data(PAYLOAD_ROLE)
        height = self._row_height(option.font, lines=2 if line.where else 1)
        return QSize(self.theme.metrics.row, height + (self._day_height(option.font) if line.day else 0))

    def _row_height(self, font: QFont, *, lines: int) -> int:
        lower = QFontMetrics(_small(font)).height() if lines > 1 else 0
        return QFontMetrics(font).height() + lower + self.theme.metrics.gap + self.theme.metrics.tight

    def _day_height(self, font: QFont) -> int:
        return QFontMetrics(font).height() + self.theme.metrics.margin

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        line: DueLine = index.data(PAYLOAD_ROLE)
        painter.save()
        box = QRect(option.rect)
        if line.day:
            box = self._paint_day(painter, box, line.day, option.font)
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        if chosen:
            painter.fillRect(box, self.theme.accent)
        ink = self.theme.on_accent if chosen else self.theme.text
        faint = self.theme.on_accent if chosen else self.theme.muted
        self._paint_line(painter, box, line, (ink, faint), option.font)
        painter.restore()

    def _paint_day(self, painter: QPainter, box: QRect, day: str, font: QFont) -> QRect:
        height = self._day_height(font)
        top = QRect(box.left() + self.theme.metrics.margin, box.top(), box.width(), height)
        bold = QFont(font)
        bold.setBold(True)
        painter.setFont(bold)
        painter.setPen(self.theme.text)
        side = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom
        painter.drawText(top.adjusted(0, 0, 0, -self.theme.metrics.tight), side, day)
        return box.adjusted(0, height, 0, 0)

    def _paint_line(
        self, painter: QPainter, box: QRect, line: DueLine, inks: tuple[QColor, QColor], font: QFont
    ) -> None:
        metrics = self.theme.metrics
        inner = box.adjusted(metrics.margin, metrics.tight, -metrics.gap, -metrics.tight)
        tag = self._paint_verb(painter, inner, line, font)
        text = inner.adjusted(tag + metrics.gap, 0, 0, 0)
        lower = QFontMetrics(_small(font)).height() if line.where else 0
        upper = text.adjusted(0, 0, 0, -lower)
        painter.setFont(font)
        painter.setPen(inks[0])
        self._elided(painter, upper, line.main)
        painter.setFont(_small(font))
        painter.setPen(inks[1])
        self._elided(painter, QRect(text.left(), text.bottom() - lower, text.width(), lower), line.where)

    def _paint_verb(self, painter: QPainter, inner: QRect, line: DueLine, font: QFont) -> int:
        small = _small(font)
        metrics = QFontMetrics(small)
        width = _widest_verb(metrics) + self.theme.metrics.gap
        tag = QRect(inner.left(), inner.top(), width, metrics.height() + 2)
        colour = self.theme.data_colour(line.tint)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        painter.drawRoundedRect(tag, self.theme.metrics.radius, self.theme.metrics.radius)
        painter.setPen(self.theme.on(colour))
        painter.setFont(small)
        painter.drawText(tag, Qt.AlignmentFlag.AlignCenter, line.verb)
        return width

    def _elided(self, painter: QPainter, box: QRect, words: str) -> None:
        said = painter.fontMetrics().elidedText(words, Qt.TextElideMode.ElideRight, box.width())
        painter.drawText(box, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter, said)


def _widest_verb(metrics: QFontMetrics) -> int:
    """Return the width that every verb fits in, in any language: what follows is a column."""
    return max(metrics.horizontalAdvance(tr(verb)) for verb in VERBS.values())


def _small(font: QFont) -> QFont:
    small = QFont(font)
    small.setPointSizeF(font.pointSizeF() * _SMALL)
    return small


class DuePanel(QWidget):
    """The tasks of one week, with buttons to the week before and after."""

    chosen = Signal(str)
    week_changed = Signal(date)

    def __init__(self, theme: Theme, today: date, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme, self._today = theme, today
        self._monday = today - timedelta(days=today.weekday())
        self._outlook: Outlook | None = None
        self._late: tuple[CarriedOver, ...] = ()
        self.heading = QLabel(tr("Due this week"), self)
        self.heading.setWordWrap(True)
        self.week = QLabel(self)
        self.before = self._arrow("‹", tr("Week before"))
        self.after = self._arrow("›", tr("Week after"))
        self.model = DueModel(self)
        self.list = QListView(self)
        self.nothing = QLabel(self)
        self._build()
        self.before.clicked.connect(self.go_before)
        self.after.clicked.connect(self.go_after)
        self.list.activated.connect(self._on_row)
        self.list.clicked.connect(self._on_row)
        self._fill()

    def _arrow(self, sign: str, words: str) -> QToolButton:
        button = QToolButton(self)
        button.setText(sign)
        button.setAutoRaise(True)
        button.setToolTip(words)
        button.setAccessibleName(words)
        button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        return button

    def _build(self) -> None:
        metrics = self._theme.metrics
        bold = self.heading.font()
        bold.setBold(True)
        self.heading.setFont(bold)
        head = QHBoxLayout()
        head.setContentsMargins(metrics.margin, metrics.gap, metrics.gap, 0)
        head.addWidget(self.heading, 1)
        head.addWidget(self.before)
        head.addWidget(self.after)
        self.week.setContentsMargins(metrics.margin, 0, metrics.gap, metrics.gap)
        self.week.setWordWrap(True)
        self.nothing.setContentsMargins(metrics.margin, metrics.margin, metrics.margin, metrics.margin)
        self.nothing.setWordWrap(True)
        self.nothing.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.list.setModel(self.model)
        self.list.setItemDelegate(DueDelegate(self._theme, self.list))
        self.list.setFrameShape(QListView.Shape.NoFrame)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setAccessibleName(tr("Due this week"))
        CellAsking(self.list)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(head)
        column.addWidget(self.week)
        column.addWidget(self.list, 1)
        column.addWidget(self.nothing, 1)

    @property
    def monday(self) -> date:
        """First day of the week shown."""
        return self._monday

    def show_outlook(self, outlook: Outlook | None) -> None:
        """Show what is due by another outlook; what was late before is told anew."""
        self._outlook, self._late = outlook, ()
        self.show_week(self._monday, again=True)

    def show_late(self, late: tuple[CarriedOver, ...]) -> None:
        """Show what is carried over, above what is due in the running week."""
        if late != self._late:
            self._late = late
            self._fill()

    def show_week(self, day: date, *, again: bool = False) -> None:
        """Show the week a day lies in."""
        start = self._outlook.forecast.ruler.start_on if self._outlook else day
        monday = day - timedelta(days=(day - start).days % DAYS_PER_WEEK) if self._outlook else day
        if monday == self._monday and not again:
            return
        changed = monday != self._monday
        self._monday = monday
        self._fill()
        if changed:
            self.week_changed.emit(monday)

    def go_before(self, *_anything: bool) -> None:
        """Show the week before."""
        self.show_week(self._monday - timedelta(days=DAYS_PER_WEEK))

    def go_after(self, *_anything: bool) -> None:
        """Show the week after."""
        self.show_week(self._monday + timedelta(days=DAYS_PER_WEEK))

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self._theme = theme
        delegate = self.list.itemDelegate()
        if isinstance(delegate, DueDelegate):
            delegate.theme = theme
        palette = self.week.palette()
        palette.setColor(QPalette.ColorRole.WindowText, theme.muted)
        self.week.setPalette(palette)
        self.nothing.setPalette(palette)
        self.list.viewport().update()

    def _fill(self) -> None:
        this_week = self._monday <= self._today < self._monday + timedelta(days=DAYS_PER_WEEK)
        self.heading.setText(tr("Due this week") if this_week else tr("Due in the week"))
        self.week.setText(week_span_words(self._monday))
        rows = due_rows(self._outlook, self._monday) if self._outlook else ()
        if self._outlook is not None and this_week:
            rows = (*late_rows(self._outlook, self._late), *rows)
        self.model.set_rows(rows)
        inside = self._outlook is not None and self._outlook.covers(self._monday)
        self.nothing.setText(tr("Nothing is due.") if inside else tr("This week lies outside the plan."))
        self.list.setVisible(bool(rows))
        self.nothing.setVisible(not rows)
        self.wear(self._theme)

    def _on_row(self, index: QModelIndex) -> None:
        self.chosen.emit(self.model.rows[index.row()].id)
