"""Notices when two copies of one farm went their own way, and says which of them was worked on last.

Remembers for each farm on this computer where it was last worked on, and when the last act was.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from typing import Final

from PySide6.QtCore import QObject

from planner.desk import settings
from planner.desk.conduct import Conduct
from planner.desk.say import tr
from planner.desk.session import Session
from planner.desk.settings import Memory
from planner.desk.words import time_words

MOST_FARMS: Final = 60


class Copies(QObject):
    """Looks at each farm when it is opened, and notes each act."""

    def __init__(
        self, conduct: Conduct, memory: Memory, where: Callable[[Session], Path | None], parent: QObject
    ) -> None:
        super().__init__(parent)
        self._conduct, self._memory, self._where = conduct, memory, where
        conduct.changed.connect(self._on_changed)

    def warning(self, session: Session) -> str:
        """Return that another copy was worked on later than this one; empty when none is known."""
        known = self._known().get(session.farm.settings.id)
        here, path = _last_act(session), self._where(session)
        if known is None or path is None:
            self._note()
            return ""
        other, last = known
        if here is not None and datetime.fromisoformat(last) <= here:
            self._note()
            return ""
        day = time_words(datetime.fromisoformat(last))
        if Path(other) == path:
            return tr(
                "This file is older than when it was last worked on here ({day}): another program may have "
                "put an older copy in its place. Farm, Go back to a backup, has the later ones.",
                day=day,
            )
        return tr(
            "Another copy of this farm was worked on later ({day}): {path}. From here on the two differ; "
            "open that one to go on there.",
            day=day,
            path=other,
        )

    def _on_changed(self, _notice: object) -> None:
        self._note()

    def _note(self) -> None:
        """Remember that the open farm was worked on here."""
        session = self._conduct.session
        if session is None:
            return
        path, last = self._where(session), _last_act(session)
        if path is None or last is None:
            return
        known = self._known()
        known.pop(session.farm.settings.id, None)
        known[session.farm.settings.id] = (str(path), last.isoformat())
        self._memory.put(settings.COPIES, json.dumps(dict(list(known.items())[-MOST_FARMS:])))

    def _known(self) -> dict[str, tuple[str, str]]:
        """Return place and last act by farm; nothing when what was remembered cannot be read."""
        try:
            found = json.loads(self._memory.get(settings.COPIES) or "{}")
            return {str(farm): _told(*each) for farm, each in found.items()}
        except (ValueError, TypeError, AttributeError):
            return {}


def _told(path: str, last: str) -> tuple[str, str]:
    datetime.fromisoformat(last)
    return str(path), last


def _last_act(session: Session) -> datetime | None:
    history = session.history
    return history[0].at if history else None
