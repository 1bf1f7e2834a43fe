"""Brings in what others do on the same farm while it is open here, and asks where two changed the same thing.

Looks once a moment; must know nothing of how a farm is kept.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QWidget

from planner.desk.conduct import Conduct
from planner.desk.messages import Ask, Question
from planner.desk.say import tr
from planner.farm.changes import ChangeSet
from planner.farm.merging import ClashError

LOOK_EVERY_MS: Final = 1000

Say = Callable[[str], None]


class Together(QObject):
    """Looks for what others did, tells it once, and settles clashes with the one who came later."""

    def __init__(self, conduct: Conduct, ask: Ask, tell: Say, warn: Say, window: QWidget) -> None:
        super().__init__(window)
        self._conduct, self._ask, self._window = conduct, ask, window
        self._tell, self._warn = tell, warn
        self._mine: ChangeSet | None = None
        self._lost = False
        conduct.clashed.connect(self._on_clash)
        self.timer = QTimer(self)
        self.timer.timeout.connect(self.look)
        self.timer.start(LOOK_EVERY_MS)

    def look(self) -> None:
        """Bring in what others did since the last look; lost and found connections are told once."""
        session = self._conduct.session
        if session is None:
            self._lost = False
            return
        try:
            notice = session.catch_up()
        except self._conduct.troubles as trouble:
            if not self._lost:
                self._lost = True
                self._warn(tr("{trouble} Looking for it again every moment.", trouble=str(trouble)))
            return
        if self._lost:
            self._lost = False
            self._tell(tr("The farm can be reached again."))
        if notice is not None and notice.change_set.title:
            self._tell(tr("Changed by others: {what}", what=notice.change_set.title))

    def _on_clash(self, clash: ClashError) -> None:
        """Ask whose value is to stand; theirs stands already, and the history keeps it in any case."""
        self._mine = clash.mine
        question = Question(
            title=tr("Changed by two"),
            text=tr(
                "Somebody else changed the same thing meanwhile:\n\n{what}\n\nTheirs stands. "
                "Put yours in its place? Both can be found in the history.",
                what=self._conduct.said(clash.faults),
            ),
            go_on=tr("Put mine in"),
        )
        self._ask(question, self._on_answer, self._window)

    def _on_answer(self, go_on: bool) -> None:
        mine, self._mine = self._mine, None
        if go_on and mine is not None:
            self._conduct.act(mine)
