"""What the list of batches that an own value would move answers: dates as they are and as they would be.

A date that would come is answered by the plan that was tried, worked out again when it is asked for. Must
know nothing of widgets.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from planner.desk.book_page.own_values import Shift
from planner.desk.pages import Ask, Fact
from planner.farm.crops import Stage
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.forecast.engine import Forecaster
from planner.forecast.why.ask import why
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import worked
from planner.forecast.why.values import Explanation, Subject, SubjectKind

_FIRST, _OVER = "first harvest with your value", "end of harvest with your value"


def shift_asks(shift: Shift, sown_on: date) -> tuple[Ask | None, ...]:
    """Return what the columns of the list can be asked, in their order."""
    picked = _then(_FIRST, shift.code, shift.picked_on, sown_on)
    over = _then(_OVER, shift.code, shift.over_on, sown_on)
    return (
        None,
        subject_of(_FIRST, shift.batch),
        picked,
        picked,
        subject_of(_OVER, shift.batch),
        over,
    )


def subject_of(title: str, batch: Id) -> Subject:
    """Return what is asked of the forecast for one of the two dates."""
    if title == _FIRST:
        return Subject(kind=SubjectKind.FIRST_PICK, about=batch)
    return Subject(kind=SubjectKind.STAGE_FIRST, about=batch, stage=Stage.CLEARING)


def _then(title: str, code: str, days: tuple[date, date], sown_on: date) -> Explanation:
    now, then = days
    return Explanation(
        title=title,
        about=code,
        value=float((then - now).days),
        unit="d",
        formula=Formula.DIFFERENCE,
        inputs=(
            worked("after", (then - sown_on).days, "d"),
            worked("before", (now - sown_on).days, "d"),
        ),
        on=then,
    )


def with_tried(fact: Fact, now: Farm, tried: Farm, forecaster: Forecaster) -> Fact:
    """Return the fact of a date that would come with the answers of the plan as it is and as it was tried."""
    ask = fact.ask
    if not isinstance(ask, Explanation):
        return fact
    batch = next((each.id for each in now.batches if each.code == ask.about), None)
    if batch is None:
        return fact
    subject = subject_of(ask.title, batch)
    answers = tuple(why(subject, farm, forecaster.preview(farm), forecaster) for farm in (tried, now))
    return replace(fact, ask=replace(ask, children=answers))
