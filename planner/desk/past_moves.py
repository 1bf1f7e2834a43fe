"""What the acts of the past moved, and why: worked out anew from the journal, in whatever sitting they were.

Each act is worked out beside the window when it is first asked for, and kept while the farm is open. Must
know nothing of how acts are kept.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from functools import partial
from threading import Event

from PySide6.QtCore import QObject, Signal

from planner.catalogue.catalogue import Catalogue
from planner.desk.conduct import Conduct
from planner.desk.jobs import Job
from planner.desk.moves import Move, moves_between, named_words
from planner.desk.say import tr
from planner.desk.session import ActLine, Trail
from planner.farm.faults import FarmFaultError
from planner.forecast.engine import Forecaster


@dataclass(frozen=True, slots=True, kw_only=True)
class Found:
    """What an act moved, furthest first; None when that cannot be told any more."""

    moves: tuple[Move, ...] | None


class PastMoves(QObject):
    """What each act moved, by the act; `told` says that one more is known."""

    told = Signal()

    def __init__(self, conduct: Conduct, book: Catalogue, parent: QObject) -> None:
        super().__init__(parent)
        self._conduct, self._book = conduct, book
        self._found: dict[tuple[str, datetime], Found] = {}
        self._job: Job | None = None
        self._asked: tuple[str, datetime] | None = None

    def moves_of(self, at: int, line: ActLine) -> tuple[Move, ...]:
        """Return what an act moved as far as it is known; it is worked out when it is not."""
        found = self._found.get(_key(line))
        if found is None:
            self._ask(at, line)
        return () if found is None or found.moves is None else found.moves

    def words_for(self, at: int, line: ActLine) -> str:
        """Return in words what an act moved, the act being at a place in the history."""
        found = self._found.get(_key(line))
        if found is None:
            self._ask(at, line)
            return tr("Working out what it moved…")
        if found.moves is None:
            return tr("What it moved can no longer be told.")
        return named_words(found.moves) if found.moves else tr("It moved no dates.")

    def give_up(self) -> None:
        """Give up what is being worked out."""
        job, self._job, self._asked = self._job, None, None
        if job is not None:
            job.stop()

    def _ask(self, at: int, line: ActLine) -> None:
        session = self._conduct.session
        if session is None or self._asked == _key(line):
            return
        self.give_up()
        troubles: tuple[type[Exception], ...] = (LookupError, *self._conduct.troubles)
        try:
            trail = session.trail(at)
        except troubles:
            self._found[_key(line)] = Found(moves=None)
            return
        self._asked = _key(line)
        self._job = Job(partial(_work, trail, self._book), "moves", self)
        self._job.told.connect(self._on_told)
        self._job.done.connect(self._on_done)

    def _on_told(self, found: Found) -> None:
        if self._asked is not None:
            self._found[self._asked] = found

    def _on_done(self) -> None:
        job, self._job, self._asked = self._job, None, None
        if job is not None:
            job.deleteLater()
        self.told.emit()


def _key(line: ActLine) -> tuple[str, datetime]:
    return line.title, line.at


def _work(trail: Trail, book: Catalogue, stopped: Event) -> Iterator[Found]:
    """Yield what the act at the end of a trail moved."""
    past = trail.walk()
    if past is None:
        yield Found(moves=None)
        return
    forecaster = Forecaster(book)
    try:
        before = forecaster.days(past.before)
        if not stopped.is_set():
            after = forecaster.days(past.after)
            yield Found(moves=moves_between(before, after, past.after, past.change_set))
    except (KeyError, FarmFaultError):  # it named what the catalogue of today does not have
        yield Found(moves=None)
