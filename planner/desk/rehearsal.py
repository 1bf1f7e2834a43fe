"""Takes pictures of the window as it will look at its next start, on this day and on the days after it.

Done when the window closes, with a fresh workspace for each day, so that a picture shows what a start
shows: nothing chosen, first page, first zoom, that day's list. Must know nothing of where pictures are kept.
"""

from __future__ import annotations

import time
from datetime import date, datetime, timedelta
from typing import TYPE_CHECKING, Final

from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QApplication

if TYPE_CHECKING:
    from planner.desk.window import MainWindow

DAYS: Final = 4
"""Today, and so many days less one after it: from a Friday to the Monday."""

_ENOUGH_S: Final = 0.35
"""No day is begun that would end after so many seconds: nobody should wait for a window to close."""

MOST_BATCHES: Final = 5_000
"""Of a larger farm no picture is taken: even one would take longer than that."""


def rehearse(window: MainWindow, now: datetime, *, first: bool = False) -> dict[date, QPixmap]:
    """Return a picture by day, of now and the days after it. The window is of no use afterwards.

    `first` asks for what the very first start shows. Empty when no farm is open, or one so large that closing
    would take too long.
    """
    found: dict[date, QPixmap] = {}
    session = window.conduct.session
    if session is None or len(session.farm.batches) > MOST_BATCHES:
        return found
    begin = end = time.monotonic()
    while len(found) < DAYS and (end - begin) + (end - begin) / max(len(found), 1) <= _ENOUGH_S:
        moment = now + timedelta(days=len(found))
        window.act_start(moment, first=first)
        # Twice: what is laid out first asks for what is laid out next.
        QApplication.sendPostedEvents()
        QApplication.sendPostedEvents()
        found[moment.date()] = window.grab()
        end = time.monotonic()
    return found
