"""Keeps the open farm, passes acts to it, and tells whoever asked what came of them.

Stands between the widgets and the session, so that trouble is caught in one place. Must know nothing of
any widget.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal

from planner.desk.say import tr
from planner.desk.session import Session
from planner.farm.faults import FarmFaultError, Fault

if TYPE_CHECKING:
    from planner.farm.changes import ChangeSet


def _sentences(faults: tuple[Fault, ...]) -> str:
    return "\n".join(fault.sentence() for fault in faults)


class Conduct(QObject):
    """One open farm at a time, with its undo and redo."""

    opened = Signal(object)
    changed = Signal(object)
    acted = Signal(str)
    troubled = Signal(str)
    closed = Signal()
    clashed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session: Session | None = None
        self._troubles: tuple[type[Exception], ...] = ()
        self._faults: tuple[Fault, ...] = ()
        self.said: Callable[[tuple[Fault, ...]], str] = _sentences

    @property
    def session(self) -> Session | None:
        """The open farm, None while none is open."""
        return self._session

    @property
    def troubles(self) -> tuple[type[Exception], ...]:
        """The errors of the surroundings that are to be expected; their text may be shown as it is."""
        return self._troubles

    @property
    def faults(self) -> tuple[Fault, ...]:
        """Why the last act was refused; empty when it was taken."""
        return self._faults

    @property
    def undo_title(self) -> str:
        """Title of the act that undo takes back; empty when there is none."""
        return (self._session.undo_title or "") if self._session else ""

    @property
    def redo_title(self) -> str:
        """Title of the act that redo does again; empty when there is none."""
        return (self._session.redo_title or "") if self._session else ""

    def expect(self, troubles: tuple[type[Exception], ...], said: Callable[[tuple[Fault, ...]], str]) -> None:
        """Name the errors of the surroundings whose text may be shown as it is, and what words faults."""
        self._troubles = troubles
        self.said = said

    def take(self, session: Session) -> None:
        """Make a farm the open one."""
        self.let_go()
        self._session = session
        session.subscribe(self._on_notice)
        self.opened.emit(session)

    def let_go(self) -> Session | None:
        """Forget the open farm, and return it so that it can be closed."""
        session, self._session = self._session, None
        if session is not None:
            session.unsubscribe(self._on_notice)
            self.closed.emit()
        return session

    def act(self, change_set: ChangeSet, *, quietly: bool = False) -> bool:
        """Do one act; returns whether it was taken. Refusals are said aloud unless `quietly`."""
        if self._session is None:
            return False
        from planner.desk.act_words import act_words

        self._faults = ()
        change_set = dataclasses.replace(change_set, title=act_words(change_set.title))
        try:
            self._session.act(change_set)
        except FarmFaultError as refused:
            self._refuse(refused, quietly=quietly)
            return False
        except self._troubles as trouble:
            self.troubled.emit(str(trouble))
            return False
        self.acted.emit(change_set.title)
        return True

    def _refuse(self, refused: FarmFaultError, *, quietly: bool) -> None:
        self._faults = refused.faults
        if quietly:
            return
        from planner.farm.merging import ClashError

        if isinstance(refused, ClashError):
            self.clashed.emit(refused)
        else:
            self.troubled.emit(self.said(refused.faults))

    def undo(self) -> None:
        """Take the last act back."""
        self._again(tr("Taken back: {title}", title=self.undo_title), redo=False)

    def redo(self) -> None:
        """Do the act taken back last again."""
        self._again(tr("Done again: {title}", title=self.redo_title), redo=True)

    def _again(self, said: str, *, redo: bool) -> None:
        if self._session is None:
            return
        try:
            notice = self._session.redo() if redo else self._session.undo()
        except FarmFaultError as refused:
            self._refuse(refused, quietly=False)
        except self._troubles as trouble:
            self.troubled.emit(str(trouble))
        else:
            if notice is not None:
                self.acted.emit(said)

    def _on_notice(self, notice: Any) -> None:
        self.changed.emit(notice)
