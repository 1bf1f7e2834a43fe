"""What the tests of the desk share: an open farm in memory, services that record, and a window on them."""

from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import QEvent, QSettings, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QApplication, QCalendarWidget, QComboBox, QLineEdit, QWidget

from planner.actions.memory import MemoryKeeper
from planner.actions.session import Session
from planner.bootstrap import Means
from planner.bootstrap_backups import backup_lines
from planner.bootstrap_checks import check_steps
from planner.desk.given import DeskServices
from planner.desk.messages import Question
from planner.desk.services import Rooms
from planner.desk.workspace import Workspace
from planner.shipped import shipped_path
from planner.store.errors import StoreError

NOW = datetime(2027, 3, 10, 9, 0, tzinfo=UTC)
TODAY = NOW.date()


def open_session(means, farm, *, unchecked=False):
    return Session(
        MemoryKeeper(farm),
        means.catalogue,
        holds_of=_no_holds if unchecked else means.holds,
        faults_of=means.faults,
        now=lambda: NOW,
    )


def _no_holds(farm):
    return ()


def sample_farm(means):
    return means.read(shipped_path("sample_data", "backyard.toml")).farm


@dataclass
class Answering:
    """Answers every question the same way and remembers them."""

    go_on: bool = True
    asked: list[Question] = field(default_factory=list)

    def __call__(self, question, answered, parent):
        self.asked.append(question)
        answered(self.go_on)


@dataclass
class FakeRooms:
    """Rooms on farms in memory; every call is kept in `calls`."""

    means: Means
    farm: object
    calls: list = field(default_factory=list)
    trouble: Exception | None = None
    loads: int = 0
    unchecked: bool = False

    def load(self):
        self.loads += 1
        return Rooms(
            open_farm=self.open_farm,
            new_farm=self.new_farm,
            first_farm=self.first_farm,
            save_copy=self.save_copy,
            export_text=self.export_text,
            close=self.close,
            where=self.where,
            troubles=(StoreError,),
            make_workspace=self.make_workspace,
            check=self.check,
            backups=self.backups,
            put_back=self.put_back,
        )

    def _called(self, name, *about):
        self.calls.append((name, *about))
        if self.trouble is not None:
            raise self.trouble

    def open_farm(self, path):
        self._called("open", path)
        return open_session(self.means, self.farm, unchecked=self.unchecked)

    def new_farm(self, path, answers):
        self._called("new", path, answers)
        return open_session(self.means, self.farm)

    def first_farm(self):
        self.calls.append(("first",))
        return open_session(self.means, self.farm)

    def save_copy(self, session, path):
        self._called("copy", path)

    def export_text(self, session, path):
        self._called("text", path)

    def close(self, session):
        self.calls.append(("close",))

    def where(self, session):
        return session.path

    def make_workspace(self, needs):
        return Workspace(needs, forecaster=self.means.forecaster)

    def backups(self, path):
        return backup_lines(path)

    def put_back(self, backup, path):
        self._called("put back", backup, path)

    def check(self):
        return check_steps(self.means)


def services(rooms, folder, ask):
    settings = QSettings(str(Path(folder) / "desk.ini"), QSettings.Format.IniFormat)
    settings.setValue("look/shade", "light")
    return DeskServices(
        load=rooms.load, settings=settings, now=lambda: NOW, ask=ask, home=Path(folder), version="0.0"
    )


def put_away(widget):
    """Close a window and let Qt free it with everything it opened."""
    widget.close()
    widget.deleteLater()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def nameless_controls(owner):
    """Return every control below a widget that takes the keyboard and has no spoken name.

    Parts that Qt makes inside lines, lists that drop down and calendars speak for their owner.
    """
    return [
        f"{type(widget).__name__} {widget.objectName()} in {type(widget.parent()).__name__}"
        for widget in owner.findChildren(QWidget)
        if widget.focusPolicy() is not Qt.FocusPolicy.NoFocus
        and not _is_inner_part(widget)
        and not QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name).strip()
    ]


def _is_inner_part(widget):
    above = widget.parent()
    while above is not None:
        if isinstance(above, QLineEdit | QComboBox | QCalendarWidget):
            return True
        above = above.parent()
    return widget.objectName().startswith("qt_")
