"""Two plain windows of help: what the words mean, and what the program is with its cautions."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSize, QSortFilterProxyModel, Qt
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QDialogButtonBox,
    QFrame,
    QHeaderView,
    QLabel,
    QLineEdit,
    QPushButton,
    QScrollArea,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from planner.desk.fitting import open_sized
from planner.desk.help_words import ABOUT, PLANNING_AID, PRIVACY
from planner.desk.rows import Column, Row, RowsModel
from planner.desk.say import tr
from planner.desk.terms import terms
from planner.desk.theme import Theme


def close_box(dialog: QDialog) -> QDialogButtonBox:
    """Return a box with one button that closes a dialog."""
    box = QDialogButtonBox(dialog)
    button = QPushButton(tr("Close"), box)
    button.setAccessibleName(button.text())
    box.addButton(button, QDialogButtonBox.ButtonRole.RejectRole)
    box.rejected.connect(dialog.reject)
    return box


class GlossaryPane(QWidget):
    """The words and what they mean, with a line to search them."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.search = QLineEdit(self)
        self.search.setPlaceholderText(tr("Search the words"))
        self.search.setAccessibleName(tr("Search the words"))
        self.search.setClearButtonEnabled(True)
        self.model = RowsModel((Column(title=tr("Word")), Column(title=tr("What it means"))), self)
        self.model.set_rows(_glossary_rows())
        self._filter = QSortFilterProxyModel(self)
        self._filter.setSourceModel(self.model)
        self._filter.setFilterKeyColumn(-1)
        self._filter.setFilterCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.table = self._table(theme)
        column = QVBoxLayout(self)
        column.setContentsMargins(*(theme.metrics.margin,) * 4)
        column.addWidget(self.search)
        column.addWidget(self.table)
        self.search.textChanged.connect(self._filter.setFilterFixedString)

    def _table(self, theme: Theme) -> QTableView:
        table = QTableView(self)
        table.setModel(self._filter)
        table.setAccessibleName(tr("Words used here"))
        table.setWordWrap(True)
        table.setShowGrid(False)
        table.setAlternatingRowColors(True)
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setTabKeyNavigation(False)
        table.verticalHeader().hide()
        table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        table.horizontalHeader().setStretchLastSection(True)
        table.setColumnWidth(0, theme.metrics.field_width)
        return table


def _glossary_rows() -> tuple[Row, ...]:
    return tuple(
        Row(
            id=term.word,
            texts=(term.word, term.meaning),
            sort=(term.word, term.meaning),
            spoken=term.sentence,
        )
        for term in terms()
    )


class GlossaryDialog(QDialog):
    """The glossary in a window of its own."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Words used here"))
        pane = GlossaryPane(theme, self)
        self.search, self.model, self.table = pane.search, pane.model, pane.table
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, theme.metrics.margin, theme.metrics.margin)
        column.addWidget(pane)
        column.addWidget(close_box(self))
        open_sized(self, QSize(theme.metrics.side_width * 2, theme.metrics.row * 16))


class AboutDialog(QDialog):
    """What the program is for, and every caution of the catalogue."""

    def __init__(
        self,
        version: str,
        cautions: Sequence[tuple[str, str]],
        theme: Theme,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("About and cautions"))
        inside = QWidget(self)
        text = QVBoxLayout(inside)
        text.setContentsMargins(*(theme.metrics.wide,) * 4)
        text.setSpacing(theme.metrics.margin)
        for words in (f"<h2>Raftweek {version}</h2>", tr(ABOUT), f"<b>{tr(PLANNING_AID)}</b>", tr(PRIVACY)):
            text.addWidget(_paragraph(words, inside))
        for topic, words in cautions:
            text.addWidget(_paragraph(f"<b>{topic}.</b> {words}", inside))
        text.addStretch(1)
        area = QScrollArea(self)
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setWidget(inside)
        area.setAccessibleName(tr("About and cautions"))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, theme.metrics.margin, theme.metrics.margin)
        column.addWidget(area, 1)
        column.addWidget(close_box(self))
        open_sized(self, QSize(theme.metrics.side_width * 2, theme.metrics.row * 16))


def _paragraph(words: str, parent: QWidget) -> QLabel:
    label = QLabel(words, parent)
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.RichText)
    return label
