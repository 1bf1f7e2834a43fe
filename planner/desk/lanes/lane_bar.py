"""The narrow bar over each lane: its title, its switches, and the key to shades, hatches and letters.

Must know nothing of scenes beyond names of loops and elements.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QEvent, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QButtonGroup, QComboBox, QHBoxLayout, QSizePolicy, QToolButton, QWidget

from planner.desk.lanes import words
from planner.desk.lanes.kit import BAND_PATTERN, Face, Ink, Kit
from planner.desk.lanes.scene import BalanceScene, BandMark, FishMarkKind
from planner.farm.crops import Stage
from planner.farm.fields import Id
from planner.farm.species import ELEMENTS

_PAD: Final = 10.0
_SWATCH_EMS: Final = 1.3
_GAP: Final = 6.0
_BETWEEN: Final = 14.0
_HEIGHT: Final = 1.75
_ALL: Final = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class KeyEntry:
    """One look with its letter and what it means."""

    ink: Ink
    pattern: str
    letter: str
    name: str


def stage_key(kit: Kit) -> tuple[KeyEntry, ...]:
    """Return the key to the stages of a batch."""
    return tuple(
        KeyEntry(
            ink=kit.plain_stage_ink(stage),
            pattern=stage.value,
            letter=words.stage_letter(stage),
            name=words.stage_name(stage),
        )
        for stage in Stage
    )


def band_key(kit: Kit) -> tuple[KeyEntry, ...]:
    """Return the key to the bands of supply."""
    return tuple(
        KeyEntry(
            ink=kit.band_look(band).ink,
            pattern=BAND_PATTERN[band],
            letter=words.band_letter(band),
            name=words.band_name(band),
        )
        for band in BandMark
        if band in BAND_PATTERN
    )


def fish_key(kit: Kit) -> tuple[KeyEntry, ...]:
    """Return the key to the marks on fish groups."""
    theme = kit.theme
    plain = Ink(theme.field, theme.text, theme.text)
    dark = Ink(theme.text, theme.field, theme.field)
    return tuple(
        KeyEntry(
            ink=dark if kind is FishMarkKind.HARVEST else plain,
            pattern="",
            letter=words.mark_letter(kind),
            name=words.mark_name(kind),
        )
        for kind in FishMarkKind
    )


def paint_key(painter: QPainter, rect: QRectF, entries: Sequence[KeyEntry], kit: Kit) -> int:
    """Paint the key at the right of `rect`, as many entries as fit whole; return how many."""
    swatch = round(kit.small_px * _SWATCH_EMS)
    widths = [swatch + _GAP + kit.width(entry.name, Face.SMALL) + _BETWEEN for entry in entries]
    fitting = len(entries)
    while fitting and sum(widths[:fitting]) > rect.width():
        fitting -= 1
    x = rect.right() - sum(widths[:fitting])
    for entry, width in zip(entries[:fitting], widths, strict=False):
        height = kit.small_px + 2
        box = QRectF(round(x), round(rect.center().y() - height / 2), swatch, height)
        _paint_swatch(painter, box, entry, kit)
        painter.setPen(kit.theme.muted)
        name = QRectF(box.right() + _GAP, rect.y(), width - swatch - _GAP, rect.height())
        kit.write(painter, name, entry.name, face=Face.SMALL)
        x += width
    return fitting


def _paint_swatch(painter: QPainter, box: QRectF, entry: KeyEntry, kit: Kit) -> None:
    painter.fillRect(box, entry.ink.fill)
    if entry.pattern:
        painter.fillRect(box, kit.hatch(entry.pattern, entry.ink.hatch))
    painter.setPen(QPen(kit.theme.muted, 1))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(box.adjusted(0.5, 0.5, -0.5, -0.5))
    width = kit.width(entry.letter, Face.SMALL_BOLD)
    letter = QRectF(box.center().x() - width / 2, box.y(), width + 1, box.height())
    kit.plate(painter, letter.adjusted(2, 0, -2, 0), entry.ink.fill, width - 3, box.height() - 2)
    painter.setPen(entry.ink.text)
    kit.write(painter, letter, entry.letter, face=Face.SMALL_BOLD)


class LaneBar(QWidget):
    """Title and key of one lane."""

    def __init__(self, title: str, kit: Kit, parent: QWidget) -> None:
        super().__init__(parent)
        self._title = title
        self._kit = kit
        self._entries: tuple[KeyEntry, ...] = ()
        self.setAccessibleName(title)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)

    def set_key(self, kit: Kit, entries: tuple[KeyEntry, ...]) -> None:
        """Explain other looks, or the same in another theme."""
        self._kit, self._entries = kit, entries
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        return QSize(round(self._kit.names_px * 2), round(self._kit.text_px * _HEIGHT))

    def minimumSizeHint(self) -> QSize:
        return QSize(round(self._kit.names_px), self.sizeHint().height())

    def key_left(self) -> float:
        """Return where the key may begin."""
        return self._kit.names_px

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: ARG002
        painter = QPainter(self)
        painter.setFont(self.font())
        rect = QRectF(self.rect())
        theme = self._kit.theme
        painter.fillRect(rect, theme.ground)
        painter.setPen(theme.muted)
        title = QRectF(_PAD, 0, self._kit.names_px - 2 * _PAD, rect.height())
        self._kit.write(painter, title, self._title, face=Face.BOLD)
        paint_key(painter, rect.adjusted(self.key_left(), 0, 0, 0), self._entries, self._kit)
        painter.setPen(QPen(QColor(theme.line), 1))
        painter.drawLine(0, self.height() - 1, self.width(), self.height() - 1)
        painter.end()


class BalanceBar(LaneBar):
    """Title and key of the balance lane, with the choice of loop and element."""

    loop_chosen = Signal(str)
    element_chosen = Signal(str)

    def __init__(self, title: str, kit: Kit, parent: QWidget) -> None:
        super().__init__(title, kit, parent)
        self._loops = QComboBox(self)
        self._loops.setAccessibleName(words.loop_shown())
        self._loops.view().setAccessibleName(words.loop_shown())
        self._loops.setToolTip(words.loop_shown())
        self._buttons = QButtonGroup(self)
        row = QHBoxLayout(self)
        row.setContentsMargins(round(kit.names_px) + 4, 1, 0, 2)
        row.setSpacing(2)
        row.addWidget(self._loops)
        row.addSpacing(round(_GAP))
        self._add_button(_ALL, words.all_elements(), words.all_elements_hint(), row)
        for position, element in enumerate(ELEMENTS, start=1):
            self._add_button(position, words.element_symbol(element), words.element_full(element), row)
        row.addStretch(1)
        self._buttons.button(_ALL).setChecked(True)
        self._buttons.idClicked.connect(self._chosen)
        self._loops.currentIndexChanged.connect(self._loop_picked)

    def _add_button(self, number: int, text: str, hint: str, row: QHBoxLayout) -> None:
        button = QToolButton(self)
        button.setText(text)
        button.setToolTip(hint)
        button.setAccessibleName(hint)
        button.setCheckable(True)
        button.setAutoRaise(True)
        button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self._buttons.addButton(button, number)
        row.addWidget(button)

    def set_loops(self, balances: tuple[BalanceScene, ...], chosen: Id) -> None:
        """Offer other loops; the chooser is hidden where there is nothing to choose."""
        self._loops.blockSignals(True)
        self._loops.clear()
        for balance in balances:
            self._loops.addItem(balance.name, balance.loop)
        self._loops.blockSignals(False)
        self.choose_loop(chosen)
        self._loops.setVisible(len(balances) > 1)
        self.update()

    @property
    def loop_name(self) -> str:
        """Name of the loop that is shown as chosen."""
        return self._loops.currentText()

    def choose_loop(self, loop: Id) -> None:
        """Show the choice of a loop, without saying so back."""
        position = max(self._loops.findData(loop), 0)
        if position != self._loops.currentIndex():
            self._loops.blockSignals(True)
            self._loops.setCurrentIndex(position)
            self._loops.blockSignals(False)

    def choose_element(self, element: str) -> None:
        """Show the choice of an element; an empty word stands for all."""
        number = ELEMENTS.index(element) + 1 if element in ELEMENTS else _ALL
        self._buttons.button(number).setChecked(True)

    def key_left(self) -> float:
        last = self._buttons.button(len(ELEMENTS))
        return float(last.geometry().right() + _BETWEEN)

    def _chosen(self, number: int) -> None:
        self.element_chosen.emit("" if number == _ALL else ELEMENTS[number - 1])

    def _loop_picked(self, position: int) -> None:
        self.loop_chosen.emit(str(self._loops.itemData(position) or ""))

    def changeEvent(self, event: QEvent) -> None:
        """Measure again when the typeface changes."""
        super().changeEvent(event)
        if event.type() is QEvent.Type.FontChange:
            self.updateGeometry()
