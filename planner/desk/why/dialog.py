"""Walks through the reasons of a figure: formula, what goes in with its sources, down into a part and back.

Must know nothing of how an answer is found.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Final

from PySide6.QtCore import QModelIndex, QSize, Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import (
    QAbstractItemView,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFrame,
    QHeaderView,
    QLabel,
    QPushButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from planner.catalogue.catalogue import Catalogue
from planner.desk.help import close_box
from planner.desk.pages import Basis, Fact, LateAsk, Later
from planner.desk.rows import RowsModel
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.why.answers import Answer, answer_columns, answer_of, answer_of_basis, no_answer
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.values import Explanation

_SHARE_OF_SCREEN: Final = 0.92
_NAME, _VALUE = 0, 1


class WhyDialog(QDialog):
    """One answer at a time, and the way back to the figure that was asked about."""

    def __init__(
        self,
        facts: Sequence[Fact],
        ask: Callable[[LateAsk], Explanation],
        catalogue: Catalogue,
        theme: Theme,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Why?"))
        self._facts, self._ask, self._catalogue, self._theme = tuple(facts), ask, catalogue, theme
        self._trail: list[Explanation] = []
        self.answer: Answer | None = None
        self.figure = QComboBox(self)
        self.figure.setAccessibleName(tr("Which figure"))
        for fact in self._facts:
            self.figure.addItem(f"{fact.label}: {_first_line(fact.value)}" if fact.label else fact.value)
        self.title, self.value, self.formula, self.symbols, self.notes = (QLabel(self) for _ in range(5))
        self.model = RowsModel(answer_columns(), self)
        self.table = QTableView(self)
        self.room = QWidget(self)
        self._make_table()
        self._lay_out()
        self.figure.currentIndexChanged.connect(self.show_fact)
        self.table.activated.connect(self._on_activated)

    def _make_table(self) -> None:
        table = self.table
        table.setModel(self.model)
        table.setAccessibleName(tr("What goes in"))
        table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        table.setAlternatingRowColors(True)
        table.setShowGrid(False)
        table.setTabKeyNavigation(False)
        table.setFrameShape(QFrame.Shape.NoFrame)
        table.verticalHeader().hide()
        table.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        table.verticalHeader().setMinimumSectionSize(self._theme.metrics.row)
        table.horizontalHeader().setStretchLastSection(True)

    def _lay_out(self) -> None:
        metrics = self._theme.metrics
        for label in (self.title, self.value, self.formula, self.symbols, self.notes):
            label.setWordWrap(True)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.title.setStyleSheet(f"color: {self._theme.muted.name()}")
        self.symbols.setStyleSheet(f"color: {self._theme.muted.name()}")
        large = self.value.font()
        large.setPointSizeF(large.pointSizeF() * 1.5)
        large.setBold(True)
        self.value.setFont(large)
        self.back = QPushButton(tr("‹ Back"), self)
        self.back.setAccessibleName(tr("Back to what this is part of"))
        self.deeper = QPushButton(tr("Go into it"), self)
        self.deeper.setAccessibleName(tr("Why is the chosen part what it is"))
        box = close_box(self)
        for button in (self.back, self.deeper):
            button.setAutoDefault(False)
            box.addButton(button, QDialogButtonBox.ButtonRole.ActionRole)
        self.back.clicked.connect(self.go_back)
        self.deeper.clicked.connect(self._on_deeper)
        self.table.selectionModel().currentRowChanged.connect(self._on_current)
        back = QAction(self)
        back.setShortcuts([QKeySequence("Alt+Left"), QKeySequence("Backspace")])
        back.triggered.connect(self.go_back)
        self.addAction(back)
        column = QVBoxLayout(self)
        column.setContentsMargins(*(metrics.margin,) * 4)
        column.setSpacing(metrics.gap)
        for part in (self.figure, self.title, self.value, self.formula, self.symbols, self.notes):
            column.addWidget(part)
        column.addWidget(self.table, 1)
        column.addWidget(self.room, 1)
        column.addWidget(box)
        screen = self.screen().availableGeometry().size() * _SHARE_OF_SCREEN
        wanted = QSize(metrics.side_width * 2 + metrics.due_width, metrics.row * 20)
        self.resize(screen.boundedTo(self.sizeHint().expandedTo(wanted)))

    def show_fact(self, at: int) -> None:
        """Answer why a fact of the page is what it is."""
        if not 0 <= at < len(self._facts):
            return
        if at != self.figure.currentIndex():
            self.figure.setCurrentIndex(at)
            return
        fact = self._facts[at]
        self._trail = []
        if isinstance(fact.ask, Basis):
            self._show(answer_of_basis(fact, fact.ask, self._catalogue))
        elif isinstance(fact.ask, Explanation):
            self.go_into(fact.ask)
        elif fact.ask is not None:
            self._answer(fact, fact.ask)

    def _answer(self, fact: Fact, ask: LateAsk | Later) -> None:
        """Look an answer up; what is not there any more is said so."""
        try:
            found = ask.make() if isinstance(ask, Later) else self._ask(ask)
        except NoSuchFigureError as no_figure:
            self._show(no_answer(fact, str(no_figure)))
            return
        self.go_into(found)

    def go_into(self, explanation: Explanation) -> None:
        """Show an explanation; back leads to the one before."""
        self._trail.append(explanation)
        self._show(answer_of(explanation, self._catalogue))

    def go_back(self) -> None:
        """Show what the explanation shown is part of."""
        if len(self._trail) > 1:
            left = self._trail.pop()
            self._show(answer_of(self._trail[-1], self._catalogue))
            self._choose(left)

    def _choose(self, explanation: Explanation) -> None:
        """Stand on the row that was gone into."""
        for at, row in enumerate(self.model.rows):
            if row.payload is explanation:
                self.table.setCurrentIndex(self.model.index(at, _NAME))

    def _show(self, answer: Answer) -> None:
        self.answer = answer
        self.title.setText(answer.title)
        self.value.setText(answer.value)
        self.formula.setText(answer.formula[:1].upper() + answer.formula[1:])
        self.symbols.setText(answer.symbols)
        self.symbols.setVisible(bool(answer.symbols))
        self.notes.setText("\n".join(f"ℹ {note}" for note in answer.notes))
        self.notes.setVisible(bool(answer.notes))
        self.model.set_rows(())
        self.model.set_rows(answer.rows)
        self.table.setVisible(bool(answer.rows))
        self.room.setVisible(not answer.rows)
        self.table.resizeColumnToContents(_NAME)
        self.table.resizeColumnToContents(_VALUE)
        self.table.setColumnWidth(_NAME, min(self.table.columnWidth(_NAME), self.width() // 2))
        self.table.resizeRowsToContents()
        self.back.setEnabled(len(self._trail) > 1)
        self.deeper.setEnabled(False)
        if answer.rows:
            self.table.setCurrentIndex(self.model.index(0, _NAME))
        self.table.setAccessibleDescription(f"{answer.title}: {answer.value}. {answer.formula}")

    def _explanation_at(self, index: QModelIndex) -> Explanation | None:
        if not index.isValid():
            return None
        payload = self.model.rows[index.row()].payload
        return payload if isinstance(payload, Explanation) else None

    def _on_current(self, index: QModelIndex, _before: QModelIndex) -> None:
        self.deeper.setEnabled(self._explanation_at(index) is not None)

    def _on_activated(self, index: QModelIndex) -> None:
        found = self._explanation_at(index)
        if found is not None:
            self.go_into(found)

    def _on_deeper(self, _checked: bool) -> None:
        self._on_activated(self.table.currentIndex())


def _first_line(text: str) -> str:
    return text.partition("\n")[0]
