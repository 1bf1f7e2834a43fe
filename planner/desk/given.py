"""What the window is given before anything heavy is there, as values and callables.

The desk never opens a file, a database or a clock itself: whoever wires the program gives it the means.
Stands apart from the other services, and is a named tuple and no dataclass: the first paint waits for it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    # Names for the reader and the type checker: the first paint waits for whatever is read in here.
    from collections.abc import Callable
    from datetime import date, datetime
    from pathlib import Path

    from PySide6.QtCore import QSettings
    from PySide6.QtGui import QPixmap

    from planner.desk.messages import Ask
    from planner.desk.services import Rooms


class DeskServices(NamedTuple):
    """All that the window is given before anything heavy is there.

    `find_glance` returns the picture of the window as it shows a farm file on a day, in looks that go by a
    name; None when there is none, or the file has changed since. `keep_glance` keeps one. `sample` is where
    the copy of the sample farm lies that a first start opens, or will lie.
    """

    load: Callable[[], Rooms]
    settings: QSettings
    now: Callable[[], datetime]
    ask: Ask
    home: Path
    version: str = ""
    find_glance: Callable[[Path, date, str], QPixmap | None] | None = None
    keep_glance: Callable[[Path, date, str, QPixmap], None] | None = None
    start_with: Path | None = None
    sample: Path | None = None
