"""Where a batch or a seed lot is named whose way is to be followed, on one page.

Must know nothing of what the page says.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Final

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLabel, QVBoxLayout, QWidget

from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.wish_form import WishForm

_SAYS: Final = (
    "One step back to the seed lot, one step forward to places, harvest and readings. A lot leads to every "
    "batch sown of it: the page for a recall."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class TraceWish:
    """A batch or lot by its code, on a paper by its name."""

    code: str
    paper: str

    @property
    def document(self) -> str:
        """What a file of it is called."""
        return "trace"


class TraceForm(WishForm):
    """The codes of all batches and lots in one list that can be typed into, and the paper."""

    def __init__(
        self,
        codes: tuple[tuple[str, str], ...],
        papers: tuple[str, ...],
        wish: TraceWish,
        theme: Theme,
        parent: QWidget | None = None,
    ) -> None:
        """Show codes with the words beside them, and a wish to begin with."""
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(theme.metrics.tight)
        says = QLabel(tr(_SAYS), self)
        says.setWordWrap(True)
        column.addWidget(says)
        self.code = self._combo(column, tr("&Batch or seed lot"))
        self.code.setEditable(True)
        self.code.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        for code, words in codes:
            self.code.addItem(f"{code}  {words}", code)
        completer = self.code.completer()
        assert completer is not None
        completer.setFilterMode(Qt.MatchFlag.MatchContains)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self.code.setCurrentIndex(max(self.code.findData(wish.code), 0))
        self.paper = self._combo(column, tr("&Paper"))
        self.paper.addItems(list(papers))
        self.paper.setCurrentText(wish.paper)
        column.addStretch(1)
        line = self.code.lineEdit()
        assert line is not None
        line.setAccessibleName(self.code.accessibleName())
        line.setCursorPosition(0)
        line.editingFinished.connect(self._tell)
        self.code.activated.connect(self._tell)
        self.paper.activated.connect(self._tell)

    def _combo(self, column: QVBoxLayout, words: str) -> QComboBox:
        combo = QComboBox(self)
        combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        combo.setAccessibleName(words.replace("&", ""))
        label = QLabel(words, self)
        label.setBuddy(combo)
        column.addWidget(label)
        column.addWidget(combo)
        return combo

    def _tell(self, *_anything: Any) -> None:
        self.changed.emit()

    def wish(self) -> TraceWish:
        """Return the code that is chosen from the list, else the one that was typed."""
        text = self.code.currentText()
        at = self.code.findText(text)
        return TraceWish(
            code=self.code.itemData(at) if at >= 0 else text.strip(), paper=self.paper.currentText()
        )
