"""The three doors a grower may begin by: the sample farm, a new one, or one that is kept already."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QPushButton, QWidget

from planner.desk.plan.kit import Card, Words, button, column, heading
from planner.desk.say import tr
from planner.desk.theme import Theme


class DoorsDialog(QDialog):
    """Three cards with a button each; exactly one signal tells which was chosen."""

    sample_wanted = Signal()
    new_wanted = Signal()
    open_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Begin"))
        lines = column(self, theme, margin=theme.metrics.wide)
        lines.addWidget(heading(tr("Where would you like to begin?"), theme, self, large=True))
        row = QHBoxLayout()
        row.setSpacing(theme.metrics.margin)
        self.new = self._door(
            row,
            theme,
            (tr("Your own farm"), tr("Begin a new one…")),
            tr("Tank, fish, beds and what you want each week. A first plan is drafted from it at once."),
        )
        self.sample = self._door(
            row,
            theme,
            (tr("The sample farm"), tr("Look around")),
            tr("An invented school kitchen in its first year. It is a copy: change what you like."),
        )
        self.kept = self._door(
            row,
            theme,
            (tr("A farm kept already"), tr("Open it…")),
            tr("A farm file or a farm as text, from this computer or from a stick."),
        )
        lines.addLayout(row)
        self.new.setDefault(True)
        for door, act in (
            (self.new, self._on_new),
            (self.sample, self._on_sample),
            (self.kept, self._on_open),
        ):
            door.clicked.connect(act)

    def _door(self, row: QHBoxLayout, theme: Theme, words: tuple[str, str], about: str) -> QPushButton:
        card = Card(theme, self)
        card.setMinimumWidth(theme.metrics.field_width)
        card.lines.addWidget(heading(words[0], theme, card))
        card.lines.addWidget(Words(about, theme, card, ink="muted"), 1)
        found = button(words[1], card)
        found.setAccessibleDescription(about)
        card.lines.addWidget(found)
        row.addWidget(card, 1)
        return found

    def _on_new(self, _checked: bool) -> None:
        self.accept()
        self.new_wanted.emit()

    def _on_sample(self, _checked: bool) -> None:
        self.accept()
        self.sample_wanted.emit()

    def _on_open(self, _checked: bool) -> None:
        self.accept()
        self.open_wanted.emit()
