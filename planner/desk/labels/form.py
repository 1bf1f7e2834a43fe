"""Where labels are wished for: which ones, of which batches, on what sheet, and how the printer is set right.

Must know nothing of how labels are drawn.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any, Final

from PySide6.QtCore import QDate
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QCheckBox,
    QComboBox,
    QDateEdit,
    QDoubleSpinBox,
    QGridLayout,
    QLabel,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from planner.desk.forms.editors import StillWheel
from planner.desk.labels.wish import LabelWish
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.wish_form import WishForm
from planner.paper.labels import LabelKind
from planner.paper.labels_grid import (
    LEAST_LABEL_MM,
    MOST_ACROSS,
    MOST_LABEL_MM,
    MOST_MARGIN_MM,
    MOST_SHIFT_MM,
    LabelGrid,
)

_CALIBRATION: Final = "calibration"
_STEP_MM: Final = 0.5
_LENGTHS: Final = (
    ("width", "&Width of a label", LEAST_LABEL_MM, MOST_LABEL_MM),
    ("height", "H&eight of a label", LEAST_LABEL_MM, MOST_LABEL_MM),
    ("left", "Edge to the first label, le&ft", 0.0, MOST_MARGIN_MM),
    ("top", "Edge to the first label, t&op", 0.0, MOST_MARGIN_MM),
    ("gap_x", "Gap between col&umns", 0.0, MOST_MARGIN_MM),
    ("gap_y", "Gap between rows, &down", 0.0, MOST_MARGIN_MM),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelFormNeeds:
    """What the form begins with.

    `grids` are the sheets that were used last by kind, `plain` those of plain paper; `codes` the chosen
    batches.
    """

    papers: tuple[str, ...]
    paper: str
    kind: LabelKind
    from_on: date
    weeks: int
    most_weeks: int
    codes: tuple[str, ...]
    grids: dict[LabelKind, LabelGrid | None]
    plain: dict[LabelKind, LabelGrid]
    shift_mm: tuple[float, float]


class LabelForm(WishForm):
    """The wishes, from what is printed down to the last half millimetre."""

    def __init__(self, needs: LabelFormNeeds, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._needs, self._theme = needs, theme
        self._wheel = StillWheel(self)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(theme.metrics.tight)
        self._fill_what()
        self._fill_sheet()
        self._fill_printer()
        self._column.addStretch(1)
        self._show_grid()
        self._connect()

    # What is printed.

    def _fill_what(self) -> None:
        kinds = [
            (LabelKind.TRAY, tr("Tray and pot labels")),
            (LabelKind.RAFT, tr("Raft tags")),
            (_CALIBRATION, tr("Calibration page, to set the printer right")),
        ]
        self.what = self._combo(tr("P&rint"), kinds)
        self.what.setCurrentIndex(0 if self._needs.kind is LabelKind.TRAY else 1)
        names = ", ".join(self._needs.codes)
        several = tr("{n} chosen batches", n=len(self._needs.codes))
        chosen = names if len(self._needs.codes) == 1 else several
        batches = [("weeks", tr("all batches of the weeks below"))]
        self.batches = self._combo(
            tr("&Batches"), [("codes", chosen), *batches] if self._needs.codes else batches
        )
        self.batches.setToolTip(names)
        self.from_on = QDateEdit(QDate(*self._needs.from_on.timetuple()[:3]), self)
        self.from_on.setCalendarPopup(True)
        self.from_on.setDisplayFormat("ddd d MMM yyyy")
        self.weeks = self._whole(1, self._needs.most_weeks, self._needs.weeks)
        grid = QGridLayout()
        self._pair(grid, 0, tr("Fr&om the week of"), self.from_on)
        self._pair(grid, 1, tr("Wee&ks"), self.weeks)
        self._column.addLayout(grid)

    # The sheet.

    def _fill_sheet(self) -> None:
        self.paper = self._combo(tr("&Paper"), [(name, name) for name in self._needs.papers])
        self.paper.setCurrentText(self._needs.paper)
        sheets = [("plain", tr("plain paper, to be cut")), ("grid", tr("a sheet of labels"))]
        self.sheet = self._combo(tr("&Sheet"), sheets)
        self.columns, self.rows = self._whole(1, MOST_ACROSS, 3), self._whole(1, MOST_ACROSS, 8)
        self.start = self._whole(1, MOST_ACROSS * MOST_ACROSS, 1)
        self.lengths = {key: self._length(low, high) for key, _, low, high in _LENGTHS}
        self._grid_part = QWidget(self)
        inside = QGridLayout(self._grid_part)
        inside.setContentsMargins(0, 0, 0, 0)
        self._pair(inside, 0, tr("Labels &across"), self.columns)
        self._pair(inside, 1, tr("Labels dow&n"), self.rows)
        for row, (key, words, _, _) in enumerate(_LENGTHS, start=2):
            self._pair(inside, row, tr(words), self.lengths[key])
        self._column.addWidget(self._grid_part)
        below = QGridLayout()
        self._pair(below, 0, tr("F&irst label that is still there"), self.start)
        self._column.addLayout(below)

    # The printer, and the look.

    def _fill_printer(self) -> None:
        self.right = self._length(-MOST_SHIFT_MM, MOST_SHIFT_MM)
        self.down = self._length(-MOST_SHIFT_MM, MOST_SHIFT_MM)
        self.right.setValue(self._needs.shift_mm[0])
        self.down.setValue(self._needs.shift_mm[1])
        grid = QGridLayout()
        self._pair(grid, 0, tr("&Move all to the right"), self.right)
        self._pair(grid, 1, tr("Mo&ve all down"), self.down)
        self._column.addLayout(grid)
        self.coded = self._box(tr("S&quare code of the batch"), on=True)
        self.outlined = self._box(tr("Ed&ges of the labels"), on=True)
        self.backs = self._box(tr("Backs with the cau&tion"), on=False)

    # Small parts.

    def _combo(self, words: str, choices: Sequence[tuple[Any, str]]) -> QComboBox:
        combo = QComboBox(self)
        combo.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        for key, text in choices:
            combo.addItem(text, key)
        self._named(combo, words)
        self._column.addWidget(self._label(words, combo))
        self._column.addWidget(combo)
        return combo

    def _whole(self, low: int, high: int, value: int) -> QSpinBox:
        box = QSpinBox(self)
        box.setRange(low, high)
        box.setValue(value)
        return box

    def _length(self, low: float, high: float) -> QDoubleSpinBox:
        box = QDoubleSpinBox(self)
        box.setRange(low, high)
        box.setDecimals(1)
        box.setSingleStep(_STEP_MM)
        box.setSuffix(" mm")
        return box

    def _box(self, words: str, *, on: bool) -> QCheckBox:
        box = QCheckBox(words, self)
        box.setChecked(on)
        box.setAccessibleName(words.replace("&", ""))
        self._column.addWidget(box)
        return box

    def _pair(self, grid: QGridLayout, row: int, words: str, widget: QAbstractSpinBox) -> None:
        label = self._label(words, widget)
        label.setWordWrap(True)
        self._named(widget, words)
        widget.setMinimumWidth(self._theme.metrics.field_width * 3 // 5)
        grid.addWidget(label, row, 0)
        grid.addWidget(widget, row, 1)
        grid.setColumnStretch(0, 1)

    def _label(self, words: str, widget: QWidget) -> QLabel:
        label = QLabel(words, self)
        label.setBuddy(widget)
        return label

    def _named(self, widget: QWidget, words: str) -> None:
        widget.setAccessibleName(words.replace("&", ""))
        widget.installEventFilter(self._wheel)

    # What happens.

    def _connect(self) -> None:
        self.what.activated.connect(self._on_what)
        self.sheet.activated.connect(self._on_sheet)
        for combo in (self.batches, self.paper):
            combo.activated.connect(self._tell)
        self.from_on.dateChanged.connect(self._tell)
        for whole in (self.weeks, self.columns, self.rows, self.start):
            whole.valueChanged.connect(self._tell)
        for length in (*self.lengths.values(), self.right, self.down):
            length.valueChanged.connect(self._tell)
        for tick in (self.coded, self.outlined, self.backs):
            tick.toggled.connect(self._tell)

    def _kind(self) -> LabelKind:
        chosen = self.what.currentData()
        return chosen if isinstance(chosen, LabelKind) else self._needs.kind

    def _on_what(self, _at: int) -> None:
        self._show_grid()
        self._tell()

    def _on_sheet(self, _at: int) -> None:
        self.outlined.setChecked(self.sheet.currentData() == "plain")
        self._dim()
        self._tell()

    def _show_grid(self) -> None:
        """Show the sheet used last for this kind of label; plain paper where none was used."""
        kind = self._kind()
        known = self._needs.grids[kind]
        grid = known or self._needs.plain[kind]
        values = (grid.width_mm, grid.height_mm, grid.left_mm, grid.top_mm, grid.gap_x_mm, grid.gap_y_mm)
        self._quietly([(self.columns, grid.columns), (self.rows, grid.rows)])
        self._quietly(zip(self.lengths.values(), values, strict=True))
        self.sheet.setCurrentIndex(0 if known is None else 1)
        self._quietly_check(on=known is None)
        self._dim()

    def _quietly(self, pairs: Any) -> None:
        for box, value in pairs:
            box.blockSignals(True)
            box.setValue(value)
            box.blockSignals(False)

    def _quietly_check(self, *, on: bool) -> None:
        self.outlined.blockSignals(True)
        self.outlined.setChecked(on)
        self.outlined.blockSignals(False)

    def _dim(self) -> None:
        """Hide and dim what has no use at present."""
        calibration = self.what.currentData() == _CALIBRATION
        self._grid_part.setVisible(self.sheet.currentData() == "grid")
        by_weeks = self.batches.currentData() == "weeks"
        self.from_on.setEnabled(by_weeks and not calibration)
        self.weeks.setEnabled(by_weeks and not calibration)
        for widget in (self.batches, self.start, self.coded, self.outlined, self.backs):
            widget.setEnabled(not calibration)

    def _tell(self, *_anything: Any) -> None:
        self._dim()
        self.changed.emit()

    def wish(self) -> LabelWish:
        """Return what is wished; every field keeps to its limits by itself."""
        by_codes = self.batches.currentData() == "codes"
        on = self.from_on.date()
        return LabelWish(
            kind=self._kind(),
            paper=self.paper.currentText(),
            from_on=date(on.year(), on.month(), on.day()),
            weeks=self.weeks.value(),
            codes=self._needs.codes if by_codes else (),
            grid=self._grid() if self.sheet.currentData() == "grid" else None,
            start=self.start.value(),
            shift_mm=(self.right.value(), self.down.value()),
            coded=self.coded.isChecked(),
            outlined=self.outlined.isChecked(),
            backs=self.backs.isChecked(),
            calibration=self.what.currentData() == _CALIBRATION,
        )

    def _grid(self) -> LabelGrid:
        width, height, left, top, gap_x, gap_y = (box.value() for box in self.lengths.values())
        return LabelGrid(
            columns=self.columns.value(),
            rows=self.rows.value(),
            width_mm=width,
            height_mm=height,
            left_mm=left,
            top_mm=top,
            gap_x_mm=gap_x,
            gap_y_mm=gap_y,
        )
