"""Small parts that every section of the page is put together from: words, tables, cautions, working.

Must know nothing of farms.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QEvent, QSize, QSortFilterProxyModel, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QProgressBar,
    QPushButton,
    QScrollArea,
    QSplitter,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from planner.desk.cell_ring import CellRing
from planner.desk.rows import SORT_ROLE, Column, Row, RowsModel
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.why.cells import CellAsking

_LARGER: Final = 1.25
_WIDEST_SHARE: Final = 1.5
_LEAST_ROWS: Final = 4
_ROOM: Final = 12
"""Around the words of an empty table [px]."""
_ROWS_MEASURED: Final = 60
"""A column is made as wide as what stands in so many rows; more would take long in a large table."""


class Words(QLabel):
    """A paragraph in one of the theme's colours, by the name the theme has for it."""

    def __init__(self, text: str, theme: Theme, parent: QWidget, *, ink: str = "text") -> None:
        super().__init__(text, parent)
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        # Named outright: on a ground of its own, a label would take the ink that goes with that ground.
        self.setForegroundRole(QPalette.ColorRole.WindowText)
        self._ink, self._ground = ink, ""
        self.wear(theme)

    def on_ground(self, ground: str, theme: Theme) -> Words:
        """Stand on a ground of its own, with room around the words."""
        self._ground = ground
        self.setBackgroundRole(QPalette.ColorRole.Window)
        self.setAutoFillBackground(True)
        self.setMargin(theme.metrics.gap)
        self.wear(theme)
        return self

    def say(self, text: str) -> None:
        """Show other words; none hides the paragraph."""
        self.setText(text)
        self.setVisible(bool(text))

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        palette = QPalette(self.palette())
        palette.setColor(QPalette.ColorRole.WindowText, getattr(theme, self._ink))
        if self._ground:
            palette.setColor(QPalette.ColorRole.Window, getattr(theme, self._ground))
        self.setPalette(palette)


def heading(text: str, theme: Theme, parent: QWidget, *, large: bool = False) -> Words:
    """Return a heading."""
    found = Words(text, theme, parent)
    font = found.font()
    font.setBold(True)
    if large:
        font.setPointSizeF(font.pointSizeF() * _LARGER)
    found.setFont(font)
    return found


def caution(text: str, theme: Theme, parent: QWidget) -> Words:
    """Return a caution, which stands out from what it belongs to."""
    return Words(f"⚠ {text}", theme, parent, ink="notice").on_ground("notice_ground", theme)


def button(text: str, parent: QWidget, *, tip: str = "") -> QPushButton:
    """Return a button with its spoken name."""
    found = QPushButton(text, parent)
    found.setAccessibleName(text.rstrip("…"))
    if tip:
        found.setToolTip(tip)
        found.setAccessibleDescription(tip)
    return found


def column(parent: QWidget, theme: Theme, *, margin: int | None = None) -> QVBoxLayout:
    """Return a column of parts with the usual distances."""
    found = QVBoxLayout(parent)
    room = theme.metrics.margin if margin is None else margin
    found.setContentsMargins(room, room, room, room)
    found.setSpacing(theme.metrics.gap)
    return found


class ScrolledColumn(QScrollArea):
    """A column that can be scrolled; it asks to be as wide as what stands in it, so never sideways."""

    def __init__(self, inside: QWidget, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(inside)

    def minimumSizeHint(self) -> QSize:
        found = super().minimumSizeHint()
        inside = self.widget()
        if inside is None:
            return found
        bar = self.verticalScrollBar().sizeHint().width()
        return QSize(inside.minimumSizeHint().width() + bar, found.height())


class Filled(QWidget):
    """Fills itself with one widget, and asks for no more than the least that it can be shrunk to.

    In an area that can be scrolled a column of paragraphs asks for all the height it likes; what stands in
    this one is shrunk first, for it can be scrolled in its own parts. Paragraphs are never cut: they have
    the height that they take at the present width.
    """

    def __init__(self, inside: QWidget, parent: QWidget) -> None:
        super().__init__(parent)
        self._inside = inside
        inside.setParent(self)
        inside.show()

    def minimumSizeHint(self) -> QSize:
        least = self._inside.minimumSizeHint()
        layout = self._inside.layout()
        if layout is None or not layout.hasHeightForWidth():
            return least
        width = max(self.width(), least.width())
        return QSize(least.width(), max(least.height(), layout.totalMinimumHeightForWidth(width)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._inside.setGeometry(self.rect())
        if event.size().width() != event.oldSize().width():
            self.updateGeometry()

    def event(self, event: QEvent) -> bool:
        if event.type() is QEvent.Type.LayoutRequest:
            self.updateGeometry()
        return super().event(event)


class Scrolling(QScrollArea):
    """An area for a whole page: the page has all the room there is, and is scrolled where that is too little.

    It asks for little room itself, so that a window stays within a small screen.
    """

    def __init__(self, page: QWidget, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._least = theme.metrics.row * _LEAST_ROWS
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(Filled(page, self))

    def minimumSizeHint(self) -> QSize:
        return QSize(self._least, self._least)


def stack(lines: QVBoxLayout, *parts: QWidget) -> None:
    """Put parts one below the other into a column."""
    for part in parts:
        lines.addWidget(part)


def scrolled(inside: QWidget, parent: QWidget) -> QScrollArea:
    """Return an area in which a column can be scrolled."""
    return ScrolledColumn(inside, parent)


def show_headings(table: QTableView) -> None:
    """Make every column of a table wide enough for its heading."""
    head = table.horizontalHeader()
    stretches = head.stretchLastSection()
    head.setStretchLastSection(False)
    for at in range(head.count()):
        head.resizeSection(at, max(head.sectionSize(at), head.sectionSizeFromContents(at).width()))
    head.setStretchLastSection(stretches)


class Table(QTableView):
    """A table of ready rows that can be sorted; `shown` is its rows in the order they stand."""

    def __init__(self, columns: Sequence[Column], name: str, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.model_of_rows = RowsModel(columns, self)
        self.ordered = QSortFilterProxyModel(self)
        self.ordered.setSourceModel(self.model_of_rows)
        self.ordered.setSortRole(SORT_ROLE)
        self.setModel(self.ordered)
        self.setAccessibleName(name)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setAlternatingRowColors(True)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setWordWrap(False)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(theme.metrics.row)
        head = self.horizontalHeader()
        head.setResizeContentsPrecision(_ROWS_MEASURED)
        head.setStretchLastSection(not columns[-1].numeric)
        head.setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        self.setSortingEnabled(True)
        self.sortByColumn(-1, Qt.SortOrder.AscendingOrder)
        self.setMinimumHeight(theme.metrics.row * 5)
        self._widest = round(theme.metrics.field_width * _WIDEST_SHARE)
        self._empty = ""
        self.setItemDelegate(CellRing(self))
        CellAsking(self)
        show_headings(self)

    def say_when_empty(self, words: str) -> None:
        """Say what the table is for as long as it has no row."""
        self._empty = words
        self.setAccessibleDescription(words)

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self._empty and not self.ordered.rowCount():
            painter = QPainter(self.viewport())
            painter.setPen(self.palette().color(QPalette.ColorRole.PlaceholderText))
            room = self.viewport().rect().adjusted(*(_ROOM, _ROOM, -_ROOM, -_ROOM))
            painter.drawText(room, Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap, self._empty)
            painter.end()

    def show_columns(self, columns: Sequence[Column]) -> None:
        """Show other columns, and no rows yet."""
        self.model_of_rows.deleteLater()
        self.model_of_rows = RowsModel(columns, self)
        self.ordered.setSourceModel(self.model_of_rows)
        show_headings(self)

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Show other rows; columns are fitted when there were none before, and widened for new ones."""
        had = len(self.model_of_rows.rows)
        self.model_of_rows.set_rows(rows)
        if not had and rows:
            self.fit()
        for at in range(self.ordered.columnCount() if len(rows) > had else 0):
            self.setColumnWidth(at, max(self.columnWidth(at), min(self.sizeHintForColumn(at), self._widest)))

    def fit(self) -> None:
        """Make every column as wide as what stands in it, within reason."""
        head = self.horizontalHeader()
        stretches = head.stretchLastSection()
        head.setStretchLastSection(False)
        self.resizeColumnsToContents()
        for at in range(self.ordered.columnCount()):
            self.setColumnWidth(at, min(self.columnWidth(at), self._widest))
        head.setStretchLastSection(stretches)
        show_headings(self)

    def current(self) -> Row | None:
        """Return the row that is chosen, None when none is."""
        index = self.ordered.mapToSource(self.currentIndex())
        return self.model_of_rows.rows[index.row()] if index.isValid() else None

    def choose(self, row_id: str) -> bool:
        """Choose a row by its id; tells whether it is there."""
        at = self.model_of_rows.row_of(row_id)
        if at < 0:
            return False
        index = self.ordered.mapFromSource(self.model_of_rows.index(at, 0))
        self.selectRow(index.row())
        self.scrollTo(index)
        return True


class Working(QWidget):
    """Says what is being worked out and how far it is, with a button to stop; hidden while nothing is."""

    stopped = Signal()

    def __init__(self, theme: Theme, parent: QWidget, *, stop: str = "") -> None:
        super().__init__(parent)
        self.words = Words("", theme, self, ink="muted")
        self.bar = QProgressBar(self)
        self.bar.setTextVisible(False)
        self.bar.setFixedHeight(theme.metrics.gap)
        self.bar.setAccessibleName(tr("How far it is"))
        self.stop = button(stop or tr("Stop"), self)
        row = QHBoxLayout()
        row.addWidget(self.bar, 1)
        row.addWidget(self.stop)
        lines = column(self, theme, margin=0)
        lines.addWidget(self.words)
        lines.addLayout(row)
        self.stop.clicked.connect(self._on_stop)
        self.hide()

    def _on_stop(self, _checked: bool) -> None:
        self.stopped.emit()

    def show_step(self, words: str, *, done: int = 0, total: int = 0) -> None:
        """Show how far it is; without a total only that it goes on."""
        self.words.setText(words)
        self.bar.setRange(0, total)
        self.bar.setValue(done)
        self.show()


class Beside(QSplitter):
    """What is asked beside what comes of it; one above the other where that is too narrow."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._narrow = theme.metrics.field_width * 7 // 2
        self._least_height = theme.metrics.row * 11
        self.setChildrenCollapsible(False)
        self.setHandleWidth(theme.metrics.hair)

    def _panes(self) -> list[QWidget]:
        found = (self.widget(at) for at in range(self.count()))
        return [pane for pane in found if pane is not None and not pane.isHidden()]

    def minimumSizeHint(self) -> QSize:
        """Return the least size, no wider than the widest pane: they can stand one above the other."""
        least = self._least()
        width = max((size.width() for size in least), default=0)
        if self.orientation() is Qt.Orientation.Horizontal:
            return QSize(width, max((size.height() for size in least), default=0))
        return QSize(width, sum(size.height() for size in least) + self.handleWidth() * (len(least) - 1))

    def _least(self) -> list[QSize]:
        """Return the least size of each pane, with what it was told besides."""
        return [
            QSize(max(hint.width(), pane.minimumWidth()), max(hint.height(), pane.minimumHeight()))
            for pane in self._panes()
            for hint in (pane.minimumSizeHint(),)
        ]

    def _wanted(self) -> Qt.Orientation:
        least = self._least()
        gaps = self.handleWidth() * (len(least) - 1)
        narrow = self.width() < max(self._narrow, sum(size.width() for size in least) + gaps)
        return Qt.Orientation.Vertical if narrow else Qt.Orientation.Horizontal

    def resizeEvent(self, event: QResizeEvent) -> None:
        wanted = self._wanted()
        if wanted is not self.orientation():
            self.setOrientation(wanted)
            above = wanted is Qt.Orientation.Vertical
            for pane in (self.widget(at) for at in range(self.count())):
                if pane is not None:
                    pane.setMinimumHeight(self._least_height if above else 0)
        super().resizeEvent(event)


class Card(QFrame):
    """A framed field-coloured ground for one thing to choose."""

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self.setAutoFillBackground(True)
        self.setBackgroundRole(QPalette.ColorRole.Base)
        self.lines = column(self, theme)
        self.lines.setSpacing(theme.metrics.tight)


def wear_words(owner: QWidget, theme: Theme) -> None:
    """Let every paragraph below a widget wear a theme."""
    for words in owner.findChildren(Words):
        words.wear(theme)


def emptied(layout: QVBoxLayout) -> None:
    """Take every part out of a column, for good."""
    while (item := layout.takeAt(0)) is not None:
        if (widget := item.widget()) is not None:
            widget.hide()
            widget.deleteLater()
