"""Finds what a test left behind: windows that still stand and threads that still run."""

import gc
import threading

import shiboken6
from PySide6.QtCore import QCoreApplication, QEvent, QThreadPool
from PySide6.QtWidgets import QApplication, QWidget

GRACE_S = 2.0
GRACE_MS = 2_000


def _windows() -> dict[int, str]:
    """Return every live top-level widget: its address, and words to know it by."""
    return {_address(widget): _describe(widget) for widget in QApplication.topLevelWidgets()}


def _address(widget: QWidget) -> int:
    return int(shiboken6.getCppPointer(widget)[0])


def _describe(widget: QWidget) -> str:
    name = widget.objectName() or widget.windowTitle() or "no name"
    return f"{type(widget).__name__} ({name})"


class LeakWatch:
    """Remembers what stood before a test, and says afterwards what came on top."""

    def __init__(self) -> None:
        self._windows = set(_windows())
        self._threads = set(threading.enumerate())

    def left_behind(self) -> list[str]:
        """Return one line for each window and thread that the test did not put away."""
        return self._windows_left() + self._threads_left() + _pool_left()

    def _windows_left(self) -> list[str]:
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        if set(_windows()) <= self._windows:
            return []
        # Only now: collecting after every test would cost more than the tests.
        gc.collect()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        return [f"window {words}" for address, words in _windows().items() if address not in self._windows]

    def _threads_left(self) -> list[str]:
        extra = [thread for thread in threading.enumerate() if thread not in self._threads]
        for thread in extra:
            if not isinstance(thread, threading._DummyThread):
                thread.join(GRACE_S)
        return [f"thread {thread.name}" for thread in threading.enumerate() if thread not in self._threads]


def _pool_left() -> list[str]:
    pool = QThreadPool.globalInstance()
    return [] if pool.waitForDone(GRACE_MS) else ["a job in the global thread pool"]
