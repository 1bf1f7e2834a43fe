"""Runs what takes longer than a moment beside the window, and hands each part over in its own thread.

A job is a generator that gets values, yields parts, and looks at `stopped` between them. Must know nothing
of farms or words.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from queue import Empty, SimpleQueue
from threading import Event, Thread
from typing import Any, Final

from PySide6.QtCore import QObject, QTimer, Signal

_LOOK_EVERY_MS: Final = 50

Work = Callable[[Event], Iterator[Any]]
"""What is to be done: yields its parts, and ends soon after the event is set."""


class _Ended:
    """Put in the queue after the last part; `fault` is what broke the work off, None when nothing did."""

    def __init__(self, fault: Exception | None = None) -> None:
        self.fault = fault


class Job(QObject):
    """One working out: `told` gives each part, then `done` or, with the error, `failed` comes once.

    Errors that nobody listens to by `failed` are raised in the window's thread.
    """

    told = Signal(object)
    done = Signal()

    def __init__(
        self, work: Work, name: str, parent: QObject, failed: Callable[[Exception], None] | None = None
    ) -> None:
        super().__init__(parent)
        self._found: SimpleQueue[Any] = SimpleQueue()
        self._stopped = Event()
        self._failed = failed
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._look)
        self._timer.start(_LOOK_EVERY_MS)
        Thread(target=_run, args=(work, self._stopped, self._found), name=name, daemon=True).start()

    def stop(self) -> None:
        """Give up; nothing is told any more."""
        self._stopped.set()
        self._timer.stop()
        self.deleteLater()

    def _look(self) -> None:
        while not self._stopped.is_set():
            try:
                found = self._found.get_nowait()
            except Empty:
                return
            if isinstance(found, _Ended):
                self._end(found.fault)
                return
            self.told.emit(found)

    def _end(self, fault: Exception | None) -> None:
        self._timer.stop()
        self.done.emit()
        if fault is not None:
            if self._failed is None:
                raise fault
            self._failed(fault)


def _run(work: Work, stopped: Event, found: SimpleQueue[Any]) -> None:
    """Put each part in the queue, and at the end that it ended, and how."""
    try:
        for part in work(stopped):
            found.put(part)
    except Exception as fault:  # noqa: BLE001 - handed over to the window's own thread
        found.put(_Ended(fault))
    else:
        found.put(_Ended())
