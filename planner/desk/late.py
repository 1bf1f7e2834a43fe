"""Late tasks with what they cost: worked out one by one while the window stands idle, and their words.

Must know nothing of how a late task moves the harvest.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Final

from PySide6.QtCore import QObject, QTimer, Signal

from planner.desk.outlook import Outlook
from planner.desk.say import tr
from planner.desk.words import number_words, week_words
from planner.farm.crops import Batch
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.log import Happening
from planner.farm.species import HarvestKind
from planner.forecast.engine import Forecaster
from planner.planning.late import CarriedOver, one_by_one
from planner.planning.moved import WeekShift

MOST_WEEKS: Final = 3
_WAIT_MS: Final = 200
"""So long after an act the window is for the grower's hands alone."""
_LATE_WORDS: Final = {
    Happening.SOWN: "Sow, {days} d late: {code}",
    Happening.MOVED: "Move to the bed, {days} d late: {code}",
    Happening.PICKED: "Pick, {days} d late: {code}",
}


_TASK_WORDS: Final = {
    Happening.SOWN: "Sow {code}",
    Happening.MOVED: "Move {code} to the bed",
    Happening.PICKED: "Pick {code}",
}
_BRIEF_WORDS: Final = {
    ("heads", True): "{week}: 1 head short",
    ("plants", True): "{week}: 1 plant short",
    ("heads", False): "{week}: {many} heads short",
    ("plants", False): "{week}: {many} plants short",
}
_SHORT_WORDS: Final = {
    ("heads", True): "week {week} will be 1 head short",
    ("plants", True): "week {week} will be 1 plant short",
    ("heads", False): "week {week} will be {many} heads short",
    ("plants", False): "week {week} will be {many} plants short",
}


class LateWorker(QObject):
    """Works out the late tasks of a farm; `told` gives all of them once they are known."""

    told = Signal(tuple)

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._work: Iterator[CarriedOver] = iter(())
        self._found: list[CarriedOver] = []
        self._timer = QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(self._on_idle)

    def start(self, outlook: Outlook, forecaster: Forecaster, today: date) -> None:
        """Begin anew with another outlook; nothing is worked out for a farm without a log."""
        self._found = []
        self._work = one_by_one(outlook.farm, forecaster, today)
        if outlook.farm.log_entries:
            self._timer.start(_WAIT_MS)
        else:
            self._timer.stop()
            self.told.emit(())

    def finish(self) -> None:
        """Work out at once what is still open."""
        self._timer.stop()
        self._found.extend(self._work)
        self.told.emit(tuple(self._found))

    def _on_idle(self) -> None:
        found = next(self._work, None)
        if found is None:
            self.told.emit(tuple(self._found))
            return
        self._found.append(found)
        self._timer.start(0)


def task_words(one: CarriedOver, outlook: Outlook) -> str:
    """Return what was to be done, such as "Sow LET-27W02-A"."""
    batch = outlook.found[one.batch]
    assert isinstance(batch, Batch)
    return tr(_TASK_WORDS[one.what], code=batch.code)


def late_words(one: CarriedOver, outlook: Outlook) -> str:
    """Return a late task in words, such as "Sow, 6 d late: LET-27W02-A"."""
    batch = outlook.found[one.batch]
    assert isinstance(batch, Batch)
    return tr(_LATE_WORDS[one.what], days=one.late_days, code=batch.code)


def brief_words(one: CarriedOver, outlook: Outlook) -> tuple[str, str]:
    """Return a late task for a narrow list: code and days, and the first week that falls short."""
    batch = outlook.found[one.batch]
    assert isinstance(batch, Batch)
    main = tr("{code} · {days} d late", code=batch.code, days=one.late_days)
    if not one.short:
        return main, tr("no week falls short if done today")
    first = one.short[0]
    many = round(-first.plants)
    words = _BRIEF_WORDS[_unit_of(first, outlook), many == 1]
    return main, tr(words, week=_week_of(first, outlook), many=number_words(many))


def _unit_of(shift: WeekShift, outlook: Outlook) -> str:
    single = outlook.catalogue.crops[shift.crop].harvest is HarvestKind.SINGLE
    return "heads" if single else "plants"


def _week_of(shift: WeekShift, outlook: Outlook) -> str:
    return week_words(outlook.forecast.ruler.date_of(shift.week * DAYS_PER_WEEK + DAYS_PER_WEEK // 2))


def cost_words(one: CarriedOver, outlook: Outlook) -> str:
    """Return what is short if a late task is done today, such as "week W23 2027 will be 12 heads short"."""
    short = [short_words(shift, outlook) for shift in one.short[:MOST_WEEKS]]
    if not short:
        return tr("done today, no week falls short")
    return tr("done today, {weeks}", weeks="; ".join(short))


def short_words(shift: WeekShift, outlook: Outlook) -> str:
    """Return by how much a week falls short of the plan."""
    many = round(-shift.plants)
    words = _SHORT_WORDS[_unit_of(shift, outlook), many == 1]
    return tr(words, week=_week_of(shift, outlook), many=number_words(many))
