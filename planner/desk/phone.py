"""Writes a phone's calendar from the window, and puts the week's message into the clipboard.

Going on from the file that is there, so that a phone updates and never doubles. Read in when it is asked for.
Must know nothing of the calendar's format.
"""

from __future__ import annotations

from datetime import date, time
from pathlib import Path
from typing import Final

from PySide6.QtCore import Qt, QTime, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QFormLayout,
    QLabel,
    QPushButton,
    QSpinBox,
    QTimeEdit,
    QVBoxLayout,
    QWidget,
)

from planner.desk.outlook import Outlook
from planner.desk.say import tr
from planner.desk.services import WorkspaceNeeds
from planner.farm.farm import DAYS_PER_WEEK
from planner.paper.ical import CalendarError, CalendarHead, Made, Reminder, calendar_text
from planner.paper.ical_events import Role, calendar_events

_MOST_DAYS_BEFORE: Final = 30
_MORNING: Final = QTime(7, 0)
_SUFFIX: Final = ".ics"
_ROLES: Final = (
    (Role.ALL, "everything"),
    (Role.GROWER, "the grower: sow, space out, move, pick, clear"),
    (Role.CARETAKER, "the caretaker: feed, dose, test, siphon, pick"),
    (Role.OWNER, "the owner: pick, stock and harvest fish"),
)
_SAYS: Final = (
    "Write over the file you gave the phone last time: what moved is then moved in the phone, too, and what "
    "is gone is taken off. Every entry is for a whole day; feed is the most to give."
)


class PhoneDialog(QDialog):
    """For whom, and when the phone rings; then where the file goes."""

    told = Signal(str)

    def __init__(self, outlook: Outlook, needs: WorkspaceNeeds, day: date, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Calendar for a phone"))
        self._outlook, self._needs, self._day = outlook, needs, day
        self.role = QComboBox(self)
        for role, words in _ROLES:
            self.role.addItem(tr(words), role)
        self.rings = QCheckBox(tr("The phone &rings"), self)
        self.rings.setChecked(True)
        self.at = QTimeEdit(_MORNING, self)
        self.at.setDisplayFormat("HH:mm")
        self.before = QSpinBox(self)
        self.before.setRange(0, _MOST_DAYS_BEFORE)
        self.said = QLabel(tr(_SAYS), self)
        self.said.setWordWrap(True)
        self._lay_out()
        self.rings.toggled.connect(self.at.setEnabled)
        self.rings.toggled.connect(self.before.setEnabled)

    def _lay_out(self) -> None:
        form = QFormLayout()
        form.addRow(tr("&Whose work"), self.role)
        form.addRow(self.rings)
        form.addRow(tr("&At"), self.at)
        form.addRow(tr("&Days before"), self.before)
        names = (
            (self.role, tr("&Whose work")),
            (self.at, tr("&At")),
            (self.before, tr("&Days before")),
            (self.rings, self.rings.text()),
        )
        for widget, name in names:
            widget.setAccessibleName(name.replace("&", ""))
        self.save = QPushButton(tr("&Save…"), self)
        self.save.setDefault(True)
        buttons = QDialogButtonBox(self)
        buttons.addButton(self.save, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.addButton(QPushButton(tr("Cancel"), buttons), QDialogButtonBox.ButtonRole.RejectRole)
        self.save.clicked.connect(self._on_save)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        metrics = self._needs.theme.metrics
        column.setContentsMargins(*(metrics.wide,) * 4)
        column.setSpacing(metrics.margin)
        column.addLayout(form)
        column.addWidget(self.said)
        column.addWidget(buttons)
        self.setMinimumWidth(metrics.side_width + metrics.field_width)

    def _on_save(self) -> None:
        kinds = tr("Calendar (*.ics)")
        dialog = QFileDialog(self, tr("Calendar for a phone"), str(self._needs.home), kinds)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setOption(QFileDialog.Option.DontConfirmOverwrite)
        dialog.setDefaultSuffix(_SUFFIX.removeprefix("."))
        dialog.selectFile(f"{self.role.currentData().value}{_SUFFIX}")
        dialog.fileSelected.connect(self.write)
        dialog.open()

    def write(self, name: str) -> None:
        """Write the calendar, going on from what is there; another file is left as it is."""
        path = Path(name)
        try:
            made = self._made(path.read_bytes() if path.exists() else None)
            beside = path.with_name(f".{path.name}.part")
            beside.write_bytes(made.text)
            beside.replace(path)
        except CalendarError as error:
            why = tr("⚠ {name}: {why} Choose another name.", name=path.name, why=error)
            self.said.setText(why)
            return
        except OSError as error:
            self.said.setText(tr("⚠ {why} Choose another folder.", why=error.strerror or str(error)))
            return
        self.told.emit(
            tr(
                "{name}: {events} entries, {new} new, {changed} changed, {gone} cancelled.",
                name=path.name,
                events=made.events,
                new=made.new,
                changed=made.changed,
                gone=made.cancelled,
            )
        )
        self.accept()

    def _made(self, earlier: bytes | None) -> Made:
        outlook, ruler = self._outlook, self._outlook.forecast.ruler
        first = outlook.week_of(self._day) * DAYS_PER_WEEK
        last = ruler.weeks * DAYS_PER_WEEK
        role: Role = self.role.currentData()
        events = calendar_events(
            outlook.farm, outlook.forecast, outlook.catalogue, first_day=first, last_day=last, role=role
        )
        head = CalendarHead(
            farm=outlook.farm.settings.name,
            farm_id=str(outlook.farm.settings.id),
            role=role,
            first_on=ruler.date_of(first),
            behind_on=ruler.date_of(last),
            made_at=self._needs.now().astimezone(),
            reminder=self._reminder(),
        )
        return calendar_text(events, head, earlier=earlier)

    def _reminder(self) -> Reminder | None:
        if not self.rings.isChecked():
            return None
        at = self.at.time()
        return Reminder(at=time(at.hour(), at.minute()), days_before=self.before.value())
