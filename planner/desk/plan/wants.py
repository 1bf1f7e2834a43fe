"""Turns what was asked for into wants of the engine, and says a want in a sentence.

Must know nothing of widgets.
"""

from __future__ import annotations

from datetime import date
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.forms.reading import UnreadError, read_day
from planner.desk.plan.asks import HowAsk, WantAsk, WantKind
from planner.desk.say import tr
from planner.desk.words import choice_words, day_words, number_words
from planner.farm.crops import TargetUnit
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import specs_of
from planner.planning.rhythm import WorkDays, rule_days
from planner.planning.seeding import SeedWish
from planner.planning.succession_wish import SuccessionWish
from planner.planning.wanted import Order, Rhythm, RhythmOf, Steady, Want

_DAYS: Final = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")

FIELDS_OF: Final = {
    WantKind.STEADY: ("crop", "amount", "unit", "ready_by", "from_on", "until_on"),
    WantKind.ORDER: ("crop", "amount", "unit", "on"),
    WantKind.RHYTHM: (
        "crop",
        "amount",
        "unit",
        "of",
        "every_weeks",
        "ready_by",
        "from_on",
        "until_on",
        "rule",
    ),
}
"""Fields that count for each kind."""


def want_of(kind: WantKind, ask: WantAsk, *, today: date, last_on: date) -> Want:
    """Return what is wanted; raises `FarmFaultError` naming the field that does not fit.

    `last_on` is the last day of the plan, which a rhythm goes on to when no end is said.
    """
    from_on = ask.from_on or today
    if ask.until_on is not None and ask.until_on < from_on:
        words = tr(
            "Until is {until}, before it begins on {begins}.",
            until=day_words(ask.until_on),
            begins=day_words(from_on),
        )
        raise _fault("until_on", words)
    if kind is WantKind.ORDER:
        if ask.on is None:
            raise _fault("on", tr("On is empty; an order needs its day."))
        return Order(crop=ask.crop, amount=ask.amount, unit=ask.unit, on=ask.on)
    if kind is WantKind.STEADY:
        return Steady(
            crop=ask.crop,
            amount_per_week=ask.amount,
            unit=ask.unit,
            from_on=from_on,
            until_on=ask.until_on,
            weekday=None if ask.ready_by is None else ask.ready_by.value,
        )
    return _rhythm(ask, from_on=from_on, until_on=ask.until_on or last_on)


def _rhythm(ask: WantAsk, *, from_on: date, until_on: date) -> Rhythm:
    day = from_on.weekday() if ask.ready_by is None else ask.ready_by.value
    rule = ask.rule.strip() or f"FREQ=WEEKLY;INTERVAL={ask.every_weeks};BYDAY={_DAYS[day]}"
    if not rule_days(rule, from_on=from_on, until_on=until_on):
        raise _fault(
            "rule",
            tr("The rule falls on no day between {a} and {b}.", a=day_words(from_on), b=day_words(until_on)),
        )
    return Rhythm(
        crop=ask.crop,
        amount=ask.amount,
        unit=TargetUnit.HEADS if ask.of is RhythmOf.SOWING else ask.unit,
        rule=rule,
        of=ask.of,
        from_on=from_on,
        until_on=until_on,
    )


def _fault(field: str, message: str) -> FarmFaultError:
    return FarmFaultError((Fault(kind=FaultKind.OUT_OF_LIMITS, where="", field=field, message=message),))


def wish_of(ask: HowAsk, closed: frozenset[int], *, today: date) -> SuccessionWish:
    """Return how to plan; raises `FarmFaultError` for a holiday that is no date, and for no day of work."""
    return SuccessionWish(
        from_on=ask.sow_from,
        work=work_of(ask.holidays, closed, today=today),
        replace_old=ask.replace_old,
        seeds=SeedWish(fill_trays=ask.fill_trays),
    )


def work_of(holidays: str, closed: frozenset[int], *, today: date) -> WorkDays:
    """Return the days of work; raises `FarmFaultError` for a holiday that is no date."""
    return WorkDays(closed_weekdays=closed, closed_on=_holidays(holidays, today))


def _holidays(text: str, today: date) -> frozenset[date]:
    spec = specs_of(HowAsk)["sow_from"]
    found = set()
    for part in (part.strip() for part in text.replace(";", ",").split(",")):
        if part:
            try:
                day = read_day(part, field="holidays", spec=spec, today=today)
            except UnreadError as refused:
                raise FarmFaultError((refused.fault,)) from None
            assert day is not None
            found.add(day)
    return frozenset(found)


def want_words(want: Want, catalogue: Catalogue) -> str:
    """Return a want in a sentence."""
    crop = catalogue.crops[want.crop].name if want.crop in catalogue.crops else want.crop
    if isinstance(want, Order):
        return tr(
            "{crop}: {amount} by {on}", crop=crop, amount=_amount(want.amount, want), on=day_words(want.on)
        )
    if isinstance(want, Steady):
        return _steady_words(want, crop)
    what = tr("sow {plants} plants", plants=number_words(want.amount))
    if want.of is RhythmOf.HARVEST:
        what = _amount(want.amount, want)
    return tr(
        "{crop}: {what} on {rule}, {begins} to {ends}",
        crop=crop,
        what=what,
        rule=want.rule,
        begins=day_words(want.from_on),
        ends=day_words(want.until_on),
    )


def _steady_words(want: Steady, crop: str) -> str:
    amount = _amount(want.amount_per_week, want)
    words = tr(
        "{crop}: {amount} every week from {begins}", crop=crop, amount=amount, begins=day_words(want.from_on)
    )
    if want.weekday is not None:
        words = tr(
            "{crop}: {amount} every {day} from {begins}",
            crop=crop,
            amount=amount,
            day=weekday_words(want.weekday),
            begins=day_words(want.from_on),
        )
    return (
        words
        if want.until_on is None
        else tr("{words} to {ends}", words=words, ends=day_words(want.until_on))
    )


def _amount(amount: float, want: Want) -> str:
    return f"{number_words(amount)} {choice_words(want.unit)}"


def weekday_words(day: int) -> str:
    """Return the name of a day of the week, Monday 0."""
    from planner.desk.plan.asks import Weekday

    return choice_words(Weekday(day))
