"""Runs what takes longer than a moment beside the window, and hands each part over in its own thread.

A job is a generator that gets values, yields parts, and looks at `stopped` between them. Must know nothing
of farms or words.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Generator, Iterator
from functools import partial
from queue import Empty, SimpleQueue
from threading import Event, Thread
from typing import Any, Final

from PySide6.QtCore import QObject, QTimer, Signal

_LOOK_EVERY_MS: Final = 50
_MS_PER_S: Final = 1000
_SLICE_S: Final = 0.03
"""So long the window waits for a slice of work that has to be done in its own thread."""

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
        self._thread = Thread(target=_run, args=(work, self._stopped, self._found), name=name, daemon=True)
        self._thread.start()

    def stop(self) -> None:
        """Give up; nothing is told any more."""
        self._stopped.set()
        self._timer.stop()
        self.deleteLater()

    def settle(self, most_ms: int) -> None:
        """Wait a moment: what is done within it is told before this returns."""
        self._thread.join(most_ms / _MS_PER_S)
        if not self._thread.is_alive():
            self._look()

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


class Slices(QObject):
    """Work that must be done in the window's own thread, a slice at a time, so that the window stays awake.

    `told` gives each part, then `done` or, with the error, `failed` comes once. Whoever stops it ends the
    steps where they stand, so that they can tidy up.
    """

    told = Signal(object)
    done = Signal()
    failed = Signal(object)

    def __init__(self, steps: Generator[Any], parent: QObject) -> None:
        super().__init__(parent)
        self._steps = steps
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._go_on)
        self._timer.start(0)

    def stop(self) -> None:
        """Give up; nothing is told any more."""
        self._timer.stop()
        self._steps.close()
        self.deleteLater()

    def _go_on(self) -> None:
        until = time.monotonic() + _SLICE_S
        part = None
        try:
            while time.monotonic() < until:
                part = next(self._steps)
        except StopIteration:
            self._end(self.done.emit)
            return
        except Exception as fault:  # noqa: BLE001 - handed over to who began it
            self._end(partial(self.failed.emit, fault))
            return
        self.told.emit(part)

    def _end(self, tell: Callable[[], object]) -> None:
        self._timer.stop()
        tell()
        self.deleteLater()
