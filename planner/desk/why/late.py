"""What a late task answers when it is asked why: its day, how late it is, what falls short if done today.

The list of what is due and the records tell of the same tasks, so both ask here. Knows nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import timedelta
from typing import Final

from planner.desk.late import MOST_WEEKS
from planner.desk.outlook import Outlook
from planner.desk.pages import Entered, Shifted
from planner.farm.crops import Stage
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.farm.log import Happening
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import worked
from planner.forecast.why.values import Explanation, Subject, SubjectKind
from planner.planning.late import CarriedOver
from planner.planning.moved import WeekShift


def due_asked(one: CarriedOver) -> Subject | Entered:
    """Return what is asked of the day on which a task was due."""
    return _DUE[one.what](one.batch)


def late_asked(one: CarriedOver, outlook: Outlook) -> Shifted:
    """Return why a task was due on its day, how long before today that was, and what falls short."""
    return Shifted(
        title="days late",
        ask=due_asked(one),
        old_on=one.due_on,
        new_on=one.due_on + timedelta(days=one.late_days),
        beside=tuple(shortfall(shift, outlook) for shift in one.short[:MOST_WEEKS]),
    )


def shortfall(shift: WeekShift, outlook: Outlook) -> Explanation:
    """Return how much more or less of a crop is harvested in a week if a task is done today, than planned."""
    forecast = outlook.forecast
    days = slice(shift.week * DAYS_PER_WEEK, (shift.week + 1) * DAYS_PER_WEEK)
    known = shift.crop in forecast.crops
    before = float(forecast.harvest_plants[forecast.crops.index(shift.crop), days].sum()) if known else 0.0
    return Explanation(
        title="change of a week's harvest",
        about=outlook.crop_name(shift.crop),
        value=shift.exact,
        unit="plants",
        formula=Formula.DIFFERENCE,
        inputs=(worked("before", before, "plants"), worked("after", before + shift.exact, "plants")),
        on=forecast.ruler.date_of(days.start),
    )


def _sown(batch: Id) -> Entered:
    return Entered(about=batch, field="sow_on")


def _moved(batch: Id) -> Subject:
    return Subject(kind=SubjectKind.STAGE_FIRST, about=batch, stage=Stage.BED)


def _picked(batch: Id) -> Subject:
    return Subject(kind=SubjectKind.FIRST_PICK, about=batch)


_DUE: Final[Mapping[Happening, Callable[[Id], Subject | Entered]]] = {
    Happening.SOWN: _sown,
    Happening.MOVED: _moved,
    Happening.PICKED: _picked,
}
