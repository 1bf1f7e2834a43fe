"""The flagged weeks of the plan, and beside them what would repair the one that is chosen."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QModelIndex, QTimer
from PySide6.QtWidgets import QWidget

from planner.desk.places.place import PlaceNeeds
from planner.desk.plan.kit import Beside, Table, Words, column
from planner.desk.plan.part import Part
from planner.desk.plan.remedy_list import RemedyList, repairable_flags
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.week_facts import flag_asked, flag_words
from planner.desk.words import NONE, middle_of_week, short_day_words, week_words
from planner.forecast.values import Flag, FlagKind, Ruler

_WAIT_MS: Final = 200
_WHAT: Final = {
    FlagKind.SHORT_SUPPLY: "plants are short of food",
    FlagKind.FEED_FALLS: "the feed falls",
    FlagKind.DENSITY: "tank too full",
    FlagKind.UNPLACED: "no places",
    FlagKind.SHORT_PLACES: "too few places",
    FlagKind.GIVEN_UP: "too slow for the season",
}


def flag_rows(flags: tuple[Flag, ...], ruler: Ruler) -> tuple[Row, ...]:
    """Return a row for each flag."""
    return tuple(_row(number, flag, ruler) for number, flag in enumerate(flags))


def _row(number: int, flag: Flag, ruler: Ruler) -> Row:
    first = flag.on or ruler.start_on
    week = week_words(middle_of_week(ruler.week_start(max(ruler.week_of(first), 0))))
    until = NONE if flag.until_on is None else short_day_words(flag.until_on)
    what, ask = tr(_WHAT[flag.kind]), flag_asked(flag)
    return Row(
        id=f"{flag.kind.value} {flag.about} {first.isoformat()}",
        texts=(week, short_day_words(first), until, flag.name, what),
        sort=(first, first, flag.until_on or first, flag.name.casefold(), what),
        spoken=flag_words(flag),
        payload=(number, flag),
        asks=(None, ask, None if flag.until_on is None else ask, None, ask),
    )


class RemediesPart(Part):
    """Choose a flagged week, read what would help, apply it."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        columns = (
            Column(title=tr("Week")),
            Column(title=tr("From")),
            Column(title=tr("Until")),
            Column(title=tr("Where")),
            Column(title=tr("What")),
        )
        self.count = Words("", self.theme, self, ink="muted")
        self.table = Table(columns, tr("Flagged weeks"), self.theme, self)
        self.list = RemedyList(self.theme, needs.conduct, self)
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(_WAIT_MS)
        self._later.timeout.connect(self._ask)
        left = QWidget(self)
        lines = column(left, self.theme, margin=0)
        lines.addWidget(self.count)
        lines.addWidget(self.table, 1)
        lines.addStretch(0)
        split = Beside(self.theme, self)
        split.addWidget(left)
        split.addWidget(self.list)
        split.setStretchFactor(0, 4)
        split.setStretchFactor(1, 5)
        unit = self.theme.metrics.field_width
        split.setSizes([unit * 4, unit * 5])
        column(self, self.theme, margin=0).addWidget(split)
        self.table.selectionModel().currentRowChanged.connect(self._on_current)
        self.list.applied.connect(self._on_applied)

    def take_focus(self) -> None:
        self.table.setFocus()

    def refresh(self) -> None:
        assert self.behind is not None
        flags = repairable_flags(self.behind)
        chosen = self.table.current()
        self.table.show_rows(flag_rows(flags, self.behind.outlook.forecast.ruler))
        self.table.setVisible(bool(flags))
        self.list.setVisible(bool(flags))
        if not flags:
            self.list.clear()
            self.count.say(
                ""  # the page says that it is over
                if self.behind.is_over
                else tr("No week from today on is flagged: what the plan asks for is supplied, and fits.")
            )
            return
        self.count.say(
            tr("1 thing to repair, from today on")
            if len(flags) == 1
            else tr("{count} things to repair, from today on", count=len(flags))
        )
        if chosen is None or not self.table.choose(chosen.id):
            self.table.selectRow(0)
        self._later.start()

    def _on_current(self, _index: QModelIndex, _before: QModelIndex) -> None:
        self._later.start()

    def _ask(self) -> None:
        row = self.table.current()
        if row is not None and self.behind is not None:
            self.list.ask_flags(self.behind, (row.payload[1],))

    def _on_applied(self, words: str) -> None:
        self.told.emit(tr("Done: {words}. Undo takes it back.", words=words))

    def leave(self) -> None:
        self._later.stop()
        self.list.clear()
        super().leave()

    def wear(self, theme: Theme) -> None:
        super().wear(theme)
        self.list.wear(theme)
