"""Every act with its time, where one stands, and a way back or forth to any of them, step by step.

Must know nothing of how acts are kept.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any, Final

from PySide6.QtCore import QModelIndex, QSize, Qt, Signal
from PySide6.QtWidgets import QDialog, QVBoxLayout, QWidget

from planner.desk.conduct import Conduct
from planner.desk.fitting import open_sized
from planner.desk.flow import Flow
from planner.desk.help import close_box
from planner.desk.plan.kit import Table, Words, button
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import time_words

if TYPE_CHECKING:
    from planner.desk.past_moves import PastMoves
    from planner.desk.session import ActLine


_LINES: Final = 4
"""Room is kept for so many lines on an act, so that the list does not grow and shrink under the hand."""


def history_rows(lines: Sequence[ActLine]) -> tuple[Row, ...]:
    """Return acts as rows, newest first, and last of all the farm before the first of them."""
    here = next((at for at, line in enumerate(lines) if line.done), len(lines))
    rows = [_row(line, at, here) for at, line in enumerate(lines)]
    start = (tr("▶ you are here") if here == len(lines) else "", "", tr("Before all of these"), "")
    rows.append(Row(id=str(len(lines)), texts=start, sort=start, spoken=" ".join(filter(None, start))))
    return tuple(rows)


def _row(line: ActLine, at: int, here: int) -> Row:
    stands = tr("▶ you are here") if at == here else "" if line.done else tr("taken back")
    texts = (stands, time_words(line.at), line.title, line.who)
    return Row(id=str(at), texts=texts, sort=texts, spoken=", ".join(filter(None, texts)), payload=line)


def steps_to(lines: Sequence[ActLine], at: int) -> int:
    """Return how many acts to take back, or, below 0, to do again, so that the act at a row is the last.

    >>> steps_to((), 0)
    0
    """
    if at < len(lines) and not lines[at].done:
        return -sum(1 for line in lines[at:] if not line.done)
    return sum(1 for line in lines[:at] if line.done)


class HistoryDialog(QDialog):
    """The list, kept up to date while it is open."""

    list_wanted = Signal(str, tuple)

    def __init__(self, conduct: Conduct, theme: Theme, parent: QWidget, moved: PastMoves) -> None:
        """List the acts; `moved` tells what each of them moved, and why."""
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("History"))
        self._conduct, self._moved = conduct, moved
        columns = (
            Column(title=tr("Where one stands")),
            Column(title=tr("When")),
            Column(title=tr("What was done")),
            Column(title=tr("By whom")),
        )
        self.table = Table(columns, tr("Acts, newest first"), theme, self)
        self.table.setSortingEnabled(False)
        self.words = Words("", theme, self, ink="muted")
        self.words.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.words.setMinimumHeight(self.words.fontMetrics().lineSpacing() * _LINES)
        self.go = button(tr("Go to the chosen act"), self)
        self.back = button(tr("One step back"), self)
        self.forth = button(tr("One step forth"), self)
        self.moves = button(tr("What moved, and why"), self)
        foot = Flow(theme.metrics.gap)
        foot.add(self.go, self.back, self.forth, self.moves, close_box(self))
        column = QVBoxLayout(self)
        column.setContentsMargins(*(theme.metrics.margin,) * 4)
        column.setSpacing(theme.metrics.gap)
        column.addWidget(self.table, 1)
        column.addWidget(self.words)
        column.addLayout(foot)
        self.table.selectionModel().currentRowChanged.connect(self._on_row)
        self.table.activated.connect(self._on_go)
        self.go.clicked.connect(self._on_go)
        self.back.clicked.connect(self._on_back)
        self.forth.clicked.connect(self._on_forth)
        self.moves.clicked.connect(self._on_moves)
        moved.told.connect(self._tell)
        self.finished.connect(moved.give_up)
        conduct.changed.connect(self._on_changed)
        conduct.closed.connect(self.reject)
        self._show()
        open_sized(self, QSize(theme.metrics.side_width * 2, theme.metrics.row * 16))

    @property
    def lines(self) -> tuple[ActLine, ...]:
        """All acts, newest first."""
        session = self._conduct.session
        return () if session is None else tuple(session.history)

    def _on_changed(self, _notice: Any) -> None:
        self._show()

    def _show(self) -> None:
        lines = self.lines
        self.table.show_rows(history_rows(lines))
        here = next((at for at, line in enumerate(lines) if line.done), len(lines))
        self.table.choose(str(here))
        self.back.setEnabled(bool(self._conduct.undo_title))
        self.forth.setEnabled(bool(self._conduct.redo_title))
        self._tell()

    def _on_row(self, _now: QModelIndex, _before: QModelIndex) -> None:
        self._tell()

    def _steps(self) -> int:
        row = self.table.current()
        return 0 if row is None else steps_to(self.lines, int(row.id))

    def _tell(self) -> None:
        several = len({line.who for line in self.lines}) > 1
        steps = self._steps()
        self.go.setEnabled(steps != 0 and not several)
        if several:
            said = tr(
                "Several people have worked on this farm: each takes back only their own acts, by steps."
            )
        elif steps > 0:
            said = tr(
                "Takes {count} acts back; they can be done again until you do something new.", count=steps
            )
        elif steps < 0:
            said = tr("Does {count} acts again.", count=-steps)
        else:
            said = tr("Every act is saved when it is done, and can be taken back after closing, too.")
        self.words.say("\n".join(part for part in (self._moved_words(), said) if part))

    def _chosen(self) -> tuple[int, ActLine] | None:
        row, lines = self.table.current(), self.lines
        at = len(lines) if row is None else int(row.id)
        return (at, lines[at]) if at < len(lines) else None

    def _moved_words(self) -> str:
        """Return what the chosen act moved; empty where none is chosen."""
        chosen = self._chosen()
        self.moves.setEnabled(chosen is not None and bool(self._moved.moves_of(*chosen)))
        return "" if chosen is None else self._moved.words_for(*chosen)

    def _on_moves(self, _checked: bool) -> None:
        chosen = self._chosen()
        if chosen is not None:
            moves = self._moved.moves_of(*chosen)
            self.accept()
            self.list_wanted.emit(chosen[1].title, moves)

    def _on_go(self, *_anything: object) -> None:
        steps = self._steps() if self.go.isEnabled() else 0
        for _ in range(abs(steps)):
            before = self.lines
            if steps > 0:
                self._conduct.undo()
            else:
                self._conduct.redo()
            if self.lines == before:
                return

    def _on_back(self, _checked: bool) -> None:
        self._conduct.undo()

    def _on_forth(self, _checked: bool) -> None:
        self._conduct.redo()
